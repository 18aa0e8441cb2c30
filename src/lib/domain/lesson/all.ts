/** All lessons and all kinds of problem, in the order they are taught. A lesson lies in a folder of its own name. */
import { lessonIds, type Lesson, type LessonId, type ProblemKind } from './types';

const taught = (a: { lesson: LessonId }, b: { lesson: LessonId }): number =>
	lessonIds.indexOf(a.lesson) - lessonIds.indexOf(b.lesson);
const made: readonly Lesson[] = [];
const posed: readonly (readonly ProblemKind[])[] = [];

export const lessons: readonly Lesson[] = made.toSorted((a, b) => taught({ lesson: a.id }, { lesson: b.id }));
export const kinds: readonly ProblemKind[] = posed.flat().toSorted(taught);
