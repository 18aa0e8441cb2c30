import type { Polygon } from '../shared/geometry';
import { distanceToPolygon, lengthInside, polygonsOverlap, sidesOf } from '../shared/geometry';
import { calledThe, capital } from '../yard';
import type { Told } from './impossible';
import { measure, report, tape, type Survey } from './survey';
import type { Area } from './types';

/** Beds, seating, porches and water lie outside the house; nobody sits in the pond. */
export function areaLies(survey: Survey, site: Told, area: Area): void {
	const about = { kind: area.kind, id: area.id };
	const the = capital(calledThe(area.name, area.sort ?? area.kind));
	const deep = overlapDepth(area.polygon, site.house);
	if (deep > tape) {
		const rank = area.kind === 'water' ? 'stop' : 'look';
		const message = `${the} reaches ${measure(survey, deep)} into the house. Check where it is and its size.`;
		report(survey, rank, `${area.kind}-in-house`, about, message);
	}
	if (area.kind !== 'seating') return;
	const water = site.areas.find((other) => other.kind === 'water' && polygonsOverlap(other.polygon, area.polygon));
	if (!water) return;
	report(
		survey,
		'look',
		'seating-in-water',
		about,
		`${the} lies in ${calledThe(water.name, water.sort ?? 'water')}. Check where both are.`
	);
}
/** How far the corners of either ring reach into the other, metres; where only sides cross, how much of a side lies inside. */
function overlapDepth(a: Polygon, b: Polygon): number {
	if (!polygonsOverlap(a, b)) return 0;
	const corners = Math.max(...a.map((p) => -distanceToPolygon(p, b)), ...b.map((p) => -distanceToPolygon(p, a)));
	return corners > 1e-6 ? corners : Math.max(...sidesOf(a).map(([p, q]) => lengthInside(p, q, b)));
}
