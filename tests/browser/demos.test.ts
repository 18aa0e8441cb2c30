import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { goto, openDemo, openPage, useBrowser } from './browser';
import { barOnPaper } from './ruler';

const { browser, folder } = useBrowser();

/** Continue after Continue, from the first question until the layout; the questions met, in order. */
async function walkThrough(page: Page): Promise<string[]> {
	const met: string[] = [];
	for (let count = 0; count < 200; count += 1) {
		if (/\/plan\//.test(page.url())) return met;
		const here = page.url();
		met.push(new URL(here).pathname + new URL(here).search);
		// One page only may be asked: its heading stands there and has the focus.
		await page.getByRole('button', { name: 'Continue' }).click();
		await page.waitForURL((url) => url.href !== here, { timeout: 10_000 });
	}
	throw new Error(`The way through has no end: ${met.slice(-3).join(', ')}`);
}
async function printed(page: Page, name: string, paper: 'letter' | 'a4'): Promise<string[]> {
	const file = join(folder(), `${name}.pdf`);
	await page.pdf({ path: file, preferCSSPageSize: true, printBackground: false });
	const info = execFileSync('pdfinfo', [file], { encoding: 'utf8' });
	// Points: Letter 612 × 792, A4 595.28 × 841.89; the plan sheet may lie on its side.
	expect(info).toMatch(
		paper === 'letter'
			? /Page size:\s+(612 x 792|792 x 612)/
			: /Page size:\s+(59[45]\.?\d* x 84[12]|84[12]\.?\d* x 59[45])/
	);
	return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).split('\f');
}

describe.each([
	{ title: 'Quince Row', paper: 'letter', words: ['P1', 'T1'] },
	{ title: 'Alder Bend', paper: 'letter', words: ['P1', 'T1', 'D1', 'S1', 'C1', 'W1'] },
	{ title: 'Hazelmoor', paper: 'a4', words: ['P1', 'T1', 'D1', 'W1'] }
] as const)('demo yard: $title', ({ title, paper, words }) => {
	test.each([360, 1280])('from the first question to the printed packet at %i px', async (width) => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await openDemo(page, title);
		await goto(page, '/ask/place/units/');
		const met = await walkThrough(page);
		expect(met.length).toBeGreaterThan(20);
		expect(new Set(met).size).toBe(met.length);
		await page.getByRole('link', { name: 'Packet' }).first().click();
		await page.waitForURL(/\/packet\//);
		await page.locator('.sheets svg').first().waitFor();
		await page
			.locator('#paper')
			.getByText(paper === 'a4' ? 'A4' : 'Letter', { exact: true })
			.click();
		const pages = await printed(page, `${title}-${width}`, paper);
		const text = pages.join('\n');
		for (const word of words) expect(text).toContain(word);
		for (const needed of [/licensed electrician/i, /local code/i, /dig/i, /transformer/i, /connector/i, /scale/i])
			expect(text).toMatch(needed);
		expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
		// No page may be empty: a blank sheet is a layout fault.
		expect(pages.slice(0, -1).filter((sheet) => sheet.trim().length < 20)).toEqual([]);
		// The bar on the plan sheet, measured on the paper: 4 in (four parts) or 100 mm (five), every second one solid.
		const sheet = pages.findIndex((one) => /on a ruler\?/.test(one)) + 1;
		const part = paper === 'a4' ? 20 : 25.4;
		const solid = paper === 'a4' ? 3 : 2;
		const measured = barOnPaper(join(folder(), `${title}-${width}.pdf`), sheet, part, solid);
		const wanted = 2 * part * (solid - 1);
		expect(measured).not.toBeNull();
		expect(Math.abs(measured! / wanted - 1)).toBeLessThan(0.0025);
		// Nothing is wider than the screen.
		await goto(page, '/plan/');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		expect(complaints).toEqual([]);
		await context.close();
	});
});
