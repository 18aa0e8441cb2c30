/** How much of a line in a bed the pools of lights reach, and where more of them go. Metres along the line. */
import { distance, lineLength, partOf, pointAt, type Line, type Point } from '../shared/geometry';
import { nearPoint, without } from './bed-rows';

export interface Pool {
	at: Point;
	reach: number;
}
interface Span {
	from: number;
	to: number;
}

/** Parts of the line that a pool reaches, by segments, in order. */
export function reached(line: Line, { at, reach }: Pool): Span[] {
	const spans: Span[] = [];
	let along = 0;
	for (let i = 1; i < line.length; i++) {
		const [a, b] = [line[i - 1]!, line[i]!];
		const size = distance(a, b);
		if (size > 0) {
			const way = { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
			const span = nearPoint(a, way, at, reach);
			if (span && span.to > 0 && span.from < size)
				spans.push({ from: along + Math.max(0, span.from), to: along + Math.min(size, span.to) });
		}
		along += size;
	}
	return spans;
}
/** Metres of the line that a pool reaches. */
export const reachedLength = (line: Line, pool: Pool): number =>
	reached(line, pool).reduce((sum, { from, to }) => sum + to - from, 0);

/** Parts that no pool reaches; none shorter than `least`. */
export function unreached(line: Line, pools: readonly Pool[], least: number): Span[] {
	const spans = pools.flatMap((pool) => reached(line, pool));
	return without(lineLength(line), spans).filter(({ from, to }) => to - from >= least);
}

/**
 * The fewest places, evenly along a part of the line, whose pools of `reach` take in all of it: each end within a pool, each
 * pool meeting the next. On a straight line they stand at most two reaches apart.
 */
export function evenly(line: Line, { from, to }: Span, reach: number): number[] {
	const part = partOf(line, from, to);
	const size = to - from;
	const most = Math.max(1, Math.ceil(size / (2 * reach) - 1e-9));
	// A line that bends back on itself needs fewer than its length says; a half circle about two thirds.
	for (let count = Math.max(1, Math.floor(most * 0.6)); ; count++) {
		const places = Array.from({ length: count }, (_, i) => ((i + 0.5) * size) / count);
		const pools = places.map((s) => ({ at: pointAt(part, s), reach: reach + 1e-6 }));
		if (count >= most || unreached(part, pools, 1e-6).length === 0) return places.map((s) => from + s);
	}
}
