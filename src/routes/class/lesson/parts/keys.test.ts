import { expect, test } from 'vitest';
import { moveOf, type Pressed } from './keys';

const press = (key: string, rest: Partial<Pressed> = {}) =>
	moveOf({ key, isHeld: false, on: 'other', scrolls: false, ...rest });

test('arrows, Page Up and Down, Home and End go through the screens', () => {
	expect(['ArrowLeft', 'ArrowRight', 'PageUp', 'PageDown', 'Home', 'End'].map((key) => press(key))).toEqual(
		['back', 'on', 'back', 'on', 'first', 'last'].map((to) => ({ to }))
	);
	expect(press('3')).toEqual({ choose: 3 });
});

test('a key stays with what has the focus, with the browser and with a page that scrolls', () => {
	for (const key of ['ArrowLeft', 'Home', 'End', '2', 'a', ' ']) expect(press(key, { on: 'words' }), key).toBeNull();
	for (const key of ['ArrowRight', 'Home', 'End']) expect(press(key, { on: 'moved' }), key).toBeNull();
	// Of a remote: on to the next screen, wherever the focus was left.
	expect(press('PageDown', { on: 'moved' })).toEqual({ to: 'on' });
	expect(press('PageDown', { on: 'words' })).toEqual({ to: 'on' });
	for (const key of ['PageDown', 'PageUp', 'Home', 'End']) expect(press(key, { scrolls: true }), key).toBeNull();
	for (const key of ['ArrowLeft', 'PageDown', '1']) expect(press(key, { isHeld: true }), key).toBeNull();
	for (const key of [' ', 'Enter', 'Tab', 'Escape', '0']) expect(press(key), key).toBeNull();
});
