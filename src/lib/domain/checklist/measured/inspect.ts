/** A run of the plan, and what was measured on it, as the circuit stage compares them. */
import { loadOf, type Run, type Supply } from '../../cable';
import { ohmsPerKm, usualSizes, type CableSize, type Inspected, type Reading } from '../../circuit';
import type { Fixture } from '../../placement';

export const terminalsKey = (run: Pick<Run, 'id'>): string => `terminals/${run.id}`;

/** By node of the run, the key of its reading; null at a bare hub. */
export const keyOf = (run: Run, node: number): string | null =>
	node === 0 ? terminalsKey(run) : (run.nodes[node]?.fixture ?? null);

/** Thinnest that may be mistaken for another, beside the sizes usually sold (rule cable.fuse lists it). */
const thinnest = { awg: 18, mm2: 1 } as const;

/**
 * Volts at the source are such that the terminals have what the plan says they have with all runs on: what the other runs draw
 * is in them. Null where the plan's own circuit has no solution.
 */
export function inspectedOf(
	run: Run,
	supply: Supply,
	fixtures: readonly Fixture[],
	measured: Readonly<Record<string, number>>
): Inspected | null {
	const terminals = run.nodes[0]?.volts ?? null;
	if (terminals === null || run.amps === null) return null;
	const place = new Map(run.nodes.map(({ id }, node) => [id, node]));
	const byId = new Map(fixtures.map((fixture) => [fixture.id, fixture]));
	const sourceOhms = (supply.regulation * run.tapVolts ** 2) / supply.ratedVoltAmps;
	const sourceVolts = terminals + sourceOhms * run.amps;
	const readings = run.nodes.flatMap((_, node): Reading[] => {
		const key = keyOf(run, node);
		const volts = key === null || !Object.hasOwn(measured, key) ? undefined : measured[key];
		return volts === undefined ? [] : [{ node, volts }];
	});
	const { system, size: own } = run.cable;
	const sizes: CableSize[] = [{ system, size: thinnest[system] }, ...usualSizes(system)];
	return {
		network: {
			sourceVolts,
			sourceOhms,
			nodes: run.nodes.length,
			segments: run.segments.map(({ from, to, ohms }) => ({ from: place.get(from)!, to: place.get(to)!, ohms })),
			loads: run.nodes.flatMap(({ fixture }, node) => {
				const lamp = fixture === null ? undefined : byId.get(fixture)?.lamp;
				return lamp ? [{ node, load: loadOf(lamp) }] : [];
			})
		},
		readings,
		otherTaps: supply.taps
			.filter((tap) => tap !== run.tapVolts)
			.map((tapVolts) => ({ tapVolts, sourceVolts: (sourceVolts * tapVolts) / run.tapVolts })),
		otherSizes: sizes
			.filter(({ size }) => size !== own)
			.map((size) => ({ size, factor: ohmsPerKm(size, run.conductorTemperature) / run.ohmsPerKm }))
	};
}
