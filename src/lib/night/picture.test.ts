import { describe, expect, it } from 'vitest';
import { everywhere, illuminance, type Vector } from '../domain/photometry';
import type { LightField, LightSource } from '../domain/light';
import { makePlan, type Plan } from '../domain/plan';
import { blankYard, examples, type Yard } from '../domain/yard';
import { mirrored } from '../domain/yard/mirror.testing';
import { randomYard } from '../domain/yard/random.testing';
import { cameraFor, columnOf, depthOf, rowOf } from './camera';
import { colourAt, luminanceOf } from './colour';
import { skyLux } from './day';
import { develop, luminancePicture, sceneOf, type PictureOptions } from './index';
import type { LuminancePicture, View } from './types';

const street: View = { kind: 'street', width: 240, height: 100 };
const above: View = { kind: 'above', width: 120, height: 120 };

/** One lamp of so many candela every way, and nothing that casts shadows. */
function lampAt(at: Vector, candela: number): LightField {
	const distribution = everywhere(candela * 4 * Math.PI);
	const source: LightSource = {
		id: 'test',
		at,
		axis: { x: 0, y: 0, z: -1 },
		photometry: { lumens: candela * 4 * Math.PI, symmetric: true, candela: () => candela },
		lumens: candela * 4 * Math.PI,
		ratedLumens: candela * 4 * Math.PI
	};
	const share = (_: number, point: Vector, normal: Vector): number =>
		illuminance({ at, axis: source.axis, distribution }, point, normal);
	return {
		sources: [source],
		shadows: { screens: [], lids: [] },
		lux: (point, normal) => share(0, point, normal),
		share
	};
}
/** A plain house of 10 m with a smooth wall, the street 8 m before it. */
const plain = (): Yard => ({
	...blankYard(),
	house: {
		sections: [{ id: 'a', width: 10, out: 0, light: 'none' }],
		depth: 8,
		eaves: 3,
		finish: 'light',
		texture: 'smooth',
		openings: [],
		porches: []
	},
	lot: { street: 8, left: 6, right: 6 },
	trees: [],
	walks: [],
	drives: []
});
const example = (id: string): Plan => makePlan(examples.find((one) => one.id === id)!.yard);
const paint = (plan: Plan, view: View, options?: PictureOptions): LuminancePicture =>
	luminancePicture(plan, view, undefined, options);
const kindAt = (picture: LuminancePicture, p: number): string => picture.surfaces[picture.surface[p]!]!.kind;

describe('one pixel worked by hand', () => {
	const plan = makePlan(plain());
	const lamp = { x: 5, y: 2, z: 1 };
	const picture = paint(plan, street, { field: lampAt(lamp, 100) });
	const camera = cameraFor(plan, street);
	/** The place on the wall, y = 0, that the middle of a pixel looks at. */
	const onWall = (column: number, row: number): Vector => ({
		x: camera.x + ((column + 0.5 - camera.column) * camera.y) / camera.scale,
		y: 0,
		z: camera.z - ((row + 0.5 - camera.row) * camera.y) / camera.scale
	});

	it('wall: E = I·cos/d², L = ρE/π', () => {
		const albedos: number[] = [];
		for (let row = 0; row < 100; row++)
			for (let column = 40; column < 200; column++) {
				const p = row * 240 + column;
				if (kindAt(picture, p) !== 'wall' || kindAt(picture, p - 240) !== 'wall' || kindAt(picture, p - 1) !== 'wall')
					continue;
				const at = onWall(column, row);
				const distance = Math.hypot(at.x - lamp.x, lamp.y, at.z - lamp.z);
				const lux = (100 * lamp.y) / distance ** 3;
				// Boards lean by up to 0.025, which turns the cosine by as much as their height above or below the lamp.
				expect(Math.abs(picture.lux[p]! / lux - 1)).toBeLessThan(0.03);
				albedos.push((picture.lamps[p * 3]! * Math.PI) / (picture.lux[p]! * colourAt(2700)[0]));
			}
		expect(albedos.length).toBeGreaterThan(1000);
		// The lamp has no fixture: it counts as a light that is there already, 2700 K. Light paint: red albedo 0.64, the grain 5 % to either side of
		// it, less where a joint of the boards lies in the pixel.
		albedos.sort((a, b) => a - b);
		expect(albedos.at(-1)).toBeLessThan(0.64 * 1.06);
		expect(albedos[Math.floor(albedos.length / 2)]! / 0.64).toBeGreaterThan(0.85);
	});
	it('the board at the eaves, of one even albedo 0.55: luminance to the digit', () => {
		const level = 50;
		const even = lampAt(lamp, 1);
		const field: LightField = { ...even, share: () => level, lux: () => level };
		const lit = paint(plan, { ...street, width: 960, height: 400 }, { field });
		const wanted = (0.55 * level * colourAt(2700)[0]) / Math.PI;
		const found: number[] = [];
		for (let p = 960; p < lit.surface.length; p++) {
			const same = [p, p - 1, p - 960].every((q) => kindAt(lit, q) === 'eaves');
			if (same && lit.lux[p]! > 0) found.push(lit.lamps[p * 3]!);
		}
		expect(found.length).toBeGreaterThan(100);
		for (const value of found) expect(value / wanted).toBeCloseTo(1, 5);
	});
	it('light of the sky by the tilt of a surface: level, upright, face down, over ground of albedo 0.2', () => {
		expect([skyLux(1), skyLux(0), skyLux(-1)]).toEqual([1000, 600, 200]);
	});
});

describe('a mirrored yard', () => {
	it.each(['town', 'suburban'])('%s gives the mirrored picture, thin things within a pixel', (id) => {
		const yard = examples.find((one) => one.id === id)!.yard;
		const there = paint(makePlan(yard), street);
		const back = paint(makePlan(mirrored(yard)), street);
		const { width, height } = street;
		let [sum, off, kinds] = [0, 0, 0];
		for (let row = 0; row < height; row++)
			for (let column = 0; column < width; column++) {
				const p = row * width + column;
				const q = row * width + width - 1 - column;
				const at = (picture: LuminancePicture, i: number): number =>
					Math.log10(1e-3 + luminanceOf(picture.lamps[i * 3]!, picture.lamps[i * 3 + 1]!, picture.lamps[i * 3 + 2]!));
				sum++;
				if (Math.abs(at(there, p) - at(back, q)) > 0.1) off++;
				if (kindAt(there, p) !== kindAt(back, q)) kinds++;
			}
		// Edges are cast with a turned grid of four, which is not its own mirror image.
		expect(off / sum).toBeLessThan(0.03);
		expect(kinds / sum).toBeLessThan(0.02);
	});
});

describe('on any yard', () => {
	const seeds = Array.from({ length: process.env.LONG ? 300 : 12 }, (_, i) => i + 1);
	const small = { ...street, width: 96, height: 40 };
	const tiny = { ...above, width: 40, height: 40 };
	it.each([...seeds.map((seed) => [seed, randomYard(seed)] as const), [0, blankYard()] as const])(
		'yard %i: finite, never negative, known surfaces, the same again',
		(_, yard) => {
			const plan = makePlan(yard);
			for (const view of [small, tiny]) {
				const picture = paint(plan, view);
				for (const list of [picture.lamps, picture.sky, picture.lux])
					expect(list.every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
				expect(picture.surface.every((number) => number < picture.surfaces.length)).toBe(true);
				expect(paint(plan, view)).toEqual(picture);
				const shown = develop(picture, 0.3);
				expect(shown.pixels.length).toBe(view.width * view.height * 4);
			}
		}
	);
	it('the whole front stands in the picture from the street', () => {
		for (const seed of seeds) {
			const plan = makePlan(randomYard(seed));
			const camera = cameraFor(plan, street);
			for (const wall of plan.site.walls.filter((one) => one.of === 'house' && one.front))
				for (const p of [wall.from, wall.to]) {
					const depth = depthOf(camera, p.y, 0);
					const column = columnOf(camera, p.x, depth);
					expect(depth).toBeGreaterThan(0.5);
					expect(column).toBeGreaterThan(0);
					expect(column).toBeLessThan(camera.width);
					expect(rowOf(camera, p.y, 0, depth)).toBeLessThan(camera.height);
				}
		}
	});
});

describe('bands', () => {
	it('come in order and cover every row once; the last is the whole', () => {
		const rows: number[] = [];
		let kept: LuminancePicture | null = null;
		const whole = luminancePicture(example('town'), street, (picture, from, to) => {
			kept = picture;
			for (let row = from; row < to; row++) rows.push(row);
		});
		expect(rows).toEqual(Array.from({ length: street.height }, (_, i) => i));
		expect(kept).toBe(whole);
	});
});

describe('night, dusk and day', () => {
	const plan = example('suburban');
	const picture = paint(plan, street);
	const brightness = (daylight: number): number => {
		const { pixels } = develop(picture, daylight);
		return pixels.reduce((sum, value, i) => (i % 4 === 3 ? sum : sum + value), 0) / (street.width * street.height * 3);
	};
	it('the slider goes from dark to light, and lamps do not change with it', () => {
		const steps = [0, 0.25, 0.5, 0.75, 1].map(brightness);
		for (let i = 1; i < steps.length; i++) expect(steps[i]!).toBeGreaterThan(steps[i - 1]!);
		expect(steps[0]).toBeLessThan(80);
		expect(steps.at(-1)).toBeGreaterThan(100);
	});
	it('the lit wall is warm by night and the sky blue at dusk', () => {
		const mean = (kind: string, daylight: number): number[] => {
			const { pixels } = develop(picture, daylight);
			const sums = [0, 0, 0, 0];
			for (let p = 0; p < picture.surface.length; p++) {
				if (kindAt(picture, p) !== kind || (kind === 'wall' && !(picture.lux[p]! > 3 && picture.lux[p]! < 15)))
					continue;
				for (let i = 0; i < 3; i++) sums[i]! += pixels[p * 4 + i]!;
				sums[3]!++;
			}
			expect(sums[3]).toBeGreaterThan(10);
			return sums.slice(0, 3).map((sum) => sum / sums[3]!);
		};
		const [wallRed, , wallBlue] = mean('wall', 0);
		const [skyRed, , skyBlue] = mean('sky', 0.45);
		expect(wallRed! / wallBlue!).toBeGreaterThan(1.2);
		expect(skyBlue! / skyRed!).toBeGreaterThan(1.5);
	});
	it('one surface for each thing of the yard that is seen', () => {
		const kinds = sceneOf(plan).surfaces.map(({ kind }) => kind);
		for (const kind of [
			'sky',
			'lawn',
			'street',
			'wall',
			'window',
			'door',
			'roof',
			'tree',
			'walk',
			'drive',
			'bed',
			'fixture',
			'light'
		])
			expect(kinds).toContain(kind);
	});
});
