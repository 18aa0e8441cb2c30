import { leastVoltAmps, type CableSize, type ChooseOptions, type RunShape } from '../circuit';
import { demandOf, dropsOf, type Demand } from './estimate';

/** A run as it may be laid, and the size that it is held to. */
export interface Bounded {
	plain: RunShape;
	others: readonly Seen[];
	size: CableSize | null;
}
/** A way as the bound sees it: what it asks of cable, and what laying it costs. */
interface Seen extends Pick<Demand, 'metres' | 'worst'> {
	laying: number;
}
/**
 * What runs so shared out cost at least if every limit is kept: for each the cheapest of its ways in the thinnest cable that
 * could do, and a transformer that carries the lamps. Infinity where a run cannot keep its limits at all.
 *
 * That a size cannot do is known for LED lamps. With the mains low none has more volts than the highest tap less the sag
 * of the lamps alone; so no current is below volt-amperes over these volts, and no drop below what that makes of it.
 */
export function leastCost(runs: readonly Bounded[], options: ChooseOptions): number {
	const drops = dropsOf(options, options.sizes);
	const seen = runs.map(({ plain, others, size }) => {
		const demand = demandOf(plain);
		return {
			ways: [{ metres: demand.metres, worst: demand.worst, laying: plain.laying ?? 0 }, ...others],
			isLed: plain.loads.every(({ load }) => load.kind === 'led'),
			minVolts: demand.minVolts,
			drops: size ? dropsOf(options, [size]) : drops
		};
	});
	const load = runs.reduce(
		(sum, { plain }) => sum + plain.loads.reduce((va, one) => va + leastVoltAmps(one.load), 0),
		0
	);
	const { transformers, corners, loadLimit } = options;
	const enough = transformers.filter(({ voltAmps }) => voltAmps * loadLimit >= load);
	const costs = (enough.length > 0 ? enough : transformers).map(({ price, taps, regulation, voltAmps }) => {
		const top = Math.max(...taps) * (1 - corners.mains - (regulation * load) / voltAmps);
		return seen.reduce((sum, run) => {
			let least = Infinity;
			for (const { metres, worst, laying } of run.ways)
				for (const { drop, price: perMetre } of run.drops) {
					const cost = perMetre * metres + laying;
					if (cost < least && (!run.isLed || top - (drop * worst) / top >= run.minVolts - 1e-9)) least = cost;
				}
			return sum + least;
		}, price);
	});
	return Math.min(...costs);
}
