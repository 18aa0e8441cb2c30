import type { Leg, Pull } from './pulls';

/** How the pulls come off the rolls. */
export interface Packing {
	/** Joints beyond the planned ones: a pull that goes on from another roll. */
	joints: number;
	/** Metres left over on each roll, in the order given. */
	left: number[];
}
const tiny = 1e-9;
export const lengthOf = (legs: readonly Leg[]): number => legs.reduce((sum, leg) => sum + leg.length, 0);

/** Legs longer than any roll, cut into parts that fit: no two parts fit one roll, so that `pack` counts their joints. */
export function splitToFit(pulls: readonly Pull[], longest: number): Pull[] {
	return pulls.map((pull) => ({
		run: pull.run,
		legs: pull.legs.flatMap((leg) => {
			const parts = Math.max(1, Math.ceil(leg.length / longest - tiny));
			return Array.from({ length: parts }, () => ({ length: leg.length / parts }));
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
	let joints = 0;
	const waiting = pulls.map((pull) => pull.legs).filter((legs) => legs.length > 0);
	while (waiting.length > 0) {
		waiting.sort((a, b) => lengthOf(b) - lengthOf(a));
		const legs = waiting.shift()!;
		const size = lengthOf(legs);
		const whole = best(left, (room) => (room + tiny >= size ? -room : null));
		if (whole !== null) {
			left[whole]! -= size;
			continue;
		}
		const roll = best(left, (room) => (room + tiny >= legs[0]!.length ? fitting(legs, room) : null));
		if (roll === null) return null;
		const taken = fitting(legs, left[roll]!);
		const number = legsWithin(legs, left[roll]!);
		left[roll]! -= taken;
		joints += 1;
		waiting.push(legs.slice(number));
	}
	return { joints, left: left.map((room) => Math.max(0, room)) };
}
/** Legs one after the other off rolls of one length, which every leg must fit: a new roll where the next leg does not. */
export function inOrder(pulls: readonly Pull[], length: number): { rolls: number; joints: number } {
	let rolls = 0;
	let joints = 0;
	let room = 0;
	for (const pull of pulls) {
		pull.legs.forEach((leg, i) => {
			if (leg.length > room + tiny) {
				rolls += 1;
				room = length;
				if (i > 0) joints += 1;
			}
			room -= leg.length;
		});
	}
	return { rolls, joints };
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
