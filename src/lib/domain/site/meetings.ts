import type { Lot } from './lot';
import type { Strip } from './types';
import type { Point } from '../shared/geometry';
import { lineMeetings, nearestOnLine } from '../shared/geometry';

/** A walk whose end lies this far outside another's edge still joins it, metres. */
const gap = 0.3;
/** The first point may be this far short of the street, metres. */
const shortOfStreet = 0.5;

/** Strips that meet the street or one another know where. A strip that begins at a side boundary comes from a side street. */
export function withMeetings(strips: readonly Strip[], lot: Lot): Strip[] {
	const atStreet = ({ x, y }: Point): boolean =>
		y >= lot.street - shortOfStreet || x <= lot.leftBoundary + shortOfStreet || x >= lot.rightBoundary - shortOfStreet;
	return strips.map((strip) => ({
		...strip,
		meetsStreet: atStreet(strip.centre[0]!),
		junctions: strips
			.filter((other) => other !== strip)
			.flatMap((other) => meetingsOf(strip, other).map((at) => ({ at, with: other.id })))
			.sort((a, b) => a.at - b.at)
	}));
}
function meetingsOf(strip: Strip, other: Strip): number[] {
	const found = lineMeetings(strip.centre, other.centre).map((meeting) => meeting.at);
	const ends = (line: Strip['centre']) => [line[0]!, line.at(-1)!];
	// The other ends at this one: the place along this one nearest to that end.
	for (const end of ends(other.centre)) {
		const near = nearestOnLine(end, strip.centre)!;
		if (near.distance <= strip.width / 2 + gap) found.push(near.at);
	}
	// This one ends at the other.
	ends(strip.centre).forEach((end, i) => {
		const near = nearestOnLine(end, other.centre)!;
		if (near.distance <= other.width / 2 + gap) found.push(i === 0 ? 0 : strip.length);
	});
	const apart = (strip.width + other.width) / 2;
	return found.sort((a, b) => a - b).filter((at, i, all) => i === 0 || at - all[i - 1]! > apart);
}
