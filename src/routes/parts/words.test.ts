import { describe, expect, it } from 'vitest';
import { countOf, currencyWords, labelList, together, windOf } from './words';

describe('words', () => {
	it('count fixtures in a sentence', () => {
		expect(countOf('uplight', 1)).toBe('One uplight');
		expect(countOf('path', 2)).toBe('Two path lights');
		expect(countOf('wash', 14)).toBe('14 wall washes');
	});
	it('list labels, long runs by their ends', () => {
		expect(labelList([])).toBe('');
		expect(labelList(['T1'])).toBe('T1');
		expect(labelList(['T1', 'T2', 'T3'])).toBe('T1, T2 and T3');
		expect(labelList(['P1', 'P2', 'P3', 'P4', 'P5'])).toBe('P1 to P5');
	});
	it('keep a figure with its unit, and leave other spaces to break', () => {
		expect(together('33 ft 1/2 in along, 20 ft 7 1/2 in out')).toBe(
			'33\u00A0ft\u00A01/2\u00A0in along, 20\u00A0ft\u00A07\u00A01/2\u00A0in out'
		);
		expect(together('Path light, LED 2.5 W')).toBe('Path light, LED 2.5\u00A0W');
		expect(together('3 inner bends')).toBe('3 inner bends');
	});
	it('name directions all the way round', () => {
		expect([0, 44, 90, 225, 359, -45, 405].map(windOf)).toEqual([
			'north',
			'north-east',
			'east',
			'south-west',
			'north',
			'north-west',
			'north-east'
		]);
	});
	it('write money by code or by sign, and take a code nobody knows', () => {
		expect(currencyWords(32, 'USD')).toBe('$32.00');
		expect(currencyWords(0.3, '€')).toBe('€0.30');
		expect(currencyWords(5, 'kr')).toBe('kr 5.00');
		expect(currencyWords(5, 'XYZ')).toContain('5.00');
	});
});
