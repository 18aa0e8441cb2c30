import { describe, expect, test } from 'vitest';
import { scales } from '../../../print/scale';
import { expectSound } from '../kinds.testing';
import { behind } from './behind';
import { diagonal } from './diagonal';
import { offsetKinds } from './kinds';
import { paper, paperScales } from './scale';
import { square } from './square';

describe('every problem is sound', () => {
	for (const kind of offsetKinds) test(kind.id, () => expectSound(kind));
});

const textOf = (answer: { type: string; text?: string } | undefined) => answer?.text;

// Pythagorean triples: Euclid, Elements, lemma 1 before X.29; Plimpton 322 has 119-120-169 and 65-72-97.
test.each([
	[3, 4, '5.00'],
	[5, 12, '13.00'],
	[8, 15, '17.00'],
	[7, 24, '25.00'],
	[20, 21, '29.00'],
	[65, 72, '97.00'],
	[119, 120, '169.00']
])('%f along and %f out are as far across as Euclid says', (along, out, across) => {
	for (const units of ['metres', 'feet'] as const) {
		const problem = diagonal.pose({ things: ['the oak', 'the tap'], from: [1, 2], to: [1 + along, 2 + out] }, units);
		expect(textOf(problem?.answer)).toBe(across);
	}
});
test('a place behind the front is told with a minus sign and reckoned so', () => {
	const problem = diagonal.pose({ things: ['the oak', 'the tap'], from: [1, 2], to: [4, -2] }, 'metres')!;
	expect(problem.story).toContain('out −2.0 m');
	expect(problem.steps.map(({ text }) => text)).toEqual(['3.00', '−4.00', '5.00']);
	expect(problem.steps[1]!.line).toBe('(−2.0) − 2.0');
});

test('a corner of 3 and 4 is square at 5, open beyond and closed below', () => {
	const corner = { what: 'a bed', along: 3, out: 4 };
	expect(textOf(square.pose({ ...corner, reading: 5.2 }, 'metres')?.answer)).toBe('0.20');
	expect(textOf(square.pose({ ...corner, reading: 4.85 }, 'feet')?.answer)).toBe('−0.15');
	expect(square.pose({ ...corner, reading: 5 }, 'metres')).toBeNull();
	// By the law of cosines (Elements II.12, 13) a longer side across lies opposite an angle of more than 90°.
	const angle = (across: number) => (Math.acos((9 + 16 - across ** 2) / 24) * 180) / Math.PI;
	expect(angle(5.2)).toBeGreaterThan(90);
	expect(square.pose({ ...corner, reading: 5.2 }, 'metres')?.because).toContain('wider');
	expect(angle(4.85)).toBeLessThan(90);
	expect(square.pose({ ...corner, reading: 4.85 }, 'metres')?.because).toContain('tighter');
});

test('scales are those of the packet, and of a scale rule', () => {
	for (const units of ['metres', 'feet'] as const)
		for (const scale of paperScales[units]) expect(scales[units]).toContainEqual(scale);
	// ISO 5455:1979 (from memory) lists 1:50 and 1:100 for reduction: a metre is 20 mm and 10 mm.
	const on = (ratio: number, length: number) =>
		textOf(paper.pose({ what: 'the walk', ratio, way: 'to paper', length }, 'metres')?.answer);
	expect([on(50, 1), on(100, 1), on(50, 6.4)]).toEqual(['20.0', '10.0', '128.0']);
	// An eighth of an inch to the foot: 20 ft are 2 1/2 in (the foot is twelve inches).
	const inches = { what: 'the walk', ratio: 96, length: 20 };
	expect(textOf(paper.pose({ ...inches, way: 'to paper' }, 'feet')?.answer)).toBe('2.50');
	expect(textOf(paper.pose({ ...inches, length: 2.5, way: 'from paper' }, 'feet')?.answer)).toBe('20.0');
	expect(paper.pose({ ...inches, ratio: 77, way: 'to paper' }, 'feet')).toBeNull();
});

test('behind the front out is negative, and the tree is further off than the light is out', () => {
	const problem = behind.pose({ tree: 'a pine', street: 9, fromStreet: 12.5, light: 3 }, 'metres')!;
	expect(problem.steps.map(({ text }) => text)).toEqual(['−3.5', '6.5']);
	expect(problem.because).toContain('−3.5 m');
	// Before the front it is no such problem.
	expect(behind.pose({ tree: 'a pine', street: 9, fromStreet: 8, light: 3 }, 'metres')).toBeNull();
});
