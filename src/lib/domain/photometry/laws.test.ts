import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import {
	beam,
	beamExponent,
	candelaToward,
	lambertian,
	photometryOf,
	sourceFrame,
	stepLaw,
	symmetricLaw
} from './index';
import { radians, seeded, sphereLumens } from './photometry.testing';

const tilted = (below: number) => ({ x: Math.cos(radians(below)), y: 0, z: -Math.sin(radians(below)) });
const down = { x: 0, y: 0, z: -1 };

/** One of each kind of light in the catalogue: the same lamp in halogen or another warmth throws the same. */
const kinds = new Map(
	fixtureModels.map((model) => [`${model.body} ${model.mount} ${model.lamp.beamAngle}° ${model.lamp.lumens} lm`, model])
);

describe('every lamp of the catalogue gives its lumens back', () => {
	it.each([...kinds])('%s', (_, model) => {
		const dip = 40;
		const axis = model.body === 'step' ? tilted(dip) : model.body === 'path' ? down : { x: 0.36, y: 0.48, z: 0.8 };
		const photometry = photometryOf(model, model.lamp, dip);
		expect(photometry.lumens).toBe(model.lamp.lumens);
		const slow = sphereLumens(photometry, axis, 300, 600);
		expect(Math.abs(slow / model.lamp.lumens - 1)).toBeLessThan(0.005);
	});
	it('covers every kind of body', () => {
		expect(new Set([...kinds.values()].map((m) => m.body)).size).toBe(5);
	});
});

describe('a step light', () => {
	it.each([0, 10, 30, 60, 90])('dipping %i°: its lumens, and none above the horizontal', (dip) => {
		for (const angle of [10, 36, 60, 100, 120, 170]) {
			const step = stepLaw(100, angle, dip);
			const axis = tilted(dip);
			// Straight down, a narrow beam lies within few steps of height: finer ones there.
			const slow = dip === 90 ? sphereLumens(step, axis, 4000, 40) : sphereLumens(step, axis, 400, 800);
			expect(Math.abs(slow / 100 - 1)).toBeLessThan(0.005);
			const frame = sourceFrame(axis);
			const next = seeded(dip + angle);
			for (let i = 0; i < 300; i++) {
				const z = 0.999 * next() + 1e-9;
				const bearing = 2 * Math.PI * next();
				const r = Math.sqrt(1 - z * z);
				const rising = { x: r * Math.cos(bearing), y: r * Math.sin(bearing), z };
				expect(candelaToward(step, frame, rising)).toBe(0);
			}
		}
	});
	it('straight down it is the aimed beam; level, half of it takes all the lumens', () => {
		const plain = beam(100, 60);
		expect(stepLaw(100, 60, 90).candela(1, 0)).toBeCloseTo(plain.centre, 4);
		expect(stepLaw(100, 60, 0).candela(1, 180)).toBeCloseTo(2 * plain.centre, 4);
	});
	it('a flat diffuse one has a closed form: Φ = I0 · π/2 · (1 + sin dip)', () => {
		for (const dip of [0, 15, 45, 80])
			expect(stepLaw(100, 120, dip).candela(1, 180)).toBeCloseTo(
				100 / ((Math.PI / 2) * (1 + Math.sin(radians(dip)))),
				5
			);
	});
});

describe('where a shade ends it', () => {
	it('path 80°, well 75° off the axis; a spot on a stake goes on to the side', () => {
		const lamp = { lumens: 100, beamAngle: 120 };
		const path = photometryOf({ body: 'path', mount: 'stake' }, lamp);
		const well = photometryOf({ body: 'spot', mount: 'flush' }, lamp);
		const spot = photometryOf({ body: 'spot', mount: 'stake' }, lamp);
		const at = (p: typeof path, angle: number) => p.candela(Math.cos(radians(angle)), 0);
		expect([at(path, 79.9) > 0, at(path, 80.1)]).toEqual([true, 0]);
		expect([at(well, 74.9) > 0, at(well, 75.1)]).toEqual([true, 0]);
		expect([at(spot, 89) > 0, at(spot, 91)]).toEqual([true, 0]);
		expect(spot.candela(1, 0)).toBeCloseTo(lambertian(100).centre, 9);
		expect(beamExponent(120)).toBeCloseTo(1, 12);
	});
});

describe('the frame of a source', () => {
	it('azimuth 0 is up, 90 counterclockwise seen along the axis', () => {
		// Aimed along +x, seen from behind: up is up, left is +y.
		const { zero, ninety } = sourceFrame({ x: 1, y: 0, z: 0 });
		expect(zero).toEqual({ x: 0, y: 0, z: 1 });
		expect(ninety.y).toBeCloseTo(1, 12);
	});
	it('looking down it is the plan seen from above: 0 to the street, 90 to its left', () => {
		const { zero, ninety } = sourceFrame(down);
		expect(zero).toEqual({ x: 0, y: 1, z: 0 });
		expect(ninety.x).toBeCloseTo(-1, 12);
	});
	it('a hint turns it; vectors stay square and of length 1', () => {
		const frame = sourceFrame({ x: 0, y: 0.6, z: -0.8 }, { x: 1, y: 1, z: 0 });
		const { axis, zero, ninety } = frame;
		const dot = (a: typeof axis, b: typeof axis) => a.x * b.x + a.y * b.y + a.z * b.z;
		for (const [a, b, value] of [
			[axis, zero, 0],
			[axis, ninety, 0],
			[zero, ninety, 0],
			[zero, zero, 1],
			[ninety, ninety, 1]
		] as const)
			expect(dot(a, b)).toBeCloseTo(value, 12);
	});
	it('azimuths come out from 0 to 360', () => {
		const probe = { lumens: 1, symmetric: false, candela: (_: number, azimuth: number) => azimuth };
		const frame = sourceFrame(down);
		const toward = (x: number, y: number) => candelaToward(probe, frame, { x, y, z: 0 });
		expect(toward(0, 1)).toBeCloseTo(0, 9);
		expect(toward(-1, 0)).toBeCloseTo(90, 9);
		expect(toward(0, -1)).toBeCloseTo(180, 9);
		expect(toward(1, 0)).toBeCloseTo(270, 9);
		expect(candelaToward(symmetricLaw(lambertian(Math.PI), Math.PI), frame, down)).toBeCloseTo(1, 12);
	});
});
