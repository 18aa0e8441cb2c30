import { describe, expect, test } from 'vitest';
import { wishOf } from './keys';

const press = (key: string, more: Partial<KeyboardEvent> = {}) => ({
	key,
	shiftKey: false,
	ctrlKey: false,
	metaKey: false,
	altKey: false,
	...more
});
const idle = { adding: false, moving: false };
const adding = { adding: true, moving: false };
const moving = { adding: false, moving: true };

describe('keys on the board', () => {
	test('with nothing held the arrows go from thing to thing', () => {
		expect(wishOf(press('ArrowLeft'), idle, 'feet')).toEqual({ do: 'go', way: { x: -1, y: 0 } });
		expect(wishOf(press('Home'), idle, 'feet')).toEqual({ do: 'first' });
		expect(wishOf(press('Enter'), idle, 'feet')).toEqual({ do: 'take' });
		expect(wishOf(press('Delete'), idle, 'feet')).toEqual({ do: 'remove' });
	});
	// 1 in = 25.4 mm exactly: the international yard and pound agreement of 1959.
	test.each([
		['ArrowDown', {}, 0.1524],
		['ArrowDown', { shiftKey: true }, 0.0254],
		['PageDown', {}, 3.048]
	])('%s in feet steps towards the street', (key, more, metres) => {
		for (const state of [adding, moving]) {
			const wish = wishOf(press(key, more), state, 'feet');
			expect(wish).toMatchObject({ do: 'step', way: { x: 0, y: 1 } });
			expect((wish as { metres: number }).metres).toBeCloseTo(metres, 12);
		}
	});
	test('in metres the steps are decimal', () => {
		expect(wishOf(press('ArrowUp'), moving, 'metres')).toEqual({ do: 'step', way: { x: 0, y: -1 }, metres: 0.1 });
		expect(wishOf(press('ArrowUp', { shiftKey: true }), moving, 'metres')).toMatchObject({ metres: 0.01 });
	});
	test('Enter sets a point, or sets down what is held; nothing is removed meanwhile', () => {
		expect(wishOf(press('Enter'), adding, 'feet')).toEqual({ do: 'set' });
		expect(wishOf(press('Enter'), moving, 'feet')).toEqual({ do: 'setDown' });
		expect(wishOf(press('Delete'), moving, 'feet')).toBeNull();
	});
	test('keys with Ctrl, Alt or the system key, Tab and letters are left alone', () => {
		for (const state of [idle, adding, moving]) {
			expect(wishOf(press('ArrowLeft', { ctrlKey: true }), state, 'feet')).toBeNull();
			expect(wishOf(press('Enter', { altKey: true }), state, 'feet')).toBeNull();
			expect(wishOf(press('z', { metaKey: true }), state, 'feet')).toBeNull();
			expect(wishOf(press('Tab'), state, 'feet')).toBeNull();
			expect(wishOf(press('a'), state, 'feet')).toBeNull();
			expect(wishOf(press('Escape'), state, 'feet')).toEqual({ do: 'back' });
		}
	});
});
