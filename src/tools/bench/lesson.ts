import { lessonIds, makeSheet } from '../../lib/domain/lesson';
import { medianMs, type Row } from './measure';

/** A worksheet of ten problems from all lessons, another code each time. */
export function rows(): Row[] {
	let n = 0;
	const sheet = () =>
		makeSheet({
			code: `bench ${(n += 1)}`,
			lessons: lessonIds,
			level: 'several',
			count: 10,
			units: n % 2 === 0 ? 'feet' : 'metres',
			variant: 'F'
		});
	return [{ name: 'lesson.sheet', value: medianMs(sheet, 40), unit: 'ms' }];
}
