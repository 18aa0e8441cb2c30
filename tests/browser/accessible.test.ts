import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

describe.each([
	{ width: 360, dark: false },
	{ width: 1280, dark: true }
])('accessible at $width px, dark $dark', ({ width, dark }) => {
	test('every page', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await goto(page, '/');
		await page.getByRole('button', { name: 'Open Alder Bend' }).waitFor();
		await expectAccessible(page, '/');
		await openDemo(page, 'Alder Bend');
		for (const path of [
			'/plan/',
			'/light/',
			'/circuit/',
			'/circuit/draw/',
			'/circuit/by-hand/',
			'/circuit/lamps/',
			'/hours/',
			'/shopping/',
			'/checklist/',
			'/checklist/first-night/',
			'/packet/',
			'/answers/',
			'/rules/',
			'/help/'
		]) {
			await goto(page, path);
			await page.waitForLoadState('networkidle');
			await expectAccessible(page, path);
			expect(await page.evaluate(() => document.documentElement.scrollWidth), path).toBeLessThanOrEqual(width);
		}
		// One page for each question: the items it is asked for differ only in their names.
		await goto(page, '/answers/');
		const links = await page
			.locator('main a[href*="/ask/"]')
			.evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
		const byQuestion = new Map(links.map((href) => [new URL(href).pathname, href]));
		expect(byQuestion.size).toBeGreaterThan(30);
		for (const href of byQuestion.values()) {
			await page.goto(href);
			await page.locator('.dw-drawing svg').waitFor();
			await page.getByRole('button', { name: 'Continue' }).waitFor();
			await expectAccessible(page, href);
			expect(await page.evaluate(() => document.documentElement.scrollWidth), href).toBeLessThanOrEqual(width);
		}
		expect(complaints).toEqual([]);
		await context.close();
	}, 300_000);
});
