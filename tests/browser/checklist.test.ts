/** The checklist on a phone in the garden: ticked by thumb, kept, taken back, carried over in a file. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser, folder } = useBrowser();
const phone = {
	viewport: { width: 360, height: 740 },
	hasTouch: true,
	isMobile: true,
	reducedMotion: 'reduce'
} as const;
const bar = (page: Page) => page.getByRole('region', { name: 'How far you are' });
const box = (page: Page, name: RegExp) => page.getByRole('checkbox', { name });
const done = (page: Page, count: number) =>
	bar(page)
		.getByText(new RegExp(`^${count} of \\d+ done$`))
		.waitFor();
const part = (page: Page, title: string) =>
	page.locator('details').filter({ has: page.getByRole('heading', { name: title, exact: true }) });
async function openPhone(dark = false) {
	const context = await browser().newContext({ ...phone, colorScheme: dark ? 'dark' : 'light', acceptDownloads: true });
	const opened = await openPage(browser(), { context });
	await openDemo(opened.page, 'Alder Bend');
	await goto(opened.page, '/checklist/');
	await done(opened.page, 0);
	return opened;
}

describe('the checklist on a phone', () => {
	test('is ticked by thumb, one tick one undo, and kept over a reload', async () => {
		const { page, context, complaints } = await openPhone();
		await box(page, /Call the dig-notice service/).tap();
		await done(page, 1);
		await box(page, /Ask whether low-voltage/).tap();
		await done(page, 2);
		// What to watch for stays beside a step that is done.
		await page.getByText('It marks the utilities’ own lines only.', { exact: false }).waitFor();
		await bar(page).getByRole('button', { name: /^Undo/ }).tap();
		await done(page, 1);
		expect(await box(page, /Call the dig-notice service/).isChecked()).toBe(true);
		expect(await box(page, /Ask whether low-voltage/).isChecked()).toBe(false);
		await page.reload();
		await done(page, 1);
		expect(await box(page, /Call the dig-notice service/).isChecked()).toBe(true);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('leads on to the next open step, with the bar in sight, and every box fits a thumb', async () => {
		const { page, context, complaints } = await openPhone(true);
		await box(page, /Call the dig-notice service/).tap();
		await part(page, 'Upkeep').scrollIntoViewIfNeeded();
		await bar(page)
			.getByRole('button', { name: /^Next: Ask whether low-voltage/ })
			.tap();
		const next = box(page, /Ask whether low-voltage/);
		await next.and(page.locator(':focus')).waitFor();
		const [atNext, atBar] = [await next.boundingBox(), await bar(page).boundingBox()];
		expect(atNext!.y).toBeGreaterThanOrEqual(0);
		expect(atNext!.y + atNext!.height).toBeLessThanOrEqual(atBar!.y);
		expect(atBar!.y + atBar!.height).toBeLessThanOrEqual(phone.viewport.height + 1);
		const small = await page
			.getByRole('checkbox')
			.or(bar(page).getByRole('button'))
			.evaluateAll((all) =>
				all.flatMap((one) => {
					const { width, height } = one.getBoundingClientRect();
					return width < 44 || height < 44 ? [`${one.id || one.textContent}: ${width} by ${height}`] : [];
				})
			);
		expect(small).toEqual([]);
		expect(await page.getByRole('checkbox').count()).toBeGreaterThan(100);
		await expectAccessible(page, '/checklist/');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('says so when wiring is ticked before the plug is out, and leads there', async () => {
		const { page, context } = await openPhone();
		const joints = page.getByRole('group', { name: /Run 1: tap/ });
		const run = box(page, /Run 1: tap/);
		await joints.getByRole('checkbox').first().tap();
		// One joint of several: begun, not done.
		await done(page, 0);
		expect(await run.evaluate((input: HTMLInputElement) => input.indeterminate)).toBe(true);
		await page
			.getByText('Work on connections is ticked while the transformer is not ticked as unplugged.', { exact: false })
			.waitFor();
		// From the top: wherever a page is scrolled to, a bar that stays in sight lies half over something.
		await page.evaluate(() => scrollTo(0, 0));
		await expectAccessible(page, '/checklist/ with a note');
		await bar(page)
			.getByRole('button', { name: /Look: still open, “See that the transformer is unplugged/ })
			.tap();
		const plug = box(page, /See that the transformer is unplugged/);
		await plug.and(page.locator(':focus')).waitFor();
		await plug.tap();
		await done(page, 1);
		expect(await page.getByText('Work on connections is ticked', { exact: false }).count()).toBe(0);
		// The whole step ticks every joint of it.
		await run.tap();
		await done(page, 2);
		for (const joint of await joints.getByRole('checkbox').all()) expect(await joint.isChecked()).toBe(true);
		await context.close();
	});

	test('folds a part that is done, opens it by hand, and shows only what is left', async () => {
		const { page, context } = await openPhone();
		const before = part(page, 'Before you dig');
		const boxes = before.getByRole('checkbox');
		const count = await boxes.count();
		for (let k = 0; k < count; k++) await boxes.nth(k).tap();
		await before.getByText('all done').waitFor();
		expect(await boxes.first().isVisible()).toBe(false);
		// The focus is not lost with the box.
		expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SUMMARY');
		await before.locator('summary').tap();
		await boxes.first().waitFor();
		await page.getByRole('button', { name: 'Show only what is left' }).tap();
		await before.getByText('Nothing is left to do in this part.').waitFor();
		expect(await box(page, /Call the dig-notice service/).count()).toBe(0);
		await box(page, /Hang the transformer at/).waitFor();
		await expectAccessible(page, '/checklist/ with what is left');
		await page.getByRole('button', { name: 'Show only what is left' }).tap();
		// Taken back from inside the folded part, it is open again.
		await boxes.first().tap();
		await before.getByText(`${count - 1} of ${count} done`).waitFor();
		await boxes.first().waitFor();
		await context.close();
	});

	test('travels in a file; what the plan no longer has is listed and can be forgotten', async () => {
		const { page, context, complaints } = await openPhone();
		await box(page, /Hang the transformer at/).tap();
		await page
			.getByRole('group', { name: /Run 1: tap/ })
			.getByRole('checkbox')
			.first()
			.tap();
		await done(page, 1);
		const [saved] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('contentinfo').getByRole('button', { name: 'Save a copy' }).tap()
		]);
		const file = join(folder(), 'ticked.json');
		await saved.saveAs(file);

		await goto(page, '/');
		await page.getByRole('button', { name: 'Open Quince Row' }).tap();
		await page.waitForURL(/\/plan\//);
		await goto(page, '/checklist/');
		await done(page, 0);
		await goto(page, '/');
		await page.locator('input[type=file]').first().setInputFiles(file);
		await page.waitForURL(/\/answers\//);
		await goto(page, '/checklist/');
		await done(page, 1);
		expect(await box(page, /Hang the transformer at/).isChecked()).toBe(true);

		// The same file with a tick of a light that the plan does not have.
		const yard = JSON.parse(readFileSync(file, 'utf8')) as { done: string[] };
		writeFileSync(file, JSON.stringify({ ...yard, done: [...yard.done, 'fixture/old-oak/uplight-1@1,1'] }));
		await goto(page, '/');
		await page.locator('input[type=file]').first().setInputFiles(file);
		await page.waitForURL(/\/answers\//);
		await goto(page, '/checklist/');
		await page.getByRole('heading', { name: 'Done, no longer on the list' }).waitFor();
		await page.getByRole('button', { name: 'Forget: Set uplight 1 of the old oak' }).tap();
		await page.getByRole('heading', { name: 'Done, no longer on the list' }).waitFor({ state: 'detached' });
		await done(page, 1);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('works without a network', async () => {
		const { page, context } = await openPhone();
		await page.evaluate(async () => void (await navigator.serviceWorker.ready));
		await page.reload();
		await done(page, 0);
		await context.setOffline(true);
		await page.reload();
		await box(page, /Call the dig-notice service/).tap();
		await done(page, 1);
		await context.close();
	});
});
