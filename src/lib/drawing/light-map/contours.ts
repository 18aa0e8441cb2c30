/**
 * Lines of equal value on a grid: marching squares (Lorensen & Cline's idea in the plane), each line a closed ring round
 * what lies at or above a level. Knows nothing of light.
 */
import type { Point } from '../../domain/shared/geometry';

/** Values row by row; the node of column 0, row 0 lies at x, y, nodes are `step` apart. What is not finite counts as below every level. */
export interface Grid {
	x: number;
	y: number;
	step: number;
	columns: number;
	rows: number;
	values: ArrayLike<number>;
}
/**
 * A closed ring, its last point joined to its first. `seam[i]`: the side from point i to the next runs along the grid's
 * own border, where the region is cut off rather than ended by its value.
 */
export interface Ring {
	points: Point[];
	seam: boolean[];
}

type Side = 'top' | 'right' | 'bottom' | 'left';
/** Sides of a cell crossed, from → to with the high part on the right hand (y down), by which corners are high: 1 upper left, 2 upper right, 4 lower right, 8 lower left. */
const crossings: readonly (readonly [Side, Side][])[] = [
	[],
	[['top', 'left']],
	[['right', 'top']],
	[['right', 'left']],
	[['bottom', 'right']],
	[],
	[['bottom', 'top']],
	[['bottom', 'left']],
	[['left', 'bottom']],
	[['top', 'bottom']],
	[],
	[['right', 'bottom']],
	[['left', 'right']],
	[['top', 'right']],
	[['left', 'top']],
	[]
];
/** Two opposite corners high: whether the middle joins them or parts them. */
const saddles: Readonly<Record<number, { joined: [Side, Side][]; parted: [Side, Side][] }>> = {
	5: {
		joined: [
			['top', 'right'],
			['bottom', 'left']
		],
		parted: [
			['top', 'left'],
			['bottom', 'right']
		]
	},
	10: {
		joined: [
			['left', 'top'],
			['right', 'bottom']
		],
		parted: [
			['right', 'top'],
			['left', 'bottom']
		]
	}
};

/** The values with a border of nothing all round, row by row. */
function withBorder({ columns, rows, values }: Grid): Float64Array {
	const padded = new Float64Array((columns + 2) * (rows + 2)).fill(-Infinity);
	for (let j = 0; j < rows; j++)
		for (let i = 0; i < columns; i++) {
			const value = values[j * columns + i]!;
			if (Number.isFinite(value)) padded[(j + 1) * (columns + 2) + i + 1] = value;
		}
	return padded;
}

/** The rings round all of the grid at or above `level`: outer ones run clockwise on the sheet, holes the other way, so that a fill by winding leaves holes open. */
export function ringsAt(grid: Grid, level: number): Ring[] {
	const { columns, rows } = grid;
	const wide = columns + 2;
	const padded = withBorder(grid);
	// A crossing is named by the node left of or above it: two numbers a node.
	const nameOf = (node: number, side: Side): number => {
		if (side === 'top') return 2 * node;
		if (side === 'bottom') return 2 * (node + wide);
		return 2 * (side === 'left' ? node : node + 1) + 1;
	};
	const next = new Map<number, { name: number; seam: boolean }>();
	for (let j = 0; j <= rows; j++)
		for (let i = 0; i <= columns; i++) {
			const node = j * wide + i;
			const a = padded[node]!;
			const b = padded[node + 1]!;
			const c = padded[node + wide + 1]!;
			const d = padded[node + wide]!;
			const high = (a >= level ? 1 : 0) + (b >= level ? 2 : 0) + (c >= level ? 4 : 0) + (d >= level ? 8 : 0);
			if (high === 0 || high === 15) continue;
			const seam = i === 0 || j === 0 || i === columns || j === rows;
			const saddle = saddles[high];
			const joined = (a + b + c + d) / 4 >= level;
			for (const [from, to] of saddle ? saddle[joined ? 'joined' : 'parted'] : crossings[high]!)
				next.set(nameOf(node, from), { name: nameOf(node, to), seam });
		}
	const crossingAt = (name: number): Point => {
		const node = Math.floor(name / 2);
		const across = name % 2 === 0;
		const a = padded[node]!;
		const b = padded[across ? node + 1 : node + wide]!;
		// Beside a value that is none the line runs through the node that has one.
		const share = a === -Infinity ? 1 : b === -Infinity ? 0 : (level - a) / (b - a);
		return {
			x: grid.x + ((node % wide) - 1 + (across ? share : 0)) * grid.step,
			y: grid.y + (Math.floor(node / wide) - 1 + (across ? 0 : share)) * grid.step
		};
	};
	const rings: Ring[] = [];
	for (const start of next.keys()) {
		const ring: Ring = { points: [], seam: [] };
		for (let name = start, onward = next.get(name); onward; onward = next.get(name)) {
			next.delete(name);
			ring.points.push(crossingAt(name));
			ring.seam.push(onward.seam);
			name = onward.name;
		}
		if (ring.points.length > 0) rings.push(ring);
	}
	return rings;
}

/** The lines to draw of a ring: without its seams, open where those are; the whole ring, first point repeated, where it has none. */
export function linesOf({ points, seam }: Ring): Point[][] {
	const count = points.length;
	const cut = seam.indexOf(true);
	if (cut < 0) return count > 0 ? [[...points, points[0]!]] : [];
	const lines: Point[][] = [];
	let line: Point[] = [];
	for (let n = 1; n <= count; n++) {
		const index = (cut + n) % count;
		line.push(points[index]!);
		if (!seam[index]) continue;
		if (line.length > 1) lines.push(line);
		line = [];
	}
	return lines;
}
