import { describe, expect, it } from 'vitest';
import { adaptation, bradford } from './adapt';
import { colourAt, linearOf, luminanceOf, planckian } from './colour';
import published from './colour.published.json';
import { tone } from './develop';
import { encode } from './tables';

const white = (pair: number[]) => ({ x: pair[0]!, y: pair[1]! });

describe('published colour', () => {
	it.each(published.planckian)('full radiator at %f K', (kelvin, x, y) => {
		const found = planckian(kelvin);
		// Largest residual 0.0007, of the cubic approximation at 2000 K.
		expect(Math.abs(found.x - x)).toBeLessThan(0.0008);
		expect(Math.abs(found.y - y)).toBeLessThan(0.0008);
	});
	it('D65 is the white of sRGB', () => {
		// The matrix of the standard has four places.
		for (const channel of linearOf(white(published.d65))) expect(channel).toBeCloseTo(1, 2);
	});
	it('Bradford from D65 to A', () => {
		bradford(white(published.d65), white(published.a)).forEach((value, i) =>
			expect(Math.abs(value - published.d65ToA[i]!)).toBeLessThan(5e-4)
		);
	});
	it('sRGB encoding', () => {
		for (const [linear, code] of published.encode) expect(encode(linear!)).toBeCloseTo(code!, 4);
	});
	it('tone curve of Reinhard et al. 2002: half of white at 1 with no burn-out, white at the chosen white', () => {
		expect(tone(1, Infinity)).toBe(0.5);
		expect(tone(0.18, Infinity)).toBeCloseTo(0.18 / 1.18, 12);
		for (const most of [1.5, 4, 30]) expect(tone(most, most)).toBeCloseTo(1, 12);
	});
});
describe('colours of lamps', () => {
	it('one candela per square metre stays one at every temperature, warmer is redder', () => {
		let last = Infinity;
		for (let kelvin = 1800; kelvin <= 6500; kelvin += 100) {
			const [r, g, b] = colourAt(kelvin);
			expect(luminanceOf(r, g, b)).toBeCloseTo(1, 9);
			expect(r / Math.max(b, 1e-9)).toBeLessThan(last);
			last = r / Math.max(b, 1e-9);
		}
	});
	it('the white that the eye has adapted to is shown white', () => {
		for (const kelvin of [2700, 3000, 4200]) {
			const m = adaptation(kelvin);
			const [r, g, b] = colourAt(kelvin);
			const seen = [0, 3, 6].map((i) => m[i]! * r + m[i + 1]! * g + m[i + 2]! * b);
			for (const channel of seen) expect(channel / seen[1]!).toBeCloseTo(1, 2);
		}
	});
});
