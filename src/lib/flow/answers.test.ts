import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankYard, type Yard } from '../domain/yard';
import { fullPath, newItemId, readAnswer, writeAnswer } from './answers';

const yard: Yard = {
	...blankYard(),
	house: { depth: 9, left: { light: 'soft' } },
	trees: [
		{ id: 'oak', name: 'oak', spread: 6, at: { along: 1, out: 2 } },
		{ id: 'elm', name: 'elm' }
	],
	walks: [{ id: 'front', name: 'front walk', steps: [{ id: 'flight-1', at: 3, treads: 2 }] }],
	spots: { water: [{ id: 'pond', name: 'pond', kind: 'pond' }] }
};
const frozen = <T>(value: T): T => {
	if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
		Object.freeze(value);
		Object.values(value).forEach(frozen);
	}
	return value;
};
frozen(yard);

describe('reading an answer', () => {
	it.each([
		['house.depth', null, undefined, 9],
		['@.spread', 'oak', 'trees', 6],
		['trees.oak.spread', null, undefined, 6],
		['trees.oak.at.out', null, undefined, 2],
		['walks.front.steps.flight-1.treads', null, undefined, 2],
		['@.kind', 'pond', 'spots.water', 'pond'],
		['@.spread', 'elm', 'trees', undefined],
		['@.spread', 'ash', 'trees', undefined],
		['house.eaves', null, undefined, undefined],
		['drives.a.line', null, undefined, undefined],
		['house.depth.more', null, undefined, undefined]
	] as const)('%s of %s in %s', (path, item, each, value) => expect(readAnswer(yard, path, item, each)).toEqual(value));
	it('does not take the text of a key for an index', () => {
		expect(readAnswer(yard, 'trees.0')).toBeUndefined();
		expect(readAnswer(yard, 'trees.length')).toBeUndefined();
	});
	it('knows a path in full', () => {
		expect(fullPath('@.spread', 'oak', 'trees')).toBe('trees.oak.spread');
		expect(fullPath('house.depth')).toBe('house.depth');
	});
});

describe('writing an answer', () => {
	it('shares what did not change and changes nothing in place', () => {
		const next = writeAnswer(yard, '@.spread', 'oak', 'trees', 7);
		expect(readAnswer(next, 'trees.oak.spread')).toBe(7);
		expect(yard.trees?.[0]?.spread).toBe(6);
		expect(next.trees?.[1]).toBe(yard.trees?.[1]);
		expect(next.trees?.[0]?.at).toBe(yard.trees?.[0]?.at);
		expect(next.house).toBe(yard.house);
		expect(next.walks).toBe(yard.walks);
	});
	it('returns the yard itself when nothing changes', () => {
		expect(writeAnswer(yard, 'house.depth', null, undefined, 9)).toBe(yard);
		expect(writeAnswer(yard, 'house.eaves', null, undefined, undefined)).toBe(yard);
		expect(writeAnswer(yard, '@.spread', 'ash', 'trees', 7)).toBe(yard);
		expect(writeAnswer(yard, '@.width', 'a', 'drives', undefined)).toBe(yard);
	});
	it('makes the groups on the way, and lets an emptied one go', () => {
		const right = writeAnswer(yard, 'house.right.light', null, undefined, 'none');
		expect(right.house.right).toEqual({ light: 'none' });
		expect(writeAnswer(right, 'house.right.light', null, undefined, undefined).house).toEqual(yard.house);
		const owned = writeAnswer(blankYard(), 'power.owned.cableLength', null, undefined, 10);
		expect(writeAnswer(owned, 'power.owned.cableLength', null, undefined, undefined)).toEqual(blankYard());
	});
	it('keeps an empty list: it says there are none', () => {
		expect(writeAnswer(yard, 'drives', null, undefined, []).drives).toEqual([]);
		expect(writeAnswer(yard, 'spots.beds', null, undefined, []).spots.beds).toEqual([]);
	});
	it('takes an item away by its id', () => {
		expect(writeAnswer(yard, 'trees.oak', null, undefined, undefined).trees).toEqual([{ id: 'elm', name: 'elm' }]);
	});
	it('makes no item for an answer about one that is not there', () => {
		expect(writeAnswer(blankYard(), '@.spread', 'oak', 'trees', 7)).toEqual(blankYard());
	});
	it('what was written is what is read, and taking it back gives the yard as it was', () => {
		const paths = fc.constantFrom(
			'house.eaves',
			'lot.street',
			'trees.elm.height',
			'house.right.light',
			'power.price',
			'name',
			'walks.front.width'
		);
		fc.assert(
			fc.property(paths, fc.jsonValue({ maxDepth: 2 }), (path, value) => {
				fc.pre(!(typeof value === 'object' && value !== null && Object.keys(value).length === 0));
				const next = writeAnswer(yard, path, null, undefined, value);
				expect(readAnswer(next, path)).toEqual(value);
				expect(writeAnswer(next, path, null, undefined, undefined)).toEqual(yard);
			})
		);
	});
});

describe('ids of new items', () => {
	it('are free, and as the schema wants them', () => {
		expect(newItemId(undefined, 'tree')).toBe('tree-1');
		expect(newItemId([{ id: 'oak' }], 'tree')).toBe('tree-2');
		expect(newItemId([{ id: 'tree-2' }, { id: 'tree-3' }], 'tree')).toBe('tree-4');
		expect(newItemId([{ id: 'tree-3' }, { id: 'tree-1' }], 'tree')).toBe('tree-4');
	});
});
