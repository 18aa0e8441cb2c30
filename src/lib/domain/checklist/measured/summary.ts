/** The whole night in a line or two, to be read out at the end. */
import { sentence } from '../words';
import type { MeasuredRow, RunCheck } from './types';

export interface NightSummary {
	measured: number;
	/** Places to measure: every lamp, and the terminals of each run. */
	of: number;
	says: string;
}
/** A row with its run where the label alone would not tell it: every run has terminals. */
const named = ({ name }: RunCheck, { key, label }: MeasuredRow): string =>
	key.startsWith('terminals/') ? `the terminals of ${name}` : label;

const verdicts: Readonly<Record<RunCheck['verdict'], string>> = {
	none: 'not measured',
	'as-planned': 'nothing points to a fault',
	fault: 'a fault to look for',
	unexplained: 'no single fault explains it'
};

export function summaryOf(checks: readonly RunCheck[]): NightSummary {
	const rows = checks.flatMap((check) => check.rows.map((row) => ({ row, name: named(check, row) })));
	const count = (off: MeasuredRow['off']) => rows.filter(({ row }) => row.off === off);
	const measured = rows.filter(({ row }) => row.measured !== null).length;
	const of = rows.length;
	if (measured === 0) return { measured, of, says: `Nothing measured yet of ${of} places.` };
	const list = (off: 'low' | 'high', words: string) => {
		const found = count(off).map(({ name }) => name);
		return found.length > 0 ? `; ${words}: ${found.join(', ')}` : '';
	};
	const all = measured === of ? `All ${of} places measured` : `${measured} of ${of} places measured`;
	const runs = checks.map(({ name, verdict }) => `${sentence(name)}: ${verdicts[verdict]}.`).join(' ');
	return {
		measured,
		of,
		says: `${all}: ${count('right').length} in their band${list('low', 'too low')}${list('high', 'too high')}. ${runs}`
	};
}
