/** What is suggested for forty minutes: of each part of the work the lesson that the others rest on. */
import type { LessonId } from '$lib/domain/lesson';

export const fortyMinutes: readonly LessonId[] = [
	'offset',
	'beam',
	'spacing',
	'series',
	'drop',
	'load',
	'energy',
	'safety'
];
