import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import { nearestOnLine } from '../shared/geometry';
import { planLight } from '../light';
import { makeSite } from '../site';
import { blankYard, type Yard, type YardWalk } from '../yard';
import { evaluate } from '../shared/evaluate';
import { courseOf, edgeOf } from './course';
import { placeFixtures, type Fixture } from './index';
import { groundLux, rowAverage, wantsOneMore } from './walk-light';

const soft = fixtureModels.find(({ body, lamp }) => body === 'path' && lamp.lumens === 150)!;
const yardOf = (walk: Partial<YardWalk>, surroundings: 'rural' | 'suburb' | 'town' = 'suburb'): Yard => ({
	...blankYard(),
	place: { surroundings },
	house: { sections: [{ id: 'front', width: 12, light: 'none' }], openings: [], porches: [] },
	lot: { street: 40, left: 30, right: 30 },
	walks: [
		{
			id: 'walk',
			name: 'walk',
			width: 1.2,
			lights: 'left',
			line: [
				{ along: 6, out: 40 },
				{ along: 6, out: 0 }
			],
			...walk
		}
	]
});
const plan = (yard: Yard) => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { site, fixtures, walk: fixtures.filter(({ technique }) => technique === 'path') };
};
const reasonOf = ({ reasons }: Fixture, rule: string) => reasons.find((reason) => reason.rule === rule);

describe('the light of a row on its walk, by hand', () => {
	// 150 lm × 0.81, 120° beam, shade at 80°: I0 = 121.5 ÷ (π (1 − cos² 80°)) = 39.877 cd and E = I0 · h² ÷ (h² + a²)², h = 0.5 m.
	const i0 = 121.5 / (Math.PI * (1 - Math.cos((80 * Math.PI) / 180) ** 2));
	const byHand = (square: number): number =>
		square > (0.5 * Math.tan((80 * Math.PI) / 180)) ** 2 ? 0 : (i0 * 0.25) / (0.25 + square) ** 2;

	it('one head on the ground, and nothing beyond the rim of its shade', () => {
		const lux = groundLux(soft);
		expect(lux({ x: 0, y: 0 }, { x: 0, y: 0 })).toBeCloseTo(39.877 / 0.25, 1);
		for (const [x, y] of [
			[0.9, 1.5],
			[-0.4, 2],
			[2, 2]
		] as const)
			expect(lux({ x: 0, y: 0 }, { x, y })).toBeCloseTo(byHand(x * x + y * y), 9);
		expect(lux({ x: 0, y: 0 }, { x: 2.84, y: 0 })).toBe(0);
	});
	it('the average along a long row, summed point by point over lamps and places', () => {
		const [width, out, apart] = [1.2, 0.3, 3.1];
		let sum = 0;
		const places = 2000;
		for (const lane of [-0.4, 0, 0.4])
			for (let k = 0; k < places; k++)
				for (let lamp = -3; lamp <= 3; lamp++)
					sum += byHand((width / 2 + out - lane) ** 2 + ((apart * (k + 0.5)) / places - lamp * apart) ** 2);
		expect(rowAverage(soft, { width }, out, apart)).toBeCloseTo(sum / places / 3, 1);
	});
});

describe('which head', () => {
	it('the weakest that gives the walk its 5 lx; a wide walk, and one in a town, take the stronger', () => {
		const lumens = (yard: Yard) => new Set(plan(yard).walk.map(({ lamp }) => lamp.lumens));
		expect(lumens(yardOf({}))).toEqual(new Set([150]));
		expect(lumens(yardOf({ width: 2.6 }))).toEqual(new Set([220]));
		expect(lumens(yardOf({}, 'town'))).toEqual(new Set([220]));
		// Lights along both edges give twice as much.
		expect(lumens(yardOf({ lights: 'both' }, 'town'))).toEqual(new Set([150]));
	});
	it('what it says is what the light stage counts along the middle of a long row', () => {
		const { site, fixtures, walk } = plan(yardOf({}));
		const [, , third] = walk;
		const said = reasonOf(third!, 'path.head')!.value!;
		const { receivers } = planLight(site, fixtures, { runs: [] });
		const found = receivers.find(({ kind }) => kind === 'walk')!;
		// The ends of the walk have a light on one side only.
		expect(said / found.average).toBeGreaterThan(0.97);
		expect(said / found.average).toBeLessThan(1.06);
	});
});

describe('midway between two', () => {
	it('each light says what is left, and its working comes to it', () => {
		const { walk } = plan(yardOf({}));
		const sorted = walk.toSorted((a, b) => b.at.y - a.at.y);
		for (const [i, light] of sorted.entries()) {
			const reason = reasonOf(light, 'path.meet');
			const next = sorted[i + 1];
			if (!next) expect(reason).toBeUndefined();
			else {
				const half = (light.at.y - next.at.y) / 2;
				const two = (2 * 39.877 * 0.25) / (0.25 + 0.81 + half ** 2) ** 2;
				expect(reason!.value).toBeCloseTo(two, 2);
				const { expression, inputs, value } = reason!.working!;
				const values = Object.fromEntries(inputs.map(({ symbol, value }) => [symbol, value]));
				expect(evaluate(expression, values)).toBeCloseTo(value, 9);
			}
		}
	});
	it('a gap too wide says that the pools do not meet; over steps nothing is said', () => {
		// From 0.5 m in to a bend 5.3 m on: less than two spacings, so one edge has no room for a light between.
		const line = [
			{ along: 6, out: 40 },
			{ along: 6, out: 34.2 },
			{ along: 12, out: 30 }
		];
		const [first] = plan(yardOf({ line })).walk.toSorted((a, b) => b.at.y - a.at.y);
		expect(reasonOf(first!, 'path.meet')!.because).toContain('the pools do not meet');
		const steps = [{ id: 'flight', at: 3, treads: 4, going: 0.3 }];
		const { walk } = plan(yardOf({ steps }));
		const foot = walk.find(({ at }) => Math.abs(at.y - 37.3) < 0.1);
		expect(foot).toBeDefined();
		expect(reasonOf(foot!, 'path.meet')).toBeUndefined();
	});
	it('from side to side a dark gap takes one more, where neighbours stay two thirds of the spacing apart', () => {
		const site = { site: makeSite(blankYard()) };
		const gap = (to: number, surroundings: 'rural' | 'suburb') =>
			wantsOneMore({ site: { ...site.site, surroundings } }, soft, { width: 1.2 }, 0.3, {
				from: 0,
				to,
				open: false,
				spacing: 3
			});
		// Half of 4.2 m: 2 × 39.877 × 0.25 ÷ (0.25 + 0.81 + 4.41)² = 0.667 lx.
		expect(gap(4.2, 'suburb')).toBe(true);
		expect(gap(4.2, 'rural')).toBe(false);
		// 3.8 m halved is under 2 m, and leaves 0.888 lx.
		expect(gap(3.8, 'suburb')).toBe(false);
	});
	it('on a plan: 4.2 m between the entry and a bend', () => {
		const line = [
			{ along: 6, out: 40 },
			{ along: 6, out: 35.3 },
			{ along: 14, out: 30 }
		];
		const count = (surroundings: 'rural' | 'suburb') => {
			const { site, walk } = plan(yardOf({ line, lights: 'either' }, surroundings));
			return walk.filter(({ at }) => nearestOnLine(at, site.strips[0]!.centre)!.at < 4.5).length;
		};
		expect(count('rural')).toBe(1);
		expect(count('suburb')).toBe(2);
	});
});

it('the inner edge of a bend is as long as its two straights to where they meet', () => {
	// Right-angled: the edges 0.9 m inside meet 0.9 m short of the corner on either leg.
	const { site } = plan(
		yardOf({
			line: [
				{ along: 0, out: 20 },
				{ along: 0, out: 10 },
				{ along: 8, out: 10 }
			]
		})
	);
	const course = courseOf(site.strips[0]!);
	const inner = edgeOf(course, 'right', 0.3);
	const outer = edgeOf(course, 'left', 0.3);
	const [short, long] = inner.length < outer.length ? [inner, outer] : [outer, inner];
	expect(short.length).toBeCloseTo(10 - 0.9 + (8 - 0.9), 2);
	expect(long.length).toBeGreaterThan(18);
	for (const at of [0, 3, 9.5, 10, 10.4, 12, 18])
		expect(short.along(at)).toBeLessThanOrEqual(short.along(at + 0.2) + 1e-9);
});
