import type { Run } from '../cable';
import type { Fixture } from '../placement';
import { lengthOf } from './packing';
import type { Pull } from './pulls';
import type { CutUp } from './rolls';
import type { CableCut, CutRoll } from './types';

/** A node as written on the drawing. */
function nodeName(run: Run, id: string, fixtures: readonly Fixture[]): string {
	const index = run.nodes.findIndex((node) => node.id === id);
	const fixture = run.nodes[index]?.fixture;
	if (index === 0) return 'transformer';
	return fixture ? (fixtures.find((one) => one.id === fixture)?.label ?? fixture) : 'hub';
}
/** A pull as a piece: from its first place to its last. A leg longer than any roll begins or ends on the way. */
function cutOf(pull: Pull, runs: readonly Run[], fixtures: readonly Fixture[]): CableCut {
	const run = runs.find((one) => one.id === pull.run)!;
	const [first, last] = [pull.legs[0]!, pull.legs.at(-1)!];
	const isPart = [first, last].some((leg) => run.segments[leg.segment]!.length - leg.length > 1e-9);
	const part = isPart ? ', part of the way' : '';
	const what = `${run.name}, ${nodeName(run, first.from, fixtures)} to ${nodeName(run, last.to, fixtures)}${part}`;
	return { run: run.id, from: first.from, to: last.to, what, length: lengthOf(pull.legs) };
}

/**
 * Rolls of one size of cable and what is cut off each. `lines`: ids of the shopping list's lines by kind of roll.
 * Names are given by `numbered`, over all sizes.
 */
export const cutRolls = (
	rolls: readonly CutUp[],
	lines: readonly string[],
	cable: string,
	runs: readonly Run[],
	fixtures: readonly Fixture[]
): CutRoll[] =>
	rolls.map(({ kind, length, rest, cuts }) => ({
		item: kind === null ? 'cable-in-hand' : lines[kind]!,
		name: 'cable in hand',
		cable,
		length,
		cuts: cuts.map((pull) => cutOf(pull, runs, fixtures)),
		rest
	}));
/** Rolls bought are numbered through, so that a piece is asked for by the number of its roll. */
export function numbered(rolls: readonly CutRoll[]): CutRoll[] {
	let number = 0;
	return rolls.map((roll) => (roll.item === 'cable-in-hand' ? roll : { ...roll, name: `roll ${(number += 1)}` }));
}
