import { describe, expect, test } from 'vitest';
import { rules } from '../../shared/rules';
import { exerciseIds, exerciseOf, markLayout, ownLayout } from './index';
import { hair, line, rowFor, stateFor, trade, withLight } from './exercise.testing';
import type { Exercise, Layout, LayoutLight } from './types';

const long = Boolean(process.env['LONG']);

describe('the engine’s own plan', () => {
	test.each(exerciseIds)('keeps every rule that applies: %s', (id) => {
		for (const units of ['metres', 'feet'] as const)
			for (let n = 0; n < (long ? 80 : 8); n += 1) {
				const exercise = exerciseOf(id, `own ${n}`, units);
				const { rows, problems, held, applies, labels } = markLayout(exercise, ownLayout(exercise));
				const broken = rows.filter(({ state }) => state === 'nearly' || state === 'not');
				expect(
					broken.map(({ rule, facts }) => [rule, ...facts]),
					`${id} ${units} ${n}`
				).toEqual([]);
				expect(problems).toEqual([]);
				expect(held).toBe(applies);
				expect(new Set(labels).size).toBe(exercise.own.fixtures.length);
			}
	});
});

const straight = exerciseOf('walk', 'hair', 'metres');
const full = exerciseOf('pool', 'hair', 'metres');

describe('on its limit a rule is held, and within a pencil’s line of it; a hair further it is not', () => {
	/** `by`: metres beyond the limit. */
	function expectLimit(rule: string, exercise: Exercise, layout: (by: number) => Layout): void {
		for (const by of [-hair, 0, line - hair])
			expect(stateFor(exercise, layout(by), rule), `${rule} ${by}`).toBe('held');
		for (const by of [line + hair, 2 * line]) {
			const row = rowFor(exercise, layout(by), rule);
			expect(row.state, `${rule} ${by}`).toBe('nearly');
			expect(row.hint).not.toBe('');
		}
	}
	const own = ownLayout(full);
	const ofKind = (exercise: Exercise, kind: LayoutLight['kind']) =>
		ownLayout(exercise).lights.filter((light) => light.kind === kind);
	const radiusOf = { path: 0.1, drive: 0.075 };
	const walk = straight.empty.site.strips[0]!;
	const door = walk.centre[0]!.x;
	const drive = full.empty.site.strips.find(({ kind }) => kind === 'drive')!;
	const driveRight = drive.centre[0]!.x + drive.width / 2;
	const driveLeft = drive.centre[0]!.x - drive.width / 2;
	const pool = full.empty.site.areas.find(({ kind }) => kind === 'water')!;
	const poolRight = Math.max(...pool.polygon.map(({ x }) => x));
	const [window] = full.empty.site.walls.flatMap(({ openings }) => openings.filter(({ kind }) => kind === 'window'));

	test('heads are as wide as the cases say', () => {
		const row = rowFor(straight, { lights: [{ kind: 'path', along: door + 1, out: 3 }], supply: null }, 'path.setback');
		expect(row.working?.inputs.find(({ symbol }) => symbol === 'r')?.value).toBeCloseTo(radiusOf.path, 6);
		const beside = { lights: [{ kind: 'drive' as const, along: driveRight + 0.4, out: 3 }], supply: null };
		expect(rowFor(full, beside, 'drive.setback').working?.inputs[1]?.value).toBeCloseTo(radiusOf.drive, 6);
	});
	test('path.setback, near', () =>
		expectLimit('path.setback', straight, (by) =>
			withLight(straight, 'path', 0, { along: door + walk.width / 2 + radiusOf.path + trade.path.low - by })
		));
	test('path.setback, far', () =>
		expectLimit('path.setback', straight, (by) =>
			withLight(straight, 'path', 0, { along: door + walk.width / 2 + radiusOf.path + trade.path.high + by })
		));
	test('path.spacing', () =>
		expectLimit('path.spacing', straight, (by) => ({
			lights: [
				{ kind: 'path', along: door + 0.9, out: 5 },
				{ kind: 'path', along: door + 0.9, out: 5 - (trade.path.apart - by) }
			],
			supply: null
		})));
	test('path.first', () => {
		// The walk's only first place is the entry, 0.5 m in from the street.
		const entry = walk.centre[0]!.y - 0.5;
		expectLimit('path.first', straight, (by) => ({
			lights: [{ kind: 'path', along: door + 0.9, out: entry - Math.sqrt((trade.path.serves + by) ** 2 - 0.81) }],
			supply: null
		}));
	});
	test('drive.setback', () =>
		expectLimit('drive.setback', full, (by) =>
			withLight(full, 'drive', 1, { along: driveRight + radiusOf.drive + trade.drive.clear - by })
		));
	test('drive.mouth, the corner that a car cuts', () => {
		const { street } = full.empty.site;
		// On the arc of one metre about the point one metre off the edge and one metre in: on its diagonal, the head just outside.
		const on = (by: number) => trade.drive.flare - (trade.drive.flare + by) / Math.SQRT2;
		const lights = (by: number): LayoutLight[] => [
			{ kind: 'drive', along: driveRight + on(by) + radiusOf.drive, out: street - on(by) - radiusOf.drive },
			{ kind: 'drive', along: driveLeft - on(by) - radiusOf.drive, out: street - on(by) - radiusOf.drive }
		];
		for (const by of [-hair, 0, line - hair])
			expect(stateFor(full, { lights: lights(by), supply: null }, 'drive.mouth')).toBe('held');
		expect(stateFor(full, { lights: lights(line + hair), supply: null }, 'drive.mouth')).toBe('not');
	});
	test('drive.mouth, a pair that matches', () => {
		const [left, right] = ofKind(full, 'drive');
		expectLimit('drive.mouth', full, (by) => ({
			lights: [left!, { ...right!, out: left!.out - trade.drive.matched - by }],
			supply: null
		}));
	});
	test('wall.setback, near and far', () => {
		expectLimit('wall.setback', full, (by) => withLight(full, 'wall', 0, { out: trade.wall.low - by }));
		expectLimit('wall.setback', full, (by) => withLight(full, 'wall', 0, { out: trade.wall.high + by }));
	});
	test('wall.openings', () =>
		expectLimit('wall.openings', full, (by) => ({
			lights: [{ kind: 'wall', along: window!.start - trade.wall.aside + by, out: 0.8 }],
			supply: null
		})));
	test('water.clear, a light and the transformer', () => {
		expectLimit('water.clear', full, (by) => ({
			lights: [{ kind: 'path', along: poolRight + trade.water + radiusOf.path - by, out: pool.centre.y }],
			supply: null
		}));
		expectLimit('water.clear', full, (by) => ({
			lights: [ofKind(full, 'drive')[0]!],
			supply: { along: poolRight + trade.water - by, out: pool.centre.y, height: 0.46, voltAmps: null }
		}));
	});
	test('tree.offset, in proportion to what the canopy asks for', () => {
		const [tree] = straight.empty.site.trees;
		// 150 mm at 3 m of canopy, 1.05 m at 7.5 m, in proportion; 0.9 to 1.2 m is the range round 1.05.
		const right = 0.15 + ((tree!.spread - 3) / 4.5) * 0.9;
		const at = (away: number): Layout => ({
			lights: [{ kind: 'tree', along: tree!.at.x + tree!.trunkDiameter / 2 + away, out: tree!.at.y }],
			supply: null
		});
		expectLimit('tree.offset', straight, (by) => at((right * 0.9) / 1.05 - by));
		expectLimit('tree.offset', straight, (by) => at((right * 1.2) / 1.05 + by));
	});
	test('place.clear, two lights and a spade', () =>
		expectLimit('place.clear', full, (by) => ({
			lights: [
				{ kind: 'drive', along: driveRight + 1, out: 5 },
				{ kind: 'drive', along: driveRight + 1, out: 5 - rules['place.clear'].figures.apart + by }
			],
			supply: null
		})));
	test('supply.height', () =>
		expectLimit('supply.height', full, (by) => ({
			...own,
			supply: { ...own.supply!, height: trade.height - by }
		})));
});

describe('a rule that is no matter of a hair', () => {
	const own = ownLayout(full);
	test('tree.count: one fewer is nearly, none is not', () => {
		const trees = own.lights.filter(({ kind }) => kind === 'tree').length;
		expect(trees).toBe(2);
		expect(stateFor(full, own, 'tree.count')).toBe('held');
		expect(stateFor(full, withLight(full, 'tree', 0, null), 'tree.count')).toBe('nearly');
		const none = { ...own, lights: own.lights.filter(({ kind }) => kind !== 'tree') };
		expect(stateFor(full, none, 'tree.count')).toBe('not');
	});
	test('path.level: a walk with one light is dark', () => {
		const one = { ...own, lights: own.lights.filter(({ kind }, index) => kind !== 'path' || index === 0) };
		const row = rowFor(full, one, 'path.level');
		expect(row.state).toBe('not');
		expect(row.facts[0]).toMatch(/gets \d\.\d lx on average; 5 lx is asked/);
	});
	test('wall.openings: nothing stands before a door', () => {
		const [walk] = full.empty.site.strips;
		const door = walk!.centre.at(-1)!.x;
		const row = rowFor(
			full,
			{ lights: [{ kind: 'path', along: door + 0.1, out: 0.4 }], supply: null },
			'wall.openings'
		);
		expect([row.state, row.facts[0]]).toEqual(['not', 'P1 stands in front of a door, underfoot.']);
	});
	test('supply.load: a transformer too small, and the next size', () => {
		// 80 % of 60 VA is 48 (NEC 210.19, seen second-hand): six more path lights of 3 VA each are too many.
		const more = Array.from({ length: 6 }, (_, i): LayoutLight => ({ kind: 'path', along: i + 1, out: 5.5 }));
		const of = (voltAmps: number) =>
			rowFor(full, { lights: [...own.lights, ...more], supply: { ...own.supply!, voltAmps } }, 'supply.load');
		expect(of(60).state).toBe('not');
		expect(of(150).state).toBe('held');
		expect(of(150).facts[0]).toContain('a 150 VA transformer may carry 120 VA');
	});
	test('a size that is not sold is said', () => {
		const { problems } = markLayout(full, { ...own, supply: { ...own.supply!, voltAmps: 77 } });
		expect(problems.join(' ')).toMatch(/60 VA/);
	});
	test('supply.receptacle: beyond its own cord', () => {
		const { receptacle } = full.empty.site;
		const at = (away: number) =>
			stateFor(
				full,
				{ ...own, supply: { along: receptacle!.at.x + away, out: 0, height: 0.46, voltAmps: null } },
				'supply.receptacle'
			);
		expect(at(trade.cord - 0.01)).toBe('held');
		expect(at(trade.cord + 0.1)).toBe('nearly');
		expect(at(trade.cord + 2)).toBe('not');
	});
	test('a transformer that nobody has placed is said, once a rule asks for it', () => {
		const row = rowFor(full, { ...own, supply: null }, 'supply.height');
		expect([row.state, row.facts[0]]).toEqual(['not', 'Nobody has said where the transformer hangs.']);
	});
});

describe('whatever a class writes', () => {
	const cases: [string, LayoutLight[], RegExp][] = [
		['off the yard', [{ kind: 'path', along: 400, out: 400 }], /outside your lot/],
		['on the house', [{ kind: 'tree', along: 5, out: -3 }], /stands in the house/],
		['in the pool', [{ kind: 'path', along: -5, out: 3.5 }], /is in the pool/],
		['no number', [{ kind: 'wall', along: NaN, out: 1 }], /could not be placed/],
		['beyond all reach', [{ kind: 'wall', along: 1e9, out: 1 }], /could not be placed/],
		[
			'two at one spot',
			[
				{ kind: 'path', along: 2, out: 5 },
				{ kind: 'path', along: 2, out: 5 }
			],
			/stand at one spot/
		]
	];
	test.each(cases)('%s is said', (_, lights, words) => {
		const { rows } = markLayout(full, { lights, supply: null });
		expect(rows.flatMap(({ facts }) => facts).join(' ')).toMatch(words);
	});
	test('a light for what is not there', () => {
		const { problems, labels } = markLayout(straight, { lights: [{ kind: 'drive', along: 1, out: 1 }], supply: null });
		expect(problems).toEqual(['Light 1 is for a drive, and this yard has none.']);
		expect(labels).toEqual([null]);
	});
	test('five hundred lights', () => {
		const lights = Array.from({ length: 500 }, (_, i): LayoutLight => ({
			kind: 'path',
			along: i / 20,
			out: (i % 9) + 1
		}));
		const { problems, labels } = markLayout(full, { lights, supply: null });
		expect(problems.join(' ')).toContain('500 lights. The first 60 are marked');
		expect(labels.filter((label) => label !== null)).toHaveLength(60);
	});
	test('nothing at all', () => {
		const { rows, held } = markLayout(full, { lights: [], supply: null });
		expect(held).toBe(0);
		expect(rows.every(({ facts }) => facts.length > 0)).toBe(true);
	});
});
