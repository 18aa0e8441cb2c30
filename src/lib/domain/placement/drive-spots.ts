/** Where lights are wanted along a drive, before anything is in the way: rules drive.mouth and drive.spacing. */
import { distance } from '../shared/geometry';
import type { Figures } from '../shared/settings';
import { edgeOf, other, outerSide, type Course, type Side } from './course';
import type { Stretch } from './paved-spans';

/** The last light keeps this far from the garage or the end of the drive, metres: our assumption. */
const fromEnd = 1.5;
/** The last light before an apron stands so far from it that nothing of the lamp is over its edge, metres: our assumption. */
const fromPaving = 0.3;
/** A bend nearer to the light before than this part of the spacing has no light of its own: our assumption. */
const closest = 0.6;

export type Role = 'mouth' | 'runoff' | 'edge';
export interface DriveSpot {
	/** Metres along the centre line. */
	at: number;
	side: Side;
	role: Role;
	/** On the outside of a bend. */
	bend: boolean;
}

/** Metres between lights along one edge of a drive so long: at least the rule's, wider on a long one. */
export const driveSpacing = (length: number, { spacing, long, longFrom }: Figures['drive.spacing']): number =>
	length > longFrom ? Math.max(long, spacing) : spacing;

/**
 * Whether a point `out` from the edge and `back` from the street lies in the corner that a turning car cuts: the ground
 * between the corner and the arc of radius `flare` that joins street and edge (metres; figure from memory).
 */
export const inSweep = (out: number, back: number, flare: number): boolean =>
	out < flare && back < flare && (flare - out) ** 2 + (flare - back) ** 2 > flare ** 2;

/** Metres from the edge of a drive to the stake: the rule's, or so much more that nothing of a wide head is nearer than `clear`. */
export const stakeOut = (
	headDiameter: number,
	{ stake, clear }: Pick<Figures['drive.setback'], 'stake' | 'clear'>
): number => Math.max(stake, clear + headDiameter / 2);

/** Metres in from the street at which the pair at the mouth stands with nothing in the way: where the sweep ends. */
export const mouthAt = (length: number, { flare }: Figures['drive.mouth']): number => Math.min(flare, length / 2);

/** The pair at the mouth, then where wheels run off, then the edges; `paved`: where the drive runs over an apron, which has edges of its own. */
export function driveSpots(course: Course, lead: Side, figures: Figures, paved: readonly Stretch[] = []): DriveSpot[] {
	const { strip, length } = course;
	const spots: DriveSpot[] = [];
	const start = mouthAt(length, figures['drive.mouth']);
	for (const side of [lead, other(lead)]) spots.push({ at: start, side, role: 'mouth', bend: false });
	for (const { at, side } of strip.runOffs) spots.push({ at, side, role: 'runoff', bend: false });
	const apron = paved.find(({ end }) => end > length - fromEnd);
	const end = Math.min(length - fromEnd, apron ? apron.start - fromPaving : length);
	if (end - start < figures['drive.spacing'].spacing || strip.lights === 'mouth' || strip.lights === 'none')
		return spots;
	const sides: Side[] = strip.lights === 'left' || strip.lights === 'right' ? [strip.lights] : [lead, other(lead)];
	const paired = strip.pattern === 'paired' && sides.length === 2;
	for (const side of sides) {
		const half = sides.length === 2 && !paired && side !== lead;
		for (const spot of alongEdge(course, side, { start, end, paired, half }, figures)) spots.push(spot);
	}
	return spots;
}

interface Row {
	start: number;
	end: number;
	/** Both edges take the same stations. */
	paired: boolean;
	/** On the straight: half a step on from the other edge. */
	half: boolean;
}
/** Lights of one edge: on the outside of each bend, and evenly between by the length of the edge itself. */
function alongEdge(course: Course, side: Side, { start, end, paired, half }: Row, figures: Figures): DriveSpot[] {
	const { stake } = figures['drive.setback'];
	const { spacing: least } = figures['drive.spacing'];
	const edge = edgeOf(course, side, stake);
	const along = paired ? (at: number) => at : edge.along;
	const abreast = paired ? (at: number) => at : edge.abreast;
	const spacing = driveSpacing(course.length, figures['drive.spacing']);
	const fixed = course.strip.runOffs.filter((r) => r.side === side && r.at > start && r.at < end).map(({ at }) => at);
	const taken = [start, ...fixed, end];
	const bends: number[] = [];
	for (const { at } of course.strip.bends) {
		if (!paired && outerSide(course, at) !== side) continue;
		const room = Math.min(...[...taken, ...bends].map((other) => Math.abs(along(other) - along(at))));
		if (at > start && at < end && room >= Math.max(least, spacing * closest)) bends.push(at);
	}
	const anchors = [...taken, ...bends].sort((a, b) => a - b);
	const straight = anchors.length === 2;
	const spots: DriveSpot[] = [];
	const add = (at: number): void =>
		void spots.push({ at, side, role: 'edge', bend: bends.includes(at) && outerSide(course, at) === side });
	for (let i = 1; i < anchors.length; i++) {
		const [from, to] = [anchors[i - 1]!, anchors[i]!];
		const between = split(along(from), along(to), spacing, least, half && straight).map(abreast);
		for (const at of apart(course, side, between, stake, least)) add(at);
		// Where wheels run off a light stands already; a row half a step on from the other has its last light before the end.
		if (!fixed.includes(to) && !(half && straight)) add(to);
	}
	return spots;
}

/** Places between two ends, evenly, no closer than `spacing`; `half`: half a step on, as the opposite edge has them. */
function split(from: number, to: number, spacing: number, least: number, half: boolean): number[] {
	const gap = (to - from) / spacing;
	// The rule's least is kept; the wider step of a long drive is only what to come near to.
	const steps = Math.max(1, spacing > least ? Math.round(gap) : Math.floor(gap + 1e-9));
	const step = (to - from) / steps;
	if (!half) return Array.from({ length: steps - 1 }, (_, k) => from + (k + 1) * step);
	return Array.from({ length: steps }, (_, k) => from + (k + 1.5) * step).filter((at) => at <= to + 1e-9);
}

/** Round the inside of a bend the straight way between two lights is shorter than the edge: then every other one will do. */
function apart(course: Course, side: Side, places: readonly number[], stake: number, least: number): number[] {
	const kept: number[] = [];
	for (const at of places) {
		const p = course.beside(at, side, stake);
		if (kept.length === 0 || distance(course.beside(kept.at(-1)!, side, stake), p) >= least - 1e-6) kept.push(at);
	}
	return kept;
}
