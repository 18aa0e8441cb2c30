/** Numbers that look drawn by lot and are the same for ever: xoroshiro128+ (Blackman and Vigna) by pure-rand, seeded by a text. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { fnv1a } from '../shared/fnv1a';

/** Raised when what is drawn from a code changes in any way: it is printed on every sheet. */
export const generatorVersion = 1;

export interface Random {
	/** A whole number from `least` to `most`, both included. */
	whole(least: number, most: number): number;
	/** One of `least`, `least + step`, … up to `most`, as a decimal text's own value: 0.1 + 0.2 is 0.3. `step` has at most six decimals. */
	stepped(least: number, most: number, step: number): number;
	/** One of a list that is not empty. */
	one<T>(list: readonly T[]): T;
	/** The list in another order; the list itself stays. */
	shuffled<T>(list: readonly T[]): T[];
}
/** The same text gives the same numbers, on every machine. */
export function randomOf(text: string): Random {
	const generator = xoroshiro128plus(fnv1a(text));
	const whole = (least: number, most: number): number => uniformInt(generator, least, most);
	return {
		whole,
		stepped(least, most, step) {
			const grains = Math.round(1e6 * step);
			const count = Math.floor((Math.round(1e6 * most) - Math.round(1e6 * least)) / grains);
			return (Math.round(1e6 * least) + grains * whole(0, count)) / 1e6;
		},
		one: (list) => list[whole(0, list.length - 1)]!,
		shuffled(list) {
			const left = [...list];
			return list.map(() => left.splice(whole(0, left.length - 1), 1)[0]!);
		}
	};
}
