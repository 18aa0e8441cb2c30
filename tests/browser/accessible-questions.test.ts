import { describe, expect, test } from 'vitest';
import { expectFit, follow, visit } from './accessible-pages';
import { fitFaults } from './accessible-fit';
import { openDemo, openPage, useBrowser } from './browser';
import { faultsOf, walk } from './focus';

const { browser } = useBrowser();

describe.each([
	{ width: 360, dark: false },
	{ width: 1280, dark: true }
])('accessible at $width px, dark $dark', ({ width, dark }) => {
	test('every question', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		// One page for each question: the items it is asked for differ only in their names.
		await visit(page, '/answers/');
		const links = await page
			.locator('main a[href*="/ask/"]')
			.evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
		const byQuestion = new Map(links.map((href) => [new URL(href).pathname, href]));
		expect(byQuestion.size).toBeGreaterThan(30);
		const faults: string[] = [];
		// The drawing beside them is one and the same, and is judged with the pages; what depends on the colours alone is judged in both.
		const axe = { without: '.dw-drawing', ...(dark && { rule: 'color-contrast' }) };
		for (const href of byQuestion.values()) {
			await follow(page, href);
			await page.locator('.dw-drawing svg').first().waitFor();
			await page.getByRole('button', { name: 'Continue' }).waitFor();
			await expectFit(page, href, axe);
			if (dark) faults.push(...(await fitFaults(page)).map((fault) => `${href}: ${fault}`));
			else faults.push(...faultsOf(await walk(page)).map((fault) => `${href}: ${fault}`));
		}
		expect(faults).toEqual([]);
		expect(complaints).toEqual([]);
		await context.close();
	}, 300_000);
});
