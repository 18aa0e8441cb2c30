/** Why nothing on the shelf passes, and what would help. */
import { byThickness, sizeName } from '../circuit';
import { goodsOf } from './allot';
import { loadLimit } from './circuit';
import { wanted } from './fits';
import type { Posed } from './problem';
import { search } from './search';
import type { Limits, Problem } from './search-types';
import type { Needs, Shelf } from './types';
import { cableLength, counted, inside, kindsCounted, listed, sentence } from './words';

/** Needs that no product serves, each with the nearest miss. */
function unserved(needs: Needs, { fits, judge }: Posed): string[] {
	return needs.fixtures.flatMap((need, n) => {
		if (fits[n]!.some(({ ok }) => ok)) return [];
		const near = judge.stock.products.flatMap(({ fixture }, p) => {
			const fit = fits[n]![p]!;
			return fixture.kind === need.kind && !fit.ok ? [fit.why] : [];
		});
		const miss = near.length > 0 ? ` The nearest has ${near[0]!}.` : '';
		return [`The shelf has no ${wanted(need)}, for ${listed(need.labels)}.${miss}`];
	});
}
/** More of it in stock than there is on all lines together would be wanted, whatever else. */
function tooFew(needs: Needs, shelf: Shelf, { fits, judge, problem }: Posed): string[] {
	const isEndless = problem.offers.map(({ stock }) => stock === Infinity);
	const parts = shelf.lines.map(({ contents, stock }) => ({ contents, count: stock ?? 0 }));
	const goods = goodsOf(parts, judge.stock);
	const lights = needs.fixtures.flatMap(({ kind, fixtures, labels }, n) => {
		const most = judge.stock.products.reduce((sum, _, p) => {
			const endless = problem.offers.some((offer, k) => isEndless[k] && offer.fixtures.has(p));
			return fits[n]![p]!.ok ? Math.max(sum, endless ? Infinity : (goods.fixtures.get(p) ?? 0)) : sum;
		}, 0);
		return most > 0 && most < fixtures.length
			? [`${kindsCounted(fixtures.length, kind)} alike are wanted for ${listed(labels)}, and ${most} are in stock.`]
			: [];
	});
	const connectors = problem.offers.some((offer, k) => isEndless[k] && offer.connectors > 0)
		? Infinity
		: goods.connectors;
	return [
		...lights,
		...(connectors < needs.connectors
			? [
					`${counted(needs.connectors, 'connector')} rated for direct burial are wanted, and the shelf has ${connectors}. Put connectors on the shelf.`
				]
			: [])
	];
}
function noSupply(needs: Needs, { judge, problem }: Posed): string[] {
	const { supplies } = judge.stock;
	if (needs.runs.length === 0) return [];
	if (supplies.length === 0) return ['The shelf has no transformer. Put one on it.'];
	const open = { products: needs.fixtures.map(() => null), sizes: needs.runs.map(() => null) };
	if (supplies.some((_, transformer) => !problem.hopeless!({ transformer, ...open }))) return [];
	const largest = Math.max(...supplies.map(({ transformer }) => transformer.voltAmps));
	const percent = Math.round(loadLimit * 100);
	return [
		`The lights take more than ${Math.floor(largest * loadLimit)} VA, and the largest transformer, ${largest} VA, may carry no more: ${percent} % of its rating. Put a larger one on the shelf, or light less.`
	];
}
function noCable(needs: Needs, shelf: Shelf, { judge, problem }: Posed): string[] {
	if (needs.runs.length === 0) return [];
	if (judge.stock.sizes.length === 0) return ['The shelf has no cable. Put some on it.'];
	const there = problem.offers.reduce(
		(sum, { cable, stock }) => sum + [...cable.values()].reduce((a, b) => a + b, 0) * (cable.size > 0 ? stock : 0),
		0
	);
	const metres = needs.runs.reduce((sum, run) => sum + run.metres, 0);
	return there < metres
		? [
				`${cableLength(metres, needs.units, true)} of cable are wanted, and ${cableLength(there, needs.units, false)} are in stock.`
			]
		: [];
}

/** What goes wrong with the thickest cable of the shelf, the largest transformer and the products that take least. */
function atBest(needs: Needs, { judge, problem }: Posed): string[] {
	const { products, sizes, supplies } = judge.stock;
	const size = sizes.toSorted(byThickness).at(-1);
	const largest = supplies.toSorted((a, b) => b.transformer.voltAmps - a.transformer.voltAmps)[0];
	if (!size || !largest) return [];
	const lamps = problem.needs.map((need) => {
		const least = need.products.toSorted(
			(a, b) => products[a]!.fixture.lamp.voltAmps - products[b]!.fixture.lamp.voltAmps
		)[0]!;
		return judge.lampsOf(products[least]!.id);
	});
	const judged = judge.of(
		lamps,
		needs.runs.map(() => size),
		largest.transformer
	);
	const with0 = `Even with the thickest cable on the shelf, ${sizeName(size)}, and its ${largest.transformer.voltAmps} VA transformer`;
	return judged.problems.slice(0, 2).map(({ message }) => `${with0}, ${inside(message)}`);
}
/** The same shelf with as much in stock as is wanted. */
const restocked = (problem: Problem): Problem => ({
	...problem,
	offers: problem.offers.map((offer) => ({ ...offer, stock: Infinity }))
});
/** What more in stock would do, in words; empty where none is found. */
function moreInStock({ problem, buysOf, judge }: Posed, limits: Limits): string {
	const [found] = search(restocked(problem), { most: 1, limits });
	const missing = (found ? buysOf(found) : []).flatMap(({ code, count }) => {
		const { stock, name } = judge.stock.line.get(code)!;
		return stock !== null && count > stock ? [`${count - stock} more of ${name} (${code})`] : [];
	});
	return listed(missing);
}
function notInStock(posed: Posed, limits: Limits): string[] {
	const more = moreInStock(posed, limits);
	return more ? [`There is not enough in stock. It would work with ${more}.`] : [];
}
/** Nothing was found, and that there is nothing was not shown: then no reason is known. */
function notKnown(posed: Posed, limits: Limits): string[] {
	const more = moreInStock(posed, limits);
	return [
		'The search broke off before it was sure: it had found nothing that keeps every limit, and had not tried everything. There may be something on the shelf that does. Take lines off the shelf that do not suit this job, or light less, and ask again.',
		...(more ? [`It would work with ${more} in stock.`] : [])
	];
}

/**
 * In sentences, the plainest reason first; where no single thing is missing, what goes wrong at best. Not empty. Unless it is proven that
 * nothing passes, only reasons that stand by themselves are told, and else that it is not known.
 */
export function lackingOf(
	needs: Needs,
	shelf: Shelf,
	posed: Posed,
	{ isProven, limits }: { isProven: boolean; limits: Limits }
): string[] {
	const plain = [...unserved(needs, posed), ...noSupply(needs, posed), ...noCable(needs, shelf, posed)];
	if (plain.length > 0) return plain;
	const few = tooFew(needs, shelf, posed);
	if (!isProven) return few.length > 0 ? few : notKnown(posed, limits);
	const stock = [...few, ...notInStock(posed, limits)];
	if (stock.length > 0) return stock;
	const best = atBest(needs, posed);
	if (best.length > 0)
		return [...best, 'A thicker cable, a transformer with a higher tap, or fewer lights would help.'].map(sentence);
	return [
		'No combination of what is on the shelf keeps every limit. Thicker cable or a larger transformer would help.'
	];
}
