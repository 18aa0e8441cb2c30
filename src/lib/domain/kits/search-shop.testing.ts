/** For tests and benches: an invented shop, drawn by lot, whose prices follow what is in a box. */
import { dice } from '../circuit/networks.testing';
import type { Offer, Problem } from './search-types';

export interface ShopExtent {
	needs: number;
	runs: number;
	kits: number;
	loose: number;
	/** Whether `hopeless` also knows that thick cable drops less and that light lamps draw less, or only what a transformer carries. */
	tells: 'load' | 'drop';
}
const kinds = 6;
const rolls = [7.62, 15.24, 30.48, 76.2];
/** Invented prices, cents a metre, and ohms of a metre of pair as in NEC chapter 9, table 8: gauges 16, 14, 12, 10. */
const sizes = [
	{ cents: 60, ohms: 0.0321 },
	{ cents: 95, ohms: 0.0202 },
	{ cents: 150, ohms: 0.0127 },
	{ cents: 260, ohms: 0.008 }
];
const supplies = [45, 60, 100, 150, 200, 300, 450, 600];

export function shopProblem(seed: number, { needs: count, runs: runCount, kits, loose, tells }: ShopExtent): Problem {
	const roll = dice(seed);
	const below = (n: number): number => Math.floor(roll() * n);
	const near = (cents: number): number => Math.round((cents * (0.85 + 0.3 * roll())) / 10) * 10 - 1;
	const products = Array.from({ length: Math.max(kinds, Math.round(loose / 3)) }, (_, p) => {
		const lumens = [100, 180, 300, 500, 800][below(5)]!;
		return { kind: p % kinds, lumens, draw: lumens / 70, cents: near(1200 + 4 * lumens) };
	});
	const needs = Array.from({ length: count }, (_, n) => {
		const like = products[(n % kinds) + kinds * below(Math.floor(products.length / kinds))]!;
		const fit = products.flatMap(({ kind, lumens }, p) =>
			kind === like.kind && lumens >= 0.6 * like.lumens && lumens <= 1.6 * like.lumens ? [p] : []
		);
		return { count: 2 + below(6), products: fit };
	});
	const runs = Array.from({ length: runCount }, () => 12 + 38 * roll());
	const offer = (part: Partial<Offer>): Offer => ({
		cents: 0,
		stock: roll() < 0.5 ? Infinity : 2 + below(12),
		isKit: false,
		fixtures: new Map<number, number>(),
		transformer: null,
		cable: new Map<number, number>(),
		connectors: 0,
		...part
	});
	const supplyCents = supplies.map((voltAmps) => near(4000 + 45 * voltAmps));
	const boxes = Array.from({ length: kits }, () => {
		const fixtures = new Map<number, number>();
		for (let k = 0; k <= below(2); k++) fixtures.set(below(products.length), 3 + below(6));
		const lights = [...fixtures.values()].reduce((a, b) => a + b, 0);
		const draw = [...fixtures].reduce((sum, [p, n]) => sum + n * products[p]!.draw, 0);
		const transformer = Math.max(
			0,
			supplies.findIndex((voltAmps) => voltAmps * 0.8 >= draw)
		);
		const [size, metres] = [below(3), rolls[1 + below(2)]!];
		const sum =
			[...fixtures].reduce((all, [p, n]) => all + n * products[p]!.cents, 0) +
			supplyCents[transformer]! +
			sizes[size]!.cents * metres;
		const cents = Math.round((sum * (0.6 + 0.3 * roll())) / 100) * 100 - 1;
		return offer({ isKit: true, cents, fixtures, transformer, cable: new Map([[size, metres]]), connectors: lights });
	});
	const items = [
		...products.map(({ cents }, p) => offer({ cents, fixtures: new Map([[p, 1]]) })),
		...products.map(({ cents }, p) => offer({ cents: near(cents * 3.6), fixtures: new Map([[p, 4]]) })),
		...supplies.map((_, transformer) => offer({ cents: supplyCents[transformer]!, transformer, stock: Infinity })),
		...sizes.flatMap(({ cents }, size) =>
			rolls.map((metres) =>
				offer({ cents: near(cents * metres * (1 - metres / 400)), cable: new Map([[size, metres]]), stock: Infinity })
			)
		),
		offer({ cents: 399, connectors: 2, stock: Infinity }),
		offer({ cents: 1499, connectors: 10, stock: Infinity })
	];
	while (items.length < loose) {
		const p = below(products.length);
		items.push(offer({ cents: near(products[p]!.cents), fixtures: new Map([[p, 1 + below(2)]]) }));
	}
	/** Volt-amperes of all needs; the lightest lamp where none is chosen. */
	const drawOf = (chosen: readonly (number | null)[]): number =>
		needs.reduce((sum, need, n) => {
			const p = chosen[n] ?? null;
			const least = () => Math.min(...need.products.map((q) => products[q]!.draw));
			return sum + need.count * (p === null ? least() : products[p]!.draw);
		}, 0);
	const carries = (transformer: number, draw: number): boolean => draw <= 0.8 * supplies[transformer]!;
	const drops = (chosen: readonly (number | null)[], draw: number): boolean =>
		chosen.every((size, r) => (draw / runCount / 12) * runs[r]! * 0.7 * sizes[size ?? sizes.length - 1]!.ohms <= 1.5);
	return {
		needs,
		runs,
		connectors: needs.reduce((sum, need) => sum + need.count, runCount),
		products: products.length,
		transformers: supplies.length,
		sizes: sizes.length,
		offers: [...boxes, ...items],
		passes: ({ transformer, products: chosen, sizes: cable }) => {
			const draw = drawOf(chosen);
			return carries(transformer, draw) && drops(cable, draw);
		},
		hopeless: ({ transformer, products: chosen, sizes: cable }) => {
			const draw = drawOf(chosen);
			return !carries(transformer, draw) || (tells === 'drop' && !drops(cable, draw));
		}
	};
}
