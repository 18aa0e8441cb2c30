import { ohmsPerKm, type CableSize, type ChooseOptions, type RunShape } from '../circuit';

/** What a run asks of its cable before the circuit is solved. */
export interface Demand {
	metres: number;
	/** Volt-ampere metres from the supply to the lamp that has most of them before it, and to the one that has least. */
	worst: number;
	least: number;
	/** The window that all of its lamps share, volts. */
	minVolts: number;
	maxVolts: number;
}

/** LED lamps at their volt-amperes, filaments at their rated watts; segments come parents first, one lamp to a node. */
export function demandOf(shape: RunShape): Demand {
	const through = new Float64Array(shape.nodes);
	let minVolts = 0;
	let maxVolts = Infinity;
	for (const { node, load } of shape.loads) {
		if (load.kind === 'resistance') continue;
		minVolts = Math.max(minVolts, load.minVolts);
		maxVolts = Math.min(maxVolts, load.maxVolts);
		through[node] = load.kind === 'led' ? load.voltAmps : load.watts;
	}
	// From the last segment back each carries all that hangs behind it.
	for (let s = shape.segments.length - 1; s >= 0; s--) {
		const { from, to } = shape.segments[s]!;
		through[from]! += through[to]!;
	}
	let metres = 0;
	const moment = new Float64Array(shape.nodes);
	for (const { from, to, metres: length } of shape.segments) {
		moment[to] = moment[from]! + length * through[to]!;
		metres += length;
	}
	let worst = 0;
	let least = Infinity;
	for (const { node } of shape.loads) {
		worst = Math.max(worst, moment[node]!);
		least = Math.min(least, moment[node]!);
	}
	return { metres, worst, least, minVolts, maxVolts };
}

/**
 * What a run will cost in cable, by a linear estimate and before the circuit is solved: the cheapest size on which its
 * far lamp drops no more than its window leaves. Infinity where none does. It ranks ways of sharing lamps among runs;
 * what is chosen is then solved exactly.
 */
export function runEstimator(options: ChooseOptions): (demand: Omit<Demand, 'least'>) => number {
	const { corners } = options;
	const taps = options.transformers.flatMap((transformer) => transformer.taps);
	const lowest = Math.min(...taps);
	const regulation = options.transformers[0]?.regulation ?? 0;
	const sizes = dropsOf(options, options.sizes);
	return ({ metres, worst, minVolts, maxVolts }) => {
		// LED current at the middle of its window; a filament's changes little within its own.
		const middle = (minVolts + maxVolts) / 2;
		// Filament windows are narrower than the mains wander: they are judged at nominal mains.
		const wide = maxVolts - minVolts > 2 * corners.mains * maxVolts;
		const mains = wide ? corners.mains : 0;
		let top = lowest;
		for (const tap of taps) if (tap > top && tap * (1 + mains) <= maxVolts) top = tap;
		const room = top * (1 - mains) - minVolts - regulation * options.loadLimit * top;
		let cheapest = Infinity;
		for (const { drop, price } of sizes)
			if ((drop * worst) / middle <= room) cheapest = Math.min(cheapest, price * metres);
		return cheapest;
	};
}
/** By size: volts lost per ampere and metre, both ways, hot and a little longer than measured; price of a metre. */
export const dropsOf = ({ corners, temperatures, pricePerMetre }: ChooseOptions, sizes: readonly CableSize[]) =>
	sizes.map((size) => ({
		drop: (2 * ohmsPerKm(size, temperatures.hot) * (1 + corners.length)) / 1000,
		price: pricePerMetre(size)
	}));
