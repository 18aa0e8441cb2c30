/**
 * How even a row of lamps leaves a wall: point by point along the wall at the middle of the lit height (rule wall.spacing).
 * x along the wall, y out of it, z up; metres and lux.
 */
import type { Lamp } from '../shared/catalogue';
import {
	beam,
	candelaToward,
	measuredPhotometry,
	sourceFrame,
	towards,
	type Distribution,
	type Photometry
} from '../photometry';

export interface Row {
	distribution: Distribution;
	/** Of a lamp of the person's own: what is counted instead of `distribution`. */
	measured?: Photometry;
	/** Lamp off the wall, and its height. */
	setback: number;
	lampHeight: number;
	/** Height aimed at, straight in from the lamp. */
	aimHeight: number;
	/** Height at which evenness is judged. */
	middle: number;
}

/** The row of a lamp that stands and is aimed so. */
export const rowOf = (
	{ lumens, beamAngle, measured }: Pick<Lamp, 'lumens' | 'beamAngle' | 'measured'>,
	place: Omit<Row, 'distribution' | 'measured'>
): Row => ({
	distribution: beam(lumens, beamAngle),
	...(measured && { measured: measuredPhotometry(measured) }),
	...place
});

/**
 * Lux at the judged height, `aside` metres along the wall from one lamp of the row: `illuminance` with what does not change
 * along the wall taken out, as thousands of points are asked for. With the axis square to the wall cos γ = c/d and
 * cos(incidence) = s/d, so that E = I0·cⁿ·s·d^−(n + 3).
 */
export function lampOnWall(row: Row): (aside: number) => number {
	const { distribution, measured, setback, lampHeight, aimHeight, middle } = row;
	const axis = towards({ x: 0, y: setback, z: lampHeight }, { x: 0, y: 0, z: aimHeight });
	const rise = middle - lampHeight;
	const along = Math.max(0, axis.z * rise - axis.y * setback);
	const square = setback * setback + rise * rise;
	if (measured) {
		const frame = sourceFrame(axis);
		return (aside) => {
			const d = Math.sqrt(square + aside * aside);
			return (candelaToward(measured, frame, { x: aside / d, y: -setback / d, z: rise / d }) * setback) / d ** 3;
		};
	}
	const scale = distribution.centre * along ** distribution.n * setback;
	const power = -(distribution.n + 3) / 2;
	return (aside) => scale * (square + aside * aside) ** power;
}

/** Lamps either side counted at a point of a long row: the next one adds less than a hundredth of the brightest. */
const neighbours = 3;
const samples = 8;

/** Brightest and darkest, lux, along a long row of lamps so many metres apart. */
export function rowExtremes(
	one: (aside: number) => number,
	spacing: number
): { most: number; least: number; mean: number } {
	let most = 0;
	let least = Infinity;
	let sum = 0;
	for (let i = 0; i <= samples; i++) {
		// From a lamp to the middle between two: the rest repeats by symmetry.
		const x = (spacing / 2) * (i / samples);
		let lux = 0;
		for (let k = -neighbours; k <= neighbours; k++) lux += one(Math.abs(x - k * spacing));
		most = Math.max(most, lux);
		least = Math.min(least, lux);
		sum += lux * (i === 0 || i === samples ? 0.5 : 1);
	}
	return { most, least, mean: sum / samples };
}

/** The widest spacing, metres, at which brightest ÷ darkest stays within `ratio`: halving the interval, the ratio grows with the spacing. */
export function widestSpacing(one: (aside: number) => number, reach: number, ratio: number): number {
	let low = reach * 0.05;
	let high = reach * 8;
	for (let i = 0; i < 18; i++) {
		const mid = (low + high) / 2;
		const { most, least } = rowExtremes(one, mid);
		if (most <= least * ratio) low = mid;
		else high = mid;
	}
	return low;
}

/** Metres beyond the last lamp of such a row at which the light has fallen to 1 ÷ `ratio` of its brightest. */
export function endReach(one: (aside: number) => number, spacing: number, ratio: number): number {
	const { most } = rowExtremes(one, spacing);
	const past = (x: number): number => one(x) + one(x + spacing) + one(x + 2 * spacing);
	let low = 0;
	let high = spacing;
	for (let i = 0; i < 16; i++) {
		const mid = (low + high) / 2;
		if (past(mid) * ratio >= most) low = mid;
		else high = mid;
	}
	return low;
}
