/** The whole-yard exercise: three ways to enter a layout, marks read from the back of a room, a task sheet true to scale, nothing kept. */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import {
	exerciseOf,
	layoutOf,
	markLayout,
	ownLayout,
	readLines,
	writeLayout
} from '../../src/lib/domain/lesson/exercise';
import { expectFit, settle } from './accessible-pages';
import { goto, openPage, useBrowser } from './browser';
import { barsOnPaper, readPdf } from './ruler';

const { browser, folder } = useBrowser();

async function openExercise(
	page: Page,
	{ id = 'walk', code = 'blue hour', units = 'metres' }: { id?: string; code?: string; units?: string } = {}
): Promise<void> {
	await goto(page, `/class/exercise/#units=${units}`);
	await page.locator('#exercise').selectOption(id);
	await page.locator('#class-code').fill(code);
	await page.locator('#class-code').press('Tab');
	await marked(page);
}
/** The marks are those of the list as it stands. */
async function marked(page: Page): Promise<void> {
	await page.locator('.marks[aria-busy="false"]').waitFor();
	await settle(page);
}
async function type(page: Page, text: string): Promise<void> {
	await page.locator('#layout').fill(text);
	await marked(page);
}
/** Every mark with all its words. */
const marksOf = (page: Page): Promise<string[]> =>
	page
		.locator('.marks [data-rule]')
		.evaluateAll((all) =>
			all.map((one) =>
				`${one.getAttribute('data-rule')} ${one.getAttribute('data-state')} ${one.textContent}`.replaceAll(/\s+/g, ' ')
			)
		);
const statesOf = async (page: Page): Promise<Record<string, string>> =>
	Object.fromEntries((await marksOf(page)).map((one) => one.split(' ').slice(0, 2) as [string, string]));
/** Where a place of the yard is on the screen, px. */
const onScreen = (page: Page, along: number, out: number) =>
	page.evaluate(
		([x, y]) => {
			const svg = document.querySelector<SVGSVGElement>('.board svg.grid')!;
			svg.scrollIntoView({ block: 'center' });
			const at = new DOMPoint(x, y).matrixTransform(svg.getScreenCTM()!);
			return { x: at.x, y: at.y };
		},
		[along, out] as const
	);
const view = (page: Page, name: RegExp) => page.getByRole('button', { name }).click();

const lights = [
	['path', 'Walk light', 6.2, 6.5],
	['path', 'Walk light', 3.8, 3.5],
	['tree', 'Tree light', 1.9, 4.1],
	['transformer', 'Transformer', 8.5, 0]
] as const;
const list = lights.map(([word, , along, out]) => `${word} ${along}, ${out}`).join('\n');

describe.each([
	{ width: 1280, height: 720, dark: false },
	{ width: 768, height: 1024, dark: true },
	{ width: 390, height: 844, dark: false }
])('$width px', (size) => {
	test('by taps, by rows and by typing come the same marks, which are the engine’s', async () => {
		const { page, context, complaints } = await openPage(browser(), size);
		await openExercise(page);
		for (const [, name, along, out] of lights) {
			await page.locator('#tapped').getByText(name, { exact: true }).click();
			const { x, y } = await onScreen(page, along, out);
			await page.mouse.click(x, y);
		}
		await marked(page);
		// On a phone a tap is a few tenths of a metre wide: the rows put it right.
		for (const [index, field] of (['along', 'out'] as const).entries())
			for (const [n, light] of lights.entries()) {
				const input = page.locator('.typed li').nth(n).getByRole('textbox').nth(index);
				expect(await input.getAttribute('aria-label')).toContain(field);
				await input.fill(String(light[2 + index]));
				await input.press('Tab');
			}
		await marked(page);
		expect(await page.locator('#layout').inputValue()).toBe(list);
		const tapped = await marksOf(page);
		await page.getByRole('button', { name: 'Another group' }).click();
		await type(page, list);
		expect(await marksOf(page)).toEqual(tapped);
		const wanted = markLayout(exerciseOf('walk', 'blue hour', 'metres'), layoutOf(readLines(list, 'metres')));
		expect(await statesOf(page)).toEqual(Object.fromEntries(wanted.rows.map(({ rule, state }) => [rule, state])));
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('every view is fit', async () => {
		const { page, context, complaints } = await openPage(browser(), size);
		await openExercise(page, { id: 'pool', units: 'feet' });
		await type(page, 'path 18 ft, 27 ft\ntree 2 ft, 11 ft\nlamp 3 4\ntransformer 29 ft, 0, 8 in, 60 VA');
		await page.getByRole('button', { name: 'One way to do it' }).click();
		await settle(page);
		await expectFit(page, 'a group');
		await view(page, /All groups/);
		await settle(page);
		await expectFit(page, 'all groups');
		await view(page, /Task sheet/);
		await settle(page);
		await expectFit(page, 'the task');
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('a tap writes the place it points at, to the tenth of a metre', async () => {
	const { page, context } = await openPage(browser(), {});
	await openExercise(page);
	const { x, y } = await onScreen(page, 3.12, 4.88);
	await page.mouse.click(x, y);
	await expect.poll(() => page.locator('#layout').inputValue()).toBe('path 3.1, 4.9');
	await context.close();
});
test('the engine’s own way is shown when it is asked for, and holds every rule when it is entered', async () => {
	const { page, context, complaints } = await openPage(browser(), {});
	await openExercise(page, { id: 'drive' });
	expect(await page.getByRole('heading', { name: 'One way to do it' }).count()).toBe(0);
	await page.getByRole('button', { name: 'One way to do it' }).click();
	await page.getByRole('heading', { name: 'One way to do it' }).waitFor();
	const own = writeLayout(ownLayout(exerciseOf('drive', 'blue hour', 'metres')), 'metres');
	expect((await page.locator('.own li').allInnerTexts()).join('\n')).toBe(own);
	await type(page, own);
	const states = Object.values(await statesOf(page)).filter((state) => state !== 'none');
	expect(new Set(states)).toEqual(new Set(['held']));
	await page.getByRole('heading', { name: `${states.length} of ${states.length} rules held` }).waitFor();
	expect(complaints).toEqual([]);
	await context.close();
});
test('groups stand side by side, to be read from the back of a room; nothing is kept', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 1280, height: 720 });
	await openExercise(page);
	await type(page, list);
	await page.getByRole('button', { name: 'Another group' }).click();
	await type(page, 'path 6.2, 6.5');
	await view(page, /All groups/);
	await settle(page);
	const table = page.getByRole('table', { name: 'How each rule holds, by group' });
	expect(await table.locator('thead th').allInnerTexts()).toEqual(['Rule', 'Group A', 'Group B']);
	const sizes = await table
		.locator('th, td')
		.evaluateAll((all) => all.map((one) => parseFloat(getComputedStyle(one).fontSize)));
	expect(Math.min(...sizes)).toBeGreaterThanOrEqual(28);
	const kept = await page.evaluate(() => JSON.stringify([{ ...localStorage }, { ...sessionStorage }, location.href]));
	expect(kept).not.toMatch(/6\.2|path 6/);
	await page.reload();
	await page.locator('#layout').waitFor();
	expect(await page.locator('#layout').inputValue()).toBe('');
	expect(complaints).toEqual([]);
	await context.close();
});

/** Millimetres of Letter (ANSI/ASME Y14.1) and A4 (ISO 216). */
describe.each([
	{ paper: 'letter', units: 'feet', sides: [215.9, 279.4] },
	{ paper: 'a4', units: 'metres', sides: [210, 297] }
])('the task on $paper', ({ paper, units, sides }) => {
	test.each(['walk', 'pool'] as const)('is two pages and true to scale: %s', async (id) => {
		const { page, context, complaints } = await openPage(browser(), {});
		await openExercise(page, { id, units });
		await view(page, /Task sheet/);
		await page.locator('#task-paper').selectOption(paper);
		await settle(page);
		const file = join(folder(), `task-${paper}-${id}.pdf`);
		await page.pdf({ path: file, preferCSSPageSize: true, printBackground: false });
		const pages = await readPdf(file, /Scale/);
		expect(pages).toHaveLength(2);
		const [plan, task] = pages;
		for (const { width, height } of pages)
			expect([width, height].toSorted((a, b) => a - b).map((side) => Math.round(side))).toEqual(sides.map(Math.round));
		const exercise = exerciseOf(id, 'blue hour', units === 'feet' ? 'feet' : 'metres');
		// What the sheet says of its scale: inches to the foot, or one to so many.
		const [, over, under, ratio] = /Scale (?:(\d+)\/(\d+) in = 1 ft|1:(\d+))/.exec(plan!.text) ?? [];
		const scale = ratio ? Number(ratio) : (12 * Number(under)) / Number(over);
		const [inches, metric] = barsOnPaper(plan!);
		expect(inches).toBeCloseTo(101.6, 0);
		expect(metric).toBeCloseTo(100, 0);
		// The grid's upright lines run from the house to the street: how long they are, and how far apart the outer two.
		const street = (exercise.empty.site.street * 1000) / scale;
		const lines = plan!.paths.filter(({ width, height }) => width < 0.01 && Math.abs(height - street) < 0.2);
		const lefts = lines.map(({ left }) => left).toSorted((a, b) => a - b);
		const unit = units === 'feet' ? 304.8 : 500;
		const steps = Math.round(((lefts.at(-1)! - lefts[0]!) * scale) / unit);
		expect(steps).toBeGreaterThan(20);
		// Within a quarter of a per cent: what a ruler can tell.
		expect(Math.abs(((lefts.at(-1)! - lefts[0]!) * scale) / (steps * unit) - 1)).toBeLessThan(0.0025);
		expect(Math.abs((lines[0]!.height * scale) / (exercise.empty.site.street * 1000) - 1)).toBeLessThan(0.0025);
		expect(plan!.text).not.toMatch(/\b[PTDW]\d\b/);
		const words = task!.text.replaceAll(/\s+/g, '');
		for (const need of exercise.needs) expect(words).toContain(need.replaceAll(/\s+/g, ''));
		expect(words).toContain('dig-noticeservice');
		expect(complaints).toEqual([]);
		await context.close();
	});
});
