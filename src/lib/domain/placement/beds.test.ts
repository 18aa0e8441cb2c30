/** Lights in beds, worked by hand: rules bed.spacing and bed.inset (figures common practice and from memory). */
import { describe, expect, it } from 'vitest';
import { distance } from '../shared/geometry';
import { fixtureModels } from '../shared/catalogue';
import { makeSite } from '../site';
import { blankYard, yardSchema, type Yard, type YardPoint } from '../yard';
import { poolReach } from './bed-pools';
import { placeFixtures, type Fixture } from './index';

const at = (along: number, out: number): YardPoint => ({ along, out });
const box = (left: number, back: number, right: number, front: number): YardPoint[] => [
	at(left, back),
	at(right, back),
	at(right, front),
	at(left, front)
];
/** A front of 12 m, the street 20 m out, nothing else. */
const bare: Yard = {
	...blankYard(),
	place: { units: 'metres', faces: 180, surroundings: 'suburb' },
	house: {
		sections: [{ id: 'front', width: 12, out: 0, light: 'none' }],
		depth: 8,
		openings: [],
		porches: []
	},
	lot: { street: 20, left: 20, right: 20 },
	trees: [],
	walks: [],
	drives: [],
	spots: { water: [] }
};
type Level = 'soft' | 'bright';
const withBed = (outline: YardPoint[], light: Level = 'soft', yard: Yard = bare): Yard => ({
	...yard,
	spots: { ...yard.spots, beds: [{ id: 'bed', name: 'rose bed', outline, light }] }
});
const planned = (yard: Yard) => {
	expect(yardSchema.safeParse(yard).error).toBeUndefined();
	const site = makeSite(yard);
	const { fixtures, findings } = placeFixtures(site, yard);
	const own = fixtures.filter(({ target }) => target.kind === 'bed').sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y);
	return { fixtures, own, said: findings.map(({ code, message }) => `${code} ${message}`), findings };
};
const places = (own: readonly Fixture[]): [number, number][] =>
	own.map((f) => [Math.round(f.at.x * 100) / 100, Math.round(f.at.y * 100) / 100]);

describe('the pool of a head', () => {
	// 150 lm at 120° is a flat source, I = Φ ÷ π ÷ (1 − cos² 80°) = 49.2 cd under a shade that ends at 80°;
	// E = I·h² ÷ (h² + r²)² on level ground (inverse square and cosine), so r² = h·√(I ÷ E) − h².
	it.each([
		[150, 2, 1.49],
		[150, 5, 1.15],
		[220, 5, 1.28],
		[220, 2, 1.66]
	])('of %s lm falls to %s lx %s m from its foot', (lumens, lux, reach) => {
		const found = poolReach({ lumens, beamAngle: 120 }, 0.5, lux);
		expect(found).toBeCloseTo(reach, 2);
		const centre = lumens / Math.PI / (1 - Math.cos((80 * Math.PI) / 180) ** 2);
		expect((centre * 0.25) / (0.25 + found * found) ** 2).toBeCloseTo(lux, 9);
	});
	it('ends at the rim of its shade, and is none where even the foot has less', () => {
		expect(poolReach({ lumens: 1e6, beamAngle: 120 }, 0.5, 0.1)).toBeCloseTo(0.5 * Math.tan((80 * Math.PI) / 180), 9);
		expect(poolReach({ lumens: 1, beamAngle: 120 }, 0.5, 5)).toBe(0);
	});
});

describe('a bed under the windows', () => {
	it('5.9 m long, softly: two lights, 0.45 m inside the edge towards the street, evenly', () => {
		// The row runs from 0.25 to 5.65 m: two pools of 2.98 m take in 5.4 m, and stand at its quarter points.
		const { own, said } = planned(withBed(box(0, 0, 5.9, 1.2)));
		expect(places(own)).toEqual([
			[1.6, 0.75],
			[4.3, 0.75]
		]);
		expect(said).toEqual([]);
		expect(own.map(({ label, technique }) => [label, technique])).toEqual([
			['B1', 'area'],
			['B2', 'area']
		]);
		expect(own[0]!.reasons.map(({ rule }) => rule)).toEqual([
			'bed.spacing',
			'bed.inset',
			'glare.shield',
			'warm.colour'
		]);
	});
	it('brightly: nearer, with the brighter lamp', () => {
		const { own } = planned(withBed(box(0, 0, 5.9, 1.2), 'bright'));
		expect(own).toHaveLength(3);
		expect(fixtureModels.find(({ id }) => id === own[0]!.model)?.strength).toBe('bright');
	});
	it('the same whichever corner is told first, and either way round', () => {
		const outline = box(0, 0, 5.9, 1.2);
		for (let turn = 0; turn < 4; turn++) {
			const turned = [...outline.slice(turn), ...outline.slice(0, turn)];
			for (const told of [turned, turned.toReversed()])
				expect(places(planned(withBed(told)).own)).toEqual([
					[1.6, 0.75],
					[4.3, 0.75]
				]);
		}
	});
	it('narrow, 0.4 m: against the house no edger comes, so a lamp fits 0.25 m inside the front edge', () => {
		expect(places(planned(withBed(box(0, 0, 3, 0.4))).own)).toEqual([[1.5, 0.15]]);
	});
});

describe('elsewhere', () => {
	it('a bed along a walk is lit along the edge towards the walk', () => {
		const yard: Yard = {
			...bare,
			walks: [{ id: 'walk', name: 'walk', line: [at(5, 20), at(5, 0)], width: 1.2, lights: 'none', steps: [] }]
		};
		const { own } = planned(withBed(box(6, 6, 8.2, 12), 'soft', yard));
		// Along the walk, round the corner to the street; not in the middle.
		expect(own.filter(({ at: p }) => Math.abs(p.x - 6.45) < 1e-6).length).toBeGreaterThanOrEqual(2);
		expect(own.every(({ at: p }) => p.x < 6.5 || p.y > 11.5)).toBe(true);
	});
	it('lights of a walk whose pools reach the bed are counted, not doubled', () => {
		const yard: Yard = {
			...bare,
			walks: [{ id: 'walk', name: 'walk', line: [at(5, 20), at(5, 0)], width: 1.2, lights: 'right', steps: [] }]
		};
		// Every 3 m on the right edge at x = 5.9: pools of 1.49 m take in the row at 6.1 m but for a hand’s breadth.
		const { own, fixtures, said } = planned(withBed(box(5.65, 3, 6.65, 17), 'soft', yard));
		expect(own).toEqual([]);
		expect(said.join()).toMatch(/^placement.shared The rose bed is lit by \d lights that stand there for a walk/);
		const walk = fixtures.filter(({ also }) => also?.some(({ kind, id }) => kind === 'bed' && id === 'bed'));
		expect(walk.length).toBeGreaterThanOrEqual(4);
		// Half the bed beyond the walk’s reach gets its own.
		const wide = planned(withBed(box(5.65, 3, 12, 17), 'soft', yard));
		expect(wide.own.length).toBeGreaterThan(0);
		for (const { at: p } of wide.own)
			for (const f of wide.fixtures) if (f.at !== p) expect(distance(f.at, p)).toBeGreaterThan(1.49 - 1e-6);
	});
	it('a porch light that reaches it is counted', () => {
		const yard: Yard = {
			...bare,
			spots: {
				...bare.spots,
				lights: [{ id: 'porch', name: 'porch light', kind: 'porch-light', at: at(3, 0), height: 2.2, reach: 5 }]
			}
		};
		const { own, said } = planned(withBed(box(0, 0, 5.9, 1.2), 'soft', yard));
		expect(own).toEqual([]);
		expect(said[0]).toMatch(
			/^placement.existing The rose bed is lit by the porch light already: no light of its own\./
		);
	});
	it('an island 3 m across takes one light or two in front; one 5 m across is lit round about', () => {
		const round = (radius: number): YardPoint[] =>
			Array.from({ length: 24 }, (_, i) =>
				at(6 + radius * Math.sin((i * Math.PI) / 12), 10 + radius * Math.cos((i * Math.PI) / 12))
			);
		const small = planned(withBed(round(1.5))).own;
		expect(small.length).toBeLessThanOrEqual(2);
		expect(small.every(({ at: p }) => p.y > 10)).toBe(true);
		const large = planned(withBed(round(2.5))).own;
		expect(large.some(({ at: p }) => p.y < 10)).toBe(true);
		// Symmetrical about the middle of the front, as the yard is.
		const image = places(large.map((f) => ({ ...f, at: { x: 12 - f.at.x, y: f.at.y } }))).sort();
		expect(places(large).sort()).toEqual(image);
	});
	it('an L round the corner of the house: both arms', () => {
		const outline = [at(-1.2, -6), at(0, -6), at(0, 0), at(6, 0), at(6, 1.2), at(-1.2, 1.2)];
		const { own, said } = planned(withBed(outline));
		expect(own.some(({ at: p }) => p.x < 0 && p.y < -2)).toBe(true);
		expect(own.some(({ at: p }) => p.x > 3)).toBe(true);
		expect(said).toEqual([]);
	});
	it('a tree in the row: its light makes way and says so', () => {
		const yard: Yard = {
			...bare,
			trees: [
				{
					id: 'plum',
					name: 'plum',
					at: at(2, 10.75),
					spread: 2,
					height: 3,
					crownBase: 1.2,
					trunk: 0.3,
					form: 'round',
					ground: 'bed',
					light: 'none',
					seenFrom: 'street'
				}
			]
		};
		const { own } = planned(withBed(box(0.5, 10, 3.5, 11.2), 'soft', yard));
		expect(own).toHaveLength(1);
		expect(distance(own[0]!.at, { x: 2, y: 10.75 })).toBeGreaterThan(0.3);
		expect(own[0]!.reasons.some(({ notHere, because }) => notHere && because.includes('trunk'))).toBe(true);
	});
});

describe('what cannot be', () => {
	it.each<[string, YardPoint[], RegExp]>([
		[
			'too narrow in the lawn',
			box(2, 10, 6, 10.4),
			/no-room The rose bed gets no light: it is too narrow\. A lamp needs 500 mm/
		],
		['under the house', box(2, -6, 6, -2), /no-room The rose bed gets no light: the house stands there/],
		[
			'an outline that crosses itself',
			[at(2, 8), at(6, 12), at(6, 8), at(2, 11)],
			/bed-outline The rose bed gets no light: its outline crosses itself/
		],
		['out in the street', box(2, 22, 6, 24), /no-room The rose bed gets no light: it would be outside your lot/]
	])('%s', (_, outline, words) => {
		const { own, said } = planned(withBed(outline));
		expect(own).toEqual([]);
		expect(said).toHaveLength(1);
		expect(said[0]).toMatch(words);
	});
	it('no width at all: said where it is surveyed, and no light', () => {
		const yard = withBed([at(2, 8), at(6, 8), at(4, 8)]);
		expect(planned(yard).own).toEqual([]);
		expect(makeSite(yard).findings.map(({ code }) => code)).toContain('site.bed-no-area');
	});
	it('by a pond: 3.05 m clear or none', () => {
		const yard: Yard = {
			...bare,
			spots: { water: [{ id: 'pond', name: 'pond', kind: 'pond', at: at(4, 13), length: 2, width: 2 }] }
		};
		const { own, said } = planned(withBed(box(2, 10, 6, 11), 'soft', yard));
		expect(own).toEqual([]);
		expect(said[0]).toMatch(/nearer than 3\.05 m to the water/);
	});
	it('deep: its middle is said to stay dark', () => {
		expect(planned(withBed(box(-6, 4, 18, 18))).said.join()).toMatch(/bed-deep/);
	});
	it('not asked, or left dark: nothing', () => {
		const [bed] = withBed(box(0, 0, 5.9, 1.2)).spots.beds!;
		for (const light of [undefined, 'none' as const]) {
			const yard: Yard = { ...bare, spots: { ...bare.spots, beds: [{ ...bed!, light }] } };
			expect(planned(yard)).toMatchObject({ fixtures: [], said: [] });
		}
	});
});
