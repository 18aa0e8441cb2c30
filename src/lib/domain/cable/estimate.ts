import { ohmsPerKm, type ChooseOptions, type RunShape } from '../circuit';

/**
 * What a run will cost in cable, by a linear estimate and before the circuit is solved: the cheapest size on which its
 * far lamp drops no more than its window leaves. Infinity where none does. It ranks ways of sharing lamps among runs;
 * what is chosen is then solved exactly.
 */
export function estimateRun(shape: RunShape, options: ChooseOptions): number {
	const amps = new Float64Array(shape.nodes);
	let least = 0;
	let most = Infinity;
	for (const { node, load } of shape.loads) {
		if (load.kind === 'resistance') continue;
		least = Math.max(least, load.minVolts);
		most = Math.min(most, load.maxVolts);
		// LED current at the middle of its window; a filament's changes little within its own.
		amps[node] =
			load.kind === 'led' ? load.voltAmps / ((load.minVolts + load.maxVolts) / 2) : load.watts / load.ratedVolts;
	}
	const through = amps.slice();
	// Segments come parents first, so from the last back each carries all that hangs behind it.
	for (const { from, to } of shape.segments.toReversed()) through[from]! += through[to]!;
	let worst = 0;
	let metres = 0;
	const moment = new Float64Array(shape.nodes);
	for (const { from, to, metres: length } of shape.segments) {
		moment[to] = moment[from]! + length * through[to]!;
		worst = Math.max(worst, moment[to]!);
		metres += length;
	}
	const { corners, temperatures } = options;
	const taps = options.transformers.flatMap((transformer) => transformer.taps);
	// Filament windows are narrower than the mains wander: they are judged at nominal mains.
	const wide = most - least > 2 * corners.mains * most;
	const mains = wide ? corners.mains : 0;
	const top = Math.max(...taps.filter((tap) => tap * (1 + mains) <= most), Math.min(...taps));
	const room = top * (1 - mains) - least - (options.transformers[0]?.regulation ?? 0) * options.loadLimit * top;
	const costs = options.sizes.flatMap((size) => {
		const drop = (2 * ohmsPerKm(size, temperatures.hot) * worst * (1 + corners.length)) / 1000;
		return drop <= room ? [options.pricePerMetre(size) * metres] : [];
	});
	return Math.min(Infinity, ...costs);
}
