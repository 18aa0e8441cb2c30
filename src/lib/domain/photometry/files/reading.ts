/** What the readers of photometric files share: their results, their refusals, numbers. */
import type { Photometry } from '../types';
import type { CandelaTable } from '../table';

export interface FileAbout {
	format: 'LM-63' | 'EULUMDAT';
	/** Of LM-63: the year; of EULUMDAT: empty. */
	edition: string;
	/** As the file gives them, cut to 120 characters; empty where it does not. */
	name: string;
	maker: string;
	lamp: string;
	/** Of the luminaire, from its candela, lumens. */
	lumens: number;
	/** Of the luminaire as the file states it; null where it does not. */
	statedLumens: number | null;
	/** Of the lamps in it; null in absolute photometry, which measures the luminaire whole. */
	lampLumens: number | null;
	lamps: number;
	/** Input power; null where the file gives none. */
	watts: number | null;
	/** Luminous opening, metres. A negative size stands for a round shape, as LM-63 has it. */
	opening: { width: number; length: number; height: number };
	/** Candela on the axis, and the greatest with its direction, degrees. */
	centre: number;
	peak: { candela: number; vertical: number; horizontal: number };
	/** The light of the file goes up: its straight up is the axis of `photometry`. `table` is as in the file. */
	turned: boolean;
}
export interface FileRead {
	ok: true;
	/** Axis along the beam: straight down in the file, or straight up where `about.turned`. */
	photometry: Photometry;
	table: CandelaTable;
	about: FileAbout;
	/** Sentences about what is odd in it or was taken for granted. */
	notes: string[];
}
/** `line` counts from 1; `field` in words; `message` is a whole sentence that names both. */
export interface FileRefused {
	ok: false;
	line: number;
	field: string;
	message: string;
}
export type FileResult = FileRead | FileRefused;

export const limits = { characters: 2_000_000, angles: 400, value: 1e9 } as const;

/** Ends the reading of a bad file; `reading` makes a result of it. */
export class Refusal extends Error {
	constructor(
		readonly line: number,
		readonly field: string,
		readonly what: string
	) {
		super(what);
	}
}

/** Runs a reader: a refusal becomes a result, anything else is a fault of ours and goes on. */
export function reading(text: string, read: (lines: string[]) => FileRead): FileResult {
	try {
		if (text.length > limits.characters) throw new Refusal(1, 'the file', 'it is larger than 2 MB.');
		if (text.trim() === '') throw new Refusal(1, 'the file', 'it is empty.');
		// Byte order mark; the end-of-file character of old systems.
		return read(
			text
				.replace(/^\uFEFF/, '')
				.replaceAll('\u001A', '')
				.split(/\r\n|\r|\n/)
		);
	} catch (error) {
		if (!(error instanceof Refusal)) throw error;
		const { line, field, what } = error;
		return { ok: false, line, field, message: `Line ${line}, ${field}: ${what}` };
	}
}

/** Something out of a file, fit to stand in a sentence. */
export const quoted = (text: string): string => `“${clean(text, 30)}”`;

/** Without control characters, cut to so many. */
export function clean(text: string, most = 120): string {
	// oxlint-disable-next-line no-control-regex
	const plain = text.replace(/[\u0000-\u001F\u007F-\u009F]+/g, ' ').trim();
	return plain.length > most ? `${plain.slice(0, most - 1).trimEnd()}…` : plain;
}

/** Its name in words, made only when it is needed: a file has up to 160,000 candela. */
export type Field = string | (() => string);
export const fieldName = (field: Field): string => (typeof field === 'string' ? field : field());

export interface Range {
	min?: number;
	max?: number;
	/** More than `min`, not that itself. */
	above?: boolean;
	whole?: boolean;
}
const plain = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

/** A number of a file within its range; refused with its line and field otherwise. */
export function numberOf(text: string, line: number, field: Field, range: Range = {}): number {
	const refuse = (what: string): never => {
		throw new Refusal(line, fieldName(field), what);
	};
	if (text === '') refuse('there is nothing where a number should be.');
	if (!plain.test(text)) refuse(`${quoted(text)} is not a number.`);
	const value = Number(text);
	const { min = -limits.value, max = limits.value, above = false, whole = false } = range;
	if (whole && !Number.isInteger(value)) refuse(`${quoted(text)} is not a whole number.`);
	if (value > max) refuse(`${quoted(text)} is more than ${max}, the most it can be.`);
	if (above && value <= min) refuse(`${quoted(text)} has to be more than ${min}.`);
	if (value < min) refuse(`${quoted(text)} is less than ${min}, the least it can be.`);
	return value;
}

/** Refused unless each angle is greater than the one before. */
export function ascending(angles: readonly number[], lines: readonly number[], field: string): void {
	for (let i = 1; i < angles.length; i++)
		if (!(angles[i]! > angles[i - 1]!))
			throw new Refusal(lines[i]!, field, `${angles[i]}° comes after ${angles[i - 1]}°; angles have to grow.`);
}

/** What gives one number of a file after the other, and says on which line the last one stood. */
interface Numbers {
	readonly line: number;
	number(field: Field, range?: Range): number;
}
/** So many numbers, with the line of each. */
export function listOf(
	from: Numbers,
	count: number,
	field: string,
	range?: Range
): { values: number[]; lines: number[] } {
	const values: number[] = [];
	const lines: number[] = [];
	for (let i = 0; i < count; i++) {
		values.push(from.number(() => `${field} (${i + 1} of ${count})`, range));
		lines.push(from.line);
	}
	return { values, lines };
}
