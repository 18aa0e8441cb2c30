/** When each suggested lesson comes in a class of forty minutes. */
import type { Lesson } from '$lib/domain/lesson';

export interface Slot {
	lesson: Lesson;
	/** Minutes of the class; null for a lesson that is not of the suggested ones. */
	from: number | null;
	to: number | null;
}
/** All lessons as they are taught; the suggested ones follow one another without a break. */
export function timetable(lessons: readonly Lesson[], suggested: readonly Lesson['id'][]): Slot[] {
	let clock = 0;
	return lessons.map((lesson) => {
		if (!suggested.includes(lesson.id)) return { lesson, from: null, to: null };
		const from = clock;
		clock += lesson.minutes;
		return { lesson, from, to: clock };
	});
}
