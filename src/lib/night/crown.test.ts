import { describe, expect, it } from 'vitest';
import type { Tree } from '../domain/site';
import { cameraFor } from './camera';
import { chord, crownOf, profile } from './crown';
import { growLeaves, leafCount, type Leaf } from './leaves';
import { makePlan } from '../domain/plan';
import { blankYard } from '../domain/yard';

const forms = ['round', 'spreading', 'columnar', 'conical', 'vase', 'weeping', 'multi-stem', 'palm'] as const;
const tree = (form: Tree['form'], x = 3): Tree => ({
	id: 'one',
	name: 'tree',
	at: { x, y: 4 },
	spread: 6,
	height: 8,
	crownBase: 2,
	trunkDiameter: 0.3,
	form,
	ground: 'lawn',
	light: 'soft',
	seenFrom: { x, y: 10 },
	rootRadius: 3.6
});
const leavesOf = (one: Tree, centre = 100): Leaf[] => {
	const leaves: Leaf[] = [];
	growLeaves(crownOf(one, centre), 40, 1, (leaf) => leaves.push({ ...leaf }));
	return leaves;
};

describe('crowns', () => {
	it.each(forms)('%s keeps to its spread, its height and its lowest branches, but for a ragged edge', (form) => {
		const leaves = leavesOf(tree(form));
		expect(leaves.length).toBeGreaterThan(1000);
		const out = leaves.filter(
			({ x, y, z }) => Math.hypot(x - 3, y - 4) > 3.3 || z > 8.4 || (form !== 'palm' && z < 1.2)
		);
		expect(out.length / leaves.length).toBeLessThan(0.02);
		const widest = leaves.reduce((most, { x, y }) => Math.max(most, Math.hypot(x - 3, y - 4)), 0);
		expect(widest).toBeGreaterThan(2.3);
		for (const { nx, ny, nz, lx, ly, lz } of leaves.slice(0, 500)) {
			if (form !== 'palm') expect(Math.hypot(nx, ny, nz)).toBeCloseTo(1, 9);
			expect(Math.hypot(lx, ly, lz)).toBeCloseTo(1, 9);
		}
	});
	it('profiles lie between the trunk and the outline, none beyond either end', () => {
		for (const form of forms)
			for (let t = -0.1; t <= 1.1; t += 0.05) {
				const wide = profile(form, t);
				expect(wide).toBeGreaterThanOrEqual(0);
				expect(wide).toBeLessThanOrEqual(1.08);
				if (t < 0 || t > 1) expect(wide).toBe(0);
			}
	});
	it('the same tree again, and its mirror image on the other hand', () => {
		const [there, again, other] = [leavesOf(tree('round')), leavesOf(tree('round')), leavesOf(tree('round', 7), 5)];
		expect(again).toEqual(there);
		const off = other.map((leaf, i) =>
			Math.hypot(leaf.x - 7 + there[i]!.x - 3, leaf.y - there[i]!.y, leaf.z - there[i]!.z)
		);
		expect(off.filter((metres) => metres > 1e-9)).toEqual([]);
	});
	it('fewer leaves are counted where they do not come into the picture', () => {
		const camera = cameraFor(makePlan(blankYard()), { kind: 'street', width: 200, height: 80 });
		const shown = leafCount(crownOf(tree('round', camera.x), 0), 10, camera);
		expect(shown).toBeGreaterThan(0);
		expect(leafCount(crownOf(tree('round', camera.x + 500), 0), 10, camera)).toBe(0);
	});
});
describe('the way of light through a crown', () => {
	const crown = crownOf({ ...tree('round'), height: 8, crownBase: 2, spread: 6 }, 100);
	it('straight up through a ball of radius 3 about (3, 4, 5): 6 m; half way: 3 m; past it: none', () => {
		expect(chord(crown, 3, 4, 0, 3, 4, 10)).toBeCloseTo(6, 9);
		expect(chord(crown, 3, 4, 5, 3, 4, 10)).toBeCloseTo(3, 9);
		expect(chord(crown, 7, 4, 0, 7, 4, 10)).toBe(0);
		expect(chord(crown, 3, 4, 5, 3, 4, 5)).toBe(0);
	});
	it('a chord two metres off the middle: 2√5', () => {
		expect(chord(crown, -5, 4, 7, 11, 4, 7)).toBeCloseTo(2 * Math.sqrt(5), 9);
	});
});
