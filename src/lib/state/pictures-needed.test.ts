import { describe, expect, it } from 'vitest';
import { blankYard, type Yard } from '../domain/yard';
import { changed, historyOf, undone, type History } from './history';
import { picturesNeeded } from './pictures-needed';

const id = (letter: string) => letter.repeat(64);
const withPicture = (letter: string): Yard => ({
	...blankYard(),
	underlay: { picture: id(letter), width: 10, height: 10, opacity: 1 }
});
const after = (history: History<Yard>, yard: Yard) => changed(history, yard, 'a change');

describe('pictures that undo may ask for', () => {
	it('are those of every step back and forward', () => {
		let history = historyOf(blankYard());
		for (const letter of ['a', 'b', 'c']) history = after(history, withPicture(letter));
		history = after(history, blankYard());
		expect(picturesNeeded(history)).toEqual(new Set([id('a'), id('b'), id('c')]));
		expect(picturesNeeded(undone(undone(history)))).toEqual(new Set([id('a'), id('b'), id('c')]));
		// A new change cuts off what lay ahead.
		expect(picturesNeeded(after(undone(undone(history)), blankYard()))).toEqual(new Set([id('a'), id('b')]));
	});
	it('are no further than the steps can be told', () => {
		const history = after(after(historyOf(withPicture('a')), withPicture('b')), withPicture('c'));
		const torn = { ...history, past: history.past.map((step, i) => (i === 0 ? { ...step, back: () => null } : step)) };
		expect(picturesNeeded(torn)).toEqual(new Set([id('b'), id('c')]));
	});
	it('of a yard without any are none', () => expect(picturesNeeded(historyOf(blankYard())).size).toBe(0));
});
