import { describe, expect, test } from 'vitest';
import { expectLesson } from '../lessons.testing';
import { stepOf } from './checklists';
import { jobs, sentenceOf, whoOf } from './jobs';
import { safetyLesson } from './lesson';

const by = (who: string) => jobs.filter((job) => whoOf(job) === who).map(({ id }) => id);

describe('the lesson of safety', () => {
	test('is sound at every place of its lever', () => expectLesson(safetyLesson));

	// Who is common practice, no source; that a receptacle out of doors has a GFCI and an in-use cover is NEC 210.8 and 406.9(B)(1).
	test('mains is a licensed electrician’s, and nothing else is', () =>
		expect(by('electrician')).toEqual(['receptacle', 'gfci', 'cover', 'dead']));
	test('utilities mark their own lines, and nothing else is theirs', () =>
		expect(by('utility')).toEqual(['gas', 'mains', 'water']));
	test('what the checklist forbids is nobody’s', () =>
		expect(by('nobody')).toEqual(['open', 'extension', 'live', 'twist', 'rain', 'hammer']));
	test('the rest is the householder’s', () =>
		expect(by('you')).toEqual(['connect', 'trench', 'private', 'call', 'hang', 'terminals', 'aim']));

	test('a job fits a line of the picture, and what is said of it stands in the checklist', () => {
		for (const job of jobs) {
			expect(job.work.length, job.work).toBeLessThanOrEqual(36);
			const { text, cautions } = stepOf(job.state, job.step);
			expect([text, ...cautions].join(' '), job.id).toContain(sentenceOf(job));
		}
	});
	test('local code is deferred to on every screen', () => {
		for (const units of ['feet', 'metres'] as const)
			for (const { words } of [
				safetyLesson.scene(units),
				safetyLesson.reveal(units),
				...safetyLesson.lever(units).values.map((value) => safetyLesson.at(value, units))
			])
				expect(words.join(' ')).toMatch(/Local code comes before/);
	});
	test('each hand comes up under the slider', () => {
		const { values } = safetyLesson.lever('feet');
		const seen = new Set(values.map((value) => safetyLesson.at(value, 'feet').figures[1]!.text));
		expect(seen.size).toBe(4);
	});
});
