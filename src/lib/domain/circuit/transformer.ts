/**
 * A transformer with taps under load.
 *
 * A tap's volts are its volts with nothing connected. `regulation` is the fraction by which the terminals sag when the
 * rated volt-amperes are drawn, and the sag is in proportion to what all runs draw together, as if it all sat in the
 * winding they share: terminal volts = tap × u, u = mains − regulation × Σ(tap × amperes) / rating. With one run this is
 * `Network.sourceOhms` = regulation × tap² / rating behind `sourceVolts` = mains × tap.
 *
 * Taps are turns of one winding, so a run on tap t is, seen from one common side, the same run with its volts divided by
 * t, its amperes multiplied by t and its ohms divided by t². All runs then hang on one source of one volt per unit, and
 * the sag comes exactly out of one solution of the whole.
 */
import { perUnit } from './lamps';
import { solve, solveParts, type Part } from './solve';
import type { Network, Solution, TransformerOption } from './types';

export type { Part };

/** Volts per unit per volt-ampere. */
const sagPerVoltAmpere = ({ regulation, voltAmps }: TransformerOption): number =>
	voltAmps > 0 ? regulation / voltAmps : 0;

/** All runs behind their common sag, in volts per unit of tap volts; `sourceOhms` in volts per unit per volt-ampere. */
export function together(parts: Part[], transformer: TransformerOption, mains: number): Network {
	const joint: Network = {
		sourceVolts: mains,
		sourceOhms: sagPerVoltAmpere(transformer),
		nodes: 1,
		segments: [],
		loads: []
	};
	for (const { network, tapVolts } of parts) {
		const shift = joint.nodes - 1;
		const node = (n: number) => (n === 0 ? 0 : n + shift);
		for (const { from, to, ohms } of network.segments)
			joint.segments.push({ from: node(from), to: node(to), ohms: ohms / tapVolts ** 2 });
		for (const { node: n, load } of network.loads) joint.loads.push({ node: node(n), load: perUnit(load, tapVolts) });
		joint.nodes += network.nodes - 1;
	}
	return joint;
}

/**
 * All runs on one transformer: u, the fraction of its tap volts that stands at every terminal, and each run's part of the
 * common solution in its own volts and amperes; null where the runs together have no solution.
 */
export function solveTogether(
	parts: Part[],
	transformer: TransformerOption,
	mains: number
): { u: number; solutions: Solution[] } | null {
	const sourceOhms = sagPerVoltAmpere(transformer);
	const quick = solveParts(parts, mains, sourceOhms);
	return quick === undefined ? solveJoint(parts, transformer, mains) : quick;
}
/** The same for runs of any shape, as one network. */
function solveJoint(
	parts: Part[],
	transformer: TransformerOption,
	mains: number
): { u: number; solutions: Solution[] } | null {
	const joint = solve(together(parts, transformer, mains));
	if (!joint.ok) return null;
	const u = joint.volts[0]!;
	let [nodes, segments, loads] = [1, 0, 0];
	const solutions = parts.map(({ network, tapVolts }): Solution => {
		const part = {
			ok: true as const,
			volts: [tapVolts * u],
			segmentAmps: [] as number[],
			loadAmps: [] as number[],
			loadVoltAmps: [] as number[],
			sourceAmps: 0,
			steps: joint.steps
		};
		for (let n = 1; n < network.nodes; n++) part.volts.push(joint.volts[nodes++]! * tapVolts);
		for (let s = 0; s < network.segments.length; s++) part.segmentAmps.push(joint.segmentAmps[segments++]! / tapVolts);
		for (let k = 0; k < network.loads.length; k++) {
			part.sourceAmps += joint.loadAmps[loads]! / tapVolts;
			part.loadAmps.push(joint.loadAmps[loads]! / tapVolts);
			part.loadVoltAmps.push(joint.loadVoltAmps[loads++]!);
		}
		return part;
	});
	return { u, solutions };
}

/** u, the fraction of its tap volts that stands at every terminal, or null where the runs together have no solution. */
export const terminalFraction = (parts: Part[], transformer: TransformerOption, mains: number): number | null =>
	solveTogether(parts, transformer, mains)?.u ?? null;
