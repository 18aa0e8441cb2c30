/**
 * Reads photometric files of ANSI/IES LM-63, type C photometry with TILT=NONE. Editions 1986 (no version line), 1991, 1995, 2002
 * and 2019. Sources: the text of LM-63-2002 and of the 1986 file layout in stored web copies (seen), a paper of 1998 on reading the
 * older editions and open readers (seen second-hand); what 2019 changed, and the 90 to 270 planes of 1995, second-hand.
 */
import type { CandelaTable, Symmetry } from '../table';
import { closed, finish } from './finish';
import { headOf, type Head } from './lm63-head';
import { Tokens } from './lm63-tokens';
import { ascending, limits, listOf, reading, Refusal, type FileRead, type FileResult } from './reading';

/** What an LM-63 file says, or the line and field that are wrong. Never throws on bad input. Text of at most 2 MB, 400 × 400 angles. */
export const readLm63 = (text: string): FileResult => reading(text, read);

interface Numbers {
	lamps: number;
	lumens: number;
	multiplier: number;
	verticals: number;
	horizontals: number;
	opening: { width: number; length: number; height: number };
	/** Factor that the edition wants its candela multiplied by, `multiplier` included. */
	factor: number;
	watts: number;
}

function read(lines: string[]): FileRead {
	const head = headOf(lines);
	const notes = [...head.notes];
	const tokens = new Tokens(lines, head.next);
	const numbers = numbersOf(tokens, head, notes);
	const vertical = verticalOf(tokens, numbers.verticals);
	const { horizontal, symmetry } = horizontalOf(tokens, numbers.horizontals);
	const { candela, line } = candelaOf(tokens, vertical, horizontal, numbers.factor);
	const left = tokens.rest();
	if (left > 0) notes.push(`${left} ${left === 1 ? 'value' : 'values'} after the last candela were left unread.`);
	const table: CandelaTable = closed({ vertical, horizontal, symmetry, candela }, notes);
	const absolute = numbers.lumens < 0;
	return finish(
		table,
		{
			format: 'LM-63',
			edition: head.edition,
			name: head.name,
			maker: head.keyword('MANUFAC'),
			lamp: head.keyword('LAMP') || head.keyword('LAMPCAT'),
			// The standard states the lumens of lamps, not those of the luminaire.
			statedLumens: null,
			lampLumens: absolute ? null : numbers.lamps * numbers.lumens,
			lamps: numbers.lamps,
			watts: numbers.watts > 0 ? numbers.watts : null,
			opening: numbers.opening
		},
		notes,
		line
	);
}

const photometricTypes: Record<number, string> = { 2: 'B', 3: 'A' };

function numbersOf(tokens: Tokens, head: Head, notes: string[]): Numbers {
	const lamps = tokens.number('number of lamps', { min: 1, max: 1000, whole: true });
	const lumens = tokens.number('lumens per lamp', { min: -1 });
	if (lumens <= 0 && lumens !== -1)
		throw new Refusal(tokens.line, 'lumens per lamp', 'it has to be more than 0, or −1 for absolute photometry.');
	const multiplier = tokens.number('candela multiplier', { min: 0, above: true });
	const verticals = tokens.number('number of vertical angles', { min: 2, max: limits.angles, whole: true });
	const horizontals = tokens.number('number of horizontal angles', { min: 1, max: limits.angles, whole: true });
	const type = tokens.number('photometric type', { min: 1, max: 3, whole: true });
	if (type !== 1)
		throw new Refusal(
			tokens.line,
			'photometric type',
			`it is type ${photometricTypes[type]}, made for floodlights and headlamps; only type C (1) can be read. Ask the maker for the type C file.`
		);
	const unit = tokens.number('units type', { min: 1, max: 2, whole: true }) === 1 ? 0.3048 : 1;
	const [width, length, height] = ['width', 'length', 'height'].map(
		(name) => tokens.number(`${name} of the luminous opening`) * unit
	) as [number, number, number];
	const ballast = tokens.number('ballast factor', { min: 0, above: true });
	const factor = multiplier * ballast * secondFactor(tokens, head, notes);
	const watts = tokens.number('input watts', { min: 0 });
	return { lamps, lumens, multiplier, verticals, horizontals, opening: { width, length, height }, factor, watts };
}

/**
 * The number after the ballast factor. Up to 1995 it is the ballast-lamp photometric factor and multiplies the candela; in 2002 it is
 * kept for future use and in 2019 it says how the file was made, digit by digit after the point (1.x1xxx: simulated).
 */
function secondFactor(tokens: Tokens, { edition }: Head, notes: string[]): number {
	if (edition === '2019') {
		const made = tokens.number('file generation type', { min: 0 });
		if (Math.floor(made * 100 + 1e-6) % 10 === 1) notes.push('Its light was simulated, not measured.');
		return 1;
	}
	if (edition === '2002') {
		const future = tokens.number('future use');
		if (future !== 1) notes.push(`Its field for future use holds ${future} instead of 1; it was not used.`);
		return 1;
	}
	return tokens.number('ballast-lamp photometric factor', { min: 0, above: true });
}

function verticalOf(tokens: Tokens, count: number): number[] {
	const field = 'vertical angles';
	const { values, lines } = listOf(tokens, count, field, { min: 0, max: 180 });
	ascending(values, lines, field);
	if (values[0] !== 0 && values[0] !== 90)
		throw new Refusal(lines[0]!, field, `they begin at ${values[0]}°; type C begins at 0° or 90°.`);
	if (values.at(-1) !== 90 && values.at(-1) !== 180)
		throw new Refusal(lines.at(-1)!, field, `they end at ${values.at(-1)}°; type C ends at 90° or 180°.`);
	return values;
}

function horizontalOf(tokens: Tokens, count: number): { horizontal: number[]; symmetry: Symmetry } {
	const field = 'horizontal angles';
	const { values, lines } = listOf(tokens, count, field, { min: 0, max: 360 });
	ascending(values, lines, field);
	const [first, last] = [values[0]!, values.at(-1)!];
	if (first === 90 && last === 270) return { horizontal: values, symmetry: 'bilateral-90' };
	if (first !== 0)
		throw new Refusal(lines[0]!, field, `they begin at ${first}°; type C begins at 0°, or runs from 90° to 270°.`);
	const symmetry: Symmetry | null =
		last === 0 ? 'rotational' : last === 90 ? 'quadrant' : last === 180 ? 'bilateral' : last > 180 ? 'none' : null;
	if (!symmetry) throw new Refusal(lines.at(-1)!, field, `they end at ${last}°; type C ends at 0°, 90°, 180° or 360°.`);
	return { horizontal: values, symmetry };
}

function candelaOf(
	tokens: Tokens,
	vertical: number[],
	horizontal: number[],
	factor: number
): { candela: Float64Array; line: number } {
	const candela = new Float64Array(vertical.length * horizontal.length);
	let line = 0;
	for (let i = 0; i < candela.length; i++) {
		const value = tokens.number(() => {
			const plane = Math.floor(i / vertical.length);
			return `candela at horizontal ${horizontal[plane]}°, vertical ${vertical[i % vertical.length]}°`;
		}, candelaRange);
		if (i === 0) line = tokens.line;
		candela[i] = value * factor;
	}
	return { candela, line };
}
const candelaRange = { min: 0 } as const;
