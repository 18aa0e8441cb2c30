import { assert, constantFrom, integer, oneof, property, record, string, subarray, constant } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lessonIds, levels } from '$lib/domain/lesson/types';
import { variants } from '$lib/domain/lesson/sheet/types';
import { mostSheets, paperOf, readSettings, settingsFragment, usual } from './settings';

describe('the address of the worksheets', () => {
	test('keeps all that is chosen', () => {
		const settings = record({
			code: string({ unit: 'grapheme', maxLength: 60 }),
			lessons: subarray([...lessonIds]),
			level: constantFrom(...levels),
			count: integer({ min: 1, max: 9999 }),
			units: constantFrom('feet' as const, 'metres' as const),
			variants: subarray([...variants], { minLength: 1 }),
			sheets: integer({ min: 1, max: mostSheets }),
			paper: constantFrom(null, 'letter' as const, 'a4' as const),
			printed: constantFrom('sheets' as const, 'keys' as const, 'both' as const),
			ratio: oneof(constant(null), constantFrom(48, 50, 96, 100))
		});
		assert(
			property(settings, (one) => {
				const fragment = settingsFragment(one);
				// As a browser's address bar has it.
				expect(readSettings(new URL(`https://example.org/${fragment}`).hash)).toEqual(one);
			}),
			{ numRuns: 1000, seed: 7 }
		);
	});
	test('of any other text is read as usual', () => {
		assert(
			property(string({ unit: 'binary' }), (text) => {
				expect(readSettings(`#level=${text}`).lessons).toEqual(lessonIds);
			}),
			{ numRuns: 500, seed: 7 }
		);
		expect(readSettings('')).toEqual(usual);
		expect(readSettings('#count=-3&sheets=1e9&level=hard&variants=xyz&units=miles&grid=0')).toEqual(usual);
		expect(readSettings('#variants=FA')).toMatchObject({ variants: ['A', 'F'], sheets: 2 });
	});
	test('can be written of half a character', () => {
		expect(settingsFragment({ ...usual, code: 'a\ud800' })).toContain('code=a%EF%BF%BD');
	});
	test('goes with the paper of the units unless one is chosen', () => {
		expect(paperOf(usual)).toBe('letter');
		expect(paperOf({ ...usual, units: 'metres' })).toBe('a4');
		expect(paperOf({ ...usual, units: 'metres', paper: 'letter' })).toBe('letter');
	});
});
