/** Answers for tests: every pick on a coarse grid, and seeded ones, now and then with what no page offers. */
import { picks, usualAnswers } from './picks';
import type { KeepClear, QuickAnswers, Shape } from './types';

const shapes: Shape[] = ['straight', 'bent', 'corner', 'deep'];
const clears: KeepClear[] = ['pool', 'neighbour', 'street-lamp', 'drive-crossing'];
const none = { small: 0, medium: 0, large: 0 };

/** Walk, drive, wall, trees, shape and one thing to keep clear of, each with none, little and much. Metres. */
export const coarseGrid = (): QuickAnswers[] =>
	shapes.flatMap((shape) =>
		[[], ...clears.map((one) => [one])].flatMap((clear) =>
			[0, 5, 30].flatMap((walk) =>
				[0, 12].flatMap((drive) =>
					[0, 6].flatMap((wall) =>
						[none, { small: 2, medium: 1, large: 1 }].map((trees): QuickAnswers => ({
							...usualAnswers('metres'),
							shape,
							clear,
							walk,
							drive,
							wall,
							trees
						}))
					)
				)
			)
		)
	);

/** mulberry32. */
function generator(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
	};
}
/** Answers of a seed. `odd`: one in ten lengths is none that a page offers, or no length at all. */
export function randomAnswers(seed: number, odd: boolean): QuickAnswers {
	const next = generator(seed);
	const of = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
	const units = of(['feet', 'metres'] as const);
	const offered = picks(units);
	const length = (list: readonly { value: number }[]): number =>
		odd && next() < 0.1 ? of([Number.NaN, -3, 0.2, 1, 2.9, 17.31, 119, 1e9, Number.POSITIVE_INFINITY]) : of(list).value;
	const few = (): number => of([0, 0, 0, 0, 1, 1, 2, 3, ...(odd ? [1.5, -1, 40, Number.NaN] : [])]);
	return {
		units,
		walk: length(offered.walk),
		drive: next() < 0.5 ? 0 : length(offered.drive),
		trees: { small: few(), medium: few(), large: few() },
		wall: next() < 0.4 ? 0 : length(offered.wall),
		receptacle: length(offered.receptacle),
		shape: of(shapes),
		clear: clears.filter(() => next() < 0.2),
		halogens: next() < 0.8 ? null : { count: of(offered.halogenCount).value, watts: of(offered.halogenWatts).value },
		transformer: next() < 0.7 ? null : of(offered.transformer).value,
		cable: next() < 0.7 ? null : { size: of(offered.cableSize).value, metres: length(offered.cableMetres) },
		lamp: next() < 0.8 ? 'led' : 'halogen'
	};
}
