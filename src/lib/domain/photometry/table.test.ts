import { describe, expect, it } from 'vitest';
import { fullCircle } from './circle';
import { tableLumens, tablePhotometry, turned, type CandelaTable, type Symmetry } from './table';
import { radians, seeded, sphereLumens, steps, tableOf } from './photometry.testing';
import { beamExponent } from './distribution';
import published from './zonal.published.json';

const down = { x: 0, y: 0, z: -1 };
const cosine = (gamma: number): number => Math.cos(radians(gamma));
const asymmetric = (gamma: number, c: number): number =>
	100 *
	(1.2 + cosine(gamma)) *
	(2 + Math.cos(radians(c)) + 0.5 * Math.sin(radians(2 * c)) + 0.3 * Math.sin(radians(c)));

describe('lumens of a table against the analytic flux', () => {
	it.each([
		['the same everywhere', () => 100, 180, 400 * Math.PI],
		['flat diffuse', (g: number) => Math.max(0, 100 * cosine(g)), 90, 100 * Math.PI],
		['flat diffuse, dark half listed', (g: number) => Math.max(0, 100 * cosine(g)), 180, 100 * Math.PI]
	] as const)('%s in steps of 5°', (_, law, end, lumens) => {
		expect(Math.abs(tableLumens(tableOf(law, steps(0, end, 5))) / lumens - 1)).toBeLessThan(0.005);
	});
	it.each([15, 24, 36, 60, 100])('cosⁿ of a %i° beam in steps of 1°', (angle) => {
		const n = beamExponent(angle);
		const table = tableOf((g) => 1000 * Math.max(0, cosine(g)) ** n, steps(0, 90, 1));
		expect(Math.abs(tableLumens(table) / ((2000 * Math.PI) / (n + 1)) - 1)).toBeLessThan(0.005);
	});
	it('zonal constants', () => {
		const even = tableOf(() => 1, steps(0, 90, 2.5));
		for (const { from, to, constant } of published.zones)
			expect(Math.abs(tableLumens(even, from, to) - constant)).toBeLessThan(0.0006);
		expect(tableLumens(even, 12, 34) + tableLumens(even, 34, 90) + tableLumens(even, 0, 12)).toBeCloseTo(
			2 * Math.PI,
			9
		);
	});
	it('is the integral of its own interpolant, whatever the table', () => {
		const next = seeded(3);
		const planes = [0, 10, 75, 90, 200, 300, 360];
		const table = tableOf(() => 0, [0, 3, 10, 45, 60, 90, 130, 180], planes, 'none');
		for (let i = 0; i < table.candela.length; i++) table.candela[i] = 1000 * next();
		for (let ring = 0; ring < 8; ring++) table.candela[6 * 8 + ring] = table.candela[ring]!;
		const photometry = tablePhotometry(table);
		expect(Math.abs(sphereLumens(photometry, down, 1500, 1500) / photometry.lumens - 1)).toBeLessThan(2e-4);
	});
});

/** Cell by cell search and the formula of bilinear interpolation, on a table written out all round. */
function plainly({ vertical, horizontal, candela }: CandelaTable, gamma: number, c: number): number {
	const i = Math.max(
		0,
		vertical.findLastIndex((v, k) => v <= gamma && k < vertical.length - 1)
	);
	const j = Math.max(
		0,
		horizontal.findLastIndex((h, k) => h <= c && k < horizontal.length - 1)
	);
	const t = (gamma - vertical[i]!) / (vertical[i + 1]! - vertical[i]!);
	const s = (c - horizontal[j]!) / (horizontal[j + 1]! - horizontal[j]!);
	const value = (k: number, l: number): number => candela[l * vertical.length + k]!;
	return (
		(1 - t) * (1 - s) * value(i, j) +
		t * (1 - s) * value(i + 1, j) +
		(1 - t) * s * value(i, j + 1) +
		t * s * value(i + 1, j + 1)
	);
}

describe('symmetries say the same as the full table', () => {
	const c2 = (c: number): number => Math.cos(radians(2 * c));
	const laws: Record<Exclude<Symmetry, 'none'>, [(g: number, c: number) => number, number[]]> = {
		rotational: [(g) => 50 + g, [0]],
		quadrant: [(g, c) => (200 - g) * (2 + c2(c)), steps(0, 90, 15)],
		bilateral: [(g, c) => (200 - g) * (2 + Math.cos(radians(c))), steps(0, 180, 15)],
		'bilateral-90': [(g, c) => (200 - g) * (2 + Math.sin(radians(c))), steps(90, 270, 15)]
	};
	it.each(Object.entries(laws))('%s', (name, [law, planes]) => {
		const vertical = [0, 5, 15, 20, 47.5, 90, 120, 180];
		const short = tableOf(law, vertical, planes, name as Symmetry);
		const full = tableOf(law, vertical, steps(0, 360, 15), 'none');
		const [a, b] = [tablePhotometry(short), tablePhotometry(full)];
		expect(a.lumens).toBeCloseTo(b.lumens, 6);
		expect(a.symmetric).toBe(name === 'rotational');
		const next = seeded(name.length);
		for (let i = 0; i < 2000; i++) {
			const [x, c] = [2 * next() - 1, 360 * next()];
			expect(a.candela(x, c)).toBeCloseTo(b.candela(x, c), 8);
			expect(b.candela(x, c)).toBeCloseTo(plainly(full, Math.acos(x) / radians(1), c), 8);
		}
	});
	it('a table of 90 to 270 degrees without its plane at 180 closes at 0 all the same', () => {
		const law = (g: number, c: number) => (200 - g) * (300 - Math.abs(c - 180));
		const short = tableOf(law, [0, 90], [90, 130, 220, 270], 'bilateral-90');
		expect(fullCircle(short).horizontal).toEqual([0, 50, 90, 130, 180, 220, 270, 320, 360]);
		const photometry = tablePhotometry(short);
		for (const [c, mirror] of [
			[0, 180],
			[20, 160],
			[350, 190],
			[300, 240]
		] as const)
			expect(photometry.candela(0.5, c)).toBeCloseTo(photometry.candela(0.5, mirror), 8);
		const between = (law(60, 130) * 40 + law(60, 220) * 50) / 90;
		expect(photometry.candela(0.5, 180)).toBeCloseTo(between, 8);
		expect(photometry.lumens).toBeCloseTo(tableLumens(fullCircle(short)), 8);
	});
	it('planes at any angle and any azimuth, turns over included', () => {
		const next = seeded(8);
		for (let run = 0; run < 50; run++) {
			const inner = (from: number, to: number) => [
				from,
				...Array.from({ length: 1 + Math.floor(8 * next()) }, () => from + (to - from) * next()).toSorted(
					(a, b) => a - b
				),
				to
			];
			const table = tableOf(() => 1000 * next(), inner(0, 180), inner(0, 360), 'none');
			const photometry = tablePhotometry(table);
			for (let i = 0; i < 100; i++) {
				const [gamma, c] = [180 * next(), 360 * next()];
				const exact = plainly(table, gamma, c);
				expect(photometry.candela(cosine(gamma), c)).toBeCloseTo(exact, 4);
				expect(photometry.candela(cosine(gamma), c + 720)).toBeCloseTo(exact, 4);
				expect(photometry.candela(cosine(gamma), c - 360)).toBeCloseTo(exact, 4);
			}
		}
	});
});

describe('edges', () => {
	it('light on the last angle, none beyond it; nodes give their own value', () => {
		const half = tablePhotometry(tableOf((g) => 100 + g, [0, 30, 90]));
		expect(half.candela(1, 0)).toBe(100);
		expect(half.candela(1.0000001, 0)).toBe(100);
		expect(half.candela(0, 0)).toBeCloseTo(190, 9);
		expect(half.candela(cosine(30), 77)).toBeCloseTo(130, 9);
		expect(half.candela(-0.001, 0)).toBe(0);
		const back = tablePhotometry(tableOf((g) => 100 + g, [90, 180]));
		expect([back.candela(0.001, 0), back.candela(-1, 0)]).toEqual([0, 280]);
	});
});

describe('turned end for end', () => {
	it.each([
		['none', steps(0, 360, 30)],
		['bilateral-90', [90, 120, 200, 270]],
		['bilateral', steps(0, 180, 30)],
		['quadrant', steps(0, 90, 30)],
		['rotational', [0]]
	] as [Symmetry, number[]][])(
		'%s: what went up goes along the axis, nothing changes in the yard',
		(symmetry, planes) => {
			const table = tableOf(asymmetric, steps(0, 180, 10), planes, symmetry);
			const [a, b] = [tablePhotometry(table), tablePhotometry(turned(table))];
			expect(b.lumens).toBeCloseTo(a.lumens, 8);
			const next = seeded(2);
			for (let i = 0; i < 500; i++) {
				const [x, c] = [2 * next() - 1, 360 * next()];
				expect(b.candela(-x, 360 - c)).toBeCloseTo(a.candela(x, c), 8);
			}
			expect(turned(turned(table))).toEqual(table);
		}
	);
});
