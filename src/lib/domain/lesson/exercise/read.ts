/**
 * A layout as typed or pasted, one light a line: `path 3.2 1.5`, `tree 12 ft 6 in, 5 ft`, `transformer 9 0 0.45 60 VA`. Lengths by the project's own reader;
 * between two of them a comma, a semicolon, a tab, or a blank where only one reading is left.
 */
import { formatLengthFinely, type UnitSystem } from '../../shared/units';
import { readLength } from '../../shared/read-length';
import { limits } from '../../yard';
import type { Layout, LayoutLight, LayoutSupply, LightKind } from './types';

export type ReadLine =
	| { text: string; kind: 'blank' }
	| { text: string; kind: 'light'; light: LayoutLight }
	| { text: string; kind: 'supply'; supply: LayoutSupply }
	| { text: string; kind: 'problem'; message: string };

const words: Readonly<Record<string, LightKind | 'transformer'>> = {
	path: 'path',
	walk: 'path',
	tree: 'tree',
	uplight: 'tree',
	up: 'tree',
	drive: 'drive',
	mouth: 'drive',
	wall: 'wall',
	wash: 'wall',
	transformer: 'transformer',
	box: 'transformer'
};
/** No sheet has more lines, no line more signs. */
const [mostLines, longestLine] = [600, 200];
const range = { min: -limits.reach, max: limits.reach, signed: true };

const lengthOf = (text: string, units: UnitSystem): number | null => {
	const read = readLength(text, units, range);
	return read.ok ? read.metres : null;
};
const allRead = (parts: readonly string[], units: UnitSystem): number[] | null => {
	const read = parts.map((part) => lengthOf(part, units));
	return read.every((one) => one !== null) ? read : null;
};
/** All ways to cut a list into so many pieces that are not empty. */
function cuts(tokens: readonly string[], pieces: number): string[][] {
	if (pieces === 1) return tokens.length > 0 ? [[tokens.join(' ')]] : [];
	return tokens
		.slice(1)
		.flatMap((_, i) =>
			cuts(tokens.slice(i + 1), pieces - 1).map((rest) => [tokens.slice(0, i + 1).join(' '), ...rest])
		);
}
/** The lengths of a text, of which there are `least` to `most`; null where they cannot be told apart. */
function lengthsIn(text: string, units: UnitSystem, least: number, most: number): number[] | null {
	const parts = (/[;\t]/.test(text) ? text.split(/[;\t]/) : text.split(/,\s+|,$/)).map((part) => part.trim());
	const given = parts.filter((part) => part !== '');
	if (given.length > 1) return given.length >= least && given.length <= most ? allRead(given, units) : null;
	const tokens = text.trim().split(/\s+/);
	if (tokens.length > 12) return null;
	for (let pieces = least; pieces <= most; pieces += 1) {
		const found = cuts(tokens, pieces).flatMap((cut) => {
			const read = allRead(cut, units);
			return read ? [read] : [];
		});
		// As many lengths as there are numbers is what a person means who writes no unit.
		if (found.length === 1) return found[0]!;
		if (found.length > 1) return null;
	}
	return null;
}
const example = (units: UnitSystem) => (units === 'feet' ? '12 ft 6 in, 5 ft' : '3.2, 1.5');

function readSupply(rest: string, units: UnitSystem): LayoutSupply | string {
	const rated = /[\s,;]*\b(\d{1,5})\s*va\s*$/i.exec(rest);
	const lengths = lengthsIn(rated ? rest.slice(0, rated.index) : rest, units, 2, 3);
	if (!lengths)
		return `Write the transformer as: transformer ${example(units)}, ${units === 'feet' ? '18 in' : '0.45'}, 60 VA. The height and the size may be left out.`;
	return {
		along: lengths[0]!,
		out: lengths[1]!,
		height: lengths[2] ?? null,
		voltAmps: rated ? Number(rated[1]) : null
	};
}
function readLine(text: string, units: UnitSystem, number: number): ReadLine {
	const problem = (message: string): ReadLine => ({ text, kind: 'problem', message: `Line ${number}: ${message}` });
	const bare = text.replace(/^\s*\d{1,2}[.)]\s+/, '').trim();
	if (bare === '' || bare.startsWith('#')) return { text, kind: 'blank' };
	if (bare.length > longestLine) return problem('that is too long for one light.');
	const [, word = '', rest = ''] = /^([a-z]+)[\s,;:]*(.*)$/i.exec(bare) ?? [];
	const what = Object.hasOwn(words, word.toLowerCase()) ? words[word.toLowerCase()] : undefined;
	if (!what)
		return problem(
			`it begins with what is lit: path, tree, drive, wall or transformer. For example: path ${example(units)}`
		);
	if (what === 'transformer') {
		const supply = readSupply(rest, units);
		return typeof supply === 'string' ? problem(supply) : { text, kind: 'supply', supply };
	}
	const lengths = lengthsIn(rest, units, 2, 2);
	if (!lengths)
		return problem(
			`two lengths are wanted, along and out, with a comma between. For example: ${word} ${example(units)}`
		);
	return { text, kind: 'light', light: { kind: what, along: lengths[0]!, out: lengths[1]! } };
}

/** Line by line, as many as there are. Total for any text. */
export const readLines = (text: string, units: UnitSystem): ReadLine[] =>
	text
		.split(/\r\n|\r|\n/)
		.slice(0, mostLines)
		.map((line, index) => readLine(line, units, index + 1));
/** What the lines come to. Of two transformers the later holds. */
export function layoutOf(lines: readonly ReadLine[]): Layout {
	const lights = lines.flatMap((line) => (line.kind === 'light' ? [line.light] : []));
	const supply = lines.findLast((line) => line.kind === 'supply');
	return { lights, supply: supply?.kind === 'supply' ? supply.supply : null };
}

/** A length as it is read again: metres without a unit, feet and inches with theirs. */
export const writeLength = (metres: number, units: UnitSystem): string =>
	units === 'feet' ? formatLengthFinely(metres, units).replace('−', '-') : String(Number(metres.toFixed(3)) || 0);
export const writeLight = ({ kind, along, out }: LayoutLight, units: UnitSystem): string =>
	`${kind} ${writeLength(along, units)}, ${writeLength(out, units)}`;
export const writeSupply = ({ along, out, height, voltAmps }: LayoutSupply, units: UnitSystem): string =>
	[
		`transformer ${writeLength(along, units)}`,
		writeLength(out, units),
		...(height === null ? [] : [writeLength(height, units)]),
		...(voltAmps === null ? [] : [`${voltAmps} VA`])
	].join(', ');
export const writeLayout = ({ lights, supply }: Layout, units: UnitSystem): string =>
	[...lights.map((light) => writeLight(light, units)), ...(supply ? [writeSupply(supply, units)] : [])].join('\n');
