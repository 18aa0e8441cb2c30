/** Gables, upper floors and porch roofs, by cases worked by hand. The light is checked by the general law of `photometry`. */
import { describe, expect, it } from 'vitest';
import { tradeFigures } from '../shared/settings';
import { fixtureModels } from '../shared/catalogue';
import { beam, illuminance, towards } from '../photometry';
import { makeSite, wallTop, type Opening, type Site } from '../site';
import { blankYard, type Yard } from '../yard';
import { placeFixtures, type Fixture } from './index';
import { sightOf, sightOn } from './sight';
import { gableLamps, gableLights, litGable } from './wall-gable';
import { aimUnder, overWindows, shinesInto } from './wall-openings';
import { besidePorch, planWall } from './wall-plan';

const { figures } = tradeFigures;
const wash = fixtureModels.find(({ body }) => body === 'wash')!;
const window = (start: number, end: number, floor: 0 | 1 = 1): Opening => ({
	id: 'w',
	kind: 'window',
	start,
	end,
	sill: 0.9 + 2.7 * floor,
	head: 2.1 + 2.7 * floor
});
const face = (over: Partial<Site['walls'][number]> = {}): Site['walls'][number] => ({
	id: 'front-1',
	name: 'front',
	of: 'house',
	from: { x: 0, y: 0 },
	to: { x: 6, y: 0 },
	outward: { x: 0, y: 1 },
	length: 6,
	height: 2.7,
	peak: 4.5,
	finish: 'medium',
	texture: 'smooth',
	light: 'soft',
	openings: [],
	front: true,
	...over
});
const plan = (house: Yard['house'], more: Partial<Yard> = {}) => {
	const yard: Yard = {
		...blankYard(),
		house: { depth: 8, ...house },
		lot: { street: 20, left: 20, right: 20 },
		...more
	};
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};
const rulesOf = (f: Fixture): string[] => f.reasons.map(({ rule }) => rule);

describe('under a gable', () => {
	it('the wall rises along the slopes to its point', () => {
		const wall = { height: 2.7, peak: 4.5, length: 6 };
		expect([0, 1.5, 3, 4.5, 6].map((at) => wallTop(wall, at))).toEqual([2.7, 3.6, 4.5, 3.6, 2.7]);
		expect(wallTop({ ...wall, peak: null }, 3)).toBe(2.7);
	});
	it('one lamp under the middle, aimed two thirds of the way up', () => {
		const [lamp, ...rest] = gableLamps(face(), { technique: 'wash' }, [1, 3, 5], 2, figures);
		expect(rest).toEqual([]);
		// 2.7 + 2/3 × 1.8 = 3.9 m up, where 6 × (4.5 − 3.9) ÷ 1.8 = 2 m of gable are left.
		expect(lamp).toMatchObject({ station: 3, along: 3, meeting: 1, pair: false, litHeight: 4.5 });
		expect(lamp!.height).toBeCloseTo(3.9, 12);
		expect(lamp!.width).toBeCloseTo(2, 12);
	});
	it('or the two on either side: straight up where half the gable is over them, else so that they meet in its middle', () => {
		const of = (stations: number[], spacing: number) =>
			gableLamps(face(), { technique: 'wash' }, stations, spacing, figures)
				.map(({ station, along, meeting }) => [station, along, meeting])
				.toSorted();
		expect(of([0.9, 2.3, 3.7, 5.1], 1.4)).toEqual([
			[2.3, 2.3, 1],
			[3.7, 3.7, 1]
		]);
		// A door in the middle: at 1.2 m from the end the roof has risen by 0.72 m of 1.8.
		expect(of([1.2, 4.8], 2.2)).toEqual([
			[1.2, 3, 2],
			[4.8, 3, 2]
		]);
		// Evenness is what the eye sees: 0.2 m more to one side still makes a pair, 1 m does not.
		expect(of([1.2, 4.6], 2.2)).toHaveLength(2);
		expect(of([1.2, 3.8], 2.2)).toEqual([[3.8, 3, 1]]);
	});
	it('on either side of a window in it, straight up by the slope', () => {
		const wall = face({ openings: [window(2.5, 3.5)] });
		const list = gableLamps(wall, { technique: 'wash' }, [1, 3, 5], 2, figures);
		expect(list.map(({ station, along }) => [station, along]).toSorted()).toEqual([
			[1, 1],
			[5, 5]
		]);
		// A metre in, the roof is at 2.7 + 1.8 × 1/3 = 3.3; two thirds up to it 3.1; the gable there 4.667 wide, half each.
		for (const lamp of list) {
			expect(lamp.height).toBeCloseTo(3.1, 12);
			expect(lamp.width).toBeCloseTo(7 / 3, 12);
		}
		// Grazing light skims past the glass.
		expect(gableLamps(wall, { technique: 'graze' }, [1, 3, 5], 2, figures)).toMatchObject([
			{ station: 3, height: 4.5 }
		]);
	});
	it('no further than lamps reach, and not for a hand’s breadth', () => {
		expect(litGable({ height: 5.2, peak: 9 }, figures)).toBe(6);
		expect(litGable({ height: 6.5, peak: 9 }, figures)).toBeNull();
		expect(litGable({ height: 2.7, peak: 2.9 }, figures)).toBeNull();
		expect(litGable({ height: 2.7, peak: null }, figures)).toBeNull();
	});
	it('the narrowest beam that fills it, and the lux there by the general law', () => {
		const [lamp] = gableLamps(face(), { technique: 'wash' }, [3], 2, figures);
		const spots = fixtureModels.filter(
			({ body, mount, lamp: { kind, colourTemperature } }) =>
				body === 'spot' && mount === 'stake' && kind === 'led' && colourTemperature === 2700
		);
		const setback = (7 / 24) * 4.5;
		const [light] = gableLights(lamp!, setback, spots, {
			band: { low: 5, high: 30 },
			aim: 9,
			middle: 1.35
		});
		const { model, needed, lux } = light!;
		// 1.3125 m off and 3.75 m up: 3.973 m away; half of 2 m there is 14.13°, twice that 28.26°: 24 is too narrow.
		expect(needed).toBeCloseTo(28.26, 2);
		expect(model.lamp.beamAngle).toBe(36);
		const at = { x: 3, y: setback, z: 0.15 };
		const spot = { x: 3, y: 0, z: 3.9 };
		const source = { at, axis: towards(at, spot), distribution: beam(model.lamp.lumens, 36) };
		expect(lux).toBeCloseTo(illuminance(source, spot, { x: 0, y: 1, z: 0 }), 9);
	});
	it('on a plan: the row stays even about the middle, and the gable is lit to near its point', () => {
		for (const width of [3.6, 4.8, 6, 7.5, 9]) {
			const { fixtures, findings } = plan({
				eaves: 2.7,
				finish: 'medium',
				texture: 'smooth',
				sections: [{ id: 'a', width, gable: 4.5, light: 'soft' }]
			});
			const up = fixtures.filter((f) => rulesOf(f).includes('wall.gable'));
			expect(up.length === 1 || up.length === 2, `${width}`).toBe(true);
			const xs = fixtures.map(({ at }) => at.x).toSorted((a, b) => a - b);
			for (const [i, x] of xs.entries()) expect(x).toBeCloseTo(width - xs[xs.length - 1 - i]!, 9);
			for (const f of up) {
				expect(f.aim!.point.z).toBeGreaterThan(2.7 + 0.6 - 1e-9);
				expect(f.aim!.point.z).toBeLessThan(3.9 + 1e-9);
				expect(f.at.y).toBeGreaterThanOrEqual(3.6 / 4 - 1e-9);
				expect(f.at.y).toBeLessThanOrEqual(4.5 / 3 + 1e-9);
			}
			expect(findings.map(({ code }) => code)).not.toContain('placement.gable-dark');
			const lux = (x: number, z: number): number =>
				fixtures.reduce((sum, f) => {
					const at = { ...f.at, z: f.height };
					const source = { at, axis: towards(at, f.aim!.point), distribution: beam(f.lamp.lumens, f.lamp.beamAngle) };
					return sum + illuminance(source, { x, y: 0, z }, { x: 0, y: 1, z: 0 });
				}, 0);
			const line = Array.from({ length: 41 }, (_, i) => lux(xs[0]! + ((xs.at(-1)! - xs[0]!) * i) / 40, 1.35));
			// As even as a row without a gable, from its first lamp to its last: rule wall.spacing, 3 to 1, and a hair between the places it looks at.
			expect(Math.max(...line) / Math.min(...line), `${width}`).toBeLessThan(3.1);
			for (const z of [2.7, 3.3, 3.9, 4.4]) expect(lux(width / 2, z), `${width} at ${z}`).toBeGreaterThan(5);
			expect(lux(width / 2, 4.4) / lux(width / 2, 2.7)).toBeGreaterThan(1 / 4);
		}
	});
	it('smooth or rough, LED or halogen: as even as a row, or the plan says how uneven', () => {
		let [even, said] = [0, 0];
		for (const lamp of ['led', 'halogen'] as const)
			for (const texture of ['smooth', 'rough'] as const)
				for (const width of [3.6, 4.8, 6, 7.5, 9])
					for (const gable of [3.6, 4.5, 5.5]) {
						const sections = [{ id: 'a', width, gable, light: 'soft' as const }];
						const { fixtures, findings } = plan(
							{ eaves: 2.7, finish: 'medium', texture, sections },
							{ power: { lamp } }
						);
						const lux = (x: number): number =>
							fixtures.reduce((sum, f) => {
								const at = { ...f.at, z: f.height };
								const distribution = beam(f.lamp.lumens, f.lamp.beamAngle);
								const source = { at, axis: towards(at, f.aim!.point), distribution };
								return sum + illuminance(source, { x, y: 0, z: 1.35 }, { x: 0, y: 1, z: 0 });
							}, 0);
						const xs = fixtures.map(({ at }) => at.x).toSorted((a, b) => a - b);
						const line = Array.from({ length: 41 }, (_, i) => lux(xs[0]! + ((xs.at(-1)! - xs[0]!) * i) / 40));
						const ratio = Math.max(...line) / Math.min(...line);
						const finding = findings.find(({ code }) => code === 'placement.gable-bright');
						if (ratio <= 3) even++;
						if (finding) said++;
						const which = `${lamp} ${texture} ${width} ${gable}`;
						// Between the two it hangs on the places looked at.
						if (ratio > 3.2) expect(finding, which).toBeDefined();
						if (ratio < 2.9) expect(finding, which).toBeUndefined();
						expect(ratio, which).toBeLessThan(8);
					}
		expect(even).toBeGreaterThan(40);
		expect(said).toBeGreaterThan(0);
	});
});

describe('under a window of the upper floor', () => {
	const { row } = planWall({ height: 5.2, texture: 'smooth' }, wash, figures);
	const beam60 = { wanted: row.aimHeight, setback: row.setback, lampHeight: row.lampHeight, beamAngle: 60 };
	it('a wash is aimed so that the sill lies at the edge of its beam', () => {
		const wall = { openings: [window(2, 3)] };
		// Setback 7/24 × 5.2 = 1.517 m, sill 3.45 m over the lamp: 66.27° up; less 30° that is 36.27°: 0.15 + 1.517 × 0.7337.
		expect(row.setback).toBeCloseTo(1.5167, 4);
		const height = aimUnder(wall, 2.5, beam60);
		expect(height).toBeCloseTo(1.263, 3);
		// Beside the window, by more than 0.3 m, as all of the row; under one of the ground floor none stands anyway.
		expect(aimUnder(wall, 3.31, beam60)).toBe(row.aimHeight);
		expect(aimUnder({ openings: [window(2, 3, 0)] }, 2.5, beam60)).toBe(row.aimHeight);
		const tilt = (z: number): number => (Math.atan2(row.setback, z - row.lampHeight) * 180) / Math.PI;
		expect(shinesInto(wall, 2.5, { ...beam60, tilt: tilt(height) })).toBe(false);
		expect(shinesInto(wall, 2.5, { ...beam60, tilt: tilt(height + 0.01) })).toBe(true);
	});
	it('on a plan: lamps stay in the row, those under it say so; a grazing light need not', () => {
		const house: Yard['house'] = {
			eaves: 5.2,
			finish: 'medium',
			sections: [{ id: 'a', width: 12, light: 'soft' }],
			openings: [{ id: 'w', kind: 'window', wall: 'front', along: 4, width: 4, floor: 'upper' }]
		};
		const bare = plan({ ...house, texture: 'smooth', openings: [] });
		const smooth = plan({ ...house, texture: 'smooth' });
		expect(smooth.fixtures.map(({ at }) => at)).toEqual(bare.fixtures.map(({ at }) => at));
		const wall = smooth.site.walls.find(({ id }) => id === 'front-1')!;
		const low = smooth.fixtures.filter(({ at }) => overWindows(wall, at.x, at.x).length > 0);
		expect(low.length).toBeGreaterThan(0);
		for (const f of low) {
			expect(f.aim!.point.z).toBeCloseTo(1.263, 3);
			expect(f.reasons.find(({ rule }) => rule === 'wall.openings')?.because).toContain('upper floor');
		}
		for (const f of smooth.fixtures.filter((one) => !low.includes(one))) expect(f.aim!.point.z).toBeCloseTo(2.6, 9);
		const rough = plan({ ...house, texture: 'rough' });
		for (const f of rough.fixtures) expect(f.aim!.point.z).toBeCloseTo(5.2, 9);
	});
	it('a wash moved or aimed there by hand is said to shine into it', () => {
		const house: Yard['house'] = {
			eaves: 5.2,
			texture: 'smooth',
			finish: 'medium',
			sections: [{ id: 'a', width: 12, light: 'soft' }],
			openings: [{ id: 'w', kind: 'window', wall: 'front', along: 5, width: 2, floor: 'upper' }]
		};
		const codes = (aim?: { along: number; out: number; height: number }): string[] => {
			const added = [
				{
					id: 'mine',
					target: { kind: 'wall' as const, id: 'front-1' },
					technique: 'wash' as const,
					at: { along: 6, out: 1.6 },
					...(aim ? { aim } : {})
				}
			];
			return plan(house, { fixtures: { added } }).findings.map(({ code }) => code);
		};
		expect(codes()).not.toContain('placement.hand-window');
		expect(codes({ along: 6, out: 0, height: 2.6 })).toContain('placement.hand-window');
	});
});

describe('beside a porch', () => {
	const { row } = planWall({ height: 5.2, texture: 'smooth' }, wash, figures);
	it('so far off that half the beam clears the roof where it passes its underside', () => {
		// The beam rises 2.45 m over 1.517 m: 2.882 m long. At 2.4 m up it has gone 2.25 ÷ 2.45 of that, 2.646 m; × tan 30° = 1.528.
		expect(besidePorch({ under: 2.4, depth: 2 }, row, 60)).toBeCloseTo(1.528, 3);
		// A narrower beam may come nearer: × tan 12° = 0.5625.
		expect(besidePorch({ under: 2.4, depth: 2 }, row, 24)).toBeCloseTo(0.5625, 3);
	});
	it('only clear of its posts where it has no roof, or one that the beam passes under or outside', () => {
		expect(besidePorch({ under: null, depth: 2 }, row, 60)).toBe(0.3);
		expect(besidePorch({ under: 2.7, depth: 2 }, row, 60)).toBe(0.3);
		// At 0.6 m up the beam is still 1.517 × (1 − 0.45 ÷ 2.45) = 1.238 m out.
		expect(besidePorch({ under: 0.6, depth: 1.2 }, row, 60)).toBe(0.3);
	});
	it('on a plan: none under or before it, those beside it moved off and saying why, the shadow above it said', () => {
		const house = (roof: boolean): Yard['house'] => ({
			eaves: 5.2,
			texture: 'smooth',
			finish: 'medium',
			sections: [{ id: 'a', width: 9, light: 'soft' }],
			porches: [{ id: 'p', along: 2.5, width: 4, depth: 2, roof, under: roof ? 2.4 : undefined }]
		});
		const roofed = plan(house(true));
		const open = plan(house(false));
		const nearest = (f: Fixture): number => Math.max(2.5 - f.at.x, f.at.x - 6.5);
		expect(roofed.fixtures.length).toBeGreaterThan(1);
		for (const f of roofed.fixtures) expect(nearest(f)).toBeGreaterThanOrEqual(1.528 - 1e-3);
		for (const f of open.fixtures) expect(nearest(f)).toBeGreaterThanOrEqual(0.3 - 1e-9);
		expect(Math.min(...open.fixtures.map(nearest))).toBeLessThan(1.528);
		const moved = roofed.fixtures.flatMap(({ reasons }) => reasons.filter(({ rule }) => rule === 'wall.porch'));
		expect(moved.length).toBeGreaterThan(0);
		for (const reason of moved) expect(reason).toMatchObject({ notHere: true, source: 'practice' });
		const said = (list: typeof roofed.findings) => list.find(({ code }) => code === 'placement.porch-dark');
		expect(said(roofed.findings)).toMatchObject({ rule: 'wall.porch', about: { kind: 'wall', id: 'front-1' } });
		expect(said(roofed.findings)!.message).toContain('Above its roof');
		expect(said(open.findings)!.message).not.toContain('roof');
	});
});

it('a wall higher than lamps reach is lit as far as they do, and that is said', () => {
	const { fixtures, findings } = plan({
		eaves: 8,
		texture: 'smooth',
		finish: 'medium',
		sections: [{ id: 'a', width: 8, light: 'soft' }]
	});
	// Half of 6 m, from between a quarter and a third of it.
	for (const f of fixtures) {
		expect(f.aim!.point.z).toBeCloseTo(3, 9);
		expect(f.at.y).toBeCloseTo(1.75, 9);
	}
	expect(findings.find(({ code }) => code === 'placement.wall-tall')).toMatchObject({
		rank: 'note',
		rule: 'wall.setback'
	});
});

describe('eyes at a window of the upper floor', () => {
	const site = (floor: 0 | 1): Site => ({
		...makeSite(blankYard()),
		walls: [face({ openings: [window(3, 3.01, floor)] })]
	});
	const lean35 = { x: 3, y: 5 - 4 * Math.tan((35 * Math.PI) / 180), z: 4 };
	const spare = (floor: 0 | 1, at = { x: 3, y: 5 }, aim = lean35): number =>
		sightOn(sightOf(site(floor), 35), at, 0, aim).spare;
	it('are 0.7 m over its sill: the beam keeps 30° from the line to them', () => {
		// 5 m off and 4.3 m up: 49.30° from upright, 14.30° from a beam that leans 35°. On the ground floor 72.26°: 37.26°.
		expect(spare(1)).toBeCloseTo(14.3 - 30, 1);
		expect(spare(0)).toBeCloseTo(37.26 - 30, 1);
	});
	it('see as far as such a beam may reach, and not round the corner', () => {
		// At 9 m the line is 64.5° from upright: 29.5° from the beam; on the ground floor nobody is near.
		expect(spare(1, { x: 3, y: 9 }, { ...lean35, y: lean35.y + 4 })).toBeCloseTo(29.46 - 30, 1);
		expect(spare(0, { x: 3, y: 9 }, { ...lean35, y: lean35.y + 4 })).toBe(Infinity);
		expect(spare(1, { x: 3, y: -5 }, { x: 3, y: -5 + 4 * Math.tan((35 * Math.PI) / 180), z: 4 })).toBe(Infinity);
	});
	it('turn a tree’s light aside, or it is said', () => {
		// The lamp 2.8 m off leans some 6° towards the house: 33° − 6° to eyes 4.3 m up, 60° − 6° to those 1.6 m up.
		const of = (floor: 'ground' | 'upper') =>
			plan(
				{
					eaves: 5.2,
					sections: [{ id: 'a', width: 8, light: 'none' }],
					openings: [{ id: 'w', kind: 'window', wall: 'front', along: 1, width: 6, floor }]
				},
				{
					trees: [
						{
							id: 'plum',
							name: 'plum',
							at: { along: 4, out: 2.5 },
							spread: 3,
							height: 4,
							crownBase: 1.5,
							trunk: 0.3,
							form: 'round',
							ground: 'bed',
							light: 'soft',
							seenFrom: 'street'
						}
					]
				}
			);
		const codes = ({ findings }: ReturnType<typeof of>): string[] => findings.map(({ code }) => code);
		const [ground, upper] = [of('ground'), of('upper')];
		expect(codes(ground)).not.toContain('placement.sight');
		const turned = upper.fixtures[0]!.reasons.some(({ because }) => because.includes('at a window'));
		expect(turned || codes(upper).includes('placement.sight')).toBe(true);
	});
});
