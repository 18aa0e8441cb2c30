import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, historyOf, redone, undone, type History } from './history';

describe('undo and redo', () => {
	it('go back and forth over changes, each with its label', () => {
		const two = changed(changed(historyOf('a'), 'b', 'to b'), 'c', 'to c');
		const back = undone(two);
		expect(back).toEqual({ now: 'b', past: [{ state: 'a', label: 'to b' }], future: [{ state: 'c', label: 'to c' }] });
		expect(redone(back)).toEqual(two);
		expect(undone(undone(undone(two))).now).toBe('a');
		expect(redone(two)).toBe(two);
	});
	it('take no note of a change that changes nothing', () => {
		const one = historyOf('a');
		expect(changed(one, 'a', 'nothing')).toBe(one);
	});
	it('a change after going back drops what was ahead', () => {
		const two = changed(changed(historyOf('a'), 'b', 'to b'), 'c', 'to c');
		expect(changed(undone(two), 'd', 'to d').future).toEqual([]);
	});
	it('remember at least a hundred steps', () => {
		let history = historyOf(0);
		for (let i = 1; i <= 5000; i++) history = changed(history, i, String(i));
		for (let i = 0; i < 100; i++) history = undone(history);
		expect(history.now).toBe(4900);
		for (let i = 0; i < 100; i++) history = redone(history);
		expect(history.now).toBe(5000);
	});
	it('agree with a plain list of states and a finger on one of them', () => {
		const act = fc.oneof(fc.constant<'undo' | 'redo'>('undo'), fc.constant<'undo' | 'redo'>('redo'), fc.nat(9));
		fc.assert(
			fc.property(fc.array(act, { maxLength: 60 }), (acts) => {
				let history: History<number> = historyOf(-1);
				let states = [-1];
				let finger = 0;
				for (const one of acts) {
					if (one === 'undo') {
						history = undone(history);
						finger = Math.max(0, finger - 1);
					} else if (one === 'redo') {
						history = redone(history);
						finger = Math.min(states.length - 1, finger + 1);
					} else {
						history = changed(history, one, 'change');
						if (states[finger] !== one) {
							states = [...states.slice(0, finger + 1), one];
							finger++;
						}
					}
					expect(history.now).toBe(states[finger]);
					expect(history.past.length).toBe(finger);
					expect(history.future.length).toBe(states.length - 1 - finger);
				}
			})
		);
	});
});
