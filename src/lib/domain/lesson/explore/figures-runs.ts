/** Figures of the runs and of the transformer. */
import {
	currentWorking,
	gapWorking,
	loadWorking,
	moreLampsWorking,
	ohmsWorking,
	roomWorking,
	terminalWorking,
	totalWorking,
	voltsIn,
	type Case
} from '../../cable';
import type { Plan } from '../../plan';
import { capital } from '../../yard';
import { given, later } from './figure';
import type { PlanFigure } from './types';

const terminals: readonly [Case, key: string, label: string][] = [
	['nominal', 'terminals', 'Volts at the terminals'],
	['low', 'terminals-low', 'Lowest volts at the terminals'],
	['high', 'terminals-high', 'Highest volts at the terminals']
];
/** Of each run: current, load, ohms of its cable, volts at the terminals. */
export function runFigures({ runs, fixtures, supply }: Plan): PlanFigure[] {
	if (!supply) return [];
	const solvable = (which: Case) => runs.every((run) => voltsIn(run, which) !== null);
	return runs.flatMap((run) => {
		const [key, place] = [(what: string) => `run/${run.id}/${what}`, capital(run.name)];
		const current = currentWorking(run, fixtures);
		const load = loadWorking(run);
		return [
			...(current ? [given(key('current'), place, current)] : []),
			...(load ? [given(key('load'), place, load)] : []),
			given(key('ohms'), place, ohmsWorking(run.cable, run.conductorTemperature)),
			given(key('ohms-low'), place, ohmsWorking(run.cable, run.corners.low.conductorTemperature)),
			given(key('ohms-high'), place, ohmsWorking(run.cable, run.corners.high.conductorTemperature)),
			...terminals.flatMap(([which, what, label]) => {
				const volts = solvable(which) ? voltsIn(run, which)?.[0] : undefined;
				if (volts === undefined) return [];
				const head = { label, unit: 'V', decimals: 2 };
				return [later(key(what), place, volts, head, () => terminalWorking(run, which, runs, supply))];
			})
		];
	});
}
/** Of the transformer: what it carries and what room is left; and how long the cable is against the shortest that could be. */
export function supplyFigures({ runs, fixtures, supply }: Plan): PlanFigure[] {
	if (!supply) return [];
	const place = 'Transformer';
	const labels = new Map(fixtures.map(({ id, label }) => [id, label]));
	const lamps = runs.reduce((sum, run) => sum + run.nodes.filter(({ fixture }) => fixture).length, 0);
	const total = totalWorking(runs, supply);
	const more = total && moreLampsWorking(supply, lamps);
	return [
		...(total ? [given('supply/load', place, total)] : []),
		...(supply.working ? [given('supply/share', place, supply.working)] : []),
		...(total ? [given('supply/room', place, roomWorking(supply))] : []),
		...(more ? [given('supply/more', place, more)] : []),
		...(supply.route ? [given('supply/route', 'Cable', gapWorking(supply.route, runs, labels))] : [])
	];
}
