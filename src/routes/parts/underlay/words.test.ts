import { describe, expect, it } from 'vitest';
import type { Underlay } from '$lib/domain/yard';
import { checkWords, nextWords, scaleWords, secondPlaceWords } from './words';

const bare: Underlay = { picture: 'a'.repeat(64), width: 1200, height: 800, opacity: 0.6 };
const marked: Underlay = { ...bare, from: { x: 200, y: 300 }, to: { x: 1000, y: 300 } };
const scaled: Underlay = { ...marked, apart: 16 * 0.3048 };
const laid: Underlay = { ...scaled, at: { along: 0, out: 1 } };

describe('what to do next with a picture', () => {
	it.each([
		[bare, /first place on it, A/],
		[{ ...bare, from: { x: 1, y: 1 } }, /second place, B/],
		[{ ...bare, from: { x: 1, y: 1 }, to: { x: 1, y: 2 } }, /one spot/],
		[marked, /Measure from A to B/],
		[scaled, /where A lies/],
		[laid, /Turn it/],
		[{ ...laid, turn: 0 }, /Check a distance/]
	])('%#', (told, words) => expect(nextWords(told)).toMatch(words));
});

describe('what its scale means', () => {
	it('in feet', () =>
		expect(scaleWords(scaled, 'feet')).toBe('The whole picture is 24 ft wide; one pixel of it is 1/4 in.'));
	it('in metres', () =>
		expect(scaleWords(scaled, 'metres')).toBe('The whole picture is 7.32 m wide; one pixel of it is 6 mm.'));
	it('finer than the tape', () =>
		expect(scaleWords({ ...scaled, apart: 0.5 }, 'metres')).toMatch(/one pixel of it is under 1 mm/));
	it('is not said before there is one', () => expect(scaleWords(marked, 'feet')).toBeNull());
});

describe('a length on the picture beside the tape', () => {
	it.each([
		[7.3152, 7.3152, 'they agree'],
		[7.3152, 7.2644, 'the picture is 0.7 % long. Good enough'],
		[7.3152, 7.4676, 'the picture is 2.0 % short. Trace from it, but measure'],
		[7.3152, 6.7056, 'the picture is 9.1 % long. Mark A and B anew']
	])('%d m and %d m', (onPicture, byTape, words) => expect(checkWords(onPicture, byTape, 'feet')).toContain(words));
	it('names both', () =>
		expect(checkWords(7.3152, 7.2644, 'feet')).toMatch(/^Measured here 24 ft; the tape says 23 ft 10 in: /));
});

describe('the place of B', () => {
	it('that is as far as was typed needs no remark', () =>
		expect(secondPlaceWords(laid, { x: 16 * 0.3048, y: 1 }, 'feet')).toBeNull());
	it('farther than was typed is said', () =>
		expect(secondPlaceWords(laid, { x: 17 * 0.3048, y: 1 }, 'feet')).toBe(
			'From A to that place it is 17 ft in the yard; from A to B you typed 16 ft. The typed distance stays the scale.'
		));
});
