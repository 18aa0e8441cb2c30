import type { Line, Point } from './types';
import { nearestOnSegment } from './segment';
import { between, distance } from './vector';
import { withoutRepeats } from './line';

/** Farthest the drawn chords may stand from the curve, metres. */
const flatness = 0.01;
const deepest = 6;

/**
 * A smooth line through all the given points, flattened so that no chord stands more than about 10 mm off the curve.
 * Centripetal Catmull–Rom (knots spaced by the square root of the chord: no cusps or loops inside a span, Yuksel, Schaefer
 * and Keyser 2011), evaluated by the Barry–Goldman pyramid. The given points are kept exactly; ends are continued by mirroring the first and last chord.
 */
export function smoothLine(control: Line): Line {
	const points = withoutRepeats(control);
	if (points.length < 3) return points;
	const mirrored = (end: Point, inner: Point): Point => ({ x: 2 * end.x - inner.x, y: 2 * end.y - inner.y });
	const all = [mirrored(points[0]!, points[1]!), ...points, mirrored(points.at(-1)!, points.at(-2)!)];
	const line: Point[] = [points[0]!];
	for (let i = 1; i < all.length - 2; i++) {
		const span = spanThrough(all[i - 1]!, all[i]!, all[i + 1]!, all[i + 2]!);
		flatten(span, 0, 1, all[i]!, all[i + 1]!, 0, line);
		line.push(all[i + 1]!);
	}
	return line;
}
type Span = (t: number) => Point;

function spanThrough(a: Point, b: Point, c: Point, d: Point): Span {
	const t0 = 0;
	const t1 = t0 + Math.sqrt(distance(a, b));
	const t2 = t1 + Math.sqrt(distance(b, c));
	const t3 = t2 + Math.sqrt(distance(c, d));
	return (fraction) => {
		const t = t1 + fraction * (t2 - t1);
		const at = (p: Point, q: Point, from: number, to: number): Point => between(p, q, (t - from) / (to - from));
		const ab = at(a, b, t0, t1);
		const bc = at(b, c, t1, t2);
		const cd = at(c, d, t2, t3);
		return at(at(ab, bc, t0, t2), at(bc, cd, t1, t3), t1, t2);
	};
}
function flatten(span: Span, from: number, to: number, start: Point, end: Point, depth: number, line: Point[]): void {
	const middle = (from + to) / 2;
	const at = (t: number): number => nearestOnSegment(span(from + (to - from) * t), start, end).distance;
	// An S bends away on both sides and may cross its chord in the middle: look at three places.
	const flat = Math.max(at(0.25), at(0.5), at(0.75)) <= flatness;
	if (flat || depth === deepest) return;
	const half = span(middle);
	flatten(span, from, middle, start, half, depth + 1, line);
	line.push(half);
	flatten(span, middle, to, half, end, depth + 1, line);
}
