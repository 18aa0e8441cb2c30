import { ohmsPerKm, type ChooseOptions, type RunShape } from '../circuit';

/**
 * What a run will cost in cable, by a linear estimate and before the circuit is solved: the cheapest size on which its
 * far lamp drops no more than its window leaves. Infinity where none does. It ranks ways of sharing lamps among runs;
 * what is chosen is then solved exactly.
 */
export function runEstimator(options: ChooseOptions): (shape: RunShape) => number {
	const { corners, temperatures } = options;
	const taps = options.transformers.flatMap((transformer) => transformer.taps);
	const lowest = Math.min(...taps);
	const regulation = options.transformers[0]?.regulation ?? 0;
	/** Volts lost per ampere and metre, both ways, hot and a little longer than measured. */
	const sizes = options.sizes.map((size) => ({
		drop: (2 * ohmsPerKm(size, temperatures.hot) * (1 + corners.length)) / 1000,
		price: options.pricePerMetre(size)
	}));
	return (shape) => {
		const through = new Float64Array(shape.nodes);
		let least = 0;
		let most = Infinity;
		for (const { node, load } of shape.loads) {
			if (load.kind === 'resistance') continue;
			least = Math.max(least, load.minVolts);
			most = Math.min(most, load.maxVolts);
			// LED current at the middle of its window; a filament's changes little within its own.
			through[node] =
				load.kind === 'led' ? load.voltAmps / ((load.minVolts + load.maxVolts) / 2) : load.watts / load.ratedVolts;
		}
		// Segments come parents first, so from the last back each carries all that hangs behind it.
		for (let s = shape.segments.length - 1; s >= 0; s--) {
			const { from, to } = shape.segments[s]!;
			through[from]! += through[to]!;
		}
		let worst = 0;
		let metres = 0;
		const moment = new Float64Array(shape.nodes);
		for (const { from, to, metres: length } of shape.segments) {
			const here = moment[from]! + length * through[to]!;
			moment[to] = here;
			if (here > worst) worst = here;
			metres += length;
		}
		// Filament windows are narrower than the mains wander: they are judged at nominal mains.
		const wide = most - least > 2 * corners.mains * most;
		const mains = wide ? corners.mains : 0;
		let top = lowest;
		for (const tap of taps) if (tap > top && tap * (1 + mains) <= most) top = tap;
		const room = top * (1 - mains) - least - regulation * options.loadLimit * top;
		let cheapest = Infinity;
		for (const { drop, price } of sizes) if (drop * worst <= room) cheapest = Math.min(cheapest, price * metres);
		return cheapest;
	};
}
