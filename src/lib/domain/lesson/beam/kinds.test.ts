/** Problems of beams: sound whatever is drawn, and a textbook's numbers give its printed answer. */
import { describe, expect, test } from 'vitest';
import published from '../../photometry/photometry.published.json';
import { expectSound } from '../kinds.testing';
import { asideKind } from './aside';
import { footcandlesKind } from './footcandles';
import { furtherKind } from './further';
import { beamKinds } from './kinds';
import { widthKind } from './width';

describe('sound', () => {
	for (const kind of beamKinds) test(kind.id, () => expectSound(kind));
});
describe('printed answers', () => {
	const answerOf = (problem: ReturnType<typeof widthKind.pose>) =>
		problem?.answer.type === 'number' ? `${problem.answer.text} ${problem.answer.unit}` : null;

	// 2·d·tan(θ/2): 6.498 ft, analytic.
	test('a 36° beam at 10 ft', () =>
		expect(answerOf(widthKind.pose({ angle: 36, distance: 10 }, 'feet'))).toBe(
			`${published.spot36.feetWide.toFixed(1)} ft`
		));
	test('the school problem of the tilted page', () => {
		const { lumens, metres, cosine, lux } = published.bareLamp;
		const problem = asideKind.pose({ form: 'tilted', lumens, distance: metres, cosine }, 'metres');
		expect(answerOf(problem)).toBe(`${lux} lx`);
	});
	test('the school problem of the place aside', () => {
		const { below, height, aside, lux } = published.poolOnTable;
		const problem = asideKind.pose({ form: 'below', lux: below, height, aside }, 'metres');
		expect(answerOf(problem)).toBe(`${lux} lx`);
	});
	// Aaron Lee, Lighting for Electricians (open textbook), Inverse Square Law, example 2.
	test('100 lx at 1 m', () => {
		expect(answerOf(furtherKind.pose({ lux: 100, from: 1, to: 2 }, 'metres'))).toBe('25.0 lx');
		expect(answerOf(furtherKind.pose({ lux: 100, from: 1, to: 3 }, 'metres'))).toBe('11.1 lx');
	});
	// A student project of the Technikerschule Beckum: 40 lx at 0.5 m, 10 lx at 1 m (seen).
	test('40 lx at half a metre', () =>
		expect(answerOf(furtherKind.pose({ lux: 40, from: 0.5, to: 1 }, 'metres'))).toBe('10.0 lx'));
	// IES, The Lighting Handbook, conversion factors: 1 fc = 10.76391 lx.
	test('a footcandle', () => {
		expect(answerOf(footcandlesKind.pose({ reading: 1, from: 'fc' }, 'metres'))).toBe('10.8 lx');
		expect(answerOf(footcandlesKind.pose({ reading: 10.76391, from: 'lx' }, 'feet'))).toBe('1.00 fc');
		expect(answerOf(footcandlesKind.pose({ reading: 100, from: 'lx' }, 'feet'))).toBe('9.29 fc');
	});
});
test('numbers that make no problem', () => {
	expect(furtherKind.pose({ lux: 100, from: 1, to: 1 }, 'metres')).toBe(null);
	expect(widthKind.pose({ angle: 180, distance: 1 }, 'metres')).toBe(null);
});
