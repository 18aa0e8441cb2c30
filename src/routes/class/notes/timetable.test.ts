import { expect, test } from 'vitest';
import { lessons } from '$lib/domain/lesson';
import { fortyMinutes } from '../course';
import { timetable } from './timetable';

const slots = timetable(lessons, fortyMinutes);

test('eight lessons fill forty minutes without a gap', () => {
	const taught = slots.filter(({ from }) => from !== null);
	expect(taught.map(({ lesson }) => lesson.id)).toEqual(fortyMinutes);
	expect(taught.length).toBe(8);
	expect(taught.at(-1)!.to).toBe(40);
	for (const [i, { from }] of taught.entries()) expect(from).toBe(taught[i - 1]?.to ?? 0);
});
test('what is done in a lesson adds up to its minutes', () => {
	for (const { lesson } of slots)
		expect(
			lesson.notes.course.reduce((sum, { minutes }) => sum + minutes, 0),
			lesson.id
		).toBe(lesson.minutes);
});
test('the others are there too, with no time of their own', () => {
	expect(slots.map(({ lesson }) => lesson)).toEqual(lessons);
	expect(slots.filter(({ from, to }) => from === null && to === null).length).toBe(lessons.length - 8);
});
