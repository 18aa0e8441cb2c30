/** Lessons in class: gone through by keys and by the browser's own ways, hands counted, nothing of it kept, the reveal there at once. */
import { expect, test } from 'vitest';
import { lessons } from '../../src/lib/domain/lesson';
import { goto, openPage, site, useBrowser } from './browser';
import { enter, heading, on, predict, projector, stepOn, where } from './lesson-room';
import { keptBy } from './projector';

const { browser } = useBrowser();
const screens = [1, 2, 3, 4, 5, 6];
const some = lessons[0]?.id ?? '';

test('gone through by keys alone', async () => {
	const { page, context, complaints } = await openPage(browser(), projector);
	await enter(page, some);
	const at = async (screen: number) => {
		await expect.poll(() => where(page)).toBe(`Screen ${screen} of 6`);
		// The heading has the focus, and says which screen this is.
		expect(await heading(page).evaluate((one) => one === document.activeElement)).toBe(true);
		expect(await heading(page).getAttribute('aria-describedby')).toBe('where');
	};
	for (const [key, screen] of [
		['PageDown', 2],
		['ArrowRight', 3],
		['PageUp', 2],
		['ArrowLeft', 1],
		['End', 6],
		['Home', 1],
		['ArrowRight', 2]
	] as const) {
		await page.keyboard.press(key);
		await at(screen);
	}
	await page.keyboard.press('ArrowLeft');
	await at(1);
	await page.keyboard.press('ArrowLeft');
	await at(1);
	await page.keyboard.press('ArrowRight');
	await at(2);

	const choices = page.locator('.choice');
	await page.keyboard.press('3');
	expect(await choices.nth(2).getAttribute('aria-pressed')).toBe('true');
	// From the heading: the first choice, its two buttons of hands.
	await page.keyboard.press('Tab');
	await page.keyboard.press('Space');
	expect(await choices.first().getAttribute('aria-pressed')).toBe('true');
	expect(await choices.nth(2).getAttribute('aria-pressed')).toBe('false');
	await page.keyboard.press('Tab');
	await page.keyboard.press('Tab');
	await page.keyboard.press('Enter');
	await page.keyboard.press('Enter');
	expect(await page.locator('.hands output').first().innerText()).toBe('2 hands');

	const why = page.getByLabel('Why do you think so?');
	await why.focus();
	await page.keyboard.type('12 V is less');
	await page.keyboard.press('ArrowLeft');
	await page.keyboard.press('Home');
	// Numbers and arrows were the field's; the remote is still the lesson's.
	expect(await where(page)).toBe('Screen 2 of 6');
	expect(await choices.first().getAttribute('aria-pressed')).toBe('true');
	await page.keyboard.press('PageDown');
	await at(3);
	expect(await page.locator('.room').innerText()).toContain('Your reason: 12 V is less');
	expect(complaints).toEqual([]);
	await context.close();
});

test('hands are counted, never below none, and told at the reveal', async () => {
	const { page, context } = await openPage(browser(), projector);
	await enter(page, some, '#screen=2');
	const row = (n: number) => page.locator('.hands').nth(n);
	for (const [n, hands] of [
		[0, 7],
		[1, 4],
		[2, 1]
	] as const)
		for (let hand = 0; hand < hands; hand += 1) await row(n).getByRole('button', { name: 'One hand more' }).click();
	await row(0).getByRole('button', { name: 'One hand less' }).click();
	expect(await page.locator('.hands output').allInnerTexts()).toEqual(
		expect.arrayContaining(['6 hands', '4 hands', '1 hand'])
	);
	// Said to be out of use where there is none, and pressed all the same.
	for (let n = 0; n < 3; n += 1) await row(2).getByRole('button', { name: 'One hand less' }).click({ force: true });
	expect(await row(2).locator('output').innerText()).toBe('0 hands');
	expect(await page.locator('.note').innerText()).toContain('10 hands counted');
	await on(page).click();
	const lesson = lessons[0]!;
	const right = lesson.choices('feet').findIndex(({ id }) => id === lesson.reveal('feet').right);
	expect(await page.locator('.room').innerText()).toContain(`${[6, 4, 0, 0][right]} of 10 hands`);
	expect(await heading(page).innerText()).toBe(lesson.choices('feet')[right]!.words);
	await context.close();
});

test('the browser goes a screen back and forward with what was said; a reload keeps the screen and forgets it', async () => {
	const { page, context, complaints } = await openPage(browser(), projector);
	await goto(page, '/class/');
	// The foot comes when the page has come alive.
	await page.locator('footer').waitFor();
	await page.getByRole('radio', { name: 'Metres' }).check();
	await page.locator('.lessons a').first().click();
	await page.locator('.room[data-ready]').waitFor();
	await page.getByRole('button', { name: 'In feet' }).waitFor();
	for (const screen of [1, 2, 3, 4]) {
		await stepOn(page, screen);
		if (screen === 2) await predict(page, 'It spreads');
	}
	await page.goBack();
	await page.goBack();
	await expect.poll(() => where(page)).toBe('Screen 2 of 6');
	expect(await page.getByLabel('Why do you think so?').inputValue()).toBe('It spreads');
	expect(await page.locator('.choice[aria-pressed="true"]').count()).toBe(1);
	await page.goForward();
	await expect.poll(() => where(page)).toBe('Screen 3 of 6');

	await page.reload();
	await page.locator('.room[data-ready]').waitFor();
	await expect.poll(() => where(page)).toBe('Screen 3 of 6');
	await page.getByRole('button', { name: 'In feet' }).waitFor();
	expect(await page.locator('.room').innerText()).not.toContain('It spreads');
	await page.goBack();
	await expect.poll(() => where(page)).toBe('Screen 2 of 6');
	expect(await page.getByLabel('Why do you think so?').inputValue()).toBe('');
	expect(await page.locator('.choice[aria-pressed="true"]').count()).toBe(0);
	await page.goBack();
	await page.goBack();
	await page.waitForURL(/\/class\/#units=metres$/);
	expect(complaints).toEqual([]);
	await context.close();
});

test('nothing that a class says is kept or sent', async () => {
	const { page, context } = await openPage(browser(), projector);
	const asked: string[] = [];
	page.on('request', (request) => asked.push(`${request.method()} ${request.url()} ${request.postData() ?? ''}`));
	await enter(page, some);
	const secret = 'wrenwillowquartz';
	for (const screen of screens) {
		await stepOn(page, screen);
		if (screen === 2) await predict(page, secret);
	}
	// Long enough for anything that saves with a delay.
	await page.waitForTimeout(1500);
	const kept = await keptBy(page);
	expect(kept).not.toContain(secret);
	const choices = lessons[0]!.choices('feet');
	for (const { id } of choices) expect(kept).not.toContain(`"${id}"`);
	expect(asked.filter((one) => one.includes(secret) || !one.startsWith(`GET ${site()}`))).toEqual([]);
	// The measure works: the same words are found where they are kept.
	await page.evaluate((words) => sessionStorage.setItem('test', words), secret);
	expect(await keptBy(page)).toContain(secret);
	await context.close();
});

test('the reveal is there as soon as it is asked for', async () => {
	const { page, context } = await openPage(browser(), projector);
	const times: number[] = [];
	for (const { id } of lessons) {
		await page.goto('about:blank');
		await enter(page, id, '#screen=2');
		// A class thinks for longer.
		await page.waitForTimeout(1500);
		await page.evaluate(() => {
			const state = window as unknown as { tap: number; took: number | null };
			state.took = null;
			addEventListener('click', (event) => (state.tap = event.timeStamp), { capture: true, once: true });
			new MutationObserver((_, watch) => {
				if (!document.querySelector('[data-screen="3"] .figures dd')) return;
				state.took = performance.now() - state.tap;
				watch.disconnect();
			}).observe(document.body, { childList: true, subtree: true, attributes: true });
		});
		await on(page).click();
		await page.waitForFunction(() => (window as unknown as { took: number | null }).took !== null);
		times.push(await page.evaluate(() => (window as unknown as { took: number }).took));
	}
	const median = times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]!;
	console.log(`reveal: median ${median.toFixed(0)} ms of ${times.map((time) => time.toFixed(0)).join(', ')}`);
	// 50 ms on a machine that has nothing else to do.
	expect(median).toBeLessThan(150);
	await context.close();
});
