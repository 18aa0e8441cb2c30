/** A purchase that the search found, as it is shown. */
import { goodsOf, spareOf } from './allot';
import type { Posed } from './problem';
import type { Purchase } from './search-types';
import type { Needs, Setup, Shelf, Solution } from './types';
import { listed, sentence } from './words';

/** What is to be said of the products chosen, by need. */
function fitNotes(needs: Needs, { fits, judge }: Posed, { products }: Setup): string[] {
	return needs.fixtures.flatMap(({ labels }, n) => {
		const fit = fits[n]![judge.stock.product.get(products[n]!)!]!;
		return fit.ok && fit.note ? [`${listed(labels)}: ${sentence(fit.note).replace(/^Its /, 'its ')}`] : [];
	});
}

export function solutionOf(purchase: Purchase, needs: Needs, shelf: Shelf, posed: Posed): Solution {
	const { stock } = posed.judge;
	const setup = posed.setupOf(purchase);
	const buys = posed.buysOf(purchase);
	const judged = posed.judge.judge(setup);
	const goods = goodsOf(
		buys.map(({ code, count }) => ({ contents: stock.line.get(code)!.contents, count })),
		stock
	);
	return {
		buys,
		cents: purchase.cents,
		setup,
		judged,
		spare: spareOf(needs, goods, setup, stock),
		growth: judged.limitVoltAmps - judged.loadVoltAmps,
		notes: [...fitNotes(needs, posed, setup), ...judged.notes]
	};
}
