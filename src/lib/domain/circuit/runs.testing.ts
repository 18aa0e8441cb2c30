/** For tests and figures: run shapes and options as a home has them, drawn by lot from a seed. */
import { rules } from '../shared/rules';
import { usualSizes } from './conductors';
import { dice, halogen, led } from './networks.testing';
import type { CableSize, ChooseOptions, RunShape, TransformerOption } from './types';

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
