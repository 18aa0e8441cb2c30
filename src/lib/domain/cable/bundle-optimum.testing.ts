/**
 * The proven optimum of cables that follow each other, by HiGHS (highs.dev), a general solver for linear programs with
 * whole-number variables: network design with fixed charges (Magnanti & Wong, Transportation Science 18, 1984). Each cable is
 * a unit of flow along legs of the ground's graph, each leg is dug or not, and a cable lies only where is dug.
 */
import loadHighs from 'highs';
import type { Cable } from './bundle';
import type { BundleGround } from './bundle-ground';

interface Leg {
	a: number;
	b: number;
	cost: number;
}
/** All legs of the graph between two nodes, each once. */
function legsOf(ground: BundleGround): Leg[] {
	const { corners, terminals, sought } = ground;
	const { links, exits } = sought.graph;
	const legs = new Map<number, Leg>();
	const add = (a: number, b: number, cost: number) => {
		if (cost < Infinity && !legs.has(ground.key(a, b))) legs.set(ground.key(a, b), { a, b, cost });
	};
	for (let node = 0; node < corners; node++)
		for (let l = links.start[node]!; l < links.start[node + 1]!; l++) add(node, links.to[l]!, links.cost[l]!);
	for (let t = 0; t < terminals; t++) {
		for (let l = exits.start[t]!; l < exits.start[t + 1]!; l++) add(corners + t, exits.to[l]!, exits.cost[l]!);
		for (let u = 0; u < t; u++) add(corners + t, corners + u, ground.direct(t, u));
	}
	return [...legs.values()];
}
const number = (value: number): string => value.toFixed(9);
const solver = await loadHighs();

/**
 * Least price of the cables, currency; `known`: that of a layout, which bounds what legs can be of use. Null where the solver
 * does not end within `seconds`.
 */
export function bundleOptimum(
	ground: BundleGround,
	cables: readonly Cable[],
	trench: number,
	known: number,
	seconds: number
): number | null {
	const ends = cables.map(({ chain }) => [chain[0]!, chain.at(-1)!] as const);
	const least = cables.map(({ price }, k) => price * ground.apart(...ends[k]!));
	const all = least.reduce((sum, one) => sum + one, 0);
	/** A leg is of use to a cable when the way by it, with every other cable straight, costs no more than is known. */
	const serves = ({ a, b, cost }: Leg, k: number): boolean => {
		const [from, to] = ends[k]!;
		const by = (p: number, q: number) => ground.apart(from, p) + ground.apart(p, q) + ground.apart(q, to);
		return all - least[k]! + cables[k]!.price * Math.min(by(a, b), by(b, a)) + trench * cost <= known + 1e-6;
	};
	const legs = legsOf(ground);
	const used = cables.map((_, k) => legs.filter((leg) => serves(leg, k)));
	const dug = legs.filter((leg) => used.some((own) => own.includes(leg)));
	const y = ({ a, b }: Leg) => `y${ground.key(a, b)}`;
	const x = (k: number, from: number, to: number) => `x${k}_${from}_${to}`;
	const terms = dug.map((leg) => `${number(trench * leg.cost)} ${y(leg)}`);
	const rows: string[] = [];
	used.forEach((own, k) => {
		const { price } = cables[k]!;
		const [from, to] = ends[k]!;
		const balance = new Map<number, string[]>();
		const note = (node: number, term: string) => balance.set(node, [...(balance.get(node) ?? []), term]);
		for (const leg of own) {
			const { a, b } = leg;
			for (const [p, q] of [
				[a, b],
				[b, a]
			] as const) {
				terms.push(`${number(price * ground.apart(a, b))} ${x(k, p, q)}`);
				note(p, `+ ${x(k, p, q)}`);
				note(q, `- ${x(k, p, q)}`);
				rows.push(`${x(k, p, q)} - ${y(leg)} <= 0`);
			}
		}
		for (const [node, list] of balance) rows.push(`${list.join(' ')} = ${node === from ? 1 : node === to ? -1 : 0}`);
	});
	const text = [
		'Minimize',
		` price: ${terms.join(' + ')}`,
		'Subject To',
		...rows.map((row, k) => ` c${k}: ${row}`),
		'Binary',
		` ${dug.map(y).join(' ')}`,
		'End'
	].join('\n');
	const { Status, ObjectiveValue } = solver.solve(text, { output_flag: false, mip_rel_gap: 1e-7, time_limit: seconds });
	return Status === 'Optimal' ? ObjectiveValue : null;
}
