/** The plan's own circuit, with one thing or another in it that the customer has. */
import { squareMillimetres, usualSizes, type CableSize, type Load } from '../circuit';
import type { Plan } from '../plan';
import { rules } from '../shared/rules';
import { solveTrial } from './circuit';
import type { Judged, Needs, ShelfTransformer } from './types';

export interface OwnedCircuit {
	needs: Needs;
	/** By run, the plan's. */
	sizes: CableSize[];
	transformer: ShelfTransformer;
	labels: ReadonlyMap<string, string>;
}
export interface Swap {
	transformer?: ShelfTransformer;
	/** By place of the run. */
	sizes?: ReadonlyMap<number, CableSize>;
	/** By fixture id: the load in its place. */
	loads?: ReadonlyMap<string, Load>;
	/** Places of the runs that hang on it; absent: all. */
	runs?: readonly number[];
}

/** One secondary for each 25 A at 12 V (rule supply.secondary), as the plan takes it for a transformer of which only the rating is known. */
export const secondariesFor = (voltAmps: number): number =>
	Math.max(1, Math.ceil(voltAmps / (rules['supply.secondary'].figures.amps * 12) - 1e-9));

/** Null where the plan has no transformer or no run. */
export function ownedCircuit(needs: Needs, { supply, runs }: Plan): OwnedCircuit | null {
	if (!supply || runs.length === 0) return null;
	return {
		needs,
		sizes: runs.map(({ cable }) => cable),
		transformer: {
			voltAmps: supply.ratedVoltAmps,
			taps: supply.taps,
			secondaries: secondariesFor(supply.ratedVoltAmps),
			regulation: supply.regulation
		},
		labels: new Map(needs.fixtures.flatMap(({ fixtures, labels }) => fixtures.map((id, k) => [id, labels[k]!])))
	};
}

/** The plan's circuit solved with this in it and all else as planned. */
export function sameBut(circuit: OwnedCircuit, { transformer, sizes, loads, runs }: Swap): Judged {
	// The plan itself sees to it that filament lamps look alike; here only what serves and what does not is asked.
	const all = circuit.needs.runs.map(({ name, shape }, r) => ({
		name,
		shape: {
			...shape,
			loads: shape.loads.map((one) => ({ ...one, load: loads?.get(one.id) ?? one.load, alike: null }))
		},
		size: sizes?.get(r) ?? circuit.sizes[r]!
	}));
	const trial = all.filter((_, r) => !runs || runs.includes(r));
	return solveTrial({ runs: trial, transformer: transformer ?? circuit.transformer, labels: circuit.labels });
}

/** Usual sizes of the system, thin to thick, thicker than the one given. */
export const thicker = (size: CableSize): CableSize[] =>
	usualSizes(size.system).filter((one) => squareMillimetres(one) > squareMillimetres(size));
