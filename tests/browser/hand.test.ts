import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { chooseLight as choose, expectAccessible, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

interface Kept {
	set?: { id: string; at?: { along: number; out: number }; pinned?: boolean; removed?: boolean; aim?: unknown }[];
	added?: { id: string; at: { along: number; out: number } }[];
}
/** What the browser keeps of the changes made by hand; null: none. */
const kept = (page: Page): Promise<Kept | null> =>
	page.evaluate(() => {
		for (const key of Object.keys(localStorage)) {
			const value: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
			if (typeof value === 'object' && value !== null && 'format' in value && value.format === 'duskwright/yard')
				return 'fixtures' in value ? (value.fixtures as Kept) : null;
		}
		throw new Error('No yard is kept');
	});
const item = (page: Page, label: string) =>
	page.locator('li[id^="light-"]').filter({ has: page.getByText(label, { exact: true }) });
const editor = (page: Page, label: string) => page.getByRole('group', { name: new RegExp(`^Change ${label} `) });
const status = (page: Page) => page.locator('main [role="status"]').filter({ hasText: /^Done/ });

describe('the plan changed by hand', () => {
	test.each([360, 1280])('moved, turned, taken away, added, taken back, reloaded at %i px', async (width) => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await openDemo(page, 'Alder Bend');
		await choose(page, 'P1');
		const first = editor(page, String.raw`P\d+`);
		await first.getByLabel('Along the front').fill('20 ft');
		await first.getByLabel('Out from it').fill('30 ft');
		await first.getByRole('button', { name: 'Move it there' }).click();
		await page.getByText('moved by you', { exact: true }).waitFor();
		await expect.poll(async () => (await kept(page))?.set?.[0]?.at?.along).toBeCloseTo(6.096, 3);
		await page.getByRole('button', { name: /^Move P\d+ 6 in right$/ }).click();
		await expect.poll(async () => (await kept(page))?.set?.[0]?.at?.along).toBeCloseTo(6.2484, 3);
		// One undo takes back one step, not the whole move.
		await page.getByRole('button', { name: /^Undo/ }).first().click();
		await expect.poll(async () => (await kept(page))?.set?.[0]?.at?.along).toBeCloseTo(6.096, 3);
		// A tap on the drawing moves it there, whatever size the drawing has.
		await first.getByRole('button', { name: 'Point on the drawing' }).click();
		const sheet = page.locator('.dw-drawing svg').first();
		const box = (await sheet.boundingBox())!;
		await sheet.click({ position: { x: box.width * 0.4, y: box.height * 0.6 } });
		await expect.poll(async () => (await kept(page))?.set?.[0]?.at?.along).not.toBeCloseTo(6.096, 3);
		await page.getByRole('button', { name: /^Put P\d+ back$/ }).click();
		await expect.poll(() => kept(page)).toBeNull();

		await choose(page, 'T1');
		await page.getByLabel('It shines').selectOption('angle');
		await page.getByLabel('From straight up, degrees').fill('60');
		await page.getByRole('button', { name: 'Turn it there' }).click();
		await item(page, 'T1').getByText('turned by you', { exact: true }).waitFor();
		// The rule it breaks is said where it was broken.
		await item(page, 'T1')
			.getByText(/leans 60° from upright/)
			.waitFor();
		await expectAccessible(page, `an editor at ${width} px`);

		await page.getByRole('button', { name: 'Take T1 away' }).click();
		await page.getByRole('heading', { name: 'Not on the plan, by your hand' }).waitFor();
		await page.getByText('Add a light').click();
		await page.getByLabel('Kind', { exact: true }).selectOption('path');
		await page.getByLabel('For', { exact: true }).selectOption('');
		const form = page.locator('form').filter({ has: page.getByRole('button', { name: 'Add it' }) });
		await form.getByRole('button', { name: 'Add it' }).click();
		await form.getByText('Give a length').first().waitFor();
		await form.getByLabel('Along the front').fill('4 ft');
		await form.getByLabel('Out from it').fill('20 ft');
		await form.getByRole('button', { name: 'Add it' }).click();
		await item(page, 'L1').getByText('added by you', { exact: true }).waitFor();
		await expectAccessible(page, `a light added at ${width} px`);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);

		await expect.poll(async () => (await kept(page))?.added?.length).toBe(1);
		await page.reload();
		await item(page, 'L1').getByText('added by you', { exact: true }).waitFor();
		await page.getByRole('button', { name: /^Put back: uplight/ }).click();
		await page.getByRole('heading', { name: 'Not on the plan, by your hand' }).waitFor({ state: 'detached' });
		await choose(page, 'L1');
		await page.getByRole('button', { name: 'Take L1 away' }).click();
		await expect.poll(() => kept(page)).toBeNull();
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a light pinned and moved by the keyboard alone', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280 });
		await openDemo(page, 'Alder Bend');
		await page.getByRole('button', { name: /^Change or show P1 / }).waitFor();
		const reach = async (name: RegExp): Promise<void> => {
			for (let tabs = 0; tabs < 200; tabs += 1) {
				await page.keyboard.press('Tab');
				const at = await page.evaluate(() => {
					const element = document.activeElement as HTMLInputElement | null;
					return element?.getAttribute('aria-label') ?? element?.labels?.[0]?.innerText ?? element?.innerText ?? '';
				});
				if (name.test(at.trim())) return;
			}
			throw new Error(`Not reached by Tab: ${name.source}`);
		};
		await reach(/^Change or show P1 /);
		await page.keyboard.press('Enter');
		await reach(/^Along the front/);
		await page.keyboard.press('Control+A');
		await page.keyboard.type('20 ft');
		await page.keyboard.press('Enter');
		await status(page)
			.getByText(/P1 moved/)
			.waitFor();
		await reach(/^Move P\d+ 6 in left$/);
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('ArrowRight');
		await expect.poll(async () => (await kept(page))?.set?.[0]?.at?.along).toBeCloseTo(6.096 + 2 * 0.1524, 3);
		await reach(/^Pin P\d+ as it stands$/);
		await page.keyboard.press('Enter');
		await expect.poll(async () => (await kept(page))?.set?.[0]?.pinned).toBe(true);
		// The button went; what was done is said where the focus is now.
		await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toMatch(/pinned/);
		expect(complaints).toEqual([]);
		await context.close();
	});
});
