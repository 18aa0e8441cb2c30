import { describe, expect, test } from 'vitest';
import { problemOf } from '../kinds.testing';
import { randomOf } from '../random';
import { blanksOf, linesOf } from './blanks';
import { energyKinds, fewKind } from './stock.testing';

const problem = problemOf(energyKinds[0]!, 'dusk', 'metres');
const drawn = (level: 'solved' | 'one' | 'several' | 'all', steps = problem.steps) =>
	Array.from({ length: 200 }, (_, n) => blanksOf({ ...problem, steps }, level, randomOf(`${n}`)));

describe('blanks', () => {
	test('at level one are one step, any of them', () => {
		expect(new Set(drawn('one').map(String))).toEqual(new Set(['0', '1', '2']));
	});
	test('at level several are at least half and at least two, with the last, and not all', () => {
		expect(new Set(drawn('several').map(String))).toEqual(new Set(['0,2', '1,2']));
		const long = drawn('several', [...problem.steps, ...problem.steps]);
		expect(new Set(long.map(({ length }) => length))).toEqual(new Set([3, 4, 5]));
		for (const blanks of long) expect(new Set(blanks).size).toBe(blanks.length);
	});
	test('of a solved problem are none, of the question alone all', () => {
		expect(new Set(drawn('solved').map(String))).toEqual(new Set(['']));
		expect(new Set(drawn('all').map(String))).toEqual(new Set(['0,1,2']));
	});
	test('of a choice without steps are none', () => {
		const choice = problemOf(fewKind, 'dusk', 'metres');
		for (const level of ['solved', 'one', 'all'] as const) expect(blanksOf(choice, level, randomOf(''))).toEqual([]);
	});
});
describe('the lines on a sheet', () => {
	test('are those of the solution where nothing is left out', () => {
		expect(linesOf(problem, []).map(({ line, text }) => ({ line, text }))).toEqual(
			problem.steps.map(({ line, text }) => ({ line, text }))
		);
	});
	test('stand open where a number is to be found', () => {
		const [first, second, third] = linesOf(problem, [0]);
		expect(first).toMatchObject({ label: 'current', line: null, text: null, unit: 'A' });
		expect(second!.line).toBe(`${problem.givens[0]!.text} × ____`);
		expect(third!.line).toBe(problem.steps[2]!.line);
	});
});
