/** The page of the yard after dark: picture and slider, the map read by keyboard and pointer, a tree in section, and all of it without a worker. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { lightField } from '../../src/lib/domain/light';
import { makePlan } from '../../src/lib/domain/plan';
import { metresPerFoot } from '../../src/lib/domain/shared/units';
import { examples } from '../../src/lib/domain/yard';
import { lightWords } from '../../src/lib/drawing/light-map/bands';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();
const map = 'Light on the ground, to be read place by place';

/** Mean of the picture's red, green and blue, 0 to 255. */
const brightness = (page: Page) =>
	page.evaluate(() => {
		const canvas = document.querySelector('canvas')!;
		// A copy is read: reading the page's own canvas time and again would have the browser complain.
		const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d', { willReadFrequently: true })!;
		copy.drawImage(canvas, 0, 0);
		const { data } = copy.getImageData(0, 0, canvas.width, canvas.height);
		let sum = 0;
		for (let i = 0; i < data.length; i += 4) sum += data[i]! + data[i + 1]! + data[i + 2]!;
		return sum / (data.length / 4) / 3;
	});
/** What is read under a drawing: the live words after it. */
const readUnder = (page: Page, label: string) =>
	page.getByRole('application', { name: label }).evaluate((element) => {
		const id = element.getAttribute('aria-describedby');
		return document.getElementById(id!)!.textContent ?? '';
	});
async function openLight(page: Page): Promise<void> {
	await openDemo(page, 'Alder Bend');
	await goto(page, '/light/');
	await page.getByRole('application', { name: map }).waitFor({ timeout: 60_000 });
}
/** The fine picture is there, and what was asked of it meanwhile is done. */
const painted = (page: Page) => page.getByText('Painting it').waitFor({ state: 'detached', timeout: 60_000 });

describe.each([
	{ width: 360, dark: true },
	{ width: 1280, dark: false }
])('after dark at $width px', ({ width, dark }) => {
	test('the picture goes from night to day by keyboard, and is said in words', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openLight(page);
		await painted(page);
		expect(await page.getByRole('img', { name: /^The house from the street, after dark\. Lit: / }).count()).toBe(1);
		const night = await brightness(page);
		expect(night).toBeGreaterThan(2);
		const slider = page.getByRole('slider', { name: 'From day to night' });
		await slider.press('Home');
		expect(await slider.getAttribute('aria-valuetext')).toBe('full day');
		await expect.poll(() => brightness(page), { timeout: 20_000 }).toBeGreaterThan(night * 1.5);
		await slider.press('End');
		await expect.poll(() => brightness(page), { timeout: 20_000 }).toBeCloseTo(night, 1);
		await page.getByText('From above', { exact: true }).click();
		await page.getByRole('img', { name: /^The yard from above, after dark\./ }).waitFor();
		await painted(page);
		await expectAccessible(page, '/light/');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		expect(complaints).toEqual([]);
		await context.close();
	}, 120_000);

	test('the map is read by keyboard and at the pointer', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openLight(page);
		const here = page.getByRole('application', { name: map });
		await here.focus();
		await here.press('ArrowRight');
		await here.press('ArrowDown');
		// The same place of the same yard, reckoned here: the first light, 2 ft to the right of it and 2 ft towards the street.
		const plan = makePlan(examples.find(({ title }) => title === 'Alder Bend')!.yard);
		const { at } = plan.fixtures[0]!;
		const place = { x: at.x + 2 * metresPerFoot, y: at.y + 2 * metresPerFoot, z: 0 };
		const lux = lightField(plan.site, plan.fixtures, plan.runs).lux(place, { x: 0, y: 0, z: 1 });
		const read = await readUnder(page, map);
		expect(read.startsWith(`${lightWords(lux)} `)).toBe(true);
		expect(read).toMatch(/2 ft 10 in from P1; .* along, .* out\.$/);
		await here.hover({ position: { x: 40, y: 60 } });
		await expect.poll(() => readUnder(page, map)).not.toBe(read);
		expect(complaints).toEqual([]);
		await context.close();
	}, 120_000);

	test('a tree is chosen, a figure opens its working', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openLight(page);
		const choice = page.getByLabel('Tree, and the light at it');
		const options = await choice.locator('option').allTextContents();
		expect(options.length).toBeGreaterThan(3);
		await choice.selectOption({ label: options[2]! });
		const light = options[2]!.split(', ').at(-1)!;
		await page.locator('li', { hasText: new RegExp(`^${light} stands .* from the bark`) }).waitFor();
		const walk = page.getByRole('button', { name: /^The front walk/ });
		await walk.click();
		await page.getByText('S ÷ N').first().waitFor();
		await expectAccessible(page, '/light/ opened');
		expect(complaints).toEqual([]);
		await context.close();
	}, 120_000);
});

test('without a worker it says so, and everything else is there', async () => {
	const { page, context, complaints } = await openPage(browser());
	await page.addInitScript(() => {
		window.Worker = function () {
			throw new Error('barred');
		} as unknown as typeof Worker;
	});
	await openLight(page);
	await page.getByRole('alert').getByText('The picture could not be painted in this browser.').waitFor();
	await page.getByRole('application', { name: 'Light on the front of the house, to be read place by place' }).waitFor();
	await expectAccessible(page, '/light/ without a worker');
	expect(complaints).toEqual([]);
	await context.close();
}, 120_000);

test('a change by hand says what it does to the light', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await page.getByRole('button', { name: 'Change or show P3 path light' }).click();
	await page.getByRole('button', { name: 'Take P3 away' }).click();
	const said = page.getByRole('status', { name: 'What it does to the light' });
	await said.getByText(/the front walk: .* → .* lx on average/).waitFor();
	expect(complaints).toEqual([]);
	await context.close();
}, 120_000);
