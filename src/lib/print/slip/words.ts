/** Lines of a slip in words. */
import { sizeName } from '../../domain/circuit';
import { cableLength } from '../../domain/kits';
import type { Needs, OwnedVerdict, ShelfLine, Solution } from '../../domain/kits/types';
import type { QuickAssumption } from '../../domain/quick/types';
import type { UnitSystem } from '../../domain/shared/units';

/** `P1 to P4, P6, T1`: lights that follow each other are taken together. Labels are a letter and a number. */
export function labelsInWords(labels: readonly string[]): string {
	const parsed = labels.map((label) => ({
		letter: label.replace(/\d+$/, ''),
		number: Number(/\d+$/.exec(label)?.[0])
	}));
	const spans: { letter: string; from: number; to: number }[] = [];
	for (const { letter, number } of parsed.toSorted((a, b) =>
		a.letter === b.letter ? a.number - b.number : a.letter < b.letter ? -1 : 1
	)) {
		const last = spans.at(-1);
		if (last?.letter === letter && last.to === number - 1) last.to = number;
		else spans.push({ letter, from: number, to: number });
	}
	const name = (letter: string, number: number) => `${letter}${Number.isNaN(number) ? '' : number}`;
	return spans
		.flatMap(({ letter, from, to }) =>
			to - from > 1
				? [`${name(letter, from)} to ${name(letter, to)}`]
				: to > from
					? [name(letter, from), name(letter, to)]
					: [name(letter, from)]
		)
		.join(', ');
}

/**
 * Which lights of the sketch `count` pieces of a line are for, by the products that were chosen: `P1 to P4`; `2 of P1 to P4` where other lines bring
 * the rest; empty where it holds none of them.
 */
export function servedBy(line: ShelfLine, count: number, { setup }: Solution, needs: Needs): string {
	const held = new Map<string, number>();
	for (const { product, count: each } of line.contents.fixtures)
		held.set(product, (held.get(product) ?? 0) + each * count);
	return [...held]
		.flatMap(([product, pieces]) => {
			const labels = needs.fixtures.flatMap((need, n) => (setup.products[n] === product ? need.labels : []));
			if (labels.length === 0) return [];
			const words = labelsInWords(labels);
			return [pieces < labels.length ? `${pieces} of ${words}` : words];
		})
		.join(', ');
}

export interface RunLine {
	name: string;
	words: string;
}
/** Run by run: what cable, how much of it, and the tap it hangs on. */
export const runLines = ({ setup, judged }: Solution, needs: Needs, units: UnitSystem): RunLine[] =>
	needs.runs.map(({ name, metres }, n) => {
		const [size, tap] = [setup.sizes[n], judged.taps[n]];
		const parts = [
			...(size ? [`${sizeName(size)} cable`] : []),
			cableLength(metres, units, true),
			...(tap === undefined ? [] : [`on the ${tap} V tap`])
		];
		return { name: `${name.charAt(0).toUpperCase()}${name.slice(1)}`, words: parts.join(', ') };
	});

const verdicts: Record<OwnedVerdict['verdict'], string> = { keep: 'Keep', reuse: 'Use again', replace: 'Replace' };
/** What becomes of what the customer has, one sentence a thing. */
export const ownedLine = ({ verdict, name, why, where }: OwnedVerdict): string =>
	`${verdicts[verdict]}: ${name}${where ? `, ${where}` : ''}. ${why}`;

/** What was made up about the yard, in one line. */
export function assumedLine(assumptions: readonly QuickAssumption[]): string {
	if (assumptions.length === 0) return 'Nothing of this yard was made up; measure all the same before you dig.';
	const many = assumptions.length === 1 ? 'One figure' : `${assumptions.length} figures`;
	return `Check at home: ${many} of this yard ${assumptions.length === 1 ? 'was' : 'were'} taken as usual, not measured. The code shows each one, and the plan follows when you change it.`;
}
