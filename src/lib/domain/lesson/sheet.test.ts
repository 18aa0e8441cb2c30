import { assert, constantFrom, oneof, property, record, string, subarray, double, integer } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../shared/evaluate';
import { fixed } from '../shared/show-working';
import { kinds, lessons } from './all';
import { makeSheet, makeSheets } from './sheet';
import { identity } from './sheet/draws';
import { energyKinds, testStock } from './sheet/stock.testing';
import { toFind, variants, type Sheet, type SheetRequest, type Stock } from './sheet/types';
import { lessonIds, levels } from './types';

const usual: SheetRequest = {
	code: 'blue hour',
	lessons: lessonIds,
	level: 'all',
	count: 10,
	units: 'metres',
	variant: 'A'
};
const taught: Stock = { kinds, lessons };
const long = Boolean(process.env['LONG']);
const sheets = (asked: Partial<SheetRequest>, stock: Stock) => makeSheets({ ...usual, ...asked }, variants, stock);
const same = (list: readonly string[]) => list.length - new Set(list).size;
const numbers = (sheet: Sheet) => sheet.problems.map(({ problem }) => `${problem.kind} ${identity(problem)}`);

describe.each([
	{ of: 'a small stock', stock: testStock, codes: long ? 2000 : 500, count: 2 },
	{ of: 'all lessons', stock: taught, codes: long ? 2000 : 40, count: 8 }
])('sheets of $of', ({ stock, codes, count }) => {
	test('of one code share no problem, and none comes twice on a sheet', () => {
		for (let n = 0; n < codes; n += 1) {
			const code = n % 3 === 0 ? String.fromCodePoint(0x1f300 + n) : `class ${n}`;
			const asked = { code, level: levels[n % 4]!, units: n % 2 === 0 ? ('feet' as const) : ('metres' as const) };
			const set = sheets({ ...asked, count: count + (n % 4) }, stock);
			expect(same(set.flatMap(numbers)), code).toBe(0);
			// Neighbours have the same kinds of problem in the same order: the class can go through them together.
			for (const sheet of set)
				expect(sheet.problems.map(({ title }) => title)).toEqual(set[0]!.problems.map(({ title }) => title));
		}
	});
	test('show arithmetic that gives what it says, and nothing of what is to be found', () => {
		for (let n = 0; n < (long ? 500 : 40); n += 1)
			for (const level of levels)
				for (const sheet of makeSheets({ ...usual, code: `class ${n}`, level }, ['A', 'D'], stock))
					for (const one of sheet.problems) expect(faultsOf(one), `${sheet.mark}, ${one.number}`).toEqual([]);
	});
	test('are the same when one alone is asked for', () => {
		for (const sheet of sheets({ count: 14 }, stock))
			expect(makeSheet({ ...usual, count: 14, variant: sheet.variant }, stock)).toEqual(sheet);
	});
});

/** On the sheet and on the key. */
function faultsOf({ problem, lines, blanks, level, open }: Sheet['problems'][number]): string[] {
	const gives = (line: string, text: string, decimals: number) => fixed(evaluate(line), decimals) === text;
	const found = new Map(problem.steps.map(({ symbol, text }) => [symbol, text]));
	const count = problem.steps.length;
	const least = { solved: 0, one: Math.min(1, count), several: Math.max(2, count / 2), all: count }[level];
	return [
		...problem.steps.map(({ line, text, decimals }) =>
			gives(line, text, decimals) ? '' : `key: ${line} is not ${text}`
		),
		...lines.map(({ line, text, symbol }, n) => {
			const step = problem.steps[n]!;
			if (blanks.includes(n)) return line === null && text === null ? '' : `shows ${symbol}`;
			if (line === null || text === null) return `lacks ${symbol}`;
			// A learner who has found the numbers puts them in, in the order in which they are named.
			const open = [...step.expression.matchAll(/[\p{L}_Δ][\p{L}\p{N}_′'₀-₉]*/gu)]
				.map(([name]) => name)
				.filter((name) => problem.steps.some(({ symbol }, k) => symbol === name && blanks.includes(k)));
			let whole = line;
			for (const name of open) whole = whole.replace(toFind, () => found.get(name)!.replace(/^[−-].*/, '($&)'));
			return gives(whole, text, step.decimals) ? '' : `sheet: ${whole} is not ${text}`;
		}),
		blanks.length < least ? `${blanks.length} blanks at ${level}` : '',
		level === 'one' && problem.steps.length > 0 && blanks.length !== 1 ? 'not one blank' : '',
		level === 'all' && lines.length > 0 ? 'shows working' : '',
		level !== 'solved' && problem.answer.type === 'choice' && !open ? 'shows the right choice' : '',
		level === 'all' && !open ? 'shows the answer' : ''
	].filter(Boolean);
}

describe('a sheet', () => {
	test('is made for any request at all', () => {
		const request = record({
			code: oneof(
				string({ unit: 'binary' }),

				constantFrom('x'.repeat(10_000), '__proto__', '👩‍🏫')
			),
			lessons: subarray([...lessonIds]),
			level: constantFrom(...levels),
			count: oneof(integer({ min: -5, max: 30 }), double()),
			units: constantFrom('feet' as const, 'metres' as const),
			variant: constantFrom(...variants)
		});
		assert(
			property(request, (asked) => {
				const sheet = makeSheet(asked, testStock);
				expect(makeSheet(asked, testStock)).toEqual(sheet);
				expect(sheet.problems.length).toBeLessThanOrEqual(60);
				expect(sheet.problems.map(({ number }) => number)).toEqual(sheet.problems.map((_, n) => n + 1));
				if (sheet.problems.length < asked.count) expect(sheet.said.length).toBeGreaterThan(0);
			}),
			{ numRuns: 400, seed: 7 }
		);
	});
	test('says what could not be had', () => {
		const said = (asked: Partial<SheetRequest>) =>
			makeSheet({ ...usual, lessons: ['energy', 'safety'], ...asked }, testStock).said;
		expect(said({ count: 4 })).toEqual([]);
		expect(said({ code: ' ', count: 4 })).toEqual(['No class code was given, so “blue hour” is used.']);
		expect(said({ level: 'one', count: 4 })).toEqual([
			'“Safety” has no problems with the level “one step left out”: they come with “the question alone”.'
		]);
		expect(said({ count: 200, lessons: ['energy'] })).toEqual(['200 problems were asked for; a sheet has at most 60.']);
		expect(said({ count: 0 })[0]).toBe('A sheet has at least one problem, so it has one.');
		expect(said({ count: 10, lessons: ['safety'] })).toEqual([
			'These lessons have 2 different problems for each variant of this code, not 10. Pick more lessons, or give out a second code.'
		]);
		expect(said({ lessons: ['energy', 'beam'], count: 4 })).toEqual(['There are no problems yet of “beam”.']);
		expect(said({ count: 1 })).toEqual([
			expect.stringMatching(/^No problem comes from “(Energy|Safety)”: more lessons/)
		]);
		expect(said({ lessons: [] })).toContain('No lesson was picked, so problems come from all of them.');
	});
	test('keeps its problems when a lesson gets another kind', () => {
		const before = { ...testStock, kinds: testStock.kinds.filter((kind) => kind !== energyKinds[1]) };
		for (let n = 0; n < 20; n += 1) {
			const asked = { ...usual, code: `class ${n}`, count: 8 };
			const old = numbers(makeSheet(asked, before));
			expect(old).toEqual(
				expect.arrayContaining(numbers(makeSheet(asked, testStock)).filter((text) => !text.startsWith('energy.other')))
			);
		}
	});
});
