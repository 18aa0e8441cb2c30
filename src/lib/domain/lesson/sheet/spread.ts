/** Which kinds a sheet takes its problems from: evenly over the lessons, and within a lesson over its kinds. The same for all variants of a code. */
import { generatorVersion, randomOf } from '../random';
import { levels, type LessonId, type Level, type ProblemKind } from '../types';

/** The level asked for where it has it; else the next harder one that it has, else the next easier. */
export function levelOf(kind: ProblemKind, asked: Level): Level {
	const from = levels.indexOf(asked);
	const order = [...levels.slice(from), ...levels.slice(0, from).toReversed()];
	return order.find((level) => kind.levels.includes(level)) ?? 'all';
}
/** Of a lesson those that have the level; where none has, all that come nearest. */
export function fitting(kinds: readonly ProblemKind[], asked: Level): ProblemKind[] {
	const exact = kinds.filter((kind) => kind.levels.includes(asked));
	if (exact.length > 0) return exact;
	const order = kinds.map((kind) => levelOf(kind, asked));
	const nearest = levels.find((level) => level !== asked && order.includes(level));
	return kinds.filter((_, n) => order[n] === nearest);
}
/** An order drawn for each name alone: one more name takes its place among the others and leaves them in theirs. */
export const ranked = <T>(list: readonly T[], name: (one: T) => string, code: string): T[] =>
	list
		.map((one) => ({ one, rank: randomOf(`${generatorVersion}|${code}|${name(one)}`).whole(0, 0x7ffffffe) }))
		.toSorted((a, b) => a.rank - b.rank || (name(a.one) < name(b.one) ? -1 : 1))
		.map(({ one }) => one);

export interface Place {
	lesson: LessonId;
	kind: ProblemKind;
	/** Which of its kind, from 0. */
	nth: number;
}
/**
 * Goes round the lessons, and in each round a lesson in turn over its kinds, until there are `count` or nobody has one more. `has`: whether a kind has
 * so many. In the order of the lessons as given.
 */
export function spread(
	stock: readonly { lesson: LessonId; kinds: readonly ProblemKind[] }[],
	count: number,
	code: string,
	has: (kind: ProblemKind, nth: number) => boolean
): Place[] {
	const queues = ranked(stock, ({ lesson }) => lesson, code).map(({ lesson, kinds }) => ({
		lesson,
		left: ranked(kinds, ({ id }) => id, code).map((kind) => ({ kind, taken: 0 }))
	}));
	const places: Place[] = [];
	const takeFrom = ({ lesson, left }: (typeof queues)[number]): boolean => {
		for (let one = left.shift(); one; one = left.shift()) {
			if (!has(one.kind, one.taken)) continue;
			places.push({ lesson, kind: one.kind, nth: one.taken });
			left.push({ kind: one.kind, taken: one.taken + 1 });
			return true;
		}
		return false;
	};
	for (let some = true; some && places.length < count;) {
		some = false;
		for (const queue of queues) if (places.length < count && takeFrom(queue)) some = true;
	}
	const order = stock.map(({ lesson }) => lesson);
	return places.toSorted((a, b) => order.indexOf(a.lesson) - order.indexOf(b.lesson));
}
