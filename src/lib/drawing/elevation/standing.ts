/** What stands before and behind the front, and the roof over it, as thin outlines. Heights upwards as −y, metres. */
import type { Box, Point, Polygon } from '../../domain/shared/geometry';
import type { Site, Tree, Wall } from '../../domain/site';
import type { LabelWish } from '../labels';
import type { PathMark } from '../marks';
import { closedPath } from '../path';
import { crownPath, trunkPath } from '../section/crown';

/** A face of the roof as seen square on from the street: `y` of the walls it lies on, its ring on the drawing. */
export interface RoofFace {
	y: number;
	ring: Polygon;
}
/** Beside the front trees are shown as far as this part of its width. */
const beside = 0.3;

/** The trees that come into the drawing, the furthest back first. */
export function treesAbout({ trees }: Site, left: number, right: number): Tree[] {
	const room = beside * (right - left);
	return trees
		.filter(({ at, spread }) => at.x - spread / 2 > left - room && at.x + spread / 2 < right + room)
		.toSorted((a, b) => a.at.y - b.at.y);
}
/** Whether a tree stands behind the walls that it meets on the drawing; beside them, behind the foremost. */
export function isBehind({ at, spread }: Tree, walls: readonly Wall[]): boolean {
	const met = walls.filter(({ from, to }) => to.x > at.x - spread / 2 && from.x < at.x + spread / 2);
	return at.y < Math.min(...(met.length > 0 ? met : walls).map(({ from }) => from.y));
}
export function treeMarks(tree: Tree, behind: boolean): PathMark[] {
	const mark = (key: string, d: string, of: Partial<PathMark>): PathMark => ({
		kind: 'path',
		key: `${key}-${tree.id}`,
		d,
		ink: 'planting',
		weight: 0.9,
		fill: 'none',
		...of
	});
	const trunk = trunkPath({ ...tree, height: tree.crownBase }, tree.at.x);
	return [
		mark('trunk', trunk, behind ? { weight: 0.6 } : {}),
		mark('crown', crownPath(tree, tree.at.x), behind ? { weight: 0.7 } : { weight: 1, dash: [4, 3] })
	];
}
/** `first`: how many faces were drawn before. */
export const roofMarks = (faces: readonly RoofFace[], first: number): PathMark[] =>
	faces.map(({ ring }, i) => ({
		kind: 'path',
		key: `roof-${first + i}`,
		d: closedPath(ring),
		ink: 'house',
		weight: 0.9,
		fill: 'sheet'
	}));

/** Names in the upper part of the crowns, where the drawing shows it. */
export function treeNames(trees: readonly Tree[], { minX, maxX, minY }: Box, px: number, size: number): LabelWish[] {
	return trees.flatMap((tree): LabelWish[] => {
		if (!tree.name.trim()) return [];
		const deep = tree.height - tree.crownBase;
		const within = (p: Point): boolean => p.y > minY + size * px && p.x > minX && p.x < maxX;
		const anchors = [0.2, 0.35, 0.5, 0.65, 0.8]
			.map((down) => ({ x: tree.at.x, y: -(tree.height - down * deep) }))
			.filter(within);
		if (anchors.length === 0) return [];
		return [
			{
				key: `name-${tree.id}`,
				text: tree.name,
				anchors,
				clear: null,
				size,
				ink: 'planting',
				bold: false,
				optional: true
			}
		];
	});
}
