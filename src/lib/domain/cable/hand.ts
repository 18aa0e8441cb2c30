/** The circuit as the person has set it (`power.circuit`): which lamps share a run, and what of each run is held. */
import { sizeName, usualSizes, type CableSize, type CableSystem, type Feed } from '../circuit';
import { transformers } from '../shared/catalogue';
import type { Assumption, Finding } from '../shared/findings';
import type { Fixture } from '../placement';
import type { CircuitChoice, RunChoice, Yard } from '../yard';
import type { Draft } from './drafts';
import { drawnRun, type Fields, type Said } from './drawn';
import { lampsOfLinks, sortLinks, type Drawn, type Unused } from './drawn-links';
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
	/** Cables drawn between its terminals. */
	links: Drawn[];
	/** What they make of it; null where none is drawn, or none can be used. */
	drawn: Draft | null;
	/** What is to be said of the cables drawn, and those that are not used. */
	said: Said[];
	unused: Unused[];
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

/** Ids of the runs of choices, by place: one that is borne already gets a number. */
export function handIds(choices: readonly RunChoice[]): string[] {
	const ids = new Set<string>();
	for (const choice of choices) {
		let { id } = choice;
		for (let n = 2; ids.has(id); n++) id = `${choice.id}-${n}`;
		ids.add(id);
	}
	return [...ids];
}

/**
 * Lamps shared out as the person has it: each to the first run that lists it. Of those that none lists, a run without a list
 * feeds the ones that its links name, the first such run before the next; what is left goes to the first run without a list,
 * or else to the plan. So drawing cable for the only run takes no light from it, and a run that is given by its links alone is
 * fed as drawn beside one that feeds all the rest. A run without lamps is left out.
 */
export function handRuns(
	yard: Yard,
	fixtures: readonly Fixture[],
	reached: readonly number[],
	system: CableSystem
): Hand {
	const choices = runChoices(yard);
	const terminal = new Map(reached.map((one) => [fixtures[one - 1]!.id, one]));
	const lights = { placed: new Set(fixtures.map(({ id }) => id)), terminal };
	const ids = handIds(choices);
	const taken = new Set<number>();
	const take = (lamps: readonly string[]): number[] =>
		lamps.flatMap((id) => {
			const one = terminal.get(id);
			if (one === undefined || taken.has(one)) return [];
			taken.add(one);
			return [one];
		});
	const byRun = choices.map(({ lamps = [] }) => take(lamps));
	choices.forEach(({ lamps, links }, k) => {
		if (lamps === undefined) byRun[k] = take(lampsOfLinks(links));
	});
	const left = reached.filter((one) => !taken.has(one));
	const catchAll = choices.findIndex(({ lamps }) => lamps === undefined);
	if (catchAll >= 0) byRun[catchAll]!.push(...left);
	const runs = choices.flatMap((choice, k): HandRun[] => {
		const members = byRun[k]!.toSorted((a, b) => a - b);
		if (members.length === 0) return [];
		const size = sizesKnown(system).find((one) => one.size === choice.size) ?? null;
		const tapVolts = choice.tap ?? null;
		const { drawn: links, unused } = sortLinks(choice.links, members, lights);
		const held = { size, tapVolts, feed: choice.feed ?? null };
		return [{ id: ids[k]!, choice, members, ...held, links, unused, drawn: null, said: [] }];
	});
	return { runs, rest: catchAll >= 0 ? [] : left, ids: new Set(ids) };
}

/** With the runs that were drawn laid out over the ground. */
export const withDrawn = (hand: Hand, fields: Fields): Hand => ({
	...hand,
	runs: hand.runs.map((run) => {
		if (run.links.length === 0) return run;
		const { draft, said, unused } = drawnRun(run.members, run.links, fields);
		return { ...run, drawn: draft, said, unused: [...run.unused, ...unused] };
	})
});

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
export const heldBy = ({ choice, size, tapVolts, drawn }: HandRun, feed: Feed): HandSet[] => [
	...(choice.lamps === undefined ? [] : (['lamps'] as const)),
	...(size === null ? [] : (['cable'] as const)),
	...(tapVolts === null ? [] : (['tap'] as const)),
	...(choice.feed === undefined || choice.feed !== feed ? [] : (['feed'] as const)),
	...(drawn === null ? [] : (['route'] as const))
];

const circuitOf = ({ power }: Yard): CircuitChoice => power.circuit ?? {};

/** Lamps named that are no longer there, and runs that have none left; the choice is kept, in case they come back. */
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
		const { lamps = [], links = [] } = choice;
		if (!run && gone === 0 && lamps.length === 0 && links.length === 0) return [];
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
			const why =
				run.drawn !== null
					? 'its cables are laid as you drew them. Take those away, or the choice of where it is fed.'
					: `${run.members.length < 3 ? 'it has too few lights for that' : 'there is no way for the cables'}. The plan chose for you.`;
			say(run.id, `${name} cannot be ${fedWords[feed]}: ${why}`);
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
