import { describe, expect, it } from 'vitest';
import { makeSaver } from './saver';
import { makeTimers } from './browser.testing';

function setUp() {
	const timers = makeTimers();
	const saves: number[] = [];
	const saver = makeSaver(() => saves.push(timers.now()), timers);
	return { timers, saves, saver };
}
describe('saving soon', () => {
	it('waits for a pause, then saves once', () => {
		const { timers, saves, saver } = setUp();
		for (let i = 0; i < 3; i++) {
			saver.touch();
			timers.pass(100);
		}
		expect(saves).toEqual([]);
		timers.pass(1000);
		expect(saves).toEqual([450]);
	});
	it('saves within a second of any change while somebody types on and on', () => {
		const { timers, saves, saver } = setUp();
		for (let i = 0; i < 100; i++) {
			saver.touch();
			timers.pass(37);
		}
		timers.pass(1000);
		expect(saves[0]).toBeLessThanOrEqual(1000);
		const gaps = saves.slice(1).map((at, i) => at - saves[i]!);
		expect(Math.max(...gaps)).toBeLessThanOrEqual(1000);
		expect(saves.at(-1)! - 99 * 37).toBeLessThanOrEqual(1000);
	});
	it('saves at once when the page goes, and only when something is unsaved', () => {
		const { timers, saves, saver } = setUp();
		saver.flush();
		expect(saves).toEqual([]);
		saver.touch();
		expect(saver.pending()).toBe(true);
		saver.flush();
		saver.flush();
		timers.pass(5000);
		expect(saves).toEqual([0]);
		expect(saver.pending()).toBe(false);
	});
	it('saves nothing any more once it is dropped, until something changes', () => {
		const { timers, saves, saver } = setUp();
		saver.touch();
		saver.drop();
		saver.flush();
		timers.pass(5000);
		expect(saves).toEqual([]);
		saver.touch();
		timers.pass(1000);
		expect(saves).toEqual([5250]);
	});
});
