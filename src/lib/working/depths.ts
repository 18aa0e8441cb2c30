/** Workings at three depths, as blocks of lines, and blocks shared out over pages that a room can read. Pure. */
import { rules } from '../domain/shared/rules';
import { showWorking, type Shown } from '../domain/shared/show-working';
import { sources } from '../domain/shared/sources';
import { formatLength, type UnitSystem } from '../domain/shared/units';
import type { Working } from '../domain/shared/working';

export const depths = ['line', 'steps', 'all', 'why-not'] as const;
export type Depth = (typeof depths)[number];
export const depthWords: Record<Depth, string> = {
	line: 'The line',
	steps: 'The steps',
	all: 'Everything',
	'why-not': 'Why not'
};
export interface WhyNot {
	/** Id of a rule. */
	rule: string;
	words: string;
}
export interface Block {
	label: string;
	/** How deep in the tree: 0 for a figure that was asked for. */
	level: number;
	/** Which input of which figure this is: `A in “Saved by LED lamps”`. */
	within: string | null;
	rule: string | null;
	expression: string | null;
	/** The arithmetic with numbers put in, and what it gives. */
	sum: {
		line: string;
		sign: '=' | 'comes near';
		result: string;
		/** A length in feet and inches, where that is what the class measures in. */
		also: string | null;
	} | null;
	inputs: string[];
	source: string | null;
}
const sourceOf = (id: string): string => Object.values(sources).find((source) => source.id === id)?.text ?? id;
const titleOf = (id: string): string => Object.values(rules).find((rule) => rule.id === id)?.title ?? id;
const plain = { level: 0, within: null, rule: null, expression: null, sum: null, inputs: [], source: null };

const sumOf = (working: Working, { line, holds, result }: Shown, units: UnitSystem): Block['sum'] => {
	const also = units === 'feet' && working.unit === 'm' ? formatLength(working.value, units) : null;
	return { line, sign: holds ? '=' : 'comes near', result, also };
};
const lineOf = (working: Working, units: UnitSystem, within: string | null = null): Block => ({
	...plain,
	label: working.label,
	within,
	sum: sumOf(working, showWorking(working, units), units)
});
function wholeOf(working: Working, units: UnitSystem, level: number, within: string | null): Block[] {
	const shown = showWorking(working, units);
	const block: Block = {
		label: working.label,
		level,
		within,
		rule: working.rule,
		expression: working.expression === shown.line ? null : working.expression,
		sum: sumOf(working, shown, units),
		inputs: shown.inputs,
		source: sourceOf(working.source)
	};
	const inner = working.inputs.flatMap(({ from, symbol }) =>
		from ? wholeOf(from, units, level + 1, withinOf(symbol, working)) : []
	);
	return [block, ...inner];
}
const withinOf = (symbol: string, { label }: Working): string => `${symbol} in “${label}”`;
/** What comes first in reckoning comes first: inputs before what is made of them. */
const inTurn = (working: Working, units: UnitSystem, within: string | null = null): Block[] => [
	...working.inputs.flatMap(({ from, symbol }) => (from ? inTurn(from, units, withinOf(symbol, working)) : [])),
	lineOf(working, units, within)
];
const sameSum = (a: Block, b: Block): boolean =>
	a.label === b.label && a.sum?.line === b.sum?.line && a.sum?.result === b.sum?.result;
const once = (blocks: readonly Block[]): Block[] =>
	blocks.filter((block, i) => blocks.findIndex((other) => sameSum(block, other)) === i);

/** The workings at a depth: their lines; every step in the order of reckoning; the whole tree with rules, inputs and sources. */
export function blocksOf(
	workings: readonly Working[],
	depth: Depth,
	units: UnitSystem,
	whyNot: readonly WhyNot[]
): Block[] {
	switch (depth) {
		case 'line':
			return workings.map((working) => lineOf(working, units));
		case 'steps':
			return once(workings.flatMap((working) => inTurn(working, units)));
		case 'all':
			return once(workings.flatMap((working) => wholeOf(working, units, 0, null)));
		case 'why-not':
			return whyNot.map(({ rule, words }) => ({ ...plain, label: titleOf(rule), rule: words }));
	}
}

/** Letters and figures on a line of a projector at the size that a room can read, and lines under the heading: measured at 1280 × 720, with some to spare. */
const letters = 92;
const figures = 76;
export const roomLines = 12.5;
/** Inputs as short as this stand two to a line where they are many. */
const half = 42;
const many = 4;
export const inTwo = (inputs: readonly string[]): boolean =>
	inputs.length > many && inputs.every((input) => input.length <= half);
const linesOf = (text: string | null, room = letters): number => (text === null ? 0 : Math.ceil(text.length / room));
const inputsHigh = (inputs: readonly string[]): number =>
	inTwo(inputs) ? Math.ceil(inputs.length / 2) : inputs.reduce((sum, input) => sum + linesOf(input, figures), 0);
const headOf = ({ label, within, rule, expression, sum }: Block): number =>
	linesOf(within ? `${label}, ${within}` : label) +
	linesOf(rule) +
	linesOf(expression, figures) +
	(sum ? linesOf(`${sum.line} ${sum.sign} ${sum.result} ${sum.also ?? ''}`, figures) : 0);
/** Lines that a block takes, its gap included. */
export const heightOf = (block: Block): number =>
	headOf(block) + inputsHigh(block.inputs) + linesOf(block.source) + 0.5;

/** A block that is too tall, its inputs shared out: the first part has the rule and the sum, the last the source. */
function parted(block: Block, most: number): Block[] {
	if (heightOf(block) <= most || block.inputs.length < 2) return [block];
	const parts: Block[] = [{ ...block, inputs: [], source: null }];
	const rest = { ...plain, label: `${block.label}, further`, level: block.level, within: block.within };
	for (const input of block.inputs) {
		const last = parts.at(-1)!;
		const fits = heightOf({ ...last, inputs: [...last.inputs, input] }) <= most;
		if (fits) last.inputs.push(input);
		else parts.push({ ...rest, inputs: [input] });
	}
	const last = parts.at(-1)!;
	if (heightOf(last) + linesOf(block.source) <= most) last.source = block.source;
	else parts.push({ ...rest, inputs: [], source: block.source });
	return parts;
}
/** Blocks by page, each page of at most so many lines where a single block does not take more. Nothing is left out. */
export function pagesOf(blocks: readonly Block[], most: number = roomLines): Block[][] {
	const pages: Block[][] = [];
	let left = 0;
	for (const block of blocks.flatMap((one) => parted(one, most))) {
		const height = heightOf(block);
		if (pages.length === 0 || height > left) {
			pages.push([block]);
			left = most - height;
		} else {
			pages.at(-1)!.push(block);
			left -= height;
		}
	}
	return pages;
}
