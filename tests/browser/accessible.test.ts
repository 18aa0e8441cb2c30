import { describe, expect, test } from 'vitest';
import { expectFit, pages, visit } from './accessible-pages';
import { fitFaults } from './accessible-fit';
import { openDemo, openPage, useBrowser } from './browser';
import { faultsOf, walk } from './focus';

const { browser } = useBrowser();

describe.each([
	{ width: 360, dark: false },
	{ width: 1280, dark: true }
])('accessible at $width px, dark $dark', ({ width, dark }) => {
	test('every page: axe, targets, by Tab, narrow, large, in forced colours', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		const faults: string[] = [];
		for (const path of pages) {
			await visit(page, path);
			await expectFit(page, path);
			const by = await walk(page);
			expect(by.stops.length, path).toBeGreaterThan(5);
			faults.push(...faultsOf(by).map((fault) => `${path} at ${width} px: ${fault}`));
			if (dark) faults.push(...(await fitFaults(page)).map((fault) => `${path}: ${fault}`));
		}
		expect(faults).toEqual([]);
		expect(complaints).toEqual([]);
		await context.close();
	}, 300_000);
});
