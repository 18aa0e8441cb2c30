/** A figure of a rule as it is typed, read and kept. */
import { readLength } from '$lib/domain/shared/read-length';
import { readNumber } from '$lib/domain/shared/read-number';
import { formatFigure } from '$lib/domain/shared/rule-words';
import { mayBe, settings, usual, type SettableKey } from '$lib/domain/shared/settings';
import { formatLength, type UnitSystem } from '$lib/domain/shared/units';

export type Told = Readonly<Record<string, number>> | undefined;
export type ReadFigure =
	{ ok: true; value: number; understood: string } | { ok: false; message: string; suggestions: string[] };

/** What is written after a number of each unit; parts of one are written as percent. */
const after = { m: '', deg: '°', ratio: 'to 1', share: '%', ground: 'times open ground' } as const;
const tidy = (value: number): number => Number(value.toFixed(7));

export function readFigure(key: SettableKey, text: string, units: UnitSystem): ReadFigure {
	const { unit, least, most } = settings[key];
	if (unit === 'm') {
		const read = readLength(text, units, { min: least, max: most });
		return read.ok ? { ok: true, value: read.metres, understood: read.understood } : read;
	}
	const scale = unit === 'share' ? 100 : 1;
	const bare = unit === 'ground' ? text.replace(/\s*times\s*$/i, '') : text;
	const read = readNumber(bare, { min: -Infinity, max: Infinity }, after[unit]);
	if (!read.ok) return { ...read, suggestions: [] };
	const value = tidy(read.value / scale);
	const words = (figure: number): string => formatFigure(figure, unit, units);
	if (mayBe(key, value)) return { ok: true, value, understood: words(value) };
	const message = `That is ${words(value)}. It may lie between ${words(least)} and ${words(most)}.`;
	return { ok: false, message, suggestions: [] };
}
/** As it stands in its field. */
export function writeFigure(key: SettableKey, value: number, units: UnitSystem): string {
	const { unit } = settings[key];
	return unit === 'm' ? formatLength(value, units) : formatFigure(value, unit, units);
}
/** The yard's figures with one set; null or the trade's own takes it away. Undefined: none are left. */
export function withFigure(told: Told, key: string, value: number | null): Told {
	const { [key]: _, ...others } = told ?? {};
	const own = value !== null && !(key in settings && value === usual(key as SettableKey));
	const next = own ? { ...others, [key]: value } : others;
	return Object.keys(next).length > 0 ? next : undefined;
}
