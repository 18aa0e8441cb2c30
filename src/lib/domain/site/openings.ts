import type { YardOpening } from '../yard';
import { partFor, type House } from './house';
import { measure, report, type Survey } from './survey';
import type { Opening, Wall } from './types';
import { wallTop } from './wall-top';

/**
 * How far a told edge may overshoot the wall, or its neighbour, before it is worth a word: what a tape is out by. A
 * millimetre over 50, so that places told to the centimetre never land on it.
 */
const tape = 0.051;
/** Lower and upper edges of openings on the ground floor, and from one floor to the next; metres, all from memory. */
const edges = { door: [0, 2.1], window: [0.9, 2.1], garage: [0, 2.2] } as const;
const storey = 2.7;
/** A window lower than this is none, metres: our assumption. */
const leastWindow = 0.3;

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
	if ([...found.values()].flat().some(({ sill }) => sill > storey))
		survey.ledger.assumptions.push({
			path: 'house.openings',
			message: `Windows are taken to reach from ${measure(survey, edges.window[0])} to ${measure(survey, edges.window[1])} above their floor, and the upper floor to lie ${measure(survey, storey)} up.`,
			about: { kind: 'house', id: 'house' }
		});
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
	return kept.end - kept.start < 1e-6 ? null : { id: told.id, ...upright(survey, wall, told, kept), ...kept };
}

/**
 * Kind and edges of an opening, metres above the ground, cut off at the roof. A door on the upper floor leads to a balcony:
 * to whoever stands below it is a window.
 */
function upright(
	survey: Survey,
	wall: Wall,
	told: YardOpening,
	{ start, end }: Pick<Opening, 'start' | 'end'>
): Pick<Opening, 'kind' | 'sill' | 'head'> {
	const about = { kind: 'opening', id: told.id };
	const upper = told.floor === 'upper';
	if (upper && told.kind === 'garage') {
		const message = `A garage door on the ${wall.name} is on the upper floor, where no car gets to. Check which floor it is on.`;
		report(survey, 'look', 'garage-upstairs', about, message);
	}
	const kind = upper && told.kind === 'door' ? 'window' : told.kind;
	const raised = upper && kind === 'window' ? storey : 0;
	const [sill, head] = edges[kind].map((edge) => edge + raised) as [number, number];
	const top = Math.min(wallTop(wall, start), wallTop(wall, end));
	if (top - sill >= leastWindow) return { kind, sill, head: Math.min(head, top) };
	const roof =
		wall.peak === null ? `the eaves at ${measure(survey, wall.height)}` : `the roof, ${measure(survey, top)} up there`;
	const message = `A ${called(told.kind)} of the upper floor on the ${wall.name} would reach up to ${measure(survey, head)}, above ${roof}. Check which floor it is on, and how high the eaves are.`;
	report(survey, 'look', 'opening-above-eaves', about, message);
	return { kind, sill, head };
}
function apart(survey: Survey, wall: Wall, openings: readonly Opening[]): void {
	openings.forEach((opening, i) => {
		for (const before of openings.slice(0, i)) {
			const overlap = Math.min(before.end, opening.end) - opening.start;
			if (overlap <= tape || before.sill >= opening.head || opening.sill >= before.head) continue;
			const message = `A ${called(before.kind)} and a ${called(opening.kind)} on the ${wall.name} overlap by ${measure(survey, overlap)}. Check where both are, and which floor they are on.`;
			report(survey, 'look', 'openings-overlap', { kind: 'opening', id: opening.id }, message);
		}
	});
}
