/** Workings of what the transformer carries and of the room it has. */
import { rules } from '../shared/rules';
import type { Working } from '../shared/working';
import { solved, sourceAmps } from './cases';
import { figure } from './figure';
import type { Run, Supply } from './types';

/** What a run takes at the terminals, volt-amperes; null where it has no solution. */
export function loadWorking(run: Run): Working | null {
	const state = solved(run, 'nominal');
	if (!state) return null;
	return figure(
		run.loadVoltAmps,
		{
			label: `Load of ${run.name}`,
			unit: 'VA',
			decimals: 1,
			rule: 'Volts at the terminals times the current that leaves them; what the cable takes is in it.',
			expression: 'V × I',
			source: 'physics'
		},
		{
			V: { name: 'volts at the terminals', value: state.volts[0]!, unit: 'V' },
			I: { name: 'current at the terminals', value: sourceAmps(run, state), unit: 'A' }
		},
		({ V, I }) => V * I
	);
}

/** What all runs take together; null where one has no solution. */
export function totalWorking(runs: readonly Run[], supply: Supply): Working | null {
	const loads = runs.map(loadWorking);
	if (loads.some((load) => load === null)) return null;
	return figure(
		supply.loadVoltAmps,
		{
			label: 'Load on the transformer',
			unit: 'VA',
			decimals: 0,
			rule: 'All runs together, lamps and cable.',
			expression: runs.map((_, k) => `S${k + 1}`).join(' + ') || '0',
			source: 'physics'
		},
		Object.fromEntries(
			runs.map((run, k) => [
				`S${k + 1}`,
				{ name: run.name, value: run.loadVoltAmps, unit: 'VA', from: loads[k] ?? undefined }
			])
		),
		(values) => Object.values(values).reduce((sum, value) => sum + value, 0)
	);
}

const share = rules['supply.load'].figures.fraction;
const roomInputs = (supply: Supply) => ({
	R: { name: 'rating', value: supply.ratedVoltAmps, unit: 'VA', exact: true },
	S: { name: 'load', value: supply.loadVoltAmps, unit: 'VA' }
});

/** Volt-amperes that may still be added (rule supply.load); below zero when it carries too much. */
export const roomWorking = (supply: Supply): Working =>
	figure(
		share * supply.ratedVoltAmps - supply.loadVoltAmps,
		{
			label: 'Room left',
			unit: 'VA',
			decimals: 0,
			rule: `It may carry ${share * 100} % of its rating for hours on end; what is not taken yet is room.`,
			expression: `${share} × R − S`,
			source: 'nec210_19'
		},
		roomInputs(supply),
		({ R, S }) => share * R - S
	);

/** How many more lamps like these the transformer could carry, a lamp taken at the mean of `lamps` lamps; null without any. */
export function moreLampsWorking(supply: Supply, lamps: number): Working | null {
	if (lamps < 1 || supply.loadVoltAmps <= 0) return null;
	return figure(
		(share * supply.ratedVoltAmps - supply.loadVoltAmps) / (supply.loadVoltAmps / lamps),
		{
			label: 'More lamps like these',
			unit: '',
			decimals: 1,
			rule: 'The room left, shared out at what a lamp here takes on average, its cable with it. Whole lamps only.',
			expression: `( ${share} × R − S ) ÷ ( S ÷ n )`,
			source: 'practice'
		},
		{ ...roomInputs(supply), n: { name: 'lamps now', value: lamps, unit: '', exact: true } },
		({ R, S, n }) => (share * R - S) / (S / n)
	);
}
