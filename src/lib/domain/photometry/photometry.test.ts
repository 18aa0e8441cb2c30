import { describe, expect, it } from 'vitest';
import { beam, everywhere, illuminance, intensity, lambertian, pathHead, towards, type Distribution } from './index';
import published from './photometry.published.json';

const up = { x: 0, y: 0, z: 1 };
const down = { x: 0, y: 0, z: -1 };

/** Lumens by integration over the sphere in cos γ, midpoint rule with a node at the shade's rim. */
function lumens(distribution: Distribution, steps = 40_000): number {
	const { cosCut } = distribution;
	let sum = 0;
	for (let i = 0; i < steps; i++) {
		const cosine = cosCut + ((1 - cosCut) * (i + 0.5)) / steps;
		sum += intensity(distribution, cosine);
	}
	return (2 * Math.PI * sum * (1 - cosCut)) / steps;
}

describe('published values', () => {
	it('bare lamp on a tilted surface', () => {
		const { lumens: flux, cosine, metres, lux, candela } = published.bareLamp;
		const source = { at: { x: 0, y: 0, z: metres }, axis: down, distribution: everywhere(flux) };
		const normal = { x: Math.sqrt(1 - cosine * cosine), y: 0, z: cosine };
		expect(source.distribution.centre).toBeCloseTo(candela, 3);
		// The problem's own answer is rounded to whole lux.
		expect(Math.abs(illuminance(source, { x: 0, y: 0, z: 0 }, normal) - lux)).toBeLessThan(0.05);
	});
	it('pool of light on a table', () => {
		const { below, height, aside, lux } = published.poolOnTable;
		const source = {
			at: { x: 0, y: 0, z: height },
			axis: down,
			distribution: everywhere(below * height ** 2 * 4 * Math.PI)
		};
		expect(illuminance(source, { x: 0, y: 0, z: 0 }, up)).toBeCloseTo(below, 9);
		expect(illuminance(source, { x: aside, y: 0, z: 0 }, up)).toBeCloseTo(lux, 2);
	});
	it('half the centre intensity at the edge of the beam', () => {
		const { beamAngle, metres, feetWide } = published.spot36;
		const aside = (feetWide * 0.3048) / 2;
		const edge = metres / Math.hypot(metres, aside);
		const spot = beam(300, beamAngle);
		// The width is printed to a thousandth of a foot: that is where the residual comes from.
		expect(intensity(spot, edge) / spot.centre).toBeCloseTo(0.5, 3);
	});
	it('candela per lumen of a 36 degree beam', () => {
		expect(beam(1, published.perLumen36.beamAngle).centre).toBeCloseTo(published.perLumen36.candelaPerLumen, 3);
	});
	it('a flat diffuse source', () => {
		const { candela, lumens: flux } = published.lambertian;
		expect(lambertian(flux).centre).toBeCloseTo(candela, 3);
	});
});

describe('every model gives its lumens back', () => {
	const models: [string, Distribution][] = [
		...[10, 15, 24, 36, 60, 100, 120, 170].map((angle): [string, Distribution] => [`beam ${angle}`, beam(500, angle)]),
		['path head 120', pathHead(500, 120)],
		['path head 90, shade 60', pathHead(500, 90, 60)],
		['flat', lambertian(500)],
		['everywhere', everywhere(500)]
	];
	it.each(models)('%s', (_, distribution) => {
		expect(lumens(distribution)).toBeCloseTo(500, 2);
	});
	it('a 120 degree beam is the flat diffuse source', () => {
		expect(beam(100, 120).n).toBeCloseTo(1, 12);
		expect(beam(100, 120).centre).toBeCloseTo(lambertian(100).centre, 9);
	});
});

describe('dark where it has to be', () => {
	const head = { at: { x: 0, y: 0, z: 0.5 }, axis: down, distribution: pathHead(150, 120) };
	it('beyond the shade, behind a surface, at the source', () => {
		expect(illuminance(head, { x: 10, y: 0, z: 0.5 }, { x: -1, y: 0, z: 0 })).toBe(0);
		expect(illuminance(head, { x: 1, y: 0, z: 0 }, down)).toBe(0);
		expect(illuminance(head, head.at, up)).toBe(0);
		expect(towards(head.at, head.at)).toEqual(up);
	});
	it('four times the distance, a sixteenth of the light', () => {
		const near = illuminance(head, { x: 0, y: 0, z: 0 }, up);
		const far = illuminance({ ...head, at: { x: 0, y: 0, z: 2 } }, { x: 0, y: 0, z: 0 }, up);
		expect(near / far).toBeCloseTo(16, 9);
	});
});
