/** What the plan says is assumed or missing leads to the page where it is answered, whatever was answered so far. */
import { expect, it } from 'vitest';
import { blankYard, examples } from '../domain/yard';
import { makePlan } from '../domain/plan';
import { makeSite } from '../domain/site';
import { firstOpenStep, stepForPath, stepPath } from './steps';
import { answerPage, picker } from './walk.testing';

const runs = process.env.LONG ? 200 : 6;

it('every assumption and everything missing has a page', () => {
	let seen = 0;
	for (let seed = 1; seed <= runs; seed++) {
		const pick = picker(seed * 7919);
		let yard = blankYard();
		for (let step = firstOpenStep(yard), i = 0; step; step = firstOpenStep(yard), i++) {
			if (i % 6 === 0) {
				// the whole plan is slow on yards as odd as these: the site speaks for every answer, the later stages for a few
				const { assumptions, missing } =
					(seed === 1 && i % 24 === 0) || process.env.LONG ? makePlan(yard) : makeSite(yard);
				for (const { path } of [...assumptions, ...missing]) {
					seen++;
					expect(stepForPath(yard, path), `${path} (seed ${seed}, at ${stepPath(step)})`).not.toBeNull();
				}
			}
			yard = answerPage(yard, step, pick);
		}
	}
	expect(seen).toBeGreaterThan(100);
});
it('nothing is missing on a demo yard, and nothing is left open', () => {
	for (const example of examples) {
		const { yard } = example;
		expect(firstOpenStep(yard), example.id).toBeNull();
		expect(makePlan(yard).missing, example.id).toEqual([]);
	}
});
