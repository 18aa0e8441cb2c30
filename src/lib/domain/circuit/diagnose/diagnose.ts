/**
 * What the volts measured on the first night say about a run: which single fault explains them best, found by solving the run with each
 * fault that it may have and comparing (`fit.ts`). Method: model-based diagnosis by parameter estimation (Isermann, Automatica
 * 20, 1984; from memory).
 */
import { deviations, fitted } from './fit';
import type { Diagnosis, Fault, Inspected, Suspect } from './types';

/**
 * A fault has to better the sum of squares by this much before it is believed: three and a half standard deviations. Taps lie
 * closer together than that beside what the mains wander; of them, and of the mains, two and a quarter are told.
 */
const worthTelling = (kind: Fault['kind']): number => (kind === 'tap' || kind === 'mains' ? 5 : 12);
/** What is no worse than the best by this much explains the readings as well: two standard deviations. */
const asGood = 4;
/** More than this is not chance: the mean of so many squares and three of their standard deviations. */
const mostByChance = (readings: number): number => readings + 3 * Math.sqrt(2 * readings);
const mostNamed = 4;

/** Where two explain the readings alike, what is met more often comes first (common practice, no source). */
const usual: Record<Fault['kind'], number> = {
	dead: 0,
	open: 1,
	splice: 2,
	lead: 3,
	tap: 4,
	size: 5,
	load: 6,
	mains: 7
};

function* faultsOf({ network, otherTaps, otherSizes }: Inspected): Generator<Fault> {
	yield { kind: 'dead' };
	yield { kind: 'mains' };
	for (const { tapVolts } of otherTaps) yield { kind: 'tap', tapVolts };
	for (const { size } of otherSizes) yield { kind: 'size', size };
	for (let segment = 0; segment < network.segments.length; segment++) {
		yield { kind: 'open', segment };
		yield { kind: 'splice', segment };
	}
	for (let load = 0; load < network.loads.length; load++) {
		yield { kind: 'lead', load };
		yield { kind: 'load', load };
	}
}

/**
 * `inspected.network` as planned must have a solution, else the verdict is `unexplained` with no suspect: what is planned does not work
 * itself. One fault at a time; two at once may be named wrongly, and measuring again after the first is put right tells. Readings
 * below 1 V count as measured, not as missing.
 */
export function diagnose(inspected: Inspected): Diagnosis {
	const { readings } = inspected;
	if (readings.length === 0) return { verdict: 'none', misfit: 0, volts: [], suspects: [] };
	const sigma = deviations(inspected);
	const sound = sigma && fitted(inspected, null, sigma);
	if (!sigma || !sound) return { verdict: 'unexplained', misfit: Infinity, volts: [], suspects: [] };
	const { misfit, volts } = sound;
	const limit = mostByChance(readings.length);
	const all: Suspect[] = [];
	for (const fault of faultsOf(inspected)) {
		const found = fitted(inspected, fault, sigma);
		if (found && misfit - found.misfit > worthTelling(fault.kind)) all.push({ fault, ...found });
	}
	const least = Math.min(Infinity, ...all.map((one) => one.misfit));
	if (all.length === 0) return { verdict: misfit <= limit ? 'as-planned' : 'unexplained', misfit, volts, suspects: [] };
	// Within a step of one they count as equal.
	const rank = ({ fault, misfit: own }: Suspect) => 10 * Math.round(own - least) + usual[fault.kind];
	const suspects = all
		.filter((one) => one.misfit <= least + asGood)
		.toSorted((a, b) => rank(a) - rank(b))
		.slice(0, mostNamed);
	return { verdict: least <= limit ? 'fault' : 'unexplained', misfit, volts, suspects };
}
