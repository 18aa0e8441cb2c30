import { describe, expect, it } from 'vitest';
import type { MeasuredLight } from '../../domain/shared/catalogue';
import { drawPolar } from './draw-polar';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const light = (
	law: (g: number, c: number) => number,
	vertical: number[],
	horizontal: number[] = [0],
	symmetry: MeasuredLight['symmetry'] = 'rotational'
): MeasuredLight => ({
	name: 'Lamp',
	vertical,
	horizontal,
	symmetry,
	candela: horizontal.flatMap((c) => vertical.map((g) => law(g, c)))
});
const upTo = (end: number): number[] => Array.from({ length: end / 5 + 1 }, (_, i) => i * 5);
const points = (d: string) =>
	d
		.slice(1, -1)
		.split('L')
		.map((pair) => pair.split(' ').map(Number) as [number, number]);

describe('the polar curve', () => {
	it('of a flat diffuse disc is a circle that touches the lamp: r = R·cos γ', () => {
		const drawing = drawPolar(
			light((g) => 100 * Math.cos(radians(g)), upTo(90)),
			300
		);
		const { centre, radius, rings, curves, whole } = drawing;
		expect([whole, curves.length, curves[0]!.plane]).toEqual([false, 1, '']);
		const R = radius / 2;
		for (const [x, y] of points(curves[0]!.d))
			expect(Math.abs(Math.hypot(x - centre.x, y - centre.y - R) / R - 1)).toBeLessThan(0.005);
		expect(rings.map(({ candela }) => candela)).toEqual([50, 100]);
		expect(rings.at(-1)!.r).toBeCloseTo(radius, 3);
	});
	it('has both sides of each plane, and goes all round where light does', () => {
		const aside = light((g, c) => (c === 0 ? 80 : c === 180 ? 40 : 20), upTo(180), [0, 90, 180], 'bilateral');
		const { curves, centre, whole, radius, height } = drawPolar(aside, 300);
		expect(whole).toBe(true);
		expect(curves.map(({ plane, dash }) => [plane, dash !== undefined])).toEqual([
			['C0–C180', false],
			['C90–C270', true]
		]);
		const xs = points(curves[0]!.d).map(([x]) => x - centre.x);
		expect(Math.max(...xs) / radius).toBeCloseTo(1, 2);
		expect(Math.min(...xs) / radius).toBeCloseTo(-0.5, 2);
		expect(height).toBeGreaterThan(2 * radius);
	});
	it('keeps inside its drawing at any width', () => {
		for (const width of [220, 300, 400]) {
			const {
				curves,
				width: w,
				height
			} = drawPolar(
				light((g) => (g < 20 ? 900 : 3), upTo(90)),
				width
			);
			for (const [x, y] of points(curves[0]!.d)) {
				expect(x >= 0 && x <= w && y >= 0 && y <= height).toBe(true);
			}
		}
	});
});
