/** A run as it was solved: as built, and in its worst cases. */
import type { Run } from './types';

/** As built at 30 °C, or in a worst case (rule cable.corners). */
export type Case = 'nominal' | 'low' | 'high';
export interface Solved {
	mains: number;
	/** Fraction of the lengths laid. */
	length: number;
	celsius: number;
	ohmsPerKm: number;
	/** By node and by segment. */
	volts: number[];
	amps: number[];
}
const whole = (values: (number | null)[]): number[] | null => (values.every((value) => value !== null) ? values : null);

/** A run in one case; null where that case has no solution. */
export function solved(run: Run, which: Case): Solved | null {
	if (which !== 'nominal') {
		const { mains, length, conductorTemperature: celsius, ohmsPerKm, volts, amps } = run.corners[which];
		return volts && amps ? { mains, length, celsius, ohmsPerKm, volts, amps } : null;
	}
	const volts = whole(run.nodes.map((node) => node.volts));
	const amps = whole(run.segments.map((segment) => segment.amps));
	return volts && amps
		? { mains: 1, length: 1, celsius: run.conductorTemperature, ohmsPerKm: run.ohmsPerKm, volts, amps }
		: null;
}

/** Volts at each node of a run, in the order of its nodes; null where the case has no solution. */
export const voltsIn = (run: Run, which: Case): number[] | null => solved(run, which)?.volts ?? null;

/** Amperes that leave the supply for a run. */
export function sourceAmps(run: Run, { amps }: Solved): number {
	const supply = run.nodes[0]?.id;
	return run.segments.reduce(
		(sum, { from, to }, s) => sum + (from === supply ? amps[s]! : to === supply ? -amps[s]! : 0),
		0
	);
}
