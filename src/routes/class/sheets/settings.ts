/** What is chosen on the page of the worksheets, as it stands in the address behind its `#`: a bookmark keeps it, and no server sees it. */
import { lessonIds, levels, type LessonId, type Level } from '$lib/domain/lesson/types';
import { variants, type Variant } from '$lib/domain/lesson/sheet/types';
import type { UnitSystem } from '$lib/domain/shared/units';
import type { Paper } from '$lib/print/scale';
import type { Printed } from '$lib/print/lesson/words';
import { usualUnits } from '../fragment';

export interface Settings {
	/** As it was typed. */
	code: string;
	lessons: readonly LessonId[];
	level: Level;
	count: number;
	units: UnitSystem;
	variants: readonly Variant[];
	/** How many sheets are handed out. */
	sheets: number;
	/** Null: by the units. */
	paper: Paper | null;
	printed: Printed;
	/** Squared paper 1 to this; null for none. */
	ratio: number | null;
}
export const usual: Settings = {
	code: '',
	lessons: lessonIds,
	level: 'all',
	count: 10,
	units: usualUnits,
	variants: ['A', 'B'],
	sheets: 2,
	paper: null,
	printed: 'both',
	ratio: null
};
/** Of a class, and one for each of its seats. */
export const mostSheets = 60;
/** More is not read from an address: a number with its commas forgotten. */
const mostAsked = 9999;

export const paperOf = ({ paper, units }: Settings): Paper => paper ?? (units === 'metres' ? 'a4' : 'letter');

const oneOf = <T extends string>(list: readonly T[], text: string | null): T | null =>
	list.find((one) => one === text) ?? null;
function wholeOf(text: string | null, most: number): number | null {
	const number = Number(text ?? '');
	return text && Number.isInteger(number) && number >= 1 && number <= most ? number : null;
}
function lessonsOf(text: string | null): readonly LessonId[] {
	const names = (text ?? 'all').split(',');
	return names.includes('all') ? lessonIds : lessonIds.filter((id) => names.includes(id));
}
/** Reads `#code=…&level=…`; what is missing or cannot be read is as usual. Never throws. */
export function readSettings(fragment: string): Settings {
	const parts = new URLSearchParams(fragment.replace(/^#/, ''));
	const get = (name: string) => parts.get(name);
	const letters = get('variants') ?? '';
	const some = variants.filter((one) => letters.includes(one));
	const units = oneOf(['feet', 'metres'], get('units')) ?? usual.units;
	return {
		code: get('code') ?? usual.code,
		lessons: lessonsOf(get('lessons')),
		level: oneOf(levels, get('level')) ?? usual.level,
		count: wholeOf(get('count'), mostAsked) ?? usual.count,
		units,
		variants: some.length > 0 ? some : usual.variants,
		sheets: wholeOf(get('sheets'), mostSheets) ?? (some.length || usual.sheets),
		paper: oneOf(['letter', 'a4'], get('paper')),
		printed: oneOf(['sheets', 'keys', 'both'], get('print')) ?? usual.printed,
		ratio: wholeOf(get('grid'), 100)
	};
}
/** The address's fragment, with its `#`. Lone halves of characters, which no address can carry, are replaced. */
export function settingsFragment(settings: Settings): string {
	const { code, lessons, level, count, units, variants, sheets, paper, printed, ratio } = settings;
	const parts = new URLSearchParams({ code: code.replace(/\p{Cs}/gu, '\ufffd') });
	parts.set('lessons', lessons.length === lessonIds.length ? 'all' : lessons.join(','));
	parts.set('level', level);
	parts.set('count', String(count));
	parts.set('units', units);
	parts.set('variants', variants.join(''));
	parts.set('sheets', String(sheets));
	if (paper) parts.set('paper', paper);
	parts.set('print', printed);
	if (ratio !== null) parts.set('grid', String(ratio));
	return `#${parts.toString()}`;
}
