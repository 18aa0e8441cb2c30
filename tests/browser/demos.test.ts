import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

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
describe.each([
	{ title: 'Quince Row', paper: 'letter', words: ['P1', 'T1'] },
	{ title: 'Alder Bend', paper: 'letter', words: ['P1', 'T1', 'D1', 'S1', 'C1', 'W1'] },
	{ title: 'Hazelmoor', paper: 'a4', words: ['P1', 'T1', 'D1', 'W1'] }
] as const)('demo yard: $title', ({ title, paper, words }) => {
	test.each([360, 1280])('from the first question to the packet at %i px', async (width) => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await openDemo(page, title);
		await goto(page, '/ask/place/units/');
		const met = await walkThrough(page);
		expect(met.length).toBeGreaterThan(20);
		expect(new Set(met).size).toBe(met.length);
		await page.getByRole('link', { name: 'Packet' }).first().click();
		await page.waitForURL(/\/packet\//);
		await page.locator('.sheets svg').first().waitFor();
		// On paper: packet.test.ts.
		const text = await page.locator('.sheets').innerText();
		for (const word of words) expect(text).toContain(word);
		for (const needed of [/licensed electrician/i, /local code/i, /dig/i, /transformer/i, /connector/i, /scale/i])
			expect(text).toMatch(needed);
		expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
		expect(await page.locator('#paper input:checked').inputValue()).toBe(paper);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		// Nothing is wider than the screen.
		await goto(page, '/plan/');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		expect(complaints).toEqual([]);
		await context.close();
	});
});
