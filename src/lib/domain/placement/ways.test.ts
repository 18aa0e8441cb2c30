import { describe, expect, it } from 'vitest';
import { distance, distanceToPolygon } from '../shared/geometry';
import { fixtureModels } from '../shared/catalogue';
import { makeSite } from '../site';
import { blankYard, type Yard, type YardDrive, type YardWalk } from '../yard';
import { inSweep } from './drive-spots';
import { fill, firstsOf } from './firsts';
import { stepLamps, treadLux } from './steps';
import { placeFixtures } from './index';
import published from './placement.published.json';

const yardOf = (more: { walk?: Partial<YardWalk>; drive?: Partial<YardDrive>; spots?: Yard['spots'] }): Yard => ({
	...blankYard(),
	house: { sections: [{ id: 'front', width: 12, light: 'none' }], openings: [], porches: [] },
	lot: { street: 30, left: 30, right: 30 },
	trees: [],
	walks: more.walk
		? [
				{
					id: 'walk',
					name: 'walk',
					width: 1.2,
					lights: 'left',
					line: [
						{ along: 6, out: 30 },
						{ along: 6, out: 0 }
					],
					...more.walk
				}
			]
		: [],
	drives: more.drive
		? [
				{
					id: 'drive',
					name: 'drive',
					width: 3,
					lights: 'mouth',
					line: [
						{ along: 16, out: 30 },
						{ along: 16, out: 0 }
					],
					...more.drive
				}
			]
		: [],
	spots: more.spots ?? {}
});
const plan = (yard: Yard) => {
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};

describe('along a straight walk', () => {
	it.each(['left', 'right', 'both'] as const)(
		'%s: 3 m apart along an edge and not closer, 150 to 300 mm off it',
		(lights) => {
			const { site, fixtures } = plan(yardOf({ walk: { lights } }));
			for (const side of [-1, 1]) {
				const row = fixtures.filter((f) => (f.at.x - 6) * side > 0).sort((a, b) => b.at.y - a.at.y);
				if (lights !== 'both' && (lights === 'left') !== (side === -1)) expect(row).toEqual([]);
				else expect(row.length).toBeGreaterThanOrEqual(9);
				for (let i = 1; i < row.length; i++) {
					expect(distance(row[i]!.at, row[i - 1]!.at)).toBeGreaterThanOrEqual(published.pathSpacing.metres - 1e-9);
					expect(distance(row[i]!.at, row[i - 1]!.at)).toBeLessThan(published.pathSpacing.metres * 1.2);
				}
			}
			const { low, high } = published.pathSetback;
			for (const f of fixtures) {
				const clear = distanceToPolygon(f.at, site.strips[0]!.polygon) - 0.1;
				expect(clear).toBeGreaterThanOrEqual(low - 1e-9);
				expect(clear).toBeLessThanOrEqual(high + 1e-9);
			}
		}
	);
	it('either: from side to side', () => {
		const { fixtures } = plan(yardOf({ walk: { lights: 'either' } }));
		const sides = fixtures.map((f) => Math.sign(f.at.x - 6));
		expect(sides.slice(1).every((side, i) => side === -sides[i]!)).toBe(true);
	});
	it('either, with a rail on one side: the other side', () => {
		const { fixtures } = plan(yardOf({ walk: { lights: 'either', rail: 'left' } }));
		expect(fixtures.length).toBeGreaterThan(5);
		expect(fixtures.every((f) => f.at.x > 6)).toBe(true);
	});
	it('an existing light is counted, not doubled', () => {
		const lamp = {
			id: 'lamp',
			name: 'street lamp',
			kind: 'street-lamp' as const,
			at: { along: 8, out: 30 },
			height: 5,
			reach: 10
		};
		const { fixtures, findings } = plan(yardOf({ walk: {}, spots: { lights: [lamp] } }));
		expect(fixtures.some((f) => distance(f.at, { x: 8, y: 30 }) < 9)).toBe(false);
		expect(fixtures.length).toBeGreaterThan(3);
		const note = findings.find((f) => f.code === 'placement.existing')!;
		expect(note.rank).toBe('note');
		expect(note.message).toContain('street lamp');
	});
});

describe('where a light comes first', () => {
	it('entry, bends, head and foot of steps', () => {
		const line = [
			{ along: 2, out: 30 },
			{ along: 2, out: 18 },
			{ along: 10, out: 10 },
			{ along: 10, out: 0 }
		];
		const yard = yardOf({ walk: { line, lights: 'either', steps: [{ id: 'flight', at: 4, treads: 10, going: 0.3 }] } });
		const { site, fixtures } = plan(yard);
		const strip = site.strips[0]!;
		expect(firstsOf(strip, 3).map((s) => s.first)).toEqual(['entry', 'foot', 'head', 'bend', 'bend']);
		for (const corner of [line[1]!, line[2]!])
			expect(
				fixtures.some((f) => f.technique === 'path' && distance(f.at, { x: corner.along, y: corner.out }) < 1.3)
			).toBe(true);
		expect(fixtures.filter((f) => f.technique === 'step').length).toBeGreaterThanOrEqual(2);
	});
	it('fills evenly, never closer than asked, half a step at an open end', () => {
		expect(fill(0, 12, 3, false)).toEqual([3, 6, 9]);
		expect(fill(0, 5.9, 3, false)).toEqual([]);
		expect(fill(0, 7.5, 3, true)).toEqual([3, 6]);
		expect(fill(5, 5, 3, true)).toEqual([]);
	});
});

describe('steps', () => {
	const model = fixtureModels.find((m) => m.body === 'step')!;
	it('every tread gets 11 lx in its middle on an ordinary flight', () => {
		for (const treads of [1, 3, 5, 12]) {
			const flight = { treads, going: 0.3, width: 1.2 };
			const { lamps, least } = stepLamps(flight, model, 1, true);
			expect(least).toBeGreaterThanOrEqual(11);
			expect(lamps.length).toBeLessThanOrEqual(treads * 2);
			for (let t = 0; t < treads; t++) expect(treadLux(flight, lamps, model, t)).toBeGreaterThanOrEqual(11);
		}
	});
	it('says so where lights at the sides cannot reach', () => {
		const walk = { width: 4, lights: 'left' as const, steps: [{ id: 'flight', at: 10, treads: 3, going: 0.4 }] };
		expect(plan(yardOf({ walk })).findings.map((f) => f.code)).toContain('placement.step-level');
	});
	it('says so where the walk takes no light', () => {
		const walk = { lights: 'none' as const, steps: [{ id: 'flight', at: 10, treads: 3, going: 0.4 }] };
		expect(plan(yardOf({ walk })).findings.map((f) => f.code)).toContain('placement.steps-dark');
	});
});

describe('drives', () => {
	const { stake, clear, highestHead } = published.driveSetback;
	it('a pair at the mouth, outside the sweep, stakes 350 mm back', () => {
		const { site, fixtures } = plan(yardOf({ drive: {} }));
		expect(fixtures).toHaveLength(2);
		expect(fixtures.map((f) => f.at.x).sort((a, b) => a - b)).toEqual([
			expect.closeTo(14.5 - stake, 9),
			expect.closeTo(17.5 + stake, 9)
		]);
		for (const f of fixtures) {
			expect(distanceToPolygon(f.at, site.strips[0]!.polygon) - 0.15 / 2).toBeGreaterThanOrEqual(clear);
			expect(f.height).toBeLessThan(highestHead);
			expect(inSweep(stake - 0.075, 30 - f.at.y - 0.075, 1)).toBe(false);
		}
	});
	it('the sweep is the corner outside the arc', () => {
		expect(inSweep(0.1, 0.1, 1)).toBe(true);
		expect(inSweep(1, 0.01, 1)).toBe(false);
		expect(inSweep(0.35, 1, 1)).toBe(false);
	});
	it.each(['paired', 'staggered'] as const)('%s: 3 m and more along each edge', (pattern) => {
		const { fixtures } = plan(yardOf({ drive: { lights: 'both', pattern } }));
		const rows = [-1, 1].map((side) =>
			fixtures.filter((f) => (f.at.x - 16) * side > 0).sort((a, b) => b.at.y - a.at.y)
		);
		for (const row of rows)
			for (let i = 1; i < row.length; i++) expect(row[i - 1]!.at.y - row[i]!.at.y).toBeGreaterThanOrEqual(3 - 1e-9);
		const aligned = rows[0]!.slice(1).every((f, i) => Math.abs(f.at.y - rows[1]![i + 1]!.at.y) < 1e-9);
		expect(aligned).toBe(pattern === 'paired');
	});
	it('one more where wheels run off', () => {
		const { fixtures } = plan(yardOf({ drive: { runOffs: [{ id: 'here', at: 12, side: 'right' }] } }));
		const extra = fixtures.find((f) => f.id === 'drive/runoff-1')!;
		expect(extra.at).toEqual({ x: expect.closeTo(17.5 + stake, 9), y: expect.closeTo(18, 9) });
	});
	it('none before the garage door', () => {
		const yard = yardOf({
			drive: {
				lights: 'both',
				width: 2.4,
				line: [
					{ along: 8, out: 30 },
					{ along: 8, out: 0 }
				]
			}
		});
		yard.house.openings = [{ id: 'garage', kind: 'garage', wall: 'front', along: 5, width: 6 }];
		for (const f of plan(yard).fixtures) expect(f.at.y > 5 || Math.abs(f.at.x - 8) > 3.3).toBe(true);
	});
});

describe('water', () => {
	it('10 ft clear, and what cannot stand there is said', () => {
		const pond = { id: 'pool', name: 'pool', kind: 'pool' as const, at: { along: 9, out: 15 }, length: 3, width: 6 };
		const { site, fixtures, findings } = plan(yardOf({ walk: { lights: 'right' }, spots: { water: [pond] } }));
		const pool = site.areas.find((a) => a.kind === 'water')!;
		expect(fixtures.length).toBeGreaterThan(3);
		for (const f of fixtures)
			expect(distanceToPolygon(f.at, pool.polygon)).toBeGreaterThanOrEqual(published.water.metres);
		expect(findings.some((f) => f.message.includes('water'))).toBe(true);
	});
});
