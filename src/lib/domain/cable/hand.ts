/** The circuit as the person has set it (`power.circuit`): which lamps share a run, and what of each run is held. */
import { sizeName, usualSizes, type CableSize, type CableSystem, type Feed } from '../circuit';
import { transformers } from '../shared/catalogue';
import type { Assumption, Finding } from '../shared/findings';
import type { Fixture } from '../placement';
import type { CircuitChoice, RunChoice, Yard } from '../yard';
import type { HandSet } from './types';
import { called, fedWords, listed } from './wording';

export interface HandRun {
	id: string;
	choice: RunChoice;
	/** Terminals, in their order. */
	members: number[];
	/** What can be held as asked. */
	size: CableSize | null;
	tapVolts: number | null;
	feed: Feed | null;
}
export interface Hand {
	/** Those that feed a lamp, in the person's order. */
	runs: HandRun[];
	/** Terminals that no run by hand feeds. */
	rest: number[];
	/** Ids of all runs by hand, those without a lamp too: the plan's own bear others. */
	ids: ReadonlySet<string>;
}

/** Sizes that a cable in hand may have: those usually sold, and the thinnest of rule cable.fuse. */
export const sizesKnown = (system: CableSystem): CableSize[] => [
	{ system, size: system === 'awg' ? 18 : 1 },
	...usualSizes(system)
];

export const runChoices = (yard: Yard): readonly RunChoice[] => yard.power.circuit?.runs ?? [];

/** The model of the usual list nearest to the rating set by hand; null where none is. */
export function handTransformer({ power }: Yard): (typeof transformers)[number] | null {
	const wanted = power.circuit?.transformerVoltAmps;
	if (wanted === undefined) return null;
	const off = (voltAmps: number) => Math.abs(voltAmps - wanted);
	return transformers.reduce((best, model) => (off(model.voltAmps) < off(best.voltAmps) ? model : best));
}

/**
 * Lamps shared out as the person has it: each to the first run that names it; what nobody names to the first run that names
 * none, or else to the plan. A run without lamps is left out.
 */
export function handRuns(
	yard: Yard,
	fixtures: readonly Fixture[],
	reached: readonly number[],
	system: CableSystem
): Hand {
	const choices = runChoices(yard);
	const terminal = new Map(reached.map((one) => [fixtures[one - 1]!.id, one]));
	const ids = new Set<string>();
	const taken = new Set<number>();
	const byRun = choices.map(({ lamps = [] }) =>
		lamps.flatMap((id) => {
			const one = terminal.get(id);
			if (one === undefined || taken.has(one)) return [];
			taken.add(one);
			return [one];
		})
	);
	const left = reached.filter((one) => !taken.has(one));
	const catchAll = choices.findIndex(({ lamps }) => lamps === undefined);
	if (catchAll >= 0) byRun[catchAll] = left;
	const runs = choices.flatMap((choice, k): HandRun[] => {
		let { id } = choice;
		for (let n = 2; ids.has(id); n++) id = `${choice.id}-${n}`;
		ids.add(id);
		const members = byRun[k]!.toSorted((a, b) => a - b);
		const size = sizesKnown(system).find((one) => one.size === choice.size) ?? null;
		const tapVolts = choice.tap ?? null;
		return members.length > 0 ? [{ id, choice, members, size, tapVolts, feed: choice.feed ?? null }] : [];
	});
	return { runs, rest: catchAll >= 0 ? [] : left, ids };
}

/**
 * Places of all runs, hand-set ones first in their order; but one whose id holds a number (`run-2`) keeps that place while
 * there are so many runs, so that a run set by an advice keeps its name. Null: a run of the plan's own.
 */
export function inPlaces<T extends { id: string }>(hand: readonly T[], own: number): (T | null)[] {
	const places: (T | null)[] = Array.from({ length: hand.length + own }, () => null);
	const homeless = hand.filter((run) => {
		const place = Number(/^run-(\d+)$/.exec(run.id)?.[1] ?? 0) - 1;
		if (place < 0 || place >= places.length || places[place] !== null) return true;
		places[place] = run;
		return false;
	});
	for (const run of homeless) places[places.indexOf(null)] = run;
	return places;
}

/** Id of the plan's own run in a place; a number beyond all `count` runs where a run by hand has taken it. */
export function ownId(place: number, count: number, taken: ReadonlySet<string>): string {
	let number = place + 1;
	while (taken.has(`run-${number}`)) number += count;
	return `run-${number}`;
}

/** What of a run was set by hand and could be kept. */
export const heldBy = ({ choice, size, tapVolts }: HandRun, feed: Feed): HandSet[] => [
	...(choice.lamps === undefined ? [] : (['lamps'] as const)),
	...(size === null ? [] : (['cable'] as const)),
	...(tapVolts === null ? [] : (['tap'] as const)),
	...(choice.feed === undefined || choice.feed !== feed ? [] : (['feed'] as const))
];

const circuitOf = ({ power }: Yard): CircuitChoice => power.circuit ?? {};

/** Lamps named that are no longer there; the choice is kept, in case they come back. */
export function handAssumptions(
	yard: Yard,
	placed: readonly Fixture[],
	runs: readonly HandRun[],
	nameOf: NameOf
): Assumption[] {
	const there = new Set(placed.map(({ id }) => id));
	const all = (circuitOf(yard).runs ?? []).flatMap((choice): Assumption[] => {
		const gone = (choice.lamps ?? []).filter((id) => !there.has(id)).length;
		const run = runs.find((one) => one.choice === choice);
		if (!run && gone === 0 && (choice.lamps ?? []).length === 0) return [];
		const about = { kind: 'run', id: run?.id ?? choice.id };
		const name = run ? called(nameOf(run.id)) : `The run you called ${choice.id}`;
		const lights = gone === 1 ? 'a light that is' : `${gone} lights that are`;
		const message = run
			? `${name} was set up with ${lights} no longer there. The rest of it stands, and the choice is kept.`
			: `${name} has no light left to feed, so it is not laid. The choice is kept.`;
		return run && gone === 0 ? [] : [{ path: 'power.circuit', message, about }];
	});
	return all;
}
type NameOf = (id: string) => string;

/** What was set by hand and cannot be had. `laid`: by run id, how it is fed. */
export function handFindings(
	yard: Yard,
	{ runs }: Hand,
	system: CableSystem,
	laid: ReadonlyMap<string, Feed>,
	nameOf: NameOf
): Finding[] {
	const found: Finding[] = [];
	const say = (id: string, message: string, kind = 'run') =>
		found.push({ code: 'cable.hand-unmet', rank: 'look', message, about: { kind, id }, rule: null });
	for (const run of runs) {
		const { size, feed } = run.choice;
		const name = called(nameOf(run.id));
		if (size !== undefined && run.size === null) {
			const known = sizesKnown(system).map((one) => sizeName(one));
			say(
				run.id,
				`${name} cannot be of ${sizeName({ system, size })}: cable comes in ${listed(known)}. The plan chose for you.`
			);
		}
		if (feed !== undefined && feed !== laid.get(run.id)) {
			say(
				run.id,
				`${name} cannot be ${fedWords[feed]}: ${run.members.length < 3 ? 'it has too few lights for that' : 'there is no way for the cables'}. The plan chose for you.`
			);
		}
	}
	const wanted = circuitOf(yard).transformerVoltAmps;
	const model = handTransformer(yard);
	if (model && model.voltAmps !== wanted)
		say(
			'transformer',
			`There is no ${wanted} VA transformer on the list of usual sizes. The plan takes the one of ${model.voltAmps} VA.`,
			'power'
		);
	return found;
}
