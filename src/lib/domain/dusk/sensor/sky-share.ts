/** How much of the sky's light a sensor gets. */
import { coverOfCrown, coverOfLid, coverOfScreen, type Cover, type Eye } from './covers';
import type { Obstacles } from './obstacles';

/** A window of a sensor: where it is, metres, and the level unit vector along which it looks. */
export interface Pane extends Eye {
	nx: number;
	ny: number;
}
export interface SkyShare {
	/** 0 to 1, with leaves on the trees that shed them and without. */
	leafOn: number;
	leafOff: number;
	/** By taker of the obstacles, with leaves on: together with `leafOn` they make 1. */
	taken: Float64Array;
}
/** Ways of looking for the spot that is judged, for the few named beside it, and for one of many in a search. */
export const finely = 240;
export const fairly = 60;
export const coarsely = 24;

const toStraightUp = Math.PI / 4;
/** ∫ cos² e de from level to the slope tan e: (e + sin e cos e) ÷ 2. Straight up it is π/4. */
const upTo = (slope: number): number =>
	slope === Infinity ? toStraightUp : (Math.atan(slope) + slope / (1 + slope * slope)) / 2;

/**
 * The part of the light of an even sky, one luminance from the horizon up, that reaches an upright window, of what the same
 * window gets in the open: ∫ τ cos θ dω over the visible quarter of the sphere, divided by the same without obstacles, π/2. With
 * e the elevation and φ the way of looking off the window's own, cos θ dω = cos² e de · cos φ dφ: up and down it is integrated
 * exactly, sideways by `rays` ways equally spaced in sin φ, mirror images of one another. An edge that falls between two ways errs by at
 * most half a way's part, 1 ÷ 2 `rays`: 0.0021 an edge with 240. Of obstacles one behind another the nearer takes first.
 */
export function skyShare(obstacles: Obstacles, pane: Pane, rays = finely): SkyShare {
	const near = ahead(obstacles, pane);
	const sky: SkyShare = { leafOn: 0, leafOff: 0, taken: new Float64Array(obstacles.takers.length) };
	const part = 1 / (rays * toStraightUp);
	for (let k = 0; k < rays; k++) {
		const sideways = (2 * k + 1 - rays) / rays;
		const forward = Math.sqrt(1 - sideways * sideways);
		const dx = forward * pane.nx - sideways * pane.ny;
		const dy = forward * pane.ny + sideways * pane.nx;
		addWay(sky, coversAlong(near, pane, dx, dy), part);
	}
	// Sums of a few hundred parts miss 1 by rounding.
	sky.leafOn = Math.min(1, sky.leafOn);
	sky.leafOff = Math.min(1, sky.leafOff);
	return sky;
}

/** Without what lies wholly behind the window or below it. */
function ahead({ takers, screens, lids, crowns }: Obstacles, pane: Pane): Obstacles {
	const front = (x: number, y: number): number => (x - pane.x) * pane.nx + (y - pane.y) * pane.ny;
	return {
		takers,
		screens: screens.filter(
			({ shape: { ax, ay, dx, dy, peak } }) => peak > pane.z && Math.max(front(ax, ay), front(ax + dx, ay + dy)) > 0
		),
		lids: lids.filter(({ shape: { z, ring } }) => z > pane.z && ring.some(({ x, y }) => front(x, y) > 0)),
		crowns: crowns.filter(({ shape: { x, y, z, radius, half } }) => z + half > pane.z && front(x, y) > -radius)
	};
}
function coversAlong({ screens, lids, crowns }: Obstacles, eye: Eye, dx: number, dy: number): Cover[] {
	const covers: Cover[] = [];
	let taker = 0;
	const add = (low: number, high: number, distance: number, leafOn: number, leafOff: number): void => {
		covers.push({ low, high, leafOn, leafOff, taker, distance });
	};
	for (const one of screens) coverOfScreen(one.shape, eye, dx, dy, ((taker = one.taker), add));
	for (const one of lids) coverOfLid(one.shape, eye, dx, dy, ((taker = one.taker), add));
	for (const one of crowns) coverOfCrown(one.shape, eye, dx, dy, ((taker = one.taker), add));
	return covers;
}
/** Adds what one way of looking gets: slice by slice from slope to slope, the nearest cover first. */
function addWay(sky: SkyShare, covers: Cover[], part: number): void {
	const only = covers[0];
	if (!only) {
		sky.leafOn += part * toStraightUp;
		sky.leafOff += part * toStraightUp;
		return;
	}
	if (covers.length === 1) {
		const behind = part * (upTo(only.high) - upTo(only.low));
		const free = part * toStraightUp - behind;
		sky.leafOn += free + behind * only.leafOn;
		sky.leafOff += free + behind * only.leafOff;
		sky.taken[only.taker]! += behind * (1 - only.leafOn);
		return;
	}
	inOrder(covers, isNearer);
	const slopes = [0, Infinity];
	for (const { low, high } of covers) slopes.push(low, high);
	inOrder(slopes, isLess);
	let below = 0;
	for (let i = 1; i < slopes.length; i++) {
		const [from, to] = [slopes[i - 1]!, slopes[i]!];
		if (!(to > from)) continue;
		const upper = upTo(to);
		addSlice(sky, covers, from, to, part * (upper - below));
		below = upper;
	}
}
const isLess = (a: number, b: number): boolean => a < b;
const isNearer = (a: Cover, b: Cover): boolean =>
	a.distance < b.distance || (a.distance === b.distance && a.taker < b.taker);
/** Sorts a handful in place, by insertion: a way of looking rarely has more than six covers, and there are thousands of ways. */
function inOrder<Item>(items: Item[], isBefore: (a: Item, b: Item) => boolean): void {
	for (let i = 1; i < items.length; i++) {
		const item = items[i]!;
		let j = i;
		for (; j > 0 && isBefore(item, items[j - 1]!); j--) items[j] = items[j - 1]!;
		items[j] = item;
	}
}
function addSlice(sky: SkyShare, covers: readonly Cover[], from: number, to: number, light: number): void {
	let leafOn = light;
	let leafOff = light;
	for (const cover of covers) {
		if (cover.low > from || cover.high < to) continue;
		sky.taken[cover.taker]! += leafOn * (1 - cover.leafOn);
		leafOn *= cover.leafOn;
		leafOff *= cover.leafOff;
	}
	sky.leafOn += leafOn;
	sky.leafOff += leafOff;
}
