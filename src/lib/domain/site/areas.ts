import type { Point } from '../shared/geometry';
import { centroid, circle, ellipse, polygonArea, rectangle } from '../shared/geometry';
import { calledThe, capital, seatingAcross, take, waterSize, type Yard, type YardPoint } from '../yard';
import { partFor, type FrontPart, type House } from './house';
import { measure, report, type Survey } from './survey';
import type { Area } from './types';

/** No bed is smaller than a sheet of paper, square metres. */
const leastBed = 0.062;

type YardPorch = NonNullable<Yard['house']['porches']>[number];
const onPlan = (p: YardPoint): Point => ({ x: p.along, y: p.out });

/** Porches, beds, seating places and water. What has no place yet is left out and said. */
export function makeAreas(survey: Survey, house: House): Area[] {
	if (survey.yard.spots.water === undefined) {
		survey.ledger.missing.push({
			path: 'spots.water',
			message: 'Whether there is water in the yard: lamps and power keep clear of it.'
		});
	}
	return [...porches(survey, house), ...beds(survey), ...seating(survey), ...water(survey)];
}
function porches(survey: Survey, house: House): Area[] {
	return (survey.yard.house.porches ?? []).flatMap((porch): Area[] => {
		const middle = porch.along + porch.width / 2;
		const part = partFor(house, porch.along, porch.along + porch.width);
		if (!part) return [];
		if (middle < 0 || middle > house.width) {
			const message = `The porch stands beside the front, not at it: the front is ${measure(survey, house.width)} long. Check how far from the left corner it is.`;
			report(survey, 'look', 'porch-off-front', { kind: 'porch', id: porch.id }, message);
		}
		const roofed = porch.roof !== false;
		const under = roofed ? underside(survey, porch, part) : null;
		const polygon = rectangle(
			{ x: porch.along, y: part.out },
			{ x: porch.along + porch.width, y: part.out + porch.depth }
		);
		return [
			{
				id: porch.id,
				name: 'porch',
				kind: 'porch',
				polygon,
				centre: centroid(polygon),
				light: 'none',
				sort: roofed ? 'roofed' : 'open',
				...(under === null ? {} : { under })
			}
		];
	});
}
/** Underside of a porch's roof where it is not told, metres, from memory; never above the eaves it leans against. */
const usualUnder = 2.4;

/** Height of the underside of a porch's roof above the ground, metres. */
function underside(survey: Survey, { id, under }: YardPorch, part: FrontPart): number {
	const about = { kind: 'porch', id };
	const value = Math.min(usualUnder, part.eaves);
	const height = take(survey.ledger, under, {
		path: `house.porches.${id}.under`,
		about,
		value,
		says: part.light === 'none' ? null : `The underside of the porch roof is taken to be ${measure(survey, value)} up.`,
		needed: null
	});
	if (height > Math.max(part.eaves, part.peak ?? 0)) {
		const message = `The underside of the porch roof is ${measure(survey, height)} up, above the eaves of the wall behind it at ${measure(survey, part.eaves)}. Check both heights.`;
		report(survey, 'look', 'porch-above-eaves', about, message);
	}
	return height;
}
function beds(survey: Survey): Area[] {
	return (survey.yard.spots.beds ?? []).flatMap((bed): Area[] => {
		if (!bed.outline) {
			survey.ledger.missing.push({
				path: `spots.beds.${bed.id}.outline`,
				message: `Where ${calledThe(bed.name, 'bed')} lies.`
			});
			return [];
		}
		const polygon = bed.outline.map(onPlan);
		if (polygonArea(polygon) < leastBed) {
			const message = `${capital(calledThe(bed.name, 'bed'))} has no room in it: its corners lie on one line. Tap its corners again.`;
			report(survey, 'look', 'bed-no-area', { kind: 'bed', id: bed.id }, message);
			return [];
		}
		return [
			{ id: bed.id, name: bed.name, kind: 'bed', polygon, centre: centroid(polygon), light: bed.light ?? 'none' }
		];
	});
}
function seating(survey: Survey): Area[] {
	return (survey.yard.spots.seating ?? []).flatMap((place): Area[] => {
		const across = seatingAcross(place, survey.units, survey.ledger);
		if (!place.at) {
			survey.ledger.missing.push({
				path: `spots.seating.${place.id}.at`,
				message: `Where ${calledThe(place.name, 'seating place')} is.`
			});
			return [];
		}
		if (place.light === undefined) {
			survey.ledger.missing.push({
				path: `spots.seating.${place.id}.light`,
				message: `Whether to light ${calledThe(place.name, 'seating place')}.`
			});
		}
		const centre = onPlan(place.at);
		return [
			{
				id: place.id,
				name: place.name,
				kind: 'seating',
				polygon: circle(centre, across / 2),
				centre,
				light: place.light ?? 'none'
			}
		];
	});
}
function water(survey: Survey): Area[] {
	return (survey.yard.spots.water ?? []).flatMap((pond): Area[] => {
		const size = waterSize(pond, survey.units, survey.ledger);
		if (!pond.at) {
			survey.ledger.missing.push({
				path: `spots.water.${pond.id}.at`,
				message: `Where ${calledThe(pond.name, pond.kind)} is: lamps and power keep clear of it.`
			});
			return [];
		}
		const centre = onPlan(pond.at);
		const half = { x: size.length / 2, y: size.width / 2 };
		// A pool is built square; the other kinds are drawn round.
		const polygon =
			pond.kind === 'pool'
				? rectangle({ x: centre.x - half.x, y: centre.y - half.y }, { x: centre.x + half.x, y: centre.y + half.y })
				: ellipse(centre, size.length, size.width);
		return [{ id: pond.id, name: pond.name, kind: 'water', polygon, centre, light: 'none', sort: pond.kind }];
	});
}
