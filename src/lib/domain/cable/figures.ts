/**
 * Workings of a run's figures, made from the plan when a person opens them: a yard has thousands, and few are read.
 * Each shows rounded inputs whose sum, redone as shown, gives the figure as shown.
 */
import type { Fixture } from '../placement';
import type { Working } from '../shared/working';
import { solved, sourceAmps, type Case, type Solved } from './cases';
import { figure } from './figure';
import { lampWorking, ohmsWorking } from './part-figures';
import type { Run, Supply } from './types';

export { voltsIn, type Case } from './cases';
export { lampWorking, lightWorking, ohmsWorking } from './part-figures';
export { boundWorking, gapWorking, lengthWorking, routeWords } from './route-figures';
export { loadWorking, moreLampsWorking, roomWorking, totalWorking } from './supply-figures';

/** Names of a run's nodes by id, as the page writes them. */
export type Names = ReadonlyMap<string, string>;

const caseWords: Record<Case, string> = {
	nominal: 'Volts',
	low: 'Lowest volts',
	high: 'Highest volts'
};
const lengthWords: Record<'low' | 'high', string> = {
	low: 'all lengths a tenth longer',
	high: 'all lengths a tenth shorter'
};

/** Ids of the nodes that a segment feeds, its far end first; on a ring, all that hang on either side of it. */
function beyond(run: Run, segment: number): string[] {
	const { from, to } = run.segments[segment]!;
	const seen = new Set([from, to]);
	const found = [to];
	for (const id of found)
		for (const other of run.segments) {
			const next = other.from === id ? other.to : other.to === id ? other.from : null;
			if (next === null || seen.has(next)) continue;
			seen.add(next);
			found.push(next);
		}
	return found;
}

/** A current as the sum of what the lamps draw that hang behind it; null where the case has no solution. */
function sumWorking(
	run: Run,
	state: Solved,
	fixtures: readonly Fixture[],
	label: string,
	amps: number,
	fed: ReadonlySet<string>
): Working {
	const lamps = run.nodes.flatMap((node, n) => {
		const fixture = fed.has(node.id) ? fixtures.find(({ id }) => id === node.fixture) : undefined;
		return fixture ? [lampWorking(fixture, state.volts[n]!)] : [];
	});
	return figure(
		amps,
		{
			label,
			unit: 'A',
			decimals: 2,
			rule: 'What flows into a cable is what the lamps behind it draw, each at the volts it gets.',
			expression: lamps.map((_, k) => `I${k + 1}`).join(' + ') || '0',
			source: 'physics'
		},
		Object.fromEntries(
			lamps.map((lamp, k) => [
				`I${k + 1}`,
				{ name: lamp.label.replace('Current of ', ''), value: lamp.value, unit: 'A', from: lamp }
			])
		),
		(values) => Object.values(values).reduce((sum, value) => sum + value, 0)
	);
}

/** Current of a run at the supply; null where it has no solution. */
export function currentWorking(run: Run, fixtures: readonly Fixture[]): Working | null {
	const state = solved(run, 'nominal');
	if (!state) return null;
	const all = new Set(run.nodes.map(({ id }) => id));
	return sumWorking(run, state, fixtures, `Current of ${run.name}`, sourceAmps(run, state), all);
}

/** Volts at the transformer's terminals for a run: the tap, more or less mains, less the sag that all runs make together. */
export function terminalWorking(run: Run, which: Case, runs: readonly Run[], supply: Supply): Working | null {
	const state = solved(run, which);
	const states = runs.map((one) => solved(one, which));
	if (!state || states.some((one) => one === null)) return null;
	const load = runs.reduce((sum, one, k) => sum + one.tapVolts * sourceAmps(one, states[k]!), 0);
	return figure(
		state.volts[0]!,
		{
			label: `${caseWords[which]} at the terminals`,
			unit: 'V',
			decimals: 2,
			rule:
				which === 'nominal'
					? 'The tap, less the sag of the transformer: at its full rating it sags by its regulation, at part load by that part.'
					: `The tap with the mains ${which === 'low' ? 'low' : 'high'}, less the sag of the transformer.`,
			expression: which === 'nominal' ? 'T × ( 1 − g × S ÷ R )' : 'T × ( m − g × S ÷ R )',
			source: 'memory'
		},
		{
			T: { name: 'tap', value: run.tapVolts, unit: 'V', exact: true },
			...(which === 'nominal'
				? {}
				: { m: { name: 'mains, as a part of what it should be', value: state.mains, unit: '', exact: true } }),
			g: { name: 'regulation', value: supply.regulation, unit: '', exact: true },
			S: { name: 'tap volts × current, all runs together', value: load, unit: 'VA' },
			R: { name: 'rating', value: supply.ratedVoltAmps, unit: 'VA', exact: true }
		},
		(v: Record<string, number>) => v.T! * ((v.m ?? 1) - (v.g! * v.S!) / v.R!)
	);
}

/**
 * Volts at a node: those at the place before it, less what the cable between takes. Null at the supply (there
 * `terminalWorking` says it) and where the case has no solution.
 */
export function voltsWorking(
	run: Run,
	node: string,
	which: Case,
	names: Names,
	fixtures: readonly Fixture[]
): Working | null {
	const state = solved(run, which);
	const index = new Map(run.nodes.map(({ id }, n) => [id, n]));
	const s = run.segments.findIndex(({ to }) => to === node);
	const segment = run.segments[s];
	if (!state || !segment || !index.has(node) || !index.has(segment.from)) return null;
	const name = (id: string) => names.get(id) ?? id;
	const before = name(segment.from);
	const amps = state.amps[s]!;
	const current = sumWorking(run, state, fixtures, `Current to ${name(node)}`, amps, new Set(beyond(run, s)));
	const corner = which !== 'nominal';
	return figure(
		state.volts[index.get(node)!]!,
		{
			label: `${caseWords[which]} at ${name(node)}`,
			unit: 'V',
			decimals: 2,
			rule: 'The volts at the place before, less what the cable takes: twice its length, because current goes out and comes back.',
			expression: corner ? 'V − 2 × k × L × r × I ÷ 1000' : 'V − 2 × L × r × I ÷ 1000',
			source: 'physics'
		},
		{
			V: { name: `volts at ${before}`, value: state.volts[index.get(segment.from)!]!, unit: 'V' },
			...(corner ? { k: { name: lengthWords[which], value: state.length, unit: '', exact: true } } : {}),
			L: { name: `cable laid from ${before}`, value: segment.length, unit: 'm', exact: true },
			r: {
				name: 'ohms in a kilometre of one conductor',
				value: state.ohmsPerKm,
				unit: 'Ω/km',
				from: ohmsWorking(run.cable, state.celsius)
			},
			I: {
				name: 'current in it',
				value: amps,
				unit: 'A',
				// On a ring the current is shared between two ways, and is no plain sum.
				...(Math.abs(current.value - amps) < 0.005 ? { from: current } : {})
			}
		},
		(v: Record<string, number>) => v.V! - (2 * (v.k ?? 1) * v.L! * v.r! * v.I!) / 1000
	);
}

/** Volts lost from the terminals to a node, percent of those at the terminals; null without a solution. */
export function dropWorking(run: Run, node: string, names: Names): Working | null {
	const state = solved(run, 'nominal');
	const n = run.nodes.findIndex(({ id }) => id === node);
	if (!state || n < 0) return null;
	const [start, end] = [state.volts[0]!, state.volts[n]!];
	return figure(
		(100 * (start - end)) / start,
		{
			label: `Volts lost to ${names.get(node) ?? node}`,
			unit: '%',
			decimals: 1,
			rule: 'What the cable takes on the way, as a part of the volts at the terminals.',
			expression: '( T − V ) ÷ T × 100',
			source: 'physics'
		},
		{
			T: { name: 'volts at the terminals', value: start, unit: 'V' },
			V: { name: `volts at ${names.get(node) ?? node}`, value: end, unit: 'V' }
		},
		({ T, V }) => ((T - V) / T) * 100
	);
}
