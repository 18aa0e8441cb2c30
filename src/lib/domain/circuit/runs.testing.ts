/** For tests and figures: run shapes and options as a home has them, drawn by lot from a seed. */
import { rules } from '../shared/rules';
import { usualSizes } from './conductors';
import { dice, halogen, led } from './networks.testing';
import type { CableSize, ChooseOptions, Feed, Load, RunShape, RunWays, TransformerOption } from './types';

export const transformer = (voltAmps: number, price: number, secondaries = 1): TransformerOption => ({
	id: `t${voltAmps}`,
	voltAmps,
	taps: [12, 13, 14, 15],
	secondaries,
	regulation: 0.05,
	price
});

/** Invented prices per metre that grow with the copper. */
const prices: Record<number, number> = { 16: 1, 14: 1.4, 12: 2.2, 10: 3.5, 8: 5.6 };

export const options = (change: Partial<ChooseOptions> = {}): ChooseOptions => ({
	sizes: usualSizes('awg'),
	pricePerMetre: ({ size }: CableSize) => prices[size] ?? Infinity,
	transformers: [
		transformer(60, 65),
		transformer(150, 110),
		transformer(300, 170),
		transformer(600, 290, 2),
		transformer(900, 420, 3)
	],
	temperatures: rules['cable.temperature'].figures,
	corners: rules['cable.corners'].figures,
	loadLimit: rules['supply.load'].figures.fraction,
	growth: 0.2,
	secondaryAmps: rules['supply.secondary'].figures.amps,
	...change
});

export function anyShape(
	seed: number,
	id: string,
	kind: 'led' | 'halogen' = 'led',
	alike: string | null = null
): RunShape {
	const roll = dice(seed);
	const lamps = 2 + Math.floor(roll() * 8);
	return {
		id,
		nodes: lamps + 1,
		segments: Array.from({ length: lamps }, (_, n) => ({
			from: roll() < 0.7 ? n : Math.floor(roll() * n),
			to: n + 1,
			metres: n === 0 ? 3 + roll() * 25 : 2 + roll() * 6
		})),
		loads: Array.from({ length: lamps }, (_, n) => ({
			id: `${id}/${n}`,
			node: n + 1,
			load: kind === 'led' ? led(2 + roll() * 10) : halogen(10),
			alike
		}))
	};
}

/** A chain of equal lamps `gap` metres apart, the first `lead` metres from the supply. */
export function evenRun(id: string, lamps: number, lead: number, gap: number, load = led(5)): RunShape {
	return {
		id,
		nodes: lamps + 1,
		segments: Array.from({ length: lamps }, (_, n) => ({ from: n, to: n + 1, metres: n === 0 ? lead : gap })),
		loads: Array.from({ length: lamps }, (_, n) => ({ id: `${id}/${n}`, node: n + 1, load, alike: null }))
	};
}

interface Place {
	x: number;
	y: number;
}
const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Prim's least tree over `places` from the first: for each later place in the order it is joined, what it hangs on. */
function leastTree(places: Place[]): { place: number; on: number }[] {
	const joined = [0];
	const found: { place: number; on: number }[] = [];
	while (joined.length < places.length) {
		let best = { place: -1, on: -1, metres: Infinity };
		places.forEach((at, place) => {
			if (joined.includes(place)) return;
			for (const on of joined) {
				const metres = apart(at, places[on]!);
				if (metres < best.metres) best = { place, on, metres };
			}
		});
		joined.push(best.place);
		found.push(best);
	}
	return found;
}

/** Place 0 is the supply, the others have a lamp each; laying is digging by the metre and, where it is not fed at its end, a joint. */
function hung(
	id: string,
	feed: Feed,
	places: Place[],
	loads: Load[],
	tree: { place: number; on: number }[],
	alike: string | null
): RunShape {
	const digging = 0.4;
	const joint = 1.5;
	const metres = tree.map(({ place, on }) => apart(places[place]!, places[on]!) + 0.5);
	return {
		id,
		feed,
		laying: digging * metres.reduce((sum, one) => sum + one, 0) + (feed === 'end' ? 0 : joint),
		nodes: places.length,
		segments: tree.map(({ place, on }, k) => ({ from: on, to: place, metres: metres[k]! })),
		loads: loads.map((load, n) => ({ id: `${id}/${n}`, node: n + 1, load, alike }))
	};
}

/** A run over lamps strewn on a plane: in its plain way by the least tree, fed at some of its lamps, and from hubs at these. */
export function planeRun(
	seed: number,
	id: string,
	{ alike = null, lamp = led, heavy = 1 }: { alike?: string | null; lamp?: (va: number) => Load; heavy?: number } = {}
): Required<Pick<RunWays, 'shape' | 'others'>> {
	const roll = dice(seed * 7919 + 1);
	const lamps = 4 + Math.floor(roll() * 5);
	const from = 3 + roll() * 18;
	const width = 8 + roll() * 30;
	const places: Place[] = [{ x: 0, y: 0 }];
	for (let n = 0; n < lamps; n++) places.push({ x: (roll() - 0.5) * width, y: from + roll() * 6 });
	const loads = Array.from({ length: lamps }, () => lamp((3 + roll() * 12) * heavy));
	const make = (feed: Feed, tree: { place: number; on: number }[]) => hung(id, feed, places, loads, tree, alike);
	const enteredAt = (first: number) => {
		const own = [first, ...[...places.keys()].filter((place) => place > 0 && place !== first)];
		const rest = leastTree(own.map((place) => places[place]!));
		return [{ place: first, on: 0 }, ...rest.map(({ place, on }) => ({ place: own[place]!, on: own[on]! }))];
	};
	const star = (first: number) => [
		{ place: first, on: 0 },
		...[...places.keys()].filter((place) => place > 0 && place !== first).map((place) => ({ place, on: first }))
	];
	const [one, two] = [1 + Math.floor(roll() * lamps), 1 + Math.floor(roll() * lamps)];
	return {
		shape: make('end', leastTree(places)),
		others: () => [make('middle', enteredAt(one)), make('middle', enteredAt(two)), make('hub', star(one))]
	};
}
