/** The shop's shelf: the demo, a line typed in, a list opened, kept over a reload, saved and read back. */
import { readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { readShelf } from '../../src/lib/shelf';
import { demoShelf } from '../../src/lib/shelf/demo';
import { sideways } from './accessible-fit';
import { expectAccessible, goto, openPage, useBrowser } from './browser';
import { targetsOn, tooSmall } from './targets';

const { browser, folder } = useBrowser();
const path = '/counter/shelf/';
const said = (page: Page, text: string | RegExp) => page.getByRole('status').getByText(text).waitFor();
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();

async function openShelf(options: Parameters<typeof openPage>[1] = {}) {
	const opened = await openPage(browser(), options);
	await goto(opened.page, path);
	await opened.page.getByRole('heading', { name: 'Nothing is on it yet' }).waitFor();
	return opened;
}
async function useDemo(page: Page): Promise<void> {
	await press(page, 'Use the demo shelf');
	await said(page, `${demoShelf.lines.length} lines on the shelf.`);
}
async function openList(page: Page, name: string, bytes: string | Uint8Array): Promise<void> {
	const file = join(folder(), name);
	writeFileSync(file, bytes);
	await page.getByLabel('A list from a CSV file').setInputFiles(file);
	await page.getByRole('heading', { name }).waitFor();
}
async function saved(page: Page, button: string): Promise<string> {
	const download = page.waitForEvent('download');
	await press(page, button);
	const file = join(folder(), `saved-${Math.abs(button.length)}.csv`);
	await (await download).saveAs(file);
	return readFileSync(file, 'utf8');
}
const utf16 = (text: string) => Buffer.from(`\u{feff}${text}`, 'utf16le');
const isFocused = (page: Page, name: string | RegExp) =>
	expect.poll(() => page.getByRole('button', { name }).evaluate((one) => one === document.activeElement)).toBe(true);
async function expectSound(page: Page, where: string): Promise<void> {
	await expectAccessible(page, where);
	expect(await sideways(page), where).toEqual([]);
	expect(tooSmall(await targetsOn(page)), where).toEqual([]);
}

const nasty = [
	'Item no,Type,Description,Kind,Watts,Lumens,Price,Qty,Bay,Lamp,EAN',
	'0017,fixture,"Path light,\nbrass look",path,20W,"1,200",$12.50,4,"Aisle 4, bay 2",LED,900',
	'0017,fixture,The same code,spot,4,300,9,3,A1,LED,901',
	'1E5,fixture,"=HYPERLINK(""x"")",spot,4,300,"12,50",-2,A1,LED,902',
	'90.750,fixture,<b>Bold</b> <img src=x onerror=alert(1)>,wash,6,500,$15.00,1,@SUM(A1),LED,903',
	'__proto__,gizmo,What is it,spot,4,300,9,3,A1,LED,904'
].join('\r\n');

describe('the shelf', () => {
	test('starts empty, takes the demo, and takes a line off with a way back', async () => {
		const { page, context, complaints } = await openShelf();
		await expectSound(page, 'empty shelf');
		await useDemo(page);
		await page.getByRole('table', { name: 'Kits on the shelf' }).getByRole('columnheader', { name: 'Price' }).waitFor();
		await expectSound(page, 'demo shelf');
		const [first, second] = demoShelf.lines.filter(({ kind }) => kind === 'kit');
		await press(page, `Take off ${first!.name}, ${first!.code}`);
		await said(page, `${first!.name} taken off. ${demoShelf.lines.length - 1} lines on the shelf.`);
		// Who works by keyboard is at the line that took its place.
		await isFocused(page, `Change ${second!.name}, ${second!.code}`);
		await press(page, `Take back: ${first!.name} taken off`);
		await said(page, `${demoShelf.lines.length} lines on the shelf.`);
		expect(await page.getByRole('rowheader').first().textContent()).toContain(first!.name);
		expect(readShelf(await saved(page, 'Save the shelf as CSV')).shelf).toEqual(demoShelf);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a line is typed, complained about by its field, kept over a reload, and changed', async () => {
		const { page, context, complaints } = await openShelf({ width: 768, dark: true });
		await press(page, 'Type in: A fixture');
		await page.getByLabel('Name').fill('Copper spot');
		await page.getByLabel('Power of one, W').fill('four');
		await press(page, 'Put it on the shelf');
		await page.getByLabel('Stock code').and(page.locator(':focus')).waitFor();
		expect(await page.getByLabel('Stock code').getAttribute('aria-invalid')).toBe('true');
		await page.locator('#line-watts-error').getByText('four').waitFor();
		await expectSound(page, 'a line that is not whole');
		await page.getByLabel('Stock code').fill('0017');
		await page.getByLabel('Price of one').fill('$12,5');
		await page.getByLabel('Kind of light').selectOption('spot');
		await page.getByLabel('Kind of lamp').selectOption('led');
		await page.getByLabel('Power of one, W').fill('4W');
		await page.getByLabel('Light of one, lm').fill('300');
		await page.getByLabel('Beam angle').fill('36°');
		await page.getByText('“$12,5” was taken as 12.50.').waitFor();
		await press(page, 'Put it on the shelf');
		await said(page, 'Copper spot put on the shelf. 1 line on the shelf.');
		await isFocused(page, 'Change Copper spot, 0017');
		await page.reload();
		const row = page.getByRole('row', { name: /Copper spot/ });
		await row.getByText('spot, LED 4 W, 300 lm, 36°, 9 to 15 V').waitFor();
		await row.getByText('$12.50').waitFor();
		await press(page, 'Change Copper spot, 0017');
		await page.getByLabel('Price of one').fill('30');
		await press(page, 'Keep the change');
		await row.getByText('$30.00').waitFor();
		// The same code again is refused, with the line that has it.
		await press(page, 'Type in: Connectors');
		await page.getByLabel('Stock code').fill('0017');
		await page.getByLabel('Price of one').fill('3');
		await press(page, 'One more: Connectors in one');
		await press(page, 'Put it on the shelf');
		await page.getByText('“0017” is on the shelf already: Copper spot.', { exact: false }).waitFor();
		await press(page, 'Leave it');
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a list with everything wrong with it is shown first, then put on the shelf, and saved equal', async () => {
		const { page, context, complaints } = await openShelf();
		await openList(page, 'nasty.csv', utf16(nasty));
		await page.getByText('letters as UTF-16 LE, cells parted by commas, headings in row 1', { exact: false }).waitFor();
		await said(page, '2 rows are left out.');
		for (const trouble of [
			/Row 3, Item no: .*0017.* row 2/,
			/Row 6, Type: .*gizmo/,
			/Row 2, Watts: .*20W/,
			/Row 4, Description: .*formula/,
			/Not used: .*EAN/
		])
			await page.getByRole('listitem').filter({ hasText: trouble }).first().waitFor();
		await expectSound(page, 'a list before it is taken');
		// Nothing was put there: a reload finds the shelf empty.
		await page.reload();
		await page.getByRole('heading', { name: 'Nothing is on it yet' }).waitFor();
		await openList(page, 'nasty.csv', utf16(nasty));
		await press(page, 'Put these 3 lines on the shelf');
		await said(page, '3 lines put on the shelf from nasty.csv. 3 lines on the shelf.');
		await page.reload();
		await page.getByText('2 rows of a list were left out.', { exact: false }).waitFor();
		await expectSound(page, 'a shelf with rows left out');
		const table = page.getByRole('table', { name: 'Fixtures on the shelf' });
		expect(await table.getByRole('rowheader').count()).toBe(3);
		// Markup and formulas are words; codes are as they were.
		await table.getByText('<b>Bold</b> <img src=x onerror=alert(1)>').waitFor();
		for (const code of ['0017', '1E5', '90.750']) await table.getByRole('cell', { name: code, exact: true }).waitFor();
		const expected = readShelf(utf16(nasty), { name: 'nasty', currency: 'USD' });
		const text = await saved(page, 'Save the shelf as CSV');
		expect(readShelf(text).shelf).toEqual(expected.shelf);
		// No cell begins with what a spreadsheet runs (OWASP, CSV Injection).
		expect(text).toContain(`'=HYPERLINK`);
		expect(text).toContain(`'@SUM(A1)`);
		const aside = readShelf(await saved(page, 'Save the rows left out as CSV'));
		expect(aside.shelf.lines.map(({ name }) => name)).toEqual(['The same code']);
		expect(aside.leftOut.map(({ cells }) => cells.find(({ header }) => header === 'code')?.text)).toEqual([
			'__proto__'
		]);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a column that is taken for something else is read again', async () => {
		const { page, context } = await openShelf();
		const text = 'type;code;what;price\nconnectors;A;ten of them;3\n';
		await openList(page, 'odd.csv', text.replace('ten of them', '10').replace('what', 'inside'));
		await said(page, 'No line can go on the shelf');
		expect(await page.getByRole('button', { name: /^Put/ }).count()).toBe(0);
		await page.getByLabel('inside').selectOption('connectors');
		// The list of columns stays open under the hand, and the focus where it was.
		expect(await page.getByLabel('inside').isVisible()).toBe(true);
		await said(page, '1 line can go on the shelf');
		await press(page, 'Put this 1 line on the shelf');
		await page.getByRole('table', { name: 'Connectors on the shelf' }).getByText('10 connectors').waitFor();
		// A second list stays beside the first, or takes its place.
		await openList(page, 'more.csv', 'type;code;connectors;price\nconnectors;B;5;2\nconnectors;A;20;4\n');
		await page.getByRole('radio', { name: /They stay/ }).check();
		await press(page, 'Put these 2 lines on the shelf');
		const cells = page.getByRole('table', { name: 'Connectors on the shelf' }).getByRole('row');
		await said(page, '2 lines on the shelf.');
		expect(await cells.nth(1).textContent()).toContain('20 connectors');
		expect(await cells.nth(2).textContent()).toContain('5 connectors');
		await context.close();
	});

	test('what is no list is refused with what to do, and a file is taken by dropping it', async () => {
		const { page, context, complaints } = await openShelf({ width: 360, height: 740 });
		await openList(page, 'goods.xlsx', Buffer.from([0x50, 0x4b, 0x03, 0x04, 0, 0, 0]));
		await page.getByRole('alert').getByText('Save as', { exact: false }).waitFor();
		await expectSound(page, 'a file that is refused');
		await press(page, 'Back to the shelf');
		// More than a page can hold is refused by its size, unread.
		const huge = join(folder(), 'huge.csv');
		writeFileSync(huge, '');
		truncateSync(huge, 51_000_000);
		await page.getByLabel('A list from a CSV file').setInputFiles(huge);
		await page.getByRole('alert').getByText('51 MB', { exact: false }).waitFor();
		await press(page, 'Back to the shelf');
		const transfer = await page.evaluateHandle(() => {
			const data = new DataTransfer();
			data.items.add(
				new File(['type,code,connectors,price\nconnectors,A,10,3\n'], 'dropped.csv', { type: 'text/csv' })
			);
			return data;
		});
		await page.getByRole('group', { name: 'A list from a file' }).dispatchEvent('drop', { dataTransfer: transfer });
		await page.getByRole('heading', { name: 'dropped.csv' }).waitFor();
		await said(page, '1 line can go on the shelf');
		await press(page, 'Put this 1 line on the shelf');
		await said(page, '1 line on the shelf.');
		await useLists(page);
		await expectSound(page, 'a shelf on a phone');
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('ten thousand rows leave the page alive, fifty are shown, and a search finds one', async () => {
		const { page, context, complaints } = await openShelf();
		const rows = Array.from(
			{ length: 10_000 },
			(_, i) => `fixture,C${i},Light ${i},${5 + (i % 90)}.50,path,LED,${3 + (i % 5)},${200 + (i % 300)}`
		);
		// The longest time in which the page answers nothing.
		await page.evaluate(() => {
			const scope = globalThis as unknown as { longest: number };
			scope.longest = 0;
			let last = performance.now();
			setInterval(() => {
				const now = performance.now();
				scope.longest = Math.max(scope.longest, now - last);
				last = now;
			}, 10);
		});
		const began = Date.now();
		await openList(page, 'large.csv', ['type,code,name,price,light,source,watts,lumens', ...rows].join('\n'));
		await said(page, '10,000 lines can go on the shelf');
		const took = Date.now() - began;
		const frozen = await page.evaluate(() => (globalThis as unknown as { longest: number }).longest);
		console.log(
			`10,000 rows: ${took} ms from the file to the preview, the page still for ${Math.round(frozen)} ms at most`
		);
		// Read on the page's own thread it would stand still for as long as reading takes.
		expect(frozen).toBeLessThan(Math.max(500, took * 0.6));
		await press(page, 'Put these 10,000 lines on the shelf');
		await said(page, '10,000 lines on the shelf.');
		await page.getByText('Fixtures', { exact: true }).click();
		const table = page.getByRole('table', { name: 'Fixtures on the shelf' });
		await table.waitFor();
		expect(await table.getByRole('rowheader').count()).toBe(50);
		await press(page, 'Show 50 more fixtures');
		await isFocused(page, 'Change Light 50, C50');
		expect(await table.getByRole('rowheader').count()).toBe(100);
		await page.getByLabel('Find on the shelf').fill('light C9876');
		await said(page, '1 line found.');
		expect(await table.getByRole('rowheader').allTextContents()).toEqual([expect.stringContaining('Light 9876')]);
		await page.reload();
		await page.getByText('10,000 lines').waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a change in another tab is seen', async () => {
		const { page, context } = await openShelf();
		const other = await openPage(browser(), { context });
		await goto(other.page, path);
		await useDemo(other.page);
		await said(page, 'The shelf was changed in another tab.');
		await page.getByRole('table', { name: 'Kits on the shelf' }).waitFor();
		await context.close();
	});
});

/** Opens every kind that is folded. */
async function useLists(page: Page): Promise<void> {
	for (const one of await page.locator('details:not([open]) > summary:has(h2)').all()) await one.click();
}
