/** What a second place, or a second distance, says about how a picture lies. */
import { distance, subtract, turnBetween, wrapDegrees, type Point } from '../../domain/shared/geometry';
import type { Underlay, YardPoint } from '../../domain/yard';
import { pixelsApart, placed, toYard } from './placed';

const inYard = ({ along, out }: YardPoint): Point => ({ x: along, y: out });
/** Metres. Two places closer than that do not say which way the picture lies. */
const least = 0.1;

/** Share by which a length on the picture is longer (+) or shorter (−) than the tape's. */
export const offBy = (onPicture: number, byTape: number): number => onPicture / byTape - 1;

export interface SecondPlace {
	/** Degrees clockwise in [0, 360) that bring the second mark in line with its place. */
	turn: number;
	/** Metres between the two places in the yard. */
	apart: number;
}
/** The turn, and the distance, by where the second mark lies in the yard. Null while a mark or a place is missing, or they coincide. */
export function bySecondPlace(underlay: Underlay, second: YardPoint): SecondPlace | null {
	const { from, to, at } = underlay;
	if (!from || !to || !at || pixelsApart(underlay) === null) return null;
	const way = subtract(inYard(second), inYard(at));
	const apart = distance(inYard(second), inYard(at));
	if (apart < least) return null;
	return { turn: wrapDegrees(turnBetween(subtract(to, from), way)), apart };
}

/** Metres in the yard between two pixels of the picture; null while it has no scale. */
export function measured(underlay: Underlay, a: Point, b: Point): number | null {
	const lies = placed(underlay);
	return lies.isToScale ? distance(toYard(lies, a), toYard(lies, b)) : null;
}
