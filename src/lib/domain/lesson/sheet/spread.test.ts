import { describe, expect, test } from 'vitest';
import type { Level, ProblemKind } from '../types';
import { fitting, levelOf, spread } from './spread';

const kind = (id: string, levels: Level[] = ['solved', 'one', 'several', 'all']): ProblemKind => ({
	id,
	lesson: 'drop',
	title: id,
	levels,
	draw: () => null,
	pose: () => null
});
const shelf = (lesson: 'drop' | 'beam' | 'load', ...ids: string[]) => ({ lesson, kinds: ids.map((id) => kind(id)) });
const stock = [shelf('beam', 'b1', 'b2'), shelf('drop', 'd1', 'd2', 'd3'), shelf('load', 'l1')];
const ids = (places: ReturnType<typeof spread>) => places.map(({ kind, nth }) => `${kind.id}.${nth}`);

describe('problems are spread', () => {
	test.each([1, 2, 3, 4, 7, 12, 60])('%i of them evenly over lessons and kinds', (count) => {
		const places = spread(stock, count, 'dusk', () => true);
		expect(places).toHaveLength(count);
		expect(new Set(ids(places)).size).toBe(count);
		const per = (of: (place: (typeof places)[number]) => boolean) => places.filter(of).length;
		const lessons = stock.map(({ lesson }) => per((place) => place.lesson === lesson));
		expect(Math.max(...lessons) - Math.min(...lessons)).toBeLessThanOrEqual(1);
		const drops = ['d1', 'd2', 'd3'].map((id) => per((place) => place.kind.id === id));
		expect(Math.max(...drops) - Math.min(...drops)).toBeLessThanOrEqual(1);
	});
	test('in the order of the lessons', () => {
		const order = spread(stock, 20, 'dusk', () => true).map(({ lesson }) => lesson);
		expect(order).toEqual(order.toSorted());
	});
	test('to others where a kind runs out, and ends where all have', () => {
		const has = (kind: ProblemKind, nth: number) => nth < (kind.id === 'l1' ? 1 : 3);
		expect(ids(spread(stock, 9, 'dusk', has)).filter((id) => id.startsWith('l'))).toEqual(['l1.0']);
		expect(spread(stock, 9, 'dusk', has)).toHaveLength(9);
		expect(spread(stock, 60, 'dusk', has)).toHaveLength(16);
	});
	test('so that a kind more leaves the numbers of the others', () => {
		const more = stock.map((one) => (one.lesson === 'drop' ? { ...one, kinds: [...one.kinds, kind('d4')] } : one));
		for (const code of ['dusk', 'fig', 'elm']) {
			const [before, after] = [stock, more].map((list) => ids(spread(list, 12, code, () => true)));
			expect(after!.filter((id) => !id.startsWith('d'))).toEqual(before!.filter((id) => !id.startsWith('d')));
			expect(before).toEqual(expect.arrayContaining(after!.filter((id) => !id.startsWith('d4'))));
		}
	});
});
describe('the level', () => {
	test('is the next harder where a kind does not have it, else the next easier', () => {
		expect(levelOf(kind('k', ['solved', 'all']), 'one')).toBe('all');
		expect(levelOf(kind('k', ['solved', 'one', 'all']), 'several')).toBe('all');
		expect(levelOf(kind('k', ['solved', 'one']), 'all')).toBe('one');
		expect(levelOf(kind('k', ['solved']), 'all')).toBe('solved');
	});
	test('asked for is served by those that have it, and else by those that come next', () => {
		const [steps, choice, short] = [kind('a'), kind('b', ['solved', 'all']), kind('c', ['solved', 'one', 'all'])];
		expect(fitting([steps, choice, short], 'several')).toEqual([steps]);
		expect(fitting([choice, short], 'one')).toEqual([short]);
		expect(fitting([choice], 'one')).toEqual([choice]);
	});
});
