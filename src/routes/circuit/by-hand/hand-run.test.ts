import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { makePlan } from '$lib/domain/plan';
import { sources } from '$lib/domain/shared/sources';
import type { Working } from '$lib/domain/shared/working';
import { blankYard, examples } from '$lib/domain/yard';
import { evaluate } from '$lib/domain/shared/evaluate';
import { fixed, showWorking } from '$lib/domain/shared/show-working';
import { headingOf, planLowest, sheetsOf, type Sheet } from './hand-run';
import RunSheet from './RunSheet.svelte';

const isWorking = (value: object): value is Working => 'expression' in value && 'inputs' in value;
const workingsIn = (value: unknown): Working[] =>
	typeof value === 'object' && value !== null
		? [...(isWorking(value) ? [value] : []), ...Object.values(value).flatMap(workingsIn)]
		: [];

describe.each(examples.map(({ id, yard }) => [id, yard] as const))('%s', (_, yard) => {
	const plan = makePlan(yard);
	const units = plan.site.units;
	const sheets = sheetsOf(plan, units);

	test('every run and every lamp is there', () => {
		expect(sheets.length).toBeGreaterThan(0);
		const lamps = sheets.flatMap(({ result }) => result!.handbook.rows.filter(({ isLamp }) => isLamp));
		expect(lamps.length).toBe(plan.fixtures.length);
	});
	test('causes sum to the difference within 1e-9, and as they are shown', () => {
		for (const { hand, result } of sheets)
			for (const { volts, against } of [result!.handbook, result!.thumb]) {
				if (!against) throw new Error('the demo has no volts');
				const total = against.causes.reduce((sum, cause) => sum + cause.volts, 0);
				expect(against.planVolts).toBe(hand.nodes[result!.lowest.node]!.volts);
				expect(Math.abs(total - (volts - against.planVolts))).toBeLessThan(1e-9);
				const shown = against.causes.reduce((sum, { working }) => sum + working.value, 0);
				expect(fixed(shown, 3)).toBe(fixed(Number(volts.toFixed(3)) - Number(against.planVolts.toFixed(3)), 3));
			}
	});
	test("the plan's volts come out of the plan's own ohms and amps", () => {
		for (const { run, hand, result } of sheets)
			for (const { from, to } of result!.handbook.rows) {
				const k = hand.segments.findIndex(
					(one) => (one.from === from && one.to === to) || (one.from === to && one.to === from)
				);
				const { ohms, amps } = run.segments[k]!;
				expect(hand.nodes[from]!.volts! - ohms * Math.abs(amps!)).toBeCloseTo(hand.nodes[to]!.volts!, 8);
			}
	});
	test('the figures of the table, as shown, redo its sums within one in the last place', () => {
		for (const { hand, result } of sheets) {
			const left = new Map([[0, hand.tapVolts.toFixed(3)]]);
			for (const { from, to, amps, ohms, drop, volts } of result!.handbook.rows) {
				const [a, o, d] = [Number(amps.toFixed(3)), Number(ohms.toFixed(4)), Number(drop.toFixed(3))];
				expect(Math.abs(a * o - d)).toBeLessThan(0.0015);
				expect(Math.abs(Number(left.get(from)) - d - Number(volts.toFixed(3)))).toBeLessThan(0.0011);
				left.set(to, volts.toFixed(3));
			}
		}
	});
	test('every figure re-evaluates from what is displayed and names a source that exists', () => {
		const ids = new Set<string>(Object.values(sources).map(({ id }) => id));
		const wrong = workingsIn(sheets.map(({ result }) => result)).flatMap((working) => {
			const shown = showWorking(working, units);
			const again = fixed(evaluate(shown.line), working.decimals);
			const result = working.unit ? `${again} ${working.unit}` : again;
			return result === shown.result && shown.holds && ids.has(working.source)
				? []
				: [`${working.label}: ${shown.line} = ${again}, shown ${shown.result}, ${working.source}`];
		});
		expect([...new Set(wrong)]).toEqual([]);
	});
	test('the heading says what it comes to, and gives nothing away while the plan is covered', () => {
		expect(headingOf(sheets, false)).toMatch(/\d\.\d\d V/);
		expect(headingOf(sheets, true)).not.toMatch(/\d/);
		const words = headingOf(sheets, false)
			.match(/\d+\.\d\d/g)!
			.map(Number);
		const most = (of: 'handbook' | 'thumb') =>
			Math.max(...sheets.map(({ result }) => Math.abs(result![of].against!.difference)));
		expect(words[0]! - most('handbook')).toBeGreaterThanOrEqual(sheets.length > 1 ? 0 : -0.005);
		expect(words[0]! - most('handbook')).toBeLessThanOrEqual(0.01);
		expect(Math.abs(words[1]! - most('thumb'))).toBeLessThanOrEqual(0.01);
	});
	test('the lowest lamp by hand is one of the lowest in the plan', () => {
		for (const { hand, result } of sheets)
			expect(hand.nodes[result!.lowest.node]!.volts! - planLowest(hand)!.volts).toBeLessThan(0.1);
	});
});

test('a yard with nothing to feed', () => {
	expect(headingOf(sheetsOf(makePlan(blankYard()), 'feet'), false)).toBe('Nothing to work out by hand yet');
});
describe('without volts in the plan', () => {
	const plan = makePlan(examples[0]!.yard);
	const runs = plan.runs.map((run) => ({
		...run,
		nodes: run.nodes.map((node) => ({ ...node, volts: null })),
		segments: run.segments.map((segment) => ({ ...segment, amps: null }))
	}));
	const sheets = sheetsOf({ runs, fixtures: plan.fixtures }, 'feet');

	test('the heading says that there is nothing to compare with', () => {
		expect(headingOf(sheets, false)).toBe('The plan has no volts to compare with yet');
	});
	test('the handbook still shows its figures, and the sheet says why there is nothing beside them', () => {
		for (const sheet of sheets) {
			const text = textOf(sheet, {});
			expect(text).toContain('The plan has no volts for this run');
			expect(text).not.toContain('Difference');
			for (const { volts } of sheet.result!.handbook.rows) expect(text).toContain(volts.toFixed(3));
			expect(planLowest(sheet.hand)).toBeNull();
		}
	});
});

/** A sheet as text. */
function textOf(sheet: Sheet, { covered = false, blank = false }): string {
	const { body } = render(RunSheet, { props: { sheet, units: 'feet', covered, blank } });
	return body.replace(/<!--.*?-->|<[^>]*>/gs, ' ').replace(/\s+/g, ' ');
}
describe('a worksheet', () => {
	const sheets = sheetsOf(makePlan(examples[1]!.yard), 'feet');
	test("hides the plan's figures, and only those", () => {
		for (const sheet of sheets) {
			const { handbook, thumb } = sheet.result!;
			const text = textOf(sheet, { covered: true });
			const shown = new Set(text.match(/[\d.]+/g));
			const own = new Set(handbook.rows.flatMap(({ drop, volts }) => [volts.toFixed(3), drop.toFixed(3)]));
			for (const figure of own) expect(shown).toContain(figure);
			for (const { planVolts } of handbook.rows)
				if (!own.has(planVolts!.toFixed(3))) expect(shown).not.toContain(planVolts!.toFixed(3));
			for (const { why } of [...handbook.against!.causes, ...thumb.against!.causes]) expect(text).not.toContain(why);
		}
	});
	test('leaves the sums blank, with all that they need', () => {
		for (const sheet of sheets) {
			const { rows, ohms } = sheet.result!.handbook;
			const shown = new Set(textOf(sheet, { covered: true, blank: true }).match(/[\d.]+/g));
			for (const { to, metres, amps, ohms: there, drop, volts } of rows) {
				expect(shown).toContain((metres / 0.3048).toFixed(2));
				const { lamp } = sheet.hand.nodes[to]!;
				if (lamp) expect(shown).toContain(lamp.voltAmps.toFixed(2));
				for (const figure of [amps.toFixed(3), there.toFixed(4), drop.toFixed(3), volts.toFixed(3)])
					expect(shown).not.toContain(figure);
			}
			expect(shown).toContain(String(ohms.value));
		}
	});
});
