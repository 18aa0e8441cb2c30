/** The value of an input as it is typed. */
import type { YardInput } from '$lib/domain/lesson/explore';
import { readLength } from '$lib/domain/shared/read-length';
import { readNumber } from '$lib/domain/shared/read-number';
import type { UnitSystem } from '$lib/domain/shared/units';

export type ReadValue =
	{ ok: true; value: number; understood: string } | { ok: false; message: string; suggestions: string[] };

const tidy = (value: number): number => Number(value.toFixed(7));

export function readValue(input: YardInput, text: string, units: UnitSystem): ReadValue {
	const { least, most, times, unit } = input;
	if (input.kind === 'length') {
		const read = readLength(text, units, { min: least, max: most, signed: least < 0 });
		return read.ok ? { ok: true, value: read.metres, understood: read.understood } : read;
	}
	const range = { min: tidy(least * times), max: tidy(most * times) };
	const read = readNumber(text.replace('−', '-'), range, unit);
	if (!read.ok) return { ...read, suggestions: [] };
	const value = tidy(read.value / times);
	return { ok: true, value, understood: input.text(value) };
}
/** As it stands in its field: lengths with their units, else the bare number. */
export const writeValue = (input: YardInput, value: number): string =>
	input.kind === 'length' ? input.text(value) : String(Number((value * input.times).toFixed(4))).replace('-', '−');
