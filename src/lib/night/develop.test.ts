/** The fast developer against the slow way: the same steps pixel by pixel, with logarithms, powers and roots in place of tables. */
import { describe, expect, it } from 'vitest';
import { makePlan } from '../domain/plan';
import { blankYard, examples } from '../domain/yard';
import { luminanceOf } from './colour';
import { developer, dimness, hourOf, tone } from './develop';
import { exposureOf } from './exposure';
import { luminancePicture } from './index';
import { dayLux } from './sky';
import { codes, codeSteps, encode, fillPowers, newPowers, numberAt, placeOf } from './tables';
import type { LuminancePicture, View } from './types';
import { veilPart } from './veil';

const rodColour = [0.75, 0.98, 1.55];
const [cell, most] = [8, 3];

/** What is shown before the veil, linear. */
function exposed({ lamps, sky, surface, view }: LuminancePicture, daylight: number): number[] {
	const { onThings, ofSky, deep, white: m } = hourOf(daylight);
	const exposure = exposureOf({ lamps, sky, view } as LuminancePicture, onThings, daylight);
	const even = dayLux / Math.PI;
	return Array.from(surface, (seen, p) => {
		const mixed = [0, 1, 2].map((k) => {
			const by = sky[3 * p + k]!;
			return lamps[3 * p + k]! + (seen === 0 ? ofSky[k]! * (by / even) ** deep : onThings[k]! * by);
		});
		const white = [0, 3, 6].map((i) =>
			Math.max(0, m[i]! * mixed[0]! + m[i + 1]! * mixed[1]! + m[i + 2]! * mixed[2]!)
		) as [number, number, number];
		const luminance = luminanceOf(...white);
		if (luminance <= 0) return [0, 0, 0];
		const dim = dimness(luminance);
		const by = tone(exposure.key * luminance, exposure.white) / luminance;
		return white.map((value, k) => by * (value + (luminance * rodColour[k]! - value) * dim));
	}).flat();
}
/** The veil by cell: means of what lies in each, then three box filters of five cells along rows and columns. */
function veilOf(shown: number[], width: number, height: number): { columns: number; rows: number; light: number[] } {
	const [columns, rows] = [Math.ceil(width / cell) + 1, Math.ceil(height / cell) + 1];
	let light = Array.from({ length: columns * rows * 3 }, () => 0);
	shown.forEach((value, q) => {
		const [p, k] = [Math.floor(q / 3), q % 3];
		const at = Math.floor(Math.floor(p / width) / cell) * columns + Math.floor((p % width) / cell);
		light[at * 3 + k]! += Math.min(most, value) / cell ** 2;
	});
	const bounded = (value: number, last: number) => Math.min(last, Math.max(0, value));
	for (let round = 0; round < 3; round++)
		for (const [dx, dy] of [
			[1, 0],
			[0, 1]
		] as const)
			light = light.map((_, q) => {
				const [at, k] = [Math.floor(q / 3), q % 3];
				const [x, y] = [at % columns, Math.floor(at / columns)];
				const near = [-2, -1, 0, 1, 2].map(
					(n) => light[(bounded(y + n * dy, rows - 1) * columns + bounded(x + n * dx, columns - 1)) * 3 + k]!
				);
				return near.reduce((sum, value) => sum + value, 0) / 5;
			});
	return { columns, rows, light };
}
function slowly(picture: LuminancePicture, daylight: number): number[] {
	const { width, height } = picture.view;
	const shown = exposed(picture, daylight);
	const { columns, rows, light } = veilOf(shown, width, height);
	return Array.from({ length: width * height }, (_, p) => {
		const x = Math.max(0, ((p % width) + 0.5) / cell - 0.5);
		const y = Math.max(0, (Math.floor(p / width) + 0.5) / cell - 0.5);
		const [i, j] = [Math.min(columns - 2, Math.floor(x)), Math.min(rows - 2, Math.floor(y))];
		const linear = [0, 1, 2].map((k) => {
			const at = (a: number, b: number) => light[((j + b) * columns + i + a) * 3 + k]!;
			const [u, v] = [x - i, y - j];
			const veil = (at(0, 0) * (1 - u) + at(1, 0) * u) * (1 - v) + (at(0, 1) * (1 - u) + at(1, 1) * u) * v;
			return (1 - veilPart) * shown[3 * p + k]! + veilPart * veil;
		}) as [number, number, number];
		const brightest = Math.max(...linear);
		if (brightest <= 1) return [...linear.map((value) => 255 * encode(value)), 255];
		const lightness = Math.min(1, luminanceOf(...linear));
		const pale = (1 - lightness) / Math.max(1e-9, brightest - lightness);
		return [...linear.map((value) => 255 * encode(Math.min(1, lightness + (value - lightness) * pale))), 255];
	}).flat();
}

describe('the fast developer keeps to the slow way within 2 of 255', () => {
	const yards = [...examples.map(({ id, yard }) => [id, yard] as const), ['blank', blankYard()] as const];
	const views: View[] = [
		{ kind: 'street', width: 203, height: 115 },
		{ kind: 'above', width: 101, height: 120 }
	];
	it.each(yards)('%s', (_, yard) => {
		const plan = makePlan(yard);
		for (const view of views) {
			const picture = luminancePicture(plan, view);
			const develop = developer(picture);
			for (const daylight of [0, 0.15, 0.4, 0.7, 1]) {
				const { pixels } = develop(daylight);
				const wanted = slowly(picture, daylight);
				let worst = 0;
				wanted.forEach((value, i) => (worst = Math.max(worst, Math.abs(value - pixels[i]!))));
				// Rounding to whole codes is half of one; the tables add as much again.
				expect(worst).toBeLessThan(2);
			}
		}
	});
	it('a picture already handed out stays when the next hour is developed', () => {
		const develop = developer(luminancePicture(makePlan(examples[0]!.yard), { kind: 'street', width: 64, height: 36 }));
		const night = develop(0);
		const kept = Uint8ClampedArray.from(night.pixels);
		develop(1);
		expect(night.pixels).toEqual(kept);
		expect(develop(0)).toEqual(night);
	});
});

describe('tables', () => {
	it('a number and the middle of its place differ by 1/1024 at most, over all octaves', () => {
		for (let value = 1e-11; value < 1e8; value *= 1.0137)
			expect(Math.abs(numberAt(placeOf(value)) / value - 1)).toBeLessThanOrEqual(1 / 1023);
		expect(placeOf(0)).toBe(0);
		expect(numberAt(placeOf(1e30))).toBeGreaterThan(1e9);
	});
	it('codes of sRGB by steps', () => {
		for (let value = 0; value <= 1; value += 1 / 5000)
			expect(Math.abs(codes[Math.round(value * codeSteps)]! - 255 * encode(value))).toBeLessThan(0.6 + 1e-9);
	});
	it('powers', () => {
		const powers = newPowers(2);
		fillPowers(powers, 2.3, 3);
		for (const value of [0, 0.2, 1, 1.7])
			expect(powers.table[Math.round(value * powers.scale)]! / 3).toBeCloseTo(value ** 2.3, 3);
	});
});
