/** For tests and figures: networks drawn by lot from a seed, so that each can be had again. */
import type { Load, Network } from './types';

/** mulberry32: 32-bit generator, uniform in [0, 1). */
export function dice(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let t = Math.imul(state ^ (state >>> 15), state | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
	};
}

export const led = (voltAmps: number): Load => ({ kind: 'led', voltAmps, minVolts: 9, maxVolts: 15 });
export const halogen = (watts: number): Load => ({
	kind: 'halogen',
	watts,
	ratedVolts: 12,
	minVolts: 10.8,
	maxVolts: 12
});

export type Family = 'chain' | 'tree' | 'ring' | 'feeds';
const families: Family[] = ['chain', 'tree', 'ring', 'feeds'];

function anyLoad(roll: () => number): Load {
	const kind = roll();
	if (kind < 0.5) return led(1 + roll() * 10);
	if (kind < 0.85) return halogen(5 + roll() * 30);
	return { kind: 'resistance', ohms: 8 + roll() * 90 };
}

/**
 * A network with mixed lamps, some without a solution. Trees have now and then a segment without length; rings close
 * one to four extra ways; feeds adds a second tap.
 */
export function anyNetwork(seed: number, family: Family = families[seed % families.length]!): Network {
	const roll = dice(seed);
	const nodes = 3 + Math.floor(roll() * 28);
	const heavy = roll() < 0.2 ? 3 : 1;
	const ohms = () => (roll() < 0.04 ? 0 : (0.002 + roll() * 0.06) * heavy);
	const segments: Network['segments'] = [];
	for (let n = 1; n < nodes; n++) {
		const parent = family === 'chain' ? n - 1 : Math.floor(roll() * n);
		segments.push(roll() < 0.5 ? { from: parent, to: n, ohms: ohms() } : { from: n, to: parent, ohms: ohms() });
	}
	if (family === 'ring' || family === 'feeds') {
		const extra = 1 + Math.floor(roll() * 4);
		for (let k = 0; k < extra; k++) {
			const from = Math.floor(roll() * nodes);
			const to = (from + 1 + Math.floor(roll() * (nodes - 1))) % nodes;
			segments.push({ from, to, ohms: 0.005 + roll() * 0.1 });
		}
	}
	const loads: Network['loads'] = [];
	for (let n = 1; n < nodes; n++) if (roll() < 0.8) loads.push({ node: n, load: anyLoad(roll) });
	return {
		sourceVolts: 12 + Math.floor(roll() * 4),
		sourceOhms: roll() < 0.3 ? 0 : roll() * 0.05,
		nodes,
		segments,
		loads,
		...(family === 'feeds' && {
			feeds: [{ node: nodes - 1, volts: 12 + Math.floor(roll() * 4), ohms: 0.005 + roll() * 0.05 }]
		})
	};
}

/** A chain of equal LED lamps that loses about a tenth of its volts, whatever their number. */
export function evenChain(lamps: number): Network {
	return {
		sourceVolts: 13,
		sourceOhms: 0.02,
		nodes: lamps + 1,
		segments: Array.from({ length: lamps }, (_, n) => ({ from: n, to: n + 1, ohms: 0.36 / lamps })),
		loads: Array.from({ length: lamps }, (_, n) => ({ node: n + 1, load: led(60 / lamps) }))
	};
}

/** A tree of equal LED lamps, each node hung on one of the nodes before it. */
export function evenTree(lamps: number, seed = 1): Network {
	const roll = dice(seed);
	const segments = Array.from({ length: lamps }, (_, n) => ({
		from: Math.max(0, n - Math.floor(roll() * Math.min(n, 6))),
		to: n + 1,
		ohms: 0.36 / lamps
	}));
	return { ...evenChain(lamps), segments };
}
