import { assert, constantFrom, integer, property, record, string, subarray } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lessonIds, levels } from '../types';
import { codeOf } from './code';
import { markOf, readMark } from './mark';
import { variants, type SheetRequest } from './types';

const request: SheetRequest = {
	code: 'blue hour',
	lessons: lessonIds,
	level: 'all',
	count: 10,
	units: 'metres',
	variant: 'B'
};
const asked = record({
	code: string({ unit: 'grapheme', maxLength: 60 }).map((text) => codeOf(text).code),
	lessons: subarray([...lessonIds], { minLength: 1 }),
	level: constantFrom(...levels),
	count: integer({ min: 1, max: 60 }),
	units: constantFrom('feet' as const, 'metres' as const),
	variant: constantFrom(...variants)
});

describe('the mark of a sheet', () => {
	test('is short', () => {
		expect(markOf(request)).toBe('blue hour · B · 1 · M10A');
		expect(markOf({ ...request, lessons: ['offset', 'drop'], level: 'one', units: 'feet' })).toBe(
			'blue hour · B · 1 · F10O-41'
		);
	});
	test('says all that was asked', () => {
		assert(
			property(asked, (request) => {
				expect(readMark(markOf(request))).toEqual({ ok: true, request });
			}),
			{ numRuns: 1000, seed: 7 }
		);
	});
	test('is read as it is copied by hand', () => {
		expect(readMark('  BLUE  HOUR·b ·1· m10a ')).toEqual({ ok: true, request });
		expect(readMark('a · B · 1 · C · 1 · M10A')).toMatchObject({ request: { code: 'a · b · 1', variant: 'C' } });
	});
	test.each(['', 'blue hour', 'blue hour · G · 1 · M10A', ' · B · 1 · M10A', 'blue hour · B · 1'])(
		'%j is none, and that is said',
		(text) => {
			expect(readMark(text)).toEqual({ ok: false, problem: expect.stringContaining('copy it from the head') });
		}
	);
	test('of another version is not taken for one of this', () => {
		expect(readMark('blue hour · B · 2 · M10A')).toEqual({ ok: false, problem: expect.stringContaining('version 2') });
	});
});
