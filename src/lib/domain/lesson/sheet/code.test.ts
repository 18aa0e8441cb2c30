import { assert, property, string } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeOf, longestCode, plainCode, usualCode } from './code';

describe('a class code', () => {
	test.each([
		['  Blue   Hour ', 'blue hour'],
		['BLUE\tHOUR\n', 'blue hour'],
		['blue\u200b hour\ufeff', 'blue hour'],
		// Unicode Standard Annex 15: compatibility forms, wide letters and composed letters are one.
		['ＢＬＵＥ　ＨＯＵＲ', 'blue hour'],
		['ﬁg 4', 'fig 4'],
		['Cafe\u0301', 'café'],
		// Unicode’s CaseFolding.txt: ß folds to ss, final sigma to sigma.
		['Straße', 'strasse'],
		['ΟΔΟΣ', 'οδοσ'],
		['οδος', 'οδοσ'],
		['👩‍🏫 7b', '👩‍🏫 7b'],
		['__proto__', '__proto__'],
		['constructor', 'constructor'],
		['\u202eabc', 'abc'],
		['\ud800x', 'x'],
		['a · B · 1', 'a · b · 1']
	])('%j is %j', (typed, code) => expect(plainCode(typed)).toBe(code));
	test('of nothing that is seen is the usual one, and says so', () => {
		for (const nothing of ['', ' \n\t', '\u200d', '\u0301', '\u202e\u200b', '\ud800']) {
			expect(codeOf(nothing), JSON.stringify(nothing)).toEqual({
				code: usualCode,
				said: ['No class code was given, so “blue hour” is used.']
			});
		}
		expect(plainCode(usualCode)).toBe(usualCode);
	});
	test('of ten thousand characters counts by its first', () => {
		const { code, said } = codeOf('x'.repeat(10_000));
		expect(code).toBe('x'.repeat(longestCode));
		expect(said).toEqual([`The class code is long: only its first 32 characters count, “${code}”.`]);
		expect(codeOf(`${' '.repeat(10_000)}dusk`)).toEqual({ code: 'dusk', said: [] });
	});
	test('stays what it is when read again, in any writing', () => {
		assert(
			property(string({ unit: 'binary', maxLength: 80 }), (typed) => {
				const { code } = codeOf(typed);
				expect(codeOf(code)).toEqual({ code, said: [] });
				expect([...code].length).toBeLessThanOrEqual(longestCode);
				expect(code).toBe(code.normalize('NFKC'));
				expect(code.isWellFormed()).toBe(true);
			}),
			{ numRuns: 1000, seed: 7 }
		);
	});
	test('of every single character too', () => {
		const changed: string[] = [];
		for (let point = 0; point <= 0x1ffff; point += 1) {
			const text = String.fromCodePoint(point);
			// Those that nothing is done to stay by themselves.
			if (text === text.normalize('NFKC') && text === text.toUpperCase() && !/\p{C}/u.test(text)) continue;
			const code = plainCode(`a${text}`);
			if (plainCode(code) !== code) changed.push(point.toString(16));
		}
		expect(changed).toEqual([]);
	});
});
