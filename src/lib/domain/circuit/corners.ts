/** The cases that a plan is solved in (rule cable.corners), and one run as a network in one of them. */
import { loopOhms, ohmsPerKm } from './conductors';
import type { CableSize, ChooseOptions, Network, RunShape } from './types';

export interface Case {
	/** Fraction of the nominal mains, and of the lengths laid. */
	mains: number;
	length: number;
	/** Conductor temperature, °C. */
	celsius: number;
}
export interface Cases {
	nominal: Case;
	/** Hot, long, mains low; cold, short, mains high. */
	low: Case;
	high: Case;
	/** The same two with the mains at their nominal volts: what the run itself, not the grid, does to its lamps. */
	longHot: Case;
	shortCold: Case;
}
export type CaseName = keyof Cases;

export function casesOf({ corners, temperatures }: ChooseOptions): Cases {
	const longHot = { mains: 1, length: 1 + corners.length, celsius: temperatures.hot };
	const shortCold = { mains: 1, length: 1 - corners.length, celsius: temperatures.cold };
	return {
		nominal: { mains: 1, length: 1, celsius: temperatures.nominal },
		low: { ...longHot, mains: 1 - corners.mains },
		high: { ...shortCold, mains: 1 + corners.mains },
		longHot,
		shortCold
	};
}

/** A run of one cable size, fed at `volts` held at its terminals. */
export function runNetwork(shape: RunShape, size: CableSize, { length, celsius }: Case, volts: number): Network {
	const perKm = ohmsPerKm(size, celsius);
	return {
		sourceVolts: volts,
		sourceOhms: 0,
		nodes: shape.nodes,
		segments: shape.segments.map(({ from, to, metres }) => ({ from, to, ohms: loopOhms(perKm, metres * length) })),
		loads: shape.loads
	};
}
