/** The lamps of a plan for the picture: their colours, how far each reaches, and what crowns let through. Lux, metres. */
import type { Vector } from '../domain/photometry';
import type { LightField } from '../domain/light';
import type { Plan } from '../domain/plan';
import { chord, type Crown } from './crown';
import { colourAt } from './colour';

/** A source that would give less than this, facing it square on, is left out, lux. */
const leastLux = 0.004;
/** A source that gives less than this at the middle of a clump of leaves is left out for its leaves, lux. */
const leastOnLeaf = 0.03;
/**
 * How fast leaves take light out of a beam, per metre of crown: Beer's law through foliage (Monsi and Saeki, 1953), with half the
 * leaf area facing any one way and 0.6 m² of leaf in a cubic metre of open garden crown (from memory: 0.3 to 1.5).
 */
export const extinction = 0.32;
/** The same within one clump of leaves, where they stand much closer. */
export const clumpExtinction = 3.2;

/** What lands at a place: lux, and the same as linear red, green and blue by the lamps' colours. */
export interface Landing {
	lux: number;
	red: number;
	green: number;
	blue: number;
}
/** Where a leaf is, and the clump about it: middle and radius, 0 for none. */
export interface LeafPlace {
	x: number;
	y: number;
	z: number;
	cx: number;
	cy: number;
	cz: number;
	radius: number;
}
export interface Lamps {
	/** On a surface with that normal, nothing but what the field knows in the way. */
	onSurface: (x: number, y: number, z: number, nx: number, ny: number, nz: number, out: Landing) => void;
	/** Before leaves and wood within `reach` metres of a place are asked about: which lamps matter there. */
	aimAt: (x: number, y: number, z: number, reach: number) => void;
	/**
	 * On a leaf of a crown: what falls on the side that is looked at goes to `front`, what falls on the other to `back`; the crown's
	 * own leaves in between take their share.
	 */
	onLeaf: (crown: Crown, leaf: LeafPlace, nx: number, ny: number, nz: number, front: Landing, back: Landing) => void;
}
/** Highest candela of a source in any direction, found by every 3° off the axis and 45° round it. */
function peakOf({ photometry, lumens }: LightField['sources'][number]): number {
	let peak = 0;
	for (let off = 0; off <= 180; off += 3)
		for (let round = 0; round < (photometry.symmetric ? 1 : 360); round += 45)
			peak = Math.max(peak, photometry.candela(Math.cos((off * Math.PI) / 180), round));
	return photometry.lumens > 0 ? (peak * lumens) / photometry.lumens : 0;
}
/** Degrees within which the light of a shaded lamp fades at its rim: a lamp is no point. Our assumption; `lux` keeps the sharp edge. */
const penumbra = 7;
/** Cosine of the angle off the axis at which a lamp's light is cut off sharply by its shade or well; −1 for none. */
function rimOf({ photometry }: LightField['sources'][number]): number {
	if (!photometry.symmetric) return -1;
	const at = (degrees: number): number => photometry.candela(Math.cos((degrees * Math.PI) / 180), 0);
	for (let off = 89.5; off > 10; off -= 0.5)
		if (at(off) > 0) return off < 89 && at(off) > 0.01 * at(0) ? Math.cos(((off + 0.5) * Math.PI) / 180) : -1;
	return -1;
}
/** 0 at the rim, 1 where all of the lamp is seen; `dx`, `dy`, `dz` from the place to the lamp. */
function withinRim({ axis, rim }: { axis: Vector; rim: number }, dx: number, dy: number, dz: number): number {
	const cosine = -(dx * axis.x + dy * axis.y + dz * axis.z) / Math.sqrt(dx * dx + dy * dy + dz * dz);
	// Near the rim a degree is as much in the cosine, times the sine.
	const width = ((penumbra * Math.PI) / 180) * Math.sqrt(1 - rim * rim);
	const t = Math.min(1, Math.max(0, (cosine - rim) / width));
	return t * t * (3 - 2 * t);
}
/** Colour temperature by source: of its fixture's lamp; of lights that are there already 3000 K in the street, else 2700 K (ours). */
function kelvinOf(plan: Plan, id: string): number {
	const fixture = plan.fixtures.find((one) => one.id === id);
	if (fixture) return fixture.lamp.colourTemperature;
	return plan.site.existing.find((one) => one.id === id)?.kind === 'street-lamp' ? 3000 : 2700;
}

const clear = (out: Landing): void => {
	out.lux = out.red = out.green = out.blue = 0;
};
/** `seen`: lux that the picture shows of `lux`. */
function add(out: Landing, lux: number, seen: number, colour: readonly [number, number, number]): void {
	out.lux += lux;
	out.red += seen * colour[0];
	out.green += seen * colour[1];
	out.blue += seen * colour[2];
}

export function lampsOf(plan: Plan, field: LightField): Lamps {
	const sources = field.sources.map((source) => ({
		...source.at,
		square: peakOf(source) / leastLux,
		colour: colourAt(kelvinOf(plan, source.id)),
		axis: source.axis,
		rim: rimOf(source)
	}));
	const point: Vector = { x: 0, y: 0, z: 0 };
	const normal: Vector = { x: 0, y: 0, z: 0 };
	const active = new Uint16Array(sources.length);
	let count = 0;
	return {
		onSurface(x, y, z, nx, ny, nz, out) {
			clear(out);
			point.x = x;
			point.y = y;
			point.z = z;
			normal.x = nx;
			normal.y = ny;
			normal.z = nz;
			for (let i = 0; i < sources.length; i++) {
				const source = sources[i]!;
				const dx = source.x - x;
				const dy = source.y - y;
				const dz = source.z - z;
				if (dx * nx + dy * ny + dz * nz <= 0 || dx * dx + dy * dy + dz * dz > source.square) continue;
				const lux = field.share(i, point, normal);
				if (lux <= 0) continue;
				add(out, lux, source.rim < 0 ? lux : lux * withinRim(source, dx, dy, dz), source.colour);
			}
		},
		aimAt(x, y, z, reach) {
			count = 0;
			point.x = x;
			point.y = y;
			point.z = z;
			for (let i = 0; i < sources.length; i++) {
				const source = sources[i]!;
				const size = Math.max(1e-3, Math.hypot(source.x - x, source.y - y, source.z - z));
				normal.x = (source.x - x) / size;
				normal.y = (source.y - y) / size;
				normal.z = (source.z - z) / size;
				if (size < 2 * reach + 0.3 || field.share(i, point, normal) > leastOnLeaf) active[count++] = i;
			}
		},
		onLeaf(crown, leaf, nx, ny, nz, front, back) {
			const { x, y, z } = leaf;
			clear(front);
			clear(back);
			point.x = x;
			point.y = y;
			point.z = z;
			for (let k = 0; k < count; k++) {
				const source = sources[active[k]!]!;
				const dx = source.x - x;
				const dy = source.y - y;
				const dz = source.z - z;
				const size = Math.sqrt(dx * dx + dy * dy + dz * dz);
				if (size < 1e-3) continue;
				normal.x = dx / size;
				normal.y = dy / size;
				normal.z = dz / size;
				const straight = field.share(active[k]!, point, normal);
				if (straight <= 0) continue;
				const through = Math.exp(
					-extinction * chord(crown, x, y, z, source.x, source.y, source.z) - clumpExtinction * clumpWay(leaf, normal)
				);
				const facing = normal.x * nx + normal.y * ny + normal.z * nz;
				const lux = straight * through * Math.abs(facing);
				add(facing > 0 ? front : back, lux, lux, source.colour);
			}
		}
	};
}

/** Metres from a leaf to the outside of its clump along a unit vector. */
function clumpWay({ x, y, z, cx, cy, cz, radius }: LeafPlace, along: Vector): number {
	if (radius === 0) return 0;
	const dx = x - cx;
	const dy = y - cy;
	const dz = z - cz;
	const b = dx * along.x + dy * along.y + dz * along.z;
	const root = b * b - (dx * dx + dy * dy + dz * dz) + radius * radius;
	return root <= 0 ? 0 : Math.max(0, Math.sqrt(root) - b);
}
