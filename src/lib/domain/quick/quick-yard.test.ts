import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { distanceToPolygon, hypot, type Point } from '../shared/geometry';
import { makePlan } from '../plan';
import { placeFixtures, type Fixture } from '../placement';
import { makeSite, type Site } from '../site';
import { yardSchema, type Yard } from '../yard';
import { coarseGrid, randomAnswers } from './answers.testing';
import { held } from './held';
import { picks, quickYard, usualAnswers, type Offer, type QuickAnswers } from '.';

const long = process.env.LONG !== undefined;
const noTrees = { small: 0, medium: 0, large: 0 };
interface Laid {
	yard: Yard;
	site: Site;
	fixtures: Fixture[];
	words: string;
}
/** As far as the lights: the cable is not needed to see what is lit. */
function laid(answers: QuickAnswers): Laid {
	const { yard, assumptions } = quickYard(answers);
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { yard, site, fixtures, words: assumptions.map(({ words }) => words).join('\n') };
}
const lights = (fixtures: readonly Fixture[], kind: Fixture['target']['kind'], id?: string): number =>
	fixtures.filter(({ target, also = [] }) =>
		[target, ...also].some((one) => one.kind === kind && (id === undefined || one.id === id))
	).length;
const told = (answers: QuickAnswers): string => JSON.stringify(answers);

/** Metres along the ground from the receptacle to the nearest light: straight, from the left side round the corner of the house. */
function wayToFirst({ yard, fixtures }: Pick<Laid, 'yard' | 'fixtures'>): number {
	const { receptacle } = yard.power;
	if (typeof receptacle !== 'object') throw new Error('no receptacle');
	const { along, out } = receptacle;
	const isAtSide = along === 0 && out < 0;
	const way = ({ x, y }: Point): number => (isAtSide && x > 0 ? -out + hypot(x, y) : hypot(x - along, y - out));
	return Math.min(...fixtures.map(({ at }) => way(at)));
}

describe('any answers give a yard', () => {
	test('every pick on a coarse grid: valid, nothing impossible in it', () => {
		const grid = coarseGrid();
		expect(grid.length).toBe(480);
		for (const answers of grid) {
			const { yard } = quickYard(answers);
			expect(z.safeParse(yardSchema, yard).success, told(answers)).toBe(true);
			expect(makeSite(yard).findings, told(answers)).toEqual([]);
		}
	});
	test('seeded answers, and what no page offers: valid, the same bytes again', () => {
		const many = long ? 20_000 : 2_000;
		for (let seed = 1; seed <= many; seed++) {
			const answers = randomAnswers(seed, true);
			const made = quickYard(answers);
			const parsed = z.safeParse(yardSchema, made.yard);
			expect(parsed.success, `seed ${seed}: ${parsed.error?.message}`).toBe(true);
			if (seed % 20 === 0) expect(JSON.stringify(quickYard(structuredClone(answers)))).toBe(JSON.stringify(made));
		}
	}, 3_600_000);
	test('seeded answers give a plan: all lights reached, no strange number, none in water or too near to it', () => {
		const many = long ? 1_000 : 40;
		for (let seed = 1; seed <= many; seed++) {
			const { yard } = quickYard(randomAnswers(seed, true));
			const plan = makePlan(yard);
			JSON.stringify(plan, (key, value: unknown) => {
				if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`seed ${seed}: ${key} is ${value}`);
				return value;
			});
			const fed = new Set(plan.runs.flatMap(({ nodes }) => nodes.map(({ fixture }) => fixture)));
			expect(
				plan.fixtures.filter(({ id }) => !fed.has(id)).map(({ id }) => id),
				`seed ${seed}`
			).toEqual([]);
			// 10 ft: NEC 680.22(B) (from memory) keeps fixtures so far from the inside walls of a pool, rule water.clear.
			const water = plan.site.areas.filter(({ kind }) => kind === 'water');
			for (const { polygon } of water)
				for (const { at, id } of plan.fixtures)
					expect(distanceToPolygon(at, polygon), `seed ${seed} ${id}`).toBeGreaterThan(3.048);
		}
	}, 3_600_000);
});

describe('what was asked for is lit', () => {
	test('walk, wall and drive are as long as asked, and each tree, walk, wall and drive has its lights', () => {
		const grid = coarseGrid().filter((_, k) => long || k % 4 === 1 || k % 7 === 0);
		for (const answers of grid) {
			const { site, fixtures } = laid(answers);
			const walk = site.strips.find(({ id }) => id === 'front-walk');
			const lit = site.walls.filter(({ light }) => light !== 'none');
			const marked = site.strips.filter(({ kind, lights: which }) => kind === 'drive' && which !== 'none');
			const sum = (list: readonly { length: number }[]): number => list.reduce((total, one) => total + one.length, 0);
			expect(walk?.length ?? 0, told(answers)).toBeCloseTo(answers.walk, 5);
			expect(sum(lit), told(answers)).toBeCloseTo(answers.wall, 5);
			expect(sum(marked), told(answers)).toBeCloseTo(answers.drive, 5);
			expect(lights(fixtures, 'wall') > 0, told(answers)).toBe(answers.wall > 0);
			expect(lights(fixtures, 'drive') > 0, told(answers)).toBe(answers.drive > 0);
			const { small, medium, large } = answers.trees;
			expect(site.trees.length).toBe(small + medium + large);
			for (const { id } of site.trees)
				expect(lights(fixtures, 'tree', id), `${id} ${told(answers)}`).toBeGreaterThan(0);
			// A short walk may lie in the light of the street lamp, or have its light from the drive that it leaves.
			const servedByOthers = answers.walk <= 5 && (answers.clear.includes('street-lamp') || answers.drive > 0);
			if (!servedByOthers) expect(lights(fixtures, 'walk') > 0, told(answers)).toBe(answers.walk > 0);
		}
	}, 600_000);
	test.each(['feet', 'metres'] as const)(
		'usual answers in %s: a plan without a stop, a light each 3 m or so',
		(units) => {
			const plan = makePlan(quickYard(usualAnswers(units)).yard);
			expect(plan.findings.filter(({ rank }) => rank === 'stop')).toEqual([]);
			// Common practice, no source: about 10 ft from light to light along a walk.
			expect(plan.fixtures.length).toBe(3);
			expect(plan.runs.length).toBe(1);
		}
	);
	test.each(['straight', 'bent', 'corner', 'deep'] as const)('%s, with something of everything: no stop', (shape) => {
		const answers = {
			...usualAnswers('feet'),
			shape,
			wall: 6.096,
			drive: 12.192,
			trees: { small: 1, medium: 1, large: 1 }
		};
		const plan = makePlan(quickYard(answers).yard);
		expect(plan.findings.filter(({ rank }) => rank === 'stop')).toEqual([]);
		expect(plan.missing.map(({ path }) => path)).not.toContain('walks');
	});
});

describe('from the receptacle to the first light', () => {
	test('is within 1.5 m of the answer, or the assumption says how far it is', () => {
		const grid = coarseGrid().filter(
			({ walk, drive, wall, trees }, k) => walk + drive + wall + trees.small > 0 && (long || k % 4 === 2)
		);
		const far = grid.flatMap((answers, k) => {
			const receptacle = [1.5, 3, 6, 9, 15, 25][k % 6]!;
			const made = laid({ ...answers, receptacle });
			const off = Math.abs(wayToFirst(made) - receptacle);
			return off > 1.5 && !made.words.includes('You said') ? [`${off} ${told({ ...answers, receptacle })}`] : [];
		});
		expect(far).toEqual([]);
	}, 600_000);
	test.each([3, 6, 9, 15, 25])('a walk, %d m: so much cable to its first light, within 1.5 m', (receptacle) => {
		const plan = makePlan(quickYard({ ...usualAnswers('metres'), receptacle }).yard);
		const [run] = plan.runs;
		const first = run!.segments.find(({ from }) => from === run!.nodes[0]!.id)!;
		expect(Math.abs(first.length - receptacle)).toBeLessThan(1.5);
	});
	test('the place takes the side of the house for far ones, so the house is deep enough', () => {
		const { yard } = quickYard({ ...usualAnswers('metres'), receptacle: 25 });
		const { receptacle } = yard.power;
		expect(receptacle).toMatchObject({ along: 0 });
		expect(-(receptacle as { out: number }).out).toBeLessThan(yard.house.depth as number);
	});
});

describe('what is kept clear of', () => {
	const all = { ...usualAnswers('metres'), wall: 6, trees: { small: 1, medium: 1, large: 0 } };
	test('cable has to cross the drive: it does, where the crossing was told', () => {
		for (const shape of ['straight', 'bent', 'corner', 'deep'] as const) {
			const { yard } = quickYard({ ...all, shape, clear: ['drive-crossing'] });
			const plan = makePlan(yard);
			const crossed = plan.runs.flatMap(({ segments }) => segments.flatMap(({ crossings }) => crossings));
			expect(
				crossed.filter(({ crossing }) => crossing === 'bore').map(({ strip }) => strip),
				shape
			).toContain(yard.drives!.find(({ crossings }) => crossings!.length > 0)!.id);
			expect(plan.findings.map(({ code }) => code)).not.toContain('cable.crossing-unused');
		}
	});
	test('a street lamp at the start of the walk saves its first light', () => {
		const without = laid(all);
		const under = laid({ ...all, clear: ['street-lamp'] });
		expect(lights(under.fixtures, 'walk')).toBeLessThan(lights(without.fixtures, 'walk'));
	});
	test('a neighbour close by: the boundary is nearer, and no tree stands towards it', () => {
		const usual = laid({ ...all, trees: { small: 6, medium: 0, large: 0 } });
		const close = laid({ ...all, trees: { small: 6, medium: 0, large: 0 }, clear: ['neighbour'] });
		expect(close.site.rightBoundary).toBeLessThan(usual.site.rightBoundary);
		for (const { at } of close.site.trees) expect(at.x).toBeLessThan(close.site.rightBoundary - 1);
	});
});

test('every made-up thing has a sentence, and a path that leads to an answer', () => {
	for (const answers of coarseGrid().filter((_, k) => k % 9 === 0)) {
		const { yard, assumptions } = quickYard(answers);
		const paths = assumptions.map(({ path }) => path);
		for (const { path, words } of assumptions) {
			expect(words).toMatch(/^[A-Z].*\.$/);
			expect(words).not.toMatch(/NaN|undefined|null|Infinity| {2}/);
			expect(reaches(yard, path), path).toBe(true);
		}
		for (const list of ['trees', 'drives', 'walks'] as const)
			for (const { id } of yard[list] ?? [])
				expect(
					paths.some((path) => path.startsWith(`${list}.${id}`)),
					id
				).toBe(true);
		expect(paths).toContain('place.location');
		expect(paths).toContain('power.receptacle');
	}
});
/** Whether a path names something in the yard, items of lists by their ids; answers that were left open count by where they would be. */
function reaches(yard: Yard, path: string): boolean {
	if (['place.location', 'place.faces'].includes(path)) return true;
	let here: unknown = yard;
	for (const key of path.split('.')) {
		const next: unknown = Array.isArray(here)
			? here.find((one: unknown) => typeof one === 'object' && one !== null && 'id' in one && one.id === key)
			: typeof here === 'object' && here !== null
				? Object.entries(here).find(([name]) => name === key)?.[1]
				: undefined;
		if (next === undefined) return false;
		here = next;
	}
	return true;
}

test('what the customer has goes into the yard; the lamp wished for too', () => {
	const { yard } = quickYard({
		...usualAnswers('feet'),
		transformer: 150,
		cable: { size: 12, metres: 30.48 },
		lamp: 'halogen'
	});
	expect(yard.power.owned).toEqual({ transformerVoltAmps: 150, cableSize: 12, cableLength: 30.48 });
	expect(yard.power.lamp).toBe('halogen');
	expect(yard.power.cable).toBe('awg');
	expect(quickYard(usualAnswers('metres')).yard.power).toMatchObject({ owned: {}, lamp: 'led', cable: 'mm2' });
});
test('the most trees that answers may hold find room, no two in one place', () => {
	const trees = { small: 8, medium: 8, large: 8 };
	for (const shape of ['straight', 'corner', 'deep'] as const)
		for (const walk of [0, 1, 9, 120]) {
			const answers: QuickAnswers = { ...usualAnswers('feet'), trees, shape, walk, clear: ['pool', 'neighbour'] };
			const { yard } = quickYard(answers);
			expect(z.safeParse(yardSchema, yard).success, told(answers)).toBe(true);
			expect(makeSite(yard).findings, told(answers)).toEqual([]);
		}
});
test('answers out of range are brought into it', () => {
	const odd = { ...usualAnswers('metres'), walk: Number.NaN, drive: 1e9, wall: -2, receptacle: 0, transformer: 5 };
	const { walk, drive, wall, receptacle, transformer } = held(odd);
	expect([walk, drive, wall, receptacle, transformer]).toEqual([0, 120, 0, 0.5, null]);
	expect(held({ ...odd, trees: { small: 2.4, medium: -1, large: 99 } }).trees).toEqual({
		small: 2,
		medium: 0,
		large: 8
	});
});

describe('sizes against what is published (from memory: looked up in no copy here)', () => {
	const inch = 0.0254;
	const sizesIn = (units: QuickAnswers['units']) => {
		const { yard } = quickYard({ ...usualAnswers(units), drive: 12, wall: 6, trees: noTrees });
		return {
			door: yard.house.openings!.find(({ kind }) => kind === 'door')!.width,
			walk: yard.walks![0]!.width as number,
			drive: yard.drives![0]!.width as number,
			eaves: yard.house.eaves as number
		};
	};
	test.each(['feet', 'metres'] as const)('in %s', (units) => {
		const { door, walk, drive, eaves } = sizesIn(units);
		// IRC R311.2: 32 in clear at the egress door, for which a leaf of 36 in is usual.
		expect(door).toBeGreaterThan(32 * inch);
		expect(Math.abs(door - 36 * inch)).toBeLessThan(0.02);
		// 2010 ADA Standards 403.5.1: 36 in clear for a way to walk; 60 in lets two pass.
		expect(walk).toBeGreaterThanOrEqual(36 * inch);
		expect(walk).toBeLessThanOrEqual(60 * inch);
		// A car is up to about 2 m wide without mirrors; parking stalls are commonly 8 to 9 ft. A drive of one car: 9 to 12 ft.
		expect(drive).toBeGreaterThanOrEqual(9 * 12 * inch);
		expect(drive).toBeLessThanOrEqual(12 * 12 * inch);
		// IRC R305.1: ceilings of 7 ft at the least; eaves of one storey lie a little above.
		expect(eaves).toBeGreaterThan(7 * 12 * inch);
		expect(eaves).toBeLessThan(10 * 12 * inch);
	});
	test('in feet they are round: a walk of 4 ft, a door of 3 ft, a drive of 10 ft, eaves of 9 ft', () => {
		const { door, walk, drive, eaves } = sizesIn('feet');
		expect([door, walk, drive, eaves].map((metres) => metres / 0.3048)).toEqual(
			[3, 4, 10, 9].map((feet) => expect.closeTo(feet, 5) as number)
		);
	});
});

test('picks: round lengths in the person’s units, kept in metres; each has a word and is offered once', () => {
	for (const units of ['feet', 'metres'] as const) {
		const offered = picks(units);
		for (const [question, list] of Object.entries<Offer<number | string>[]>({ ...offered })) {
			expect(new Set(list.map(({ label }) => label)).size, question).toBe(list.length);
			expect(new Set(list.map(({ value }) => value)).size, question).toBe(list.length);
		}
		const usual = usualAnswers(units);
		expect(offered.walk.map(({ value }) => value)).toContain(usual.walk);
		expect(offered.receptacle.map(({ value }) => value)).toContain(usual.receptacle);
	}
	// The international foot is 0.3048 m exactly (1959 yard and pound agreement).
	expect(picks('feet').walk.find(({ label }) => label === '30 ft')!.value).toBeCloseTo(9.144, 12);
	expect(picks('metres').walk.find(({ label }) => label === '9 m')!.value).toBe(9);
});
