import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goto, openDemo, openPage, useBrowser } from './browser';

const { browser, folder } = useBrowser();
const question = '/ask/place/units/';

async function save(page: Page, name: string): Promise<string> {
	const download = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save a copy' }).first().click();
	const path = join(folder(), name);
	await (await download).saveAs(path);
	return readFileSync(path, 'utf8');
}
/** Types so many names in turn, each left before the next: each is a change of its own, and none is like another. */
async function rename(page: Page, from: number, to: number): Promise<void> {
	const field = page.getByRole('textbox', { name: /Name of the yard/ });
	await field.waitFor();
	await field.evaluate(
		async (input: HTMLInputElement, [first, end]) => {
			for (let n = first; n < end; n += 1) {
				input.value = n % 4 === 2 ? '' : `Yard “${n}”, ${'long '.repeat(n % 5)}🌙`;
				input.dispatchEvent(new Event('input', { bubbles: true }));
				input.dispatchEvent(new FocusEvent('blur'));
				await new Promise((go) => setTimeout(go));
			}
		},
		[from, to] as const
	);
}
/** Presses a button so often, each time once the page has taken in the last. Returns how often it could be pressed. */
const press = (page: Page, name: 'Undo' | 'Redo', times: number): Promise<number> =>
	page.evaluate(
		async ([label, most]) => {
			const button = [...document.querySelectorAll('button')].find((one) => one.textContent?.trim() === label);
			if (!button) return 0;
			for (let pressed = 0; pressed < most; pressed += 1) {
				if (button.ariaDisabled === 'true') return pressed;
				button.click();
				await new Promise((go) => setTimeout(go));
			}
			return most;
		},
		[name, times] as const
	);
const can = (page: Page, name: 'Undo' | 'Redo') => page.getByRole('button', { name, exact: true }).first().isEnabled();
/** The steps are in the browser's store up to the yard in hand. */
const written = (page: Page) =>
	expect
		.poll(() =>
			page.evaluate(async () => {
				const open = indexedDB.open('duskwright-undo');
				await new Promise((go) => (open.onsuccess = go));
				if (!open.result.objectStoreNames.contains('head')) return open.result.close();
				const get = open.result.transaction('head').objectStore('head').get('head');
				await new Promise((go) => (get.onsuccess = go));
				open.result.close();
				return (get.result as { text: string } | undefined)?.text === localStorage.getItem('duskwright/yard');
			})
		)
		.toBe(true);

test('five hundred changes are undone after a reload, and done again after another, to the byte', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await written(page);
	await goto(page, question);
	await rename(page, 0, 20);
	const start = await save(page, 'start.json');
	await rename(page, 20, 520);
	const end = await save(page, 'end.json');
	expect(end).not.toBe(start);
	await written(page);

	await page.reload();
	await expect.poll(() => can(page, 'Undo')).toBe(true);
	expect(await press(page, 'Undo', 500)).toBe(500);
	expect(await save(page, 'undone.json')).toBe(start);
	// The twenty before, and opening the demo: back to the blank yard that the visit began with.
	expect(await press(page, 'Undo', 1000)).toBe(21);
	await written(page);

	// Another tab of the same browser, after this one is gone.
	await page.close();
	const again = await openPage(browser(), { context });
	await goto(again.page, question);
	await expect.poll(() => can(again.page, 'Redo')).toBe(true);
	expect(await press(again.page, 'Redo', 1000)).toBe(521);
	expect(await save(again.page, 'redone.json')).toBe(end);
	expect([...complaints, ...again.complaints]).toEqual([]);
	await context.close();
}, 120_000);

test('a page that goes right after a change keeps it, and undo leads back over it', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Quince Row');
	await written(page);
	await goto(page, question);
	await rename(page, 0, 5);
	await written(page);
	const before = await save(page, 'before.json');
	const name = page.getByRole('textbox', { name: /Name of the yard/ });
	// Without leaving the field, and without the moment after the last key.
	await name.fill('Right before the end');
	await page.reload();
	await expect.poll(() => name.inputValue()).toBe('Right before the end');
	await expect.poll(() => can(page, 'Undo')).toBe(true);
	expect(await press(page, 'Undo', 1)).toBe(1);
	expect(await save(page, 'back.json')).toBe(before);
	expect(complaints).toEqual([]);
	await context.close();
});

test('what is typed over an answer stands while it is typed', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await goto(page, '/ask/house/house-size/');
	const depth = page.getByRole('textbox', { name: 'Depth of the house' });
	await depth.fill('25.4 ft');
	await expect.poll(() => page.locator('output').first().innerText()).toMatch(/7\.74 m/);
	const shown = await depth.evaluate(async (input: HTMLInputElement) => {
		input.value = '26.4 ft';
		input.dispatchEvent(new Event('input', { bubbles: true }));
		const seen = new Set<string>();
		for (let looks = 0; looks < 20; looks += 1) {
			await new Promise((go) => setTimeout(go));
			seen.add(input.value);
		}
		return [...seen];
	});
	expect(shown).toEqual(['26.4 ft']);
	expect(complaints).toEqual([]);
	await context.close();
});

test('a browser that keeps no steps is told so once, and undo works', async () => {
	const { page, context, complaints } = await openPage(browser());
	await page.addInitScript(() => {
		IDBFactory.prototype.open = () => {
			throw new DOMException('denied', 'SecurityError');
		};
	});
	await openDemo(page, 'Alder Bend');
	const note = page.getByRole('status').filter({ hasText: /does not keep its steps for the next visit/ });
	await note.waitFor();
	await note.getByRole('button', { name: 'Close this note' }).click();
	await goto(page, '/');
	await goto(page, question);
	const first = await save(page, 'first.json');
	await rename(page, 0, 3);
	expect(await press(page, 'Undo', 3)).toBe(3);
	expect(await save(page, 'second.json')).toBe(first);
	expect(complaints).toEqual([]);
	await context.close();
});
