/** All lessons and all kinds of problem, in the order they are taught. A lesson lies in a folder of its own name. */
import { beamLesson } from './beam/lesson';
import { beamKinds } from './beam/kinds';
import { spacingLesson } from './spacing/lesson';
import { spacingKinds } from './spacing/kinds';
import { offsetLesson } from './offset/lesson';
import { offsetKinds } from './offset/kinds';
import { energyKinds } from './energy/kinds';
import { energyLesson } from './energy/lesson';
import { safetyKinds } from './safety/kinds';
import { safetyLesson } from './safety/lesson';
import { seriesKinds } from './series/kinds';
import { seriesLesson } from './series/lesson';
import { sensorKinds } from './sensor/kinds';
import { sensorLesson } from './sensor/lesson';
import { dropKinds } from './drop/kinds';
import { dropLesson } from './drop/lesson';
import { loadKinds } from './load/kinds';
import { loadLesson } from './load/lesson';
import { canopyLesson } from './canopy/lesson';
import { canopyKinds } from './canopy/kinds';
import { setbackLesson } from './setback/lesson';
import { setbackKinds } from './setback/kinds';
import { lessonIds, type Lesson, type LessonId, type ProblemKind } from './types';

const taught = (a: { lesson: LessonId }, b: { lesson: LessonId }): number =>
	lessonIds.indexOf(a.lesson) - lessonIds.indexOf(b.lesson);
const made: readonly Lesson[] = [
	beamLesson,
	spacingLesson,
	offsetLesson,
	energyLesson,
	safetyLesson,
	seriesLesson,
	sensorLesson,
	dropLesson,
	loadLesson,
	canopyLesson,
	setbackLesson
];
const posed: readonly (readonly ProblemKind[])[] = [
	beamKinds,
	spacingKinds,
	offsetKinds,
	energyKinds,
	safetyKinds,
	seriesKinds,
	sensorKinds,
	dropKinds,
	loadKinds,
	canopyKinds,
	setbackKinds
];

export const lessons: readonly Lesson[] = made.toSorted((a, b) => taught({ lesson: a.id }, { lesson: b.id }));
export const kinds: readonly ProblemKind[] = posed.flat().toSorted(taught);
