import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Working } from './working';
import { evaluate } from './evaluate';
import { fixed, plain, showWorking } from './show-working';

describe('the evaluator', () => {
	// Values of JavaScript's own arithmetic, which follows the usual precedence of mathematics.
	test.each([
		['1 + 2 × 3', 7],
		['(1 + 2) × 3', 9],
		['2 ^ 3 ^ 2', 512],
		['−2 ^ 2', -4],
		['(−2) ^ 2', 4],
		['2 ^ −1', 0.5],
		['12 ÷ 4 ÷ 3', 1],
		['7 - 2 - 1', 4],
		['2 * 3 / 4', 1.5],
		['3 × −2', -6],
		['√(9) + 1', 4],
		['2 × √(2 + 2) ^ 2', 8]
	])('%s', (text, value) => expect(evaluate(text)).toBe(value));

	test.each(['', '1 +', '(1', '1)', '2 x', 'a', '1 2', '3 $ 4', '()', '4x'])('is not a number: %s', (text) =>
		expect(evaluate(text)).toBeNaN()
	);

	// Handbook values of the unit circle.
	test.each([
		['tan(45)', 1],
		['sin(30)', 0.5],
		['cos(60)', 0.5],
		['arctan(1)', 45],
		['2 × 3 × tan(90 ÷ 2)', 6],
		['tan(θ ÷ 2)', 1]
	])('angles are in degrees: %s', (text, value) => expect(evaluate(text, { θ: 90 })).toBeCloseTo(value, 12));
	test.each(['tan 45', 'tan', 'tan()', 'tan(45', '√9'])('is not a number: %s', (text) =>
		expect(evaluate(text)).toBeNaN()
	);

	test('what is smaller than can be written down is a number all the same', () => {
		for (const value of [1e-300, 1e-99, 5e-324, 1e-7])
			expect(evaluate(plain(value, 3)), String(value)).toBeCloseTo(value, 90);
	});

	test('symbols with digits and Greek letters', () => {
		expect(evaluate('V0 − 2 × L × ρ', { V0: 12, L: 10, ρ: 0.01 })).toBeCloseTo(11.8, 12);
	});

	test('agrees with JavaScript on random sums', () => {
		const leaf = fc.integer({ min: 0, max: 999 }).map((n) => String(n / 8));
		const tree = fc.letrec<{ sum: string }>((tie) => ({
			sum: fc.oneof(
				{ depthSize: 'small' },
				leaf,
				fc.tuple(tie('sum'), fc.constantFrom('+', '-', '*', '/'), tie('sum')).map(([a, op, b]) => `(${a} ${op} ${b})`)
			)
		})).sum;
		fc.assert(
			fc.property(tree, (text) => {
				const js = Function(`return ${text}`)() as number;
				expect(evaluate(text.replaceAll('*', '×').replaceAll('/', '÷').replaceAll('-', '−'))).toBe(js);
			}),
			{ numRuns: process.env.LONG ? 20000 : 500 }
		);
	});
});

const value = fc.oneof(
	fc.double({ min: 0.0001, max: 1e4, noNaN: true }),
	fc.double({ min: -50, max: 50, noNaN: true }).filter((v) => Math.abs(v) > 1e-6),
	fc.integer({ min: 1, max: 400 })
);
const expressions = ['a − 2 × b × c ÷ 1000', 'a × b ÷ c', '(a + b) × c', 'a + b × (c − a)', 'a − b ÷ c', 'a × b + c'];
const workings = fc
	.record({
		a: value,
		b: value,
		c: value,
		expression: fc.constantFrom(...expressions),
		decimals: fc.integer({ min: 0, max: 4 })
	})
	.map(({ expression, decimals, ...inputs }): Working => {
		return {
			label: 'x',
			unit: 'V',
			rule: '',
			source: 'physics',
			decimals,
			expression,
			value: evaluate(expression, inputs),
			inputs: Object.entries(inputs).map(([symbol, value]) => ({ symbol, name: symbol, value, unit: 'm' }))
		};
	})
	.filter((working) => Number.isFinite(working.value) && Math.abs(working.value) < 1e7);

describe('what is displayed', () => {
	test('re-evaluates to what is displayed', () => {
		fc.assert(
			fc.property(workings, (working) => {
				const shown = showWorking(working);
				expect(shown.holds).toBe(true);
				expect(`${fixed(evaluate(shown.line), working.decimals)} V`).toBe(shown.result);
				// The inputs listed are the numbers in the line.
				for (const input of shown.inputs) {
					const number = /= (−?[\d.]+)/.exec(input)?.[1];
					const symbol = input.split(' ')[0]!;
					if (working.expression.includes(symbol)) expect(shown.line).toContain(number);
				}
			}),
			{ numRuns: process.env.LONG ? 50000 : 1500 }
		);
	});

	test('shows few digits where few do', () => {
		const shown = showWorking(
			{
				label: 'volts at T8',
				value: 12 - (2 * 6.7056 * 8.29 * 3.2) / 1000,
				unit: 'V',
				decimals: 2,
				rule: '',
				source: 'physics',
				expression: 'V0 − 2 × L × r × I ÷ 1000',
				inputs: [
					{ symbol: 'V0', name: 'volts at the transformer', value: 12, unit: 'V' },
					{ symbol: 'L', name: 'cable to T8', value: 6.7056, unit: 'm' },
					{ symbol: 'r', name: 'resistance', value: 8.29, unit: 'Ω/km' },
					{ symbol: 'I', name: 'current', value: 3.2, unit: 'A' }
				]
			},
			'feet'
		);
		expect(shown).toEqual({
			line: '12 − 2 × 6.71 × 8.29 × 3.2 ÷ 1000',
			inputs: [
				'V0 = 12 V, volts at the transformer',
				'L = 6.71 m (22 ft), cable to T8',
				'r = 8.29 Ω/km, resistance',
				'I = 3.2 A, current'
			],
			result: '11.64 V',
			holds: true
		});
	});

	test('says so when a working does not give its value', () => {
		const shown = showWorking({
			label: '',
			value: 5,
			unit: 'V',
			decimals: 1,
			rule: '',
			source: 'physics',
			expression: 'a',
			inputs: [{ symbol: 'a', name: 'a', value: 4, unit: 'V' }]
		});
		expect(shown.holds).toBe(false);
	});

	test('numbers are written out, without exponents or a minus zero', () => {
		expect(plain(1.2e-7, 3)).toBe('0.00000012');
		expect(plain(-2.5, 3)).toBe('−2.5');
		expect(plain(1e22, 3)).toBe('10000000000000000000000');
		expect(fixed(-0.001, 1)).toBe('0.0');
		expect(plain(NaN, 3)).toBe('not known');
	});
});
