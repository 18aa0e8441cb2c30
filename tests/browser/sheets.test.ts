/** Worksheets on both papers: whole problems, keys on pages of their own, squares and bars true to scale, and a class set in time. */
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { makeSheets, type Sheet, type Variant } from '../../src/lib/domain/lesson';
import { evaluate } from '../../src/lib/domain/shared/evaluate';
import { papers } from '../../src/lib/print/scale';
import { readSettings, settingsFragment, usual, type Settings } from '../../src/routes/class/sheets/settings';
import { expectFit } from './accessible-pages';
import { goto, openPage, useBrowser } from './browser';
import { barsOnPaper, readPdf, type PrintedPage } from './ruler';

const { browser, folder } = useBrowser();

async function openSheets(page: Page, settings: Partial<Settings>): Promise<Settings> {
	const all = { ...usual, ...settings };
	await goto(page, `/class/sheets/${settingsFragment(all)}`);
	await page.locator('.leaf').first().waitFor();
	return all;
}
async function printed(page: Page, name: string): Promise<{ pages: PrintedPage[]; texts: string[] }> {
	const path = join(folder(), `${name}.pdf`);
	await page.pdf({ path, preferCSSPageSize: true, printBackground: false });
	const texts = execFileSync('pdftotext', ['-raw', path, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1);
	return { pages: await readPdf(path, /Scale 1/), texts };
}
/** Without what a line break may do to words. */
const plain = (text: string): string => text.replace(/\s+/g, '');
/** Within a quarter of a per cent: what a ruler over 100 mm can tell. */
const near = (measured: number, wanted: number) => Math.abs(measured / wanted - 1) < 0.0025;

const cases = [
	{ paper: 'letter', units: 'feet', ratio: 48, square: 6.35 },
	{ paper: 'a4', units: 'metres', ratio: 50, square: 5 }
] as const;

describe.each(cases)('a set on $paper in $units', ({ paper, units, ratio, square }) => {
	const settings = {
		code: 'Blue hour',
		level: 'several',
		count: 11,
		units,
		variants: ['A', 'B', 'C'] as Variant[],
		sheets: 4,
		ratio
	} satisfies Partial<Settings>;

	test('has its problems whole, its keys after all sheets, and true squares', async () => {
		const { page, context, complaints } = await openPage(browser(), {});
		const all = await openSheets(page, settings);
		const { pages, texts } = await printed(page, `set-${paper}`);
		const made = makeSheets(all, all.variants);
		const isKey = texts.map((text) => text.includes('key to sheet'));
		// Keys have pages of their own, after all sheets.
		expect(isKey).toEqual(isKey.toSorted((a, b) => Number(a) - Number(b)));
		const starts = texts.flatMap((text, n) => (/page 1 of \d/.test(text) ? [n] : []));
		expect(starts.length).toBe(4 + 3);
		expect(starts.map((n) => /sheet ([A-F])/.exec(texts[n]!)![1]).join('')).toBe('ABCAABC');
		for (const [index, start] of starts.entries()) {
			const own = texts.slice(start, starts[index + 1] ?? texts.length);
			const sheet = made.find(({ variant }) => own[0]!.includes(`sheet ${variant}`))!;
			for (const [n, text] of own.entries()) {
				expect(text).toContain(`page ${n + 1} of ${own.length}`);
				expect(plain(text)).toContain(plain(sheet.mark));
			}
			expectWhole(sheet, own, isKey[start]!);
		}
		expectOnPaper(pages, paper);
		expectSquares(
			pages.find(({ text }) => /Scale 1/.test(text))!,
			square,
			units
		);
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('can be sheets alone, or keys alone', async () => {
		const { page, context } = await openPage(browser(), {});
		await openSheets(page, { ...settings, printed: 'sheets', ratio: null });
		const sheets = await printed(page, `sheets-${paper}`);
		expect(sheets.texts.some((text) => text.includes('key to'))).toBe(false);
		await page.locator('#printed').getByText('Keys alone').click();
		const keys = await printed(page, `keys-${paper}`);
		expect(keys.texts.every((text) => text.includes('key to'))).toBe(true);
		expect(keys.texts.filter((text) => /page 1 of/.test(text))).toHaveLength(3);
		await context.close();
	});
});

/** Every problem stands on one page alone, with all that is printed of it; what is to be found is on the key only. */
function expectWhole(sheet: Sheet, texts: readonly string[], isKey: boolean): void {
	const lines = texts.map(plain);
	for (const { number, title, problem, blanks, lines: shown } of sheet.problems) {
		const on = lines.filter(
			(text) => text.includes(plain(`${number} ${title}`)) && (isKey || text.includes(plain(problem.story)))
		);
		expect(on, `${sheet.mark}, ${number}`).toHaveLength(1);
		const [text] = on as [string];
		if (!isKey) expect(text).toContain(plain(problem.ask));
		expect(text.includes(plain(problem.because))).toBe(isKey);
		for (const [n, step] of problem.steps.entries()) {
			const sum = plain(`${step.symbol} = ${step.line} = ${step.text}`);
			if (isKey) expect(text).toContain(sum);
			else if (shown.length === 0 || blanks.includes(n)) expect(text).not.toContain(sum);
		}
	}
}
function expectOnPaper(pages: readonly PrintedPage[], paper: keyof typeof papers): void {
	const { width, height } = papers[paper];
	for (const [n, page] of pages.entries()) {
		expect(Math.abs(page.width - width)).toBeLessThan(0.3);
		expect(Math.abs(page.height - height)).toBeLessThan(0.3);
		for (const word of page.words.filter(({ text }) => text.trim() !== '')) {
			expect(word.left >= 11.5 && word.left + word.width <= width - 11.5, `${n}: ${word.text}`).toBe(true);
			expect(word.top > 10 && word.top < height - 10, `${n}: ${word.text}`).toBe(true);
			// 11 pt; what stands raised or lowered is smaller.
			if (word.text.trim().length > 3) expect(word.height, `${n}: ${word.text}`).toBeGreaterThan((10.9 * 25.4) / 72);
		}
	}
}
/** The squares of the yard, the bars beside them. */
function expectSquares(page: PrintedPage, square: number, units: 'feet' | 'metres'): void {
	const upright = page.paths.filter(({ width, height }) => width < 0.05 && height > 100).map(({ left }) => left);
	const level = page.paths.filter(({ width, height }) => height < 0.05 && width > 100).map(({ top }) => top);
	for (const lines of [upright, level]) {
		const from = Math.min(...lines);
		expect(near((Math.max(...lines) - from) / (new Set(lines).size - 1), square)).toBe(true);
		for (const line of lines)
			expect(Math.abs((line - from) / square - Math.round((line - from) / square))).toBeLessThan(0.05);
	}
	const bars = barsOnPaper(page);
	expect(bars).toHaveLength(3);
	expect(near(bars[0]!, 101.6) && near(bars[1]!, 100)).toBe(true);
	// 5 m at 1:50 and 10 ft at a quarter of an inch: the longest round length that is no longer than the others.
	expect(near(bars[2]!, units === 'feet' ? 63.5 : 100)).toBe(true);
}

/** From the press of the button until all that a printer would ask for stands, laid out. */
const pressPrint = (page: Page) =>
	page.evaluate(
		() =>
			new Promise<{ ms: number; sheets: number; keys: number }>((done) => {
				const from = performance.now();
				window.print = () => {
					const isLaidOut = document.querySelector('.worksheets')!.getBoundingClientRect().height > 0;
					const count = (kind: string) => (isLaidOut ? document.querySelectorAll(`.leaf.${kind}.first`).length : 0);
					done({ sheets: count('sheet'), keys: count('key'), ms: performance.now() - from });
				};
				[...document.querySelectorAll('button')].find((one) => one.textContent?.trim() === 'Print')!.click();
			})
	);

describe('a class set', () => {
	test('of thirty sheets with six keys is laid out within two seconds', async () => {
		const { page, context, complaints } = await openPage(browser(), {});
		await openSheets(page, { code: 'class 7b', count: 10, variants: ['A', 'B', 'C', 'D', 'E', 'F'], sheets: 30 });
		const tries: number[] = [];
		// Other programs may take their share of the machine: the best of three is the page's own.
		for (const code of ['class 7c', 'class 7d', 'class 7b']) {
			await page.getByLabel('Class code').fill(code);
			await page.locator('.leaf .mark', { hasText: code }).first().waitFor();
			const { ms, sheets, keys } = await pressPrint(page);
			expect({ sheets, keys }).toEqual({ sheets: 30, keys: 6 });
			tries.push(ms);
		}
		expect(Math.min(...tries)).toBeLessThan(2000);
		const { texts } = await printed(page, 'class-set');
		expect(texts.filter((text) => /page 1 of/.test(text))).toHaveLength(36);
		expect(complaints).toEqual([]);
		await context.close();
	}, 240_000);

	test('is made again from its mark, and from its address in another browser', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 768 });
		await openSheets(page, {
			code: 'class 7b',
			level: 'one',
			count: 6,
			lessons: ['offset', 'load'],
			variants: ['C'],
			sheets: 1
		});
		const sheet = () => page.locator('.leaf').allTextContents();
		const first = await sheet();
		const mark = (await page.locator('.leaf .mark').first().textContent())!;
		await goto(page, '/class/sheets/');
		await page.getByText('Make a sheet again').click();
		await page.getByLabel('Mark of a sheet').fill(mark.toUpperCase());
		await page.getByRole('button', { name: 'Make it again' }).click();
		await page.getByText('This is sheet C').waitFor();
		await expect.poll(sheet).toEqual(first);
		await expect
			.poll(() => readSettings(new URL(page.url()).hash))
			.toMatchObject({ code: 'class 7b', level: 'one', count: 6 });
		const other = await openPage(browser(), {});
		await other.page.goto(page.url());
		await other.page.locator('.leaf').first().waitFor();
		expect(await other.page.locator('.leaf').allTextContents()).toEqual(first);
		expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => /class|sheet/.test(key)))).toEqual([]);
		expect([...complaints, ...other.complaints]).toEqual([]);
		await context.close();
		await other.context.close();
	});

	test('shows arithmetic that gives what it says', async () => {
		const { page, context } = await openPage(browser(), {});
		await openSheets(page, { code: 'elm', level: 'solved', count: 30, variants: ['D'], sheets: 1 });
		const sums = await page.locator('.leaf .steps .sum').allInnerTexts();
		expect(sums.length).toBeGreaterThan(60);
		for (const sum of sums) {
			const [, line, result] = sum.replace(/\s+/g, ' ').split(' = ') as [string, string, string];
			const [text] = result.split(' ') as [string];
			const decimals = text.split('.')[1]?.length ?? 0;
			expect(Math.abs(evaluate(line)).toFixed(decimals), sum).toBe(text.replace(/^[−-]/, ''));
		}
		await context.close();
	});
});

describe('the page of the worksheets', () => {
	test.each([
		{ width: 360, dark: false },
		{ width: 768, dark: true },
		{ width: 1280, dark: false }
	])('at $width px: nothing is wider than the screen, and all can use it', async ({ width, dark }) => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openSheets(page, { code: 'elm', level: 'one', count: 11, ratio: 48 });
		await page.getByText('Make a sheet again').click();
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		await expectFit(page, `worksheets at ${width} px`);
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('says what it took instead, and takes what is typed', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 360 });
		await openSheets(page, { code: ' ', level: 'one', lessons: ['load', 'safety'] });
		await page.getByText('No class code was given').waitFor();
		await page.getByText('has no problems with the level “one step left out”').waitFor();
		await page.getByLabel('Class code').fill('Elm');
		await page.getByText('No class code was given').waitFor({ state: 'detached' });
		await page.locator('.leaf .mark', { hasText: 'elm · A' }).first().waitFor();
		await page.getByLabel('Problems on a sheet', { exact: true }).fill('200');
		await page.getByText('200 problems were asked for; a sheet has at most 60.').waitFor();
		await page.getByLabel('Problems on a sheet', { exact: true }).fill('none');
		await page.getByText('Type a whole number from 1 to 60.').waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});
