import { expect, test } from 'vitest';
import { strictOf, type Trial } from './candidates';
import { casesOf } from './corners';
import { inTurn, offer } from './offers';
import { options, planeRun } from './runs.testing';
import { StrictByCost } from './strict';
import { WaysOfRun } from './ways';

/** All ways of a run on one transformer, at terminals `u` of the tap and `slack` either way. */
function trialOf(seed: number, u: number, slack: number, heavy: number): Trial {
	const o = options();
	const cases = casesOf(o);
	const expected = {
		u: { nominal: u, low: u * 0.95, high: u * 1.05, longHot: u, shortCold: u },
		slack
	};
	return { ways: new WaysOfRun(planeRun(seed, 'a', { heavy }), o, 12).within(1e9), taps: [12, 13, 14, 15], cases, expected, options: o }; // prettier-ignore
}

test('one by one, the cheapest first, gives what walking from thick to thin gives', () => {
	let found = 0;
	let none = 0;
	for (let seed = 0; seed < (process.env.LONG ? 2000 : 150); seed++) {
		const trial = trialOf(seed, 0.94 + (seed % 5) * 0.012, seed % 3 === 0 ? -0.01 : 0.012, 0.5 + (seed % 9));
		expect(StrictByCost.suits(trial)).toBe(true);
		const walked = trial.ways.flatMap((way) => strictOf(trial, way));
		const rest = new StrictByCost(trial);
		const singly = [];
		while (rest.next < Infinity) singly.push(...rest.batch());
		expect(new Set(singly.map((c) => JSON.stringify([c.shape, c.size, c.tapVolts, c.amps, c.margin])))).toEqual(
			new Set(walked.map((c) => JSON.stringify([c.shape, c.size, c.tapVolts, c.amps, c.margin])))
		);
		expect(singly).toHaveLength(walked.length);
		const costs = singly.map(({ cost }) => cost);
		costs.forEach((cost, k) => expect(cost).toBeGreaterThanOrEqual((costs[k - 1] ?? 0) - 1e-6));
		if (walked.length > 0) found++;
		else none++;
	}
	expect(found).toBeGreaterThan(20);
	expect(none).toBeGreaterThan(0);
});

test('an offer tells first, least and part of it as it does when all of it is known', () => {
	for (let seed = 0; seed < 60; seed++) {
		const all = offer(trialOf(seed, 0.97, 0.012, 1 + (seed % 6))).candidates;
		const fresh = () => offer(trialOf(seed, 0.97, 0.012, 1 + (seed % 6)));
		const same = (a: typeof all) => a.map(({ cost, size, tapVolts }) => [cost, size.size, tapVolts]);
		expect(same([fresh().first])).toEqual(same(all.slice(0, 1)));
		expect(fresh().least).toBe(Math.min(...all.map(({ cost }) => cost)));
		const most = all[Math.floor(all.length / 2)]!.cost;
		expect(same(fresh().below(most).candidates)).toEqual(same(all.filter(({ cost }) => cost < most)));
		expect(same([...inTurn(fresh())])).toEqual(same(all));
	}
});
