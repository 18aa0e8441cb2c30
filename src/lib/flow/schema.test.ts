/** Every answer that a yard can hold is asked for once, within the range that the yard accepts, or said not to be. */
import { describe, expect, it } from 'vitest';
import { glossary } from './glossary';
import { chapters, questions } from './questions';
import { choicesOf, leavesOf, rangeOf, type Leaf } from './schema.testing';
import type { Field, Question } from './types';

/** Answers that no question asks for, and why. */
const notAsked: [pattern: RegExp, why: string][] = [
	[/^(format|version)$/, 'says what the file is'],
	[/\.id$/, 'given by the program'],
	[/^power\.prices$/, 'changed on the shopping page, beside each price'],
	[/^power\.circuit\b/, 'set on the circuit page, beside each run'],
	[/^power\.measured$/, 'typed on the page First night, beside each lamp'],
	[/^power\.lamps\b/, 'opened from a file on the page After dark'],
	[/^fixtures\b/, 'set on the layout page, beside each light'],
	[/^rules\b/, 'set on the rules page, beside each rule'],
	[/^underlay\b/, 'opened from a picture on the drawing page'],
	[/^pictures\b/, 'the picture of the underlay, in a file only'],
	[/^done\b/, 'ticked off on the checklist']
];
interface Asked {
	path: string;
	field: Field;
	question: Question;
}
const asked: Asked[] = questions.flatMap((question) =>
	question.fields.flatMap((field): Asked[] => {
		const path = field.path.replace(/^@/, `${question.each}.*`);
		if (field.kind === 'rows')
			return field.columns.map((column) => ({ path: `${path}.*.${column.path}`, field: column, question }));
		if (field.kind === 'items') return [{ path: `${path}.*.name`, field, question }];
		return [{ path, field, question }];
	})
);
const leaves = leavesOf();
const covers = (one: Asked, leaf: Leaf) => leaf.path === one.path || leaf.path.startsWith(`${one.path}.`);
const leavesUnder = (one: Asked) => leaves.filter((leaf) => covers(one, leaf));

describe('the questions against the schema of a yard', () => {
	it('sees the schema as it is', () => {
		const paths = leaves.map((leaf) => leaf.path);
		expect(paths.length).toBeGreaterThan(100);
		expect(paths).toEqual(
			expect.arrayContaining([
				'place.location.latitude',
				'trees.*.spread',
				'walks.*.steps.*.going',
				'power.hours.clock'
			])
		);
	});
	it.each([...new Set(leaves.map((leaf) => leaf.path))])('%s is asked once, or not asked for a reason', (path) => {
		const leaf = leaves.find((one) => one.path === path)!;
		const by = asked.filter((one) => covers(one, leaf));
		const excused = notAsked.some(([pattern]) => pattern.test(path));
		if (excused) expect(by.filter((one) => one.path === path)).toEqual([]);
		else {
			// the same path twice only where one answer on the page decides which of the two is shown
			expect(by.length).toBeGreaterThan(0);
			if (by.length > 1) expect(by.every((one) => one.field.when && one.question === by[0]?.question)).toBe(true);
		}
	});
	it.each(asked.map((one) => [`${one.question.id}: ${one.path}`, one] as const))(
		'%s is an answer of the schema',
		(_, one) => {
			expect(leavesUnder(one).length).toBeGreaterThan(0);
		}
	);
	it.each(asked.map((one) => [`${one.question.id}: ${one.path}`, one] as const))(
		'%s offers "not sure" exactly where it is accepted',
		(_, one) => {
			if (one.field.kind === 'items') return expect(one.field.unsure).toBeUndefined();
			expect(leavesUnder(one).some((leaf) => leaf.unsure)).toBe(one.field.unsure !== undefined);
		}
	);
	it.each(asked.filter(({ field }) => 'min' in field).map((one) => [`${one.question.id}: ${one.path}`, one] as const))(
		'%s has the range of the schema',
		(_, one) => {
			const [leaf] = leavesUnder(one);
			const field = one.field as Field & { min: number; max: number };
			expect(rangeOf(leaf!.schema)).toEqual({ min: field.min, max: field.max });
		}
	);
	it.each(
		asked.filter(({ field }) => field.kind === 'choice').map((one) => [`${one.question.id}: ${one.path}`, one] as const)
	)('%s offers every choice of the schema and no other', (_, one) => {
		const choices = choicesOf(leavesUnder(one)[0]!.schema);
		const offered = one.field.kind === 'choice' ? one.field.options.map((option) => option.value) : [];
		if (choices === null) expect(one.path).toBe('power.owned.cableSize');
		else expect(new Set(offered)).toEqual(new Set(choices));
		expect(new Set(offered).size).toBe(offered.length);
	});
});

describe('the questions as people meet them', () => {
	it('have unique slugs and known chapters, in the order of the chapters', () => {
		const ids = questions.map((question) => question.id);
		expect(new Set(ids).size).toBe(ids.length);
		expect(ids.every((id) => /^[a-z][a-z-]*$/.test(id))).toBe(true);
		expect([...new Set(questions.map((question) => question.chapter))]).toEqual(chapters.map((chapter) => chapter.id));
	});
	it.each(questions.map((question) => [question.id, question] as const))(
		'%s is one thing, asked plainly',
		(_, question) => {
			expect(question.title('oak')).toMatch(/^[A-Z].*\?$/);
			expect(question.title('oak').includes('oak')).toBe(question.each !== undefined);
			expect(question.hint).toMatch(/^[A-Z].*\.$/);
			expect(question.fields.length).toBeGreaterThan(0);
			// of fields that exclude each other one is shown
			expect(new Set(question.fields.map((field) => field.path)).size).toBeLessThanOrEqual(4);
			expect(question.fields.some((field) => !field.optional)).toBe(true);
		}
	);
	/** As the page finds words: whole, plural or not, upper or lower case. A street lamp is no trade word. */
	const says = (hint: string, word: string) =>
		new RegExp(`(?<![\\p{L}-])${word}(?:s|es)?(?!\\p{L})`, 'iu').test(hint.replaceAll('street lamp', ''));
	it.each(questions.map((question) => [question.id, question] as const))(
		'%s explains the trade words of its hint there, or an earlier page of the chapter did',
		(_, question) => {
			for (const word of question.words ?? []) {
				expect(Object.keys(glossary)).toContain(word);
				expect(says(question.hint, word), word).toBe(true);
			}
			const before = questions
				.slice(0, questions.indexOf(question) + 1)
				.filter((one) => one.chapter === question.chapter);
			const explained = new Set(before.flatMap((one) => one.words ?? []));
			const unexplained = Object.keys(glossary).filter((word) => says(question.hint, word) && !explained.has(word));
			expect(unexplained).toEqual([]);
		}
	);
	it('explain every word of the glossary somewhere', () => {
		const used = new Set(questions.flatMap((question) => question.words ?? []));
		expect(Object.keys(glossary).filter((word) => !used.has(word))).toEqual([]);
	});
	it.each(questions.filter((question) => question.decidedBy).map((question) => [question.id, question] as const))(
		'%s names an earlier question that decides it',
		(_, question) => {
			const decider = questions.findIndex((one) => one.id === question.decidedBy);
			expect(decider).toBeGreaterThanOrEqual(0);
			expect(decider).toBeLessThan(questions.indexOf(question));
			expect([undefined, question.each]).toContain(questions[decider]?.each);
		}
	);
	it('every question that may be skipped says what decides it', () => {
		expect(questions.filter((question) => question.when && !question.decidedBy).map((question) => question.id)).toEqual(
			[]
		);
	});
});
