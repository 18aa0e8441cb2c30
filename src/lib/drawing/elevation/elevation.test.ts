import { describe, expect, test } from 'vitest';
import { lightField } from '../../domain/light';
import { makePlan } from '../../domain/plan';
import type { Tree, Wall } from '../../domain/site';
import { examples } from '../../domain/yard';
import { drawElevation, frontWalls, wallAt } from './draw-elevation';
import { isBehind, treesAbout } from './standing';
import { keptOn, topAt, wallGrid, wallLux } from './wall-light';

const gable = { height: 3, peak: 5, length: 8 } as Wall;
describe('the upper edge of a gable', () => {
	// Eaves of 3 m and a point of 5 m over the middle of 8 m: half-way to the middle it is half-way up.
	test.each([
		[0, 3],
		[2, 4],
		[4, 5],
		[6, 4],
		[8, 3]
	])('%f m along', (s, z) => expect(topAt(gable, s)).toBeCloseTo(z, 9));
	test('without a gable it is level', () => expect(topAt({ ...gable, peak: null }, 4)).toBe(3));
	test('points beyond the face come to its edge, others stay', () => {
		const keep = keptOn({ ...gable, from: { x: 1, y: 0 } } as Wall);
		expect(keep({ x: 0, y: -9 })).toEqual({ x: 1, y: -3 });
		expect(keep({ x: 3, y: -2 })).toEqual({ x: 3, y: -2 });
		expect(keep({ x: 5, y: -9 })).toEqual({ x: 5, y: -5 });
	});
});

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('the front of %s', (_, plan) => {
	const field = lightField(plan.site, plan.fixtures, plan.runs);
	const walls = frontWalls(plan.site);
	const grids = new Map(walls.map((wall) => [wall.id, wallGrid(field, wall, 0.2)]));
	test('a node of the grid has the light of its place', () => {
		for (const wall of walls) {
			const { x, y, step, columns, values } = grids.get(wall.id)!;
			const [column, row] = [Math.floor(columns / 2), 3];
			const lux = wallLux(field, wall, x + column * step - wall.from.x, -(y + row * step));
			expect(values[row * columns + column]).toBeCloseTo(lux, 3);
		}
	});
	test.each([320, 1000])('all on the sheet, %i px wide', (width) => {
		const drawing = drawElevation(plan, grids, width)!;
		expect(JSON.stringify(drawing)).not.toMatch(/NaN|null|Infinity/);
		const keys = drawing.layers.flatMap(({ marks }) => marks.map(({ key }) => key));
		expect(new Set(keys).size).toBe(keys.length);
		for (const opening of walls.flatMap(({ openings }) => openings)) expect(keys).toContain(`opening-${opening.id}`);
		for (const { id } of plan.fixtures.filter(({ target }) => walls.some((wall) => wall.id === target.id)))
			expect(keys).toContain(`lamp-${id}`);
	});
	test('what is read is the wall that stands before the others', () => {
		for (const wall of walls) {
			const at = wallAt(plan.site, { x: (wall.from.x + wall.to.x) / 2, y: -0.1 })!;
			expect(at.wall.from.y).toBeGreaterThanOrEqual(wall.from.y);
		}
		expect(wallAt(plan.site, { x: -1e3, y: -1 })).toBeNull();
		const opening = walls.flatMap((wall) => wall.openings.map((one) => ({ wall, one })))[0];
		if (opening) {
			const { wall, one } = opening;
			const at = wallAt(plan.site, { x: wall.from.x + (one.start + one.end) / 2, y: -(one.sill + one.head) / 2 });
			expect(at?.opening?.id).toBe(one.id);
		}
	});
});

describe('what stands about the front', () => {
	const plan = makePlan(examples.find(({ id }) => id === 'suburban')!.yard);
	const walls = frontWalls(plan.site);
	const tree = (x: number, y: number): Tree => ({
		...plan.site.trees[0]!,
		id: `${x} ${y}`,
		name: 'one',
		at: { x, y },
		spread: 2
	});
	test('a tree is behind the walls that it meets, or before them', () => {
		// The left part of the front stands 1.8 m out, the right part at 0.
		expect(isBehind(tree(2, 1), walls)).toBe(true);
		expect(isBehind(tree(12, 1), walls)).toBe(false);
		expect(isBehind(tree(12, -4), walls)).toBe(true);
		expect(isBehind(tree(-5, 3), walls)).toBe(false);
	});
	test('trees far to the side are left off, those behind are drawn before walls and roof, the others after', () => {
		const site = { ...plan.site, trees: [tree(2, 6), tree(8, -12), tree(60, 6)] };
		expect(treesAbout(site, 0, 15).map(({ id }) => id)).toEqual(['8 -12', '2 6']);
		const roof = [
			{
				y: 0,
				ring: [
					{ x: -1, y: -3 },
					{ x: 16, y: -3 },
					{ x: 8, y: -6 }
				]
			}
		];
		const drawing = drawElevation({ ...plan, site }, new Map(), 800, roof)!;
		const keys = drawing.layers.flatMap(({ marks }) => marks.map(({ key }) => key));
		const place = (key: string) => keys.indexOf(key);
		expect(place('crown-8 -12')).toBeGreaterThanOrEqual(0);
		expect(place('crown-8 -12')).toBeLessThan(place('roof-0'));
		// The nearer part of the front hides the roof behind it.
		expect(place('roof-0')).toBeLessThan(place(`face-${walls.at(-1)!.id}`));
		expect(place('crown-2 6')).toBeGreaterThan(place(`face-${walls.at(-1)!.id}`));
		expect(keys).not.toContain('crown-60 6');
		expect(keys).toContain('name-2 6');
		expect(drawing.box.minY).toBeLessThan(-6);
		expect(drawing.box.minX).toBeLessThan(-1);
	});
});
