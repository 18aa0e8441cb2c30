/** What keeps a light from a place, what is moved and says so, and what is not doubled. */
import { describe, expect, it } from 'vitest';
import { distance, distanceToPolygon } from '../shared/geometry';
import { tradeFigures } from '../shared/settings';
import { makeSite } from '../site';
import { blankYard, type Yard } from '../yard';
import { survey } from './conflicts';
import { placeFixtures } from './index';

const front = (more: Partial<Yard['house']> = {}): Yard => ({
	...blankYard(),
	house: { sections: [{ id: 'front', width: 12, light: 'soft' }], depth: 9, eaves: 2.7, openings: [], ...more },
	lot: { street: 30, left: 30, right: 30 },
	trees: [],
	walks: [],
	drives: [],
	spots: { water: [] }
});
const plan = (yard: Yard) => {
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};

describe('a wall and its porch', () => {
	const porches = [{ id: 'porch', along: 4, width: 4, depth: 2, roof: true }];
	const door = [{ id: 'door', kind: 'door' as const, wall: 'front' as const, along: 5.5, width: 1 }];
	it('no lamp under the roof or so near that it catches the beam; both sides alike', () => {
		const { site, fixtures, findings } = plan(front({ porches, openings: door }));
		const porch = site.areas.find((a) => a.kind === 'porch')!;
		expect(fixtures.length).toBeGreaterThanOrEqual(4);
		for (const f of fixtures) expect(distanceToPolygon(f.at, porch.polygon)).toBeGreaterThanOrEqual(0.3 - 1e-9);
		const xs = fixtures.map((f) => f.at.x).sort((a, b) => a - b);
		expect(xs.map((x) => 12 - x).reverse()).toEqual(xs.map((x) => expect.closeTo(x, 6)));
		expect(findings.map((f) => f.code)).toContain('placement.porch-dark');
	});
	it('a porch over the whole wall leaves it dark, and says so', () => {
		const { fixtures, findings } = plan(
			front({ porches: [{ id: 'porch', along: 0, width: 12, depth: 2, roof: true }] })
		);
		expect(fixtures).toEqual([]);
		expect(findings.find((f) => f.code === 'placement.no-room')?.message).toContain('porch');
	});
});

describe('about the door', () => {
	it.each([2.6, 4, 5.5, 7.2])('at %s m the lamps on either side stand as far from it', (along) => {
		const { fixtures } = plan(front({ openings: [{ id: 'door', kind: 'door', wall: 'front', along, width: 1 }] }));
		const xs = fixtures.map((f) => f.at.x - along - 0.5);
		const [left, right] = [Math.max(...xs.filter((x) => x < 0)), Math.min(...xs.filter((x) => x > 0))];
		expect(-left).toBeCloseTo(right, 6);
	});
});

describe('two storeys', () => {
	it('the setback follows the lit height, up to what a garden lamp reaches', () => {
		const off = (eaves: number): number => plan(front({ eaves })).fixtures[0]!.at.y;
		// Common practice, no source: a quarter to a third of what is lit.
		expect(off(5.2)).toBeGreaterThanOrEqual(5.2 / 4);
		expect(off(5.2)).toBeLessThanOrEqual(5.2 / 3);
		expect(off(12)).toBeCloseTo(off(6), 9);
	});
});

describe('kept clear', () => {
	const yard = { ...front(), power: { receptacle: { along: 6, out: 0 } } };
	it('a foot round the receptacle, when it is known where it is', () => {
		const { fixtures } = plan(yard);
		expect(fixtures.length).toBeGreaterThan(2);
		for (const f of fixtures) expect(distance(f.at, { x: 6, y: 0 })).toBeGreaterThan(0.3);
		const supposed = survey(makeSite({ ...yard, power: { receptacle: 'unsure' } }), tradeFigures.figures);
		expect(supposed.blocked({ x: 0.5, y: 0.2 }, 0.05, 'ground')).toBe(null);
	});
	it('an uplight out from under the eaves, a wash not', () => {
		const ground = survey(makeSite(front()), tradeFigures.figures);
		expect(ground.blocked({ x: 3, y: 0.5 }, 0.05, 'up')).toBe('eaves');
		expect(ground.blocked({ x: 3, y: 0.5 }, 0.05, 'ground')).toBe(null);
	});
	it('in front of a door by a metre, of a garage door by a car', () => {
		const openings = [
			{ id: 'door', kind: 'door' as const, wall: 'front' as const, along: 2, width: 1 },
			{ id: 'garage', kind: 'garage' as const, wall: 'front' as const, along: 6, width: 5 }
		];
		const ground = survey(makeSite(front({ openings })), tradeFigures.figures);
		expect(ground.blocked({ x: 2.5, y: 0.9 }, 0.05, 'ground')).toBe('door');
		expect(ground.blocked({ x: 2.5, y: 1.2 }, 0.05, 'ground')).toBe(null);
		expect(ground.blocked({ x: 8, y: 4.9 }, 0.05, 'path')).toBe('garage');
	});
});

describe('not doubled', () => {
	it('a house number beside a lamp that washes its wall', () => {
		const yard = front();
		const [lamp] = plan(yard).fixtures;
		const number = { id: 'number', at: { along: lamp!.at.x + 0.4, out: 0 }, light: true };
		const { fixtures, findings } = plan({ ...yard, spots: { ...yard.spots, numbers: [number] } });
		expect(fixtures.some((f) => f.technique === 'number')).toBe(false);
		expect(fixtures.flatMap((f) => f.also ?? [])).toEqual([{ kind: 'number', id: 'number' }]);
		expect(findings.some((f) => f.about?.id === 'number' && f.code === 'placement.group')).toBe(true);
	});
	it('the edge of a drive beside a lit wall', () => {
		const wall = { id: 'stone', name: 'stone wall', height: 1.5, light: 'soft' as const };
		const spots = { water: [], walls: [{ ...wall, from: { along: 18.2, out: 5 }, to: { along: 18.2, out: 24 } }] };
		const line = [
			{ along: 16, out: 30 },
			{ along: 16, out: 0 }
		];
		const drives = [{ id: 'drive', name: 'drive', line, width: 3, lights: 'both' as const }];
		const { fixtures, findings } = plan({ ...front(), spots, drives });
		const edge = fixtures.filter((f) => f.id.startsWith('drive/edge') && f.at.x > 16 && f.at.y > 5 && f.at.y < 24);
		expect(edge).toEqual([]);
		expect(findings.some((f) => f.code === 'placement.shared' && f.message.includes('stone wall'))).toBe(true);
	});
	it('the entry of a walk that leaves a drive beside a light of the drive', () => {
		const drive = { id: 'drive', name: 'drive', width: 3, lights: 'left' as const };
		const line = [
			{ along: 16, out: 30 },
			{ along: 16, out: 0 }
		];
		const base = { ...front(), drives: [{ ...drive, line }] };
		const lights = plan(base).fixtures.filter((f) => f.target.kind === 'drive');
		const beside = lights.find((f) => f.id === 'drive/edge-3')!;
		const out = beside.at.y + 1.2;
		const walk = {
			id: 'walk',
			name: 'walk',
			width: 1.2,
			lights: 'left' as const,
			line: [
				{ along: 16, out },
				{ along: 6, out },
				{ along: 6, out: 0 }
			]
		};
		const { fixtures, findings } = plan({ ...base, walks: [walk] });
		const low = fixtures.filter((f) => f.technique === 'path' || f.technique === 'drive');
		for (const [i, a] of low.entries())
			for (const b of low.slice(i + 1))
				if (a.target.id !== b.target.id) expect(distance(a.at, b.at)).toBeGreaterThanOrEqual(1.5 - 1e-9);
		expect(findings.some((f) => f.code === 'placement.shared')).toBe(true);
	});
});

describe('not here because', () => {
	it('what is moved says from where, how far, by which rule and what was in the way', () => {
		const pond = {
			id: 'pond',
			name: 'pond',
			kind: 'pond' as const,
			at: { along: 10.8, out: 29.5 },
			length: 2,
			width: 2
		};
		const walk = {
			id: 'walk',
			name: 'walk',
			width: 1.2,
			lights: 'right' as const,
			line: [
				{ along: 6, out: 30 },
				{ along: 6, out: 0 }
			]
		};
		const { fixtures } = plan({ ...front(), walks: [walk], spots: { water: [pond] } });
		const moved = fixtures.flatMap((f) => f.reasons.filter((r) => r.because.startsWith('Not ')));
		expect(moved.length).toBeGreaterThan(0);
		for (const r of moved) {
			expect(r.rule).toBe('water.clear');
			expect(r.because).toContain('to the water');
			expect(r.value).toBeGreaterThan(0);
		}
	});
});
