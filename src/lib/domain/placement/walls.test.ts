import { describe, expect, it } from 'vitest';
import { illuminance, towards, beam } from '../photometry';
import { blankYard } from '../yard';
import { fixtureModels } from '../shared/catalogue';
import { tradeFigures } from '../shared/settings';
import { makeSite, type Wall } from '../site';
import { endReach, lampOnWall, rowExtremes, widestSpacing, type Row } from './evenness';
import { layOut, piersOf, type Span } from './layout';
import { planWall } from './wall-plan';
import { placeFixtures } from './index';
import published from './placement.published.json';

const row = (beamAngle: number, height: number, share: number): Row => ({
	distribution: beam(400, beamAngle),
	setback: height * share,
	lampHeight: 0.15,
	aimHeight: height / 2,
	middle: height / 2
});
const spacingOf = (r: Row): number => widestSpacing(lampOnWall(r), Math.hypot(r.setback, r.middle - r.lampHeight), 3);

describe('widest spacing', () => {
	it('the row formula is the general one', () => {
		const r = row(60, 2.7, 0.3);
		const at = { x: 0, y: r.setback, z: r.lampHeight };
		const source = { at, axis: towards(at, { x: 0, y: 0, z: r.aimHeight }), distribution: r.distribution };
		for (const x of [0, 0.3, 1, 2.5, 7])
			expect(lampOnWall(r)(x)).toBeCloseTo(illuminance(source, { x, y: 0, z: r.middle }, { x: 0, y: 1, z: 0 }), 9);
	});
	it.each([2.4, 2.7, 3, 4])('comes to what the trade says at a third of a %s m wall', (height) => {
		const { low60, high60, below36 } = published.wallSpacing;
		const wide = row(60, height, 1 / 3);
		expect(spacingOf(wide) / wide.setback).toBeGreaterThan(low60);
		expect(spacingOf(wide) / wide.setback).toBeLessThan(high60);
		const narrow = row(36, height, 1 / 3);
		expect(spacingOf(narrow) / narrow.setback).toBeLessThan(below36);
	});
	it.each([15, 24, 36, 60])(
		'a beam of %s degrees: a plain search over a long row of 41 lamps finds the same',
		(angle) => {
			const r = row(angle, 3, 0.3);
			const one = lampOnWall(r);
			const ratio = (spacing: number): number => {
				let most = 0;
				let least = Infinity;
				for (let i = 0; i <= 100; i++) {
					let lux = 0;
					for (let k = -20; k <= 20; k++) lux += one((spacing * i) / 100 - k * spacing);
					most = Math.max(most, lux);
					least = Math.min(least, lux);
				}
				return most / least;
			};
			let plain = 0.02;
			while (ratio(plain + 0.005) <= 3) plain += 0.005;
			expect(Math.abs(spacingOf(r) - plain)).toBeLessThan(0.01);
			const { most, least } = rowExtremes(one, spacingOf(r));
			expect(most / least).toBeCloseTo(3, 2);
		}
	);
	it('beyond the last lamp the light falls to a third where it says', () => {
		const one = lampOnWall(row(60, 3, 0.3));
		const spacing = 2;
		const x = endReach(one, spacing, 3);
		let lux = 0;
		for (let k = 0; k < 30; k++) lux += one(x + k * spacing);
		expect(rowExtremes(one, spacing).most / lux).toBeCloseTo(3, 1);
	});
});

describe('setback', () => {
	const model = fixtureModels.find((m) => m.body === 'wash')!;
	it('a wash stands off a quarter to a third of what is lit', () => {
		for (const height of [1.2, 2.7, 5, 12]) {
			const { litHeight, setbacks } = planWall({ height, texture: 'smooth' }, model, tradeFigures.figures);
			for (const s of setbacks) {
				expect(s).toBeGreaterThanOrEqual(litHeight / 4 - 1e-9);
				expect(s).toBeLessThanOrEqual(litHeight / 3 + 1e-9);
			}
		}
	});
	it('grazing light within 300 mm', () => {
		for (const s of planWall({ height: 2, texture: 'rough' }, model, tradeFigures.figures).setbacks)
			expect(s).toBeLessThanOrEqual(0.3);
	});
});

describe('along the wall', () => {
	const lay = (length: number, openings: Span[], spacing = 2, closed = 0.3): readonly number[] => {
		const free = (at: number): boolean =>
			at >= 0 && at <= length && !openings.some((o) => at > o.start - closed + 1e-9 && at < o.end + closed - 1e-9);
		const count = Math.ceil(length / 0.25);
		const places = Array.from({ length: count }, (_, i) => ((i + 0.5) * length) / count).filter(free);
		return layOut({ piers: piersOf(length, openings), length, spacing, end: 0.8, prefer: 1, free, places });
	};
	it('an empty wall: even, end to end', () => {
		const list = lay(10, []);
		expect(list[0]).toBeCloseTo(0.8, 9);
		expect(list.at(-1)).toBeCloseTo(9.2, 9);
		for (let i = 1; i < list.length; i++) expect(list[i]! - list[i - 1]!).toBeLessThanOrEqual(2.1);
	});
	it('symmetric about a door in the middle, and none before it', () => {
		const list = lay(12, [{ start: 5.5, end: 6.5 }]);
		expect(list.map((at) => 12 - at).reverse()).toEqual(list.map((at) => expect.closeTo(at, 9)));
		expect(list.some((at) => at > 5.2 && at < 6.8)).toBe(false);
	});
	it('a wall that is all window has no place', () => {
		expect(lay(3, [{ start: 0.1, end: 2.9 }])).toEqual([]);
	});
	it('openings that overlap and stick out leave the true piers', () => {
		expect(
			piersOf(10, [
				{ start: 3, end: 6 },
				{ start: 4, end: 5 },
				{ start: 9, end: 12 }
			])
		).toEqual([
			{ start: 0, end: 3 },
			{ start: 6, end: 9 }
		]);
	});
});

describe('on a site', () => {
	const wall: Wall = {
		id: 'stone',
		name: 'stone wall',
		of: 'garden',
		from: { x: 0, y: 0 },
		to: { x: 20, y: 0 },
		outward: { x: 0, y: 1 },
		length: 20,
		height: 2,
		peak: null,
		finish: 'medium',
		texture: 'rough',
		light: 'soft',
		openings: [],
		front: false
	};
	const place = (walls: Wall[]) =>
		placeFixtures({ ...makeSite(blankYard()), street: 50, leftBoundary: -50, rightBoundary: 50, walls }, blankYard());
	it('rough stone is grazed over its whole length', () => {
		const { fixtures } = place([wall]);
		const plan = planWall(
			wall,
			fixtureModels.find((m) => m.id === fixtures[0]!.model)!,
			tradeFigures.figures
		);
		const xs = fixtures.map((f) => f.at.x).sort((a, b) => a - b);
		for (let i = 1; i < xs.length; i++) expect(xs[i]! - xs[i - 1]!).toBeLessThanOrEqual(plan.spacing + 1e-9);
		expect(fixtures.every((f) => f.technique === 'graze')).toBe(true);
	});
	it('a low wall is a finding, not a row of lamps', () => {
		const { fixtures, findings } = place([{ ...wall, height: 0.5 }]);
		expect(fixtures).toEqual([]);
		expect(findings.map((f) => f.code)).toEqual(['placement.wall-low']);
	});
	it('a wall without end is held to what a person would set', () => {
		const { fixtures, findings } = place([{ ...wall, to: { x: 45, y: 0 }, length: 45, height: 1 }]);
		expect(fixtures.length).toBeLessThanOrEqual(61);
		expect(findings.map((f) => f.code)).toContain('placement.too-many');
	});
});
