import { expect, test } from 'vitest';
import { makePlan } from '../../plan';
import { evaluate } from '../../shared/evaluate';
import { fixed, showWorking } from '../../shared/show-working';
import { awkward, blankYard, examples, faulty } from '../../yard';
import { figuresOf } from './figures';

const yards = [...examples, ...faulty, ...awkward].map(({ id, yard }) => [id, yard] as const);

test.each([...yards, ['blank', blankYard()] as const])('%s: what is shown is what its working shows', (_, yard) => {
	const figures = figuresOf(makePlan(yard));
	expect(new Set(figures.map(({ key }) => key)).size).toBe(figures.length);
	const wrong = figures.flatMap(({ key, label, text, working }) => {
		const made = working();
		const shown = showWorking(made);
		const again = fixed(evaluate(shown.line), made.decimals);
		return made.label === label && shown.result === text && `${again} ${made.unit}`.trim() === text
			? []
			: [`${key}: ${label} ${text}, working ${made.label} ${shown.line} = ${shown.result}`];
	});
	expect(wrong).toEqual([]);
	expect(figures.every(({ value }) => Number.isFinite(value))).toBe(true);
});
