/** A grid of lux -> marks: a fill for each step of the false colour, a line where each begins, and the steps' figures on the lines. */
import type { Box, Line, Point } from '../../domain/shared/geometry';
import { placeLabels, type LabelWish } from '../labels';
import type { LightFill, Mark, PathMark, TextMark } from '../marks';
import { closedPath, distance, lineLength, openPath, pointAlong } from '../path';
import { lightSteps } from './bands';
import { linesOf, ringsAt, type Grid, type Ring } from './contours';

/** The line where a step begins. */
export interface Isolux {
	lux: number;
	line: Line;
}
export interface IsoluxDrawing {
	fills: PathMark[];
	strokes: PathMark[];
	lines: Isolux[];
}
/** Lines drawn heavier, so that the eye finds its way among them. */
const heavy = new Set<number>([1, 10]);

/**
 * `shape` moves the points of the rings, for a surface that is not the whole rectangle of its grid; a side of a ring is
 * drawn only where it is no seam and `shape` leaves both of its ends alone.
 */
export function drawIsolux(grid: Grid, key: string, shape: (p: Point) => Point = (p) => p): IsoluxDrawing {
	const drawing: IsoluxDrawing = { fills: [], strokes: [], lines: [] };
	lightSteps.forEach((lux, index) => {
		const rings = ringsAt(grid, lux).map((ring) => shaped(ring, shape));
		if (rings.length === 0) return;
		const lines = rings.flatMap(linesOf);
		drawing.fills.push({
			kind: 'path',
			key: `${key}-fill-${lux}`,
			d: rings.map(({ points }) => closedPath(points)).join(''),
			ink: 'soft',
			weight: 0,
			fill: `lux-${index + 1}` as LightFill
		});
		drawing.strokes.push({
			kind: 'path',
			key: `${key}-line-${lux}`,
			d: lines.map(openPath).join(''),
			ink: 'house',
			weight: heavy.has(lux) ? 1.1 : 0.6,
			fill: 'none'
		});
		drawing.lines.push(...lines.map((line) => ({ lux, line })));
	});
	return drawing;
}
function shaped(ring: Ring, shape: (p: Point) => Point): Ring {
	const points = ring.points.map(shape);
	const kept = points.map((p, index) => p.x === ring.points[index]!.x && p.y === ring.points[index]!.y);
	return { points, seam: ring.seam.map((seam, i) => seam || !(kept[i] && kept[(i + 1) % kept.length])) };
}

/** Share of the way along a line at which its figure may stand. */
const stands = [0.5, 0.25, 0.75, 0.1, 0.9, 0.4, 0.6];
/** Wishes for the figures, the longest line of each step first: one on each line that has room for it. */
function wishesOf(lines: readonly Isolux[], size: number, px: number): LabelWish[] {
	const long = lines.filter(({ line }) => lineLength(line) > 5 * size * px);
	const apart = 0.75 * size * px;
	// Where lines crowd, a figure would not say which it names.
	const alone = (at: Point, own: number): boolean =>
		lines.every(
			({ lux, line }) =>
				lux === own || line.every((other) => Math.abs(other.x - at.x) > apart || distance(at, other) > apart)
		);
	return long
		.toSorted((a, b) => lineLength(b.line) - lineLength(a.line))
		.map(({ lux, line }, index) => ({
			key: `isolux-${index}`,
			text: String(lux),
			anchors: stands
				.flatMap((share) => pointAlong(line, lineLength(line) * share)?.at ?? [])
				.filter((at) => alone(at, lux)),
			clear: null,
			size,
			ink: 'house',
			bold: false,
			optional: true
		}));
}

/** The figures of the steps on their lines, and after `first`, words that matter more. `boxes`: what no word may cover. */
export function labelIsolux(
	lines: readonly Isolux[],
	first: readonly LabelWish[],
	{ boxes, px, within, size }: { boxes: readonly Box[]; px: number; within: Box; size: number }
): TextMark[] {
	const inset = size * px;
	const inside = ({ x, y }: Point) =>
		x > within.minX + inset && x < within.maxX - inset && y > within.minY + inset && y < within.maxY - inset;
	const figures = wishesOf(lines, size, px).map((wish) => ({ ...wish, anchors: wish.anchors.filter(inside) }));
	const wishes = [...first, ...figures].filter(({ anchors }) => anchors.length > 0);
	return placeLabels(wishes, { boxes, near: [], lines: [], walls: [] }, px, within);
}

/** In quiet ink, as ground for the light: outlines alone. */
export function quiet(marks: readonly Mark[]): Mark[] {
	return marks.flatMap((mark): Mark[] => {
		if (mark.kind !== 'path') return [mark];
		if (mark.weight === 0) return [];
		const fill = mark.fill === 'sheet' ? 'none' : mark.fill;
		return [{ ...mark, ink: 'soft', fill: fill === 'dots' || fill === 'bed' || fill === 'grid' ? 'none' : fill }];
	});
}
