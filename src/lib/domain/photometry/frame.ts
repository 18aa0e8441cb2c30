import type { Vector } from './illuminance';
import type { Photometry } from './types';

/** How a source stands in the yard: three unit vectors square to each other. */
export interface SourceFrame {
	/** Along the beam. */
	axis: Vector;
	/** Off the axis towards azimuth 0, and towards azimuth 90. */
	zero: Vector;
	ninety: Vector;
}

const cross = (a: Vector, b: Vector): Vector => ({
	x: a.y * b.z - a.z * b.y,
	y: a.z * b.x - a.x * b.z,
	z: a.x * b.y - a.y * b.x
});
const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;

/** The part of `hint` square to the axis, as a unit vector; null where the two are as good as parallel. */
function across(hint: Vector, axis: Vector): Vector | null {
	const along = dot(hint, axis);
	const x = hint.x - along * axis.x;
	const y = hint.y - along * axis.y;
	const z = hint.z - along * axis.z;
	const size = Math.hypot(x, y, z);
	return size > 1e-6 * Math.hypot(hint.x, hint.y, hint.z) ? { x: x / size, y: y / size, z: z / size } : null;
}

/**
 * The frame of a source whose unit axis is given. Azimuth 0 lies towards `hint` as far as that is square to the axis: up
 * unless said otherwise; +y, away from the house front, for an axis straight up or down.
 */
export function sourceFrame(axis: Vector, hint: Vector = { x: 0, y: 0, z: 1 }): SourceFrame {
	const zero = across(hint, axis) ?? across({ x: 0, y: 1, z: 0 }, axis) ?? { x: 1, y: 0, z: 0 };
	// Right-handed about the axis turned round: azimuths count counterclockwise looking along the axis.
	return { axis, zero, ninety: cross(zero, axis) };
}

/** Candela that a source in this frame sends along the unit vector `direction` (from the source). */
export function candelaToward(photometry: Photometry, frame: SourceFrame, direction: Vector): number {
	const cosine = dot(direction, frame.axis);
	if (photometry.symmetric) return photometry.candela(cosine, 0);
	const azimuth = (Math.atan2(dot(direction, frame.ninety), dot(direction, frame.zero)) * 180) / Math.PI;
	return photometry.candela(cosine, azimuth < 0 ? azimuth + 360 : azimuth);
}
