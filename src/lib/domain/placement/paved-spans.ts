/** Where a walk or a drive runs over other paving, a patio or an apron: there it has no edge for a light to stand at. */
import { between, boundaryMeetings, distanceToPolygon, stations, type Point, type Polygon } from '../shared/geometry';
import type { Site, Strip } from '../site';

/** Metres along the centre line. */
export interface Stretch {
	start: number;
	end: number;
}
/** A shorter stretch only touches a corner, metres: our assumption. */
const least = 0.3;

/** Along its edge is not within, on either side of the mirror. */
const within = (p: Point, ring: Polygon): boolean => distanceToPolygon(p, ring) < -1e-9;

/** The stretches of the centre line that lie in paved areas, in order; those that meet are one. */
export function pavedStretches(site: Pick<Site, 'areas'>, { centre }: Pick<Strip, 'centre'>): Stretch[] {
	const rings = site.areas.filter(({ kind }) => kind === 'paved').map(({ polygon }) => polygon);
	if (rings.length === 0) return [];
	const at = stations(centre);
	const found: Stretch[] = [];
	for (let i = 1; i < centre.length; i++) {
		const [a, b] = [centre[i - 1]!, centre[i]!];
		const size = at[i]! - at[i - 1]!;
		const cuts = [0, ...rings.flatMap((ring) => boundaryMeetings(a, b, ring)), 1].sort((p, q) => p - q);
		for (let k = 1; k < cuts.length; k++) {
			const [from, to] = [cuts[k - 1]!, cuts[k]!];
			if (to - from < 1e-9 || !rings.some((ring) => within(between(a, b, (from + to) / 2), ring))) continue;
			const stretch = { start: at[i - 1]! + from * size, end: at[i - 1]! + to * size };
			const last = found.at(-1);
			if (last && stretch.start - last.end < 1e-6) last.end = stretch.end;
			else found.push(stretch);
		}
	}
	return found.filter(({ start, end }) => end - start >= least);
}
