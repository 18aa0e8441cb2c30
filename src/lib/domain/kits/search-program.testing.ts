/**
 * Proven optima of the search's problems by HiGHS 1.15 (npm package `highs`; highs.dev), a general solver for linear programs with
 * whole-number variables: which product for a need, which size for a run, which transformer, and how many of each offer, in one program. It shares nothing
 * with the search: no order of kits, no knapsacks, no bounds of ours.
 */
import loadHighs from 'highs';
import type { Offer, Problem, SetupIndex } from './search-types';

/** An oracle that can be written in rows. */
export interface Linear {
	/** By product, volt-amperes of one lamp; by transformer, what it may carry. */
	draw: readonly number[];
	carries: readonly number[];
	/** Parts of a setup that must not come together: a transformer with a product for a need, and a size on a run. */
	forbidden: readonly { transformer: number; need: number; product: number; run: number; size: number }[];
	/** Nothing but this will do; null: anything. */
	only: SetupIndex | null;
}
type Oracle = Required<Pick<Problem, 'passes' | 'hopeless'>>;
const isSame = (a: number | null, b: number): boolean => a === null || a === b;

/** The same oracle as the search is asked with; `hopeless` adds up what is known and the least of the rest. */
export function oracleOf({ draw, carries, forbidden, only }: Linear, needs: Problem['needs']): Oracle {
	const hopeless: Oracle['hopeless'] = ({ transformer, products, sizes }) => {
		const all = needs.reduce((sum, need, n) => {
			const chosen = products[n] ?? null;
			const each = chosen === null ? Math.min(...need.products.map((p) => draw[p]!)) : draw[chosen]!;
			return sum + need.count * each;
		}, 0);
		if (all > carries[transformer]!) return true;
		if (only && transformer !== only.transformer) return true;
		if (
			only &&
			!(only.products.every((p, n) => isSame(products[n]!, p)) && only.sizes.every((s, r) => isSame(sizes[r]!, s)))
		)
			return true;
		return forbidden.some(
			(one) => transformer === one.transformer && products[one.need] === one.product && sizes[one.run] === one.size
		);
	};
	return { hopeless, passes: (setup) => !hopeless(setup) };
}

/** A row: sum of terms, at least or at most so much. */
const row = (terms: [number, string][], sign: '>=' | '<=' | '=', right: number): string =>
	`${terms.map(([times, name]) => `${times < 0 ? '-' : '+'} ${Math.abs(times)} ${name}`).join(' ')} ${sign} ${right}`;
const [bought, product, size, transformer] = [
	(i: number) => `x${i}`,
	(n: number, p: number) => `y${n}_${p}`,
	(r: number, s: number) => `z${r}_${s}`,
	(t: number) => `t${t}`
];
const millimetres = (metres: number): number => Math.round(metres * 1000);
const upTo = (count: number): number[] => Array.from({ length: count }, (_, k) => k);

/** What is bought holds what the setup takes of it. */
function coverRows({ needs, runs, connectors, products, sizes, transformers, offers }: Problem): string[] {
	const held = (of: (offer: Offer) => number): [number, string][] =>
		offers.flatMap((offer, i): [number, string][] => (of(offer) > 0 ? [[of(offer), bought(i)]] : []));
	const rows = [
		...upTo(products).map((p): [number, string][] => [
			...held(({ fixtures }) => fixtures.get(p) ?? 0),
			...needs.flatMap((need, n): [number, string][] =>
				need.products.includes(p) ? [[-need.count, product(n, p)]] : []
			)
		]),
		...upTo(sizes).map((s): [number, string][] => [
			...held(({ cable }) => millimetres(cable.get(s) ?? 0)),
			...runs.map((metres, r): [number, string] => [-millimetres(metres), size(r, s)])
		]),
		...upTo(transformers).map((t): [number, string][] => [
			...held((offer) => Number(offer.transformer === t)),
			[-1, transformer(t)]
		])
	].map((terms) => row(terms, '>=', 0));
	return connectors > 0
		? [
				...rows,
				row(
					held((offer) => offer.connectors),
					'>=',
					connectors
				)
			]
		: rows;
}
function programOf(problem: Problem, { draw, carries, forbidden, only }: Linear): string {
	const { needs, runs, sizes, transformers, offers } = problem;
	const named = [
		needs.map((need, n) => need.products.map((p) => product(n, p))),
		runs.map((_, r) => upTo(sizes).map((s) => size(r, s))),
		[upTo(transformers).map(transformer)]
	].flat();
	const load = needs.flatMap((need, n) =>
		need.products.map((p): [number, string] => [need.count * draw[p]!, product(n, p)])
	);
	const held = only
		? [
				transformer(only.transformer),
				...only.sizes.map((s, r) => size(r, s)),
				...only.products.map((p, n) => product(n, p))
			]
		: [];
	const rows = [
		...named.map((one) =>
			row(
				one.map((name) => [1, name]),
				'=',
				1
			)
		),
		...coverRows(problem),
		row([...load, ...carries.map((carried, t): [number, string] => [-carried, transformer(t)])], '<=', 0),
		...forbidden.map((one) =>
			row(
				[
					[1, transformer(one.transformer)],
					[1, product(one.need, one.product)],
					[1, size(one.run, one.size)]
				],
				'<=',
				2
			)
		),
		...held.map((name) => row([[1, name]], '=', 1))
	];
	// More of one than serves every demand by itself is never bought.
	const most = Math.max(problem.connectors, ...needs.map(({ count }) => count)) * needs.length + 400;
	return [
		'Minimize',
		` cost: ${offers.map(({ cents }, i) => `${cents} ${bought(i)}`).join(' + ')}`,
		'Subject To',
		...rows.map((one, k) => ` c${k}: ${one}`),
		'Bounds',
		...offers.map(({ stock }, i) => ` 0 <= ${bought(i)} <= ${Math.min(stock, most)}`),
		'General',
		` ${offers.map((_, i) => bought(i)).join(' ')}`,
		'Binary',
		` ${named.flat().join(' ')}`,
		'End'
	].join('\n');
}

const solver = await loadHighs();
/** The least cost in cents, proven; null where nothing passes. Throws where the solver ends without proof. */
export function leastCents(problem: Problem, linear: Linear): number | null {
	const options = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 };
	const { Status, ObjectiveValue } = solver.solve(programOf(problem, linear), options);
	if (Status === 'Infeasible') return null;
	if (Status !== 'Optimal') throw new Error(`The solver ended with ${Status}.`);
	return Math.round(ObjectiveValue);
}
