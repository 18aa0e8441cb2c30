/** Pages in the states that come and go: nothing answered, things wrong, folds open, something in hand, notices. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectFit, planPages, settle, visit } from './accessible-pages';
import { thing, tool } from './board';
import { chooseLight, expectAccessible, goto, openDemo, openPage, site, useBrowser } from './browser';

const { browser } = useBrowser();

const openFolds = (page: Page): Promise<number> =>
	page.evaluate(() => {
		const folded = [...document.querySelectorAll<HTMLDetailsElement>('main details:not([open])')];
		for (const one of folded) one.open = true;
		return folded.length;
	});

test('nothing answered, on every page of the plan', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360 });
	for (const path of [...planPages, '/answers/', '/open/']) {
		await visit(page, path);
		await expectFit(page, `${path} of a blank yard`);
	}
	expect(complaints).toEqual([]);
	await context.close();
}, 300_000);

test('a yard with a fault in its circuit, every fold open', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360, dark: true });
	await goto(page, '/');
	await page.getByRole('button', { name: 'Open Wistlow Bank' }).click();
	await page.waitForURL(/\/circuit\//);
	await page.locator('li.stop').first().waitFor();
	for (const path of ['/circuit/', '/plan/', '/light/', '/hours/', '/checklist/', '/packet/', '/help/'] as const) {
		await visit(page, path);
		// A fold within a fold comes with it.
		for (let rounds = 0; rounds < 3 && (await openFolds(page)) > 0; rounds += 1) await settle(page);
		await expectFit(page, `${path} with a fault, folds open`);
	}
	await visit(page, '/packet/');
	await page.emulateMedia({ media: 'print' });
	// A sheet of letter paper is 8.5 by 11 in of 96 px.
	await page.setViewportSize({ width: 816, height: 1056 });
	await expectAccessible(page, 'the packet as it is printed');
	expect(complaints).toEqual([]);
	await context.close();
}, 300_000);

test('what is typed is not understood', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360 });
	await openDemo(page, 'Alder Bend');
	await visit(page, '/ask/house/house-size/');
	const depth = page.getByRole('textbox', { name: 'Depth of the house' });
	await depth.fill('deep');
	await depth.blur();
	await page.locator('[aria-invalid="true"]').first().waitFor();
	await expectFit(page, 'a length that is none');

	await visit(page, '/hours/');
	await page.getByLabel('The lights are done on').fill('');
	await page.locator('[aria-invalid="true"]').first().waitFor();
	await expectFit(page, 'a day that is none');

	await visit(page, '/rules/');
	const figure = page.getByRole('textbox', { name: 'Bark to light, slim tree' });
	await figure.fill('900 ft');
	await figure.blur();
	await page.locator('[aria-invalid="true"]').first().waitFor();
	await expectFit(page, 'a figure out of its range');
	expect(complaints).toEqual([]);
	await context.close();
});

describe.each([360, 1280])('in hand at %i px', (width) => {
	test('a light on the layout; on the drawing a thing, a kind to pick, a line begun, a distance', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark: width === 360 });
		await openDemo(page, 'Alder Bend');
		await chooseLight(page, 'T1');
		await settle(page);
		await expectFit(page, 'a light in hand');
		await page.getByRole('button', { name: 'Point on the drawing' }).first().click();
		await expectFit(page, 'a point wanted on the layout');

		await visit(page, '/plan/drawing/');
		const walk = page.locator('[data-thing^="walk/"]').first();
		await walk.focus();
		await page.keyboard.press('Enter');
		await expectFit(page, 'a walk in hand');
		await page.keyboard.press('Escape');
		await tool(page, 'Add').click();
		await expectFit(page, 'kinds to add');
		await page
			.getByRole('list', { name: 'Kinds of thing to add' })
			.getByRole('button', { name: 'Bed', exact: true })
			.click();
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('Enter');
		await expectFit(page, 'a bed begun');
		await page.keyboard.press('Escape');
		await page.keyboard.press('Escape');
		await tool(page, 'Measure').click();
		await expectFit(page, 'measuring');
		await tool(page, 'Choose').click();
		await thing(page, (await walk.getAttribute('data-thing'))!).waitFor({ state: 'attached' });
		expect(complaints).toEqual([]);
		await context.close();
	}, 300_000);
});

test('more of the site, a file refused, a link broken, a page that is not there', async () => {
	const { page, context } = await openPage(browser(), { width: 360 });
	await visit(page, '/');
	await page.locator('header').getByRole('button', { name: 'More' }).click();
	await page.locator('#more').waitFor();
	await expectFit(page, 'more of the site');
	await page.keyboard.press('Escape');
	const buffer = Buffer.from('{"format":"something else"}');
	await page
		.locator('input[type="file"]')
		.first()
		.setInputFiles({ name: 'note.json', mimeType: 'application/json', buffer });
	await page.getByText('This file was not opened').waitFor();
	await expectFit(page, 'a file refused');
	await page.goto(`${site()}/open/#aAAAA`);
	await page.getByRole('heading', { level: 1, name: 'This link was not opened' }).waitFor();
	await settle(page);
	await expectFit(page, 'a broken link');
	await page.goto(`${site()}/nowhere/`);
	await page.locator('h1').waitFor();
	await settle(page);
	await expectFit(page, 'a page that is not there');
	await context.close();
});

test('notices: the yard changed in another tab, the browser keeps nothing, something set aside', async () => {
	const { page, context } = await openPage(browser(), { width: 360, dark: true });
	await openDemo(page, 'Quince Row');
	await visit(page, '/ask/place/units/');
	const other = await openPage(browser(), { context });
	await visit(other.page, '/ask/place/units/');
	await other.page.getByRole('textbox', { name: /Name of the yard/ }).fill('Elsewhere');
	await page.getByRole('button', { name: 'Keep this one' }).waitFor();
	await expectFit(page, 'changed in another tab');
	await page.getByRole('button', { name: 'Keep this one' }).click();
	await other.page.close();

	await page.evaluate(() => {
		Storage.prototype.setItem = () => {
			throw new DOMException('full', 'QuotaExceededError');
		};
	});
	await page.getByRole('textbox', { name: /Name of the yard/ }).fill('Not kept');
	await page.getByRole('alert').filter({ hasText: /\w/ }).first().waitFor();
	await expectFit(page, 'a yard that cannot be kept');
	await page.reload();
	await page.evaluate(() => localStorage.setItem('duskwright/yard', '{"format":"duskwright/yard","version":'));
	await page.reload();
	await page.getByRole('button', { name: 'Close this note' }).waitFor();
	await settle(page);
	await expectFit(page, 'a yard set aside');
	await context.close();
});
