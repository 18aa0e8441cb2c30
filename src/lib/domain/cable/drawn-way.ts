/**
 * The way of a cable that is bent by hand: straight from bend to bend, checked against the ground it goes through. Under a walk
 * or a drive it is bored, or taken through a declared crossing that it runs along; whatever else stands in its way stops it.
 */
import { between, distance, nearestOnLine, nearestOnSegment, type Point } from '../shared/geometry';
import type { Site, Strip } from '../site';
import type { LaidRoute } from './laid';
import { isNearBox, nearness, stretchesInside, type Stretch } from './drawn-leg';
import { beyondEdge, type Ground, type Terminal } from './ground';
import { insideOf, type Obstacle } from './obstacles';
import type { SegmentCrossing } from './types';

/** Why a cable cannot lie as drawn, and where. */
export interface Blocked {
	/** It runs into something, under steps, off the lot, or bends under paving, where a bore goes straight. */
	why: 'through' | 'steps' | 'lot' | 'bend';
	/** What is in its way, as the person calls it. */
	name: string;
	at: Point;
}
/** Where a cable as drawn lies nearer to something than the plan keeps. Metres. */
export interface Close {
	name: string;
	distance: number;
	keeps: number;
	at: Point;
}
export interface DrawnWay {
	route: LaidRoute;
	close: Close[];
	/** Garden walls it passes under. */
	under: { name: string; at: Point }[];
}
export type Bent = DrawnWay | Blocked;
export const isBlocked = (bent: Bent): bent is Blocked => 'why' in bent;

/** By terminals; `via` in order from the first to the second. Nothing is kept from one call to the next. */
export type Bending = (from: number, to: number, via: readonly Point[]) => Bent;

/** What is nearer to house, trunk, water or post than this counts as running into it, metres. */
const touches = 0.01;
/** A declared crossing is taken where the cable passes as near to both of its ends, metres. */
const reachOfCrossing = 0.3;
/** Declared crossings that one straight length may take. */
const mostTaken = 4;
/** Points nearer than this are one, metres. */
const sameSpot = 1e-9;
/** Rounding of distances, metres. */
const rounding = 1e-6;

/** A leg as laid: the points after its first, and the crossings on it. `close` by obstacle. */
interface Leg {
	points: Point[];
	crossings: SegmentCrossing[];
	close: Map<Obstacle, Close>;
	under: { name: string; at: Point }[];
}
interface Ends {
	a: Point;
	b: Point;
	/** Metres kept at an end that is a terminal; null at a bend. */
	standA: Float64Array | null;
	standB: Float64Array | null;
}
/** A stretch of a leg under a walk or a drive. */
interface Under {
	strip: Strip;
	stretch: Stretch;
}

const isStrip = ({ kind }: Obstacle): boolean => kind === 'walk' || kind === 'drive';
/** Paving that is neither walk nor drive has no line to bore across, and is gone round like a house. */
const isSolid = (o: Obstacle): boolean => !isStrip(o) && o.kind !== 'wall';

/** Stretches of one leg under paving, none within another; those of one strip that nearly meet are one. */
function apart(all: readonly Under[], margin: number): Under[] {
	const found: Under[] = [];
	for (const { strip, stretch } of all.toSorted((p, q) => p.stretch[0] - q.stretch[0] || p.stretch[1] - q.stretch[1])) {
		const last = found.at(-1);
		const from = last ? Math.max(stretch[0], last.stretch[1]) : stretch[0];
		if (stretch[1] <= from) continue;
		if (last?.strip === strip && from - last.stretch[1] < 2 * margin) last.stretch[1] = stretch[1];
		else found.push({ strip, stretch: [from, stretch[1]] });
	}
	return found;
}

/** Bends by hand in one ground. */
export class Bends {
	readonly #strips: Map<Obstacle, Strip>;
	constructor(
		private readonly site: Site,
		private readonly ground: Ground,
		private readonly terminals: readonly Terminal[]
	) {
		this.#strips = new Map(
			ground.obstacles.flatMap((o) => {
				const strip = isStrip(o) && site.strips.find(({ id, kind }) => id === o.id && kind === o.kind);
				return strip ? [[o, strip] as const] : [];
			})
		);
	}

	/** The way from terminal to terminal through each bend, or what is in its way. Total. */
	readonly way: Bending = (from, to, via) => {
		const [a, b] = [this.terminals[from]!, this.terminals[to]!];
		const wrong = via.flatMap((p) => this.#wrongBend(p) ?? [])[0];
		if (wrong) return wrong;
		const stops = [a.ground, ...via, b.ground];
		const legs: Leg[] = [];
		for (let k = 1; k < stops.length; k++) {
			const leg = this.#leg(
				{
					a: stops[k - 1]!,
					b: stops[k]!,
					standA: k === 1 ? a.stand : null,
					standB: k === stops.length - 1 ? b.stand : null
				},
				mostTaken
			);
			if ('why' in leg) return leg;
			legs.push(leg);
		}
		const all = [a.at, a.ground, ...legs.flatMap(({ points }) => points), b.at];
		const path = all.filter((p, k) => k === 0 || distance(p, all[k - 1]!) > sameSpot);
		if (path.length === 1) path.push(b.at);
		const length = path.reduce((sum, p, k) => (k === 0 ? 0 : sum + distance(p, path[k - 1]!)), 0);
		const close = new Map<Obstacle, Close>();
		for (const leg of legs)
			for (const [o, one] of leg.close) if (one.distance < (close.get(o)?.distance ?? Infinity)) close.set(o, one);
		return {
			route: { length, path, crossings: legs.flatMap(({ crossings }) => crossings) },
			close: [...close.values()],
			under: legs.flatMap(({ under }) => under)
		};
	};

	/** A bend where no cable may lie, or under paving. */
	#wrongBend(at: Point): Blocked | null {
		const { street, leftBoundary, rightBoundary } = this.site;
		if (at.y > street) return { why: 'lot', name: 'the street', at };
		if (at.x < leftBoundary || at.x > rightBoundary) return { why: 'lot', name: 'the boundary', at };
		const o = this.ground.obstacles.find((one) => isStrip(one) && insideOf(one, at.x, at.y));
		return o ? { why: 'bend', name: o.name, at } : null;
	}

	/** A straight leg; `taken`: so many declared crossings may still be taken on it. */
	#leg(ends: Ends, taken: number): Leg | Blocked {
		const { a, b } = ends;
		const length = distance(a, b);
		const under: Under[] = [];
		for (const o of this.ground.obstacles) {
			if (!isNearBox(o, a, b, touches)) continue;
			if (isSolid(o)) {
				const near = nearness(o, a, b);
				if (near.distance < touches) return { why: 'through', name: o.name || o.kind, at: near.at };
			}
			const strip = this.#strips.get(o);
			if (strip) for (const stretch of stretchesInside(o, a, b)) under.push({ strip, stretch });
		}
		const margin = beyondEdge / length;
		const crossed = apart(under, margin);
		for (const one of crossed) {
			const wrong = this.#wrongUnder(one, a, b);
			if (wrong) return wrong;
			const declared = taken > 0 ? this.#declared(one, ends, taken) : null;
			if (declared) return declared;
		}
		return this.#bored(ends, crossed, margin);
	}

	/** A cable comes up at the end of a leg, and steps stand on a footing. */
	#wrongUnder({ strip, stretch: [from, to] }: Under, a: Point, b: Point): Blocked | null {
		const at = between(a, b, from);
		if (from < rounding || to > 1 - rounding) return { why: 'bend', name: strip.name, at: from < rounding ? a : b };
		const station = nearestOnLine(between(a, b, (from + to) / 2), strip.centre)?.at ?? 0;
		const isSteps = strip.steps.some(({ start, end }) => station > start && station < end);
		return isSteps ? { why: 'steps', name: strip.name, at } : null;
	}

	/** The leg led through a declared crossing that it runs along; null where there is none, or no way to it and on from it. */
	#declared({ strip, stretch: [from, to] }: Under, ends: Ends, taken: number): Leg | null {
		const { a, b, standA, standB } = ends;
		const near = strip.crossings
			.map(({ id, kind, left, right }) => {
				const [l, r] = [nearestOnSegment(left, a, b), nearestOnSegment(right, a, b)];
				const [first, last] = l.t < r.t ? [left, right] : [right, left];
				const isHere = Math.min(l.t, r.t) < to && Math.max(l.t, r.t) > from;
				return { id, kind, first, last, off: isHere ? Math.max(l.distance, r.distance) : Infinity };
			})
			.filter(({ off }) => off <= reachOfCrossing)
			.toSorted((p, q) => p.off - q.off)[0];
		if (!near) return null;
		const { id, kind, first, last } = near;
		if (this.#meetsSolid(first, last)) return null;
		const before = this.#leg({ a, b: first, standA, standB: null }, taken - 1);
		if ('why' in before) return null;
		const after = this.#leg({ a: last, b, standA: null, standB }, taken - 1);
		if ('why' in after) return null;
		const length = distance(first, last);
		return {
			points: [...before.points, last, ...after.points],
			crossings: [...before.crossings, { strip: strip.id, crossing: id, kind, length }, ...after.crossings],
			close: withoutStrip(new Map([...before.close, ...after.close]), strip),
			under: [...before.under, ...after.under]
		};
	}
	#meetsSolid(a: Point, b: Point): boolean {
		return this.ground.obstacles.some(
			(o) => isSolid(o) && isNearBox(o, a, b, touches) && nearness(o, a, b).distance < touches
		);
	}

	/** The leg with a bore under each strip, from a little beyond one edge to a little beyond the other. */
	#bored(ends: Ends, crossed: readonly Under[], margin: number): Leg {
		const { a, b } = ends;
		const points: Point[] = [];
		const crossings: SegmentCrossing[] = [];
		let before = 0;
		crossed.forEach(({ strip, stretch: [from, to] }, k) => {
			const start = Math.max(before, from - margin);
			const end = Math.min(to + margin, crossed[k + 1]?.stretch[0] ?? 1);
			before = end;
			const [enter, leave] = [between(a, b, start), end < 1 ? between(a, b, end) : b];
			points.push(enter, leave);
			crossings.push({ strip: strip.id, crossing: null, kind: 'bore', length: distance(enter, leave) });
		});
		return { points: [...points, b], crossings, ...this.#along(ends, new Set(crossed.map(({ strip }) => strip))) };
	}

	/** What a leg lies too near to, and the garden walls it passes under. */
	#along({ a, b, standA, standB }: Ends, crossed: ReadonlySet<Strip>): Pick<Leg, 'close' | 'under'> {
		const close: Leg['close'] = new Map();
		const under: Leg['under'] = [];
		this.ground.obstacles.forEach((o, i) => {
			const strip = this.#strips.get(o);
			if ((strip && crossed.has(strip)) || !isNearBox(o, a, b, o.clearance)) return;
			const keeps = Math.min(o.clearance, standA?.[i] ?? Infinity, standB?.[i] ?? Infinity);
			const near = nearness(o, a, b);
			if (near.distance >= keeps - rounding) return;
			const name = o.name || o.kind;
			if (o.kind === 'wall' && near.distance < rounding) under.push({ name, at: near.at });
			else close.set(o, { name, distance: near.distance, keeps: o.clearance, at: near.at });
		});
		return { close, under };
	}
}
/** The ends of a crossing lie beside the edge it begins at. */
const withoutStrip = (close: Leg['close'], { id, kind }: Strip): Leg['close'] =>
	new Map([...close].filter(([o]) => o.id !== id || o.kind !== kind));
