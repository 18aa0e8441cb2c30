/** Parts of the front, openings and porches: set by their lengths, so nothing of them is taken hold of. */
import { between, moved, pointAt, towards, type Line } from '../../domain/shared/geometry';
import type { Site, Wall } from '../../domain/site';
import type { Yard } from '../../domain/yard';
import { thing, type Thing } from './thing';
import { nameOr, openingWords } from './words';

/** Ends and middle of a straight piece: the middle is where it stands, the same seen in a mirror. */
const straight = (line: Line): Pick<Thing, 'at' | 'line'> => ({ at: between(line[0]!, line[1]!, 0.5), line });

export function sectionsOf({ house }: Yard, { walls }: Site): Thing[] {
	const sections = house.sections ?? [];
	return sections.map(({ id }, i) => {
		// Walls of the front are numbered as its parts are.
		const wall = walls.find((one) => one.id === `front-${i + 1}`);
		return thing({
			kind: 'section',
			id,
			kindWord: 'Front',
			name: sections.length > 1 ? `Front, part ${i + 1} of ${sections.length}` : 'Front of the house',
			...(wall ? straight([wall.from, wall.to]) : {})
		});
	});
}
function openingIn(walls: readonly Wall[], id: string): Line | null {
	for (const wall of walls) {
		const opening = wall.of === 'house' && wall.openings.find((one) => one.id === id);
		if (!opening) continue;
		const ahead = towards(wall.from, wall.to);
		return [moved(wall.from, ahead, opening.start), moved(wall.from, ahead, opening.end)];
	}
	return null;
}
export function openingsOf({ house }: Yard, { walls }: Site): Thing[] {
	const openings = house.openings ?? [];
	return openings.map(({ id, kind }) => {
		const same = openings.filter((one) => one.kind === kind);
		const line = openingIn(walls, id);
		return thing({
			kind: 'opening',
			id,
			kindWord: openingWords[kind],
			name: nameOr(
				'',
				openingWords[kind],
				same.findIndex((one) => one.id === id),
				same.length
			),
			...(line ? straight(line) : {})
		});
	});
}
export function porchesOf({ house }: Yard, { areas }: Site): Thing[] {
	const porches = house.porches ?? [];
	return porches.map(({ id }, i) => {
		const area = areas.find((one) => one.kind === 'porch' && one.id === id);
		return thing({
			kind: 'porch',
			id,
			kindWord: 'Porch',
			name: nameOr('', 'Porch', i, porches.length),
			closed: true,
			...(area ? { at: area.centre, line: area.polygon } : {})
		});
	});
}
/** Flights of steps. Ids of flights are unique on their walk only, so the walk's comes with them. */
export function stepsOf({ walks }: Yard, { strips }: Site): Thing[] {
	return (walks ?? []).flatMap((walk) => {
		const strip = strips.find((one) => one.kind === 'walk' && one.id === walk.id);
		const flights = walk.steps ?? [];
		return flights.map(({ id }, i) => {
			const flight = strip?.steps.find((one) => one.id === id);
			const at = (metres: number) => pointAt(strip!.centre, metres);
			return thing({
				kind: 'steps',
				id: `${walk.id}/${id}`,
				kindWord: 'Steps',
				name: `Steps${flights.length > 1 ? ` ${i + 1}` : ''} on ${walk.name.trim() || 'the walk'}`,
				...(flight
					? {
							at: at((flight.start + flight.end) / 2),
							line: [at(flight.start), at(flight.end)],
							reach: strip!.width / 2
						}
					: {})
			});
		});
	});
}
