/** From what a person types to an answer, and back to what stands in the field. One field, one text; knows no page. */
import type * as Lengths from '$lib/domain/shared/read-length';
import type * as Numbers from '$lib/domain/shared/read-number';
import { formatLength } from '$lib/domain/shared/units';
import type { Units } from '$lib/domain/yard';
import type { Field } from '$lib/flow';
import type { Suggestion, Typed } from '$lib/ui/types';

/** What reads lengths and numbers comes with the fields that need it, after the first question. */
export type Readers = Pick<typeof Lengths, 'readLength'> &
	Pick<typeof Numbers, 'readCount' | 'readDegrees' | 'readNumber'>;
let readers: Readers | null = null;
export function giveReaders(given: Readers): void {
	readers = given;
}

export interface Reading {
	/** Undefined while the text is empty or not understood. */
	value: string | number | undefined;
	readback: string | null;
	error: string | null;
	suggestions: Suggestion[];
}
export type TypedField = Extract<Field, { kind: 'length' | 'number' | 'count' | 'text' | 'bearing' }>;

const nothing: Reading = { value: undefined, readback: null, error: null, suggestions: [] };
const understood = (value: string | number, readback: string | null = null): Reading => ({
	...nothing,
	value,
	readback
});
const refused = (error: string, suggestions: Suggestion[] = []): Reading => ({ ...nothing, error, suggestions });

function readMetres({ readLength }: Readers, text: string, range: Lengths.LengthRange, units: Units): Reading {
	const read = readLength(text, units, range);
	return read.ok
		? understood(read.metres, read.understood)
		: refused(
				read.message,
				read.suggestions.map((suggestion) => ({ label: suggestion, text: suggestion }))
			);
}
const plain = (read: Numbers.ReadNumber, readback: boolean): Reading =>
	read.ok ? understood(read.value, readback ? read.understood : null) : refused(read.message);

/** What a text means in a field. Never throws; what is not understood comes back as an error to show. */
export function readText(field: TypedField, text: string, units: Units): Reading {
	if (text.trim() === '') return nothing;
	if (field.kind === 'text') {
		return text.length > field.maxLength ? refused(`At most ${field.maxLength} letters.`) : understood(text);
	}
	// No field of these kinds is shown before its reader is there.
	if (!readers) return nothing;
	switch (field.kind) {
		case 'length':
			return readMetres(readers, text, { min: field.min, max: field.max, signed: field.min < 0 }, units);
		case 'number':
			return plain(readers.readNumber(text, field, field.unit), false);
		case 'count':
			return plain(readers.readCount(text, field), false);
		case 'bearing':
			return plain(readers.readDegrees(text), true);
	}
}

/** An answer as it stands in the field for editing. */
export function writeText(field: TypedField, value: unknown, units: Units): string {
	if (value === undefined || value === 'unsure' || value === null) return '';
	if (field.kind === 'length' && typeof value === 'number') return formatLength(value, units);
	return String(value);
}

const same = (a: unknown, b: unknown) =>
	typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < 1e-9 : a === b;

/**
 * What a field shows. A draft stays as it was typed while it is not understood, or while it still says what is stored;
 * once the answer was changed elsewhere (undo, a point on the drawing) the answer wins.
 */
export function typedOf(
	field: TypedField,
	draft: string | null,
	stored: unknown,
	units: Units,
	complain: boolean
): Typed {
	const known = stored !== undefined && stored !== 'unsure';
	const reading = draft === null ? nothing : readText(field, draft, units);
	const keep = draft !== null && (reading.error !== null || !known || same(reading.value, stored));
	const text = keep ? draft : writeText(field, stored, units);
	const shown = keep ? reading : readText(field, text, units);
	return {
		text,
		readback: shown.readback,
		error: complain ? shown.error : null,
		suggestions: complain ? shown.suggestions : []
	};
}

/** An example of a length in the person's own units, rounded as one would say it. */
export function exampleOf(field: { example: string }, units: Units): string {
	const read = units === 'feet' ? null : readers?.readLength(field.example, 'feet', { min: 0, max: 1000 });
	if (!read?.ok) return field.example;
	const step = read.metres < 1 ? 0.05 : 0.5;
	return formatLength(Math.max(step, Math.round(read.metres / step) * step), units);
}
