import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/domain/plan';
import { examples } from '../../src/lib/domain/yard/examples';
import { thingsOf } from '../../src/lib/drawing/things';
import {
	expectFocusKept,
	focusedThing,
	keptYard,
	kept,
	onScreen,
	openBoard,
	openStart,
	said,
	thing,
	tool
} from './board';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

async function openDemoBoard(page: Page): Promise<void> {
	await openDemo(page, 'Alder Bend');
	await openBoard(page);
	await page.locator('[data-thing]').first().waitFor({ state: 'attached' });
}
const picker = (page: Page, word: string) =>
	page.getByRole('list', { name: 'Kinds of thing to add' }).getByRole('button', { name: word, exact: true });

describe('what a screen reader finds', () => {
	test('an object by name for each thing that the yard has on the drawing', async () => {
		const { page, context, complaints } = await openPage(browser());
		await openDemoBoard(page);
		const client = await context.newCDPSession(page);
		const { nodes } = await client.send('Accessibility.getFullAXTree');
		const byId = new Map(nodes.map((node) => [node.nodeId, node]));
		const root = nodes.find(
			({ role, name }) => role?.value === 'application' && name?.value === 'Things on the drawing'
		);
		const found: string[] = [];
		const walk = (id: string) => {
			const node = byId.get(id);
			if (node?.role?.value === 'button' && !node.ignored) found.push(String(node.name?.value));
			for (const child of node?.childIds ?? []) walk(child);
		};
		walk(root!.nodeId);
		const demo = examples.find(({ title }) => title === 'Alder Bend')!;
		const expected = thingsOf(makePlan(demo.yard), demo.yard).filter(({ at, line }) => at !== null || line !== null);
		expect(found.toSorted()).toEqual(expected.map((one) => one.said).toSorted());
		expect(found.length).toBeGreaterThan(30);
		// As a list they are there too, with those that have no place yet.
		const all = thingsOf(makePlan(demo.yard), demo.yard);
		expect(await page.locator('.list li > button').count()).toBe(all.length);
		expect(complaints).toEqual([]);
		await context.close();
	});
});

describe('by keyboard', () => {
	test('from thing to thing, in hand, put back, moved, taken away and brought again', async () => {
		const { page, context, complaints } = await openPage(browser());
		await openDemoBoard(page);
		const first = page.locator('[data-thing]').first();
		await first.focus();
		const seen = new Set<string | null>();
		for (const key of ['Home', 'ArrowDown', 'ArrowRight', 'ArrowDown', 'ArrowLeft', 'End', 'ArrowUp']) {
			await page.keyboard.press(key);
			await expect.poll(() => focusedThing(page)).not.toBeNull();
			seen.add(await focusedThing(page));
		}
		expect(seen.size).toBeGreaterThan(3);

		await page.locator('[data-thing^="tree/"]').first().focus();
		const key = (await focusedThing(page))!;
		const before = await keptYard(page);
		await page.keyboard.press('Enter');
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('Shift+ArrowDown');
		await expect.poll(() => said(page).innerText()).toMatch(/along, .* out/);
		await page.keyboard.press('Escape');
		await expect.poll(() => said(page).innerText()).toMatch(/is where it was/);
		expect(await keptYard(page)).toEqual(before);
		expect(await focusedThing(page)).toBe(key);

		await page.keyboard.press('Enter');
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('Enter');
		await expect.poll(() => said(page).innerText()).toMatch(/moved 6 in right\. Undo takes it back\./);
		await expectFocusKept(page);
		await page.keyboard.press('Delete');
		await thing(page, key).waitFor({ state: 'detached' });
		await expectFocusKept(page);
		await page
			.getByRole('toolbar')
			.getByRole('button', { name: /^Undo: .*removed/ })
			.click();
		await thing(page, key).waitFor({ state: 'attached' });
		await page
			.getByRole('toolbar')
			.getByRole('button', { name: /^Undo: .*moved/ })
			.click();
		await expect.poll(() => keptYard(page)).toEqual(before);
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('a distance is measured by the cross-hair', async () => {
		const { page, context, complaints } = await openPage(browser());
		await openStart(page);
		await tool(page, 'Snap').click();
		await tool(page, 'Measure').click();
		await page.locator('#board-things').focus();
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('Enter');
		// Six steps of 6 in to the right, eight towards the street: 3 ft and 4 ft, so 5 ft straight.
		for (let n = 0; n < 6; n += 1) await page.keyboard.press('ArrowRight');
		for (let n = 0; n < 8; n += 1) await page.keyboard.press('ArrowDown');
		await page.keyboard.press('Enter');
		await page
			.getByRole('status')
			.getByText(/\b5 ft\b/)
			.first()
			.waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('each kind of change is one that undo takes back and redo brings again', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openStart(page);
	await tool(page, 'Snap').click();
	const states = [await keptYard(page)];
	const isKept = async () => {
		const last = states.at(-1);
		await expect.poll(() => keptYard(page)).not.toEqual(last);
		states.push(await keptYard(page));
	};
	const field = (end: string) => page.locator(`.beside [id$="${end}"]`).first();
	const type = async (end: string, text: string) => {
		await field(end).fill(text);
		await field(end).press('Enter');
		await isKept();
	};
	await tool(page, 'Add').click();
	await picker(page, 'Walk').click();
	for (const at of [
		[18, 40],
		[18, 10]
	] as const) {
		const { x, y } = await onScreen(page, at);
		await page.mouse.click(x, y);
	}
	await page.getByRole('button', { name: 'Done', exact: true }).click();
	await thing(page, 'walk/walk-1').waitFor({ state: 'attached' });
	await isKept();
	await type('-width', '5 ft');
	await type('-name', 'Front walk');
	await type('-1-along', '16 ft');
	await page.getByRole('button', { name: /^Add a point after First point/ }).click();
	await field('-new-along').fill('20 ft');
	await field('-new-out').fill('24 ft');
	await page.getByRole('button', { name: 'Add the point' }).click();
	await isKept();
	// All of it by a step, then its bend out again, then the whole.
	await page.getByRole('button', { name: /^Move .*6 in right$/ }).click();
	await isKept();
	await page.getByRole('button', { name: 'Remove Bend 1' }).click();
	await isKept();
	await page
		.locator('.beside')
		.getByRole('button', { name: /^Remove Front walk/i })
		.first()
		.click();
	await isKept();
	expect(states).toHaveLength(9);

	const undo = () => page.getByRole('toolbar').getByRole('button', { name: /^Undo/ });
	const redo = () => page.getByRole('toolbar').getByRole('button', { name: /^Redo/ });
	for (const state of states.toReversed().slice(1)) {
		await undo().click();
		await expect.poll(() => keptYard(page)).toEqual(state);
	}
	for (const state of states.slice(1)) {
		await redo().click();
		await expect.poll(() => keptYard(page)).toEqual(state);
	}
	await expectFocusKept(page);
	expect(complaints).toEqual([]);
	await context.close();
});

/** WCAG 2.2, relative luminance and contrast ratio. */
function contrast(a: readonly number[], b: readonly number[]): number {
	const luminance = (rgb: readonly number[]) => {
		const [r = 0, g = 0, blue = 0] = rgb.map((part) => {
			const c = part / 255;
			return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
		});
		return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
	};
	const [light, dark] = [luminance(a), luminance(b)].toSorted((p, q) => q - p);
	return (light! + 0.05) / (dark! + 0.05);
}
const sizes = (page: Page, selector: string) =>
	page.locator(selector).evaluateAll((all) =>
		all.map((one) => {
			const { width, height } = one.getBoundingClientRect();
			return Math.round(Math.min(width, height) * 10) / 10;
		})
	);

describe.each([
	[360, true],
	[360, false],
	[1280, true],
	[1280, false]
])('at %i px, dark: %s', (width, dark) => {
	test('axe, targets and the focus ring: in hand, adding, measuring', async () => {
		const context = await browser().newContext({
			viewport: { width, height: 740 },
			colorScheme: dark ? 'dark' : 'light',
			hasTouch: width < 500,
			reducedMotion: 'reduce'
		});
		const { page, complaints } = await openPage(browser(), { context });
		await openDemoBoard(page);
		await page.locator('[data-thing^="walk/"]').first().focus();
		// To another thing and back, so that the focus is the keyboard's.
		for (const key of ['Home', 'End']) await page.keyboard.press(key);
		const ringNow = () =>
			page.evaluate(() => {
				const parts = (colour: string) => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
				const mark = document.activeElement?.querySelector('.ring');
				const shown = mark && getComputedStyle(mark);
				const sheet = getComputedStyle(document.querySelector('.board-page .sheet')!).backgroundColor;
				return { isSeen: shown?.visibility === 'visible', stroke: parts(shown?.stroke ?? ''), sheet: parts(sheet) };
			});
		await expect.poll(async () => (await ringNow()).isSeen).toBe(true);
		const ring = await ringNow();
		expect(contrast(ring.stroke, ring.sheet)).toBeGreaterThanOrEqual(3);

		// A thing in hand, by a tap or a click on it.
		const walk = page.locator('[data-thing^="walk/"]').first();
		const key = (await walk.getAttribute('data-thing'))!;
		await walk.focus();
		await page.keyboard.press('Enter');
		await page.keyboard.press('Escape');
		await page.locator('.handle').first().waitFor({ state: 'attached' });
		expect(Math.min(...(await sizes(page, '.handle')))).toBeGreaterThanOrEqual(24);
		expect(Math.min(...(await sizes(page, '[data-thing] .target')))).toBeGreaterThanOrEqual(24);
		expect(Math.min(...(await sizes(page, '.tools button')))).toBeGreaterThanOrEqual(44);
		expect(await thing(page, key).getAttribute('aria-pressed')).toBe('true');
		await expectAccessible(page, `a walk in hand at ${width} px`);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);

		await tool(page, 'Add').click();
		await expectAccessible(page, `picking a kind at ${width} px`);
		expect(Math.min(...(await sizes(page, '[aria-label="Kinds of thing to add"] button')))).toBeGreaterThanOrEqual(44);
		await picker(page, 'Bed').click();
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('Enter');
		await expect.poll(() => said(page).innerText()).toMatch(/1 corner set/);
		expect(Math.min(...(await sizes(page, '.actions button')))).toBeGreaterThanOrEqual(44);
		await expectAccessible(page, `adding a bed at ${width} px`);
		await page.keyboard.press('Escape');
		await expect.poll(() => said(page).innerText()).toMatch(/Point taken back/);
		await page.keyboard.press('Escape');
		await expect.poll(() => tool(page, 'Choose').getAttribute('aria-pressed')).toBe('true');
		await expectFocusKept(page);

		await tool(page, 'Measure').click();
		await expectAccessible(page, `measuring at ${width} px`);
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('a phone: a tree by a tap, moved by two taps and a fine step, nothing under the tools', async () => {
	const context = await browser().newContext({
		viewport: { width: 360, height: 740 },
		hasTouch: true,
		reducedMotion: 'reduce'
	});
	const { page, complaints } = await openPage(browser(), { context });
	await openStart(page);
	await tool(page, 'Snap').tap();
	await tool(page, 'Add').tap();
	await picker(page, 'Tree').tap();
	let at = await onScreen(page, [30, 20]);
	await page.touchscreen.tap(at.x, at.y);
	await thing(page, 'tree/tree-1').waitFor({ state: 'attached' });
	await page.getByRole('button', { name: 'Move it', exact: true }).tap();
	at = await onScreen(page, [36, 24]);
	await page.touchscreen.tap(at.x, at.y);
	await expect.poll(() => said(page).innerText()).toMatch(/moved 6 ft right, 4 ft towards the street/);
	await page.getByRole('button', { name: 'Fine: 1 in' }).tap();
	await page.getByRole('button', { name: /^Move .* 1 in left$/ }).tap();
	await expect
		.poll(async () => ((await keptYard(page))['trees'] as { at: unknown }[])[0]?.at)
		.toEqual(kept([36 - 1 / 12, 24]));
	// The foot of the page comes out from under the tools.
	await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
	const isClear = await page.evaluate(() => {
		const bar = document.querySelector('.board-page .bar')!.getBoundingClientRect();
		const links = [...document.querySelectorAll('#site > footer button')];
		return links.every((link) => link.getBoundingClientRect().bottom <= bar.top);
	});
	expect(isClear).toBe(true);
	expect(complaints).toEqual([]);
	await context.close();
});

test('a blank yard shows where the front begins and the street, and says how to start', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 768 });
	await goto(page, '/plan/');
	await page.getByRole('link', { name: 'Work on the drawing' }).click();
	await page.getByRole('heading', { level: 1, name: 'The drawing' }).waitFor();
	await page.getByText('house front, left corner').waitFor();
	await page.getByText('STREET').first().waitFor();
	await page.getByText('Press Add to draw the first thing').waitFor();
	await expectAccessible(page, 'a blank yard');
	expect(complaints).toEqual([]);
	await context.close();
});
