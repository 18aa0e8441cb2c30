/** Where whoever looks at the house stands: across the street, or, where the front lies far back, on the way in. Metres. */
import type { Plan } from '../domain/plan';
import { lineLength, pointAt, type Point } from '../domain/shared/geometry';
import type { Site, Strip } from '../domain/site';

/** Front further back than this from the street's edge: from there the house is small, and what stands between hides it (ours). */
const far = 25;
/** On the way in one stands at most so many widths of the front before it, and no nearer than the other; nor nearer than so many metres. */
const widths = { most: 2, least: 1, metres: 8 } as const;
/** Between places that are tried, and points of the front that are looked at. */
const [stride, looks] = [0.5, 16];

/** A place on the way in. */
export interface Standpoint {
	strip: Strip;
	at: Point;
	/** From the foremost wall of the front. */
	away: number;
}
const frontOf = (site: Site): { left: number; right: number; y: number } | null => {
	const ends = site.walls.filter((wall) => wall.of === 'house' && wall.front).flatMap(({ from, to }) => [from, to]);
	if (ends.length === 0) return null;
	const xs = ends.map(({ x }) => x);
	return { left: Math.min(...xs), right: Math.max(...xs), y: Math.max(...ends.map(({ y }) => y)) };
};

/** Whether a crown, as its ring on the plan, stands on the way from one place to another. */
function hidden({ trees }: Site, from: Point, to: Point): boolean {
	const [dx, dy] = [to.x - from.x, to.y - from.y];
	const square = dx * dx + dy * dy || 1;
	return trees.some(({ at, spread }) => {
		const t = Math.min(1, Math.max(0, ((at.x - from.x) * dx + (at.y - from.y) * dy) / square));
		return Math.hypot(from.x + t * dx - at.x, from.y + t * dy - at.y) < spread / 2;
	});
}

/** Where most of the front is seen past the trees; of such places the one furthest off. Null: one stands in the street. */
export function standpointOf({ site }: Pick<Plan, 'site'>): Standpoint | null {
	const front = frontOf(site);
	if (!front || site.street - front.y < far) return null;
	const wide = front.right - front.left;
	const least = Math.max(widths.metres, widths.least * wide);
	const ways = site.strips.filter(({ meetsStreet }) => meetsStreet);
	const drives = ways.filter(({ kind }) => kind === 'drive');
	let best: { place: Standpoint; seen: number } | null = null;
	for (const strip of drives.length > 0 ? drives : ways)
		for (let along = 0; along < lineLength(strip.centre); along += stride) {
			const at = pointAt(strip.centre, along);
			const away = at.y - front.y;
			if (away < least || away > Math.max(least, widths.most * wide)) continue;
			let seen = 0;
			for (let i = 0; i <= looks; i++)
				if (!hidden(site, at, { x: front.left + (wide * i) / looks, y: front.y })) seen++;
			if (!best || seen > best.seen || (seen === best.seen && away > best.place.away))
				best = { place: { strip, at, away }, seen };
		}
	return best?.place ?? null;
}
