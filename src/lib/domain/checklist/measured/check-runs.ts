/** The first night's readings against the plan: where they are off, and which single fault would explain them. */
import { diagnose, type Diagnosis } from '../../circuit';
import type { Run, Supply } from '../../cable';
import type { Fixture } from '../../placement';
import { walked } from '../job';
import { inspectedOf, keyOf } from './inspect';
import type { MeasuredRow, RunCheck } from './types';
import { suspicionOf } from './words';

type Measured = Readonly<Record<string, number>>;

/** The last digit of a handheld meter (common practice, no source), volts: a reading this little beyond the band is within it. */
const lastDigit = 0.1;

/** A reading against its band; null where either is missing. Volts. */
export function against(read: number | null, low: number | null, high: number | null): MeasuredRow['off'] {
	if (read === null || low === null || high === null) return null;
	if (read < low - lastDigit) return 'low';
	return read > high + lastDigit ? 'high' : 'right';
}
function rowsOf(run: Run, fixtures: readonly Fixture[], measured: Measured): MeasuredRow[] {
	const labels = new Map(fixtures.map(({ id, label }) => [id, label]));
	return walked(run).nodes.flatMap((node): MeasuredRow[] => {
		const place = run.nodes.indexOf(node);
		const key = keyOf(run, place);
		if (key === null) return [];
		const read = Object.hasOwn(measured, key) ? measured[key]! : null;
		const { low, high } = node.band ?? terminalBand(run, node.volts);
		const off = against(read, low, high);
		const label = place === 0 ? 'The terminals' : (labels.get(key) ?? key);
		return [{ key, label, expected: node.volts, low, high, measured: read, off }];
	});
}
/** At the terminals the worst cases are those of the run's corners. */
function terminalBand({ corners }: Run, volts: number | null): { low: number | null; high: number | null } {
	const all = [volts, corners.low.volts?.[0] ?? null, corners.high.volts?.[0] ?? null].filter((one) => one !== null);
	return all.length < 3 ? { low: null, high: null } : { low: Math.min(...all), high: Math.max(...all) };
}

const lamps = (count: number): string => (count === 1 ? '1 place' : `${count} places`);
function verdictWords({ verdict, suspects }: Diagnosis, rows: readonly MeasuredRow[]): string {
	const read = rows.filter((row) => row.measured !== null);
	const out = read.filter(({ off }) => off === 'low' || off === 'high');
	const more =
		read.length < rows.length
			? ` Only ${read.length} of ${rows.length} places of this run are measured; each one more narrows it down.`
			: '';
	switch (verdict) {
		case 'none':
			return 'Nothing measured yet.';
		case 'as-planned':
			if (out.length > 0)
				return `Nothing points to a fault, but ${out.map(({ label }) => label).join(', ')} lie outside their band: the mains or the lengths are further off than planned for.`;
			return read.length < rows.length
				? `As planned at the ${lamps(read.length)} measured of ${rows.length}.`
				: 'As planned: every lamp gets what it should.';
		case 'fault':
			return suspects.length > 1
				? `One of these would explain what you measured. The readings cannot tell them apart; look in this order.${more}`
				: `This would explain what you measured.${more}`;
		case 'unexplained':
			return suspects.length > 0
				? `No single fault explains all of it: there may be two. Put the likeliest right, then measure again.${more}`
				: `No single fault known here explains what you measured. Measure again, each lamp with all the others on.${more}`;
	}
}

/** One check a run, with rows to type readings into. `measured`: volts, as in `power.measured`; of other keys nothing is made. */
export function checkRuns(
	runs: readonly Run[],
	supply: Supply | null,
	fixtures: readonly Fixture[],
	measured: Measured
): RunCheck[] {
	if (!supply) return [];
	return runs.map((run): RunCheck => {
		const rows = rowsOf(run, fixtures, measured);
		const inspected = inspectedOf(run, supply, fixtures, measured);
		if (!inspected) {
			const says = 'The plan has no volts for this run: its circuit has to be put right first.';
			return { run: run.id, name: run.name, rows, verdict: 'none', says, suspicions: [] };
		}
		const found = diagnose(inspected);
		return {
			run: run.id,
			name: run.name,
			rows,
			verdict: found.verdict,
			says: verdictWords(found, rows),
			suspicions: found.suspects.map((suspect) => suspicionOf(suspect, { run, fixtures, inspected }))
		};
	});
}
