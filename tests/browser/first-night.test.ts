/** Volts measured on the first night: typed in, compared, a planted fault named, kept and taken back. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();
const run = (page: Page) => page.getByRole('region', { name: 'Run 1' });
/** Names and planned volts by row, as the page shows them. */
const rows = (page: Page) =>
	run(page)
		.locator('tbody tr')
		.evaluateAll((all) =>
			all.map((row) => ({
				name: row.querySelector('th')?.textContent?.trim() ?? '',
				volts: row.querySelector('td')?.textContent?.trim() ?? ''
			}))
		);
const field = (page: Page, name: string) =>
	run(page).getByLabel(`Volts measured at ${name === 'The terminals' ? 'the terminals of run 1' : name}`, {
		exact: true
	});

describe.each([
	{ width: 360, dark: true },
	{ width: 1280, dark: false }
])('the first night at $width px', ({ width, dark }) => {
	test('takes readings, names a planted fault, keeps them and gives them back', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		await goto(page, '/checklist/');
		await page.getByRole('link', { name: /Type in the volts/ }).click();
		await run(page).getByText('Nothing measured yet.').waitFor();
		const planned = await rows(page);
		for (const { name, volts } of planned) {
			await field(page, name).fill(volts.replace('.', ','));
			await field(page, name).press('Tab');
		}
		await run(page).getByText('As planned: every lamp gets what it should.').waitFor();
		// The last lamp two volts down, all others as planned: only its own joints can do that.
		const last = planned.at(-1)!;
		await field(page, last.name).fill(String(Math.round(10 * (Number(last.volts) - 2)) / 10));
		await field(page, last.name).press('Tab');
		await run(page).getByText(`A bad joint between the cable and ${last.name}’s own lead`).waitFor();
		await expectAccessible(page, '/checklist/first-night/');

		await field(page, last.name).fill('12 sheep');
		await field(page, last.name).press('Tab');
		await run(page).getByRole('alert').filter({ hasText: 'Type a number' }).waitFor();
		await run(page).getByText(`A bad joint between the cable and ${last.name}’s own lead`).waitFor();
		await page.getByRole('button', { name: 'Undo' }).first().click();
		await run(page).getByText('As planned: every lamp gets what it should.').waitFor();
		await page.reload();
		await run(page).getByText('As planned: every lamp gets what it should.').waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});
