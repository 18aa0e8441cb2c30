import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goto, openDemo, openPage, useBrowser } from './browser';
import { answerByKeyboard, type Wish } from './keyboard';

const { browser, folder } = useBrowser();

const stored = (page: Page) => page.evaluate(() => JSON.stringify(Object.entries(localStorage).sort()));

const press = (control: RegExp): Wish => ({ control, press: true });
const choose = (control: RegExp): Wish => ({ control, choose: true });
const type = (control: RegExp, text: string): Wish => ({ control, type: text });
/** Answers for a small yard, by question; each is given with the keyboard alone. */
const smallYard: Record<string, Wish[]> = {
	units: [choose(/Feet and inches/), type(/Name of the yard/, 'Keyboard yard')],
	where: [press(/Not sure/)],
	facing: [press(/Not sure/)],
	surroundings: [choose(/Not sure/)],
	front: [press(/Add a part/), type(/Width/, '32 ft'), { control: /Light it/, pick: 'Soft' }],
	'house-size': [type(/Depth/, '28 ft'), type(/eaves/, "9' 6")],
	'house-face': [choose(/Finish.*Not sure/), choose(/Texture.*Not sure/)],
	openings: [press(/There are none/)],
	porches: [press(/There is none/)],
	'side-walls': [choose(/Left.*Leave it dark/), choose(/Right.*Leave it dark/)],
	lot: [type(/street/, '42 ft'), press(/Not sure.*Left/), press(/Not sure.*Right/)],
	trees: [press(/\+ oak/)],
	'tree-place': [type(/along/i, '8 ft'), type(/out/i, '20 ft')],
	'tree-wish': [choose(/Softly/)],
	canopy: [type(/canopy/, "19' 8"), type(/branches/, '7 ft')],
	trunk: [type(/trunk/, '12 in')],
	crown: [press(/Not sure.*Height/), choose(/Shape.*Not sure/)],
	'tree-view': [choose(/The street/), choose(/Mown lawn/)],
	walks: [press(/\+ front walk/)],
	'walk-line': [
		type(/Along/, '20 ft'),
		type(/Out/, '42 ft'),
		press(/Add a point/),
		type(/Along/, '20 ft'),
		type(/Out/, '1 ft'),
		choose(/Straight/)
	],
	'walk-width': [type(/Width/, '4 ft')],
	'walk-lights': [choose(/Either side/), choose(/Neither side/)],
	'walk-steps': [press(/There are no steps/)],
	'walk-gates': [press(/There is no gate/)],
	'walk-crossings': [press(/None that I know/)],
	drives: [press(/There is no drive/)],
	beds: [press(/There are no beds/)],
	paved: [press(/Nothing else is paved/)],
	seating: [press(/Nowhere/)],
	water: [press(/There is none/)],
	lights: [press(/There are none/)],
	'garden-walls': [press(/There are none/)],
	numbers: [press(/There is none/)],
	receptacle: [type(/along/i, '30 ft'), type(/out/i, '0')],
	'receptacle-safety': [choose(/GFCI.*Yes/), choose(/Cover.*Yes/)],
	transformer: [choose(/Suggest/)],
	sensor: [choose(/Suggest/)],
	hours: [choose(/Not sure/)],
	price: [press(/Not sure/)],
	lamps: [choose(/LED/), choose(/2700/)],
	cable: [choose(/Gauge/)],
	budget: [choose(/No limit/)]
};

test('a blank yard by keyboard only', async () => {
	const { page, context, complaints } = await openPage(browser());
	await goto(page, '/');
	const start = page.getByRole('link', { name: 'Start with a blank yard' });
	for (let tabs = 0; tabs < 30 && !(await start.evaluate((link) => link === document.activeElement)); tabs += 1)
		await page.keyboard.press('Tab');
	await page.keyboard.press('Enter');
	await page.waitForURL(/\/ask\//);
	const met: string[] = [];
	for (let count = 0; count < 100 && !/\/plan\//.test(page.url()); count += 1) {
		const here = page.url();
		const id = new URL(here).pathname.split('/').filter(Boolean).at(-1) ?? '';
		met.push(id);
		// Focus is on the heading after every step, never on the body.
		await expect.poll(() => page.evaluate(() => document.activeElement?.tagName), { message: id }).toBe('H1');
		const wishes = smallYard[id];
		if (!wishes) throw new Error(`No answer is prepared for ${id}`);
		await answerByKeyboard(page, wishes);
		await page
			.waitForURL((url) => url.href !== here, { timeout: 10_000 })
			.catch(async () => {
				throw new Error(`${id} would not go on: ${await page.locator('main').innerText()}`);
			});
	}
	expect([...met].sort()).toEqual(Object.keys(smallYard).sort());
	await page.getByText('T1', { exact: true }).first().waitFor();
	await page.getByText('P1', { exact: true }).first().waitFor();
	expect(complaints).toEqual([]);
	await context.close();
}, 300_000);

test('back, reload and reopening keep answers and typed text', async () => {
	const { page, context, complaints } = await openPage(browser());
	await goto(page, '/');
	await page.getByRole('link', { name: 'Start with a blank yard' }).click();
	await page.getByText('Feet and inches').click();
	await page.getByLabel(/Name of the yard/).fill('Windmill Close');
	await page.getByRole('button', { name: 'Continue' }).click();
	await page.waitForURL(/where/);
	await page.goBack();
	await page.waitForURL(/units/);
	await expect.poll(() => page.getByLabel(/Name of the yard/).inputValue()).toBe('Windmill Close');
	// Text that is no length yet is kept as typed, over Back, reload and a new tab.
	await goto(page, '/ask/house/house-size/');
	await page.getByRole('textbox', { name: 'Depth of the house' }).fill('30 ft 1');
	await page.getByRole('textbox', { name: 'Height of the eaves' }).fill('nine');
	await page.waitForTimeout(1000);
	await page.reload();
	await expect.poll(() => page.getByRole('textbox', { name: 'Height of the eaves' }).inputValue()).toBe('nine');
	await page.goto('about:blank');
	await page.close();
	const again = await openPage(browser(), { context });
	await goto(again.page, '/ask/house/house-size/');
	await expect.poll(() => again.page.getByRole('textbox', { name: 'Height of the eaves' }).inputValue()).toBe('nine');
	await expect
		.poll(() => again.page.getByRole('textbox', { name: 'Depth of the house' }).inputValue())
		.toMatch(/30 ft 1/);
	await goto(again.page, '/');
	await expect.poll(() => again.page.getByRole('link', { name: /Carry on with Windmill Close/ }).count()).toBe(1);
	expect([...complaints, ...again.complaints]).toEqual([]);
	await context.close();
});

test('a yard goes to a file and comes back the same; a bad file leaves the yard in hand alone', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Quince Row');
	const download = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save a copy' }).first().click();
	const file = join(folder(), 'copy.duskwright.json');
	await (await download).saveAs(file);
	const saved = readFileSync(file, 'utf8');
	await page.waitForTimeout(1000);
	const before = await stored(page);
	const cases: [string, string, RegExp][] = [
		['broken.json', saved.slice(0, 200), /broken|cut|not|end/i],
		['other.json', '{"hello": 1}', /yard/i],
		['newer.json', saved.replace('"version": 1', '"version": 99'), /newer|version/i],
		['huge-number.json', saved.replace(/"width": [\d.]+/, '"width": 1e999'), /width|number/i]
	];
	for (const [name, text, says] of cases) {
		writeFileSync(join(folder(), name), text);
		await goto(page, '/');
		await page.locator('input[type=file]').setInputFiles(join(folder(), name));
		await page.getByRole('alert').filter({ hasText: says }).first().waitFor();
		expect(await stored(page), name).toBe(before);
	}
	// A second device.
	const other = await openPage(browser());
	await goto(other.page, '/');
	await other.page.locator('input[type=file]').setInputFiles(file);
	await other.page.waitForURL(/\/answers\//);
	const copy = other.page.waitForEvent('download');
	await other.page.getByRole('button', { name: 'Save a copy' }).first().first().click();
	const second = join(folder(), 'second.duskwright.json');
	await (await copy).saveAs(second);
	expect(readFileSync(second, 'utf8')).toBe(saved);
	expect([...complaints, ...other.complaints]).toEqual([]);
	await context.close();
	await other.context.close();
});

test('what cannot be is said at the field, with the range, and nothing is lost', async () => {
	const { page, context } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await goto(page, '/ask/house/house-size/');
	const eaves = page.getByRole('textbox', { name: 'Height of the eaves' });
	await eaves.fill('40 m');
	await page.getByRole('button', { name: 'Continue' }).click();
	await expect.poll(() => eaves.getAttribute('aria-invalid')).toBe('true');
	expect(page.url()).toContain('house-size');
	await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe(await eaves.getAttribute('id'));
	const described = (await eaves.getAttribute('aria-describedby')) ?? '';
	const said = await page.locator(`#${described.split(' ').at(-1)}`).innerText();
	expect(said).toMatch(/ft/);
	await eaves.fill('12 6');
	await page.getByRole('button', { name: 'Continue' }).click();
	// Ambiguous: refused with suggestions; taking one is enough.
	await page.getByRole('button', { name: '12 ft 6 in' }).click();
	await page.getByRole('button', { name: 'Continue' }).click();
	await page.waitForURL((url) => !url.pathname.includes('house-size'));
	await context.close();
});

test('what cannot stand where it is put is said at the question, in words, and the rest goes on', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await goto(page, '/ask/trees/tree-place/?item=maple');
	const along = page.locator('#f-trees-maple-at-along');
	await along.waitFor();
	await along.fill('58 ft');
	await page.locator('#f-trees-maple-at-out').fill('20 ft');
	await page
		.getByText(/maple.*stands in the drive|maple.*drive/i)
		.first()
		.waitFor();
	await goto(page, '/plan/');
	await page
		.getByRole('heading', { level: 1 })
		.filter({ hasText: /lights/ })
		.waitFor();
	expect(await page.locator('main').innerText()).not.toMatch(/NaN|undefined/);
	expect(complaints).toEqual([]);
	await context.close();
});
