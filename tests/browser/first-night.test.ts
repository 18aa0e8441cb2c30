/** Volts measured on the first night: typed in, compared, a planted fault named, kept and taken back. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { solve } from '../../src/lib/domain/circuit';
import { inspectedOf, keyOf } from '../../src/lib/domain/checklist/measured/inspect';
import { makePlan } from '../../src/lib/domain/plan';
import { examples } from '../../src/lib/domain/yard';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();
const run = (page: Page) => page.getByRole('region', { name: 'Run 1' });
/** Names and planned volts by row, as the page shows them. */
const rows = (page: Page) =>
	run(page)
		.locator('tbody tr')
		.evaluateAll((all) =>
			all.map((row) => ({
				name: row.querySelector('th')?.textContent?.trim() ?? '',
				volts: row.querySelector('td')?.textContent?.trim() ?? ''
			}))
		);
const field = (page: Page, name: string) =>
	run(page).getByLabel(`Volts measured at ${name === 'The terminals' ? 'the terminals of run 1' : name}`, {
		exact: true
	});

describe.each([
	{ width: 360, dark: true },
	{ width: 1280, dark: false }
])('the first night at $width px', ({ width, dark }) => {
	test('takes readings, names a planted fault, keeps them and gives them back', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openDemo(page, 'Alder Bend');
		await goto(page, '/checklist/');
		await page.getByRole('link', { name: /Type in the volts/ }).click();
		await run(page).getByText('Nothing measured yet.').waitFor();
		const planned = await rows(page);
		for (const { name, volts } of planned) {
			await field(page, name).fill(volts.replace('.', ','));
			await field(page, name).press('Tab');
		}
		await run(page).getByText('As planned: every lamp gets what it should.').waitFor();
		// The last lamp two volts down, all others as planned: only its own joints can do that.
		const last = planned.at(-1)!;
		await field(page, last.name).fill(String(Math.round(10 * (Number(last.volts) - 2)) / 10));
		await field(page, last.name).press('Tab');
		await run(page).getByText(`A bad joint between the cable and ${last.name}’s own lead`).waitFor();
		await expectAccessible(page, '/checklist/first-night/');

		await field(page, last.name).fill('12 sheep');
		await field(page, last.name).press('Tab');
		await run(page).getByRole('alert').filter({ hasText: 'Type a number' }).waitFor();
		await run(page).getByText(`A bad joint between the cable and ${last.name}’s own lead`).waitFor();
		await page.getByRole('button', { name: 'Undo' }).first().click();
		await run(page).getByText('As planned: every lamp gets what it should.').waitFor();
		await page.reload();
		await run(page).getByText('As planned: every lamp gets what it should.').waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});
});

/** What a meter reads on run 1 of Alder Bend, to a tenth of a volt, with 0.6 Ω more on the way to its third light; and the names of both ends. */
function planted(): { byLabel: Map<string, number>; from: string; to: string } {
	const plan = makePlan(examples.find(({ title }) => title === 'Alder Bend')!.yard);
	const run = plan.runs[0]!;
	const { network } = inspectedOf(run, plan.supply!, plan.fixtures, {})!;
	const bad = network.segments.find(({ to }) => to === 3)!;
	const segments = network.segments.map((one) => (one === bad ? { ...one, ohms: one.ohms + 0.6 } : one));
	const solution = solve({ ...network, segments });
	if (!solution.ok) throw new Error('no solution');
	const labelOf = (node: number) =>
		node === 0 ? 'the transformer' : plan.fixtures.find(({ id }) => id === keyOf(run, node))!.label;
	const byLabel = new Map(
		run.nodes.map((_, node) => [
			node === 0 ? 'The terminals of run 1' : labelOf(node),
			Math.round(solution.volts[node]! * 10) / 10
		])
	);
	return { byLabel, from: labelOf(bad.from), to: labelOf(bad.to) };
}

test('lamp by lamp on a phone: a bad splice is typed in along the walk, and named', async () => {
	const { byLabel, from, to } = planted();
	const context = await browser().newContext({
		viewport: { width: 360, height: 740 },
		hasTouch: true,
		isMobile: true,
		reducedMotion: 'reduce'
	});
	const { page, complaints } = await openPage(browser(), { context });
	await openDemo(page, 'Alder Bend');
	await goto(page, '/checklist/first-night/');
	const walk = page.getByRole('region', { name: 'Lamp by lamp' });
	const typed = walk.getByRole('textbox');
	const place = walk.locator('.place strong');
	await typed.waitFor();
	expect(await typed.getAttribute('inputmode')).toBe('decimal');
	for (let k = 0; k < byLabel.size; k++) {
		const label = (await place.textContent())!.trim();
		await typed.fill(byLabel.get(label)!.toFixed(1));
		// At once, before it is kept.
		await walk
			.getByRole('status')
			.getByText(/^(In its band|Too low|Too high)$/)
			.waitFor();
		if (k % 2 === 0) await typed.press('Enter');
		else await walk.getByRole('button', { name: 'Next lamp' }).tap();
		await walk.getByText(`${k + 1} measured`, { exact: false }).waitFor();
		// The keyboard of a phone stays: the field keeps the focus.
		await typed.and(page.locator(':focus')).waitFor();
	}
	await run(page).getByText(`A bad joint between ${from} and ${to}`, { exact: false }).waitFor();
	await page.getByRole('heading', { name: `First night: ${byLabel.size} of 25 places measured` }).waitFor();
	await page
		.getByRole('region', { name: 'The night in short' })
		.getByText(/Run 1: a fault to look for\. Run 2: not measured\./)
		.waitFor();

	// What cannot be read stays put, is said, and is there after a reload.
	await typed.fill('about 12');
	await walk.getByRole('button', { name: 'Next lamp' }).tap();
	await walk.getByRole('alert').getByText('Type a number, in digits.').waitFor();
	await expectAccessible(page, '/checklist/first-night/ on the walk');
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
	await page.reload();
	await walk.getByText('Type a number, in digits.').waitFor();
	expect(await typed.inputValue()).toBe('about 12');
	await page.getByRole('heading', { name: `First night: ${byLabel.size} of 25 places measured` }).waitFor();

	const aims = page.getByRole('region', { name: /^Aim: 0 of/ });
	await aims.getByRole('checkbox').first().tap();
	await page.getByRole('heading', { name: /^Aim: 1 of/ }).waitFor();
	for (const one of await page.getByRole('checkbox').or(typed).or(walk.getByRole('button')).all()) {
		const size = (await one.boundingBox())!;
		expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(44);
	}
	expect(complaints).toEqual([]);
	await context.close();
});
