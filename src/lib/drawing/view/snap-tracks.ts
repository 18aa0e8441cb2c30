/** Lines that a point may run along: edges, lines through other things, and those that the line in hand suggests. */
import type { Point } from '../../domain/shared/geometry';
import type { SnapSources, Standing } from './snap-sources';
import type { SnapTo, SnapWish } from './types';

/** Lower goes first. */
export const ranks = { edge: 1, line: 2, square: 3 } as const;
export interface Track {
	rank: (typeof ranks)[keyof typeof ranks];
	kind: Exclude<SnapTo['kind'], 'corner' | 'step'>;
	/** A point on it and its direction, a unit vector. */
	from: Point;
	way: Point;
	/** Metres along it between which it runs. */
	least: number;
	most: number;
	words: string;
	/** What it runs through or starts from; two lines of the same thing meet where it stands. */
	source: string;
	/** Where the guide starts: what it is in line with. */
	root: Point;
	/** Metres from the pointer. */
	off: number;
}
type Wanted = Omit<Track, 'off'>;

/** Metres along a track of the place on it nearest to a point. */
export const alongTrack = ({ from, way, least, most }: Wanted, p: Point): number =>
	Math.min(most, Math.max(least, (p.x - from.x) * way.x + (p.y - from.y) * way.y));
export const onTrack = ({ from, way }: Wanted, along: number): Point => ({
	x: from.x + way.x * along,
	y: from.y + way.y * along
});
export const nearestOnTrack = (track: Wanted, p: Point): Point => onTrack(track, alongTrack(track, p));

/** Lines through other things draw from this share of the reach: in a full yard they lie close, and would leave no place of its own. */
const lineShare = 0.6;

const alongFront: Point = { x: 1, y: 0 };
const outFrom: Point = { x: 0, y: 1 };

/** Within `reach` metres of the pointer, or null. */
function near(track: Wanted, p: Point, reach: number): Track | null {
	const at = nearestOnTrack(track, p);
	const off = Math.hypot(at.x - p.x, at.y - p.y);
	return off <= reach ? { ...track, off } : null;
}

function edgesNear(sources: SnapSources, p: Point, reach: number, except: string | null): Track[] {
	const found: Track[] = [];
	for (const edge of sources.edges) {
		const { box, from, to, words, key } = edge;
		if (p.x < box.minX - reach || p.x > box.maxX + reach || p.y < box.minY - reach || p.y > box.maxY + reach) continue;
		if (key !== null && key === except) continue;
		const length = Math.hypot(to.x - from.x, to.y - from.y);
		const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
		const source = `${key ?? ''} ${words}`;
		const track = near(
			{ rank: ranks.edge, kind: 'edge', from, way, least: 0, most: length, words, source, root: from },
			p,
			reach
		);
		if (track) found.push(track);
	}
	return found;
}

/** First index whose value is not below `least`: by halving. */
function firstFrom(list: readonly Standing[], axis: 'x' | 'y', least: number): number {
	let [low, high] = [0, list.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if (list[middle]!.at[axis] < least) low = middle + 1;
		else high = middle;
	}
	return low;
}
/** A line through a thing: `out` from the front or `along` it. */
const through = (at: Point, way: Point, words: string, source: string): Wanted => ({
	rank: ranks.line,
	kind: 'line',
	from: at,
	way,
	least: -Infinity,
	most: Infinity,
	words,
	source,
	root: at
});
function linesNear(sources: SnapSources, p: Point, reach: number, { except, before }: SnapWish): Track[] {
	const found: Track[] = [];
	const collect = (track: Wanted) => {
		const one = near(track, p, reach);
		if (one) found.push(one);
	};
	const axes = [
		['x', sources.byX, outFrom],
		['y', sources.byY, alongFront]
	] as const;
	for (const [axis, list, way] of axes)
		for (let k = firstFrom(list, axis, p[axis] - reach); k < list.length; k += 1) {
			const { at, name, key } = list[k]!;
			if (at[axis] > p[axis] + reach) break;
			if (key !== except) collect(through(at, way, `in line with ${name}`, key));
		}
	for (const [k, at] of before.slice(0, -1).entries())
		for (const way of [outFrom, alongFront]) collect(through(at, way, `in line with point ${k + 1}`, `point ${k}`));
	return found;
}

/** From the last point set: straight on, square to the last stretch; after a first point square to the house front. */
function squaresNear(p: Point, reach: number, before: readonly Point[]): Track[] {
	const last = before.at(-1);
	if (!last) return [];
	const from = before.at(-2);
	const length = from ? Math.hypot(last.x - from.x, last.y - from.y) : 0;
	const ahead = from && length > 1e-6 ? { x: (last.x - from.x) / length, y: (last.y - from.y) / length } : null;
	const ways: [Point, string][] = ahead
		? [
				[{ x: -ahead.y, y: ahead.x }, 'square to the last stretch'],
				[ahead, 'straight on from the last stretch']
			]
		: [
				[outFrom, 'square to the house front'],
				[alongFront, 'along the house front']
			];
	return ways.flatMap(([way, words]) => {
		const track = near(
			{
				rank: ranks.square,
				kind: 'square',
				from: last,
				way,
				least: -Infinity,
				most: Infinity,
				words,
				source: 'the line in hand',
				root: last
			},
			p,
			reach
		);
		return track ? [track] : [];
	});
}

/** All tracks within reach of a pointer, the one that goes first first: by rank, then by distance, then as they come. */
export function tracksNear(sources: SnapSources, p: Point, reach: number, wish: SnapWish): Track[] {
	return [
		...edgesNear(sources, p, reach, wish.except),
		...linesNear(sources, p, reach * lineShare, wish),
		...squaresNear(p, reach, wish.before)
	].sort((a, b) => a.rank - b.rank || a.off - b.off);
}

/** Where two tracks cross; null when they do not, or all but run along each other. */
export function crossing(a: Track, b: Track): Point | null {
	const sine = a.way.x * b.way.y - a.way.y * b.way.x;
	if (Math.abs(sine) < 1e-3) return null;
	const [dx, dy] = [b.from.x - a.from.x, b.from.y - a.from.y];
	const onA = (dx * b.way.y - dy * b.way.x) / sine;
	const onB = (dx * a.way.y - dy * a.way.x) / sine;
	const slack = 1e-9;
	const isOn = (track: Track, at: number) => at >= track.least - slack && at <= track.most + slack;
	return isOn(a, onA) && isOn(b, onB) ? onTrack(a, onA) : null;
}
