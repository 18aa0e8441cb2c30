import { describe, expect, test } from 'vitest';
import { expectSound, problemOf } from '../kinds.testing';
import type { Problem, ProblemKind } from '../types';
import { safetyKinds, type CallDrawn, type DepthDrawn, type OrderDrawn, type WhoDrawn } from './kinds';
import { jobs } from './jobs';
import { lastDayToCall, weekdays } from './working-days';

const kind = <T>(id: string) => safetyKinds.find((one) => one.id === id) as ProblemKind<T>;
const right = (problem: Problem | null) =>
	problem?.answer.type === 'choice' ? problem.answer.choices[problem.answer.right] : undefined;

describe('problems about safe work', () => {
	test.each(safetyKinds.map((one) => [one.id, one] as const))('%s is sound', (_, one) => expectSound(one));

	// NEC Table 300.5, low-voltage circuits of 30 V and less (seen second-hand): 6 in in general, 18 in under a one-family drive.
	test.each([
		['a lawn', 6],
		['a flower bed', 6],
		['a drive', 18]
	] as const)('under %s %d inches are enough, and nothing less is', (ground, inches) => {
		const names = ['Ada', 'Ben', 'Cleo', 'Dov'];
		const covers = [inches - 1, inches, inches + 1, inches + 4].map((n) => n * 0.0254);
		expect(right(kind<DepthDrawn>('safety.depth').pose({ ground, covers, names }, 'feet'))).toBe('Ben');
		const without = [inches - 3, inches - 2, inches + 4, inches + 1].map((n) => n * 0.0254);
		expect(right(kind<DepthDrawn>('safety.depth').pose({ ground, covers: without, names }, 'feet'))).toBe('Dov');
		expect(
			kind<DepthDrawn>('safety.depth').pose({ ground, covers: covers.map((c) => c + 1), names }, 'feet')
		).toBeNull();
	});
	// By a calendar: two full working days between, as most dig-notice laws count (common practice, no source).
	test('days to call, by a calendar', () => {
		expect(weekdays.map((day) => `${day}: ${lastDayToCall(day)}`)).toEqual([
			'Monday: Wednesday',
			'Tuesday: Thursday',
			'Wednesday: Friday',
			'Thursday: Monday',
			'Friday: Tuesday',
			'Saturday: Wednesday',
			'Sunday: Wednesday'
		]);
		// The same by dates: 4 January 2027 is a Monday (proleptic Gregorian calendar, ISO 8601).
		for (let day = 4; day < 11; day += 1) {
			const working = (n: number) => ![0, 6].includes(new Date(Date.UTC(2027, 0, n)).getUTCDay());
			let full = 0;
			let before = day;
			while (full < 3) if (working(--before)) full += 1;
			expect(lastDayToCall(weekdays[day - 4]!)).toBe(weekdays[(before - 4 + 70) % 7]);
		}
	});
	test('the call comes first and closing the ground last, whatever else', () => {
		const steps = ['finish', 'measure', 'dig-notice', 'connect/run-1'];
		const pose = kind<OrderDrawn>('safety.order').pose;
		expect(right(pose({ steps, end: 'first' }, 'feet'))).toBe('Call the dig-notice service');
		expect(right(pose({ steps, end: 'last' }, 'feet'))).toBe('Close the ground over the joints');
		expect(pose({ steps: ['finish', 'no-step', 'unplug', 'tug'], end: 'last' }, 'feet')).toBeNull();
	});
	test('every job can be asked about, and the key says that local code comes first', () => {
		for (const { id } of jobs) {
			const order = ['you', 'electrician', 'utility', 'nobody'] as const;
			const problem = kind<WhoDrawn>('safety.who').pose({ job: id, order }, 'metres')!;
			expect(problem.because).toContain('Local code comes before this plan.');
			expect(right(problem)).toBeDefined();
		}
	});
	test('a right answer does not always stand at one place', () => {
		for (const one of safetyKinds) {
			const places = new Set(
				Array.from({ length: 40 }, (_, n) => {
					const { answer } = problemOf(one, `places ${n}`, 'feet');
					return answer.type === 'choice' ? answer.right : -1;
				})
			);
			expect([...places].sort(), one.id).toEqual([0, 1, 2, 3]);
		}
	});
	test('a day that is no answer is no problem', () => {
		const drawn: CallDrawn = { dig: 'Monday', what: 'a hole', name: 'Ada', days: ['Friday', 'Thursday'] };
		expect(kind<CallDrawn>('safety.call').pose(drawn, 'feet')).toBeNull();
	});
});
