/** What holds of a budget on any yard, checked on seeded ones: 120 in `npm test`, 2,000 with LONG=1. */
import { describe, expect, it } from 'vitest';
import { distance } from '../shared/geometry';
import { makeSite } from '../site';
import type { Yard } from '../yard';
import { awkwardYard } from './awkward.testing';
import { cost, idsOf, lights, money, planned, said, withBudget, type Budget } from './budget.testing';
import { randomHand } from './hand/hand.testing';
import { mirrored } from './mirror.testing';
import { placeFixtures, type Fixture } from './index';

const seeds = Array.from({ length: process.env.LONG ? 2000 : 120 }, (_, i) => i + 1);
/** Of steps, the number, entries, bends, junctions, heads and feet of steps, the mouth, wheels: by the words of their reasons. */
const againstFalls = ({ technique, reasons }: Fixture): boolean =>
	technique === 'step' ||
	technique === 'number' ||
	reasons.some(({ because }) => /^Marks |pair at the mouth|wheels run off\.|^On the outside of a bend/.test(because));

/** Everything wrong with one yard under its budgets, rising, in words. */
function faults(
	yard: Yard,
	budgets: readonly number[],
	of: (limit: number) => Budget,
	spent: (f: readonly Fixture[]) => number
): string[] {
	const wrong: string[] = [];
	const whole = planned(yard);
	const byId = new Map(whole.fixtures.map((fixture) => [fixture.id, fixture]));
	let smaller: string[] = [];
	for (const limit of budgets) {
		const plan = planned(withBudget(yard, of(limit)));
		const ids = idsOf(plan);
		const kept = new Set(ids);
		const gone = whole.fixtures.filter(({ id }) => !kept.has(id));
		const over = said(plan, 'placement.budget-over').length > 0;
		if (spent(plan.fixtures) > limit + 1e-6 !== over)
			wrong.push(`${limit}: ${spent(plan.fixtures)}, said over: ${over}`);
		if (smaller.some((id) => !kept.has(id))) wrong.push(`${limit} loses what a smaller budget kept`);
		smaller = ids;
		for (const { id, at, aim, model } of plan.fixtures) {
			const own = byId.get(id);
			if (!own || own.model !== model || distance(own.at, at) > 0 || JSON.stringify(own.aim) !== JSON.stringify(aim))
				wrong.push(`${limit}: ${id} is not the plan's own`);
		}
		if (gone.some(againstFalls)) wrong.push(`${limit}: ${gone.find(againstFalls)!.id} went`);
		if (gone.length > 0 !== said(plan, 'placement.budget').length > 0)
			wrong.push(`${limit}: left out unsaid, or said and not left out`);
		for (const { id, target, also } of gone)
			for (const { kind, id: of } of [target, ...(also ?? [])])
				if (
					!plan.findings.some(
						({ code, about }) => code === 'placement.left-out' && about?.kind === kind && about.id === of
					)
				)
					wrong.push(`${limit}: nothing said of ${kind} ${of}, which lost ${id}`);
		if (new Set(plan.fixtures.map(({ label }) => label)).size !== plan.fixtures.length)
			wrong.push(`${limit}: a label twice`);
		for (const { message } of plan.findings) if (/NaN|undefined|null|Infinity| {2}/.test(message)) wrong.push(message);
	}
	return wrong;
}

describe('on any yard', () => {
	it('a budget in lights is kept or said to be too small; more never loses a light; what keeps from a fall stays', () => {
		const wrong: string[] = [];
		for (const seed of seeds) {
			const yard = awkwardYard(seed);
			const count = planned(yard).fixtures.length;
			const limits = [1, 3, 6, 10, 15, 22, 30, count - 1, count, count + 1].filter((n) => n >= 1).sort((a, b) => a - b);
			wrong.push(...faults(yard, limits, lights, ({ length }) => length).map((text) => `yard ${seed}: ${text}`));
		}
		expect(wrong.slice(0, 20)).toEqual([]);
	}, 600_000);
	it('so is one in money', () => {
		const wrong: string[] = [];
		for (const seed of seeds.slice(0, seeds.length / 2)) {
			const sums = [10, 200, 450, 800, 1300, 2000];
			wrong.push(...faults(awkwardYard(seed), sums, money, cost).map((text) => `yard ${seed}: ${text}`));
		}
		expect(wrong.slice(0, 20)).toEqual([]);
	}, 600_000);
	it('the limits that it names do what it says', () => {
		const wrong: string[] = [];
		let asked = 0;
		for (const seed of seeds.slice(0, seeds.length / 2)) {
			const yard = awkwardYard(seed);
			const count = (limit: number): number => planned(withBudget(yard, lights(limit))).fixtures.length;
			const whole = planned(yard).fixtures.length;
			const [message] = said(planned(withBudget(yard, lights(5))), 'placement.budget');
			const [, back, all] =
				/A limit of (\d+) lights? (?:brings back the last of these, one of (\d+)|brings)/.exec(message ?? '') ?? [];
			if (!back) continue;
			asked++;
			if (Number(all ?? back) !== whole) wrong.push(`yard ${seed}: ${all ?? back} is not all, ${whole}`);
			if (count(Number(back)) !== Number(back)) wrong.push(`yard ${seed}: ${back} does not have ${back}`);
			if (count(Number(back) - 1) !== count(5)) wrong.push(`yard ${seed}: less than ${back} is enough`);
		}
		expect(wrong).toEqual([]);
		expect(asked).toBeGreaterThan(seeds.length / 6);
	}, 600_000);
	it('the mirror, the same answers again, feet and metres make no difference', () => {
		const differ: string[] = [];
		const looked = seeds.slice(0, seeds.length / 2);
		for (const seed of looked) {
			const yard = awkwardYard(seed);
			const width = (yard.house.sections ?? []).reduce((sum, part) => sum + part.width, 0);
			const inUnits = (units: 'feet' | 'metres'): Yard => ({ ...yard, place: { ...yard.place, units } });
			for (const limit of [4, 9, 16]) {
				const own = planned(withBudget(yard, lights(limit)));
				const image = planned(withBudget(mirrored(yard), lights(limit))).fixtures.map(({ technique, at }) => ({
					technique,
					at: { x: width - at.x, y: at.y }
				}));
				const there = ({ technique, at }: Fixture): boolean =>
					image.some((g) => g.technique === technique && distance(g.at, at) < 1e-6);
				if (own.fixtures.length !== image.length || !own.fixtures.every(there))
					differ.push(`yard ${seed} to ${limit}, mirrored`);
				if (JSON.stringify(planned(withBudget(yard, lights(limit)))) !== JSON.stringify(own))
					differ.push(`yard ${seed} to ${limit}, again`);
				const [feet, metres] = [
					planned(withBudget(inUnits('feet'), lights(limit))),
					planned(withBudget(inUnits('metres'), lights(limit)))
				];
				if (
					idsOf(feet).join() !== idsOf(metres).join() ||
					said(feet, 'placement.left-out').join() !== said(metres, 'placement.left-out').join()
				)
					differ.push(`yard ${seed} to ${limit}, in metres`);
			}
		}
		expect(differ).toEqual([]);
	}, 600_000);
	it('what was set by hand stays, however small the budget', () => {
		let count = 0;
		for (const seed of seeds.slice(0, seeds.length / 2)) {
			const yard = awkwardYard(seed);
			const site = makeSite(yard);
			const byHand = { ...yard, fixtures: randomHand(site, placeFixtures(site, yard).fixtures, seed) };
			const set = planned(byHand).fixtures.filter((fixture) => fixture.byHand);
			const kept = planned(withBudget(byHand, lights(1))).fixtures;
			count += set.length;
			// Labels are numbered anew; all else is as it was.
			const bare = ({ label: _, ...fixture }: Fixture) => fixture;
			expect(kept.filter((fixture) => fixture.byHand).map(bare), `yard ${seed}`).toEqual(set.map(bare));
		}
		expect(count).toBeGreaterThan(seeds.length);
	}, 600_000);
});
