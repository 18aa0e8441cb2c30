/** A kit by itself: its own lamps, cable and transformer on the plan's runs. */
import { byThickness, type CableSize } from '../circuit';
import { allot, goodsOf, lacksOf, type Allotted, type Goods } from './allot';
import type { Judge, Lamps } from './judge';
import type { Posed } from './problem';
import type { Judged, Needs, ShelfLine, ShelfTransformer } from './types';

export interface Alone {
	/** Of one of it. */
	goods: Goods;
	allotted: Allotted;
	/** What one of it lacks for the plan, in words. */
	lacks: string[];
	/** How many of it the lights that it serves want. */
	times: number;
	/** By need: the lamp of its product; null: it has none that serves. */
	lamps: (Lamps | null)[];
	/** Null where it has no transformer, no cable, or serves no need. */
	tried: Tried | null;
}
export interface Tried {
	transformer: ShelfTransformer;
	/** The thickest cable in it, for every run. */
	size: CableSize;
	judged: Judged;
}

function tryAlone(line: ShelfLine, lamps: Alone['lamps'], needs: Needs, judge: Judge): Tried | null {
	const { transformer, cable } = line.contents;
	const size = cable
		.map((one) => one.size)
		.toSorted(byThickness)
		.at(-1);
	if (!transformer || !size || needs.runs.length === 0 || lamps.every((one) => one === null)) return null;
	const sizes = needs.runs.map(() => size);
	return { transformer, size, judged: judge.of(lamps, sizes, transformer) };
}

/** A product that serves several needs is wanted for all of them. */
function timesOf(needs: Needs, goods: Goods, allotted: Allotted): number {
	const asked = new Map<number, number>();
	allotted.forEach((one, n) => {
		if (one) asked.set(one.product, (asked.get(one.product) ?? 0) + needs.fixtures[n]!.fixtures.length);
	});
	return Math.max(1, ...[...asked].map(([product, count]) => Math.ceil(count / goods.fixtures.get(product)!)));
}

/** As many of the kit as its lights are wanted, on one of its transformers; lights that it has none for are left out. */
export function aloneOf(line: ShelfLine, needs: Needs, { judge, fits }: Posed): Alone {
	const goods = goodsOf([{ contents: line.contents, count: 1 }], judge.stock);
	const allotted = allot(needs, fits, goods.fixtures);
	const lamps = allotted.map((one) => (one ? judge.lampsOf(judge.stock.products[one.product]!.id) : null));
	return {
		goods,
		allotted,
		lacks: lacksOf(needs, goods, allotted),
		times: timesOf(needs, goods, allotted),
		lamps,
		tried: tryAlone(line, lamps, needs, judge)
	};
}
