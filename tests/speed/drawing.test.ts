/** How quickly the page answers a tap or a drag on a phone: a yard of a hundred lights, the processor slowed down four times. */
import { beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { chooseLight, goto, openPage, useBrowser } from '../browser/browser';
import { longest, slowDown, startTiming } from './interactions';
import { hundredLights } from './yard';

const { browser } = useBrowser();
const slower = 4;
/**
 * ms to the frame that shows it. What is aimed at is 100; on an idle machine of two cores the longest was 72 to 112. The test holds a bound that a
 * machine with other work to do keeps too: beyond it something has gone back on the page's own thread.
 */
const bound = 200;
let text: string;

beforeAll(() => {
	const large = hundredLights();
	expect(large.lights).toBeGreaterThanOrEqual(100);
	text = large.text;
});

async function openLarge(page: Page): Promise<void> {
	await goto(page, '/');
	await page
		.locator('input[type="file"]')
		.first()
		.setInputFiles({ name: 'hundred.duskwright.json', mimeType: 'application/json', buffer: Buffer.from(text) });
	await page.waitForURL(/\/answers\//);
}
async function time(page: Page, what: string, act: () => Promise<unknown>): Promise<void> {
	await act();
	const ms = await longest(page);
	console.log(`${what}: ${ms} ms`);
	expect.soft(ms, what).toBeLessThanOrEqual(bound);
}

test('a hundred lights on a phone: every tap, key and drag is answered soon', async () => {
	const phone = await browser().newContext({
		viewport: { width: 390, height: 844 },
		hasTouch: true,
		isMobile: true,
		reducedMotion: 'reduce'
	});
	const { page, context, complaints } = await openPage(browser(), { context: phone });
	await openLarge(page);
	await goto(page, '/plan/');
	await chooseLight(page, 'P2');
	await startTiming(page);
	const session = await slowDown(page, slower);
	await time(page, 'a light chosen', () => chooseLight(page, 'P1'));
	for (let n = 1; n <= 3; n += 1)
		await time(page, `a light moved a step, ${n}`, () =>
			page.getByRole('button', { name: /^Move P1 100 mm right$/ }).click()
		);
	await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });

	await goto(page, '/plan/drawing/');
	await page.locator('[data-thing^="tree/"]').first().waitFor({ state: 'attached' });
	await page.waitForTimeout(1000);
	await startTiming(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
	const tree = page.locator('[data-thing^="tree/"]').first();
	await time(page, 'a tree reached by keys', () => tree.focus().then(() => page.keyboard.press('ArrowRight')));
	await tree.focus();
	await time(page, 'a tree chosen', () => page.keyboard.press('Enter'));
	await page.keyboard.press('Enter');
	const box = (await tree.boundingBox())!;
	const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
	await time(page, 'a tree dragged', async () => {
		await page.mouse.move(x, y);
		await page.mouse.down();
		for (let n = 1; n <= 12; n += 1) await page.mouse.move(x + n * 3, y + n);
		await page.mouse.up();
	});
	await time(page, 'the drawing brought closer', () => page.getByRole('button', { name: 'Closer' }).click());
	await time(page, 'a change taken back', () =>
		page.getByRole('toolbar', { name: 'Tools of the drawing' }).getByRole('button', { name: /^Undo/ }).click()
	);
	expect(complaints).toEqual([]);
	await context.close();
});
