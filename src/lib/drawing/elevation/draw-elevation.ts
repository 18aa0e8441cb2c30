/** The front of the house as it is measured, without perspective: the light on its walls as lines of lux, openings, roof, trees before and behind it, lamps at its foot. */
import type { Plan } from '../../domain/plan';
import type { Box, Point } from '../../domain/shared/geometry';
import { formatLength, metresPerFoot } from '../../domain/shared/units';
import type { Opening, Site, Tree, Wall } from '../../domain/site';
import { shapeOf } from '../fixtures';
import { roundLength, sizesFor } from '../frame';
import type { LabelWish } from '../labels';
import { drawIsolux, labelIsolux, type Isolux } from '../light-map/isolux';
import type { Grid } from '../light-map/contours';
import type { DimensionMark, Drawing, Mark, ScaleBarMark, SymbolMark } from '../marks';
import { pathMark } from '../path-mark';
import { closedPath, openPath, rectPath, segmentPath } from '../path';
import { isBehind, roofMarks, treeMarks, treeNames, treesAbout, type RoofFace } from './standing';
import { highest, keptOn, topAt } from './wall-light';

/** Walls of the house that face the street, the furthest back first: a nearer one hides what is behind it. */
export const frontWalls = ({ walls }: Site): Wall[] =>
	walls
		.filter(({ of, front, length, from, to }) => of === 'house' && front && length > 0.05 && to.x > from.x)
		.toSorted((a, b) => a.from.y - b.from.y);

/** What of the front stands at a place of the drawing: the wall before all others there, and an opening in it. */
export function wallAt(
	site: Site,
	{ x, y }: Point
): { wall: Wall; s: number; z: number; opening: Opening | null } | null {
	const wall = frontWalls(site).findLast(
		(one) => x >= one.from.x && x <= one.to.x && y <= 0 && -y <= topAt(one, x - one.from.x)
	);
	if (!wall) return null;
	const [s, z] = [x - wall.from.x, -y];
	const opening = wall.openings.find(({ start, end, sill, head }) => s >= start && s <= end && z >= sill && z <= head);
	return { wall, s, z, opening: opening ?? null };
}

/** Trees before the front are shown to their tops, as long as the drawing is no taller than so much of the front's width. */
const tallest = 0.45;

/** Beside what stands there, px: at the right the height of the eaves is written. */
const margin = { left: 16, right: 84 } as const;

function outlineOf(wall: Wall): Point[] {
	const { from, to, height, peak } = wall;
	const gable = peak === null ? [] : [{ x: (from.x + to.x) / 2, y: -peak }];
	return [{ x: from.x, y: 0 }, { x: from.x, y: -height }, ...gable, { x: to.x, y: -height }, { x: to.x, y: 0 }];
}
function openingMarks(wall: Wall, opening: Opening): Mark[] {
	const { id, kind, start, end, sill, head } = opening;
	const box = { minX: wall.from.x + start, maxX: wall.from.x + end, minY: -head, maxY: -sill };
	const middle = (box.minX + box.maxX) / 2;
	const key = `opening-${id}`;
	const frame = pathMark(key, rectPath(box), { fill: 'sheet', weight: 1.1 });
	const across = (share: number) => {
		const y = box.minY + (box.maxY - box.minY) * share;
		return segmentPath({ x: box.minX, y }, { x: box.maxX, y });
	};
	if (kind === 'garage')
		return [frame, pathMark(`${key}-leaves`, [0.25, 0.5, 0.75].map(across).join(''), { weight: 0.5, ink: 'soft' })];
	if (kind === 'window')
		return [
			frame,
			pathMark(`${key}-bars`, segmentPath({ x: middle, y: box.minY }, { x: middle, y: box.maxY }) + across(0.5), {
				weight: 0.5,
				ink: 'soft'
			})
		];
	return [frame];
}

interface Faces {
	fills: Mark[];
	lines: Isolux[];
}
/** Walls and roof over each other as they stand, the furthest back first. */
function facesOf(walls: readonly Wall[], grids: ReadonlyMap<string, Grid>, roof: readonly RoofFace[]): Faces {
	const fills: Mark[] = [];
	const lines: Isolux[] = [];
	let drawn = 0;
	/** Roof whose own front lies behind a place out. */
	const roofTo = (out: number): void => {
		const from = drawn;
		while (drawn < roof.length && roof[drawn]!.y < out - 1e-9) drawn++;
		fills.push(...roofMarks(roof.slice(from, drawn), from));
	};
	for (const wall of walls) {
		roofTo(wall.from.y);
		const ring = outlineOf(wall);
		fills.push(pathMark(`face-${wall.id}`, closedPath(ring), { weight: 0, fill: 'sheet' }));
		const grid = grids.get(wall.id);
		if (grid) {
			const isolux = drawIsolux(grid, wall.id, keptOn(wall));
			fills.push(...isolux.fills, ...isolux.strokes);
			lines.push(...isolux.lines);
		}
		fills.push(...wall.openings.flatMap((opening) => openingMarks(wall, opening)));
		fills.push(pathMark(`edge-${wall.id}`, openPath(ring), { weight: 2 }));
	}
	roofTo(Infinity);
	return { fills, lines };
}

/**
 * `grids`: the light on each wall by its id, from `wallGrid`. `widthPx` of the drawing as shown. `roof`: its faces, the furthest back first.
 * Null where no front is told yet.
 */
export function drawElevation(
	plan: Plan,
	grids: ReadonlyMap<string, Grid>,
	widthPx: number,
	roof: readonly RoofFace[] = []
): Drawing | null {
	const { site } = plan;
	const walls = frontWalls(site);
	if (walls.length === 0) return null;
	const [left, right] = [Math.min(...walls.map(({ from }) => from.x)), Math.max(...walls.map(({ to }) => to.x))];
	const trees = treesAbout(site, left, right);
	const xs = [
		...trees.flatMap(({ at, spread }) => [at.x - spread / 2, at.x + spread / 2]),
		...roof.flatMap(({ ring }) => ring.map(({ x }) => x))
	];
	const [from, to] = [Math.min(left, ...xs), Math.max(right, ...xs)];
	const top = Math.max(...walls.map(highest), ...roof.flatMap(({ ring }) => ring.map(({ y }) => -y)));
	const treeTop = Math.max(0, ...trees.map(({ height }) => height));
	const shown = Math.max(1.05 * top, Math.min(treeTop, tallest * (to - from)));
	const sizes = sizesFor(widthPx);
	const px = (to - from) / (Math.max(240, widthPx) - margin.left - margin.right);
	const box: Box = {
		minX: from - margin.left * px,
		maxX: to + margin.right * px,
		minY: -(shown + 14 * px),
		maxY: 62 * px
	};
	const { fills, lines } = facesOf(walls, grids, roof);
	const [behind, before] = [true, false].map((side) => trees.filter((tree) => isBehind(tree, walls) === side)) as [
		Tree[],
		Tree[]
	];
	const ids = new Set(walls.map(({ id }) => id));
	const lamps = plan.fixtures.filter(({ target }) => target.kind === 'wall' && ids.has(target.id));
	const symbols = lamps.map(({ id, at, technique, height }): SymbolMark => ({
		kind: 'symbol',
		key: `lamp-${id}`,
		at: { x: at.x, y: -height },
		shape: shapeOf[technique],
		turn: 0,
		size: sizes.symbol
	}));
	const wishes = lamps.map(({ id, at, label }): LabelWish => ({
		key: `label-${id}`,
		text: label,
		anchors: [{ x: at.x, y: 14 * px }],
		clear: null,
		size: sizes.label,
		ink: 'house',
		bold: true,
		optional: false
	}));
	const openings: Box[] = walls.flatMap((wall) =>
		wall.openings.map(({ start, end, sill, head }) => ({
			minX: wall.from.x + start,
			maxX: wall.from.x + end,
			minY: -head,
			maxY: -sill
		}))
	);
	return {
		box,
		px,
		sizes,
		grid: { step: 1, text: '' },
		layers: [
			{ id: 'house', marks: behind.flatMap((tree) => treeMarks(tree, true)) },
			{ id: 'light', marks: fills },
			{
				id: 'ground',
				marks: [pathMark('ground', segmentPath({ x: box.minX, y: 0 }, { x: box.maxX, y: 0 }), { weight: 1.7 })]
			},
			{ id: 'planting', marks: before.flatMap((tree) => treeMarks(tree, false)) },
			{ id: 'devices', marks: symbols },
			{
				id: 'names',
				marks: labelIsolux(lines, [...wishes, ...treeNames(trees, box, px, sizes.name)], {
					boxes: openings,
					px,
					within: box,
					size: sizes.name
				})
			},
			{ id: 'sheet', marks: [scaleBar(plan, box, px), ...heights(plan, walls, to, px)] }
		]
	};
}
function scaleBar({ site }: Plan, box: Box, px: number): ScaleBarMark {
	const unit = site.units === 'feet' ? metresPerFoot : 1;
	const length = roundLength((box.maxX - box.minX) * 0.25, unit);
	const units = Math.round(length / unit);
	return {
		kind: 'scale-bar',
		key: 'scale-bar',
		at: { x: box.minX + 14 * px, y: 50 * px },
		length,
		parts: units % 5 === 0 && units % 4 !== 0 ? 5 : units % 4 === 0 ? 4 : 2,
		text: `${units} ${site.units === 'feet' ? 'ft' : 'm'}`
	};
}
/** The eaves of the wall furthest to the right, measured beside it. */
function heights({ site }: Plan, walls: readonly Wall[], right: number, px: number): DimensionMark[] {
	const last = walls.reduce((best, wall) => (wall.to.x > best.to.x ? wall : best));
	const x = right + 42 * px;
	return [
		{
			kind: 'dimension',
			key: 'eaves',
			from: { x, y: 0 },
			to: { x, y: -last.height },
			text: formatLength(last.height, site.units),
			witness: [
				[
					{ x: last.to.x, y: -last.height },
					{ x, y: -last.height }
				]
			]
		}
	];
}
