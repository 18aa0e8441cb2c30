import { describe, expect, it } from 'vitest';
import { splitWords } from './words';

const canopy = { word: 'canopy', meaning: 'The leaves of a tree taken together.' };
const run = { word: 'run', meaning: 'One cable from the transformer.' };
const well = { word: 'well light', meaning: 'A light set flush with the ground.' };
const light = { word: 'light', meaning: 'What it is about.' };

describe('splitWords', () => {
	it('cuts at the first appearance only and loses no letter', () => {
		const text = 'Measure across the canopy. A Canopy grows.';
		const parts = splitWords(text, [canopy]);
		expect(parts.map((part) => part.text).join('')).toBe(text);
		expect(parts.filter((part) => part.word)).toEqual([{ text: 'canopy', word: canopy }]);
	});
	it('takes whole words and plurals, not parts of words', () => {
		expect(splitWords('trunk and runner', [run]).every((part) => part.word === null)).toBe(true);
		expect(splitWords('two runs', [run]).at(-1)).toEqual({ text: 'runs', word: run });
	});
	it('prefers the longer word where two overlap', () => {
		const found = splitWords('a well light here', [light, well]).filter((part) => part.word);
		expect(found).toEqual([{ text: 'well light', word: well }]);
	});
	it('takes a text without words, or an empty one', () => {
		expect(splitWords('', [run])).toEqual([]);
		expect(splitWords('plain', [])).toEqual([{ text: 'plain', word: null }]);
	});
});
