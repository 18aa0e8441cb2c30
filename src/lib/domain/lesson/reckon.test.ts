import { describe, expect, test } from 'vitest';
import { showWorking } from '../shared/show-working';
import { agrees, reckon, workingOf } from './reckon';
import type { Given, StepRule } from './types';

// Lessons In Electric Circuits, vol. I (in `reference-values`): 230 V feeder of 2300 ft each way, 10.09 Ω·cmil/ft, 25 A, 5 V a wire: 116,035 cmil.
const givens: Given[] = [
	{ symbol: 'ρ', name: 'resistivity of copper', text: '10.09', unit: 'Ω·cmil/ft' },
	{ symbol: 'L', name: 'length of the wire', text: '2300', unit: 'ft' },
	{ symbol: 'I', name: 'current', text: '25', unit: 'A' },
	{ symbol: 'V', name: 'volts that a wire may lose', text: '5', unit: 'V' }
];
const rule = { source: 'physics', rule: 'as in the book' };
const rules: StepRule[] = [
	{ ...rule, symbol: 'R', label: 'resistance of a wire', expression: 'V ÷ I', unit: 'Ω', decimals: 1 },
	{ ...rule, symbol: 'A', label: 'area of the wire', expression: 'ρ × L ÷ R', unit: 'cmil', decimals: 0 }
];
describe('a solution', () => {
	test('of a textbook, with its printed answer', () => {
		const steps = reckon(givens, rules);
		expect(steps.map(({ line, text }) => `${line} = ${text}`)).toEqual(['5 ÷ 25 = 0.2', '10.09 × 2300 ÷ 0.2 = 116035']);
		expect(agrees((10.09 * 2300) / (5 / 25), steps)).toBe(true);
		expect(agrees(116_036, steps)).toBe(false);
	});
	test('opens down to what was given, digit for digit', () => {
		const steps = reckon(givens, rules);
		const shown = showWorking(workingOf(givens, steps));
		expect(shown).toMatchObject({ line: '10.09 × 2300 ÷ 0.2', result: '116035 cmil', holds: true });
		expect(workingOf(givens, steps).inputs.at(-1)?.from?.value).toBe(0.2);
	});
	test('goes on from what was written down', () => {
		const steps = reckon(
			[{ symbol: 'a', name: 'a third', text: '1', unit: '' }],
			[
				{ ...rule, symbol: 'b', label: 'b', expression: 'a ÷ 3', unit: '', decimals: 2 },
				{ ...rule, symbol: 'c', label: 'c', expression: 'b × 300', unit: '', decimals: 0 }
			]
		);
		expect(steps[1]).toMatchObject({ line: '0.33 × 300', text: '99' });
	});
	test('a negative number stands in brackets', () => {
		const [step] = reckon(
			[{ symbol: 'a', name: 'a', text: '−2', unit: '' }],
			[{ ...rule, symbol: 'b', label: 'b', expression: '3 × a', unit: '', decimals: 0 }]
		);
		expect(step).toMatchObject({ line: '3 × (−2)', text: '−6' });
	});
	test('a symbol that nothing gives is a mistake of ours', () => {
		expect(() => reckon([], [{ ...rule, symbol: 'b', label: 'b', expression: 'a', unit: '', decimals: 0 }])).toThrow(
			/a/
		);
	});
});
