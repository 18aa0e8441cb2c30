import { describe, expect, test } from 'vitest';
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import { evaluate } from '../../shared/evaluate';
import { fixed, showWorking } from '../../shared/show-working';
import { sources } from '../../shared/sources';
import type { Working } from '../../shared/working';
import { loopOhms, ohmsPerKm, usualSizes } from '../conductors';
import published from '../drop.published.json';
import { led } from '../networks.testing';
import { solve } from '../solve';
import nec from '../tables/nec-table8.json';
import { byHand } from './by-hand';
import { annexG, K } from './figures';
import { anyHandRun, solved, type Laid } from './hand-runs.testing';
import { evenConstant, remembered, thumbConstant } from './thumb';
import type { Against, HandRun } from './types';

const awg = (size: number) => ({ system: 'awg' as const, size });
const mm2 = (size: number) => ({ system: 'mm2' as const, size });
const lamp = (voltAmps: number) => ({ kind: 'led' as const, voltAmps });
const oneLamp = (change: Partial<Laid>): HandRun =>
	solved({ size: awg(12), tapVolts: 12, lamps: [lamp(10)], segments: [{ from: 0, to: 1, metres: 10 }], ...change });
const done = (run: HandRun, units: UnitSystem = 'feet') => {
	const result = byHand(run, { units });
	if (!result) throw new Error('nothing to add up');
	return result;
};
/** A lamp of so many amperes, as marked on a 12 V lamp. */
const drawing = (amps: number) => lamp(12 * amps);

describe('the handbook sum against published figures', () => {
	const hundredFeet = [{ from: 0, to: 1, metres: 100 * metresPerFoot }];
	test.each(['feet', 'metres'] as const)(
		'120 V, 15 A, 100 ft, 12 AWG, in %s: 5.94 V by NEC Chapter 9 Table 8, 5.926 V by 2 × 12.9 × L × I ÷ CM (formula seen)',
		(units) => {
			const { handbook } = done(oneLamp({ tapVolts: 120, lamps: [drawing(15)], segments: hundredFeet }), units);
			expect(handbook.basis).toBe('table8');
			expect(handbook.rows[0]!.drop).toBeCloseTo(5.94, 9);
			expect(120 - handbook.byFormula!.value).toBeCloseTo((2 * 12.9 * 100 * 15) / 6530, 9);
			expect(120 - handbook.byFormula!.value).toBeCloseTo(5.926, 3);
		}
	);
	test.each(['feet', 'metres'] as const)(
		'12 V, 50 W, 20 m, 2.5 mm², in %s: 1.500 V by 2 × 0.0225 × L ÷ S × I (IEC 60364-5-52:2009 Annex G, formula seen)',
		(units) => {
			const run = oneLamp({ size: mm2(2.5), lamps: [lamp(50)], segments: [{ from: 0, to: 1, metres: 20 }] });
			const { handbook } = done(run, units);
			expect(handbook.basis).toBe('annexG');
			expect(handbook.rows[0]!.drop).toBeCloseTo(1.5, 9);
			expect(handbook.byFormula).toBeNull();
		}
	);
	// The textbook lines have ohms of their own; a line of our cable with the same ohms must come out the same.
	test.each(published.chains)('$source', ({ volts, ohmsPerKm: theirs, loads }) => {
		const ours = ohmsPerKm(awg(8), 75);
		const run = solved({
			size: awg(8),
			tapVolts: volts,
			lamps: loads.map(({ amps }) => drawing(amps)),
			segments: loads.map(({ metres }, k) => ({
				from: k,
				to: k + 1,
				metres: ((metres - (loads[k - 1]?.metres ?? 0)) * theirs) / ours
			}))
		});
		const { rows } = done(run).handbook;
		for (const [k, load] of loads.entries()) expect(rows[k]!.volts).toBeCloseTo(load.volts, 9);
	});
	test('K = 12.9 is ohms × circular mils ÷ 1000 of each row of Table 8 within 0.5 %', () => {
		for (const [gauge, ohms] of Object.entries(nec.ohmsPerKft)) {
			const mils = (nec.circularMils as Record<string, number>)[gauge]!;
			expect(Math.abs((ohms * mils) / 1000 / K - 1)).toBeLessThan(0.005);
		}
		expect(annexG.warm * annexG.at20).toBeCloseTo(annexG.service, 12);
	});
});

describe('the rule of thumb', () => {
	/*
	 * A line with its load spread evenly loses half of what it would lose with all of it at the end (textbook: the centroid of the
	 * load is half-way out): drop = ½ × 2rL/1000 × W/12, so the constant is 12000 ÷ r, r ohms in 1000 ft of one conductor.
	 * 12 AWG stranded at 20 °C, Table 8 with its temperature law: r = 1.628, constant 7370; 7500 is 1.8 % above it. Solid from
	 * ASTM B258 geometry with 10.371 Ω·cmil/ft: r = 1.588, constant 7556; 7500 is 0.7 % below it. 7500 itself: from memory.
	 */
	test('7500 for 12 AWG is an evenly spread load at 20 °C, within 2 %', () => {
		const even = evenConstant(awg(12), 'feet');
		expect(even).toBeCloseTo(7370, 0);
		expect(Math.abs(remembered.constant / even - 1)).toBeLessThan(0.02);
		const solid = 12000 / ((10.371 * 1000) / 6530);
		expect(Math.abs(remembered.constant / solid - 1)).toBeLessThan(0.01);
	});
	test('so it is when the solver is asked: 5000 small lamps along 12 AWG at 20 °C', () => {
		const [count, feet, voltAmps] = [5000, 100, 36];
		const volts = 12_000; // so many that the volts, and with them the amperes, hardly differ along the line
		const perLeg = loopOhms(ohmsPerKm(awg(12), 20), (feet * metresPerFoot) / count);
		const solution = solve({
			sourceVolts: volts,
			sourceOhms: 0,
			nodes: count + 1,
			segments: Array.from({ length: count }, (_, k) => ({ from: k, to: k + 1, ohms: perLeg })),
			loads: Array.from({ length: count }, (_, k) => ({ node: k + 1, load: led((voltAmps / 12 / count) * volts) }))
		});
		if (!solution.ok) throw new Error(solution.message);
		const drop = volts - solution.volts[count]!;
		expect((voltAmps * feet) / drop / evenConstant(awg(12), 'feet')).toBeCloseTo(1, 3);
	});
	test('other sizes in proportion to their copper, and within 15 % of what that copper makes it', () => {
		expect([18, 16, 14, 12, 10, 8].map((size) => thumbConstant(awg(size), 'feet').value)).toEqual(
			[1620, 2580, 4110, 6530, 10380, 16510].map((mils) => Math.round((7500 * mils) / 6530))
		);
		// 3.309 mm² is 12 AWG by ASTM B258.
		expect(thumbConstant(mm2(4), 'metres').value).toBe(Math.round((7500 * 0.3048 * 4) / 3.309));
		// The most is 1.5 mm²: class 5 strands resist a tenth more than plain copper.
		for (const size of [...usualSizes('awg'), ...usualSizes('mm2')])
			for (const units of ['feet', 'metres'] as const)
				expect(Math.abs(thumbConstant(size, units).value / evenConstant(size, units) - 1)).toBeLessThan(0.15);
	});
	test('60 VA, 100 ft of 12 AWG, tap 12 V: 60 × 100 ÷ 7500 = 0.8 V dropped', () => {
		const run = oneLamp({ lamps: [lamp(60)], segments: [{ from: 0, to: 1, metres: 100 * metresPerFoot }] });
		expect(done(run).thumb.volts).toBeCloseTo(11.2, 9);
	});
});

const isWorking = (value: object): value is Working => 'expression' in value && 'inputs' in value;
const workingsIn = (value: unknown): Working[] =>
	typeof value === 'object' && value !== null
		? [...(isWorking(value) ? [value] : []), ...Object.values(value).flatMap(workingsIn)]
		: [];
const sum = (causes: Against['causes'], of: (cause: Against['causes'][number]) => number) =>
	causes.reduce((total, cause) => total + of(cause), 0);

describe('against the plan, on random runs', () => {
	const seeds = Array.from({ length: 400 }, (_, k) => k + 1);
	const runs = seeds.map(anyHandRun);
	const solvedRuns = runs.filter(({ nodes }) => nodes[0]!.volts !== null);

	test('causes sum to the difference, and as shown too', () => {
		expect(solvedRuns.length).toBeGreaterThan(300);
		for (const run of solvedRuns) {
			const { handbook, thumb, lowest } = done(run, run.size.system === 'awg' ? 'feet' : 'metres');
			for (const { volts, against } of [handbook, thumb]) {
				if (!against) throw new Error('solved, and yet nothing to compare with');
				expect(against.planVolts).toBe(run.nodes[lowest.node]!.volts);
				expect(against.difference).toBeCloseTo(volts - against.planVolts, 9);
				expect(Math.abs(sum(against.causes, (cause) => cause.volts) - against.difference)).toBeLessThan(1e-9);
				expect(against.causes.at(-1)!.after).toBeCloseTo(volts, 9);
				const shown = sum(against.causes, ({ working }) => working.value);
				expect(fixed(shown, 3)).toBe(fixed(Number(volts.toFixed(3)) - Number(against.planVolts.toFixed(3)), 3));
			}
		}
	});
	test('the solver, given the same lamps, tap and copper, has the volts of each row', () => {
		for (const run of solvedRuns) {
			const { rows } = done(run).handbook;
			if (rows.some(({ volts }) => volts < 6)) continue; // an LED of these amperes would have a second, higher solution
			const volts = [run.tapVolts];
			for (const row of rows) volts[row.to] = row.volts;
			const solution = solve({
				sourceVolts: run.tapVolts,
				sourceOhms: 0,
				nodes: run.nodes.length,
				segments: run.segments.map(({ from, to, metres }) => ({
					from,
					to,
					ohms:
						run.size.system === 'awg'
							? loopOhms(ohmsPerKm(run.size, 75), metres)
							: (2 * 0.0225 * metres) / run.size.size
				})),
				loads: run.nodes.flatMap(({ lamp: own }, node) =>
					own ? [{ node, load: led((own.voltAmps / 12) * volts[node]!) }] : []
				)
			});
			if (!solution.ok) throw new Error(solution.message);
			for (const [node, value] of volts.entries()) expect(solution.volts[node]).toBeCloseTo(value, 7);
		}
	});
	test('every figure re-evaluates from what is displayed and names a source that exists', () => {
		const ids = new Set<string>(Object.values(sources).map(({ id }) => id));
		for (const run of runs.slice(0, 60))
			for (const units of ['feet', 'metres'] as const)
				for (const working of workingsIn(done(run, units))) {
					const shown = showWorking(working, units);
					const again = fixed(evaluate(shown.line), working.decimals);
					expect(`${again}${working.unit && ` ${working.unit}`}`, `${working.label}: ${shown.line}`).toBe(shown.result);
					expect(shown.holds).toBe(true);
					expect(ids).toContain(working.source);
				}
	});
	test('in feet and in metres the handbook is one and the same', () => {
		for (const run of runs.slice(0, 60))
			expect(done(run, 'feet').handbook.volts).toBeCloseTo(done(run, 'metres').handbook.volts, 9);
	});
});

describe('causes', () => {
	const causeOf = (against: Against | null, kind: string) => against!.causes.find((cause) => cause.kind === kind);
	test('one LED lamp: each cause by itself, worked out apart', () => {
		const run = oneLamp({ tapVolts: 12, sagOhms: 0.1, lamps: [lamp(48)] });
		const [terminals, volts] = [run.nodes[0]!.volts!, run.nodes[1]!.volts!];
		const { handbook } = done(run);
		const ohms = loopOhms(run.ohmsPerKm, 10);
		expect(causeOf(handbook.against, 'led')!.volts).toBeCloseTo(ohms * (48 / volts - 4), 9);
		expect(causeOf(handbook.against, 'sag')!.volts).toBeCloseTo(12 - terminals, 9);
		// Table 8: R = R75 (1 + 0.00323 (t − 75)).
		expect(causeOf(handbook.against, 'copper')!.volts).toBeCloseTo(-4 * ohms * (1 / (1 - 0.00323 * 45) - 1), 9);
		expect(causeOf(handbook.against, 'halogen')).toBeUndefined();
	});
	test('an LED above 12 V draws less than marked, a halogen below 12 V too', () => {
		const high = done(oneLamp({ tapVolts: 15 })).handbook.against;
		expect(causeOf(high, 'led')!.volts).toBeLessThan(0);
		expect(causeOf(high, 'led')!.why).toMatch(/fewer amps/);
		const low = done(oneLamp({ lamps: [{ kind: 'halogen', voltAmps: 50 }] })).handbook.against;
		expect(causeOf(low, 'halogen')!.volts).toBeLessThan(0);
		expect(causeOf(low, 'led')).toBeUndefined();
	});
	test('the rule of thumb takes a lamp at the end for half of what it is', () => {
		const { against } = done(oneLamp({ lamps: [lamp(48)] })).thumb;
		const place = causeOf(against, 'place')!;
		expect(place.why).toMatch(/100\s% of the way/);
		expect(place.volts).toBeCloseTo((loopOhms(ohmsPerKm(awg(12), 30), 10) * 4) / 2, 9);
	});
});

describe('shapes', () => {
	const three = [lamp(10), lamp(20), lamp(30)];
	test('a run fed in its middle, and one written the other way round', () => {
		const segments = [
			{ from: 0, to: 2, metres: 10 },
			{ from: 1, to: 2, metres: 5 },
			{ from: 3, to: 2, metres: 5 }
		];
		const { rows } = done(oneLamp({ lamps: three, segments })).handbook;
		expect(rows.map(({ from, to }) => [from, to])).toEqual([
			[0, 2],
			[2, 1],
			[2, 3]
		]);
		expect(rows.map(({ amps }) => amps)).toEqual([5, 10 / 12, 2.5]);
	});
	test('a hub: a bare node, each lamp on a lead of its own', () => {
		const segments = [
			{ from: 0, to: 1, metres: 10 },
			{ from: 1, to: 2, metres: 3 },
			{ from: 1, to: 3, metres: 6 }
		];
		const result = done(oneLamp({ lamps: [null, lamp(20), lamp(30)], segments }));
		expect(result.handbook.rows.map(({ isLamp }) => isLamp)).toEqual([false, true, true]);
		expect(result.lowest).toEqual({ node: 3, metres: 16 });
		expect(result.thumb.voltAmps).toBe(50);
	});
	test('without a solution the handbook still has its figures, and there is nothing to compare with', () => {
		const run = oneLamp({ size: awg(16), lamps: [lamp(200)], segments: [{ from: 0, to: 1, metres: 60 }] });
		expect(run.nodes[1]!.volts).toBeNull();
		const { handbook, thumb } = done(run);
		expect(handbook.rows[0]).toMatchObject({ planVolts: null, difference: null, differenceWorking: null });
		expect(handbook.volts).toBeLessThan(0);
		expect([handbook.against, thumb.against]).toEqual([null, null]);
	});
	test('a ring, a part cut off, a run without lamps: nothing to add up', () => {
		const ring = oneLamp({
			lamps: three,
			segments: [0, 1, 2, 0].map((from, k) => ({ from, to: k === 3 ? 3 : k + 1, metres: 5 }))
		});
		expect(byHand(ring, { units: 'feet' })).toBeNull();
		const run = oneLamp({});
		expect(byHand({ ...run, segments: [] }, { units: 'feet' })).toBeNull();
		expect(byHand({ ...run, nodes: run.nodes.map((node) => ({ ...node, lamp: null })) }, { units: 'feet' })).toBeNull();
		expect(byHand({ ...run, nodes: run.nodes.slice(0, 1), segments: [] }, { units: 'feet' })).toBeNull();
	});
});
