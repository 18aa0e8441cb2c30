import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openPage, useBrowser } from './browser';

// A fault planted in a demo yard, from the start page: it is found, advice is taken with one tap, it is gone, and undone.

const { browser } = useBrowser();

describe.each([
	{ title: 'Fennick Gate', fault: /gets \d+\.\d+ V.*It wants 9\.0/ },
	// At nominal mains; that a filament lamp's worst case may go a little over is said as a look.
	{ title: 'Oddle Court', fault: /gets \d+\.\d+ V\. More than 12\.0 shortens its life/ },
	{ title: 'Wistlow Bank', fault: /loads its side of the transformer with \d+\.\d+ A/ }
])('$title', ({ title, fault }) => {
	test.each([360, 1280])('found, cured, undone, at %i px', async (width) => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await goto(page, '/');
		await page.getByRole('button', { name: `Open ${title}` }).click();
		await page.waitForURL(/\/circuit\//);
		const finding = page.getByRole('listitem').filter({ hasText: fault }).first();
		await finding.waitFor();
		const stops = page.locator('li.stop');
		const before = await stops.count();
		const heading = await page.locator('h1').textContent();
		await expectAccessible(page, `${title} with its fault`);

		// One tap cures one finding, and often all; a second may be needed for what is left.
		for (let tap = 0; tap < 3 && (await stops.count()) > 0; tap++) {
			await stops
				.first()
				.getByRole('button', { name: /^Do this/ })
				.first()
				.click();
			const status = page.getByRole('status').filter({ hasText: /^Done: / });
			await status.waitFor();
			// What is shown is the new plan.
			await page.locator('.page[aria-busy="false"]').waitFor();
			expect(await page.evaluate(() => document.activeElement === document.body)).toBe(false);
		}
		expect(await stops.count()).toBe(0);
		expect(await page.getByText(fault).filter({ visible: true }).count()).toBe(0);
		expect(await page.locator('h1').textContent()).not.toBe(heading);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		await expectAccessible(page, `${title} cured`);

		// The cure is kept: it is still there after a reload.
		await page.reload();
		await page.locator('h1').waitFor();
		await page.getByRole('heading', { name: /run 1/i }).first().waitFor();
		expect(await stops.count()).toBe(0);
		expect(complaints).toEqual([]);
		expect(before).toBeGreaterThan(0);
		await context.close();
	});
	test('one tap, and one to take it back', async () => {
		const { page, context } = await openPage(browser(), { width: 1280 });
		await goto(page, '/');
		await page.getByRole('button', { name: `Open ${title}` }).click();
		await page.waitForURL(/\/circuit\//);
		const finding = page.locator('li.stop').filter({ hasText: fault }).first();
		await finding
			.getByRole('button', { name: /^Do this/ })
			.first()
			.click();
		await page
			.getByRole('status')
			.filter({ hasText: /^Done: / })
			.getByRole('button', { name: 'Undo' })
			.click();
		await page.locator('li.stop').filter({ hasText: fault }).first().waitFor();
		await context.close();
	});
});
