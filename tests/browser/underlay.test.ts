import { Buffer } from 'node:buffer';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';
import { png, withExif } from './underlay-pictures';

const { browser, folder } = useBrowser();

interface Told {
	picture: string;
	width: number;
	height: number;
	turn?: number;
	hidden?: boolean;
	opacity: number;
}
/** The picture of the yard as the browser keeps it; null: none. */
const kept = (page: Page): Promise<Told | null> =>
	page.evaluate(() => {
		const yard: unknown = JSON.parse(localStorage.getItem('duskwright/yard') ?? '{}');
		return typeof yard === 'object' && yard !== null && 'underlay' in yard ? (yard.underlay as Told) : null;
	});
const file = (name: string, mimeType: string, buffer: Buffer) => ({ name, mimeType, buffer });
/** A large file goes in by its path: as bytes it would take the long way to the browser. */
function large(name: string, bytes: Buffer): string {
	const path = join(folder(), name);
	writeFileSync(path, bytes);
	return path;
}
const openFold = async (page: Page): Promise<void> => {
	await page.getByText('A picture under the drawing', { exact: true }).click();
	await page.getByText('lies under the drawing, to trace from').waitFor();
};
const choose = (page: Page, picture: ReturnType<typeof file> | string) =>
	page.getByLabel('A picture to open').setInputFiles(picture);
/** Fills in one form of the panel and takes it. */
async function tell(page: Page, form: string, values: Record<string, string>, action: string): Promise<void> {
	const place = page.getByRole('form', { name: form });
	for (const [label, text] of Object.entries(values)) await place.getByLabel(label, { exact: true }).fill(text);
	await place.getByRole('button', { name: action }).click();
}
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ }).first().click();

/**
 * The picture: paper, with a magenta square about pixel (700, 500) of 1200 × 800. Marks (200, 300) and (1000, 300) are 16 ft apart, so a pixel is
 * 0.02 ft; A lies 3 ft out from the left corner of the front: the square is 10 ft along and 7 ft out.
 */
const square = { x: 700, y: 500, half: 30 };
const paper = png(1200, 800, (x, y) =>
	Math.abs(x + 0.5 - square.x) < square.half && Math.abs(y + 0.5 - square.y) < square.half
		? [255, 0, 255]
		: [236, 238, 232]
);
const feet = 0.3048;

/** Where a place in the yard (metres) stands on the screen, by the frame that the drawing says it shows. */
const expectedOn = (page: Page, x: number, y: number): Promise<{ x: number; y: number }> =>
	page.evaluate(
		([x, y]) => {
			const svg = document.querySelector<SVGSVGElement>('.dw-drawing svg')!;
			const [minX = 0, minY = 0, width = 1, height = 1] = svg.getAttribute('viewBox')!.split(' ').map(Number);
			const box = svg.getBoundingClientRect();
			const scale = Math.min(box.width / width, box.height / height);
			return {
				x: box.left + box.width / 2 + (x - minX - width / 2) * scale,
				y: box.top + box.height / 2 + (y - minY - height / 2) * scale
			};
		},
		[x, y] as const
	);
/** Middle of what is magenta on the screen, px: read from the pixels of a picture of the page. */
async function seenAt(page: Page): Promise<{ x: number; y: number; pixels: number }> {
	const shot = (await page.screenshot()).toString('base64');
	return page.evaluate(async (data) => {
		const image = new Image();
		image.src = `data:image/png;base64,${data}`;
		await image.decode();
		const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height });
		const context = canvas.getContext('2d')!;
		context.drawImage(image, 0, 0);
		const sheet = document.querySelector('.dw-drawing svg')!.getBoundingClientRect();
		const pixels = context.getImageData(0, 0, image.width, image.height).data;
		const sum = { x: 0, y: 0, pixels: 0 };
		for (let y = Math.max(0, Math.ceil(sheet.top)); y < Math.min(image.height, sheet.bottom); y += 1)
			for (let x = Math.ceil(sheet.left); x < sheet.right; x += 1) {
				const at = 4 * (y * image.width + x);
				const [r = 0, g = 0, b = 0] = pixels.subarray(at, at + 3);
				if (r - g > 60 && b - g > 60) {
					sum.x += x + 0.5;
					sum.y += y + 0.5;
					sum.pixels += 1;
				}
			}
		return { x: sum.x / sum.pixels, y: sum.y / sum.pixels, pixels: sum.pixels };
	}, shot);
}
async function expectAt(page: Page, along: number, out: number): Promise<number> {
	const [expected, seen] = [await expectedOn(page, along * feet, out * feet), await seenAt(page)];
	expect(Math.abs(seen.x - expected.x), `across, at ${along} ft along`).toBeLessThan(1);
	expect(Math.abs(seen.y - expected.y), `down, at ${out} ft out`).toBeLessThan(1);
	return seen.pixels;
}
async function calibrate(page: Page): Promise<void> {
	await page.getByText('By pixels').first().click();
	await tell(page, 'Mark A by pixels', { 'A, pixels across': '200', 'A, pixels down': '300' }, 'Set A');
	await tell(page, 'Mark B by pixels', { 'B, pixels across': '1000', 'B, pixels down': '300' }, 'Set B');
	await tell(page, 'How far apart they are', { 'From A to B': '16 ft' }, 'Set the distance');
	await tell(page, 'Where A lies', { 'Along the front': '0', 'Out from it': '3 ft' }, 'Put A there');
}
async function openBlank(page: Page): Promise<void> {
	await goto(page, '/plan/drawing/');
	await page.locator('.dw-drawing svg').first().waitFor();
	await openFold(page);
	await choose(page, file('from above.png', 'image/png', paper));
	await page.getByRole('button', { name: 'Mark A' }).waitFor();
}
async function saved(page: Page, name: string): Promise<string> {
	const [download] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: 'Save a copy' }).first().click()
	]);
	await download.saveAs(join(folder(), name));
	return readFileSync(join(folder(), name), 'utf8');
}

describe('a picture under the drawing', () => {
	test('to scale, in place, turned, saved, opened elsewhere, taken back', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280, height: 900 });
		await openBlank(page);
		await calibrate(page);
		await page.evaluate(() => document.querySelector('.dw-drawing')!.scrollIntoView({ block: 'start' }));
		const small = await expectAt(page, 10, 7);
		await page.getByRole('button', { name: 'Closer' }).click();
		const large = await expectAt(page, 10, 7);
		expect(large).toBeGreaterThan(1.5 * small);
		await page.getByRole('button', { name: 'Whole yard' }).click();

		// B straight out from A: a quarter turn clockwise about A, which takes (10, 4) from A to (−4, 10).
		await page.getByRole('form', { name: 'Where B lies' }).getByLabel('Along the front', { exact: true }).fill('0');
		await tell(page, 'Where B lies', { 'Out from it': '19 ft' }, 'Turn B there');
		await expect.poll(async () => (await kept(page))?.turn).toBe(90);
		await page.evaluate(() => document.querySelector('.dw-drawing')!.scrollIntoView({ block: 'start' }));
		await expectAt(page, -4, 13);

		// A third distance: 500 pixels are 10 ft here.
		await tell(page, 'What the tape says', { 'From C to D': '9 ft 9 in' }, 'Compare');
		await page.getByText('By pixels').nth(1).click();
		await tell(page, 'Mark C by pixels', { 'C, pixels across': '100', 'C, pixels down': '100' }, 'Set C');
		await tell(page, 'Mark D by pixels', { 'D, pixels across': '100', 'D, pixels down': '600' }, 'Set D');
		await page.getByText('Measured here 10 ft; the tape says 9 ft 9 in: the picture is 2.6 % long.').waitFor();

		const told = (await kept(page))!;
		const text = await saved(page, 'first.json');
		const inFile = JSON.parse(text) as { pictures: Record<string, string>; underlay: Told };
		expect(Object.keys(inFile.pictures)).toEqual([told.picture]);
		expect(inFile.underlay).toEqual(told);

		await page.reload();
		await page.locator('.underlay image').waitFor();

		const other = await openPage(browser(), { width: 1280 });
		await goto(other.page, '/');
		await other.page.getByLabel('A yard from a file').first().setInputFiles(join(folder(), 'first.json'));
		await other.page.waitForURL(/\/answers\//);
		await goto(other.page, '/plan/drawing/');
		await other.page.locator('.underlay image').waitFor();
		expect(await saved(other.page, 'second.json')).toBe(text);
		// In hand the yard holds the name alone.
		expect(await other.page.evaluate(() => localStorage.getItem('duskwright/yard')!.length)).toBeLessThan(5000);
		expect(other.complaints).toEqual([]);
		await other.context.close();

		await openFold(page);
		await page.getByRole('button', { name: 'Hide the picture' }).click();
		await page.locator('.underlay image').waitFor({ state: 'detached' });
		await page.getByRole('button', { name: 'Show the picture' }).click();
		await page.locator('.underlay image').waitFor();
		await page.getByRole('button', { name: 'Take the picture away' }).click();
		await expect.poll(() => kept(page)).toBeNull();
		await page.locator('.underlay image').waitFor({ state: 'detached' });
		await undo(page);
		await page.locator('.underlay image').waitFor();
		expect(await saved(page, 'third.json')).toBe(text);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test.each([360, 1280])('marked by pointer and by keys, placed on the drawing, at %i px', async (width) => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await openDemo(page, 'Alder Bend');
		await goto(page, '/plan/drawing/');
		await page.locator('.dw-drawing svg').first().waitFor();
		await openFold(page);
		await choose(page, file('from above.png', 'image/png', paper));
		await page.getByRole('button', { name: 'Mark A' }).click();
		const picture = page.getByRole('application', { name: /cross-hair of A/ });
		await picture.scrollIntoViewIfNeeded();
		const box = (await picture.boundingBox())!;
		await page.mouse.click(box.x + box.width / 4, box.y + box.height / 4);
		// A is set where the pointer was; B is in hand from the middle, and the arrow keys take it from there.
		const marks = () => page.evaluate(() => JSON.parse(localStorage.getItem('duskwright/yard')!).underlay);
		await expect.poll(async () => Math.abs(((await marks()).from?.x ?? 0) - 300)).toBeLessThan(1200 / box.width);
		await page.getByRole('application', { name: /cross-hair of B/ }).waitFor();
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('Shift+ArrowDown');
		await expectAccessible(page, `a mark in hand at ${width} px`);
		await page.keyboard.press('Enter');
		await expect.poll(async () => (await marks()).to).toEqual({ x: 610, y: 401 });
		await page
			.getByRole('form', { name: 'Where A lies' })
			.getByRole('button', { name: 'Point on the drawing' })
			.click();
		await page.getByText('Point to where A lies in the yard.').waitFor();
		const sheet = (await page.locator('.dw-drawing svg').first().boundingBox())!;
		await page.mouse.click(sheet.x + sheet.width / 2, sheet.y + sheet.height / 2);
		await expect.poll(async () => (await marks()).at !== undefined).toBe(true);
		await page.getByText('Point to where A lies in the yard.').waitFor({ state: 'detached' });
		// One slide of the range is one step.
		await page.getByLabel('How strongly it shows').fill('30');
		await expect.poll(async () => (await marks()).opacity).toBe(0.3);
		await undo(page);
		await expect.poll(async () => (await marks()).opacity).toBe(0.6);
		await expectAccessible(page, `the panel at ${width} px`);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a picture is turned as its camera says, and what the camera wrote is dropped', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280 });
		await goto(page, '/plan/drawing/');
		await openFold(page);
		// Magenta at the left; orientation 6 is shown a quarter turn clockwise, so the left becomes the top.
		const lying = Buffer.from(
			await page.evaluate(() => {
				const canvas = Object.assign(document.createElement('canvas'), { width: 400, height: 200 });
				const context = canvas.getContext('2d')!;
				context.fillStyle = '#fff';
				context.fillRect(0, 0, 400, 200);
				context.fillStyle = '#f0f';
				context.fillRect(0, 0, 200, 200);
				return canvas.toDataURL('image/jpeg').split(',')[1]!;
			}),
			'base64'
		);
		await choose(page, file('phone.jpg', 'image/jpeg', withExif(lying, 6)));
		await expect.poll(async () => (await kept(page))?.height).toBe(400);
		const told = (await kept(page))!;
		expect(told.width).toBe(200);
		const { pictures } = JSON.parse(await saved(page, 'turned.json')) as { pictures: Record<string, string> };
		const address = pictures[told.picture]!;
		const bytes = Buffer.from(address.split(',')[1]!, 'base64').toString('latin1');
		expect(bytes).not.toContain('Exif');
		expect(bytes).not.toContain('Invented Lane');
		const colours = await page.evaluate(async (src) => {
			const image = Object.assign(new Image(), { src });
			await image.decode();
			const canvas = Object.assign(document.createElement('canvas'), { width: 200, height: 400 });
			const context = canvas.getContext('2d')!;
			context.drawImage(image, 0, 0);
			const { data } = context.getImageData(100, 0, 1, 400);
			return [50, 350].map((y) => data[4 * y + 1]! < 100);
		}, address);
		expect(colours).toEqual([true, false]);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a photo larger than is kept is scaled down, and fits a file that opens', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280 });
		await goto(page, '/plan/drawing/');
		await openFold(page);
		// Noise is the hardest to make small.
		let seed = 1;
		const noise = () => (seed = (seed * 48271) % 2147483647) % 256;
		const big = png(2700, 1800, () => [noise(), noise(), noise()]);
		await choose(page, large('noise.png', big));
		await expect.poll(async () => (await kept(page))?.width ?? 0, { timeout: 60_000 }).toBeGreaterThan(0);
		const told = (await kept(page))!;
		expect(told.width).toBeLessThanOrEqual(2400);
		expect(told.width / told.height).toBeCloseTo(1.5, 2);
		const text = await saved(page, 'noise.json');
		expect(text.length).toBeLessThan(1_700_000);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('what cannot be opened is said, and a picture that is not here leaves the answers alone', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 360 });
		await goto(page, '/plan/drawing/');
		await openFold(page);
		const alert = page.getByRole('alert');
		await choose(page, large('junk.jpg', Buffer.alloc(30_000_000, 'x')));
		await alert.getByText('junk.jpg is not a picture that this browser can open.').waitFor();
		await choose(page, file('plat.pdf', 'application/pdf', Buffer.from('%PDF-1.7\n')));
		await alert.getByText(/plat\.pdf is a PDF.*Save the page as an image/).waitFor();
		await choose(page, file('torn.png', 'image/png', paper.subarray(0, 60)));
		await alert.getByText('torn.png begins like a PNG picture but is broken or cut short.').waitFor();
		await choose(page, file('none.png', 'image/png', Buffer.alloc(0)));
		await alert.getByText('none.png is empty.').waitFor();
		expect(await kept(page)).toBeNull();

		await choose(page, file('from above.png', 'image/png', paper));
		await calibrate(page);
		await expect.poll(async () => (await kept(page))?.picture ?? null).not.toBeNull();
		const { picture } = (await kept(page))!;
		await page.evaluate(
			() =>
				new Promise<void>((done, fail) => {
					const request = indexedDB.deleteDatabase('duskwright-pictures');
					request.addEventListener('success', () => done());
					request.addEventListener('error', () => fail(request.error));
				})
		);
		await page.reload();
		await page.locator('.dw-drawing svg').first().waitFor();
		await openFold(page);
		await page.getByText('The picture is not in this browser').waitFor();
		await page.getByLabel('From A to B', { exact: true }).waitFor();
		// The same picture again takes its old place, marks and all.
		await choose(page, file('from above.png', 'image/png', paper));
		await page.locator('.underlay image').waitFor();
		const again = (await kept(page))!;
		expect({ ...again }).toMatchObject({ picture, apart: 4.8768, from: { x: 200, y: 300 } });
		expect(complaints).toEqual([]);
		await context.close();
	});
});
