import type { Leg, Pull } from './pulls';

/** How the pulls come off the rolls. */
export interface Packing {
	/** Joints beyond the planned ones: a pull that goes on from another roll. */
	joints: number;
	/** Metres left over on each roll, in the order given. */
	left: number[];
	/** What is cut off each roll, in the order given; the first cut first. */
	cuts: Pull[][];
}
const tiny = 1e-9;
export const lengthOf = (legs: readonly Leg[]): number => legs.reduce((sum, leg) => sum + leg.length, 0);

/** Legs longer than any roll, cut into parts that fit: no two parts fit one roll, so that `pack` counts their joints. */
export function splitToFit(pulls: readonly Pull[], longest: number): Pull[] {
	return pulls.map((pull) => ({
		run: pull.run,
		legs: pull.legs.flatMap((leg) => {
			const parts = Math.max(1, Math.ceil(leg.length / longest - tiny));
			return Array.from({ length: parts }, () => ({ ...leg, length: leg.length / parts }));
		})
	}));
}
/**
 * Pulls onto rolls, longest pull first, each on the roll it leaves least over; one that fits no roll is cut at a joint
 * where the fullest-fitting roll ends. Null when a single leg fits nowhere. A heuristic (best fit, decreasing): with 5 %
 * to spare it seldom misses a packing that exists.
 */
export function pack(pulls: readonly Pull[], rolls: readonly number[]): Packing | null {
	const left = [...rolls];
	const cuts: Pull[][] = rolls.map(() => []);
	let joints = 0;
	const waiting = pulls.filter(({ legs }) => legs.length > 0);
	while (waiting.length > 0) {
		waiting.sort((a, b) => lengthOf(b.legs) - lengthOf(a.legs));
		const pull = waiting.shift()!;
		const { run, legs } = pull;
		const size = lengthOf(legs);
		const whole = best(left, (room) => (room + tiny >= size ? -room : null));
		if (whole !== null) {
			left[whole]! -= size;
			cuts[whole]!.push(pull);
			continue;
		}
		const roll = best(left, (room) => (room + tiny >= legs[0]!.length ? fitting(legs, room) : null));
		if (roll === null) return null;
		const taken = fitting(legs, left[roll]!);
		const number = legsWithin(legs, left[roll]!);
		left[roll]! -= taken;
		cuts[roll]!.push({ run, legs: legs.slice(0, number) });
		joints += 1;
		waiting.push({ run, legs: legs.slice(number) });
	}
	return { joints, left: left.map((room) => Math.max(0, room)), cuts };
}
/** Legs one after the other off rolls of one length, which every leg must fit: a new roll where the next leg does not. */
export function inOrder(pulls: readonly Pull[], length: number): Packing {
	const left: number[] = [];
	const cuts: Pull[][] = [];
	let joints = 0;
	for (const { run, legs } of pulls) {
		let cut: Pull | null = null;
		for (const leg of legs) {
			if (leg.length > (left.at(-1) ?? 0) + tiny) {
				left.push(length);
				cuts.push([]);
				if (cut) joints += 1;
				cut = null;
			}
			if (!cut) cuts.at(-1)!.push((cut = { run, legs: [] }));
			cut.legs.push(leg);
			left[left.length - 1]! -= leg.length;
		}
	}
	return { joints, left: left.map((room) => Math.max(0, room)), cuts };
}
/** Legs one after the other off lengths that hold them all, cut wherever one ends: the last resort. */
export function cutThrough(pulls: readonly Pull[], lengths: readonly number[]): Packing {
	const left = [...lengths];
	const cuts: Pull[][] = lengths.map(() => []);
	let joints = 0;
	let roll = 0;
	for (const { run, legs } of pulls) {
		let cut: Pull | null = null;
		for (const leg of legs) {
			for (let rest = leg.length; rest > tiny && roll < left.length;) {
				if (left[roll]! <= tiny) {
					roll += 1;
					if (cut) joints += 1;
					cut = null;
					continue;
				}
				const length = Math.min(rest, left[roll]!);
				if (!cut) cuts[roll]!.push((cut = { run, legs: [] }));
				cut.legs.push({ ...leg, length });
				left[roll]! -= length;
				rest -= length;
			}
		}
	}
	return { joints, left: left.map((room) => Math.max(0, room)), cuts };
}
function legsWithin(legs: readonly Leg[], room: number): number {
	let sum = 0;
	let number = 0;
	for (const leg of legs) {
		if (sum + leg.length > room + tiny) break;
		sum += leg.length;
		number += 1;
	}
	return number;
}
const fitting = (legs: readonly Leg[], room: number): number => lengthOf(legs.slice(0, legsWithin(legs, room)));
/** Index with the highest score; null scores do not count; the first of equals. */
function best(rooms: readonly number[], score: (room: number) => number | null): number | null {
	let found: number | null = null;
	let high = -Infinity;
	rooms.forEach((room, i) => {
		const value = score(room);
		if (value !== null && value > high) [found, high] = [i, value];
	});
	return found;
}
