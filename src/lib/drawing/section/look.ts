/** One light and its tree in the upright plane through both: the arithmetic of the section. Metres, degrees. */
import type { Glare } from '../../domain/light';
import type { Fixture } from '../../domain/placement';
import type { Vector } from '../../domain/photometry';
import type { Point } from '../../domain/shared/geometry';
import type { Tree } from '../../domain/site';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Someone who may look into the light: the glare of the plan, or the place the tree is looked at from. */
export interface Watcher {
	kind: Glare['eye']['kind'];
	id: string;
	at: Vector;
	candela: number | null;
	bare: boolean | null;
}
export interface SectionLook {
	/** Of the lamp: metres from the middle of the trunk (below 0: on this side of it), and above the ground. */
	lamp: { s: number; z: number };
	/** Metres from the bark to the lamp. */
	fromBark: number;
	/** Degrees from upright, as seen in this plane; positive towards the trunk. */
	lean: number;
	/** Degrees by which the axis leaves this plane. */
	aside: number;
	beam: number;
	/** Where the axis comes to the middle of the crown: how far it has run, and how wide the beam is there, metres. */
	middle: { height: number; run: number; width: number } | null;
	watcher: {
		/** Metres from the lamp along the ground; its side of the lamp in the plane. */
		far: number;
		side: 1 | -1;
		z: number;
		/** Degrees between the beam's axis and the line to the eye; inside the beam when under half of it. */
		off: number;
		inBeam: boolean;
	} | null;
}

/** 2·d·tan(θ/2): the width of a beam of `angle` degrees at the distance `d`. */
export const beamWidth = (d: number, angle: number): number => 2 * d * Math.tan((angle * Math.PI) / 360);

/** The unit vector of the plane: from the lamp to the trunk, or along the aim where the lamp stands at the trunk. */
function planeOf(tree: Tree, at: Point, axis: Vector): Point {
	const [x, y] = [tree.at.x - at.x, tree.at.y - at.y];
	const size = Math.hypot(x, y);
	if (size > 0.02) return { x: x / size, y: y / size };
	const flat = Math.hypot(axis.x, axis.y);
	return flat > 0.02 ? { x: axis.x / flat, y: axis.y / flat } : { x: 1, y: 0 };
}
/** Unit vector along the beam; straight up for a light without an aim. */
export function axisOf(fixture: Fixture): Vector {
	if (!fixture.aim) return { x: 0, y: 0, z: 1 };
	const { point } = fixture.aim;
	const [x, y, z] = [point.x - fixture.at.x, point.y - fixture.at.y, point.z - fixture.height];
	const size = Math.hypot(x, y, z);
	return size > 0 ? { x: x / size, y: y / size, z: z / size } : { x: 0, y: 0, z: 1 };
}

export function lookAt(tree: Tree, fixture: Fixture, watcher: Watcher | null): SectionLook {
	const axis = axisOf(fixture);
	const u = planeOf(tree, fixture.at, axis);
	const s = (fixture.at.x - tree.at.x) * u.x + (fixture.at.y - tree.at.y) * u.y;
	const across = axis.x * u.x + axis.y * u.y;
	const out = -axis.x * u.y + axis.y * u.x;
	const middle = (tree.crownBase + tree.height) / 2;
	const rise = middle - fixture.height;
	const run = axis.z > 0.05 && rise > 0 ? rise / axis.z : null;
	return {
		lamp: { s, z: fixture.height },
		fromBark: Math.max(0, Math.hypot(fixture.at.x - tree.at.x, fixture.at.y - tree.at.y) - tree.trunkDiameter / 2),
		lean: degrees(Math.atan2(across, axis.z)),
		aside: degrees(Math.asin(Math.min(1, Math.abs(out)))),
		beam: fixture.lamp.beamAngle,
		middle: run === null ? null : { height: middle, run, width: beamWidth(run, fixture.lamp.beamAngle) },
		watcher: watcher && watched(fixture, axis, u, watcher)
	};
}
function watched(fixture: Fixture, axis: Vector, u: Point, { at }: Watcher): SectionLook['watcher'] {
	const [x, y, z] = [at.x - fixture.at.x, at.y - fixture.at.y, at.z - fixture.height];
	const size = Math.hypot(x, y, z);
	if (size === 0) return null;
	const cosine = (x * axis.x + y * axis.y + z * axis.z) / size;
	const off = degrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
	return {
		far: Math.hypot(x, y),
		side: x * u.x + y * u.y > 0 ? 1 : -1,
		z: at.z,
		off,
		inBeam: off < fixture.lamp.beamAngle / 2
	};
}
