/**
 * What is made up is thought out in tenths of a metre, and 0.3 m is read as one foot where lengths are in feet: so a walk of
 * 1.2 m is one of 4 ft, and a door of 0.9 m one of 3 ft. Answers are brought to that scale first and come out as they were told.
 */
import { metresPerFoot } from '../shared/units';
import type { QuickAnswers } from './types';

/** Metres for each metre of the drawing. */
export const scaleFor = (units: QuickAnswers['units']): number => (units === 'feet' ? metresPerFoot / 0.3 : 1);

/** To the micrometre, so that a length comes out as it was told and the last digits are the same everywhere. */
const whole = (metres: number): number => Math.round(metres * 1e6) / 1e6 || 0;

/** Every number in it times `by`; all of them are lengths. */
export function scaled<T>(value: T, by: number): T {
	if (typeof value === 'number') return whole(value * by) as T;
	if (Array.isArray(value)) return value.map((one: unknown) => scaled(one, by)) as T;
	if (typeof value !== 'object' || value === null) return value;
	return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, scaled<unknown>(one, by)])) as T;
}

/** Answers at the scale of the drawing: lengths of the ground only. Cable that is owned stays as it was told. */
export const atScale = (answers: QuickAnswers, scale: number): QuickAnswers => ({
	...answers,
	walk: answers.walk / scale,
	drive: answers.drive / scale,
	wall: answers.wall / scale,
	receptacle: answers.receptacle / scale
});
