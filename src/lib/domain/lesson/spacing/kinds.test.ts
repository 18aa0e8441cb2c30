/** Problems of rows: sound whatever is drawn, and known cases give their known answers. */
import { describe, expect, test } from 'vitest';
import { rules } from '../../shared/rules';
import { expectSound, problemOf } from '../kinds.testing';
import { countKind, evenKind } from './count';
import { spacingKinds } from './kinds';
import { evennessKind, rulesKind } from './readings';

describe('sound', () => {
	for (const kind of spacingKinds) test(kind.id, () => expectSound(kind));
});
const answerOf = (problem: ReturnType<typeof countKind.pose>) =>
	problem?.answer.type === 'number' ? problem.answer.text : null;
describe('known answers', () => {
	// The fence-post problem as it is usually put: 100 ft, a post every 10 ft: 11 posts, or 10 with none at one end.
	test('a hundred feet by ten', () => {
		expect(answerOf(countKind.pose({ length: 100, spacing: 10, ends: 'both' }, 'feet'))).toBe('11');
		expect(answerOf(countKind.pose({ length: 100, spacing: 10, ends: 'first' }, 'feet'))).toBe('10');
	});
	test('ten metres at about three', () =>
		expect(answerOf(evenKind.pose({ length: 10, wanted: 3 }, 'metres'))).toBe('3.33'));
	// Mean of 2, 4, 6, 8, 10 is 6 (by symmetry), three times the least.
	test('five readings', () => expect(answerOf(evennessKind.pose({ lux: [2, 4, 6, 8, 10] }, 'feet'))).toBe('3.0'));
	test('the bounds are the trade’s: 5 lx and 5 to 1', () => {
		// Municipal tables using IES-type figures: walks 5 lx (0.5 fc) on average, 5:1 average to minimum.
		expect(rules['path.level'].figures).toMatchObject({ walk: 5, ratio: 5 });
		const right = (lux: number[]) => {
			const answer = rulesKind.pose({ lux }, 'metres')!.answer;
			return answer.type === 'choice' ? answer.right : null;
		};
		expect(right([5, 5, 5, 5, 5])).toBe(0);
		expect(right([1, 10, 10, 10, 10])).toBe(1);
		expect(right([4, 4, 4, 4, 4])).toBe(2);
		expect(right([0.5, 1, 1, 1, 16])).toBe(3);
	});
	test('numbers that make no problem', () => {
		expect(countKind.pose({ length: 10, spacing: 3, ends: 'both' }, 'metres')).toBe(null);
		expect(evenKind.pose({ length: 12, wanted: 3 }, 'metres')).toBe(null);
		expect(evenKind.pose({ length: 10.5, wanted: 3 }, 'metres')).toBe(null);
		expect(evennessKind.pose({ lux: [0, 1, 2, 3, 4] }, 'metres')).toBe(null);
	});
});
test('each of the four verdicts comes up', () => {
	const seen = new Set(
		Array.from({ length: 200 }, (_, n) => problemOf(rulesKind, `verdicts ${n}`, 'metres').answer).map((answer) =>
			answer.type === 'choice' ? answer.right : -1
		)
	);
	expect([...seen].toSorted()).toEqual([0, 1, 2, 3]);
});
