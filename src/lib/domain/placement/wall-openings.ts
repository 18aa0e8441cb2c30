/** Doors and windows of a wall as a lamp before it meets them: rule wall.openings. Metres. */
import { rules } from '../shared/rules';
import type { Opening, Wall } from '../site';

/** An opening whose sill is higher than this is over a lamp on the ground, not before it: our assumption. */
const overFrom = 2.5;
const { clear } = rules['wall.openings'].figures;

/** Those that a lamp on the ground would stand before. */
export const beforeLamps = ({ openings }: Pick<Wall, 'openings'>): Opening[] =>
	openings.filter(({ sill }) => sill <= overFrom);

/** Windows of the upper floor over any place between two along a wall. */
export const overWindows = ({ openings }: Pick<Wall, 'openings'>, from: number, to: number): Opening[] =>
	openings.filter(({ start, end, sill }) => sill > overFrom && to > start - clear && from < end + clear);
export const isOver = (wall: Pick<Wall, 'openings'>, at: number): boolean => overWindows(wall, at, at).length > 0;

/**
 * The height to aim at, straight in from a lamp: as wanted, or under a window of the upper floor so low that its sill lies
 * at the edge of the beam. `beamAngle`: full angle, degrees.
 */
export function aimUnder(
	wall: Pick<Wall, 'openings'>,
	at: number,
	{ wanted, setback, lampHeight, beamAngle }: { wanted: number; setback: number; lampHeight: number; beamAngle: number }
): number {
	const sill = Math.min(...overWindows(wall, at, at).map((one) => one.sill));
	if (sill === Infinity) return wanted;
	const rise = Math.atan2(sill - lampHeight, setback) - (beamAngle * Math.PI) / 360;
	return Math.min(wanted, lampHeight + setback * Math.tan(Math.max(0, rise)));
}

/** Whether a beam square to the wall, `tilt` degrees from straight up, reaches above the sill of a window of the upper floor over its lamp. */
export function shinesInto(
	wall: Pick<Wall, 'openings'>,
	at: number,
	{ tilt, setback, lampHeight, beamAngle }: { tilt: number; setback: number; lampHeight: number; beamAngle: number }
): boolean {
	const upperEdge = ((90 - tilt + beamAngle / 2) * Math.PI) / 180;
	return overWindows(wall, at, at).some(({ sill }) => upperEdge > Math.atan2(sill - lampHeight, setback) + 1e-6);
}

/** Whether more of a wall is taken by openings and porches towards its `to` end (above 0) or its `from` end (below). */
export const leanOf = (
	{ openings, length }: Pick<Wall, 'openings' | 'length'>,
	porches: readonly { start: number; end: number }[]
): number =>
	[...openings, ...porches].reduce((sum, { start, end }) => sum + ((start + end) / 2 - length / 2) * (end - start), 0);
