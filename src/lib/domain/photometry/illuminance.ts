import { intensity, type Distribution } from './distribution';

/** Metres, or a direction. z is up. */
export interface Vector {
	x: number;
	y: number;
	z: number;
}
export interface Source {
	at: Vector;
	/** Unit vector along the beam. */
	axis: Vector;
	distribution: Distribution;
}

/** Unit vector from one point towards another; straight up when they coincide. */
export function towards(from: Vector, to: Vector): Vector {
	const x = to.x - from.x;
	const y = to.y - from.y;
	const z = to.z - from.z;
	const size = Math.hypot(x, y, z);
	return size > 0 ? { x: x / size, y: y / size, z: z / size } : { x: 0, y: 0, z: 1 };
}

/**
 * Lux at `point` on a surface with the unit normal `normal`, from one source: E = I(γ) · cos(incidence) / d², the inverse
 * square and cosine laws. 0 behind the surface and at the source itself.
 */
export function illuminance(source: Source, point: Vector, normal: Vector): number {
	const x = point.x - source.at.x;
	const y = point.y - source.at.y;
	const z = point.z - source.at.z;
	const square = x * x + y * y + z * z;
	if (square === 0) return 0;
	const distance = Math.sqrt(square);
	const incidence = -(x * normal.x + y * normal.y + z * normal.z) / distance;
	if (incidence <= 0) return 0;
	const offAxis = (x * source.axis.x + y * source.axis.y + z * source.axis.z) / distance;
	return (intensity(source.distribution, offAxis) * incidence) / square;
}
