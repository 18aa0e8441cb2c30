import type { YardOpening } from '../yard';
import { partFor, type House } from './house';
import { measure, report, type Survey } from './survey';
import type { Opening, Wall } from './types';

/**
 * How far a told edge may overshoot the wall, or its neighbour, before it is worth a word: what a tape is out by. A
 * millimetre over 50, so that places told to the centimetre never land on it.
 */
const tape = 0.051;
const called = (kind: Opening['kind']): string => (kind === 'garage' ? 'garage door' : kind);

/** The walls with the told doors, garage doors and windows on them, left to right seen from outside. */
export function withOpenings(survey: Survey, house: House): Wall[] {
	const found = new Map<string, Opening[]>();
	for (const told of survey.yard.house.openings ?? []) {
		const wall = wallOf(house, told);
		if (!wall) continue;
		const opening = heldTo(survey, wall, told);
		if (opening) found.set(wall.id, [...(found.get(wall.id) ?? []), opening]);
	}
	return house.walls.map((wall) => {
		const openings = (found.get(wall.id) ?? []).sort((a, b) => a.start - b.start);
		apart(survey, wall, openings);
		return { ...wall, openings };
	});
}
function wallOf(house: House, opening: YardOpening): Wall | undefined {
	const id =
		opening.wall === 'front' ? partFor(house, opening.along, opening.along + opening.width)?.wall : opening.wall;
	return house.walls.find((wall) => wall.id === id);
}
/** Side walls are measured back from the front corner, which is the far end of the left wall seen from outside. */
function startOn(wall: Wall, opening: YardOpening): number {
	if (opening.wall === 'left') return wall.length - opening.along - opening.width;
	return opening.wall === 'right' ? opening.along : opening.along - wall.from.x;
}
function heldTo(survey: Survey, wall: Wall, told: YardOpening): Opening | null {
	const start = startOn(wall, told);
	const end = start + told.width;
	const over = Math.max(-start, end - wall.length);
	if (over > tape) {
		const message = `A ${called(told.kind)} runs ${measure(survey, over)} past the end of the ${wall.name}. Check how far from the corner it is, and its width.`;
		report(survey, 'look', 'opening-off-wall', { kind: 'opening', id: told.id }, message);
	}
	const kept = { start: Math.max(0, start), end: Math.min(wall.length, end) };
	return kept.end - kept.start < 1e-6 ? null : { id: told.id, kind: told.kind, ...kept };
}
function apart(survey: Survey, wall: Wall, openings: readonly Opening[]): void {
	openings.forEach((opening, i) => {
		for (const before of openings.slice(0, i)) {
			const overlap = Math.min(before.end, opening.end) - opening.start;
			if (overlap <= tape) continue;
			const message = `A ${called(before.kind)} and a ${called(opening.kind)} on the ${wall.name} overlap by ${measure(survey, overlap)}. Check where both are; a window above a door needs telling only once.`;
			report(survey, 'look', 'openings-overlap', { kind: 'opening', id: opening.id }, message);
		}
	});
}
