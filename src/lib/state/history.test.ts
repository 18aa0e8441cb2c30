import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, historyOf, redone, undone, type History } from './history';

describe('undo and redo', () => {
	it('go back and forth over changes, each with its label', () => {
		const two = changed(changed(historyOf('a'), 'b', 'to b'), 'c', 'to c');
		const back = undone(two);
		expect([back.now, back.past.map(({ label }) => label), back.future.map(({ label }) => label)]).toEqual([
			'b',
			['to b'],
			['to c']
		]);
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
	it('remember six hundred steps, and of more the newest', () => {
		let history = historyOf(0);
		for (let i = 1; i <= 5000; i++) history = changed(history, i, String(i));
		for (let i = 0; i < 700; i++) history = undone(history);
		expect([history.now, history.past.length, history.future.length]).toEqual([4400, 0, 600]);
		for (let i = 0; i < 700; i++) history = redone(history);
		expect([history.now, history.past.length, history.future.length]).toEqual([5000, 600, 0]);
	});
	it('end at a step that cannot be read, with the state in hand as it was', () => {
		const broken = { label: 'lost', back: () => null, forth: () => null };
		const history: History<string> = { now: 'b', past: [broken, broken], future: [broken] };
		expect(undone(history)).toEqual({ now: 'b', past: [], future: [broken] });
		expect(redone(history)).toEqual({ now: 'b', past: [broken, broken], future: [] });
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
