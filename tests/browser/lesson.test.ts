/** Lessons in class: every screen of each, read from the back of a room and on a phone. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { lessons } from '../../src/lib/domain/lesson';
import { expectFit } from './accessible-pages';
import { expectAccessible, openPage, useBrowser } from './browser';
import { enter, predict, projector, stepOn, where } from './lesson-room';
import { faintTexts, overflowOf, smallTexts } from './projector';

const { browser } = useBrowser();
const screens = [1, 2, 3, 4, 5, 6];
/** How the screen that is shown fails a room: longer than the window, letters too small, too faint. */
async function roomFaults(page: Page): Promise<string[]> {
	const { down, across } = await overflowOf(page);
	return [
		...(down + across > 0 ? [`${down} px too long, ${across} px too wide`] : []),
		...(await smallTexts(page, 28)),
		...(await faintTexts(page, 7))
	];
}
/** The same of each depth of the working and each of its pages. */
async function workingFaults(page: Page): Promise<string[]> {
	const faults: string[] = [];
	for (const depth of await page.getByRole('group', { name: 'How much of the working' }).getByRole('button').all()) {
		const name = await depth.innerText();
		await depth.click();
		const after = page.getByRole('button', { name: 'After', exact: true });
		for (;;) {
			faults.push(...(await roomFaults(page)).map((fault) => `${name}: ${fault}`));
			if (!(await after.isVisible()) || (await after.isDisabled())) break;
			await after.click();
		}
	}
	return faults;
}
test('there are lessons', () => expect(lessons.length).toBeGreaterThan(0));

describe.each(lessons.map(({ id }) => ({ id })))('$id', ({ id }) => {
	test.each([{ dark: false }, { dark: true }])('is read from the back of the room; dark: $dark', async ({ dark }) => {
		const { page, context, complaints } = await openPage(browser(), { ...projector, dark });
		for (const fragment of ['#units=feet', '#units=metres']) {
			await page.goto('about:blank');
			await enter(page, id, fragment);
			for (const screen of screens) {
				await stepOn(page, screen);
				if (screen === 2) await predict(page, 'It is further away, so there is less of it');
				const at = `${id}, screen ${screen}, ${fragment}`;
				expect(await roomFaults(page), at).toEqual([]);
				if (screen === 4 && !dark) expect(await workingFaults(page), at).toEqual([]);
				if (fragment === '#units=feet') await expectAccessible(page, at, { rule: 'color-contrast-enhanced' });
			}
		}
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('is read on a phone, at the usual size', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 390, height: 844 });
		await enter(page, id);
		for (const screen of screens) {
			await stepOn(page, screen);
			const at = `${id}, screen ${screen}`;
			await expectFit(page, at);
			expect(await smallTexts(page, 13.5), at).toEqual([]);
			expect(
				(
					await page
						.locator('.room p')
						.first()
						.evaluate((one) => getComputedStyle(one).fontSize)
				).slice(0, 2)
			).toBe('17');
		}
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('has accessible screens, and its lever moves the figures', async () => {
		const { page, context } = await openPage(browser(), projector);
		await enter(page, id);
		for (const screen of screens) {
			await stepOn(page, screen);
			await expectAccessible(page, `${id}, screen ${screen}`);
			if (screen !== 5) continue;
			const figures = page.locator('.figures');
			const seen = new Set<string>();
			const slider = page.getByRole('slider');
			await slider.focus();
			const places = Number(await slider.getAttribute('max')) + 1;
			await page.keyboard.press('Home');
			for (let place = 0; place < places; place += 1) {
				seen.add(await figures.innerText());
				expect(await overflowOf(page), `${id}, place ${place}`).toEqual({ down: 0, across: 0 });
				await page.keyboard.press('ArrowRight');
			}
			expect(seen.size).toBeGreaterThan(1);
			// The arrows moved the slider, not the lesson.
			expect(await where(page)).toBe('Screen 5 of 6');
		}
		await context.close();
	});
});
