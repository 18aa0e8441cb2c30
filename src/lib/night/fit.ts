/** How the picture from the ground is framed: the whole front, and as much of what is lit before and beside it as goes in. */
import type { Plan } from '../domain/plan';
import type { Strip } from '../domain/site';
import { roofTop } from './roof';
import type { Camera } from './camera';
import { standpointOf, type Standpoint } from './stand';
import type { View } from './types';

/** Height of a standing person's eyes, metres (from memory: 1.5 to 1.65 m). */
const eye = 1.6;
/** From the street's edge to the far side of it, and the widest that is taken in at a glance: slope of half the angle (about 30°). */
const across = 7;
const widest = 0.58;

interface Spot {
	x: number;
	y: number;
	z: number;
}
/** What is to be seen, as slopes from the eye: sideways to both ends, up to its top, down to the nearest ground. */
interface Frame {
	x: number;
	y: number;
	left: number;
	right: number;
	top: number;
	bottom: number;
	/** Tall trees near by may run out of the picture at its top. */
	cropped: boolean;
}
function spotsOf({ site, fixtures }: Plan): Spot[] {
	// Of a high roof enough is shown to see that it is one; gables wholly.
	const points = site.walls.map((wall) => (wall.peak === null ? 0 : wall.peak + 0.5));
	const top = Math.max(Math.min(roofTop(site), site.eaves + 1.8), ...points);
	const house = site.walls.filter((wall) => wall.of === 'house').flatMap((wall) => [wall.from, wall.to]);
	const front = Math.max(-1e9, ...house.map((p) => p.y));
	const shown = house.filter((p) => p.y > front - 12);
	const lit = new Set(fixtures.filter(({ target }) => target.kind === 'tree').map(({ target }) => target.id));
	return [
		...shown.map(({ x, y }) => ({ x, y: Math.max(y, front - 6), z: top })),
		...site.trees
			.filter((tree) => lit.has(tree.id) || site.trees.length < 12)
			.flatMap(({ at, spread, height }) =>
				[-0.5, 0.5].map((side) => ({ x: at.x + side * spread, y: at.y, z: height }))
			),
		...fixtures.map(({ at, height }) => ({ ...at, z: height + 0.3 }))
	];
}
/** Slopes to the corners of the front. */
const frontFrom = ({ site }: Plan, x: number, y: number): number[] =>
	site.walls
		.filter((wall) => wall.of === 'house' && wall.front)
		.flatMap((wall) => [wall.from, wall.to].map((p) => (p.x - x) / (y - p.y)));

/** The house front takes at least this part of the picture's width, even where that cuts off what stands far to its side. */
const leastHouse = 0.3;

/** Across the street. A yard of which nothing is known is looked at all the same. */
function fromStreet(plan: Plan): Frame {
	const { site } = plan;
	const told = spotsOf(plan).filter((p) => p.y < site.street + across - 2);
	const spots =
		told.length > 0
			? told
			: [
					{ x: -4, y: 0, z: 4 },
					{ x: 4, y: 0, z: 4 }
				];
	let y = site.street + across;
	let seen = spread(spots, y);
	for (let step = 0; step < 60 && seen.right - seen.left > 2 * widest; step++) seen = spread(spots, (y += 1.5));
	const { x } = seen;
	const house = frontFrom(plan, x, y);
	let { left, right } = seen;
	const most = house.length > 0 ? (Math.max(...house) - Math.min(...house)) / leastHouse : Infinity;
	if (right - left > most) {
		// The house stays in whole, with a margin; the rest of the width goes to the side where there is more to see.
		const margin = most * 0.06;
		const [least, last] = [Math.max(...house) + margin - most, Math.min(...house) - margin];
		left = Math.min(last, Math.max(least, left));
		right = left + most;
	}
	const shown = spots.filter((p) => (p.x - x) / (y - p.y) > left - 0.01 && (p.x - x) / (y - p.y) < right + 0.01);
	const top = Math.max(...shown.map((p) => (p.z - eye) / (y - p.y)), 0.05);
	const bottom = eye / (y - (site.street + 0.8));
	return { x, y, left, right, top, bottom, cropped: right - left < seen.right - seen.left };
}

/** On the way in: ground from so many metres before one's feet, and so much beside the house, as a part of its width. */
const feet = 6;
const beside = 0.12;
/** The front with the lights that stand beside it: of the windows as wide as a glance that hold all of it, the one that holds the most. */
function onWay(plan: Plan, { at: { x, y } }: Standpoint): Frame {
	const house = frontFrom(plan, x, y);
	const [from, to] = [Math.min(...house), Math.max(...house)];
	const margin = (to - from) * beside;
	const wide = Math.max(2 * widest, to - from + 2 * margin);
	const slopes = plan.fixtures.filter((one) => y - one.at.y > 2.5).map((one) => (one.at.x - x) / (y - one.at.y));
	const held = (left: number): number => slopes.filter((s) => s > left && s < left + wide).length;
	const [least, last] = [to + margin - wide, from - margin];
	// From the middle outwards: of equals the one that has the house nearest to its middle.
	const tries = Array.from({ length: 41 }, (_, i) => ({
		left: least + ((last - least) * i) / 40,
		off: Math.abs(i - 20)
	}));
	const { left } = tries
		.toSorted((a, b) => a.off - b.off)
		.reduce((best, next) => (held(next.left) > held(best.left) ? next : best));
	const top = Math.max(...spotsOf(plan).flatMap((p) => (y - p.y > 4 ? [(p.z - eye) / (y - p.y)] : [])), 0.05);
	return { x, y, left, right: left + wide, top, bottom: eye / feet, cropped: true };
}

/** Where one stands before the house: on which strip, null for the street, and how far from the front; null where there is none yet. Metres. */
export function standOf(plan: Plan): { strip: Strip | null; away: number | null } {
	const stand = standpointOf(plan);
	if (stand) return stand;
	const ends = plan.site.walls.filter((wall) => wall.of === 'house' && wall.front).map(({ from }) => from.y);
	return { strip: null, away: ends.length === 0 ? null : fromStreet(plan).y - Math.max(...ends) };
}
/** The camera of someone who stands before the house. */
export function fitStreet(plan: Plan, view: View): Camera {
	const stand = standpointOf(plan);
	const { x, y, left, right, top, bottom, cropped } = stand ? onWay(plan, stand) : fromStreet(plan);
	const wide = (view.width * 0.93) / Math.max(right - left, 1e-3);
	// Cropped by up to a third.
	const tall = cropped ? wide : (view.height * 0.93) / (top + bottom);
	const scale = clearOfLamps(plan, x, y, view.width, (left + right) / 2, Math.min(wide, tall));
	const spare = Math.max(view.height * 0.05, view.height - scale * (top + bottom));
	return {
		...view,
		x,
		y,
		z: eye,
		scale,
		column: view.width / 2 - (scale * (left + right)) / 2,
		row: view.height - spare * 0.25 - scale * bottom
	};
}
/** A little less large where the edge of the picture would cut a street lamp in two. */
function clearOfLamps(plan: Plan, x: number, y: number, width: number, middle: number, scale: number): number {
	const half = width / 2 / scale;
	const cut = plan.site.existing.some(({ at }) => {
		const off = Math.abs((at.x - x) / Math.max(0.5, y - at.y) - middle) / half;
		return off > 0.96 && off < 1.02;
	});
	return cut ? scale * 0.94 : scale;
}
/** Slopes to the left and right ends as seen from abreast of their middle. */
function spread(spots: readonly Spot[], y: number): { x: number; left: number; right: number } {
	let x = 0;
	let [left, right] = [-1, 1];
	for (let round = 0; round < 12; round++) {
		left = Math.min(...spots.map((p) => (p.x - x) / (y - p.y)));
		right = Math.max(...spots.map((p) => (p.x - x) / (y - p.y)));
		const nearest = Math.min(...spots.map((p) => y - p.y));
		x += ((left + right) / 2) * nearest;
	}
	return { x, left, right };
}
