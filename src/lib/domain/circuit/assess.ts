/** A whole plan solved: transformer, and for each run its size and tap, in the nominal case and both corners. */
import { casesOf, runNetwork, type Case, type Cases } from './corners';
import { ampsLimit } from './conductors';
import { markedVoltAmps } from './lamps';
import { assignSecondaries } from './secondaries';
import { solve } from './solve';
import { solveTogether, terminalFraction } from './transformer';
import type { CableSize, ChooseOptions, RunShape, Solution, TransformerOption } from './types';

export interface Pick {
	shape: RunShape;
	size: CableSize;
	tapVolts: number;
}
export interface SolvedRun extends Pick {
	ampsLimit: number;
	nominal: Solution;
	low: Solution;
	high: Solution;
	secondary: number;
}
export interface Assessed {
	transformer: TransformerOption;
	runs: SolvedRun[];
	/** Drawn at the terminals, nominal and most over the cases; a run without a solution counts as its lamps are marked. */
	voltAmps: number;
	mostVoltAmps: number;
	secondariesFit: boolean;
}

/** Slack on comparisons of volts and amperes with their limits, for rounding only. */
export const rounding = 1e-9;

export const sizeLimit = (size: CableSize, options: ChooseOptions): number =>
	Math.min(ampsLimit(size), options.secondaryAmps);
export const markedTotal = (shape: RunShape): number =>
	shape.loads.reduce((sum, { load }) => sum + markedVoltAmps(load), 0);

/** Most amperes in any one cable of the run. */
export const cableAmps = (solution: Solution): number =>
	solution.ok ? solution.segmentAmps.reduce((most, amps) => Math.max(most, Math.abs(amps)), 0) : 0;

/** Terminal volts per unit of tap in one case. Runs that cannot work even by themselves are left out. */
function settleCase(picks: Pick[], transformer: TransformerOption, one: Case): { u: number; solutions: Solution[] } {
	const networks = picks.map(({ shape, size, tapVolts }) => runNetwork(shape, size, one, tapVolts * one.mains));
	const all = networks.map((network, k) => ({ network, tapVolts: picks[k]!.tapVolts }));
	const at = (u: number) => networks.map((network, k) => solve({ ...network, sourceVolts: picks[k]!.tapVolts * u }));
	const joint = solveTogether(all, transformer, one.mains);
	if (joint) return joint;
	const alone = all.filter(({ network }) => solve(network).ok);
	let u = alone.length < all.length ? terminalFraction(alone, transformer, one.mains) : null;
	if (u === null) {
		// Each works by itself, but not all on this transformer: the sag of the marked load tells which give way.
		const marked = picks.reduce((sum, { shape }) => sum + markedTotal(shape), 0);
		u = Math.max(one.mains / 2, one.mains - (transformer.regulation * marked) / transformer.voltAmps);
		const solutions = at(u);
		const message = 'The transformer cannot hold its volts under this load. Use a larger one.';
		return {
			u,
			solutions: solutions.map((s) => (s.ok ? { ok: false, why: 'no-solution', at: 0, message } : s))
		};
	}
	return { u, solutions: at(u) };
}

export function assess(
	picks: Pick[],
	transformer: TransformerOption,
	options: ChooseOptions,
	cases: Cases = casesOf(options)
): Assessed {
	const [nominal, low, high] = [cases.nominal, cases.low, cases.high].map((one) =>
		settleCase(picks, transformer, one)
	) as [ReturnType<typeof settleCase>, ReturnType<typeof settleCase>, ReturnType<typeof settleCase>];
	const drawn = ({ solutions }: typeof nominal) =>
		solutions.reduce((sum, s, k) => sum + (s.ok ? s.sourceAmps * s.volts[0]! : markedTotal(picks[k]!.shape)), 0);
	const most = picks.map((_, k) =>
		Math.max(...[nominal, low, high].map(({ solutions }) => (solutions[k]!.ok ? solutions[k]!.sourceAmps : 0)))
	);
	const secondaries = assignSecondaries(most, transformer.secondaries, options.secondaryAmps);
	return {
		transformer,
		runs: picks.map((pick, k) => ({
			...pick,
			ampsLimit: sizeLimit(pick.size, options),
			nominal: nominal.solutions[k]!,
			low: low.solutions[k]!,
			high: high.solutions[k]!,
			secondary: secondaries.at[k]!
		})),
		voltAmps: drawn(nominal),
		mostVoltAmps: Math.max(drawn(nominal), drawn(low), drawn(high)),
		secondariesFit: secondaries.fits
	};
}
