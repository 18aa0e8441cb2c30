/** The counter of a shop: a customer in a few taps, why a kit is refused, the yard in the full planner, and nothing left for the next customer. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { picks, quickYard, usualAnswers } from '../../src/lib/domain/quick';
import { metresPerFoot } from '../../src/lib/domain/shared/units';
import { examples, writeYard } from '../../src/lib/domain/yard';
import { demoShelf } from '../../src/lib/shelf';
import { linkOf } from '../../src/lib/state/link';
import { expectFit } from './accessible-pages';
import { goto, openDemo, openPage, site, useBrowser } from './browser';

const { browser } = useBrowser();
const useDemo = (page: Page) => page.getByRole('button', { name: 'Use the demo shelf' });
const offer = (page: Page, question: RegExp, name: string) =>
	page.getByRole('group', { name: question }).getByText(name, { exact: true });
/** What fits is that of the picks as they stand. */
async function worked(page: Page): Promise<void> {
	await page.locator('.fits[aria-busy="false"]').waitFor();
}
/** The counter with the demo shelf. */
async function atCounter(options: { width?: number; dark?: boolean } = {}) {
	const opened = await openPage(browser(), { width: 768, height: 1024, ...options });
	await goto(opened.page, '/counter/');
	await useDemo(opened.page).click();
	await worked(opened.page);
	return opened;
}
/** A walk on which the demo's long walk kit has lights, watts and cable enough, and too few volts at its end. */
async function longWalk(page: Page): Promise<void> {
	await offer(page, /walk to the door/, '60 ft').click();
	await offer(page, /receptacle to the first/, '80 ft').click();
	await worked(page);
}
const kept = (page: Page, key: string) => page.evaluate((name) => localStorage.getItem(name), key);

test('a usual customer: at most twelve taps from opening the page to the slip', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 768, height: 1024 });
	await page.addInitScript(() => {
		addEventListener('pointerdown', () => {
			sessionStorage.setItem('taps', String(Number(sessionStorage.getItem('taps')) + 1));
		});
	});
	await goto(page, '/counter/');
	// A shop that has no shelf yet: one tap more than a usual day's.
	await useDemo(page).click();
	await offer(page, /walk to the door/, '60 ft').click();
	await offer(page, /walk run/, 'With a bend').click();
	await offer(page, /drive’s edge/, '40 ft').click();
	await offer(page, /^Medium/, '2').click();
	await offer(page, /^Large/, '1').click();
	await offer(page, /wall to wash/, '20 ft').click();
	await offer(page, /receptacle to the first/, '20 ft').click();
	await page.getByText(picks('feet').clear.find(({ value }) => value === 'neighbour')?.label ?? 'no label').click();
	await worked(page);
	const heading = await page.getByRole('heading', { name: /^This fits: / }).textContent();
	// The sum by the shelf's own prices, by other arithmetic than the page's.
	const rows = await page
		.getByRole('table', { name: 'What to buy' })
		.locator('tbody tr')
		.evaluateAll((all) =>
			all.map(
				(row) =>
					[
						parseInt(row.querySelector('.count')?.textContent ?? '', 10),
						row.querySelector('.code')?.textContent
					] as const
			)
		);
	const cents = rows.reduce(
		(sum, [count, code]) => sum + count * (demoShelf.lines.find((line) => line.code === code)?.cents ?? NaN),
		0
	);
	expect(heading?.replaceAll(',', '')).toBe(`This fits: $${(cents / 100).toFixed(2)}`);
	await page.getByRole('link', { name: 'Print the slip' }).click();
	await page.waitForURL(/\/counter\/slip\/$/);
	await page
		.getByText(rows[0]?.[1] ?? 'no code')
		.first()
		.waitFor();
	const taps = await page.evaluate(() => Number(sessionStorage.getItem('taps')));
	expect(taps).toBe(10);
	expect(taps).toBeLessThanOrEqual(12);
	// Nothing is lost by a reload.
	await goto(page, '/counter/');
	await worked(page);
	expect(await page.getByRole('heading', { name: /^This fits: / }).textContent()).toBe(heading);
	expect(complaints).toEqual([]);
	await context.close();
});

test('a kit that looks right is refused for its dim last lamp, with what helps', async () => {
	const { page, context, complaints } = await atCounter();
	await longWalk(page);
	await page.getByText(/^Every kit, in or out/).click();
	const kit = page.getByRole('listitem').filter({ hasText: 'Out: Long walk kit, 6 path lights' });
	const words = (await kit.innerText()).replaceAll(/\s+/g, ' ');
	const [, label, got, wants] =
		/(P\d+) would get (\d+\.\d+) V(?: at the worst)?; it wants (\d+\.\d+)/.exec(words) ?? [];
	// Lights are numbered from the street: the first is the furthest from the receptacle.
	expect(label).toBe('P1');
	expect(Number(got)).toBeLessThan(Number(wants));
	// What helps is a transformer with a higher tap, and the same lamp then has enough.
	const [, tap, cured] =
		/What helps: Take the \d+ VA transformer .* on its (\d+) V tap .* then gets (\d+\.\d+) V/.exec(words) ?? [];
	expect(Number(tap)).toBeGreaterThan(12);
	expect(Number(cured)).toBeGreaterThanOrEqual(Number(wants));
	expect(words).not.toMatch(/lacks/);
	await expectFit(page, 'every kit');
	expect(complaints).toEqual([]);
	await context.close();
});

test('another choice can be taken, and stays through a reload', async () => {
	const { page, context, complaints } = await atCounter();
	await longWalk(page);
	await page.getByRole('button', { name: 'Take this: Second' }).click();
	const other = await page.getByRole('heading', { name: /^This fits: / }).textContent();
	await page.getByText(/more than the cheapest/).waitFor();
	await page.reload();
	await worked(page);
	expect(await page.getByRole('heading', { name: /^This fits: / }).textContent()).toBe(other);
	await page.getByRole('button', { name: 'Take this: Cheapest' }).waitFor();
	expect(complaints).toEqual([]);
	await context.close();
});

describe('go deeper', () => {
	const yard = quickYard({
		...usualAnswers('feet'),
		walk: 60 * metresPerFoot,
		receptacle: 80 * metresPerFoot
	}).yard;

	test('opens the same yard in the full planner', async () => {
		const { page, context, complaints } = await atCounter();
		await longWalk(page);
		await page.getByRole('button', { name: 'Go deeper' }).click();
		await page.waitForURL(/\/plan\/$/);
		await expect.poll(() => kept(page, 'duskwright/yard')).toBe(writeYard(yard));
		// Coming back and going again is no question: it is the yard in hand.
		await goto(page, '/counter/');
		await worked(page);
		await page.getByRole('button', { name: 'Go deeper' }).click();
		await page.waitForURL(/\/plan\/$/);
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('asks first where another yard is in hand; Undo brings it back', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 768, height: 1024 });
		await openDemo(page, 'Quince Row');
		await expect.poll(() => kept(page, 'duskwright/yard')).toContain('Quince Row');
		await goto(page, '/counter/');
		await useDemo(page).click();
		await longWalk(page);
		await page.getByRole('button', { name: 'Go deeper' }).click();
		await page.getByText(/^Quince Row is in hand/).waitFor();
		await page.getByRole('button', { name: 'Leave it' }).click();
		expect(await kept(page, 'duskwright/yard')).toContain('Quince Row');
		await page.getByRole('button', { name: 'Go deeper' }).click();
		await page.getByRole('button', { name: 'Take this yard' }).click();
		await page.waitForURL(/\/plan\/$/);
		await expect.poll(() => kept(page, 'duskwright/yard')).toBe(writeYard(yard));
		await page.getByRole('button', { name: 'Undo' }).first().click();
		await expect.poll(() => kept(page, 'duskwright/yard')).toContain('Quince Row');
		expect(complaints).toEqual([]);
		await context.close();
	});
});

/** All that this site keeps in the browser but the shelf, and all that the page shows and is called, as one text. */
const everything = (page: Page): Promise<string> =>
	page.evaluate(async () => {
		const found: string[] = [document.documentElement.outerHTML, location.href, JSON.stringify(history.state)];
		for (const store of [localStorage, sessionStorage])
			for (const key of Object.keys(store)) found.push(`${key}: ${store.getItem(key)}`);
		for (const field of document.querySelectorAll('input, textarea, select'))
			found.push((field as HTMLInputElement).value);
		const done = <T>(request: IDBRequest<T>): Promise<T> =>
			new Promise((resolve, reject) => {
				request.addEventListener('success', () => resolve(request.result));
				request.addEventListener('error', () => reject(request.error));
			});
		for (const { name } of await indexedDB.databases()) {
			if (!name || name === 'duskwright-shelf') continue;
			const db = await done(indexedDB.open(name));
			for (const store of db.objectStoreNames) {
				const records = await done(db.transaction(store).objectStore(store).getAll());
				found.push(`${name}/${store}: ${JSON.stringify(records)}`);
			}
			db.close();
		}
		for (const name of await caches.keys()) {
			const cache = await caches.open(name);
			for (const request of await cache.keys()) {
				const response = await cache.match(request);
				found.push(request.url, (await response?.text()) ?? '');
			}
		}
		return found.join('\n');
	});
/** Puts a picture into its store as the page of the drawing does. */
const keepPicture = (page: Page, id: string): Promise<void> =>
	page.evaluate(
		(key) =>
			new Promise<void>((resolve, reject) => {
				const open = indexedDB.open('duskwright-pictures', 1);
				open.addEventListener('upgradeneeded', () => open.result.createObjectStore('pictures', { keyPath: 'id' }));
				open.addEventListener('error', () => reject(open.error));
				open.addEventListener('success', () => {
					const change = open.result.transaction('pictures', 'readwrite');
					change.objectStore('pictures').put({ id: key, type: 'image/png', bytes: new Uint8Array([1]), usedAt: 1 });
					change.addEventListener('complete', () => {
						open.result.close();
						resolve();
					});
				});
			}),
		id
	);

describe('the next customer', () => {
	const secret = (what: string) => `Larkmoth-${what}`;
	const named = (what: string) => writeYard({ ...examples[0]!.yard, name: secret(what) });
	const file = (what: string) => ({
		name: `${secret('file')}.json`,
		mimeType: 'application/json',
		buffer: Buffer.from(named(what))
	});

	test('finds nothing of the last one anywhere, and the shelf', async () => {
		const { page, context, complaints } = await atCounter();
		await longWalk(page);
		await page.getByRole('button', { name: 'Take this: Second' }).click();
		// Yards one after the other, so that undo has both; half-typed text; a picture; a link left without a choice.
		await goto(page, '/');
		for (const what of ['first', 'second']) {
			await goto(page, '/');
			await page.locator('input[type="file"]').first().setInputFiles(file(what));
			await page.waitForURL((url) => url.pathname !== '/');
			await expect.poll(() => kept(page, 'duskwright/yard')).toContain(secret(what));
		}
		// Steps of undo are written beside the yard, a little later.
		await expect.poll(() => everything(page), { timeout: 20_000 }).toMatch(/duskwright-undo.*Larkmoth-first/);
		await page.evaluate(
			(text) => localStorage.setItem('duskwright/drafts', JSON.stringify({ 'house.eaves|': text })),
			secret('draft')
		);
		await keepPicture(page, secret('picture'));
		const link = linkOf({ ...examples[0]!.yard, name: secret('link') }, `${site()}/open/`);
		await page.goto(link);
		await page.getByRole('heading', { name: /^Larkmoth-link, from a link/ }).waitFor();
		await page.locator('footer').getByRole('link', { name: 'At the counter' }).click();
		await page.waitForURL(/\/counter\/$/);
		await worked(page);
		await expect.poll(() => everything(page), { timeout: 20_000 }).toMatch(/duskwright-undo.*Larkmoth-first/);
		const before = await everything(page);
		for (const what of ['second', 'draft', 'picture']) expect(before, what).toContain(secret(what));
		expect(await kept(page, 'duskwright/counter')).not.toBeNull();

		await page.getByRole('button', { name: 'Next customer' }).click();
		await page.getByText(/a yard was opened in this tab and is still in the browser’s history/).waitFor();
		await expectFit(page, 'the question before clearing');
		const loaded = page.waitForEvent('load');
		await page.getByRole('button', { name: 'Clear', exact: true }).click();
		await loaded;
		await worked(page);
		expect(new URL(page.url()).pathname + new URL(page.url()).hash).toBe('/counter/');
		const after = await everything(page);
		expect(after.match(/.{0,60}Larkmoth.{0,60}/)).toBeNull();
		expect(after).not.toContain(link.slice(link.indexOf('#')));
		expect(await kept(page, 'duskwright/counter')).toBeNull();
		expect(await kept(page, 'duskwright/yard')).toBeNull();
		// The shelf is there, and the survey as it starts.
		await page.getByText(demoShelf.name).waitFor();
		expect(
			await offer(page, /walk to the door/, '30 ft')
				.locator('..')
				.getByRole('radio')
				.isChecked()
		).toBe(true);
		// Neither does the way back bring the yard again.
		for (let back = 0; back < 4; back += 1) {
			await page.goBack();
			await page.locator('footer').waitFor();
			await expect.poll(() => page.url()).not.toContain('#');
			expect(await page.locator('body').innerText()).not.toContain('Larkmoth');
			expect(await kept(page, 'duskwright/yard').then((text) => text ?? '')).not.toContain('Larkmoth');
		}
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('can be called off; another tab follows when it is not', async () => {
		const { page, context, complaints } = await atCounter();
		await longWalk(page);
		await page.getByRole('button', { name: 'Next customer' }).click();
		await page.getByRole('button', { name: 'Keep', exact: true }).click();
		expect(await kept(page, 'duskwright/counter')).not.toBeNull();
		const other = await openPage(browser(), { context });
		await openDemo(other.page, 'Hazelmoor');
		await expect.poll(() => kept(page, 'duskwright/yard')).toContain('Hazelmoor');
		await other.page.locator('footer').waitFor();
		await page.getByRole('button', { name: 'Next customer' }).click();
		await page.getByRole('button', { name: 'Clear', exact: true }).click();
		await other.page.waitForURL(/\/counter\/$/);
		await expect.poll(() => kept(page, 'duskwright/yard')).toBeNull();
		expect(await everything(other.page)).not.toMatch(/"name":\s*"Hazelmoor"/);
		expect([...complaints, ...other.complaints]).toEqual([]);
		await context.close();
	});
});

describe('left alone', () => {
	test('clears by itself after the time chosen, 20 seconds after it says so; Not yet puts it off', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 768, height: 1024 });
		await page.clock.install();
		await goto(page, '/counter/');
		await useDemo(page).click();
		await longWalk(page);
		await page.getByLabel('Clear by itself for the next customer').selectOption('2');
		await page.clock.runFor(99_000);
		const warning = page.getByText(/In 20 seconds it clears/);
		expect(await warning.count()).toBe(0);
		await page.clock.runFor(3000);
		await warning.waitFor();
		expect(await page.getByRole('alert').filter({ has: warning }).count()).toBe(1);
		await expectFit(page, 'the warning');
		await page.getByRole('button', { name: 'Not yet' }).click();
		await warning.waitFor({ state: 'detached' });
		await page.clock.runFor(60_000);
		expect(await kept(page, 'duskwright/counter')).not.toBeNull();
		const loaded = page.waitForEvent('load');
		await page.clock.runFor(62_000);
		await loaded;
		await worked(page);
		expect(await kept(page, 'duskwright/counter')).toBeNull();
		// What the shop chose stays.
		expect(await page.getByLabel('Clear by itself for the next customer').inputValue()).toBe('2');
		expect(complaints).toEqual([]);
		await context.close();
	});
	test('never does so unless it was chosen', async () => {
		const { page, context, complaints } = await openPage(browser(), { width: 768, height: 1024 });
		await page.clock.install();
		await goto(page, '/counter/');
		await useDemo(page).click();
		await longWalk(page);
		await page.clock.runFor(3_600_000);
		expect(await kept(page, 'duskwright/counter')).not.toBeNull();
		expect(complaints).toEqual([]);
		await context.close();
	});
});

describe('at any width, by day and by night', () => {
	test.each([
		[360, false],
		[768, true],
		[1280, false]
	])('%i px, dark: %s', async (width, dark) => {
		const { page, context, complaints } = await openPage(browser(), { width, height: 900, dark });
		await goto(page, '/counter/');
		await useDemo(page).waitFor();
		await expectFit(page, 'no shelf');
		await useDemo(page).click();
		await longWalk(page);
		await offer(page, /Measures/, 'Metres').click();
		await page.getByText('What they have already').click();
		await offer(page, /^Transformer/, '150 VA').click();
		await offer(page, /halogen lights/, '6').click();
		await offer(page, /^Cable, what size/, '2.5 mm²').click();
		await worked(page);
		await page.getByText(/^150 VA transformer/).waitFor();
		await page.getByText(/^What was assumed/).click();
		await expectFit(page, 'what fits');
		// Everything off: nothing to light.
		await offer(page, /walk to the door/, 'None').click();
		await page.getByText('Nothing to light yet').waitFor();
		await expectFit(page, 'nothing to light');
		expect(complaints).toEqual([]);
		await context.close();
	});
});

test('works with no signal', async () => {
	const { page, context, complaints } = await atCounter();
	await page.evaluate(async () => {
		await navigator.serviceWorker.ready;
	});
	await page.reload();
	await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
	await context.setOffline(true);
	await page.reload();
	await longWalk(page);
	await page.getByRole('heading', { name: /^This fits: / }).waitFor();
	expect(complaints).toEqual([]);
	await context.close();
});
