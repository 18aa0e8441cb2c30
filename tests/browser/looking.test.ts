import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { chooseLight, expectAccessible, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

const place = (page: Page) => page.locator('.dw-drawing').first();
/** What of the yard the drawing shows, metres: left, top, width, height. */
const shown = (page: Page) =>
	page
		.locator('.dw-drawing svg')
		.first()
		.evaluate((svg) => (svg.getAttribute('viewBox') ?? '').split(' ').map(Number) as [number, number, number, number]);
const middleOf = async (page: Page) => {
	const box = (await place(page).boundingBox())!;
	return { x: box.x + box.width / 2, y: box.y + box.height / 2, box };
};
/** Metres that lie under a place of the page. */
async function under(page: Page, x: number, y: number) {
	const { box } = await middleOf(page);
	const [left, top, width, height] = await shown(page);
	return { x: left + ((x - box.x) / box.width) * width, y: top + ((y - box.y) / box.height) * height };
}
const phone = () =>
	browser().newContext({
		viewport: { width: 360, height: 740 },
		hasTouch: true,
		isMobile: true,
		reducedMotion: 'reduce'
	});
/** Fingers as the browser gets them from glass. */
async function fingers(page: Page, context: BrowserContext) {
	const cdp = await context.newCDPSession(page);
	const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) =>
		cdp.send('Input.dispatchTouchEvent', { type, touchPoints: points.map((point, id) => ({ ...point, id })) });
	return {
		down: (...points: { x: number; y: number }[]) => send('touchStart', points),
		async move(from: { x: number; y: number }[], to: { x: number; y: number }[], steps = 8) {
			for (let k = 1; k <= steps; k += 1) {
				const at = from.map((p, n) => ({
					x: p.x + ((to[n]!.x - p.x) * k) / steps,
					y: p.y + ((to[n]!.y - p.y) * k) / steps
				}));
				await send('touchMove', at);
			}
		},
		up: () => send('touchEnd', [])
	};
}

describe('the drawing looked at', () => {
	test('closer and wider by buttons, keys and wheel; what lies under the pointer stays there', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280 });
		await openDemo(page, 'Alder Bend');
		await page.locator('.dw-drawing svg').first().waitFor();
		const whole = await shown(page);
		await page.getByRole('button', { name: 'Closer' }).click();
		await expect.poll(async () => (await shown(page))[2]).toBeCloseTo(whole[2] / 1.5, 1);
		await page.getByRole('button', { name: 'Whole yard' }).click();
		await expect.poll(() => shown(page)).toEqual(whole);

		const { x, y } = await middleOf(page);
		await page.mouse.move(x + 60, y - 40);
		const before = await under(page, x + 60, y - 40);
		await page.keyboard.down('Control');
		await page.mouse.wheel(0, -240);
		await page.keyboard.up('Control');
		await expect.poll(async () => (await shown(page))[2]).toBeLessThan(whole[2] * 0.8);
		const after = await under(page, x + 60, y - 40);
		// A px is about 4 cm here; the frame is written to the millimetre.
		expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(0.02);
		// Without the focus and without Ctrl a wheel is the page's.
		const close = await shown(page);
		await page.mouse.wheel(0, 200);
		await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(100);
		expect(await shown(page)).toEqual(close);

		await place(page).focus();
		await page.keyboard.press('0');
		await expect.poll(() => shown(page)).toEqual(whole);
		await page.keyboard.press('+');
		await page.keyboard.press('+');
		// It is drawn anew when it has come to rest.
		await expect.poll(async () => (await shown(page))[2]).toBeCloseTo(whole[2] / 2.25, 1);
		const left = (await shown(page))[0];
		await page.keyboard.press('ArrowLeft');
		await expect.poll(async () => (await shown(page))[0]).toBeLessThan(left);
		await expectAccessible(page, 'the drawing, closer');
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('by fingers: two zoom the drawing and not the page, one moves it when it is close and scrolls the page when it is not', async () => {
		const { page, context, complaints } = await openPage(browser(), { context: await phone() });
		await openDemo(page, 'Alder Bend');
		await place(page).locator('svg').first().waitFor();
		await place(page).evaluate((node) => node.scrollIntoView({ block: 'center' }));
		const whole = await shown(page);
		const { down, move, up } = await fingers(page, context);
		const { x: cx, y: cy } = await middleOf(page);
		const [a, b] = [
			{ x: cx - 30, y: cy },
			{ x: cx + 30, y: cy }
		];
		const held = await under(page, cx, cy);
		await down(a);
		await down(a, b);
		await move(
			[a, b],
			[
				{ x: cx - 90, y: cy },
				{ x: cx + 90, y: cy }
			]
		);
		await up();
		await expect.poll(async () => (await shown(page))[2]).toBeCloseTo(whole[2] / 3, 0);
		const now = await under(page, cx, cy);
		expect(Math.hypot(now.x - held.x, now.y - held.y)).toBeLessThan(0.1);
		expect(await page.evaluate(() => visualViewport?.scale)).toBe(1);

		const near = await shown(page);
		const still = await page.evaluate(() => scrollY);
		await down({ x: cx, y: cy });
		await move([{ x: cx, y: cy }], [{ x: cx + 60, y: cy + 40 }]);
		await up();
		// Pulled by 60 px of the 326 or so that show the whole width.
		await expect.poll(async () => (await shown(page))[0]).toBeLessThan(near[0] - 0.5);
		expect(await page.evaluate(() => scrollY)).toBe(still);

		await page.getByRole('button', { name: 'Whole yard' }).tap();
		await expect.poll(() => shown(page)).toEqual(whole);
		const { x, y } = await middleOf(page);
		const scrolled = await page.evaluate(() => scrollY);
		await down({ x, y });
		await move([{ x, y }], [{ x, y: y - 120 }]);
		await up();
		await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(scrolled + 60);
		expect(await shown(page)).toEqual(whole);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a point set by a finger held still: a glass beside it, off again when it lifts, the point a round length or on an edge', async () => {
		const { page, context, complaints } = await openPage(browser(), { context: await phone() });
		await openDemo(page, 'Alder Bend');
		await chooseLight(page, 'P1');
		await page.getByRole('button', { name: 'Point on the drawing' }).first().click();
		const along = page.getByRole('group', { name: /^Change P\d+ / }).getByLabel('Along the front');
		const before = await along.inputValue();
		const { down, move, up } = await fingers(page, context);
		const { x, y, box } = await middleOf(page);
		const glass = page.locator('.glass');

		await down({ x, y });
		await glass.waitFor();
		await move([{ x, y }], [{ x: x + 40, y: y + 20 }]);
		const seen = (await glass.boundingBox())!;
		expect(Math.min(seen.width, seen.height)).toBeGreaterThanOrEqual(112);
		expect(seen.x).toBeGreaterThanOrEqual(box.x - 1);
		expect(seen.x + seen.width).toBeLessThanOrEqual(box.x + box.width + 1);
		const off = Math.hypot(seen.x + seen.width / 2 - (x + 40), seen.y + seen.height / 2 - (y + 20));
		expect(off).toBeGreaterThan(seen.width / 2 + 20);
		await up();
		await glass.waitFor({ state: 'detached' });
		await expect.poll(() => along.inputValue()).not.toBe(before);
		expect(complaints).toEqual([]);
		await context.close();
	});
});
