/** The slip of the counter on its three papers: one page, all that is bought, the cautions, and a code that gives the same yard. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { QuickAnswers } from '../../src/lib/domain/quick';
import { quickYard, usualAnswers } from '../../src/lib/domain/quick';
import { writeYard } from '../../src/lib/domain/yard';
import { codeTextOf, yardFromFragment } from '../../src/lib/state/link';
import { qrOf } from '../../src/lib/ui/qr';
import { decodedPng } from '../../src/lib/ui/qr.testing';
import { expectAccessible, goto, openPage, site, useBrowser } from './browser';
import { readPdf, type PrintedPage } from './ruler';

const { browser, folder } = useBrowser();

const papers = [
	{ paper: 'letter', name: 'Letter', width: 215.9, height: 279.4, dpi: 150 },
	{ paper: 'a4', name: 'A4', width: 210, height: 297, dpi: 150 },
	// Common practice, no source: a receipt printer has 203 dots to the inch.
	{ paper: 'receipt', name: '80 mm roll', width: 80, height: null, dpi: 203 }
] as const;
type Paper = (typeof papers)[number];

const usual: QuickAnswers = { ...usualAnswers('feet'), trees: { small: 1, medium: 0, large: 0 } };
const large: QuickAnswers = {
	...usualAnswers('feet'),
	walk: 18.288,
	drive: 12.192,
	trees: { small: 1, medium: 2, large: 1 },
	wall: 9.144,
	receptacle: 6.096,
	shape: 'bent',
	clear: ['pool'],
	transformer: 150
};

/** The counter with the demo shelf, a customer's picks taken, and the slip of them on the page. */
async function openSlip(page: Page, answers: QuickAnswers): Promise<void> {
	await goto(page, '/counter/');
	await page.getByRole('button', { name: 'Use the demo shelf' }).click();
	await page.getByRole('button', { name: 'Use the demo shelf' }).waitFor({ state: 'detached' });
	await page.evaluate(
		(kept) => localStorage.setItem('duskwright/counter', kept),
		JSON.stringify({ answers, taken: null })
	);
	await goto(page, '/counter/slip/');
	await page.locator('.slip .go-on').waitFor();
	await page.locator('.page[aria-busy="false"]').waitFor();
}
const choose = (page: Page, { name }: Paper) => page.locator('#slip-paper').getByText(name, { exact: true }).click();
async function printed(page: Page, paper: Paper, stem: string): Promise<{ file: string; pages: PrintedPage[] }> {
	await choose(page, paper);
	await page.locator(`.slip.${paper.paper}`).waitFor();
	const file = join(folder(), `${stem}-${paper.paper}.pdf`);
	await page.pdf({ path: file, preferCSSPageSize: true, printBackground: false });
	return { file, pages: await readPdf(file, /./) };
}
/** In the order in which it was written: what stands side by side is not mixed line by line. */
const textOf = (file: string): string => execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' });
/** Without what a line break, a hyphen or a space may do to words. */
const plain = (text: string): string => text.replace(/\s+/g, '');
function codeOn(file: string, dpi: number): Promise<string | null> {
	const stem = file.replace(/\.pdf$/, '');
	execFileSync('pdftoppm', ['-f', '1', '-l', '1', '-singlefile', '-gray', '-png', '-r', String(dpi), file, stem]);
	return decodedPng(readFileSync(`${stem}.png`));
}
/** Within a quarter of a per cent: what a ruler over 100 mm can tell. */
const near = (measured: number, wanted: number) => Math.abs(measured / wanted - 1) < 0.0025;

describe.each([
	{ customer: 'a usual customer', answers: usual },
	{ customer: 'a large front with a pool', answers: large }
])('the slip of $customer', ({ answers }) => {
	let opened: Awaited<ReturnType<typeof openPage>>;
	beforeAll(async () => {
		opened = await openPage(browser(), {});
		await openSlip(opened.page, answers);
	});
	afterAll(() => opened.context.close());

	test.each(papers)('on $name', async (paper) => {
		const { page, complaints } = opened;
		const { file, pages } = await printed(page, paper, answers === usual ? 'usual' : 'large');
		expect(pages).toHaveLength(1);
		const [sheet] = pages as [PrintedPage];
		expect(Math.abs(sheet.width - paper.width)).toBeLessThan(0.3);
		if (paper.height === null) expect(sheet.height).toBeGreaterThan(150);
		else expect(Math.abs(sheet.height - paper.height)).toBeLessThan(0.3);
		// Nothing beyond the margins: 12 mm of a sheet, 4 mm of a roll.
		const side = paper.height === null ? 4 : 12;
		for (const { text, left, width } of sheet.words.filter((word) => word.text.trim() !== ''))
			expect(left >= side - 0.5 && left + width <= sheet.width - side + 0.5, text).toBe(true);

		const text = textOf(file);
		expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
		const codes = await page.locator('.slip .buys .code').allTextContents();
		expect(codes.length).toBeGreaterThan(1);
		for (const code of codes) expect(plain(text)).toContain(plain(code));
		const cautions = await page.locator('.slip .cautions p').allTextContents();
		expect(cautions).toHaveLength(4);
		for (const caution of cautions) expect(plain(text)).toContain(plain(caution));
		expect(cautions.map((words) => words.split('.')[0]).slice(0, 2)).toEqual(['Mains side', 'Before you dig']);
		if (answers === large) expect(cautions[2]).toMatch(/^Water\./);
		expect(cautions[3]).toMatch(/^Local code comes first/);
		for (const words of ['Nothing is sent', 'Check at home', '/open/', 'Run 1:'])
			expect(plain(text)).toContain(plain(words));

		const yard = quickYard(answers).yard;
		const link = codeTextOf(yard, `${site()}/open/`);
		const found = await codeOn(file, paper.dpi);
		expect(found).toBe(link);
		const read = yardFromFragment(new URL(found!).hash);
		expect(read.ok && writeYard(read.yard)).toBe(writeYard(yard));

		// The dark of the code is a known length: its modules times the size of one, at least half a millimetre.
		const { modules } = qrOf(link)!;
		const code = sheet.paths.filter(
			({ width, height }) => Math.abs(width - height) < 0.05 && width > 30 && width / modules >= 0.499
		);
		const shown = await page.locator('.go-on svg').getAttribute('width');
		const dark = (Number.parseFloat(shown!) * modules) / (modules + 8);
		expect(code.some(({ width }) => near(width, dark))).toBe(true);
		expect(dark / modules).toBeGreaterThanOrEqual(0.4999);
		expect(complaints).toEqual([]);
	});

	test('stands in the order of the shelf places, and sums up', async () => {
		const { page } = opened;
		const places = await page.locator('.slip .buys .place').allTextContents();
		const numbers = places.map((place) => (place.match(/\d+/g) ?? []).map(Number));
		const inOrder = numbers.toSorted((a, b) => a[0]! - b[0]! || (a[1] ?? 0) - (b[1] ?? 0));
		expect(numbers).toEqual(inOrder);
		const cents = (words: string) => Math.round(Number(words.replace(/[^\d.]/g, '')) * 100);
		const prices = await page.locator('.slip .buys .price').allTextContents();
		const sum = await page.locator('.slip .sum strong').textContent();
		expect(prices.map(cents).reduce((a, b) => a + b, 0)).toBe(cents(sum!));
	});
});

describe('a list too long for one page', () => {
	test('says what is on the second, and loses nothing', async () => {
		const { page, context, complaints } = await openPage(browser(), {});
		await openSlip(page, large);
		// A person may enlarge the type of the page: the same list then takes more than a sheet.
		await page.evaluate(() => {
			const sheet = new CSSStyleSheet();
			sheet.replaceSync('.slip.slip.slip .first { font-size: 13pt; }');
			document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
		});
		const { file, pages } = await printed(page, papers[1], 'long');
		expect(pages.length).toBe(2);
		const [first, second] = textOf(file).split('\f');
		expect(first).toMatch(/[Oo]n the second page/);
		expect(second).toContain('second page');
		const codes = await page.locator('.slip .buys > li:not([hidden]) .code').allTextContents();
		expect(new Set(codes).size).toBe(codes.length);
		for (const code of codes) expect(plain(first! + second!)).toContain(plain(code));
		expect(complaints).toEqual([]);
		await context.close();
	});
});

describe('the page of the slip', () => {
	test.each([
		{ width: 360, dark: false },
		{ width: 768, dark: true },
		{ width: 1280, dark: false }
	])('at $width px: nothing is wider than the screen, and all can use it', async ({ width, dark }) => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openSlip(page, usual);
		for (const paper of papers) {
			await choose(page, paper);
			await page.locator(`.slip.${paper.paper}`).waitFor();
			expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
			await expectAccessible(page, `${paper.name} at ${width} px`);
		}
		await page.getByRole('link', { name: 'Back to the counter' }).click();
		await page.waitForURL(/\/counter\/$/);
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('remembers the paper for the shop', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 768 });
		await openSlip(page, usual);
		expect(await page.locator('#slip-paper input:checked').inputValue()).toBe('letter');
		await choose(page, papers[2]);
		await page.reload();
		await page.locator('.slip.receipt').waitFor();
		expect(await page.locator('#slip-paper input:checked').inputValue()).toBe('receipt');
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('says what to do where there is no shelf', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 360 });
		await goto(page, '/counter/slip/');
		await page.getByText('There is no shelf yet').waitFor();
		await page.getByRole('link', { name: 'Back to the counter' }).waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});
