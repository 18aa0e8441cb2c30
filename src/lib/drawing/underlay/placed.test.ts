import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Underlay } from '../../domain/yard';
import { bySecondPlace, measured, offBy, placed, toPicture, toYard } from '.';

const picture: Underlay = { picture: 'a'.repeat(64), width: 2400, height: 1600, opacity: 0.6 };

/** Complex numbers, written out: a plane similarity that keeps its sense is z → αz + β, |α| its scale and arg α its turn. */
type Complex = { re: number; im: number };
const times = (p: Complex, q: Complex): Complex => ({ re: p.re * q.re - p.im * q.im, im: p.re * q.im + p.im * q.re });
const plus = (p: Complex, q: Complex): Complex => ({ re: p.re + q.re, im: p.im + q.im });
const minus = (p: Complex, q: Complex): Complex => ({ re: p.re - q.re, im: p.im - q.im });
const over = (p: Complex, q: Complex): Complex => {
	const size = q.re ** 2 + q.im ** 2;
	return { re: (p.re * q.re + p.im * q.im) / size, im: (p.im * q.re - p.re * q.im) / size };
};
const complex = ({ x, y }: { x: number; y: number }): Complex => ({ re: x, im: y });
const polar = (size: number, degrees: number): Complex => ({
	re: size * Math.cos((degrees * Math.PI) / 180),
	im: size * Math.sin((degrees * Math.PI) / 180)
});
const modulus = ({ re, im }: Complex) => Math.hypot(re, im);

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pixel = fc.record({ x: number(0, 2400), y: number(0, 1600) });
const calibrated = fc
	.record({
		from: pixel,
		to: pixel,
		apart: number(0.2, 500),
		at: fc.record({ along: number(-200, 200), out: number(-200, 200) }),
		turn: number(0, 360)
	})
	.filter(({ from, to }) => Math.hypot(from.x - to.x, from.y - to.y) > 30);
const runs = { numRuns: process.env.LONG ? 20_000 : 2_000 };

describe('a picture laid under the drawing', () => {
	it('lies as complex numbers say', () =>
		fc.assert(
			fc.property(calibrated, pixel, (told, at) => {
				const alpha = polar(told.apart / modulus(minus(complex(told.to), complex(told.from))), told.turn);
				const beta = minus({ re: told.at.along, im: told.at.out }, times(alpha, complex(told.from)));
				const expected = plus(times(alpha, complex(at)), beta);
				const found = toYard(placed({ ...picture, ...told }), at);
				expect(Math.hypot(found.x - expected.re, found.y - expected.im)).toBeLessThan(1e-9 * (1 + modulus(expected)));
			}),
			runs
		));
	it('goes to the yard and back', () =>
		fc.assert(
			fc.property(calibrated, pixel, (told, at) => {
				const lies = placed({ ...picture, ...told });
				const back = toPicture(lies, toYard(lies, at));
				expect(Math.hypot(back.x - at.x, back.y - at.y) * lies.metresPerPixel).toBeLessThan(1e-9);
			}),
			runs
		));
	it('has its first mark where it was said, and the second as far away as it was said', () =>
		fc.assert(
			fc.property(calibrated, (told) => {
				const underlay = { ...picture, ...told };
				const first = toYard(placed(underlay), told.from);
				expect(first.x).toBeCloseTo(told.at.along, 9);
				expect(first.y).toBeCloseTo(told.at.out, 9);
				expect(measured(underlay, told.from, told.to)).toBeCloseTo(told.apart, 9);
			}),
			runs
		));
	it('turned by a second place, its second mark lies on it', () =>
		fc.assert(
			fc.property(calibrated, number(-180, 180), (told, way) => {
				const second = polar(told.apart, way);
				const place = { along: told.at.along + second.re, out: told.at.out + second.im };
				const found = bySecondPlace({ ...picture, ...told }, place)!;
				expect(found.apart).toBeCloseTo(told.apart, 9);
				const alpha = over(second, minus(complex(told.to), complex(told.from)));
				expect(Math.cos((found.turn * Math.PI) / 180)).toBeCloseTo(alpha.re / modulus(alpha), 9);
				expect(Math.sin((found.turn * Math.PI) / 180)).toBeCloseTo(alpha.im / modulus(alpha), 9);
				const lies = toYard(placed({ ...picture, ...told, turn: found.turn }), told.to);
				expect(Math.hypot(lies.x - place.along, lies.y - place.out)).toBeLessThan(1e-6);
			}),
			runs
		));
	it('turns clockwise as the drawing is looked at, the street below', () => {
		const told = { from: { x: 0, y: 0 }, to: { x: 100, y: 0 }, apart: 10, at: { along: 0, out: 0 }, turn: 90 };
		expect(toYard(placed({ ...picture, ...told }), told.to)).toEqual({ x: expect.closeTo(0), y: expect.closeTo(10) });
	});

	it.each([
		['nothing is told', {}],
		['one place is marked', { from: { x: 5, y: 5 } }],
		['both marks are on one pixel', { from: { x: 5, y: 5 }, to: { x: 6, y: 5 }, apart: 20 }],
		['the distance is not told', { from: { x: 5, y: 5 }, to: { x: 500, y: 5 } }]
	])('is not to scale while %s, and is shown all the same', (_, told) => {
		const lies = placed({ ...picture, ...told });
		expect(lies.isToScale).toBe(false);
		expect(Math.hypot(lies.corners[1].x - lies.corners[0].x, lies.corners[1].y - lies.corners[0].y)).toBeCloseTo(30);
		expect(measured({ ...picture, ...told }, { x: 0, y: 0 }, { x: 9, y: 9 })).toBeNull();
	});
	it('keeps its shape: corners go round it, square to each other', () =>
		fc.assert(
			fc.property(calibrated, (told) => {
				const { corners, metresPerPixel } = placed({ ...picture, ...told });
				const side = (i: number) => minus(complex(corners[(i + 1) % 4]!), complex(corners[i]!));
				for (const [i, pixels] of [2400, 1600, 2400, 1600].entries())
					expect(modulus(side(i)) / metresPerPixel).toBeCloseTo(pixels, 4);
				// From the upper side to the right one is a quarter turn clockwise: never mirrored.
				expect(over(side(1), side(0)).im).toBeGreaterThan(0);
			}),
			runs
		));
	it('a length off by a share', () => expect(offBy(24.2, 24)).toBeCloseTo(0.2 / 24, 12));
	it.each([
		['a mark is missing', { at: { along: 0, out: 0 }, from: { x: 1, y: 1 } }],
		['the first place is missing', { from: { x: 1, y: 1 }, to: { x: 50, y: 1 } }],
		['the places coincide', { at: { along: 3, out: 3 }, from: { x: 1, y: 1 }, to: { x: 50, y: 1 } }]
	])('no turn by a second place while %s', (_, told) =>
		expect(bySecondPlace({ ...picture, ...told }, { along: 3, out: 3 })).toBeNull()
	);
});
