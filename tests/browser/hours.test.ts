/** The hours: another way to set them taken and taken back, one night read off, the sensor hung elsewhere, and a bad spot called bad. */
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/domain/plan';
import { examples, type Yard } from '../../src/lib/domain/yard';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser, folder } = useBrowser();
const demo = examples.find(({ id }) => id === 'suburban')!.yard;

const openHours = async (page: Page): Promise<void> => {
	await openDemo(page, 'Alder Bend');
	await goto(page, '/hours/');
	await page.getByRole('heading', { name: 'The dusk sensor' }).waitFor();
};
/** What the browser keeps of the answers about power. */
const keptPower = (page: Page) =>
	page.evaluate(
		() => (JSON.parse(localStorage.getItem('duskwright/yard')!) as { power: Record<string, unknown> }).power
	);
/** Puts answers about power into what the browser keeps, as an earlier visit would have left them. */
async function withPower(page: Page, power: Partial<Yard['power']>): Promise<void> {
	// The page writes once more as it is left: from a page that has no yard in hand nothing is overwritten.
	await page.goto('about:blank');
	await goto(page, '/help/');
	await page.evaluate((more) => {
		const key = 'duskwright/yard';
		const yard = JSON.parse(localStorage.getItem(key)!) as { power: object };
		localStorage.setItem(key, JSON.stringify({ ...yard, power: { ...yard.power, ...more } }));
	}, power);
	await page.reload();
	await goto(page, '/hours/');
	await page.getByRole('heading', { name: 'The dusk sensor' }).waitFor();
}
/** What is too small to press, main part only: links in running text may be. */
const small = (page: Page) =>
	page.locator('main :is(button, summary, input, select)').evaluateAll((all) =>
		all
			.map((element) => ({ element, box: element.getBoundingClientRect() }))
			.filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
			.map(({ element }) => element.outerHTML.slice(0, 80))
	);

describe.each([
	{ width: 360, dark: true },
	{ width: 1280, dark: false }
])('the hours at $width px', ({ width, dark }) => {
	test('other hours taken and taken back; the sensor hung at another spot', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openHours(page);
		const heading = page.getByRole('heading', { level: 1 });
		const before = makePlan(demo).dusk;
		const until = before.schedules.find(({ id }) => id === 'until-22')!;
		await expect.poll(() => heading.textContent()).toContain(`On for ${Math.round(before.hoursPerYear)} hours`);
		await expectAccessible(page, `hours at ${width} px`);
		expect(await small(page)).toEqual([]);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);

		await page.getByRole('button', { name: `Take these hours: ${until.label}` }).click();
		await expect.poll(() => heading.textContent()).toContain(`On for ${Math.round(until.hoursPerYear)} hours`);
		await expect.poll(async () => (await keptPower(page)).hours).toEqual({ kind: 'until', clock: '22:00' });
		// What was done is said where the focus is, with the way back.
		const status = page.locator('main [role="status"]').filter({ hasText: /^Done/ });
		expect(await status.textContent()).toContain(until.label.slice(1));
		await status.getByRole('button', { name: 'Undo' }).click();
		await expect.poll(() => heading.textContent()).toContain(`On for ${Math.round(before.hoursPerYear)} hours`);
		await expect.poll(async () => (await keptPower(page)).hours).toEqual(demo.power.hours);

		const spots = page.getByRole('region', { name: 'Spots that were weighed for it' });
		await spots.getByText('The sensor hangs here now.').waitFor();
		await spots.getByRole('button', { name: 'Hang it here: spot 2' }).click();
		const wanted = before.sensorSpots[1]!;
		await expect
			.poll(async () => (await keptPower(page)).sensor)
			.toMatchObject({
				at: { along: expect.closeTo(wanted.at.x, 2), out: expect.closeTo(wanted.at.y, 2) },
				on: wanted.on,
				faces: expect.closeTo(wanted.faces, 1)
			});
		await page.getByRole('region', { name: 'The dusk sensor' }).getByText('You chose it.').waitFor();
		expect(await page.getByRole('img', { name: 'Spots for the sensor' }).count()).toBe(1);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('one night is read by keyboard and by pointer', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openHours(page);
		const slider = page.getByRole('slider', { name: 'Night of the year' });
		await slider.press('Home');
		expect(await slider.getAttribute('aria-valuetext')).toMatch(
			/^1 January: dusk \d\d:\d\d, on \d\d:\d\d to \d\d:\d\d\.$/
		);
		await slider.press('ArrowRight');
		expect(await slider.getAttribute('aria-valuetext')).toMatch(/^2 January: /);
		const chart = page.getByRole('img', { name: /^The lights through \d{4}/ });
		const box = (await chart.boundingBox())!;
		await chart.hover({ position: { x: box.width - 13, y: box.height / 2 } });
		await expect.poll(() => slider.getAttribute('aria-valuetext')).toMatch(/^(2[5-9]|3[01]) December: /);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('under the eaves beside the porch light: called what it is, with what to do', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openHours(page);
		const sensor: Yard['power']['sensor'] = { at: { along: 6.6, out: 0.05 }, on: 'wall', height: 2.4 };
		const { view } = makePlan({ ...demo, power: { ...demo.power, sensor } }).dusk.sensor!;
		expect(view.night.verdict).toBe('held-off');
		await withPower(page, { sensor });
		const section = page.getByRole('region', { name: 'The dusk sensor' });
		await section.getByText('Held off', { exact: true }).waitFor();
		expect(await section.textContent()).toContain(`${view.night.others.toFixed(0)} lx on its window`);
		expect(await section.textContent()).toContain('Turn its window away');
		await expectAccessible(page, `a bad spot at ${width} px`);
		// The plan's own spots are offered; the first one hung there puts it right.
		await page
			.getByRole('button', { name: /^Hang it here: spot \d/ })
			.first()
			.click();
		await section.getByText('Steady', { exact: true }).waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('a split night is two spans on the picture, in the table and on paper', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 1280 });
	await openHours(page);
	await page.getByRole('button', { name: /^Take these hours: From dusk until 23:00, and/ }).click();
	await page.getByText('The year as a table').click();
	await expect
		.poll(() => page.getByRole('row', { name: /^January / }).textContent())
		.toMatch(/\d\d:\d\d to 23:00 and 05:30 to \d\d:\d\d/);
	await goto(page, '/packet/');
	await page.locator('#sheet-hours').waitFor();
	for (const paper of ['Letter', 'A4']) {
		await page.getByText(paper, { exact: true }).first().click();
		await expect.poll(() => page.locator('#paper input:checked').inputValue()).toBe(paper.toLowerCase());
		const file = join(folder(), `hours-${paper}.pdf`);
		await page.pdf({ path: file, preferCSSPageSize: true, printBackground: false });
		const pages = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).split('\f');
		const own = pages.findIndex((text) => /^\s*\d+\s+Hours and sensor\b/.test(text));
		// The whole sheet on one page: from what a year costs to what to do if it blinks; the next sheet follows.
		expect(pages[own], paper).toMatch(/If it blinks, or the lights stay off/);
		expect(pages[own], paper).toMatch(/Its window looks/);
		expect(pages[own], paper).toMatch(/On, minutes early/);
		expect(pages[own + 1], paper).toMatch(/^\s*\d+\s+Upkeep\b/);
	}
	expect(complaints).toEqual([]);
	await context.close();
});

test('no place for the sensor yet, and a summer without dusk, are said', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360 });
	await goto(page, '/hours/');
	await page.getByText('It has no place yet').waitFor();
	await page.getByText(/Where the yard lies is not known yet/).waitFor();
	await expectAccessible(page, 'hours of a blank yard');
	await openDemo(page, 'Alder Bend');
	await page.goto('about:blank');
	await goto(page, '/help/');
	await page.evaluate(() => {
		const key = 'duskwright/yard';
		const yard = JSON.parse(localStorage.getItem(key)!) as { place: object };
		const location = { name: 'Far north', latitude: 70.5, longitude: 25.5, timeZone: 'Europe/Oslo' };
		localStorage.setItem(key, JSON.stringify({ ...yard, place: { ...yard.place, location } }));
	});
	await page.reload();
	await goto(page, '/hours/');
	await page.getByText(/stays lighter than 16 lx all night/).waitFor();
	const slider = page.getByRole('slider', { name: 'Night of the year' });
	await slider.fill('170');
	expect(await slider.getAttribute('aria-valuetext')).toBe('20 June: no dusk, the lights stay off.');
	await expectAccessible(page, 'hours of the far north');
	expect(complaints).toEqual([]);
	await context.close();
});
