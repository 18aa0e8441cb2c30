/** The flow walked as data: whatever is answered, every page is reached, none twice in vain, and there is a way on and back. */
import * as z from 'zod/mini';
import { beforeAll, describe, expect, it } from 'vitest';
import { blankYard, yardSchema, type Yard } from '../domain/yard';
import { fullPath, readAnswer, writeAnswer } from './answers';
import { keptAside } from './kept';
import { chapters, questions } from './questions';
import { fieldStatus, fieldsOf } from './status';
import {
	chapterProgress,
	findStep,
	firstOpenStep,
	nextStep,
	previousStep,
	remaining,
	stepForPath,
	stepPath,
	stepTitle,
	stepsOf
} from './steps';
import type { Step } from './types';
import { answerPage, picker } from './walk.testing';

const runs = process.env.LONG ? 1000 : 60;
const same = (a: Step | null, b: Step | null) => a?.question.id === b?.question.id && a?.item === b?.item;

interface Walk {
	yards: Yard[];
	visited: Step[];
	end: Yard;
}
/** Answers the first open page until there is none. */
function walk(seed: number): Walk {
	const pick = picker(seed);
	let yard = blankYard();
	const yards = [yard];
	const visited: Step[] = [];
	for (let step = firstOpenStep(yard); step; step = firstOpenStep(yard)) {
		visited.push(step);
		yard = answerPage(yard, step, pick);
		yards.push(yard);
		if (visited.length > 2000) throw new Error(`no end in sight at ${stepPath(step)}`);
	}
	return { yards, visited, end: yard };
}
let walks: Walk[];
beforeAll(() => {
	walks = Array.from({ length: runs }, (_, seed) => walk(seed + 1));
});

describe('every walk through the questions', () => {
	it('ends with nothing open, in a yard that is a yard', () => {
		for (const { end } of walks) {
			const read = z.safeParse(yardSchema, end);
			expect(read.error?.issues ?? []).toEqual([]);
			expect(stepsOf(end).filter((step) => step.status === 'open')).toEqual([]);
			expect(chapterProgress(end).every(({ open, answered, total }) => open === 0 && answered === total)).toBe(true);
		}
	});
	it('asks no page twice', () => {
		for (const { visited } of walks) {
			const paths = visited.map(stepPath);
			expect(new Set(paths).size).toBe(paths.length);
		}
	});
	it('asks for no path twice', () => {
		for (const { visited, end } of walks) {
			const paths = visited.flatMap((step) =>
				fieldsOf(end, step).map((field) => fullPath(field.path, step.item, step.question.each))
			);
			expect(paths.filter((path, i) => paths.indexOf(path) !== i)).toEqual([]);
		}
	});
	it('reaches, among them all, every question and every field', () => {
		const questionsSeen = new Set(walks.flatMap(({ visited }) => visited.map((step) => step.question.id)));
		expect(questions.filter((question) => !questionsSeen.has(question.id)).map((question) => question.id)).toEqual([]);
		const fieldsSeen = new Set(walks.flatMap(({ visited, end }) => visited.flatMap((step) => fieldsOf(end, step))));
		expect(questions.flatMap((question) => question.fields).filter((field) => !fieldsSeen.has(field))).toEqual([]);
	});
	it('skips, in some of them, every question that can be skipped', () => {
		for (const question of questions.filter((one) => one.when)) {
			const skipped = walks.some(({ end, visited }) => {
				const decider = visited.find((step) => step.question.id === question.decidedBy);
				return decider && !question.when?.(end, decider.item);
			});
			expect(skipped, question.id).toBe(true);
		}
	});
	it('goes on and back over the same pages', () => {
		for (const { yards } of walks.slice(0, 20)) {
			for (const yard of yards.filter((_, i) => i % 9 === 0)) {
				const steps = stepsOf(yard);
				expect(previousStep(yard, steps[0]!)).toBeNull();
				expect(nextStep(yard, steps.at(-1)!)).toBeNull();
				steps.slice(1).forEach((step, i) => {
					expect(same(nextStep(yard, steps[i]!), step)).toBe(true);
					expect(same(previousStep(yard, step), steps[i]!)).toBe(true);
				});
			}
		}
	});
	it('finds each page again by its address', () => {
		for (const { end } of walks) {
			for (const step of stepsOf(end)) {
				const address = new URL(stepPath(step), 'https://example.org/');
				const [, , chapter, question] = address.pathname.split('/');
				expect(findStep(end, chapter!, question!, address.searchParams.get('item'))).toEqual(step);
				expect(stepTitle(end, step)).toMatch(/^[A-Z].*\?$/);
			}
		}
	});
	it('promises at least as many pages in the chapter as then come', () => {
		for (const { yards, visited } of walks) {
			visited.forEach((step, i) => {
				const before = yards[i]!;
				const inChapter = (other: Step) => other.question.chapter === step.question.chapter;
				const known = (other: Step) =>
					other.item === null || readAnswer(before, `${other.question.each}.${other.item}`) !== undefined;
				const then = visited.slice(i + 1).filter((other) => inChapter(other) && known(other));
				expect(remaining(before, step), stepPath(step)).toBeGreaterThanOrEqual(then.length);
			});
		}
	});
	it('promises exactly none on the last page of a chapter', () => {
		for (const { end } of walks) {
			for (const { id } of chapters) {
				const last = stepsOf(end).findLast((step) => step.question.chapter === id);
				expect(remaining(end, last!)).toBe(0);
			}
		}
	});
	it('leads from every answer to the page where it is given', () => {
		for (const { end } of walks.slice(0, 15)) {
			for (const step of stepsOf(end)) {
				for (const field of fieldsOf(end, step)) {
					const path = fullPath(field.path, step.item, step.question.each);
					expect(same(stepForPath(end, path), step), path).toBe(true);
					const value = readAnswer(end, path);
					if (field.kind === 'rows' && Array.isArray(value)) {
						for (const row of value)
							expect(same(stepForPath(end, `${path}.${row.id}.at`), step) || step.question.id !== 'walk-steps').toBe(
								true
							);
					}
				}
			}
		}
	});
});

describe('answers that stop applying', () => {
	it('are kept and listed, and come back when they apply again', () => {
		let tried = 0;
		for (const { end } of walks) {
			for (const tree of end.trees ?? []) {
				if (tree.light !== 'soft' && tree.light !== 'bright') continue;
				tried++;
				const dark = writeAnswer(end, '@.light', tree.id, 'trees', 'none');
				const kept = keptAside(dark).map((answer) => answer.path);
				const inUse = keptAside(end).map((answer) => answer.path);
				expect(kept.filter((path) => !inUse.includes(path)).toSorted()).toEqual(
					['crownBase', 'form', 'ground', 'height', 'seenFrom'].map((key) => `trees.${tree.id}.${key}`)
				);
				for (const answer of keptAside(dark)) {
					expect(answer.value).not.toMatch(/undefined|NaN|\[object/);
					expect(readAnswer(dark, answer.path)).toEqual(readAnswer(end, answer.path));
				}
				expect(
					keptAside(dark).find((answer) => answer.path === `trees.${tree.id}.height`)?.decidedOn?.question.id
				).toBe('tree-wish');
				expect(keptAside(writeAnswer(dark, '@.light', tree.id, 'trees', tree.light))).toEqual(keptAside(end));
			}
		}
		expect(tried).toBeGreaterThan(10);
	});
	it('does not list an answer that is in use under another field', () => {
		const yard: Yard = { ...blankYard(), power: { cable: 'mm2', owned: { cableSize: 2.5 } } };
		expect(keptAside(yard)).toEqual([]);
	});
});

describe('a blank yard', () => {
	it('begins at the first question, with one page for each list', () => {
		const steps = stepsOf(blankYard());
		expect(steps.every((step) => step.status === 'open' && step.item === null)).toBe(true);
		expect(same(firstOpenStep(blankYard()), steps[0]!)).toBe(true);
		expect(stepPath(steps[0]!)).toBe('ask/place/units');
	});
	it('has no page where there is none', () => {
		expect(findStep(blankYard(), 'trees', 'canopy')).toBeNull();
		expect(findStep(blankYard(), 'trees', 'canopy', 'oak')).toBeNull();
		expect(findStep(blankYard(), 'house', 'canopy')).toBeNull();
		expect(findStep(blankYard(), 'nowhere', 'nothing')).toBeNull();
		expect(stepForPath(blankYard(), 'nowhere.nothing')).toBeNull();
		expect(stepForPath(blankYard(), 'trees.oak.spread')?.question.id).toBe('trees');
	});
	it('with "not sure" everywhere that offers it, leaves only what must be measured or chosen', () => {
		let yard = blankYard();
		for (const question of questions.filter((one) => !one.each)) {
			for (const field of question.fields.filter((one) => one.unsure))
				yard = writeAnswer(yard, field.path, null, undefined, 'unsure');
		}
		expect(z.safeParse(yardSchema, yard).success).toBe(true);
		const open = stepsOf(yard).flatMap((step) =>
			step.question.fields.filter((field) => fieldStatus(yard, field) === 'open')
		);
		expect(open.map((field) => field.path)).toEqual(mustBeTold);
	});
});
/** Nothing can be assumed for these: what there is, what is wanted, and what only the person can choose. */
const mustBeTold = [
	'place.units',
	'house.sections',
	'house.openings',
	'house.porches',
	'house.left.light',
	'house.right.light',
	'trees',
	'walks',
	'drives',
	'spots.beds',
	'spots.paved',
	'spots.seating',
	'spots.water',
	'spots.lights',
	'spots.walls',
	'spots.numbers',
	'power.transformer',
	'power.sensor',
	'power.cable'
];

describe('a page whose item has gone', () => {
	const yard: Yard = { ...blankYard(), trees: [{ id: 'oak', name: 'oak' }] };
	const step = findStep(yard, 'trees', 'canopy', 'oak')!;
	const gone = { ...yard, trees: [] };
	it('still has a way on and back', () => {
		expect(findStep(gone, 'trees', 'canopy', 'oak')).toBeNull();
		expect(nextStep(gone, step)?.question.id).toBe('walks');
		expect(previousStep(gone, step)?.question.id).toBe('trees');
	});
});
