/** Places for the transformer side by side: the figures are those of the plan made with each answer. */
import { describe, expect, test } from 'vitest';
import { makePlan } from '../plan';
import { blankYard, examples, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { compareSpots, ownSpotAgainstPlan, withSpot } from './spots';
import type { SpotFigures } from './spots-types';

const example = (id: string): Yard => examples.find((one) => one.id === id)!.yard;

/** Cost and lengths once more, from the whole plan. */
function expectAsPlanned(yard: Yard, spot: SpotFigures): void {
	const plan = makePlan(withSpot(yard, spot.answer));
	const supply = plan.supply!;
	const segments = plan.runs.flatMap((run) => run.segments);
	expect({ at: spot.at, cost: spot.cost, trench: spot.trench, voltAmps: spot.voltAmps }).toEqual({
		at: supply.at,
		cost: supply.cost,
		trench: supply.route?.trench ?? 0,
		voltAmps: supply.ratedVoltAmps
	});
	expect(spot.cable).toBeCloseTo(
		segments.reduce((sum, { length }) => sum + length, 0),
		9
	);
	expect(spot.crossings).toBe(segments.flatMap(({ crossings }) => crossings).length);
	const volts = plan.runs.flatMap(({ nodes }) => nodes.slice(1).flatMap((node) => node.volts ?? []));
	if (spot.lowestVolts !== null) expect(spot.lowestVolts).toBe(Math.min(...volts));
}
function expectSorted(spots: readonly SpotFigures[]): void {
	const others = spots.filter(({ kind }) => kind === 'reach' || kind === 'beyond');
	expect(spots.slice(spots.length - others.length)).toEqual(others);
	others.forEach((spot, k) => {
		const before = others[k - 1];
		if (!before) return;
		expect(Number(before.electrician)).toBeLessThanOrEqual(Number(spot.electrician));
		if (before.electrician !== spot.electrician || before.unfed !== spot.unfed || before.stops !== spot.stops) return;
		expect(Math.round(before.cost * 100)).toBeLessThanOrEqual(Math.round(spot.cost * 100));
	});
}

describe.each(['town', 'suburban', 'rural'])('%s', (id) => {
	const yard = example(id);
	const before = JSON.stringify(yard);
	const spots = compareSpots(yard);
	const [first] = spots;
	test('each place has the figures of the plan made with its answer', () => {
		expect(spots.length).toBeGreaterThan(1);
		for (const spot of spots) expectAsPlanned(yard, spot);
		expect(JSON.stringify(yard)).toBe(before);
	}, 60_000);
	test('the person’s own place first, then the plan’s, the others in order; differences from the first', () => {
		const told = typeof yard.power.transformer === 'object';
		expect(spots.map(({ kind }) => kind).slice(0, told ? 2 : 1)).toEqual(told ? ['yours', 'plan'] : ['plan']);
		expectSorted(spots);
		for (const spot of spots) expect(spot.difference).toBe(spot.cost - first!.cost);
		expect(new Set(spots.map((spot) => spot.id)).size).toBe(spots.length);
	});
	test('a place beyond the cord says who has to come first', () => {
		const beyond = spots.filter(({ electrician }) => electrician);
		expect(beyond.length).toBeGreaterThan(0);
		for (const { why, far } of beyond) {
			expect(far).toBeGreaterThan(1.8);
			expect(why).toContain('licensed electrician');
			expect(why).toContain('not counted');
		}
		for (const { electrician, why } of spots) if (!electrician) expect(why).not.toContain('electrician');
	});
	test('the two alone are the two of the whole list', () => {
		const both = ownSpotAgainstPlan(yard);
		if (typeof yard.power.transformer !== 'object') expect(both).toBeNull();
		else expect([both!.yours, both!.plan]).toEqual(spots.slice(0, 2));
	});
});

test('a place round the house needs an electrician; the plan’s does not, and says what it saves', () => {
	const yard = example('rural');
	const { yours, plan } = ownSpotAgainstPlan(withSpot(yard, { at: { along: 0, out: -6 }, on: 'wall', height: 0.5 }))!;
	expect(yours.electrician).toBe(true);
	expect(plan.electrician).toBe(false);
	expect(plan.difference).toBe(plan.cost - yours.cost);
	expect(plan.why).toMatch(/(less|more) trench/);
});
test('without a receptacle every place needs one fitted', () => {
	const town = example('town');
	const spots = compareSpots({ ...town, power: { ...town.power, receptacle: 'none' } });
	expect(spots.every(({ electrician, far }) => electrician && far === null)).toBe(true);
});
test('nothing to feed, nothing to compare', () => {
	expect(compareSpots(blankYard())).toEqual([]);
	expect(ownSpotAgainstPlan(blankYard())).toBeNull();
});
test('any yard: whole figures, sorted, the same every time', () => {
	const yards = process.env.LONG ? 100 : 8;
	for (let seed = 1; seed <= yards; seed++) {
		const yard = randomYard(seed);
		const spots = compareSpots(yard);
		for (const { cost, cable, trench, where, why } of spots) {
			for (const figure of [cost, cable, trench]) expect(Number.isFinite(figure), `seed ${seed}`).toBe(true);
			expect(`${where} ${why}`).not.toMatch(/NaN|undefined|null|Infinity/);
		}
		expectSorted(spots);
		if (seed <= 3) {
			expect(compareSpots(yard)).toEqual(spots);
			for (const spot of spots) expectAsPlanned(yard, spot);
		}
	}
}, 600_000);
