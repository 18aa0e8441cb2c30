import type { Point, Polygon } from '../shared/geometry';
import { centroid, polygonArea, segmentMeeting, sidesOf } from '../shared/geometry';
import { calledThe, capital, pavedForCars, type YardPoint } from '../yard';
import { report, type Survey } from './survey';
import type { Area } from './types';

/** Smaller than a single slab an outline is a slip of the finger, square metres. */
const leastPaved = 0.1;
const nameless = 'paved area';

const onPlan = (p: YardPoint): Point => ({ x: p.along, y: p.out });

/** Paving that is no walk and no drive: aprons, patios, places to park. What has no outline yet is left out and said. */
export function pavedAreas(survey: Survey): Area[] {
	return (survey.yard.spots.paved ?? []).flatMap((told): Area[] => {
		const the = calledThe(told.name, nameless);
		const about = { kind: 'paved', id: told.id };
		if (!told.outline) {
			survey.ledger.missing.push({ path: `spots.paved.${told.id}.outline`, message: `Where ${the} lies.` });
			return [];
		}
		const cars = pavedForCars(told, survey.ledger);
		const polygon = told.outline.map(onPlan);
		if (crossesItself(polygon)) {
			const message = `The outline of ${the} crosses itself, so the plan cannot tell what is paved. Give its corners in order, going round once.`;
			report(survey, 'stop', 'paved-crosses-itself', about, message);
		} else if (polygonArea(polygon) < leastPaved) {
			const message = `${capital(the)} has no room in it: its corners lie on one line. Tap its corners again.`;
			report(survey, 'look', 'paved-no-area', about, message);
			return [];
		}
		const name = told.name.trim() === '' ? nameless : told.name;
		return [
			{
				id: told.id,
				name,
				kind: 'paved',
				polygon,
				centre: centroid(polygon),
				light: 'none',
				sort: cars ? 'cars' : 'feet'
			}
		];
	});
}
/** Whether two sides that are not neighbours meet. */
function crossesItself(ring: Polygon): boolean {
	const sides = sidesOf(ring);
	return sides.some(([a, b], i) =>
		sides.some(([c, d], j) => {
			const neighbours = j - i < 2 || (i === 0 && j === sides.length - 1);
			return !neighbours && segmentMeeting(a, b, c, d) !== null;
		})
	);
}
