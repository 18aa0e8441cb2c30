/** What an assessed plan breaks: for each run and limit the worst lamp or cable, the nominal case before the corners. */
import { rules } from '../shared/rules';
import { cableAmps, rounding, type Assessed, type SolvedRun } from './assess';
import type { ChoiceProblem, ChooseOptions, RunShape, Solution } from './types';

export type Broken = Omit<ChoiceProblem, 'cures'>;
export const isHard = ({ code, cornerOnly }: Broken): boolean => code !== 'uneven' && !cornerOnly;
const of = (run: SolvedRun): Solution[] => [run.nominal, run.low, run.high];

/** The lamp furthest below or above its window in one case; null where none is. */
function worstLamp({ loads }: RunShape, solution: Solution, isLow: boolean) {
	if (!solution.ok) return null;
	let worst: { load: string; volts: number; limit: number } | null = null;
	let most = rounding;
	for (const { id, node, load } of loads) {
		if (load.kind === 'resistance') continue;
		const volts = solution.volts[node]!;
		const limit = isLow ? load.minVolts : load.maxVolts;
		const beyond = isLow ? limit - volts : volts - limit;
		if (beyond <= most) continue;
		worst = { load: id, volts, limit };
		most = beyond;
	}
	return worst;
}

function lampProblems(run: SolvedRun): Broken[] {
	const found: Broken[] = [];
	const all = of(run);
	for (const code of ['lamp-low', 'lamp-high'] as const) {
		for (let index = 0; index < all.length; index++) {
			const worst = worstLamp(run.shape, all[index]!, code === 'lamp-low');
			if (!worst) continue;
			const { load, volts, limit } = worst;
			found.push({ code, run: run.shape.id, load, value: volts, limit, cornerOnly: index > 0 });
			break;
		}
	}
	return found;
}

function runProblems(run: SolvedRun): Broken[] {
	const id = run.shape.id;
	const failed = of(run).findIndex((solution) => !solution.ok);
	const failure = failed < 0 ? null : of(run)[failed]!;
	const found: Broken[] = [];
	if (failure && !failure.ok) {
		const load = run.shape.loads.find(({ node }) => node === failure.at)?.id ?? null;
		found.push({ code: 'no-solution', run: id, load, value: null, limit: null, cornerOnly: failed > 0 });
	}
	found.push(...lampProblems(run));
	const hot = of(run).findIndex((solution) => cableAmps(solution) > run.ampsLimit + rounding);
	if (hot >= 0)
		found.push({
			code: 'cable-amps',
			run: id,
			load: null,
			value: cableAmps(of(run)[hot]!),
			limit: run.ampsLimit,
			cornerOnly: hot > 0
		});
	return found;
}

/** Lamps that should look alike and do not, nominal case: by group, named by the lamp with the least volts. */
function unevenProblems(runs: SolvedRun[]): Broken[] {
	const groups = new Map<string, { run: string; load: string; volts: number }[]>();
	for (const { shape, nominal } of runs)
		for (const { id, node, alike } of shape.loads)
			if (alike !== null && nominal.ok) {
				const group = groups.get(alike) ?? [];
				group.push({ run: shape.id, load: id, volts: nominal.volts[node]! });
				groups.set(alike, group);
			}
	const limit = rules['cable.volts'].figures.alike;
	return [...groups.values()].flatMap((lamps): Broken[] => {
		const lowest = lamps.reduce((a, b) => (b.volts < a.volts ? b : a));
		const value = lamps.reduce((top, { volts }) => Math.max(top, volts), 0) - lowest.volts;
		return value > limit + rounding
			? [{ code: 'uneven', run: lowest.run, load: lowest.load, value, limit, cornerOnly: false }]
			: [];
	});
}

function supplyProblems(
	{ runs, transformer, voltAmps, mostVoltAmps, secondariesFit }: Assessed,
	options: ChooseOptions
): Broken[] {
	const found: Broken[] = runs
		.filter(({ tapVolts }) => !transformer.taps.includes(tapVolts))
		.map(({ shape, tapVolts }) => ({
			code: 'no-tap',
			run: shape.id,
			load: null,
			value: tapVolts,
			limit: null,
			cornerOnly: false
		}));
	if (!secondariesFit) {
		const totals = (pick: (run: SolvedRun) => Solution) => {
			const sums = Array.from({ length: Math.max(1, transformer.secondaries) }, () => 0);
			for (const run of runs) {
				const solution = pick(run);
				if (solution.ok) sums[run.secondary]! += solution.sourceAmps;
			}
			return sums;
		};
		const nominal = totals((run) => run.nominal);
		const most = Math.max(...nominal, ...totals((run) => run.low), ...totals((run) => run.high));
		const full = nominal.indexOf(Math.max(...nominal));
		const heaviest = runs
			.filter(({ secondary }) => secondary === full)
			.reduce<SolvedRun | null>((a, b) => (!a || amps(b) > amps(a) ? b : a), null);
		const limit = options.secondaryAmps;
		const cornerOnly = nominal.every((sum) => sum <= limit + rounding);
		found.push({
			code: 'secondary-amps',
			run: heaviest?.shape.id ?? null,
			load: null,
			value: cornerOnly ? most : nominal[full]!,
			limit,
			cornerOnly
		});
	}
	const limit = options.loadLimit * transformer.voltAmps;
	const room = 1 + options.growth;
	if (mostVoltAmps * room > limit + rounding) {
		const cornerOnly = voltAmps * room <= limit + rounding;
		found.push({
			code: 'transformer-load',
			run: null,
			load: null,
			value: (cornerOnly ? mostVoltAmps : voltAmps) * room,
			limit,
			cornerOnly
		});
	}
	return found;
}
const amps = ({ nominal }: SolvedRun): number => (nominal.ok ? nominal.sourceAmps : 0);

/** Hard ones first, then corners, then looks. `value` and `limit` of transformer-load hold the room for growth. */
export function judge(plan: Assessed, options: ChooseOptions): Broken[] {
	const all = [...plan.runs.flatMap(runProblems), ...supplyProblems(plan, options), ...unevenProblems(plan.runs)];
	const rank = (problem: Broken) => (isHard(problem) ? 0 : problem.cornerOnly ? 1 : 2);
	return all.toSorted((a, b) => rank(a) - rank(b));
}

/** The group of lamps that a load is to be alike with. */
export const groupOf = ({ runs }: Assessed, load: string | null): string | null => {
	for (const { shape } of runs) for (const one of shape.loads) if (one.id === load) return one.alike;
	return null;
};
/** Names a problem apart from its figures; `run` stands in for the problem's own run. */
export const nameOf = (plan: Assessed, { code, load, run: own }: Broken, run = own): string =>
	code === 'uneven' ? `uneven ${groupOf(plan, load)}` : `${code} ${run}`;
/** How far beyond its limit; 0 where there is no figure. */
export const excessOf = ({ value, limit }: Broken): number =>
	value === null || limit === null ? 0 : Math.abs(value - limit);
