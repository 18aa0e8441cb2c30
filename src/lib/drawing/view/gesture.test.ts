import { expect, test } from 'vitest';
import { Gesture, holdTime } from './gesture';

/** A hand that writes down what it is told. Above y = 100 it can grab. */
function played({ mayPan = false, mayAim = false }: { mayPan?: boolean; mayAim?: boolean } = {}) {
	const told: string[] = [];
	let clock = 0;
	let waiting: { run: () => void; at: number }[] = [];
	const say =
		(name: string) =>
		(...args: unknown[]) =>
			void told.push(`${name} ${args.map((one) => JSON.stringify(one)).join(' ')}`.trim());
	const where = ({ x, y }: { x: number; y: number }) => `${x},${y}`;
	const gesture = new Gesture<string>({
		grab: ({ y }) => (y < 100 ? 'bend' : null),
		mayPan: () => mayPan,
		mayAim: () => mayAim,
		pan: say('pan'),
		startPinch: say('two'),
		pinch: (from, to, factor) => void told.push(`pinch ${where(from)} ${where(to)} ${factor}`),
		drag: (what, at) => void told.push(`drag ${what} ${where(at)}`),
		drop: (what, at) => void told.push(`drop ${what} ${where(at)}`),
		giveUp: (what) => void told.push(`back ${what}`),
		tap: (at, count) => void told.push(`tap ${where(at)} ${count}`),
		aim: (at) => void told.push(`aim ${at ? where(at) : 'off'}`),
		settle: say('settle'),
		later: (run, ms) => {
			const one = { run, at: clock + ms };
			waiting.push(one);
			return () => (waiting = waiting.filter((other) => other !== one));
		}
	});
	const press = (x: number, y: number, id = 1, touch = true) => ({ id, x, y, touch, time: clock });
	return {
		told,
		gesture,
		wait(ms: number) {
			clock += ms;
			const due = waiting.filter(({ at }) => at <= clock);
			waiting = waiting.filter(({ at }) => at > clock);
			for (const { run } of due) run();
		},
		down: (...at: Parameters<typeof press>) => gesture.down(press(...at)),
		move: (...at: Parameters<typeof press>) => gesture.move(press(...at)),
		up: (...at: Parameters<typeof press>) => gesture.up(press(...at))
	};
}

test('a press that trembles is a tap; two soon after another on one spot are a double tap, a third is one again', () => {
	const { told, down, move, up, wait } = played({ mayPan: true });
	for (let k = 0; k < 3; k += 1) {
		down(50, 200);
		move(55, 203);
		up(55, 203);
		wait(100);
	}
	expect(told).toEqual(['tap 55,203 1', 'tap 55,203 2', 'tap 55,203 1']);
	wait(1000);
	down(50, 200);
	up(50, 200);
	expect(told.at(-1)).toBe('tap 50,200 1');
});

test('a drag on what can be dragged drags it, and drops it where it ends', () => {
	const { told, down, move, up, gesture } = played({ mayPan: true });
	down(10, 10);
	expect(gesture.owns).toBe(true);
	move(40, 10);
	move(60, 20);
	up(60, 20);
	expect(told).toEqual(['drag bend 40,10', 'drag bend 60,20', 'drop bend 60,20']);
	expect(gesture.isBusy).toBe(false);
});

test('a drag that the browser takes away puts back what was dragged', () => {
	const { told, down, move, up, gesture } = played();
	down(10, 10);
	move(40, 10);
	gesture.cancel(1);
	up(40, 10);
	expect(told).toEqual(['drag bend 40,10', 'back bend']);
});

test('a second finger during a drag puts it back and pinches; nothing is tapped or dragged when one of them lifts', () => {
	const { told, down, move, up } = played({ mayPan: true });
	down(10, 10);
	move(40, 10);
	down(40, 110, 2);
	move(40, 210, 2);
	up(40, 210, 2);
	move(90, 10);
	up(90, 10);
	expect(told).toEqual(['drag bend 40,10', 'back bend', 'two', 'pinch 40,60 40,110 2', 'settle']);
});

test('on empty ground a finger moves the drawing when it is close, and else is left to the page', () => {
	const near = played({ mayPan: true });
	near.down(10, 200);
	near.move(30, 205);
	near.move(35, 215);
	near.up(35, 215);
	expect(near.told).toEqual(['aim off', 'pan 20 5', 'pan 5 10', 'settle']);
	const far = played();
	far.down(10, 200);
	far.move(30, 205);
	expect(far.gesture.owns).toBe(false);
	far.up(35, 215);
	expect(far.told).toEqual([]);
});

test('a finger held still aims, and sets its point where it is lifted; one that moves at once does not', () => {
	const { told, down, move, up, wait, gesture } = played({ mayAim: true });
	down(10, 200);
	wait(holdTime);
	expect(gesture.owns).toBe(true);
	move(60, 220);
	up(60, 220);
	expect(told).toEqual(['aim 10,200', 'aim 60,220', 'aim off', 'tap 60,220 1']);
	told.length = 0;
	down(10, 200);
	move(60, 220);
	wait(holdTime * 2);
	up(60, 220);
	expect(told).toEqual([]);
});

test('a mouse that is not pressed points; it stops pointing when it leaves', () => {
	const { told, move, gesture } = played({ mayAim: true });
	move(10, 200, 7, false);
	gesture.leave(false);
	expect(told).toEqual(['aim 10,200', 'aim off']);
});
