import { array, assert, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rules } from '../shared/rules';
import type { Point } from '../shared/geometry';
import { trenchPricePerMetre } from './costs';
import { drafted, enteredDraft, hubDraft, lay, treeDraft, weigh, type Draft, type Hanging } from './drafts';
import { demandOf } from './estimate';
import { layingOf, type Laying } from './laid';
import type { Routes } from './paths';
import { fixtureOf } from './random.testing';

const mountHeight = 0.5;
const connectorPrice = 3;
/** To the transformer: its height and the depth of the cable. */
const rise = mountHeight + rules['cable.depth'].figures.lawn;
const slack = 2 * rules['cable.slack'].figures.taken;

/** Open ground: every way is a straight line. The supply is at the origin; `apart`: two terminals without a way between them. */
function openGround(lamps: readonly Point[], model?: (k: number) => string, apart?: [number, number]): Laying {
	const at = [{ x: 0, y: 0 }, ...lamps];
	const size = at.length;
	const isApart = (a: number, b: number) => apart !== undefined && apart.includes(a) && apart.includes(b) && a !== b;
	const length = (a: number, b: number) =>
		isApart(a, b) ? Infinity : Math.hypot(at[a]!.x - at[b]!.x, at[a]!.y - at[b]!.y);
	const route: Routes['route'] = (a, b) =>
		isApart(a, b) ? null : { cost: length(a, b), length: length(a, b), path: [at[a]!, at[b]!], crossings: [] };
	const routes: Routes = {
		size,
		costs: Float64Array.from({ length: size * size }, (_, k) => length(Math.floor(k / size), k % size)),
		length,
		anyLength: length,
		anyRoute: route,
		route
	};
	const fixtures = lamps.map((p, k) => fixtureOf(`f-${k + 1}`, `P${k + 1}`, p, model?.(k)));
	return layingOf({ routes, fixtures, mountHeight, connectorPrice });
}
/** Three metres apart, the first four metres from the supply. */
const row = (lamps: number): Point[] => Array.from({ length: lamps }, (_, k) => ({ x: 0, y: 4 + 3 * k }));
const hanging = (pairs: [number, number[]][]): Hanging => new Map(pairs);
const chain = hanging([
	[0, [1]],
	[1, [2]],
	[2, [3]],
	[3, [4]]
]);

describe('drafts', () => {
	it('follow a tree level by level', () => {
		const fork = hanging([
			[0, [3, 1]],
			[1, [4]],
			[3, [2, 5]]
		]);
		expect(treeDraft('end', fork)).toEqual({ feed: 'end', terminals: [0, 3, 1, 2, 5, 4], from: [0, 0, 1, 1, 2] });
		expect(treeDraft('end', hanging([]))).toEqual({ feed: 'end', terminals: [0], from: [] });
	});
	it('enter a row at a lamp in its middle and go on to both sides', () => {
		const near = hanging([
			[1, [2]],
			[2, [1, 3]],
			[3, [2, 4]],
			[4, [3]]
		]);
		expect(enteredDraft(near, 2)).toEqual({ feed: 'middle', terminals: [0, 2, 1, 3, 4], from: [0, 1, 1, 3] });
		expect(enteredDraft(near, 4)).toEqual({ feed: 'middle', terminals: [0, 4, 3, 2, 1], from: [0, 1, 2, 3] });
	});
	it('give a hub a lead to each lamp, its own too; there is none where a lamp has no way to it', () => {
		const laying = openGround(row(3), undefined, [1, 3]);
		expect(hubDraft([1, 2, 3], 2, laying)).toEqual({ feed: 'hub', terminals: [0, 2, 1, 2, 3], from: [0, 1, 1, 1] });
		expect(hubDraft([1, 2, 3], 1, laying)).toBeNull();
	});
});

describe('what a draft comes to, worked out by hand', () => {
	const laying = openGround(row(4));
	const { voltAmps } = laying.fixtures[0]!.lamp;

	it('a row fed at its end', () => {
		const metres = [4 + slack + rise, 3 + slack, 3 + slack, 3 + slack];
		// The first length carries four lamps, the last one.
		const worst = metres.reduce((sum, one, k) => sum + one * (4 - k) * voltAmps, 0);
		const weight = weigh(treeDraft('end', chain), laying);
		expect(weight.metres).toBeCloseTo(metres.reduce((a, b) => a + b), 9); // prettier-ignore
		expect(weight.laying).toBeCloseTo(13 * trenchPricePerMetre, 9);
		expect(weight.worst).toBeCloseTo(worst, 9);
		expect(weight.unevenness).toBe(0);
	});
	it('a hub beside the second lamp: no trench to that one, a pair of connectors for each cable beyond two', () => {
		const weight = weigh(hubDraft([1, 2, 3, 4], 2, laying)!, laying);
		const lead = 7 + slack + rise;
		expect(weight.metres).toBeCloseTo(lead + (3 + 0 + 3 + 6) + 4 * slack, 9);
		// Five cables meet: two go straight through.
		expect(weight.laying).toBeCloseTo((7 + 3 + 3 + 6) * trenchPricePerMetre + 3 * 2 * connectorPrice, 9);
		expect(weight.worst).toBeCloseTo(lead * 4 * voltAmps + (6 + slack) * voltAmps, 9);
	});
	it('lays out what it weighed', () => {
		const draft = hubDraft([1, 2, 3, 4], 2, laying)!;
		const { nodes, segments, shape } = lay(drafted('run-1', draft, laying), laying);
		expect(nodes.map(({ terminal, bare }) => (bare ? 'hub' : terminal))).toEqual([0, 'hub', 1, 2, 3, 4]);
		expect(segments.map(({ route }) => route.length)).toEqual([7, 3, 0, 3, 6]);
		expect(segments[2]!.route.path).toHaveLength(2);
		expect(segments.map(({ length }) => length)).toEqual(shape.segments.map(({ metres }) => metres));
		expect(shape.loads.map(({ id, node }) => [id, node])).toEqual([
			['f-1', 2],
			['f-2', 3],
			['f-3', 4],
			['f-4', 5]
		]);
	});
	it('knows how unevenly filament lamps are fed', () => {
		const mixed = openGround(row(2), () => 'path-halogen-10w-warm');
		const draft = treeDraft(
			'end',
			hanging([
				[0, [1]],
				[1, [2]]
			])
		);
		const { watts, kind } = mixed.fixtures[0]!.lamp;
		expect(kind).toBe('halogen');
		expect(weigh(draft, mixed).unevenness).toBeCloseTo((3 + slack) * watts, 9);
	});
});

/** The moment of each lamp the long way round: for each length on its way, the metres times all lamps whose way it is on too. */
function moments({ feed, terminals, from }: Draft, metres: readonly number[], laying: Laying): number[] {
	const wayTo = (place: number): number[] => (place === 0 ? [] : [...wayTo(from[place - 1]!), place]);
	const lamps = terminals.map((_, place) => place).slice(feed === 'hub' ? 2 : 1);
	const asks = (place: number) => laying.fixtures[terminals[place]! - 1]!.lamp.voltAmps;
	const carried = (place: number) =>
		lamps.filter((lamp) => wayTo(lamp).includes(place)).reduce((sum, lamp) => sum + asks(lamp), 0);
	return lamps.map((lamp) => wayTo(lamp).reduce((sum, place) => sum + metres[place - 1]! * carried(place), 0));
}

it('figures are those of the laid way, and of every way traced by itself, on random trees', () => {
	const lamp = property(
		array(integer({ min: 0, max: 999 }), { minLength: 2, maxLength: 24 }),
		integer({ min: 0, max: 2 }),
		(rolls, which) => {
			const models = ['path-led-2.5w-2700', 'spot-led-7w-36-2700'];
			const lamps = rolls.map((roll, k) => ({ x: (roll % 37) - 18, y: 3 + ((roll * 7 + k) % 29) }));
			const laying = openGround(lamps, (k) => models[rolls[k]! % 2]!);
			const after = new Map<number, number[]>();
			const join = (a: number, b: number) => after.set(a, [...(after.get(a) ?? []), b]);
			// A single way from the supply, so that the same tree may be entered elsewhere.
			rolls.forEach((roll, k) => join(k === 0 ? 0 : 1 + (roll % k), k + 1));
			const near = new Map<number, number[]>();
			for (const [a, list] of after)
				for (const b of list) if (a > 0) near.set(a, [...(near.get(a) ?? []), b]).set(b, [...(near.get(b) ?? []), a]);
			const members = lamps.map((_, k) => k + 1);
			const beside = 1 + (rolls[0]! % lamps.length);
			const draft = [treeDraft('end', after), enteredDraft(near, beside), hubDraft(members, beside, laying)!][which]!;
			const weight = weigh(draft, laying);
			const way = drafted('run-1', draft, laying);
			const metres = way.shape.segments.map((one) => one.metres);
			expect(way.shape.loads.map(({ id }) => id).toSorted()).toEqual(laying.fixtures.map(({ id }) => id).toSorted());
			expect(weight.laying).toBe(way.shape.laying);
			const demand = demandOf(way.shape);
			expect(weight).toMatchObject({ metres: demand.metres, worst: demand.worst, unevenness: 0 });
			expect(weight.worst).toBeCloseTo(Math.max(...moments(draft, metres, laying)), 6);
		}
	);
	assert(lamp, { numRuns: process.env.LONG ? 1000 : 100 });
});
