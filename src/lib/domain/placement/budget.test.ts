/** The plan kept to a budget, on a yard made for it: rule budget.order (common practice, no source) and budget.count (from memory). */
import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import { distance } from '../shared/geometry';
import { rules } from '../shared/rules';
import { yardSchema, type Yard } from '../yard';
import { cost, idsOf, lights, money, planned, said, wholeYard, withBudget, type Budget } from './budget.testing';
import { pinned } from './hand/hand.testing';
import type { Fixture } from './index';

/** What went between one limit and the next lower one, in words. */
function sequence(yard: Yard): string[] {
	const all = planned(yard).fixtures;
	const gone: string[] = [];
	let before = all;
	for (let limit = all.length - 1; limit >= 1; limit--) {
		const { fixtures } = planned(withBudget(yard, lights(limit)));
		const kept = new Set(fixtures.map(({ id }) => id));
		const lost = before.filter(({ id }) => !kept.has(id));
		if (lost.length > 0) gone.push(`${[...new Set(lost.map(({ target }) => target.id))].join('+')} ${lost.length}`);
		before = before.filter(({ id }) => kept.has(id));
	}
	return gone;
}

describe('what goes first', () => {
	it('is beauty, soft before bright, then the drive and the walk thinned, then their rest; the fall is never risked', () => {
		const all = planned(wholeYard).fixtures;
		const of = (id: string): number => all.filter(({ target }) => target.id === id).length;
		expect([of('oak'), of('lime'), of('plum'), of('steps'), of('number')]).toEqual([2, 2, 1, 2, 1]);
		const row = sequence(wholeYard);
		const wall = row.filter((part) => part.startsWith('front'));
		expect(wall.length).toBeGreaterThan(0);
		const [thinDrive, thinWalk, restDrive, restWalk] = row.slice(-4);
		expect(row.slice(0, -4)).toEqual(['oak 1', ...wall, 'plum 1', 'oak 1', 'roses 2', 'bench 1', 'lime 1', 'lime 1']);
		expect([thinDrive, restDrive].every((part) => part!.startsWith('drive '))).toBe(true);
		expect([thinWalk, restWalk].every((part) => part!.startsWith('walk '))).toBe(true);
		// Left: steps with their foot and head, the entry, the pair at the mouth, the number.
		const least = planned(withBudget(wholeYard, lights(1)));
		expect(new Set(least.fixtures.map(({ target }) => target.kind))).toEqual(
			new Set(['steps', 'walk', 'drive', 'number'])
		);
		expect(least.fixtures.filter(({ target }) => target.kind === 'drive').length).toBe(2);
		expect(said(least, 'placement.budget-over')).toEqual([
			`The lights that keep people from a fall come to ${least.fixtures.length} lights, ${least.fixtures.length - 1} more than 1: they stay all the same. Raise the limit, or leave a walk, the drive or the number without light.`
		]);
	});
	it('is said by the rule in the same order', () => {
		const { says } = rules['budget.order'];
		const words = [
			'further lights on a tree',
			'walls from their ends',
			'trees, beds, seats',
			'along a drive',
			'straights of a walk',
			'the rest of a drive',
			'then of a walk',
			'never left out'
		];
		const places = words.map((text) => says.indexOf(text));
		expect(places.every((place, i) => place > (places[i - 1] ?? 0))).toBe(true);
	});
	it('leaves rows even: every other light of a straight, a wall lit in its middle', () => {
		const all = planned(wholeYard).fixtures;
		const rowOf = (fixtures: readonly Fixture[]): number[] =>
			fixtures
				.filter(({ target, at }) => target.id === 'drive' && at.x < 22)
				.map(({ at }) => at.y)
				.sort((a, b) => b - a);
		const whole = rowOf(all);
		expect(whole.length).toBeGreaterThanOrEqual(4);
		const beauty = all.filter(({ target }) => ['tree', 'wall', 'bed', 'seating'].includes(target.kind)).length;
		const thinned = rowOf(planned(withBudget(wholeYard, lights(all.length - beauty - 1))).fixtures);
		expect(thinned).toEqual(whole.filter((_, i) => i % 2 === 0));
		const front = (fixtures: readonly Fixture[]): number[] =>
			fixtures
				.filter(({ target }) => target.kind === 'wall')
				.map(({ at }) => at.x)
				.sort((a, b) => a - b);
		const [wide, narrow] = [front(all), front(planned(withBudget(wholeYard, lights(all.length - 2))).fixtures)];
		expect(wide.length).toBeGreaterThanOrEqual(4);
		expect(narrow).toEqual(wide.slice(1, -1));
	});
	it('takes twins that stand alike either side of the middle at once', () => {
		const [plum] = wholeYard.trees!;
		const twins = [4, 10].map((along) => ({ ...plum!, id: `plum-${along}`, at: { along, out: 15 }, spread: 2.8 }));
		const row = sequence({ ...wholeYard, trees: [...wholeYard.trees!, ...twins] });
		expect(row.filter((part) => part.includes('plum-'))).toEqual([
			expect.stringMatching(/^plum-(4\+plum-10|10\+plum-4) 2$/)
		]);
	});
	it('keeps a drive light that stands in for the entry of a walk, and a wall light that shows the number', () => {
		const { walks } = wholeYard;
		const marker = planned(wholeYard).fixtures.find(({ id }) => id === 'drive/edge-2')!;
		const out = Math.round((marker.at.y - 1.2) * 100) / 100;
		const joined: Yard = {
			...wholeYard,
			walks: [
				{
					...walks![0]!,
					line: [
						{ along: 20, out },
						{ along: 7, out },
						{ along: 7, out: 1 }
					],
					steps: []
				}
			]
		};
		const all = planned(joined);
		expect(said(all, 'placement.shared').length).toBe(1);
		const least = planned(withBudget(joined, lights(1))).fixtures;
		expect(least.some(({ target, at }) => target.kind === 'drive' && distance(at, { x: 19.5, y: out }) < 1.5)).toBe(
			true
		);
		const numbered: Yard = {
			...wholeYard,
			spots: { numbers: [{ id: 'number', at: { along: 3, out: 0.1 }, light: true }] }
		};
		const shown = planned(numbered).fixtures.filter(({ also }) => also?.some(({ kind }) => kind === 'number'));
		const kept = new Set(planned(withBudget(numbered, lights(1))).fixtures.map(({ id }) => id));
		expect(shown.length).toBe(1);
		expect(shown.every(({ id }) => kept.has(id))).toBe(true);
	});
	it('never touches what was placed or pinned by hand', () => {
		const own = planned(wholeYard).fixtures;
		const oak = own.find(({ target }) => target.id === 'oak')!;
		const fixtures = {
			set: [pinned(oak)],
			added: [{ id: 'mine', technique: 'path' as const, at: { along: -4, out: 18 } }]
		};
		const least = planned(withBudget({ ...wholeYard, fixtures }, lights(1)));
		expect(idsOf(least)).toEqual(expect.arrayContaining([oak.id, 'added/mine']));
		expect(said(least, 'placement.budget-over')[0]).toContain('and what you set by hand');
	});
});

describe('what is counted', () => {
	it('money: the catalogue’s price or your own, and 30 for each light', () => {
		const { fixtures } = planned(wholeYard);
		const sum = cost(fixtures);
		expect(planned(withBudget(wholeYard, money(sum))).fixtures).toEqual(fixtures);
		expect(planned(withBudget(wholeYard, money(sum - 0.01))).fixtures.length).toBe(fixtures.length - 1);
		const dearer = (budget: Budget): Yard => {
			const yard = withBudget(wholeYard, budget);
			const { model } = fixtures.find(({ technique }) => technique === 'step')!;
			const price = fixtureModels.find(({ id }) => id === model)!.price;
			return { ...yard, power: { ...yard.power, prices: { [model]: price + 0.25 } } };
		};
		expect(planned(dearer(money(sum + 1))).fixtures.length).toBe(fixtures.length);
		expect(planned(dearer(money(sum + 0.74))).fixtures.length).toBe(fixtures.length - 1);
	});
	it('both: the tighter one rules', () => {
		const both = planned(withBudget(wholeYard, { kind: 'both', fixtures: 20, money: 900 }));
		expect(idsOf(both)).toEqual(idsOf(planned(withBudget(wholeYard, money(900)))));
		expect(said(both, 'placement.budget')[0]).toMatch(/^To keep to 20 lights and \$900, /);
	});
	it('no limit, not sure, not asked, a kind without its figure: the whole plan', () => {
		const whole = planned(wholeYard);
		const plain = (budget: Budget) => planned(withBudget(wholeYard, budget));
		for (const budget of [
			undefined,
			{},
			{ kind: 'none' as const, fixtures: 3 },
			{ kind: 'fixtures' as const, money: 5 }
		])
			expect(plain(budget)).toEqual(whole);
		const unsure = plain({ kind: 'unsure', fixtures: 3 });
		expect(unsure.fixtures).toEqual(whole.fixtures);
		expect(unsure.assumptions.map(({ path }) => path)).toContain('power.budget.kind');
		expect(idsOf(plain({ fixtures: 3 }))).toEqual(idsOf(plain(lights(3))));
	});
	it('a yard with a budget is a yard', () => {
		for (const budget of [
			lights(1),
			money(1.5),
			{ kind: 'both' as const, fixtures: 400, money: 100_000 },
			{ kind: 'unsure' as const }
		])
			expect(yardSchema.safeParse(withBudget(wholeYard, budget)).success).toBe(true);
		for (const budget of [lights(0), lights(2.5), money(0), money(Infinity)])
			expect(yardSchema.safeParse(withBudget(wholeYard, budget)).success).toBe(false);
	});
});
