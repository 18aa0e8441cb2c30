import { describe, expect, it } from 'vitest';
import { readCount, readDegrees, readMoney, readNumber } from './read-number';

describe('counts', () => {
	const range = { min: 1, max: 40 };
	it.each([
		['3', 3],
		[' 12 ', 12],
		['１２', 12],
		['40', 40]
	])('reads %s', (text, value) =>
		expect(readCount(text, range)).toEqual({ ok: true, value, understood: String(value) })
	);
	it.each(['', '0', '41', '2.5', 'three', '1e1', '-3', '1,000', '9'.repeat(30)])('refuses %s', (text) => {
		expect(readCount(text, range).ok).toBe(false);
	});
	it('says the range', () => expect(readCount('41', range)).toMatchObject({ message: 'Here it goes from 1 to 40.' }));
});

describe('numbers with a unit', () => {
	const range = { min: 20, max: 2000 };
	it.each(['150', '150 VA', '150va', '150,0', '150.0 VA'])('reads %s', (text) => {
		expect(readNumber(text, range, 'VA')).toEqual({ ok: true, value: 150, understood: '150 VA' });
	});
	it.each(['', 'VA', '150 W', '10', '1,500', '1.5.0', 'NaN'])('refuses %s', (text) => {
		expect(readNumber(text, range, 'VA').ok).toBe(false);
	});
	it('says both readings of a torn figure', () => {
		expect(readNumber('1,500', range)).toMatchObject({ message: 'Write 1500 or 1.500: the comma can mean either.' });
	});
});

describe('bearings', () => {
	it.each([
		['0', 0, 'North, 0°'],
		['225', 225, 'South-west, 225°'],
		['225°', 225, 'South-west, 225°'],
		['225 degrees', 225, 'South-west, 225°'],
		['22,5', 22.5, 'North-east, 22.5°'],
		['360', 360, 'North, 360°'],
		['SW', 225, 'South-west, 225°'],
		['south west', 225, 'South-west, 225°'],
		['North-East', 45, 'North-east, 45°'],
		['west', 270, 'West, 270°']
	])('reads %s', (text, value, understood) => expect(readDegrees(text)).toEqual({ ok: true, value, understood }));
	it.each(['', 'left', '-10', '361', 'northsouth', '12 34'])('refuses %s', (text) => {
		expect(readDegrees(text).ok).toBe(false);
	});
});

describe('money', () => {
	const range = { min: 0, max: 10 };
	it.each([
		['0.32', 0.32],
		['0,32', 0.32],
		[',32', 0.32],
		['$0.17', 0.17],
		['€ 0,32', 0.32],
		['0,32 €', 0.32],
		['0,325', 0.325],
		['1', 1]
	])('reads %s', (text, value) => expect(readMoney(text, range)).toMatchObject({ ok: true, value }));
	it.each(['', '$', 'free', '11', '-1', '1,250', '0.3.2'])('refuses %s', (text) => {
		expect(readMoney(text, range).ok).toBe(false);
	});
});
