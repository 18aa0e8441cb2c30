/** A transformer that the customer has. */
import { sizeName, type CableSize } from '../circuit';
import { rules } from '../shared/rules';
import { leastLoad, loadLimit, lowestWords } from './circuit';
import { sameBut, secondariesFor, thicker, type OwnedCircuit } from './owned-circuit';
import type { Judged, Owned, OwnedVerdict, ShelfTransformer } from './types';
import { listed, sentence } from './words';

/** Where its taps are not told, it is taken to have this one: common practice, no source. */
const onlyTap = 12;

const carries = ({ loadVoltAmps, limitVoltAmps }: Judged): string =>
	`it carries ${Math.round(loadVoltAmps)} VA of the ${Math.round(limitVoltAmps)} that ${Math.round(loadLimit * 100)} % of its rating allows`;
interface Thicker {
	sizes: ReadonlyMap<number, CableSize>;
	judged: Judged;
}
/** The thinnest usual size for one run, or for all, with which it passes. */
function inThicker(transformer: ShelfTransformer, circuit: OwnedCircuit): Thicker | null {
	const places = circuit.sizes.map((_, r) => r);
	const sets = places.length > 1 ? [...places.map((r) => [r]), places] : [places];
	for (const set of sets) {
		const steps = Math.max(...set.map((r) => thicker(circuit.sizes[r]!).length));
		for (let step = 0; step < steps; step++) {
			const sizes = new Map(
				set.map((r) => {
					const all = thicker(circuit.sizes[r]!);
					return [r, all[Math.min(step, all.length - 1)] ?? circuit.sizes[r]!] as const;
				})
			);
			const judged = sameBut(circuit, { transformer, sizes });
			if (judged.ok) return { sizes, judged };
		}
	}
	return null;
}

/** As far as it is known: sag and secondaries are taken to be usual. */
export const ownTransformer = ({ voltAmps, taps }: NonNullable<Owned['transformer']>): ShelfTransformer => ({
	voltAmps,
	taps: taps && taps.length > 0 ? taps.toSorted((a, b) => a - b) : [onlyTap],
	secondaries: secondariesFor(voltAmps),
	regulation: rules['supply.regulation'].figures.taken
});
export function transformerVerdict(own: NonNullable<Owned['transformer']>, circuit: OwnedCircuit): OwnedVerdict {
	const { voltAmps } = own;
	const transformer = ownTransformer(own);
	const base = { what: 'transformer' as const, name: `${voltAmps} VA transformer` };
	const judged = sameBut(circuit, { transformer });
	const told = (one: Judged): string => `${carries(one)}. ${lowestWords(one)}`;
	if (judged.ok) return { ...base, verdict: 'keep', why: sentence(told(judged)), where: null };
	const wrong = judged.problems[0]!.message;
	const isTooSmall = leastLoad(circuit.needs.runs.map(({ shape }) => shape)) > judged.limitVoltAmps;
	const better = isTooSmall ? null : inThicker(transformer, circuit);
	if (better) {
		const where = [...better.sizes].map(([r, size]) => `${circuit.needs.runs[r]!.name} in ${sizeName(size)}`);
		return {
			...base,
			verdict: 'reuse',
			why: `${wrong} With thicker cable ${told(better.judged)}`,
			where: `with ${listed(where)}`
		};
	}
	const alone =
		circuit.needs.runs.length > 1
			? circuit.needs.runs.findIndex((_, r) => sameBut(circuit, { transformer, runs: [r] }).ok)
			: -1;
	if (alone < 0) return { ...base, verdict: 'replace', why: wrong, where: null };
	const { name } = circuit.needs.runs[alone]!;
	const why = `${wrong} For ${name} alone ${told(sameBut(circuit, { transformer, runs: [alone] }))}`;
	return { ...base, verdict: 'reuse', why, where: `for ${name} alone, beside another` };
}
