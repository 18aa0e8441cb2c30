/** For tests: the price of the cheapest choice without a problem, by trying everything. */
import { assess } from './assess';
import { judge } from './judge';
import { wayCost } from './ways';
import type { ChooseOptions, RunShape } from './types';

/**
 * Every way, size and tap of two runs on every transformer, in the order of their price, so that what costs as much as one
 * that keeps every limit need not be solved. Infinity where none does.
 */
export function leastOfTwo([first, second]: [RunShape[], RunShape[]], o: ChooseOptions): number {
	const tries = (ways: RunShape[], taps: number[]) =>
		ways
			.flatMap((shape) =>
				o.sizes.flatMap((size) => taps.map((tapVolts) => ({ shape, size, tapVolts, cost: wayCost(shape, size, o) })))
			)
			.toSorted((a, b) => a.cost - b.cost);
	let best = Infinity;
	for (const transformer of o.transformers) {
		const others = tries(second, transformer.taps);
		for (const a of tries(first, transformer.taps))
			for (const b of others) {
				const cost = a.cost + b.cost + transformer.price;
				if (cost >= best - 1e-9) break;
				if (judge(assess([a, b], transformer, o), o).length === 0) best = cost;
			}
	}
	return best;
}
