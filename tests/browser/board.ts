/** The page to work on the drawing, as tests find their way about it. Places in feet: along the front, out from it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { goto } from './browser';

export type Feet = readonly [along: number, out: number];
/** By definition of the international foot, 1959. */
const metresPerFoot = 0.3048;
/** As the yard keeps it: to a tenth of a millimetre. */
export const kept = ([along, out]: Feet) => ({
	along: Math.round(along * metresPerFoot * 1e4) / 1e4,
	out: Math.round(out * metresPerFoot * 1e4) / 1e4
});

export async function openBoard(page: Page): Promise<void> {
	await goto(page, '/plan/drawing/');
	await page.locator('#board-things').waitFor({ state: 'attached' });
}
/** A house of two parts, the street 40 ft out, nothing else. */
export async function openStart(page: Page): Promise<void> {
	await goto(page, '/');
	const buffer = readFileSync(join(import.meta.dirname, 'board-start.json'));
	await page
		.locator('input[type="file"]')
		.first()
		.setInputFiles({ name: 'start.duskwright.json', mimeType: 'application/json', buffer });
	await page.waitForURL(/\/answers\//);
	await openBoard(page);
	await thing(page, 'section/part-2').waitFor({ state: 'attached' });
}
export const thing = (page: Page, key: string) => page.locator(`[data-thing="${key}"]`);
export const said = (page: Page) => page.locator('#board-said');
export const tool = (page: Page, name: string) =>
	page.getByRole('toolbar', { name: 'Tools of the drawing' }).getByRole('button', { name, exact: true });
export const focusedThing = (page: Page): Promise<string | null> =>
	page.evaluate(() => document.activeElement?.getAttribute('data-thing') ?? null);
/** The focus is never lost to the page as a whole. */
export async function expectFocusKept(page: Page): Promise<void> {
	await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).not.toBe('BODY');
}

/** Where a place of the yard is on the screen now, px; scrolled to where the tools do not cover it. */
export async function onScreen(page: Page, at: Feet): Promise<{ x: number; y: number }> {
	const place = () =>
		page.evaluate(
			({ along, out }) => {
				const svg = document.querySelector<SVGSVGElement>('svg.marks')!;
				const { x, y } = new DOMPoint(along, out).matrixTransform(svg.getScreenCTM()!);
				return { x, y };
			},
			{ along: at[0] * metresPerFoot, out: at[1] * metresPerFoot }
		);
	// The sheet grows with the yard: a place is read once it stays.
	let last = await place();
	await expect
		.poll(async () => {
			const before = last;
			last = await place();
			return Math.hypot(last.x - before.x, last.y - before.y);
		})
		.toBeLessThan(0.01);
	const room = await page.evaluate(() => {
		const bar = document.querySelector('.board-page .bar')!;
		const isBelow = getComputedStyle(bar).position === 'fixed';
		return isBelow ? bar.getBoundingClientRect().top : innerHeight;
	});
	if (last.y > 8 && last.y < room - 8) return last;
	await page.evaluate((by) => scrollBy(0, by), last.y - room / 2);
	return place();
}
/** The yard as the browser keeps it. */
export const keptYard = (page: Page): Promise<Record<string, unknown>> =>
	page.evaluate(() => {
		for (const key of Object.keys(localStorage)) {
			const value: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
			if (typeof value === 'object' && value !== null && 'format' in value && value.format === 'duskwright/yard')
				return value as unknown as Record<string, unknown>;
		}
		throw new Error('No yard is kept');
	});
/** What "Save a copy" hands to the downloads. */
export async function savedCopy(page: Page): Promise<string> {
	const [download] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: 'Save a copy' }).locator('visible=true').first().click()
	]);
	return readFileSync((await download.path())!, 'utf8');
}
