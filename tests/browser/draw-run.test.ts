import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

interface Link {
	from: string;
	to: string;
	via?: { along: number; out: number }[];
}
interface Kept {
	runs?: { id: string; lamps?: string[]; links?: Link[] }[];
}
/** What the browser keeps of the circuit set by hand; null: nothing. */
const kept = (page: Page): Promise<Kept | null> =>
	page.evaluate(() => {
		for (const key of Object.keys(localStorage)) {
			const value: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
			if (typeof value === 'object' && value !== null && 'format' in value && value.format === 'duskwright/yard')
				return (value as unknown as { power: { circuit?: Kept } }).power.circuit ?? null;
		}
		throw new Error('No yard is kept');
	});
const links = async (page: Page): Promise<Link[]> => (await kept(page))?.runs?.[0]?.links ?? [];

async function openDraw(page: Page): Promise<void> {
	await openDemo(page, 'Alder Bend');
	await goto(page, '/circuit/');
	await page.getByRole('link', { name: 'Lay the cable yourself' }).click();
	await page.getByRole('heading', { level: 1, name: 'Lay the cable yourself' }).waitFor();
	await sheet(page).locator('svg').waitFor();
}
const sheet = (page: Page) => page.getByRole('toolbar', { name: 'Lights and cables on the drawing' });
const onSheet = (page: Page, name: string) => sheet(page).getByRole('button', { name, exact: true });
/** A tap where the light is drawn: the drawing takes the nearest. */
async function tap(page: Page, name: string): Promise<void> {
	const at = (await onSheet(page, name).boundingBox())!;
	await page.mouse.click(at.x + at.width / 2, at.y + at.height / 2);
}
const way = (page: Page) => page.locator('.way').innerText();
/** By its name at its head: the selects of other lights name it too. */
const row = (page: Page, label: string) =>
	page.locator('li[id^="lay-"]').filter({ has: page.locator('strong').getByText(label, { exact: true }) });
const volts = async (page: Page, label: string): Promise<number> =>
	Number.parseFloat(await row(page, label).locator('dl > div:nth-child(2) dd').innerText());
const metres = async (page: Page, label: string): Promise<string> =>
	row(page, label).locator('dl > div:nth-child(1) dd').innerText();

describe('cable laid by hand', () => {
	test.each([360, 1280])('a chain by taps, a bend by figures, undone, reloaded at %i px', async (width) => {
		const { page, context, complaints } = await openPage(browser(), { width });
		await openDraw(page);
		const before = await way(page);
		const [wasVolts, wasMetres] = [await volts(page, 'P4'), await metres(page, 'P4')];
		await expectAccessible(page, `nothing drawn at ${width} px`);
		await sheet(page).scrollIntoViewIfNeeded();

		await tap(page, 'Transformer');
		await page.getByText('From the transformer: tap the light that the cable goes to next.').waitFor();
		await tap(page, 'P4');
		await page.getByText('From P4: tap the light that the cable goes to next.').waitFor();
		await tap(page, 'P3');
		await expect.poll(() => way(page)).toMatch(/Transformer → P4 .*P4 → P3/);
		// The plan can be told from the drawing: its length and its volts are those of the new way.
		expect(await metres(page, 'P4')).not.toBe(wasMetres);
		expect(await volts(page, 'P4')).not.toBe(wasVolts);
		await page.getByText(/instead of \d+\.\d\d V|either way/).waitFor();
		// Cable does not lead back.
		await tap(page, 'Transformer');
		await page.getByText('Cable starts at the transformer.').waitFor();
		await page.getByRole('button', { name: 'Stop drawing' }).click();

		const drawnVolts = await volts(page, 'P4');
		await page.getByRole('button', { name: 'Bend cable to P4' }).click();
		const bends = page.getByRole('group', { name: 'Bends of the cable from the transformer to P4' });
		await bends.getByRole('button', { name: 'Add the bend' }).click();
		await bends.getByText('Give a length').first().waitFor();
		await bends.getByLabel('Along the front').fill('48 ft');
		await bends.getByLabel('Out from it').fill('8 ft');
		await bends.getByRole('button', { name: 'Add the bend' }).click();
		await row(page, 'P4').getByText('bent by you').waitFor();
		// Longer cable, fewer volts at its end.
		await expect.poll(() => volts(page, 'P4')).toBeLessThan(drawnVolts);
		await expectAccessible(page, `a cable bent at ${width} px`);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		const bentVolts = await volts(page, 'P4');
		await expect
			.poll(async () => (await links(page)).some(({ via }) => via?.some(({ out }) => Math.abs(out - 2.4384) < 1e-3)))
			.toBe(true);

		await page.reload();
		await row(page, 'P4').getByText('bent by you').waitFor();
		expect(await volts(page, 'P4')).toBe(bentVolts);

		await page.getByRole('button', { name: 'Bend cable to P4' }).click();
		await page.getByRole('button', { name: 'Let the plan find the way' }).click();
		await expect.poll(() => volts(page, 'P4')).toBe(drawnVolts);
		await page.getByRole('button', { name: 'Give run 1 back to the plan' }).click();
		await expect.poll(() => way(page)).toBe(before);
		expect(await volts(page, 'P4')).toBe(wasVolts);
		await expect.poll(() => kept(page)).toBeNull();
		// One undo takes that back.
		await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
		await expect.poll(() => way(page)).toMatch(/Transformer → P4 .*P4 → P3/);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a bend dragged, and a bend moved by two taps', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280, height: 900 });
		await openDraw(page);
		await tap(page, 'Cable from C2 to C1');
		await page.getByText('The cable from C2 to C1 is in hand').waitFor();
		await sheet(page).scrollIntoViewIfNeeded();
		const box = (await sheet(page).boundingBox())!;
		const at = (await sheet(page).getByRole('button', { name: 'Bend 1' }).first().boundingBox())!;
		const start = { x: at.x + at.width / 2, y: at.y + at.height / 2 };
		const length = await metres(page, 'C1');
		await page.mouse.move(start.x, start.y);
		await page.mouse.down();
		for (let step = 1; step <= 12; step += 1) await page.mouse.move(start.x - 3 * step, start.y - step);
		// The figures follow while the hand is down, and nothing is kept yet.
		await expect.poll(() => metres(page, 'C1')).not.toBe(length);
		expect(await kept(page)).toBeNull();
		await page.mouse.up();
		await row(page, 'C1').getByText('bent by you').waitFor();
		await expect.poll(async () => (await links(page)).filter(({ via }) => via).length).toBe(1);
		const dragged = (await links(page)).find(({ via }) => via)!.via!;
		await page.mouse.click(box.x + box.width * 0.55, box.y + box.height * 0.45);
		await expect.poll(async () => (await links(page)).find(({ via }) => via)?.via).not.toEqual(dragged);
		const moved = (await links(page)).find(({ via }) => via)!.via!;
		expect(moved).toHaveLength(dragged.length);
		expect(moved.slice(1)).toEqual(dragged.slice(1));
		// Each was one change.
		await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
		await expect.poll(async () => (await links(page)).find(({ via }) => via)?.via).toEqual(dragged);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('by the keyboard alone: on the drawing, and in the list', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 1280, dark: true });
		await openDraw(page);
		const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
		for (let tabs = 0; tabs < 60 && (await focused()) !== 'Transformer'; tabs += 1) await page.keyboard.press('Tab');
		expect(await focused()).toBe('Transformer');
		await page.keyboard.press('Enter');
		await page.getByText('From the transformer: tap').waitFor();
		// Down and left of the transformer; whichever light the arrow reaches first is fed from it.
		const light = /^[A-Z]\d+$/;
		for (let steps = 0; steps < 12 && !light.test(await focused()); steps += 1)
			await page.keyboard.press(steps % 2 === 0 ? 'ArrowDown' : 'ArrowLeft');
		const reached = await focused();
		expect(reached).toMatch(light);
		await page.keyboard.press('Enter');
		await page.getByText(`From ${reached}: tap`).waitFor();
		await expect.poll(() => kept(page)).not.toBeNull();
		await page.keyboard.press('Escape');
		await page.getByText('Tap a light or the transformer').waitFor();
		expect(await focused()).toBe(reached);

		// The list does the same: a light fed from another, one led to the other run.
		const from = page.getByLabel('W1 is fed from');
		await from.focus();
		await from.selectOption('Transformer');
		await expect.poll(() => way(page)).toMatch(/Transformer → W1/);
		await page.getByLabel('W1 is on').selectOption('Run 2');
		await row(page, 'W1').waitFor({ state: 'detached' });
		await page.getByRole('radio', { name: /Run 2/ }).check();
		await row(page, 'W1').waitFor();

		// A bend by arrow keys: taken in hand with Enter, moved, let go with Escape.
		await page.getByRole('button', { name: 'Bend cable to W1' }).focus();
		await page.keyboard.press('Enter');
		await page.getByText('to W1 is in hand').waitFor();
		const leg = sheet(page).getByRole('button', { name: /straight 1$/ });
		await leg.focus();
		await page.keyboard.press('Enter');
		await row(page, 'W1').getByText('bent by you').waitFor();
		await onSheet(page, 'Bend 1').focus();
		await page.keyboard.press('Enter');
		await page.getByText('Bend 1 is in hand').waitFor();
		const bend = async () =>
			(await kept(page))?.runs?.flatMap((run) => run.links ?? []).find(({ via }) => via)?.via?.[0];
		await expect.poll(bend).toBeDefined();
		const start = (await bend())!;
		await page.keyboard.press('ArrowDown');
		await expect.poll(async () => (await bend())?.out).toBeCloseTo(start.out + 0.1524, 3);
		expect(await focused()).toBe('Bend 1');
		await expectAccessible(page, 'a bend in hand, dark');
		await page.keyboard.press('Escape');
		await page.keyboard.press('Escape');
		await page.getByText('Tap a light or the transformer').waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});
