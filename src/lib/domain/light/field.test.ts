/** The field and the map against sums made in other ways. */
import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import { candelaToward, everywhere, maintained, sourceFrame, symmetricLaw, type Vector } from '../photometry';
import { placeFixtures } from '../placement';
import { makeSite } from '../site';
import { examples } from '../yard';
import { emitterOf, luxFrom } from './emitter';
import { fieldOf, lightField, negligible } from './field';
import { LightGrid, leastShare } from './light-grid';
import { lightMap } from './map';
import { fixtureOf, siteWith } from './small.testing';
import { existingSource, lightAt, sourceOf } from './sources';
import type { LightSource } from './types';

const up = { x: 0, y: 0, z: 1 };
const open = { screens: [], lids: [] };
const bulb = (lumens: number, at: Vector): LightSource => ({
	id: 'bulb',
	at,
	axis: { x: 0, y: 0, z: -1 },
	photometry: symmetricLaw(everywhere(lumens), lumens),
	lumens,
	ratedLumens: lumens
});
const demos = examples.map(({ id, yard }) => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { id, site, fixtures, field: lightField(site, fixtures, []) };
});

describe('published values', () => {
	it('school problem: 628 lm all round, 1 m away, tilted to a cosine of 4/5: 40 lx', () => {
		const field = fieldOf([bulb(628, { x: 0, y: 0, z: 1 })], open);
		expect(Math.abs(field.lux({ x: 0, y: 0, z: 0 }, { x: 0.6, y: 0, z: 0.8 }) - 40)).toBeLessThan(0.05);
	});
	it('school problem: 15 lx straight below at 0.60 m, 3.24 lx 0.80 m aside', () => {
		const field = fieldOf([bulb(15 * 0.36 * 4 * Math.PI, { x: 0, y: 0, z: 0.6 })], open);
		expect(field.lux({ x: 0, y: 0, z: 0 }, up)).toBeCloseTo(15, 9);
		expect(field.lux({ x: 0.8, y: 0, z: 0 }, up)).toBeCloseTo(3.24, 2);
	});
	it('filament lamps at 0.95 and 0.90 of their volts: 0.840 and 0.699 (Fink & Beaty exponent 3.4)', () => {
		const lamp = fixtureModels.find(({ lamp }) => lamp.kind === 'halogen')!.lamp;
		expect(lightAt(lamp, 11.4)).toBeCloseTo(0.84, 3);
		expect(lightAt(lamp, 10.8)).toBeCloseTo(0.699, 3);
	});
});

describe('sources', () => {
	it('an LED keeps its light in its window; below, none from two thirds of its lower limit', () => {
		const { lamp } = fixtureOf({ body: 'path', at: { x: 0, y: 0 }, height: 0.5 });
		// 9 V is the lower limit: full; 7.5 V half-way to 6 V: half; 6 V and 0 V: none; unknown: as rated.
		expect([15, 12, 9, 6, 0, null].map((volts) => lightAt(lamp, volts))).toEqual([1, 1, 1, 0, 0, 1]);
		expect(lightAt(lamp, 7.5)).toBeCloseTo(0.5, 12);
	});
	it('lumens follow the volts and what is left after dirt and age', () => {
		const fixture = fixtureOf({ body: 'path', at: { x: 0, y: 0 }, height: 0.5 });
		expect(maintained()).toBeCloseTo(0.81, 12);
		expect(sourceOf(fixture, 7.5)).toMatchObject({ ratedLumens: 150, axis: { x: 0, y: 0, z: -1 } });
		expect(sourceOf(fixture, 7.5).lumens).toBeCloseTo(150 * 0.5 * 0.81, 9);
	});
	it.each(['street-lamp', 'porch-light', 'other'] as const)('a %s gives 1 lx at the edge of its reach', (kind) => {
		const light = { id: 'a', name: '', kind, at: { x: 0, y: 0 }, height: 3, reach: 5 };
		const field = fieldOf([existingSource(light, siteWith({}))], open);
		expect(field.lux({ x: 3, y: 4, z: 0 }, up)).toBeCloseTo(1, 3);
	});
	it('a porch light told on the face of the wall, or just behind it, hangs before it', () => {
		const house = [
			{ x: 0, y: -6 },
			{ x: 0, y: 0 },
			{ x: 8, y: 0 },
			{ x: 8, y: -6 }
		];
		const site = siteWith({ house });
		for (const y of [0, -0.1, 0.05]) {
			const light = { id: 'a', name: '', kind: 'porch-light' as const, at: { x: 4, y }, height: 2, reach: 3 };
			expect(existingSource(light, site).at).toEqual({ x: 4, y: 0.15, z: 2 });
		}
	});
});

describe('against the law itself, asked slowly', () => {
	it.each(demos)('$id: every lamp at many points within 0.1 % of its brightest at that distance', ({ field }) => {
		let asked = 0;
		for (const source of field.sources) {
			const emitter = emitterOf(source);
			const frame = sourceFrame(source.axis);
			const share = source.lumens / source.photometry.lumens;
			for (let k = 0; k < 400; k++) {
				// Points of a Fibonacci spiral round the lamp, between 0.5 and 8 m away, each faced squarely.
				const z = 1 - (2 * (k + 0.5)) / 400;
				const angle = k * Math.PI * (3 - Math.sqrt(5));
				const flat = Math.sqrt(1 - z * z);
				const way = { x: flat * Math.cos(angle), y: flat * Math.sin(angle), z };
				const far = 0.5 + (7.5 * k) / 400;
				const point = { x: source.at.x + far * way.x, y: source.at.y + far * way.y, z: source.at.z + far * way.z };
				const slow = (share * candelaToward(source.photometry, frame, way)) / (far * far);
				const own = luxFrom(emitter, point, { x: -way.x, y: -way.y, z: -way.z });
				expect(Math.abs(own - slow)).toBeLessThanOrEqual((1e-3 * emitter.most) / (far * far));
				asked++;
			}
		}
		expect(asked).toBeGreaterThan(1000);
	});
	it('all the light of a shaded head lands on the ground: lux summed over it gives its lumens back', () => {
		const head = sourceOf(fixtureOf({ body: 'path', at: { x: 0, y: 0 }, height: 0.5 }), null);
		const field = fieldOf([head], open);
		const step = 0.02;
		let lumens = 0;
		for (let x = -3 + step / 2; x < 3; x += step)
			for (let y = -3 + step / 2; y < 3; y += step) lumens += field.lux({ x, y, z: 0 }, up) * step * step;
		expect(lumens / head.lumens).toBeCloseTo(1, 2);
	});
	it('a wash in a box of six faces gives its lumens back', () => {
		const lamp = fixtureOf({ body: 'wash', at: { x: 0, y: 0 }, height: 0, lumens: 200, aim: { x: 1, y: 2, z: 2 } });
		const source = sourceOf(lamp, null);
		const field = fieldOf([source], open);
		const step = 0.02;
		let lumens = 0;
		for (const side of [-1, 1])
			for (let a = -1 + step / 2; a < 1; a += step)
				for (let b = -1 + step / 2; b < 1; b += step)
					lumens +=
						step *
						step *
						(field.lux({ x: side, y: a, z: b }, { x: -side, y: 0, z: 0 }) +
							field.lux({ x: a, y: side, z: b }, { x: 0, y: -side, z: 0 }) +
							field.lux({ x: a, y: b, z: side }, { x: 0, y: 0, z: -side }));
		expect(lumens / source.lumens).toBeCloseTo(1, 2);
	});
});

describe('sums', () => {
	it.each(demos)('$id: the shares of all sources add up to the whole', ({ field, site }) => {
		const { bounds } = site;
		for (let i = 0; i < 200; i++) {
			const point = {
				x: bounds.minX + ((bounds.maxX - bounds.minX) * ((i * 37) % 200)) / 200,
				y: bounds.minY + ((bounds.maxY - bounds.minY) * i) / 200,
				z: (i % 5) * 0.6
			};
			const normal = i % 2 ? up : { x: 0, y: -1, z: 0 };
			const sum = field.sources.reduce((all, _, k) => all + field.share(k, point, normal), 0);
			expect(field.lux(point, normal)).toBeCloseTo(sum, 9);
		}
		expect(field.share(field.sources.length, { x: 0, y: 0, z: 0 }, up)).toBe(0);
	});
	it.each(demos)(
		'$id: the map is the field at each cell, short by less than a share for each source',
		({ field, site }) => {
			const map = lightMap(field, site.bounds, 0.7);
			expect(map.lux.length).toBe(map.columns * map.rows);
			const bound = field.sources.length * Math.max(leastShare, negligible);
			let lit = 0;
			for (let row = 0; row < map.rows; row++)
				for (let column = 0; column < map.columns; column++) {
					const point = { x: map.x + column * map.step, y: map.y + row * map.step, z: 0 };
					const exact = field.lux(point, up);
					const cell = map.lux[row * map.columns + column]!;
					if (cell > 1) lit++;
					expect(cell).toBeLessThanOrEqual(exact * (1 + 1e-6) + negligible);
					expect(exact - cell).toBeLessThanOrEqual(bound);
				}
			expect(lit).toBeGreaterThan(20);
		}
	);
});

describe('a fixture moved', () => {
	it.each(demos)('$id: the map equals one made anew, and keeps its buffer', ({ field, site, fixtures }) => {
		const moved = [...field.sources];
		const grid = new LightGrid(field.shadows, site.bounds, 0.4);
		grid.set(moved);
		const lux = grid.lux;
		for (let k = 0; k < 60; k++) {
			const i = (k * 7) % fixtures.length;
			const fixture = fixtures[i]!;
			const at = { x: fixture.at.x + Math.sin(k) * 3, y: fixture.at.y + Math.cos(k) * 3 };
			moved[i] = sourceOf({ ...fixture, at }, k % 3 === 0 ? 8 : null);
			grid.move(i, moved[i]);
		}
		const anew = new LightGrid(field.shadows, site.bounds, 0.4);
		anew.set(moved);
		let worst = 0;
		grid.lux.forEach((value, cell) => (worst = Math.max(worst, Math.abs(value - anew.lux[cell]!))));
		expect(worst).toBeLessThanOrEqual(1e-6);
		expect(grid.lux).toBe(lux);
		let sum = 0;
		for (let i = 0; i < moved.length; i++) sum += grid.shareAt(i, 3, 3);
		expect(grid.lux[3 * grid.map.columns + 3]).toBeCloseTo(sum, 4);
	});
	it('a source that is not there is refused', () => {
		const grid = new LightGrid(open, { minX: 0, minY: 0, maxX: 1, maxY: 1 }, 0.5);
		grid.set([]);
		expect(() => grid.move(0, bulb(1, { x: 0, y: 0, z: 1 }))).toThrow('number 0');
	});
	it('fewer sources than before leave nothing behind', () => {
		const grid = new LightGrid(open, { minX: 0, minY: 0, maxX: 4, maxY: 4 }, 0.5);
		grid.set([bulb(500, { x: 1, y: 1, z: 1 }), bulb(500, { x: 3, y: 3, z: 1 })]);
		grid.set([]);
		expect(Math.max(...grid.lux)).toBe(0);
	});
});
