/** Where the focus is after something was done: never lost to the page as a whole, and on the heading of a new page (WCAG 2.2, 2.4.3 and 3.2.1). */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { planPages, settle, visit } from './accessible-pages';
import { openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

/** What opens a file, hands one to the downloads, or leaves for another page is not pressed here. */
const leaves = /print|save|copy|file|^open |continue|photograph|picture|csv|png|svg|calendar|colours/i;

/** Gives the focus to the first control not yet pressed and returns its name; null: there is no other. */
const nextControl = (page: Page, done: string[], kind: string): Promise<string | null> =>
	page.evaluate(
		([done, leaves, kind]) => {
			const wordsOf = (one: Element) =>
				(one.getAttribute('aria-label') ?? one.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
			const one = [...document.querySelectorAll<HTMLElement>(kind)].find(
				(at) =>
					!done.includes(wordsOf(at)) &&
					!new RegExp(leaves, 'i').test(wordsOf(at)) &&
					at.checkVisibility({ visibilityProperty: true }) &&
					!at.matches(':disabled, [aria-disabled="true"]') &&
					getComputedStyle(at).position !== 'absolute'
			);
			one?.focus();
			return one ? wordsOf(one) : null;
		},
		[done, leaves.source, kind] as const
	);
/** Looked at for a while: a control may go a moment after it was pressed. */
async function isFocusKept(page: Page): Promise<boolean> {
	for (let looks = 0; looks < 6; looks += 1) {
		await page.evaluate(() => new Promise((go) => requestAnimationFrame(go)));
		await page.waitForTimeout(15);
	}
	return page.evaluate(() => document.activeElement !== null && document.activeElement !== document.body);
}
async function pressAll(page: Page, path: string, most: number): Promise<string[]> {
	const done: string[] = [];
	const lost: string[] = [];
	for (let presses = 0; presses < most; presses += 1) {
		const name = await nextControl(page, done, 'main button, main summary');
		if (name === null) break;
		done.push(name);
		const before = page.url();
		await page.keyboard.press('Enter');
		if (!(await isFocusKept(page))) lost.push(`${path}: ${name}`);
		if (page.url() !== before) await visit(page, path);
	}
	return lost;
}

test('no button takes the focus away with it', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 1280 });
	await openDemo(page, 'Alder Bend');
	const lost: string[] = [];
	for (const path of [...planPages, '/rules/', '/ask/place/units/', '/ask/house/house-size/']) {
		await visit(page, path);
		lost.push(...(await pressAll(page, path, 25)));
	}
	expect(lost).toEqual([]);
	expect(complaints).toEqual([]);
	await context.close();
}, 600_000);

test('undo and redo at the end of their way keep the focus', async () => {
	const { page, context } = await openPage(browser(), { width: 1280 });
	await openDemo(page, 'Quince Row');
	await visit(page, '/answers/');
	for (const name of ['Undo', 'Redo']) {
		const button = page.locator('header').getByRole('button', { name, exact: true });
		for (let presses = 0; presses < 4 && (await button.isEnabled()); presses += 1) {
			await button.focus();
			await page.keyboard.press('Enter');
			expect(await isFocusKept(page), name).toBe(true);
		}
		expect(await button.isEnabled(), name).toBe(false);
	}
	await context.close();
});

test('after a link the focus is on the heading of the new page', async () => {
	const { page, context } = await openPage(browser(), { width: 1280 });
	await openDemo(page, 'Quince Row');
	await settle(page);
	const names = ['After dark', 'Circuit', 'Hours', 'Shopping', 'Checklist', 'Packet', 'Layout'];
	for (const name of names) {
		await page.getByRole('navigation', { name: 'The way through' }).getByRole('link', { name, exact: true }).click();
		await settle(page);
		await expect.poll(() => page.evaluate(() => document.activeElement?.tagName), { message: name }).toBe('H1');
	}
	await page.getByRole('link', { name: 'Work on the drawing' }).first().click();
	await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
	await context.close();
});
