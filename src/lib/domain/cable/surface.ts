/** What a straight piece of trench costs by the ground it goes through. */
import type { Box, Point } from '../shared/geometry';
import { besideEdge, besideLawnEdge, type LayingCosts } from './costs';
import type { Bed } from './lawn-edges';
import { Parts, sift, Sides, type Side } from './sides';
import { insideOf, lengthNearWater, type Obstacle, type WaterRing } from './obstacles';

/** The root zone of a tree (rule tree.roots). Metres. */
export interface RootZone {
	at: Point;
	radius: number;
}
/** Kinds of ground that are not open, the one that counts first where several lie on one place. */
const kinds = { roots: 0, lawnEdge: 1, edge: 2, bed: 3 } as const;

/** Rounding of coordinates up to 500 m, metres. */
const rounding = 1e-7;

/** Notes the part of a line that lies in a root zone. */
function noteRoots(zone: RootZone, ax: number, ay: number, ux: number, uy: number, length: number, parts: Parts): void {
	const mx = zone.at.x - ax;
	const my = zone.at.y - ay;
	const off = mx * uy - my * ux;
	const chord = zone.radius * zone.radius - off * off;
	if (chord <= 0) return;
	const middle = mx * ux + my * uy;
	const half = Math.sqrt(chord);
	const from = Math.max(0, middle - half);
	const to = Math.min(length, middle + half);
	if (to > from) parts.add(kinds.roots, from, to);
}

const cuts: number[] = [];
const onEdge: number[] = [];
/** Notes the parts of a line inside a bed. A line on the very edge counts as inside. */
function noteBed({ shape }: Bed, ax: number, ay: number, ux: number, uy: number, length: number, parts: Parts): void {
	const { ring } = shape;
	let count = 0;
	let onEdges = 0;
	const cut = (at: number) => {
		if (at > 0 && at < length) sift(cuts, count++, at);
	};
	let p = ring[ring.length - 1]!;
	let side = ux * (p.y - ay) - uy * (p.x - ax);
	let along = ux * (p.x - ax) + uy * (p.y - ay);
	for (let i = 0; i < ring.length; i++) {
		p = ring[i]!;
		const nextSide = ux * (p.y - ay) - uy * (p.x - ax);
		const nextAlong = ux * (p.x - ax) + uy * (p.y - ay);
		const isOn = nextSide < rounding && nextSide > -rounding;
		const wasOn = side < rounding && side > -rounding;
		if (isOn && wasOn) {
			onEdge[onEdges++] = Math.min(along, nextAlong);
			onEdge[onEdges++] = Math.max(along, nextAlong);
		}
		if (isOn) cut(nextAlong);
		else if (!wasOn && side > 0 !== nextSide > 0) cut(along + ((nextAlong - along) * side) / (side - nextSide));
		side = nextSide;
		along = nextAlong;
	}
	let from = 0;
	for (let c = 0; c <= count; c++) {
		const to = c < count ? cuts[c]! : length;
		const middle = (from + to) / 2;
		let isIn = to - from > rounding && insideOf(shape, ax + ux * middle, ay + uy * middle);
		for (let e = 0; e < onEdges && !isIn; e += 2) isIn = middle > onEdge[e]! && middle < onEdge[e + 1]!;
		if (isIn) parts.add(kinds.bed, from, to);
		from = to;
	}
}

/** What lies in the ground. */
export interface Buried {
	obstacles: readonly Obstacle[];
	beds: readonly Bed[];
	roots: readonly RootZone[];
	waters: readonly WaterRing[];
}
const lawnSides = ({ edges }: Bed): Side[] =>
	edges.map(({ from, to }) => ({ kind: kinds.lawnEdge, from, to, reach: besideLawnEdge, beyond: 0 }));

/** Metres of a straight line that lie along the edge of a bed against lawn. */
export function lengthAlong(bed: Bed): (a: Point, b: Point) => number {
	const sides = new Sides([lawnSides(bed)]);
	const parts = new Parts();
	const counted = Object.values(kinds).map((kind) => (kind === kinds.lawnEdge ? 1 : 0));
	return (a, b) => {
		const length = Math.hypot(b.x - a.x, b.y - a.y);
		if (length < 1e-9) return 0;
		parts.clear();
		sides.note(a.x, a.y, b.x, b.y, (b.x - a.x) / length, (b.y - a.y) / length, length, parts);
		return parts.sum(counted);
	};
}

/** Kinds of obstacle whose edge can be dug along. */
const edged = new Set<Obstacle['kind']>(['house', 'porch', 'seating', 'paved', 'walk', 'drive', 'wall']);

function sidesOfAll({ obstacles, beds }: Buried, costs: LayingCosts): Sides {
	const lawn = costs.lawnEdge === costs.metre ? [] : beds.map(lawnSides);
	const paved = costs.alongEdge === costs.metre ? [] : obstacles.filter(({ kind }) => edged.has(kind)).map(edgesOf);
	return new Sides([...lawn, ...paved].filter((ring) => ring.length > 0));
}
function edgesOf({ ring, clearance }: Obstacle): Side[] {
	// The corners of a way at its clearance lie that far beyond the ends of a side.
	return ring.flatMap((from, i): Side[] => {
		const to = ring[(i + 1) % ring.length]!;
		if (ring.length === 2 && i > 0) return [];
		return [{ kind: kinds.edge, from, to, reach: besideEdge, beyond: clearance }];
	});
}

/**
 * The cost of straight lines: the exact integral of the rate over the line, the ground's rate at each place being that of
 * the first of these that it lies in: a root zone; the edge of a bed against lawn, if the line runs within 10° of it and
 * 0.15 m; the edge of house, wall or paving, within 10° and 0.6 m; a bed; open ground. Closer to water than rule
 * water.clear allows, its own cost comes on top. Metres of open ground.
 */
export function surfaceOf(buried: Buried, costs: LayingCosts): (a: Point, b: Point) => number {
	const { waters } = buried;
	const roots = costs.amongRoots === costs.metre ? [] : buried.roots;
	const beds = costs.inBed === costs.metre ? [] : buried.beds;
	const boxes: Box[] = beds.map(({ shape }) => shape);
	const sides = sidesOfAll(buried, costs);
	const extra = [costs.amongRoots, costs.lawnEdge, costs.alongEdge, costs.inBed].map((rate) => rate - costs.metre);
	const parts = new Parts();
	return (a, b) => {
		const dx = b.x - a.x;
		const dy = b.y - a.y;
		const length = Math.sqrt(dx * dx + dy * dy);
		if (length < 1e-9) return 0;
		const ux = dx / length;
		const uy = dy / length;
		parts.clear();
		for (const zone of roots) noteRoots(zone, a.x, a.y, ux, uy, length, parts);
		sides.note(a.x, a.y, b.x, b.y, ux, uy, length, parts);
		for (let k = 0; k < beds.length; k++) {
			const box = boxes[k]!;
			if ((a.x < box.minX && b.x < box.minX) || (a.x > box.maxX && b.x > box.maxX)) continue;
			if ((a.y < box.minY && b.y < box.minY) || (a.y > box.maxY && b.y > box.maxY)) continue;
			noteBed(beds[k]!, a.x, a.y, ux, uy, length, parts);
		}
		const near = waters.length === 0 ? 0 : costs.nearWater * lengthNearWater(waters, a, b);
		return length * costs.metre + parts.sum(extra) + near;
	};
}
