/**
 * A source made ready for thousands of points: its candela as a table, so that no power and no angle is worked out at
 * a point. Metres, candela, lux.
 */
import { candelaToward, sourceFrame, type Photometry, type SourceFrame, type Vector } from '../photometry';
import type { LightSource } from './types';

/**
 * Steps of the table, equal in sin(γ/2): fine about the axis, where narrow beams change fast. Linear between them, a 10° beam
 * is within 0.05 % of its centre intensity, wider ones nearer.
 */
const steps = 1024;

interface Table {
	/** Candela at sin(γ/2) = k ÷ `steps`; one more at the end, so that the last step has a neighbour. */
	candela: Float64Array;
	least: number;
	most: number;
}
/** One shape for all, so that the loops over thousands of points stay fast. */
export class Emitter {
	constructor(
		readonly x: number,
		readonly y: number,
		readonly z: number,
		readonly ax: number,
		readonly ay: number,
		readonly az: number,
		/** What the table's candela are multiplied by: lumens at the lamp's volts, maintained, ÷ lumens of the photometry. */
		readonly scale: number,
		/** No light where the cosine off the axis is below this. */
		readonly least: number,
		/** Highest intensity in any direction, scaled. */
		readonly most: number,
		/** Null for a source that is not the same all round its axis: it is asked directly. */
		readonly table: Float64Array | null,
		readonly photometry: Photometry,
		readonly frame: SourceFrame
	) {}
	/** The same lamp so many metres higher. */
	raised(by: number): Emitter {
		const { x, y, z, ax, ay, az, scale, least, most, table, photometry, frame } = this;
		return new Emitter(x, y, z + by, ax, ay, az, scale, least, most, table, photometry, frame);
	}
}

const tables = new WeakMap<Photometry, Table>();

/** The cosine at which the light ends, by halving between one lit and one dark: sharp rims stay sharp. */
function rim(photometry: Photometry, lit: number, dark: number): number {
	let [inside, outside] = [lit, dark];
	for (let i = 0; i < 40; i++) {
		const middle = (inside + outside) / 2;
		if (photometry.candela(middle, 0) > 0) inside = middle;
		else outside = middle;
	}
	return inside;
}
function tableOf(photometry: Photometry): Table {
	const known = tables.get(photometry);
	if (known) return known;
	const candela = new Float64Array(steps + 2);
	const cosineAt = (k: number): number => 1 - 2 * (k / steps) ** 2;
	let last = -1;
	for (let k = 0; k <= steps; k++) {
		candela[k] = photometry.candela(Math.max(-1, cosineAt(k)), 0);
		if (candela[k]! > 0) last = k;
	}
	let least = -1;
	if (last < 0) least = 2;
	else if (last < steps) {
		least = rim(photometry, cosineAt(last), cosineAt(last + 1));
		// The last value goes on past the rim, so that what lies between the two is not dimmed by the dark beyond.
		candela.fill(photometry.candela(least, 0), last + 1);
	}
	candela[steps + 1] = candela[steps]!;
	const table = { candela, least, most: candela.reduce((most, value) => Math.max(most, value), 0) };
	tables.set(photometry, table);
	return table;
}

/**
 * Of a source that differs round its axis: highest candela, from every degree off it and every 5° round it; and whether nothing goes
 * further off than square to the axis.
 */
const peaks = new WeakMap<Photometry, { most: number; least: number }>();
function peakOf(photometry: Photometry): { most: number; least: number } {
	const known = peaks.get(photometry);
	if (known) return known;
	let [ahead, behind] = [0, 0];
	for (let gamma = 0; gamma <= 180; gamma += 1) {
		const cosine = Math.cos((gamma * Math.PI) / 180);
		for (let round = 0; round < 360; round += 5) {
			const candela = photometry.candela(cosine, round);
			if (gamma < 90) ahead = Math.max(ahead, candela);
			else behind = Math.max(behind, candela);
		}
	}
	const peak = { most: Math.max(ahead, behind), least: behind > 0 ? -1 : 0 };
	peaks.set(photometry, peak);
	return peak;
}

/** A source made ready. One without lumens gives no light anywhere. */
export function emitterOf({ at, axis, photometry, lumens }: LightSource): Emitter {
	const scale = photometry.lumens > 0 ? Math.max(0, lumens) / photometry.lumens : 0;
	const table = photometry.symmetric ? tableOf(photometry) : null;
	const { most, least } = table ?? peakOf(photometry);
	return new Emitter(
		at.x,
		at.y,
		at.z,
		axis.x,
		axis.y,
		axis.z,
		scale,
		// No direction has a cosine of 2: dark.
		scale > 0 ? least : 2,
		scale * most,
		table?.candela ?? null,
		photometry,
		sourceFrame(axis)
	);
}

/** Candela along a unit vector from the source. */
export function candelaAlong(emitter: Emitter, x: number, y: number, z: number): number {
	const cosine = x * emitter.ax + y * emitter.ay + z * emitter.az;
	if (cosine < emitter.least) return 0;
	const { table } = emitter;
	if (!table) return emitter.scale * candelaToward(emitter.photometry, emitter.frame, { x, y, z });
	const place = steps * Math.sqrt(cosine < 1 ? (1 - cosine) / 2 : 0);
	const k = place | 0;
	const low = table[k]!;
	return emitter.scale * (low + (place - k) * (table[k + 1]! - low));
}

/**
 * Lux at a point on a surface with a unit normal, from one source, nothing in the way: E = I(γ) · cos(incidence) / d². 0
 * behind the surface and at the source itself.
 */
export function luxFrom(emitter: Emitter, point: Vector, normal: Vector): number {
	const x = point.x - emitter.x;
	const y = point.y - emitter.y;
	const z = point.z - emitter.z;
	const facing = -(x * normal.x + y * normal.y + z * normal.z);
	if (facing <= 0) return 0;
	const square = x * x + y * y + z * z;
	const along = x * emitter.ax + y * emitter.ay + z * emitter.az;
	// Most pairs end here: behind a beam or above a shade, without a root.
	if (along <= 0 && emitter.least >= 0) return 0;
	if (square === 0) return 0;
	const distance = Math.sqrt(square);
	return (candelaAlong(emitter, x / distance, y / distance, z / distance) * facing) / (square * distance);
}
