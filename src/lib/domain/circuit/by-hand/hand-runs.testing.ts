/** For tests: runs as a plan has them, solved, by lot from a seed. */
import { loopOhms, ohmsPerKm, usualSizes } from '../conductors';
import { dice, halogen, led } from '../networks.testing';
import { solve } from '../solve';
import type { CableSize, Load, Network } from '../types';
import type { HandRun, LampKind } from './types';

const celsius = 30;
export interface Laid {
	size: CableSize;
	tapVolts: number;
	/** Volts lost in the supply, for each ampere of the run. */
	sagOhms?: number;
	/** Node k + 1 by its lamp; null: a bare tee. */
	lamps: ({ kind: LampKind; voltAmps: number } | null)[];
	segments: { from: number; to: number; metres: number }[];
}
const loadOf = ({ kind, voltAmps }: { kind: LampKind; voltAmps: number }): Load =>
	kind === 'led' ? led(voltAmps) : halogen(voltAmps);

/** The run with the volts and amperes of the solver; nulls where it finds no solution. */
export function solved({ size, tapVolts, sagOhms = 0, lamps, segments }: Laid): HandRun {
	const perKm = ohmsPerKm(size, celsius);
	const network: Network = {
		sourceVolts: tapVolts,
		sourceOhms: sagOhms,
		nodes: lamps.length + 1,
		segments: segments.map(({ from, to, metres }) => ({ from, to, ohms: loopOhms(perKm, metres) })),
		loads: lamps.flatMap((lamp, k) => (lamp ? [{ node: k + 1, load: loadOf(lamp) }] : []))
	};
	const solution = solve(network);
	return {
		size,
		tapVolts,
		celsius,
		ohmsPerKm: perKm,
		nodes: [null, ...lamps].map((lamp, n) => ({
			name: n === 0 ? 'the transformer' : `L${n}`,
			lamp,
			volts: solution.ok ? solution.volts[n]! : null
		})),
		segments: segments.map((segment, s) => ({ ...segment, amps: solution.ok ? solution.segmentAmps[s]! : null }))
	};
}

/** Chains and trees of 1 to 14 nodes, mixed lamps, some bare tees, now and then a segment written the other way round. */
export function anyHandRun(seed: number): HandRun {
	const roll = dice(seed);
	const system = roll() < 0.5 ? 'awg' : 'mm2';
	const sizes = usualSizes(system);
	const count = 1 + Math.floor(roll() * 14);
	const hub = roll() < 0.2;
	return solved({
		size: sizes[Math.floor(roll() * sizes.length)]!,
		tapVolts: 12 + Math.floor(roll() * 4),
		sagOhms: roll() * 0.05,
		lamps: Array.from({ length: count }, (_, k) => {
			const kind = roll() < 0.6 ? 'led' : 'halogen';
			const isBare = k < count - 1 && (hub ? k === 0 : roll() < 0.1);
			return isBare ? null : { kind, voltAmps: Math.round((2 + roll() * 12) * 100) / 100 };
		}),
		segments: Array.from({ length: count }, (_, k) => {
			const from = hub ? Math.min(k, 1) : roll() < 0.7 ? k : Math.floor(roll() * (k + 1));
			const metres = Math.round((1 + roll() * 12) * 100) / 100;
			return roll() < 0.8 ? { from, to: k + 1, metres } : { from: k + 1, to: from, metres };
		})
	});
}
