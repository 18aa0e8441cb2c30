import { describe, expect, it } from 'vitest';
import { formatLength, formatLengthFinely, type UnitSystem } from './units';

describe('lengths read back', () => {
	// 1 ft = 0.3048 m exactly: international yard and pound agreement, 1959
	it.each<[number, UnitSystem, string]>([
		[5.9944, 'feet', '19 ft 8 in'],
		[5.9944, 'metres', '5.99 m'],
		[0.3048, 'feet', '1 ft'],
		[0.3, 'feet', '1 ft'],
		[0.15, 'feet', '6 in'],
		[0.0127, 'feet', '1/2 in'],
		[0.165, 'feet', '6 1/2 in'],
		[0, 'feet', '0 in'],
		[0, 'metres', '0 mm'],
		[0.15, 'metres', '150 mm'],
		[0.9996, 'metres', '1.00 m'],
		[1.05, 'metres', '1.05 m'],
		[-0.9144, 'feet', '−3 ft'],
		[-0.0001, 'metres', '0 mm'],
		[-0.001, 'feet', '0 in'],
		[3.048 - 0.001, 'feet', '10 ft'],
		[Number.NaN, 'metres', 'unknown'],
		[Number.POSITIVE_INFINITY, 'feet', 'unknown']
	])('%d m in %s is %s', (metres, units, words) => expect(formatLength(metres, units)).toBe(words));
	it.each<[number, UnitSystem, string]>([
		[0.00635, 'feet', '1/4 in'],
		[3.8, 'feet', '12 ft 5 5/8 in'],
		[3.805, 'metres', '3.805 m'],
		[3.8, 'metres', '3.80 m'],
		[0.01, 'metres', '10 mm'],
		[Number.NaN, 'feet', 'unknown']
	])('finely, %d m in %s is %s', (metres, units, words) => expect(formatLengthFinely(metres, units)).toBe(words));
});
