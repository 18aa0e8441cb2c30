/** One number changed on trial: by mouse, keys and taps; from a page of the plan; kept, undone, put back; and without a yard in hand. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { inputsOf, figuresOf } from '../../src/lib/domain/lesson/explore';
import { makePlan } from '../../src/lib/domain/plan';
import { fixed } from '../../src/lib/domain/shared/show-working';
import { examples } from '../../src/lib/domain/yard';
import { expectFit, settle } from './accessible-pages';
import { goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();
const demo = examples.find(({ id }) => id === 'suburban')!.yard;
const plan = makePlan(demo);
const cost = '/explore/#f=year%2Fcost';
/** The price as the engine takes it, and the cost it makes. */
const costAt = (perKwh: number): string => {
	const price = inputsOf(demo, plan).find(({ id }) => id === 'power.price.perKwh')!;
	const { working } = makePlan(price.put(demo, perKwh)).dusk;
	return `${fixed(working.cost.value, 2)} USD`;
};
const kept = (page: Page) => page.evaluate(() => localStorage.getItem('duskwright/yard'));
const large = (page: Page) => page.locator('.large');
/** The price taken as the one thing to change, once it was found. */
async function takePrice(page: Page): Promise<void> {
	const pick = page.getByLabel('Of all that moves this figure, change');
	await expect
		.poll(() => pick.locator('option').allTextContents(), { timeout: 60_000 })
		.toContainEqual(expect.stringContaining('rice of a kilowatt-hour'));
	await pick.selectOption('power.price.perKwh');
}

describe.each([
	{ width: 360, dark: true },
	{ width: 768, dark: false },
	{ width: 1280, dark: false }
])('at $width px', ({ width, dark }) => {
	test('the slider by keys, the field, the list; put back; kept and undone', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		await goto(page, cost);
		await page.getByRole('heading', { level: 2, name: 'Cost of a year' }).waitFor();
		const before = await kept(page);
		await takePrice(page);
		const slider = page.getByRole('slider');
		await slider.focus();
		await page.keyboard.press('ArrowRight');
		await expect.poll(() => slider.getAttribute('aria-valuetext')).toBe('0.18 USD');
		await expect.poll(() => large(page).innerText()).toContain(costAt(0.18));
		expect(await large(page).innerText()).toContain('changed');

		const field = page.getByLabel('Or type it');
		await field.fill('0.32');
		await expect.poll(() => large(page).innerText()).toContain(costAt(0.32));
		await page.getByRole('heading', { name: '1 figure moved' }).waitFor();
		expect(await page.locator('tbody tr').first().innerText()).toContain('100');
		expect(await kept(page)).toBe(before);
		await settle(page);
		await expectFit(page, `explore at ${width} px`);
		await field.fill('32');
		await field.blur();
		await page.getByText('Here it goes from 0 to 10').waitFor();

		await page.getByRole('button', { name: 'Put it back' }).click();
		await expect.poll(() => large(page).innerText()).not.toContain('changed');
		expect(await field.inputValue()).toBe('0.16');

		await field.fill('0.32');
		await page.getByRole('button', { name: 'Keep this in my yard' }).click();
		await page.getByText('Kept in your yard: price of a kilowatt-hour').waitFor();
		await expect.poll(() => kept(page)).toMatch(/"perKwh":\s*0\.32/);
		await page.getByRole('button', { name: /^Undo/ }).first().click();
		await expect.poll(() => kept(page)).toMatch(/"perKwh":\s*0\.16/);
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('from a figure of the hours page, and back to a figure of the list by a tap', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await goto(page, '/hours/');
	await page.locator('summary', { hasText: 'Energy of a year' }).first().click();
	await page.getByRole('link', { name: 'Change one thing: Energy of a year' }).click();
	await page.getByRole('heading', { level: 2, name: 'Energy of a year' }).waitFor();
	const slider = page.getByRole('slider');
	await slider.waitFor({ timeout: 60_000 });
	await slider.focus();
	await page.keyboard.press('End');
	const button = page.locator('tbody button', { hasText: 'Cost of a year' }).first();
	await page.getByRole('button', { name: /^Show all/ }).click();
	await button.click();
	await page.getByRole('heading', { level: 2, name: 'Cost of a year' }).waitFor();
	expect(new URL(page.url()).hash).toBe('#f=year%2Fcost');
	expect(complaints).toEqual([]);
	await context.close();
});

test('without a yard in hand: a demo at one tap, and nothing is kept of it', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360 });
	await goto(page, '/explore/');
	await page.getByRole('button', { name: 'Look at Alder Bend' }).click();
	const lowest = figuresOf(plan)
		.filter(({ key }) => /^light\/.*\/volts$/.test(key))
		.reduce((least, figure) => (figure.value < least.value ? figure : least));
	await page.getByRole('heading', { level: 2, name: lowest.label }).waitFor();
	expect(await page.getByRole('button', { name: 'Keep this in my yard' }).count()).toBe(0);
	expect((await kept(page)) ?? '').not.toContain('linden');
	expect(complaints).toEqual([]);
	await context.close();
});
