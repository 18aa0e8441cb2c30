/** The rules page: a figure of your own, what it does to the plan, and the way between a light and its rules. */
import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();
const figure = 'Path lights along one edge, apart';

describe.each([
	{ width: 360, dark: true },
	{ width: 1280, dark: false }
])('the rules at $width px', ({ width, dark }) => {
	test('a figure is set, refused in words, taken back by one undo and by its button', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		await goto(page, '/rules/');
		const field = page.getByLabel(figure, { exact: true });
		const stored = () =>
			page.evaluate(() => {
				const kept = Object.values(localStorage).find((text) => text.includes('duskwright/yard'));
				return kept ? (JSON.parse(kept) as { rules?: Record<string, number> }).rules : null;
			});
		await field.fill('40 ft');
		await field.blur();
		await page.getByText('Here it goes from 6 ft 6 1/2 in to 19 ft 8 in.').waitFor();
		await field.fill('15 ft');
		await page.getByText('15 ft · 4.57 m').waitFor();
		await field.press('Enter');
		await page.getByText('One figure is your own.').waitFor();
		await expect.poll(stored).toEqual({ 'path.spacing/spacing': 4.572 });
		await expectAccessible(page, '/rules/ with a figure');
		await page.getByRole('button', { name: `Back to the trade’s figure: ${figure}` }).click();
		expect(await field.inputValue()).toBe('9 ft 10 in');
		await page.getByRole('button', { name: 'Undo' }).first().click();
		expect(await field.inputValue()).toBe('15 ft');
		await page.getByRole('button', { name: 'Undo' }).first().click();
		expect(await field.inputValue()).toBe('9 ft 10 in');
		await expect.poll(stored).toBeUndefined();
		expect(complaints).toEqual([]);
		await context.close();
	}, 60_000);

	test('from a rule to its light, and from the light to the rule', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		await goto(page, '/rules/');
		const rule = page.locator('[id="path.spacing"]');
		await rule.locator('summary').click();
		const link = rule.locator('details a').first();
		const label = (await link.textContent()) ?? '';
		await link.click();
		await page.waitForURL(/\/plan\/#light-/);
		const light = page.locator('li[id^="light-"]', { has: page.getByText(label, { exact: true }) }).first();
		await light.locator('summary', { hasText: 'Why here?' }).click();
		await light.getByRole('link', { name: 'Spacing of path lights.' }).click();
		await page.waitForURL(/\/rules\/#path\.spacing$/);
		await expect.poll(() => rule.evaluate((element) => Math.abs(element.getBoundingClientRect().top) < 60)).toBe(true);
		expect(complaints).toEqual([]);
		await context.close();
	}, 60_000);
});
