import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backward, forward, spliceOf } from './splice';

// Few letters, so that what is common to two texts often runs together; with letters beyond the first plane.
const text = fc.string({ unit: fc.constantFrom('a', 'b', '"', '\n', 'ä', '🌙', '🌛'), maxLength: 30 });

describe('the difference between two texts', () => {
	it('leads from each to the other', () => {
		fc.assert(
			fc.property(text, text, (before, after) => {
				const splice = spliceOf(before, after);
				expect([forward(before, splice), backward(after, splice)]).toEqual([after, before]);
			})
		);
	});
	it('is no longer than what is not common at either end', () => {
		expect(spliceOf('depth: 9, eaves: 3', 'depth: 11, eaves: 3')).toEqual({ at: 7, gone: '9', come: '11' });
		expect(spliceOf('aa', 'aaa')).toEqual({ at: 2, gone: '', come: 'a' });
		expect(spliceOf('same', 'same')).toEqual({ at: 4, gone: '', come: '' });
	});
	it('takes no pair of surrogates apart', () => {
		fc.assert(
			fc.property(text, text, (before, after) => {
				const { gone, come } = spliceOf(before, after);
				expect([gone.isWellFormed(), come.isWellFormed()]).toEqual([true, true]);
			})
		);
	});
	it('is not applied to another text', () => {
		const splice = spliceOf('depth: 9', 'depth: 11');
		expect([forward('depth: 8', splice), backward('depth: 12', splice), forward('', splice)]).toEqual([
			null,
			null,
			null
		]);
	});
});
