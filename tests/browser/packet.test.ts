import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';
import { barsOnPaper, readPdf, type OnPaper, type PrintedPage } from './ruler';

const { browser, folder } = useBrowser();

type PaperName = 'letter' | 'a4';
/** Millimetres: 8.5 by 11 in, and A4 by ISO 216. */
const paperSizes = { letter: [215.9, 279.4], a4: [210, 297] } as const;
/** Millimetres that the packet keeps clear at each side. */
const margin = 12;
const chapters = [
	'Good to know',
	'Plan to scale',
	'Fixture schedule',
	'Staking out',
	'Where the cable goes',
	'Cable schedule',
	'Shopping list',
	'Order of work',
	'First night',
	'After dark',
	'Hours and sensor',
	'Upkeep'
];

/** At the foot of the plan's sheets. */
const onPlan = /· 2 Plan to scale ·/;

async function openPacket(page: Page, title: string): Promise<void> {
	await openDemo(page, title);
	await goto(page, '/packet/');
	await page.locator('.sheets svg').first().waitFor();
}
async function printed(
	page: Page,
	name: string,
	paper: PaperName,
	scale: string,
	pages?: string
): Promise<PrintedPage[]> {
	await page
		.locator('#paper')
		.getByText(paper === 'a4' ? 'A4' : 'Letter', { exact: true })
		.click();
	await page.locator('#scale').selectOption(scale);
	const path = join(folder(), `${name}-${paper}-${scale}.pdf`);
	await page.pdf({ path, preferCSSPageSize: true, printBackground: false, pageRanges: pages });
	return readPdf(path, onPlan);
}
/** Within a quarter of a per cent: what a ruler over 100 mm can tell. */
const near = (measured: number, wanted: number) => Math.abs(measured / wanted - 1) < 0.0025;

/** What holds on every page: its paper, its number of all, whose it is, and nothing beyond the margins or broken. */
function expectSound(pages: PrintedPage[], paper: PaperName, name: string, from = 1): void {
	const all = /\d+ of (\d+)/.exec(pages[0]!.text)?.[1];
	const [short, long] = paperSizes[paper];
	for (const [index, page] of pages.entries()) {
		const sides = [page.width, page.height].toSorted((a, b) => a - b);
		expect(sides[0]).toBeCloseTo(short, 0);
		expect(sides[1]).toBeCloseTo(long, 0);
		expect(page.text).toContain(`${from + index} of ${all}`);
		expect(page.text).toMatch(new RegExp(`${name} · (\\d+ [A-Z]|plan )`));
		expect(page.text).not.toMatch(/NaN|undefined|Infinity|\[object/);
		// More than its foot: a blank sheet is a fault of the layout.
		expect(page.text.length).toBeGreaterThan(250);
		const outside = page.words.filter(
			({ text, left, width, top }) =>
				text.trim() !== '' &&
				(left < margin - 0.5 || left + width > page.width - margin + 0.5 || top < 0 || top > page.height)
		);
		expect(outside.map(({ text }) => `${from + index}: ${text}`)).toEqual([]);
	}
}
const planPages = (pages: PrintedPage[]) => pages.filter(({ text }) => onPlan.test(text));
/** The path of the house, which is nowhere drawn but on the plan: so wide and so deep. */
const isHouse = (width: number, depth: number, ratio: number) => (path: OnPaper) =>
	near(path.width, (width * 1000) / ratio) && near(path.height, (depth * 1000) / ratio);
function expectToScale(pages: PrintedPage[], ratio: number, [width, depth]: readonly [number, number]): void {
	expect(pages.length).toBeGreaterThan(0);
	for (const page of pages) {
		const [inches, metric, yard, ...more] = barsOnPaper(page);
		expect(near(inches!, 101.6)).toBe(true);
		expect(near(metric!, 100)).toBe(true);
		expect(more).toEqual([]);
		const said = /(\d+) (ft|m) of the yard/.exec(page.text)!;
		expect(near(yard!, (Number(said[1]) * (said[2] === 'ft' ? 304.8 : 1000)) / ratio)).toBe(true);
	}
	expect(pages.some(({ paths }) => paths.some(isHouse(width, depth, ratio)))).toBe(true);
}

/** As surveyed: width and depth of the house, metres. */
const houses = { 'Quince Row': [6.4008, 10.3632], Hazelmoor: [16, 9] } as const;
const scaleTexts: Record<string, string> = {
	'48': '1/4 in = 1 ft',
	'96': '1/8 in = 1 ft',
	'192': '1/16 in = 1 ft',
	'50': '1:50',
	'100': '1:100',
	'200': '1:200'
};
/*
 * Sheets of the plan, and those of the grid of parts, by hand. A part has 191.9 by 199.4 mm of Letter upright, 255.4 by 135.9 across; 186 by 217
 * and 273 by 130 of A4; neighbours share 10 mm. Quince Row without the back of its house is 11.05 by 12.59 m, Hazelmoor 47.10 by 69.12 m.
 * Hazelmoor at 1:100 is 471 by 691 mm: on A4 461 ÷ 176 = 2.6 and 681 ÷ 207 = 3.3, so 3 by 4; at 1:200, 235.5 by 345.6 mm, across 1 by
 * 335.6 ÷ 120 = 2.8, so 1 by 3. A plan in parts is led by one sheet that shows all of it.
 */
const cases: { title: keyof typeof houses; paper: PaperName; scale: string; grid: number }[] = [
	{ title: 'Quince Row', paper: 'letter', scale: '48', grid: 3 },
	{ title: 'Quince Row', paper: 'letter', scale: '96', grid: 1 },
	{ title: 'Quince Row', paper: 'letter', scale: '192', grid: 1 },
	{ title: 'Quince Row', paper: 'letter', scale: '50', grid: 2 },
	{ title: 'Quince Row', paper: 'letter', scale: '100', grid: 1 },
	{ title: 'Quince Row', paper: 'letter', scale: '200', grid: 1 },
	{ title: 'Quince Row', paper: 'a4', scale: '48', grid: 3 },
	{ title: 'Quince Row', paper: 'a4', scale: '96', grid: 1 },
	{ title: 'Quince Row', paper: 'a4', scale: '192', grid: 1 },
	{ title: 'Quince Row', paper: 'a4', scale: '50', grid: 3 },
	{ title: 'Quince Row', paper: 'a4', scale: '100', grid: 1 },
	{ title: 'Quince Row', paper: 'a4', scale: '200', grid: 1 },
	{ title: 'Hazelmoor', paper: 'a4', scale: '50', grid: 42 },
	{ title: 'Hazelmoor', paper: 'a4', scale: '100', grid: 12 },
	{ title: 'Hazelmoor', paper: 'a4', scale: '200', grid: 3 },
	{ title: 'Hazelmoor', paper: 'letter', scale: '48', grid: 48 },
	{ title: 'Hazelmoor', paper: 'letter', scale: '96', grid: 12 },
	{ title: 'Hazelmoor', paper: 'letter', scale: '192', grid: 3 }
];

describe.each(['Quince Row', 'Hazelmoor'] as const)('the plan of %s at a chosen scale', (title) => {
	let opened: Awaited<ReturnType<typeof openPage>>;
	beforeAll(async () => {
		opened = await openPage(browser(), {});
		await openPacket(opened.page, title);
	});
	afterAll(() => opened.context.close());

	test.each(cases.filter((one) => one.title === title))('$paper, 1 to $scale', async ({ paper, scale, grid }) => {
		const pages = await printed(opened.page, title, paper, scale, grid > 12 ? '3-23' : '3-11');
		expectSound(pages, paper, title, 3);
		const plan = planPages(pages);
		const parts = plan.filter(({ text }) => /Plan, part [A-Z]\d/.test(text));
		const sheets = grid === 1 ? plan : parts;
		expectToScale(sheets, Number(scale), houses[title]);
		for (const { text } of sheets) expect(text).toContain(`Scale ${scaleTexts[scale]!}`);
		if (grid === 1) return expect(plan).toHaveLength(1);
		// What is not printed is counted on each part as left out.
		expect(plan).toHaveLength(parts.length + 1);
		const leftOut = Number(/Left out: (\d+)/.exec(parts[0]!.text)?.[1] ?? 0);
		expect(parts.length + leftOut).toBe(grid);
		const names = parts.map(({ text }) => /Plan, part ([A-Z]\d+)/.exec(text)![1]!);
		expect(new Set(names).size).toBe(parts.length);
		for (const { text } of parts) for (const name of names) expect(text).toContain(name);
		expect(opened.complaints).toEqual([]);
	});
});

describe.each([
	{ title: 'Quince Row', paper: 'letter', width: 1280 },
	{ title: 'Quince Row', paper: 'a4', width: 360 },
	{ title: 'Alder Bend', paper: 'letter', width: 360 },
	{ title: 'Alder Bend', paper: 'a4', width: 1280 },
	{ title: 'Hazelmoor', paper: 'letter', width: 360 },
	{ title: 'Hazelmoor', paper: 'a4', width: 1280 }
] as const)('the packet of $title on $paper, printed from $width px', ({ title, paper, width }) => {
	test('every page is sound, every chapter is there, and the cover is one page', async () => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await openPacket(page, title);
		const labels = await page
			.locator('#sheet-schedule')
			.evaluate((head) =>
				[...head.closest('section')!.querySelectorAll('tbody .label')].map((label) => label.textContent!.trim())
			);
		const pages = await printed(page, `${title}-${width}`, paper, 'fit');
		expectSound(pages, paper, title);
		expect(pages[0]!.text).toContain('In this packet');
		expect(pages[1]!.text).toContain('1 Good to know');
		for (const [index, chapter] of chapters.entries())
			expect(pages.some(({ text }) => text.includes(`· ${index + 1} ${chapter} ·`))).toBe(true);
		// Each chapter's pages follow each other, in the order of the contents.
		const numbers = pages.slice(1).map(({ text }) => Number(/ · (\d+) [A-Z][^·]* · plan /.exec(text)?.[1]));
		expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
		const text = pages.map((one) => one.text).join('\n');
		for (const label of labels) expect(text).toContain(label);
		for (const needed of [/licensed electrician/i, /local code/i, /dig/i, /transformer/i, /connector/i, /scale/i])
			expect(text).toMatch(needed);
		for (const plan of planPages(pages)) {
			const [inches, metric] = barsOnPaper(plan);
			expect(near(inches!, 101.6) && near(metric!, 100)).toBe(true);
		}
		// Table heads come again: rows of the schedule never stand under no head.
		for (const one of pages.filter((sheet) => / · 3 Fixture schedule · /.test(sheet.text)))
			expect(one.text).toMatch(/What it is/);
		for (const one of pages.filter((sheet) => / · 4 Staking out · /.test(sheet.text)))
			expect(one.text).toMatch(/From left\s+corner/);
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('what was chosen for printing is kept', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360 });
	await openPacket(page, 'Quince Row');
	await page.locator('#paper').getByText('A4', { exact: true }).click();
	await page.locator('#scale').selectOption('50');
	await page.getByText('on 2 sheets with match marks, after one that shows all of it').waitFor();
	await page.reload();
	await page.locator('.sheets svg').first().waitFor();
	expect(await page.locator('#scale').inputValue()).toBe('50');
	expect(await page.locator('#paper input:checked').inputValue()).toBe('a4');
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
	await expectAccessible(page, 'the packet at 1:50');
	expect(complaints).toEqual([]);
	await context.close();
});

describe('files for other programs', () => {
	let opened: Awaited<ReturnType<typeof openPage>>;
	beforeAll(async () => {
		opened = await openPage(browser(), {});
		await openPacket(opened.page, 'Quince Row');
		await opened.page.locator('#scale').selectOption('100');
		await opened.page.getByText('Files for other programs').click();
	});
	afterAll(() => opened.context.close());
	async function saved(button: string): Promise<{ path: string; name: string }> {
		const waiting = opened.page.waitForEvent('download');
		await opened.page.getByRole('button', { name: button }).click();
		const download = await waiting;
		const path = join(folder(), download.suggestedFilename());
		await download.saveAs(path);
		return { path, name: download.suggestedFilename() };
	}

	test('the SVG opens alone and is true to scale', async () => {
		const { path, name } = await saved('Plan as SVG');
		expect(name).toBe('quince-row-plan.svg');
		const text = readFileSync(path, 'utf8');
		expect(text).not.toMatch(/class=|<!--|var\(|NaN|undefined|https?:(?!\/\/www\.w3\.org)/);
		const page = await opened.context.newPage();
		await page.goto(`file://${path}`);
		const found = await page.evaluate(() => {
			const svg = document.documentElement as unknown as SVGSVGElement;
			// Millimetres: the unit of the drawing, since its frame is as many units as it is millimetres wide.
			const sizes = [...svg.querySelectorAll('path')].map((path) => {
				const { width, height } = path.getBBox();
				const { a } = svg.getCTM()!.inverse().multiply(path.getCTM()!);
				return [width * a, height * a] as const;
			});
			return {
				root: svg.tagName,
				title: svg.querySelector('title')!.textContent,
				description: svg.querySelector('desc')!.textContent,
				width: svg.getAttribute('width')!,
				view: svg.getAttribute('viewBox')!,
				inks: [...new Set([...svg.querySelectorAll('[stroke]')].map((mark) => mark.getAttribute('stroke')))],
				sizes
			};
		});
		await page.close();
		expect(found.root).toBe('svg');
		expect(found.title).toBe('Quince Row: plan, 1:100');
		expect(found.description).toContain('a millimetre of the drawing is 100 mm of the yard');
		expect(found.width).toBe(`${found.view.split(' ')[2]}mm`);
		expect(found.inks.every((ink) => /^(none|#[0-9a-f]{6})$/.test(ink!))).toBe(true);
		// The house is 6.40 by 10.36 m: at 1:100, 64.0 by 103.6 mm.
		const [width, depth] = houses['Quince Row'];
		expect(found.sizes.some(([w, h]) => near(w, width * 10) && near(h, depth * 10))).toBe(true);
		expect(opened.complaints).toEqual([]);
	});
	test.each([150, 300])('the PNG has %i dots to the inch, and says so', async (dpi) => {
		const svg = await saved('Plan as SVG');
		const [, wide, high] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(readFileSync(svg.path, 'utf8'))!.map(Number);
		const { path, name } = await saved(`Plan as PNG, ${dpi} dpi`);
		expect(name).toBe(`quince-row-plan-${dpi}dpi.png`);
		const png = readFileSync(path);
		// The header's width and height (PNG, 11.2.2), and pixels to the metre in the chunk after it (11.3.5.3).
		expect(png.readUInt32BE(16)).toBe(Math.round((wide! / 25.4) * dpi));
		expect(png.readUInt32BE(20)).toBe(Math.round((high! / 25.4) * dpi));
		expect(png.toString('latin1', 37, 41)).toBe('pHYs');
		expect(png.readUInt32BE(41)).toBe(Math.round(dpi / 0.0254));
		// Another program reads it: drawn on, but mostly paper.
		const mean = Number(await darkness(path));
		expect(mean).toBeGreaterThan(0.5);
		expect(mean).toBeLessThan(0.999);
	});
	/** Mean lightness of a picture, 0 to 1, as the browser shows it. */
	async function darkness(path: string): Promise<number> {
		const page = await opened.context.newPage();
		await page.goto('about:blank');
		const data = readFileSync(path).toString('base64');
		const mean = await page.evaluate(async (source) => {
			const image = new Image();
			image.src = `data:image/png;base64,${source}`;
			await image.decode();
			const canvas = document.createElement('canvas');
			[canvas.width, canvas.height] = [image.width, image.height];
			const pen = canvas.getContext('2d')!;
			pen.drawImage(image, 0, 0);
			const { data: pixels } = pen.getImageData(0, 0, image.width, image.height);
			let sum = 0;
			for (let i = 0; i < pixels.length; i += 4) sum += pixels[i]!;
			return sum / (pixels.length / 4) / 255;
		}, data);
		await page.close();
		return mean;
	}
	test('the lists open in a spreadsheet as they stand in the packet', async () => {
		for (const [button, file, rows] of [
			['Fixtures as CSV', 'quince-row-fixtures.csv', 6],
			['Cable as CSV', 'quince-row-cable.csv', 6],
			['Shopping as CSV', 'quince-row-shopping.csv', null],
			['Stakes as CSV', 'quince-row-stakes.csv', 8]
		] as const) {
			const { path, name } = await saved(button);
			expect(name).toBe(file);
			const text = readFileSync(path, 'utf8');
			expect(text.charCodeAt(0)).toBe(0xfeff);
			// Every line ends in CRLF (RFC 4180, 2.1).
			expect(text.match(/(?<!\r)\n/)).toBeNull();
			const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
			expect(errors).toEqual([]);
			if (rows === null) expect(data.length).toBeGreaterThan(10);
			else expect(data).toHaveLength(rows);
		}
		expect(opened.complaints).toEqual([]);
	});
});

test('poppler, too, finds the words and the paper', async () => {
	const { page, context } = await openPage(browser(), {});
	await openPacket(page, 'Quince Row');
	await printed(page, 'poppler', 'letter', 'fit');
	const file = join(folder(), 'poppler-letter-fit.pdf');
	expect(execFileSync('pdfinfo', [file], { encoding: 'utf8' })).toMatch(
		/Page size:\s+(612 x 792|611\.\d+ x 79[12]\.\d+)/
	);
	const pages = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1);
	expect(pages.filter((sheet) => sheet.trim().length < 120)).toEqual([]);
	expect(pages.map((sheet, index) => sheet.includes(`${index + 1} of ${pages.length}`))).not.toContain(false);
	await context.close();
});
