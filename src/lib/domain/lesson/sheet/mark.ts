/** The mark on a sheet: `blue hour · B · 1 · M10A` says code, variant, version, and what was asked, so that the sheet can be made again. */
import { generatorVersion } from '../random';
import { lessonIds, type LessonId, type Level } from '../types';
import { plainCode } from './code';
import { variants, type SheetRequest, type Variant } from './types';

const between = ' · ';
const letterOfLevel: Readonly<Record<Level, string>> = { solved: 'S', one: 'O', several: 'V', all: 'A' };
const levelOfLetter: Readonly<Record<string, Level>> = { S: 'solved', O: 'one', V: 'several', A: 'all' };
const everyLesson = 2 ** lessonIds.length - 1;

const bitsOf = (lessons: readonly LessonId[]): number =>
	lessonIds.reduce((sum, id, n) => sum + (lessons.includes(id) ? 2 ** n : 0), 0);

/** Units, count, level; where not all lessons are in it, which: one bit each in the order they are taught, as a hexadecimal number. */
export function markOf({ code, variant, units, count, level, lessons }: SheetRequest): string {
	const bits = bitsOf(lessons);
	const which = bits === everyLesson ? '' : `-${bits.toString(16).toUpperCase()}`;
	const asked = `${units === 'feet' ? 'F' : 'M'}${count}${letterOfLevel[level]}${which}`;
	return [code, variant, generatorVersion, asked].join(between);
}
export type ReadMark = { ok: true; request: SheetRequest } | { ok: false; problem: string };

const form =
	/^(?<code>.*\S)\s*·\s*(?<variant>[A-F])\s*·\s*(?<version>\d{1,3})\s*·\s*(?<units>[MF])(?<count>\d{1,2})(?<level>[SOVA])(?:-(?<bits>[\dA-F]{1,3}))?$/iu;

/** What a mark asks for, or in words why it cannot be read. Capital letters and spaces do not matter. */
export function readMark(text: string): ReadMark {
	const found = form.exec(text.trim().replace(/\s+/gu, ' '))?.groups;
	const code = plainCode(found?.['code'] ?? '');
	if (!found || code === '')
		return {
			ok: false,
			problem: `This is no mark of a sheet. A mark reads like “blue hour${between}B${between}${generatorVersion}${between}M10A”: copy it from the head of the sheet.`
		};
	if (Number(found['version']) !== generatorVersion)
		return {
			ok: false,
			problem: `This sheet was made by version ${found['version']} of the problems; here is version ${generatorVersion}, which draws other numbers. Print sheet and key anew.`
		};
	const bits = found['bits'] === undefined ? everyLesson : Number.parseInt(found['bits'], 16);
	return {
		ok: true,
		request: {
			code,
			variant: variants.find((one) => one === found['variant']!.toUpperCase()) as Variant,
			units: found['units']!.toUpperCase() === 'F' ? 'feet' : 'metres',
			count: Number(found['count']),
			level: levelOfLetter[found['level']!.toUpperCase()]!,
			lessons: lessonIds.filter((_, n) => Math.floor(bits / 2 ** n) % 2 === 1)
		}
	};
}
