/** The needs' runs solved with given lamps, cable and transformer: what holds, what does not, and at which lamp. */
import { problemWords } from '../cable';
import {
	chooseBelow,
	chooseSupply,
	leastVoltAmps,
	type CableSize,
	type ChoiceProblem,
	type ChooseOptions,
	type ChosenRun,
	type Load,
	type RunShape,
	type TransformerOption
} from '../circuit';
import { rules } from '../shared/rules';
import { sentence } from './words';
import type { Judged, ShelfLamp, ShelfTransformer } from './types';

/** As the cable stage has them; what is here costs nothing, because all but the taps is held. */
const options: Omit<ChooseOptions, 'sizes' | 'transformers'> = {
	pricePerMetre: () => 0,
	temperatures: rules['cable.temperature'].figures,
	corners: rules['cable.corners'].figures,
	loadLimit: rules['supply.load'].figures.fraction,
	growth: 0,
	secondaryAmps: rules['supply.secondary'].figures.amps
};
/** Part of a transformer's rating that it may carry. */
export const loadLimit = options.loadLimit;
/** Volts the filament lamps of the trade are marked for: from memory. */
const ratedVolts = 12;
/** Slack on comparisons, for rounding only, volts. */
const rounding = 1e-9;

/** A lamp of the shelf as the circuit sees it. */
export const loadOfLamp = ({ source, watts, voltAmps, minVolts, maxVolts }: ShelfLamp): Load =>
	source === 'led'
		? { kind: 'led', voltAmps, minVolts, maxVolts }
		: { kind: 'halogen', watts, ratedVolts, minVolts, maxVolts };

/** Volt-amperes that the lamps of these runs draw at least, whatever volts they get. */
export const leastLoad = (shapes: readonly RunShape[]): number =>
	shapes.reduce((sum, { loads }) => loads.reduce((va, { load }) => va + leastVoltAmps(load), sum), 0);

/** Runs as they are to be tried. A run without a lamp is left alone. */
export interface Trial {
	runs: { name: string; shape: RunShape; size: CableSize }[];
	transformer: ShelfTransformer;
	/** By fixture id: how it is lettered. */
	labels: ReadonlyMap<string, string>;
}
type Lamp = Judged['lamps'][number];
type Problem = Omit<ChoiceProblem, 'cures'>;

const windowOf = (load: Load): { least: number; most: number } =>
	load.kind === 'resistance' ? { least: 0, most: Infinity } : { least: load.minVolts, most: load.maxVolts };

function lampsOf(run: ChosenRun, labels: Trial['labels']): Lamp[] {
	return run.lamps.map(({ id, volts, low, high }, k) => {
		const { least, most } = windowOf(run.shape.loads[k]!.load);
		return { fixture: id, label: labels.get(id) ?? id, volts, low, high, least, most };
	});
}
/** Volts inside its window in the worst case, below zero outside; null without a solution. */
export const roomOf = ({ volts, low, high, least, most }: Lamp): number | null =>
	volts === null || low === null || high === null
		? null
		: Math.min(volts - least, low - least, most - volts, most - high);

/** `T3, the lamp with least, then gets 10.4 V at the worst; it wants 9.0.` Empty without a solution. */
export function lowestWords({ lamps }: Pick<Judged, 'lamps'>): string {
	const known = lamps.flatMap(({ label, low, least }) => (low === null ? [] : [{ label, low, least }]));
	const lowest = known.toSorted((a, b) => a.low - a.least - (b.low - b.least))[0];
	if (!lowest) return '';
	const decimals = lowest.low.toFixed(1) === lowest.least.toFixed(1) ? 2 : 1;
	return `${lowest.label}, the lamp with least, then gets ${lowest.low.toFixed(decimals)} V at the worst; it wants ${lowest.least.toFixed(decimals)}.`;
}

/** How far a lamp is out of its window, and on which side: as built, or only in the worst case. */
function outside(
	lamp: Lamp,
	code: 'lamp-low' | 'lamp-high'
): { value: number; limit: number; isCorner: boolean } | null {
	const { volts, low, high, least, most } = lamp;
	if (volts === null) return null;
	const [limit, worst] = code === 'lamp-low' ? [least, low] : [most, high];
	const beyond = (value: number) => (code === 'lamp-low' ? limit - value : value - limit) > rounding;
	if (beyond(volts)) return { value: volts, limit, isCorner: false };
	return worst !== null && beyond(worst) ? { value: worst, limit, isCorner: true } : null;
}

interface Told {
	problem: Problem;
	/** It is to be weighed, and stops nothing. */
	isNote: boolean;
}
/**
 * By side of the window the lamp furthest out. A filament lamp's window is about as wide as the mains wander: out of it in the worst case
 * only is no reason against a purchase, as it is none against a plan.
 */
function lampProblems(run: ChosenRun, lamps: readonly Lamp[]): Told[] {
	return (['lamp-low', 'lamp-high'] as const).flatMap((code) => {
		const found = lamps.flatMap((lamp, k): (Told & { excess: number })[] => {
			const out = outside(lamp, code);
			if (!out) return [];
			const { value, limit, isCorner } = out;
			const isNote = isCorner && run.shape.loads[k]!.load.kind === 'halogen';
			const problem = { code, run: run.id, load: lamp.fixture, value, limit, cornerOnly: isCorner };
			return [{ problem, isNote, excess: Math.abs(value - limit) + (isNote ? 0 : 1000) + (isCorner ? 0 : 100) }];
		});
		const [worst] = found.toSorted((a, b) => b.excess - a.excess);
		return worst ? [worst] : [];
	});
}
const isOfLamps = ({ code }: Problem): boolean => code === 'lamp-low' || code === 'lamp-high';
/**
 * What is wrong as built before what is wrong in the worst case; but a transformer that is too small for the lamps alone, whatever the cable
 * takes, comes first: all else follows from it.
 */
const rankOf = ({ code, cornerOnly }: Problem, isTooSmall: boolean): number =>
	isTooSmall && code === 'transformer-load'
		? -1
		: (cornerOnly ? 2 : 0) + (code === 'no-solution' || code === 'bad-network' ? 0 : 1);

/** Marks what stands for a tap of a run without a lamp. */
const lowestTap = ({ taps }: ShelfTransformer): number => taps[0] ?? ratedVolts;

/** A trial as the circuit stage is asked: everything held but the taps. */
function posed({ runs, transformer }: Omit<Trial, 'labels'>) {
	const option: TransformerOption = { id: 'shelf', price: 0, ...transformer };
	const fed = runs.filter(({ shape }) => shape.loads.length > 0);
	const held = fed.map(({ shape, size }) => ({ shape, held: { size } }));
	const all: ChooseOptions = { ...options, sizes: fed.map(({ size }) => size), transformers: [option] };
	return { option, fed, held, all };
}
/**
 * Whether a trial would be ok, without what is wrong with it: of LED lamps a choice without any problem is asked for, which is given up
 * early where there is none. Null where filament lamps are in it: their worst cases are weighed by `solveTrial` alone.
 */
export function passesTrial(trial: Omit<Trial, 'labels'>): boolean | null {
	const { held, all, fed } = posed(trial);
	if (fed.some(({ shape }) => shape.loads.some(({ load }) => load.kind !== 'led'))) return null;
	if (leastLoad(fed.map(({ shape }) => shape)) > loadLimit * trial.transformer.voltAmps + rounding) return false;
	// All is free here, so any price stands for "whatever it costs".
	return chooseBelow(held, all, 1) !== null;
}

/**
 * Solves a trial exactly, nominal and in the worst cases (rule cable.corners), on the taps that serve it best. Ok where
 * every LED lamp is inside its window in all cases and every filament lamp as built, and neither cable nor secondary nor
 * transformer passes its limit in any.
 */
export function solveTrial({ runs, transformer, labels }: Trial): Judged {
	const { option, fed, held, all } = posed({ runs, transformer });
	const choice = chooseSupply(held, all);
	const byRun = choice.runs.map((run) => ({ run, lamps: lampsOf(run, labels) }));
	const lamps = byRun.flatMap((one) => one.lamps);
	const told: Told[] = [
		...choice.problems
			.filter((problem) => !isOfLamps(problem))
			.map((problem): Told => ({ problem, isNote: problem.code === 'uneven' })),
		...byRun.flatMap((one) => lampProblems(one.run, one.lamps))
	];
	const nameOf = new Map(runs.map(({ name, shape }) => [shape.id, name]));
	const named = [...labels].map(([id, label]) => ({ id, label }));
	const inWords = ({ problem }: Told): string =>
		sentence(problemWords(problem, { transformer: option }, named, nameOf.get(problem.run ?? '') ?? 'the circuit'));
	const limitVoltAmps = loadLimit * transformer.voltAmps;
	const isTooSmall = leastLoad(fed.map(({ shape }) => shape)) > limitVoltAmps;
	const problems = told
		.filter(({ isNote }) => !isNote)
		.toSorted((a, b) => rankOf(a.problem, isTooSmall) - rankOf(b.problem, isTooSmall))
		.map((one) => {
			const { code, load } = one.problem;
			const label = load === null ? null : (labels.get(load) ?? load);
			return { code, fixture: load, label, message: inWords(one) };
		});
	const rooms = lamps.map(roomOf);
	const taps = new Map(choice.runs.map(({ id, tapVolts }) => [id, tapVolts]));
	return {
		ok: problems.length === 0,
		lamps,
		taps: runs.map(({ shape }) => taps.get(shape.id) ?? lowestTap(transformer)),
		loadVoltAmps: choice.loadVoltAmps,
		limitVoltAmps,
		margin: rooms.reduce<number | null>(
			(least, room) => (least === null || room === null ? null : Math.min(least, room)),
			rooms.length > 0 ? Infinity : null
		),
		problems,
		notes: told.filter(({ isNote }) => isNote).map(inWords)
	};
}
