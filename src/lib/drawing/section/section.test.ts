import { describe, expect, test } from 'vitest';
import { makePlan } from '../../domain/plan';
import type { Fixture } from '../../domain/placement';
import type { Tree } from '../../domain/site';
import { examples } from '../../domain/yard';
import { crownPath, halfWidthAt, trunkPath } from './crown';
import { drawSection } from './draw-section';
import { beamWidth, lookAt, type Watcher } from './look';

const tree = (over: Partial<Tree> = {}): Tree => ({
	id: 'oak',
	name: 'Oak',
	at: { x: 10, y: 5 },
	spread: 6,
	height: 8,
	crownBase: 2,
	trunkDiameter: 0.4,
	form: 'round',
	ground: 'lawn',
	light: 'soft',
	seenFrom: { x: 0, y: 10 },
	rootRadius: 4.8,
	...over
});
const lamp: Fixture['lamp'] = {
	kind: 'led',
	watts: 4,
	voltAmps: 5,
	lumens: 300,
	beamAngle: 60,
	colourTemperature: 2700,
	ratedVolts: 12,
	minVolts: 10.8,
	maxVolts: 15
};
const light = (at: { x: number; y: number }, point: { x: number; y: number; z: number }): Fixture => ({
	id: 'oak/uplight-1',
	label: 'T1',
	target: { kind: 'tree', id: 'oak' },
	technique: 'uplight',
	at,
	height: 0,
	aim: { bearing: 0, tilt: 0, point },
	model: 'none',
	mount: 'flush',
	lamp,
	reasons: []
});

describe('by hand', () => {
	// A 36° beam at 10 ft is 6.498 ft wide: 2·d·tan(θ/2), worked with a pocket calculator.
	test('width of a beam', () => expect(beamWidth(10, 36)).toBeCloseTo(6.498, 3));

	// The lamp 3 m this side of the trunk, aimed at the middle of the crown 5 m up: a lean of atan(3/5) = 30.964°, a way of
	// √34 = 5.831 m, and 2·5.831·tan 30° = 6.733 m of beam there.
	const look = lookAt(tree(), light({ x: 7, y: 5 }, { x: 10, y: 5, z: 5 }), null);
	test('a lamp on its side of the trunk', () => {
		expect(look.lamp).toEqual({ s: -3, z: 0 });
		expect(look.fromBark).toBeCloseTo(2.8, 9);
		expect(look.lean).toBeCloseTo(30.9638, 4);
		expect(look.aside).toBeCloseTo(0, 9);
		expect(look.middle!.height).toBe(5);
		expect(look.middle!.run).toBeCloseTo(5.83095, 5);
		expect(look.middle!.width).toBeCloseTo(6.733, 3);
	});
	test('from whichever side it stands, the lean is towards the trunk', () => {
		const from = lookAt(tree(), light({ x: 10, y: 8 }, { x: 10, y: 5, z: 5 }), null);
		expect(from.lamp.s).toBeCloseTo(-3, 9);
		expect(from.lean).toBeCloseTo(30.9638, 4);
	});
	test('an aim past the trunk, off to the side, leaves the plane', () => {
		// Axis (3, 4, 12) ÷ 13: 4 ÷ 13 of it across the plane, asin = 17.920°; in the plane atan(3/12) = 14.036°.
		const off = lookAt(tree(), light({ x: 7, y: 5 }, { x: 10, y: 9, z: 12 }), null);
		expect(off.aside).toBeCloseTo(17.9202, 3);
		expect(off.lean).toBeCloseTo(14.0362, 3);
	});
	test('an eye that stands in line behind the lamp', () => {
		// 4 m further off, 1.6 m up: 21.801° above the ground, and so 90 + 30.964 − 21.801 = 99.162° off the beam.
		const eye: Watcher = { kind: 'walk', id: 'w', at: { x: 3, y: 5, z: 1.6 }, candela: null, bare: null };
		const { watcher } = lookAt(tree(), light({ x: 7, y: 5 }, { x: 10, y: 5, z: 5 }), eye);
		expect(watcher).toMatchObject({ far: 4, side: -1, z: 1.6, inBeam: false });
		expect(watcher!.off).toBeCloseTo(99.1623, 3);
	});
});

describe.each(['round', 'spreading', 'columnar', 'conical', 'vase', 'weeping', 'multi-stem', 'palm'] as const)(
	'a %s tree',
	(form) => {
		const one = tree({ form });
		test('is as wide as it was told at its widest, and nothing beyond its crown', () => {
			const widths = Array.from({ length: 601 }, (_, n) => halfWidthAt(one, 2 + n / 100));
			expect(Math.max(...widths)).toBeCloseTo(3, 2);
			expect(halfWidthAt(one, 1.99)).toBe(0);
			expect(halfWidthAt(one, 8.01)).toBe(0);
		});
		test('has an outline without gaps', () => {
			for (const d of [crownPath(one), trunkPath(one), crownPath(one, 4)]) expect(d).not.toMatch(/NaN|Infinity/);
		});
	}
);

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('trees of %s', (_, plan) => {
	const lit = plan.fixtures.flatMap((fixture) => {
		const one = plan.site.trees.find(({ id }) => fixture.target.kind === 'tree' && fixture.target.id === id);
		return one ? [{ one, fixture }] : [];
	});
	test.each([320, 760])('all within the drawing, %i px wide', (width) => {
		expect(lit.length).toBeGreaterThan(0);
		for (const { one, fixture } of lit) {
			const eye: Watcher = { kind: 'walk', id: '', at: { ...one.seenFrom, z: 1.6 }, candela: null, bare: null };
			const { drawing, look } = drawSection(one, fixture, eye, 'feet', width);
			expect(JSON.stringify(drawing)).not.toMatch(/NaN|null|Infinity/);
			expect((drawing.box.maxX - drawing.box.minX) / drawing.px).toBeCloseTo(width, 0);
			expect(look.lamp.s).toBeGreaterThan(drawing.box.minX);
			expect(-drawing.box.minY).toBeGreaterThan(one.height);
			// The plan says the same of the lean as the drawing does.
			if (fixture.aim && look.aside < 0.5) expect(Math.abs(look.lean)).toBeCloseTo(fixture.aim.tilt, 0);
		}
	});
});
