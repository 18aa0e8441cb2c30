/**
 * Cables that follow each other: what one cable digs, the next one need not.
 *
 * Given what is to be joined (segments between terminals, each of a run's cable), each is led again where it costs least beside
 * the others: a metre of its cable everywhere, digging and crossings only where no other cable lies yet. That is network
 * design with fixed charges (Magnanti & Wong, Transportation Science 18, 1984), which no quick method solves exactly; here one
 * cable after the other is taken up and laid again until none gets cheaper, from several starts: as each would lie by itself,
 * and laid one after the other along what is dug. How near that comes to the proven optimum is measured in `bundle-optimum.test.ts`.
 */
import type { BundleGround } from './bundle-ground';
import { Dug, sameMoney, WaySearch, type Prices } from './bundle-way';

/** A cable from terminal to terminal. `chain`: the nodes it goes by (`bundle-ground.ts`), two or more. */
export interface Cable {
	chain: readonly number[];
	/** Currency a metre of its run's cable. */
	price: number;
	/** Drawn by hand: it stays where it lies. */
	isFixed: boolean;
}
/** `trench`: currency, of a metre in open ground. */
export type Bundler = (ground: BundleGround, cables: readonly Cable[], trench: number) => readonly Cable[];
/** Rounds over all cables; a fixed point is mostly reached in two or three. */
const mostRounds = 12;

/** Metres of digging of all legs together, each once, by the table of laying costs; `apart`: as often as cables lie in them. */
export function digging(ground: BundleGround, chains: readonly (readonly number[])[]): { once: number; apart: number } {
	const seen = new Set<number>();
	let once = 0;
	let apart = 0;
	for (const chain of chains)
		for (let k = 1; k < chain.length; k++) {
			const cost = ground.cost(chain[k - 1]!, chain[k]!);
			apart += cost;
			const key = ground.key(chain[k - 1]!, chain[k]!);
			if (!seen.has(key)) once += cost;
			seen.add(key);
		}
	return { once, apart };
}

/** Price of all, currency: cable, and digging once. */
export function priceOf(ground: BundleGround, cables: readonly Cable[], trench: number): number {
	const cable = cables.reduce((sum, { chain, price }) => sum + price * ground.metres(chain), 0);
	return (
		cable +
		trench *
			digging(
				ground,
				cables.map(({ chain }) => chain)
			).once
	);
}

/** One cable after the other laid anew beside the rest, until none gets cheaper. Returns those given where none does. */
function settled(ground: BundleGround, cables: readonly Cable[], trench: number): readonly Cable[] {
	const dug = new Dug(ground);
	const search = new WaySearch(dug);
	const now = [...cables];
	for (const { chain } of now) dug.add(chain);
	// The longer cable joins the shorter one's trench before that can join its own.
	const metres = now.map(({ chain }) => ground.metres(chain));
	const order = now.map((_, k) => k).sort((p, q) => metres[q]! - metres[p]! || p - q);
	/** Since the last change so many in turn were tried in vain. */
	let inVain = 0;
	for (let turn = 0; turn < mostRounds * now.length && inVain < now.length; turn++) {
		const k = order[turn % now.length]!;
		const cable = now[k]!;
		const prices: Prices = { cable: cable.price, trench };
		inVain++;
		if (cable.isFixed) continue;
		dug.remove(cable.chain);
		const own = dug.price(cable.chain, prices);
		const chain = search.find(cable.chain[0]!, cable.chain.at(-1)!, prices, own);
		if (chain) {
			now[k] = { ...cable, chain };
			inVain = 1;
		}
		dug.add(now[k]!.chain);
	}
	return now;
}

/** A start: cables laid one after the other along what those before have dug. */
interface Start {
	/** The cheapest to dig first, or the dearest. */
	isNearFirst: boolean;
	/** Part of its price that cable is taken at: the less, the more the trenches come to one tree. */
	part: number;
}
/** Tried out on random yards: each of them leads to the best now and then. */
const starts: readonly Start[] = [
	{ isNearFirst: true, part: 0.1 },
	{ isNearFirst: false, part: 0.1 },
	{ isNearFirst: false, part: 1 }
];
function oneByOne(ground: BundleGround, cables: readonly Cable[], trench: number, start: Start): readonly Cable[] {
	const dug = new Dug(ground);
	const search = new WaySearch(dug);
	const sign = start.isNearFirst ? 1 : -1;
	const order = cables.map((cable, k) => ({ cable, k, far: dug.price(cable.chain, { cable: 0, trench }) }));
	order.sort((a, b) => Number(b.cable.isFixed) - Number(a.cable.isFixed) || sign * (a.far - b.far) || a.k - b.k);
	const laid = [...cables];
	for (const { cable, k } of order) {
		const prices: Prices = { cable: cable.price * start.part, trench };
		const own = dug.price(cable.chain, prices);
		const chain = cable.isFixed ? null : search.find(cable.chain[0]!, cable.chain.at(-1)!, prices, own);
		if (chain) laid[k] = { ...cable, chain };
		dug.add(laid[k]!.chain);
	}
	return laid;
}

/** Up to so many cables the next to be laid is sought: each step asks for the way of every cable that is left. */
const soughtUpTo = 12;
/**
 * Always the cable that costs least beside what is dug is laid next, as Takahashi & Matsuyama lay the ways of a Steiner tree
 * (Mathematica Japonica 24, 1980; from memory).
 */
function nearestFirst(ground: BundleGround, cables: readonly Cable[], trench: number, part: number): readonly Cable[] {
	const dug = new Dug(ground);
	const search = new WaySearch(dug);
	const laid = [...cables];
	const left = cables.flatMap(({ isFixed, chain }, k) => {
		if (isFixed) dug.add(chain);
		return isFixed ? [] : [k];
	});
	while (left.length > 0) {
		let best = { at: 0, chain: cables[left[0]!]!.chain, cost: Infinity };
		left.forEach((k, at) => {
			const { chain: own, price } = cables[k]!;
			const prices: Prices = { cable: price * part, trench };
			const chain = search.find(own[0]!, own.at(-1)!, prices, dug.price(own, prices)) ?? own;
			const cost = dug.price(chain, prices);
			if (cost < best.cost - sameMoney) best = { at, chain, cost };
		});
		const [k] = left.splice(best.at, 1);
		laid[k!] = { ...cables[k!]!, chain: best.chain };
		dug.add(best.chain);
	}
	return laid;
}

/** The cables led along each other from where they lie; themselves where none gets cheaper so. Deterministic. */
export const bundled: Bundler = settled;

/** The best that comes of other starts. Deterministic. */
export const bundledAnew: Bundler = (ground, cables, trench) => {
	let best = cables;
	let least = Infinity;
	const laid = starts.map((start) => () => oneByOne(ground, cables, trench, start));
	if (cables.length <= soughtUpTo)
		for (const part of [0.1, 1]) laid.push(() => nearestFirst(ground, cables, trench, part));
	for (const lay of laid) {
		const found = settled(ground, lay(), trench);
		const price = priceOf(ground, found, trench);
		if (price >= least - 10 * sameMoney) continue;
		best = found;
		least = price;
	}
	return best;
};
