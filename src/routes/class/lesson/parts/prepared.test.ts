import { expect, test } from 'vitest';
import { lessons } from '$lib/domain/lesson';
import { Prepared, whileIdle } from './prepared';

const lesson = lessons[0]!;
/** The lesson, and what was asked of it so far. */
function counted() {
	const asked: string[] = [];
	const told: typeof lesson = {
		...lesson,
		reveal: (units) => (asked.push('reveal'), lesson.reveal(units)),
		at: (value, units) => (asked.push(`at ${value}`), lesson.at(value, units))
	};
	return { asked, prepared: new Prepared(told, 'metres') };
}

test('each part is worked out once, and is what the lesson gives', () => {
	const { asked, prepared } = counted();
	expect(prepared.reveal()).toBe(prepared.reveal());
	expect(prepared.reveal()).toEqual(lesson.reveal('metres'));
	const { start } = prepared.lever();
	expect(prepared.at(start)).toBe(prepared.at(start));
	expect(prepared.at(start)).toEqual(lesson.at(start, 'metres'));
	expect(asked).toEqual(['reveal', `at ${start}`]);
});

test('ahead of time: the reveal first, then the lever where it stands, then all its places', () => {
	const { asked, prepared } = counted();
	const { start, values } = prepared.lever();
	for (const _ of prepared.ahead());
	expect(asked.slice(0, 2)).toEqual(['reveal', `at ${start}`]);
	expect(asked.toSorted()).toEqual(['reveal', ...values.map((value) => `at ${value}`)].toSorted());
	// Nothing is left to be worked out when the class asks.
	prepared.reveal();
	for (const value of values) prepared.at(value);
	expect(asked.length).toBe(values.length + 1);
});

test('work in idle time is done step by step until it is stopped', async () => {
	const done: number[] = [];
	function* work(): Generator<void> {
		for (let step = 1; step <= 3; step += 1) {
			done.push(step);
			yield;
		}
	}
	await new Promise<void>((finished) => {
		function* whole(): Generator<void> {
			yield* work();
			finished();
		}
		whileIdle(whole());
	});
	expect(done).toEqual([1, 2, 3]);
	const stop = whileIdle(work());
	stop();
	await new Promise((later) => setTimeout(later, 120));
	expect(done).toEqual([1, 2, 3]);
});
