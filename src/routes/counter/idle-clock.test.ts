import { expect, it } from 'vitest';
import { IdleClock, warningMs } from './idle-clock';

const [second, limit] = [1000, 120_000];

it('warns 20 seconds before, and clears when they are over', () => {
	const clock = new IdleClock(0);
	const states = Array.from({ length: 121 }, (_, n) => clock.look(n * second, limit));
	expect(states.findIndex(({ is }) => is === 'warning')).toBe(100);
	expect(states[100]).toEqual({ is: 'warning', leftMs: warningMs });
	expect(states[119]).toEqual({ is: 'warning', leftMs: second });
	expect(states.findIndex(({ is }) => is === 'over')).toBe(120);
});
it('is put off by a touch, before and during the warning', () => {
	const clock = new IdleClock(0);
	clock.touch(99 * second);
	expect(clock.look(110 * second, limit)).toEqual({ is: 'quiet' });
	expect(clock.look(199 * second, limit).is).toBe('warning');
	clock.touch(210 * second);
	expect(clock.look(219 * second, limit)).toEqual({ is: 'quiet' });
	expect(clock.look(309 * second, limit)).toEqual({ is: 'quiet' });
	expect(clock.look(310 * second, limit).is).toBe('warning');
});
it('warns first after a sleep that was longer than the limit', () => {
	const clock = new IdleClock(0);
	const woken = 8 * 3_600_000;
	expect(clock.look(woken, limit)).toEqual({ is: 'warning', leftMs: warningMs });
	expect(clock.look(woken + 19_999, limit).is).toBe('warning');
	expect(clock.look(woken + 20_000, limit).is).toBe('over');
});
