import { describe, expect, it } from 'vitest';
import { makePlan } from '../domain/plan';
import { blankYard, examples, type Yard } from '../domain/yard';
import { cameraFor, columnOf, depthOf, rowOf } from './camera';
import { luminancePicture } from './index';
import { standOf } from './fit';
import { standpointOf } from './stand';
import type { View } from './types';

const street: View = { kind: 'street', width: 640, height: 360 };
const front = (): Yard => ({
	...blankYard(),
	house: { sections: [{ id: 'a', width: 10, light: 'none' }], depth: 8, eaves: 3, openings: [], porches: [] },
	lot: { street: 8, left: 6, right: 6 },
	trees: [],
	walks: [],
	drives: []
});

describe('signs, numbers and the transformer', () => {
	const yard: Yard = {
		...front(),
		spots: {
			...blankYard().spots,
			numbers: [
				{ id: 'n', kind: 'number', light: true, at: { along: 7, out: 0 } },
				{ id: 's', kind: 'sign', name: 'orchard board', width: 1.2, light: true, at: { along: 2, out: 5 } }
			]
		}
	};
	const plan = makePlan(yard);
	const picture = luminancePicture(plan, street);
	const camera = cameraFor(plan, street);
	const seenAt = (x: number, y: number, z: number): string => {
		const depth = depthOf(camera, y, z);
		const p = Math.floor(rowOf(camera, y, z, depth)) * street.width + Math.floor(columnOf(camera, x, depth));
		const { kind, name } = picture.surfaces[picture.surface[p]!]!;
		return `${kind} ${name}`;
	};
	it('a number hangs on its wall, 1.5 m up', () => {
		expect(seenAt(7, 0.04, 1.5)).toBe('sign house number');
		expect(seenAt(7, 0.04, 1.2)).toMatch(/^wall/);
		expect(seenAt(6.7, 0.04, 1.5)).toMatch(/^wall/);
	});
	it('a sign stands on posts, 0.9 m up at its middle, as wide as it was told', () => {
		expect(seenAt(2, 5.04, 0.9)).toBe('sign orchard board');
		expect(seenAt(1.45, 5.04, 0.9)).toBe('sign orchard board');
		expect(seenAt(1.2, 5.04, 0.9)).not.toMatch(/^sign/);
		expect(seenAt(2, 5.04, 0.4)).not.toMatch(/^sign/);
	});
	it('the transformer hangs where the plan has it', () => {
		const suburban = makePlan(examples.find(({ id }) => id === 'suburban')!.yard);
		const { supply } = suburban;
		const view = cameraFor(suburban, street);
		const seen = luminancePicture(suburban, street);
		const boxed: { column: number; row: number }[] = [];
		seen.surface.forEach((number, p) => {
			if (seen.surfaces[number]!.kind === 'transformer')
				boxed.push({ column: (p % street.width) + 0.5, row: Math.floor(p / street.width) + 0.5 });
		});
		expect(boxed.length).toBeGreaterThan(4);
		const depth = depthOf(view, supply!.at.y, 0);
		const middle = boxed.reduce((sum, { column }) => sum + column, 0) / boxed.length;
		expect(Math.abs(middle - columnOf(view, supply!.at.x, depth))).toBeLessThan(1.5);
		const foot = Math.max(...boxed.map(({ row }) => row));
		expect(Math.abs(foot - rowOf(view, 0, supply!.mountHeight, depth))).toBeLessThan(2);
	});
});

describe('where one stands', () => {
	const plan = (id: string) => makePlan(examples.find((one) => one.id === id)!.yard);
	it('across the street where the front is near it, on the drive where it lies far back', () => {
		expect(standOf(plan('suburban')).strip).toBeNull();
		expect(standOf(plan('town')).strip).toBeNull();
		const { strip, away } = standOf(plan('rural'));
		expect(strip?.kind).toBe('drive');
		expect(away).toBeGreaterThan(16);
		expect(away).toBeLessThanOrEqual(32);
	});
	it('from there the front fills a good part of the picture, and nothing stands before it', () => {
		const rural = plan('rural');
		const picture = luminancePicture(rural, street);
		const camera = cameraFor(rural, street);
		const { at } = standpointOf(rural)!;
		expect([camera.x, camera.y]).toEqual([at.x, at.y]);
		const depth = depthOf(camera, 0, 0);
		const [left, right] = [0, 16].map((x) => columnOf(camera, x, depth)) as [number, number];
		expect((right - left) / street.width).toBeGreaterThan(0.35);
		const row = Math.floor(rowOf(camera, 0, 2, depth));
		let [house, all] = [0, 0];
		for (let column = Math.ceil(left + 1); column < right - 1; column++) {
			const { kind } = picture.surfaces[picture.surface[row * street.width + column]!]!;
			all++;
			if (['wall', 'window', 'door'].includes(kind)) house++;
		}
		expect(house / all).toBeGreaterThan(0.95);
	});
	it('a yard of which nothing is known is looked at from the street', () => {
		expect(standOf(makePlan(blankYard()))).toEqual({ strip: null, away: null });
	});
});
