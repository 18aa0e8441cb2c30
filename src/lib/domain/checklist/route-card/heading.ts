import { distance, subtract, type Line, type Point } from '../../shared/geometry';
import type { Site } from '../../site';

/** A stretch leans into a direction beyond this share of it: tan 22.5°, half of an eighth turn. */
const lean = Math.tan(Math.PI / 8);
/** So that a stretch just between two directions is told alike in a mirror, metres. */
const rounding = 1e-9;
/** As far beside the house as one still goes towards it, metres. */
const besideHouse = 2;

/** Away from the street, as someone in the yard would say it. */
function homeward(to: Point, { house }: Site): string {
	const xs = house.map((p) => p.x);
	const before = to.y >= -0.05 && to.x >= Math.min(...xs) - besideHouse && to.x <= Math.max(...xs) + besideHouse;
	return before ? 'towards the house' : 'away from the street';
}
/**
 * Which way a stretch goes, one of eight, as seen from the street facing the house: `left`, `right and towards the
 * street`. Empty for a stretch without length.
 */
export function headingOf(path: Line, site: Site): string {
	const [from, to] = [path[0]!, path.at(-1)!];
	if (distance(from, to) < 0.005) return '';
	const way = subtract(to, from);
	const [across, out] = [Math.abs(way.x), Math.abs(way.y)];
	const side = across > lean * out + rounding ? (way.x < 0 ? 'left' : 'right') : '';
	const depth = out > lean * across + rounding ? (way.y > 0 ? 'towards the street' : homeward(to, site)) : '';
	return [side, depth].filter(Boolean).join(' and ');
}
