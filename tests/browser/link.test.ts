/** The same yard on another device: by a code on paper or on a screen, and by a link; links that are not right. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { examples, writeYard } from '../../src/lib/domain/yard';
import { decodedPng } from '../../src/lib/ui/qr.testing';
import { expectAccessible, goto, openDemo, openPage, site, useBrowser } from './browser';

const { browser, folder } = useBrowser();

/** The text of the file that "Save a copy" hands over. */
async function saved(page: Page): Promise<string> {
	const download = page.waitForEvent('download');
	await page.locator('footer').getByRole('button', { name: 'Save a copy' }).click();
	return readFileSync(await (await download).path(), 'utf8');
}
async function share(page: Page): Promise<{ link: string; code: Uint8Array }> {
	await goto(page, '/answers/');
	await page.getByText('Open on another device', { exact: true }).click();
	const link = await page.getByLabel('The same as a link').inputValue();
	const code = await page.getByRole('img', { name: /^Code that opens/ }).screenshot({ scale: 'device' });
	return { link, code };
}
const heading = (page: Page) => page.locator('h1').first();
/** Opens a link on a device that has nothing yet. */
async function arrive(link: string, title: string, width = 390) {
	const opened = await openPage(browser(), { width });
	await opened.page.goto(link);
	await opened.page.getByRole('heading', { level: 1, name: title }).waitFor();
	return opened;
}
/** What the browser keeps of the yard in hand, by its name; null: nothing. */
const keptName = (page: Page) =>
	page.evaluate(() => {
		for (const key of Object.keys(localStorage)) {
			const text = localStorage.getItem(key) ?? '';
			if (text.includes('duskwright/yard')) return /"name":\s*"([^"]*)"/.exec(text)?.[1] ?? '';
		}
		return null;
	});

describe('a yard on another device', () => {
	test.each([
		{ title: 'Alder Bend', width: 1280 },
		{ title: 'Quince Row', width: 390 }
	])(
		'$title, by the code on the screen at $width px: the saved files are alike to the byte',
		async ({ title, width }) => {
			const here = await openPage(browser(), { width });
			await openDemo(here.page, title);
			const { code } = await share(here.page);
			await expectAccessible(here.page, `sharing at ${width} px`);
			expect(await here.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
			const text = await decodedPng(code);
			expect(text).toMatch(/\/open\/#1\d+$/);
			expect(text?.startsWith(site())).toBe(true);

			const there = await arrive(text ?? '', `${title}, from a link`);
			await expect.poll(() => there.page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
			await there.page.getByText(/^It holds \d+ trees?, /).waitFor();
			await there.page.getByText(/^\d+ lights on \d+ runs?$/).waitFor();
			await expectAccessible(there.page, 'a link opened');
			// Nothing is kept before the person says so.
			expect(await keptName(there.page)).toBeNull();
			await there.page.getByRole('button', { name: 'Open it here' }).click();
			await there.page.waitForURL(/\/plan\/$/);
			expect(await saved(there.page)).toBe(await saved(here.page));
			await expect.poll(() => keptName(there.page)).toBe(title);
			expect([...here.complaints, ...there.complaints]).toEqual([]);
			await here.context.close();
			await there.context.close();
		}
	);

	test.each(['Alder Bend', 'Quince Row', 'Hazelmoor'])(
		'%s, by the code on the printed cover, read at 150 dots an inch',
		async (title) => {
			const here = await openPage(browser());
			await openDemo(here.page, title);
			await goto(here.page, '/packet/');
			await here.page.locator('.chapter-cover').getByRole('img', { name: /^Code/ }).waitFor();
			const stem = join(folder(), 'cover');
			await here.page.pdf({ path: `${stem}.pdf`, preferCSSPageSize: true, printBackground: false });
			execFileSync('pdftoppm', [
				'-f',
				'1',
				'-l',
				'1',
				'-singlefile',
				'-gray',
				'-png',
				'-r',
				'150',
				`${stem}.pdf`,
				stem
			]);
			const text = await decodedPng(readFileSync(`${stem}.png`));
			const there = await arrive(text ?? '', `${title}, from a link`);
			await there.page.getByRole('button', { name: 'Open it here' }).click();
			await there.page.waitForURL(/\/plan\/$/);
			expect(await saved(there.page)).toBe(await saved(here.page));
			expect([...here.complaints, ...there.complaints]).toEqual([]);
			await here.context.close();
			await there.context.close();
		}
	);

	test('by the link: one in hand is kept, or comes back by undo', async () => {
		const here = await openPage(browser());
		await here.context.grantPermissions(['clipboard-read', 'clipboard-write']);
		await openDemo(here.page, 'Hazelmoor');
		const { link } = await share(here.page);
		await here.page.getByText(`${link.length} characters`).waitFor();
		await here.page.getByRole('button', { name: 'Copy the link' }).click();
		await here.page.getByText(/^Copied\./).waitFor();
		expect(await here.page.evaluate(() => navigator.clipboard.readText())).toBe(link);
		await here.page.goto(link);
		await here.page.getByText(/You have this yard in hand already/).waitFor();

		const there = await openPage(browser(), { width: 390 });
		await openDemo(there.page, 'Quince Row');
		await expect.poll(() => keptName(there.page)).toBe('Quince Row');
		await there.page.goto(link);
		await there.page.getByText(/You have Quince Row in hand on this device/).waitFor();
		await there.page.getByRole('button', { name: 'Keep mine' }).click();
		await there.page.waitForURL(/\/plan\/$/);
		expect(await keptName(there.page)).toBe('Quince Row');
		// Neither the address nor the way back has the link any more.
		await there.page.goBack();
		expect(there.page.url()).not.toContain('#a');

		await there.page.goto(link);
		await there.page.getByRole('button', { name: 'Open it here' }).click();
		await there.page.waitForURL(/\/plan\/$/);
		await expect.poll(() => keptName(there.page)).toBe('Hazelmoor');
		await there.page.getByRole('button', { name: /^Undo/ }).first().click();
		await expect.poll(() => keptName(there.page)).toBe('Quince Row');
		expect([...here.complaints, ...there.complaints]).toEqual([]);
		await here.context.close();
		await there.context.close();
	});

	test('the link is selected where the browser does not let it be copied', async () => {
		const { page, context, complaints } = await openPage(browser());
		await page.addInitScript(() => {
			navigator.clipboard.writeText = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
		});
		await openDemo(page, 'Quince Row');
		const { link } = await share(page);
		await page.getByRole('button', { name: 'Copy the link' }).click();
		await page.getByText(/does not let the link be copied\. It is selected/).waitFor();
		expect(await page.evaluate(() => String(document.getSelection()))).toBe(link);
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('a yard too large for one code: it says so, and the link holds it all the same', async () => {
	const { page, context, complaints } = await openPage(browser());
	const yard = examples[1]!.yard;
	const trees = Array.from({ length: 120 }, (_, i) => ({
		id: `tree-${i + 1}`,
		name: `number ${i * i}`,
		at: { along: ((i * 7919) % 1000) / 100 - 20, out: ((i * 104_729) % 1000) / 100 + 2 }
	}));
	await goto(page, '/');
	const buffer = Buffer.from(writeYard({ ...yard, name: 'The wood', trees }));
	await page.locator('input[type="file"]').setInputFiles({ name: 'wood.json', mimeType: 'application/json', buffer });
	await page.waitForURL(/\/answers\//);
	await page.getByText('Open on another device', { exact: true }).click();
	await page.getByText('Too large for one code. Use the link, or save a copy instead.').waitFor();
	expect(await page.getByRole('img', { name: /^Code that opens/ }).count()).toBe(0);
	await page.getByText(/Some chat programs cut a link this long/).waitFor();
	const link = await page.getByLabel('The same as a link').inputValue();
	const there = await arrive(link, 'The wood, from a link');
	await there.page.getByText(/^It holds 120 trees, /).waitFor();
	expect([...complaints, ...there.complaints]).toEqual([]);
	await context.close();
	await there.context.close();
});

describe('a link that is not right', () => {
	test.each([
		['cut', (link: string) => link.slice(0, -40), /damaged, or part of it is missing/],
		[
			'changed',
			(link: string) => link.replace(/#a.{20}/, '#aAAAAAAAAAAAAAAAAAAAA'),
			/damaged, or part of it is missing/
		],
		['newer', (link: string) => link.replace('#a', '#b'), /made by a newer version/],
		['empty', (link: string) => link.replace(/#.*/, ''), /no link to a yard/],
		['far too long', (link: string) => `${link}${'A'.repeat(70_000)}`, /far too long/]
	])('%s: says what and what to do, and changes nothing', async (_, spoil, words) => {
		const { page, context, complaints } = await openPage(browser(), { width: 360, dark: true });
		await openDemo(page, 'Quince Row');
		const { link } = await share(page);
		await page.goto('about:blank');
		await page.goto(spoil(link));
		await page.getByRole('heading', { level: 1, name: 'This link was not opened' }).waitFor();
		await page.getByText(words).waitFor();
		await page.getByText(/in hand, Quince Row, is as it was/).waitFor();
		await expectAccessible(page, 'a broken link');
		await page.getByRole('button', { name: 'Keep on with Quince Row' }).click();
		await page.waitForURL(/\/plan\/$/);
		expect(await heading(page).count()).toBe(1);
		expect(await keptName(page)).toBe('Quince Row');
		expect(complaints).toEqual([]);
		await context.close();
	});
});
