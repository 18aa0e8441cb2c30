/**
 * About where the plan's lights will stand, so that the receptacle can be put as far from the nearest as was answered. Only
 * that: the plan works them out anew, and a test holds the cable it lays against the answer. Metres.
 */
import {
	distance,
	leftOf,
	lineLength,
	moved,
	pointAt,
	rightOf,
	rotated,
	towards,
	type Point
} from '../shared/geometry';
import { rules } from '../shared/rules';
import { sizes, type Frame } from './frame';
import { lampReach } from './ground';
import { treeSizes, type QuickTree } from './trees';

const { spacing } = rules['path.spacing'].figures;
const { low, high } = rules['wall.setback'].figures;
const { long, longFrom, ...drive } = rules['drive.spacing'].figures;
const { stake } = rules['drive.setback'].figures;
const { flare } = rules['drive.mouth'].figures;
const { one, two } = rules['tree.count'].figures;
const { nearSpread, nearOffset, farSpread, farOffset } = rules['tree.offset'].figures;
/** Middle of a path light from the middle of the walk. */
const besideWalk = sizes.walk / 2 + 0.3;
/** Metres in from the street at which a walk has its first light. */
const fromEntry = 0.5;
/** Metres from the end of a lit stretch to its last lamp, at our eaves. */
const fromWallEnd = 0.9;

/** Where a walk begins with a leg of its own and no drive's lights are there. */
function entryLight([from, to]: readonly [Point, Point], on: Frame['lightsOn']): Point {
	const ahead = towards(from, to);
	const into = moved(from, ahead, Math.min(fromEntry, distance(from, to) / 2));
	return moved(into, on === 'left' ? leftOf(ahead) : rightOf(ahead), besideWalk);
}
/**
 * Lights of the walk's last leg, from the street or its bend to the door: a step apart, half a step off the door, along its one side that takes
 * lights; and where a leg comes before it, the one at its entry.
 */
function walkLights({ walk, lightsOn, drives }: Frame, isLit: (p: Point) => boolean): Point[] {
	const leg = walk.slice(-2);
	const [from, to] = [leg[0], leg[1]];
	if (!from || !to) return [];
	const length = lineLength(leg);
	const before = walk.length > 2 ? walk[0]! : null;
	const first = before ? 0 : Math.min(fromEntry, length / 2);
	const run = length - first;
	const count = Math.max(0, Math.round(run / spacing - 0.5));
	const step = run / (count + 0.5);
	const side = lightsOn === 'left' ? -1 : 1;
	// Outside a bend from beside the house the first stands off the corner.
	const outward = before && before.y - from.y < 1e-6 && lightsOn === 'left' ? besideWalk : 0;
	const entry = before && !drives.some(({ lit }) => lit) ? [entryLight([before, from], lightsOn)] : [];
	const dark = Array.from({ length: count + 1 }, (_, k) => pointAt(leg, first + k * step)).filter((p) => !isLit(p));
	const along = dark.map(({ x, y }, k) => ({
		x: x + side * besideWalk,
		y: y + (k === 0 ? outward : 0)
	}));
	return [...entry, ...along];
}
function wallLights({ wall }: Frame): Point[] {
	if (wall === 0) return [];
	const y = ((low + high) / 2) * sizes.eaves;
	const inset = Math.min(fromWallEnd, wall / 2);
	return [inset, wall - inset].map((x) => ({ x, y }));
}
/** Half of what an edge's light keeps off a walk that begins there, and by how much it and those behind it move on. */
const offWalk = sizes.walk / 2 + 0.3;
const movedOn = 1;
function driveLights({ drives, walk }: Frame): Point[] {
	return drives.flatMap(({ line, lit }) => {
		if (!lit) return [];
		const length = lineLength(line);
		const { x, y } = line[0]!;
		const mouth = y - Math.min(flare, length / 2);
		const out = sizes.drive / 2 + stake;
		const end = y - length + 1.5;
		const gap = mouth - end;
		const steps = length > longFrom ? Math.round(gap / long) : Math.floor(gap / drive.spacing + 1e-9);
		const edge = Array.from({ length: Math.max(0, steps) }, (_, k) => mouth + ((end - mouth) * (k + 1)) / steps);
		const start = walk.length > 2 && walk[0]!.y - walk[1]!.y < 1e-6 ? walk[0]!.y : null;
		const isMet = start !== null && edge.some((back) => Math.abs(back - start) < offWalk);
		const stood = edge.map((back) => (isMet && back < start + offWalk ? back - movedOn : back));
		return [{ x: x + out, y: mouth }, ...[mouth, ...stood].map((back) => ({ x: x - out, y: back }))];
	});
}
/** Round the trunk from the side of the street: one, two a sixth of a turn off it, or three a third apart. */
function treeLights({ at, kind }: QuickTree): Point[] {
	const { spread, trunk } = treeSizes[kind];
	const share = Math.min(1, Math.max(0, (spread - nearSpread) / (farSpread - nearSpread)));
	const off = trunk / 2 + nearOffset + share * (farOffset - nearOffset);
	const turns = spread <= one ? [0] : spread <= two ? [-60, 60] : [0, -120, 120];
	return turns.map((turn) => moved(at, rotated({ x: 0, y: 1 }, turn), off));
}

/** Where lights will stand, near enough for the nearest to be told. `lamp`: an existing street lamp, under which none does. */
export function likelyLights(frame: Frame, trees: readonly QuickTree[], lamp: Point | null): Point[] {
	const isLit = (p: Point): boolean => lamp !== null && distance(p, lamp) < lampReach;
	const drive = driveLights(frame).filter((p) => !isLit(p));
	return [...wallLights(frame), ...walkLights(frame, isLit), ...drive, ...trees.flatMap(treeLights)];
}
