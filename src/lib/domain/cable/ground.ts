import { boxOf, segmentMeeting, sidesOf, type Point } from '../shared/geometry';
import { clearances } from './costs';
import { boundaryDistance, exitsOf, insideOf, nearBox, type Obstacle } from './obstacles';

/** A place where cable starts or ends. */
export interface Terminal {
	/** Where the fixture or the transformer stands. */
	at: Point;
	/** Where its cable reaches open ground: `at`, unless that lies on or in an obstacle's edge. */
	ground: Point;
	/** By obstacle: metres that cable to it keeps, the obstacle's clearance or less where it stands nearer. */
	stand: Float64Array;
	/** What it stands in, when no cable can get there. */
	within: Obstacle | null;
}
export interface Ground {
	obstacles: Obstacle[];
	/** By obstacle: metres kept by cable between corners. */
	clearance: Float64Array;
	/**
	 * Whether the straight line a-b keeps its distance from every obstacle but `except`. `standA`, `standB`: metres
	 * kept at either end where less than the clearance; an end must itself stand at least that far off.
	 */
	open: (a: Point, b: Point, standA: Float64Array | null, standB: Float64Array | null, except: number) => boolean;
	/** `reach`: metres of paving or porch that may lie between it and open ground; by their kind when left out. */
	terminal: (at: Point, reach?: number) => Terminal;
	/** Whether a corner or portal may stand there: clear of every obstacle but `except`. */
	free: (at: Point, except: number) => boolean;
	/** Ways are to be looked for where they hardly fit, at several times the work. */
	isFine: boolean;
}

/** Rounding of coordinates up to 500 m, metres. */
const tolerance = 1e-7;
/** A terminal nearer to an edge than `touching` is put `off` metres outside it. */
const touching = 0.02;
const off = 0.05;
/** No exit further off than this is looked for, metres. */
const furthestExit = 3;
/** Metres a fixture may stand inside an edge (a light in a riser, on a post of the porch) and still be reached. */
const reachInside = {
	house: 0.3,
	porch: 0.6,
	tree: 0.3,
	water: 0,
	seating: 1,
	paved: 1,
	post: 0.3,
	walk: 1,
	drive: 1,
	wall: 0.3
} as const;

const paved = (o: Obstacle | null) =>
	o !== null && o.kind !== 'house' && o.kind !== 'water' && o.kind !== 'tree' && o.kind !== 'post';

/** Part of an obstacle's boundary, small enough that its box tells something: a trunk, or a few sides of a ring. */
interface Piece {
	of: number;
	line: readonly Point[];
	/** −1 where it is a line. */
	radius: number;
	box: [minX: number, minY: number, maxX: number, maxY: number];
}
const mostSides = 8;
function piecesOf(o: Obstacle, of: number): Piece[] {
	if (o.round) return [{ of, line: [], radius: o.round.radius, box: [o.minX, o.minY, o.maxX, o.maxY] }];
	const closed = [...o.ring, o.ring[0]!];
	const count = Math.ceil(o.ring.length / mostSides);
	return Array.from({ length: count }, (_, i): Piece => {
		const line = closed.slice(i * mostSides, (i + 1) * mostSides + 1);
		const box = boxOf(line);
		return { of, line, radius: -1, box: [box.minX, box.minY, box.maxX, box.maxY] };
	});
}

/** Distances and lines of sight among obstacles. Flat arrays: this is the inner loop of the plan. */
export function makeGround(obstacles: Obstacle[], isFine = false): Ground {
	const count = obstacles.length;
	const clearance = Float64Array.from(obstacles, (o) => o.clearance);
	const pieces = obstacles.flatMap(piecesOf);
	const owner = Int32Array.from(pieces, (piece) => piece.of);
	const start = new Int32Array(pieces.length + 1);
	pieces.forEach((piece, i) => (start[i + 1] = start[i]! + piece.line.length));
	const xs = Float64Array.from(pieces.flatMap((piece) => piece.line.map((p) => p.x)));
	const ys = Float64Array.from(pieces.flatMap((piece) => piece.line.map((p) => p.y)));
	const radius = Float64Array.from(pieces, (piece) => piece.radius);
	/** Boxes grown by the clearance: what misses one keeps its distance. */
	const boxes = Float64Array.from(
		pieces.flatMap(({ of, box: [minX, minY, maxX, maxY] }) => {
			const by = obstacles[of]!.clearance;
			return [minX - by, minY - by, maxX + by, maxY + by];
		})
	);
	const midX = Float64Array.from(pieces, ({ box }) => (box[0] + box[2]) / 2);
	const midY = Float64Array.from(pieces, ({ box }) => (box[1] + box[3]) / 2);
	/** Half-diagonal of each box, for a quick miss. */
	const half = Float64Array.from(pieces, ({ box }) => Math.hypot(box[2] - box[0], box[3] - box[1]) / 2);

	/** Whether the line of `length` from (ax, ay) along (ux, uy) comes nearer than `keep` to a piece; its ends do not. */
	const hits = (k: number, ax: number, ay: number, ux: number, uy: number, length: number, keep: number): boolean => {
		const mx = midX[k]! - ax;
		const my = midY[k]! - ay;
		const across = mx * uy - my * ux;
		const r = radius[k]!;
		if (r >= 0) {
			const along = mx * ux + my * uy;
			return across < r + keep - tolerance && -across < r + keep - tolerance && along > 0 && along < length;
		}
		if (Math.abs(across) > half[k]! + keep) return false;
		const least = keep - tolerance;
		let side = 0;
		let along = 0;
		const first = start[k]!;
		const end = start[k + 1]!;
		for (let p = first; p < end; p++) {
			const px = xs[p]! - ax;
			const py = ys[p]! - ay;
			const nextSide = px * uy - py * ux;
			const nextAlong = px * ux + py * uy;
			// The ends keep their distance already, so the line comes too near only at a corner, or crosses a side.
			if (nextAlong > 0 && nextAlong < length && nextSide < least && nextSide > -least) return true;
			if (p > first && side > 0 !== nextSide > 0) {
				const meet = along + ((nextAlong - along) * side) / (side - nextSide);
				if (meet > 0 && meet < length) return true;
			}
			side = nextSide;
			along = nextAlong;
		}
		return false;
	};
	/** What blocked the line before likely blocks the next: it is looked at first. */
	let likely = 0;
	const open: Ground['open'] = (a, b, standA, standB, except) => {
		const ax = a.x;
		const ay = a.y;
		const dx = b.x - ax;
		const dy = b.y - ay;
		const length = Math.sqrt(dx * dx + dy * dy);
		if (length < 1e-9) return true;
		const ux = dx / length;
		const uy = dy / length;
		const minX = dx < 0 ? b.x : ax;
		const maxX = dx < 0 ? ax : b.x;
		const minY = dy < 0 ? b.y : ay;
		const maxY = dy < 0 ? ay : b.y;
		for (let i = pieces.length > 0 ? -1 : 0; i < pieces.length; i++) {
			const k = i < 0 ? likely : i;
			const box = k * 4;
			if (boxes[box]! > maxX || boxes[box + 2]! < minX || boxes[box + 1]! > maxY || boxes[box + 3]! < minY) continue;
			const o = owner[k]!;
			if (o === except) continue;
			let keep = clearance[o]!;
			if (standA && standA[o]! < keep) keep = standA[o]!;
			if (standB && standB[o]! < keep) keep = standB[o]!;
			if (!hits(k, ax, ay, ux, uy, length, keep)) continue;
			likely = k;
			return false;
		}
		return true;
	};

	/** Whether a point stands outside everything and not on an edge. */
	const clearOfEdges = (p: Point) =>
		obstacles.every((o) => {
			if (!nearBox(o, p.x, p.y, touching)) return true;
			return !insideOf(o, p.x, p.y) && boundaryDistance(o, p.x, p.y) >= touching;
		});
	/** Whether the way out from `at` cuts through a house or water that `at` is not itself in. */
	const cutsThrough = (at: Point, to: Point) =>
		obstacles.some(
			(o) =>
				(o.kind === 'house' || o.kind === 'water') &&
				!insideOf(o, at.x, at.y) &&
				sidesOf(o.ring).some(([p, q]) => segmentMeeting(at, to, p, q) !== null)
		);
	/** The nearest place in open ground, just outside the edge of something. */
	const nearestOpen = (at: Point): Point | null => {
		const far = (p: Point) => Math.hypot(p.x - at.x, p.y - at.y);
		// An exit lies within twice `off` of its obstacle, even at a corner.
		const about = obstacles.filter((o) => nearBox(o, at.x, at.y, furthestExit + 2 * off));
		const places = about.flatMap((o) => exitsOf(o, at, off)).toSorted((a, b) => far(a) - far(b));
		return places.find((p) => far(p) < furthestExit && clearOfEdges(p) && !cutsThrough(at, p)) ?? null;
	};
	const terminal: Ground['terminal'] = (at, reach = 0) => {
		const inside = obstacles.find((o) => insideOf(o, at.x, at.y)) ?? null;
		const ground = clearOfEdges(at) ? at : nearestOpen(at);
		const stand = new Float64Array(count);
		if (ground)
			obstacles.forEach((o, i) => {
				const away = !nearBox(o, ground.x, ground.y, o.clearance);
				stand[i] = away ? o.clearance : Math.min(o.clearance, boundaryDistance(o, ground.x, ground.y));
			});
		const depth = ground ? Math.hypot(ground.x - at.x, ground.y - at.y) - off : Infinity;
		const most = Math.max(reachInside[inside?.kind ?? 'walk'], paved(inside) ? reach : 0);
		const blocked = depth > most ? (inside ?? obstacles[0] ?? null) : null;
		return { at, ground: ground ?? at, stand, within: blocked };
	};

	const free: Ground['free'] = (at, except) => {
		for (let i = 0; i < count; i++) {
			const o = obstacles[i]!;
			const keep = o.clearance;
			if (i === except || !nearBox(o, at.x, at.y, keep)) continue;
			if (boundaryDistance(o, at.x, at.y) < keep - tolerance || insideOf(o, at.x, at.y)) return false;
		}
		return true;
	};
	return { obstacles, clearance, open, terminal, free, isFine };
}

/** Metres beyond the edge at which a crossing of paving begins. */
export const beyondEdge = clearances.paving;
