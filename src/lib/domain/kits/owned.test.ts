import { describe, expect, test } from 'vitest';
import { makePlan } from '../plan';
import { quickYard, usualAnswers, type QuickAnswers } from '../quick';
import { needsOf } from './needs';
import { compareOwned } from './owned';
import { ownedCircuit, sameBut } from './owned-circuit';
import { awg } from './shelf.testing';
import type { Owned, OwnedVerdict } from './types';

const none: Owned = { transformer: null, halogens: null, cable: null };
function planned(change: Partial<QuickAnswers>) {
	const { yard } = quickYard({ ...usualAnswers('feet'), ...change });
	const plan = makePlan(yard);
	const needs = needsOf(plan, yard);
	const ask = (owned: Partial<Owned>): OwnedVerdict => compareOwned(needs, plan, { ...none, ...owned })[0]!;
	return { plan, needs, ask, circuit: ownedCircuit(needs, plan)! };
}
const walk = planned({ walk: 12.192 });
const large = planned({ walk: 18.288, trees: { small: 2, medium: 1, large: 1 }, wall: 9.144 });
const halogen = planned({ walk: 12.192, lamp: 'halogen' });

describe('a transformer', () => {
	test('large enough by the 80 % rule, and every lamp gets its volts: kept, with the figures', () => {
		const { verdict, why, name } = walk.ask({ transformer: { voltAmps: 150, taps: [12, 13] } });
		expect([verdict, name]).toEqual(['keep', '150 VA transformer']);
		expect(why).toMatch(
			/^It carries \d+ VA of the 120 that 80 % of its rating allows\. P\d, the lamp with least, then gets/
		);
	});
	test('too small by the 80 % rule, though the label has more than the lamps take', () => {
		const { loadVoltAmps } = large.plan.supply!;
		const voltAmps = Math.ceil(loadVoltAmps * 1.1);
		const { verdict, why } = large.ask({ transformer: { voltAmps, taps: [12, 13, 14, 15] } });
		expect(verdict).not.toBe('keep');
		const load = Number(new RegExp(`^The ${voltAmps} VA transformer would carry (\\d+) VA`).exec(why)![1]);
		expect(load).toBeLessThan(voltAmps);
		expect(load).toBeGreaterThan(voltAmps * 0.8);
		expect(why).toContain(`it may carry ${Math.round(voltAmps * 0.8)}`);
	});
	test('too small for the lamps alone: that is said, whatever the volts', () => {
		const told = large.ask({ transformer: { voltAmps: 20 } });
		expect(told).toMatchObject({ verdict: 'replace', where: null });
		expect(told.why).toMatch(/^The 20 VA transformer would carry \d+ VA; it may carry 16\.$/);
	});
	test('a tap above the window of the lamps is none that serves', () => {
		const { verdict, why } = walk.ask({ transformer: { voltAmps: 150, taps: [18] } });
		expect(verdict).toBe('replace');
		expect(why).toContain('shortens its life');
	});
	test('only with thicker cable: which, and the same circuit solved does not pass without', () => {
		const far = planned({ walk: 30.48, receptacle: 24.384 });
		const transformer = { voltAmps: 150, taps: [12], secondaries: 1, regulation: 0.05 };
		const told = far.ask({ transformer: { voltAmps: 150, taps: [12] } });
		expect(told.verdict).toBe('reuse');
		const [, run, gauge] = /^with run (\d) in (\d+) AWG$/.exec(told.where!)!;
		expect(sameBut(far.circuit, { transformer }).ok).toBe(false);
		const sizes = new Map([[Number(run) - 1, awg(Number(gauge))]]);
		expect(sameBut(far.circuit, { transformer, sizes }).ok).toBe(true);
	});
});

describe('halogens', () => {
	test('beside LEDs: replaced, since they do not look alike; amperes by W ÷ 12 V, and the copper that they would want', () => {
		const { verdict, why } = walk.ask({ halogens: { count: 3, watts: 20 } });
		expect(verdict).toBe('replace');
		expect(why).toMatch(
			/^Beside LEDs they do not look alike\. In place of 3 path lights, 3 of 20 W draw 60 VA, 5\.0 A at 12 V; the LEDs there \d+ VA, \d\.\d A\. .*run 1/
		);
	});
	test('where the plan is for halogen and the watts suit: kept', () => {
		const [need] = halogen.needs.fixtures;
		expect(need!.source).toBe('halogen');
		const watts = halogen.plan.fixtures[0]!.lamp.watts;
		const { verdict, why } = halogen.ask({ halogens: { count: 2, watts } });
		expect(verdict).toBe('keep');
		expect(why).toContain(`2 lamps of ${watts} W serve at P1 and P2`);
	});
	test('of more than are wanted the place is told; too bright they are replaced', () => {
		const watts = halogen.plan.fixtures[0]!.lamp.watts;
		expect(halogen.ask({ halogens: { count: 30, watts } })).toMatchObject({ verdict: 'reuse' });
		expect(halogen.ask({ halogens: { count: 2, watts: 50 } })).toMatchObject({ verdict: 'replace' });
	});
});

describe('cable', () => {
	const [run] = walk.needs.runs;
	test('thick and long enough for every run: kept', () => {
		const told = walk.ask({ cable: { size: awg(10), metres: run!.metres * walk.needs.runs.length + 20 } });
		expect(told).toMatchObject({ verdict: 'keep', where: null });
	});
	test('a hair too short, waste included, is too short', () => {
		expect(walk.needs.runs).toHaveLength(1);
		expect(walk.ask({ cable: { size: awg(10), metres: run!.metres + 0.001 } }).verdict).toBe('keep');
		const short = walk.ask({ cable: { size: awg(10), metres: run!.metres - 0.01 } });
		expect(short.verdict).toBe('replace');
		expect(short.why).toMatch(/^It is thick enough, and too short: the shortest run it could serve wants \d+ ft/);
	});
	test('too thin: the lamp or the amperes that say so', () => {
		const told = halogen.ask({ cable: { size: awg(22), metres: 500 } });
		expect(told.verdict).toBe('replace');
		expect(told.why).toMatch(/^It is too thin: .*\d/);
	});
	test('of several runs those that it is long enough for are named', () => {
		expect(large.needs.runs.length).toBeGreaterThan(1);
		const longest = Math.max(...large.needs.runs.map(({ metres }) => metres));
		const told = large.ask({ cable: { size: awg(10), metres: longest } });
		expect(told).toMatchObject({ verdict: 'reuse' });
		expect(told.where).toMatch(/^run \d/);
	});
});

test('nothing owned, nothing said; nothing to feed, nothing to compare', () => {
	expect(compareOwned(walk.needs, walk.plan, none)).toEqual([]);
	const empty = { ...walk.plan, runs: [], supply: null };
	expect(compareOwned({ ...walk.needs, runs: [] }, empty, { ...none, transformer: { voltAmps: 60 } })).toEqual([]);
});
