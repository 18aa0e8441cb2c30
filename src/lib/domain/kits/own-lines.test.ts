import { describe, expect, test } from 'vitest';
import { makePlan } from '../plan';
import { quickYard, usualAnswers } from '../quick';
import { demoShelf } from '../../shelf';
import { compareOwned, matchShelf, needsOf, ownLines, withLines } from '.';
import { awg } from './shelf.testing';
import type { Owned, Shelf } from './types';

const { yard } = quickYard(usualAnswers('feet'));
const plan = makePlan(yard);
const needs = needsOf(plan, yard);
const stockWith = (owned: Partial<Owned>, shelf: Shelf = demoShelf): Shelf => {
	const all = { transformer: null, halogens: null, cable: null, ...owned };
	return withLines(shelf, ownLines(shelf, all, compareOwned(needs, plan, all), 'feet'));
};
const fixturesAlone: Shelf = {
	...demoShelf,
	lines: demoShelf.lines.filter(({ kind }) => kind !== 'kit' && kind !== 'transformer')
};

describe('what the customer has beside the shelf', () => {
	test('a transformer that can be kept is not bought again', () => {
		const without = matchShelf(needs, demoShelf).best!;
		const stock = stockWith({ transformer: { voltAmps: 150 }, cable: { size: awg(12), metres: 30 } });
		expect(stock.lines.slice(0, 2).map(({ name }) => name)).toEqual([
			'Their own 150 VA transformer',
			'Their own 98 ft of 12 AWG cable'
		]);
		const { best, kits } = matchShelf({ ...needs }, stock);
		expect(best!.judged.ok).toBe(true);
		expect(best!.cents).toBeLessThan(without.cents);
		const bought = best!.buys.map(({ code }) => stock.lines.find((line) => line.code === code)!);
		expect(bought.filter(({ isOwned }) => isOwned)).toHaveLength(2);
		expect(bought.filter(({ isOwned }) => !isOwned).map(({ kind }) => kind)).not.toContain('transformer');
		for (const { isIn, why } of kits) if (isIn) expect(why).not.toMatch(/brings.*transformer/);
	});
	test('makes a shelf without transformers do', () => {
		expect(matchShelf({ ...needs }, fixturesAlone).best).toBeNull();
		const stock = stockWith({ transformer: { voltAmps: 60 } }, fixturesAlone);
		expect(matchShelf({ ...needs }, stock).best!.setup.transformer).toBe(stock.lines[0]!.code);
	});
	test('what is to be replaced is not counted on', () => {
		expect(stockWith({ transformer: { voltAmps: 5 } })).toBe(demoShelf);
		expect(stockWith({ halogens: { count: 6, watts: 20 } })).toBe(demoShelf);
	});
	test('it has a code that the shelf does not have', () => {
		const shelf = {
			...demoShelf,
			lines: demoShelf.lines.map((line, n) => (n === 0 ? { ...line, code: 'own transformer' } : line))
		};
		const stock = stockWith({ transformer: { voltAmps: 150 } }, shelf);
		expect(new Set(stock.lines.map(({ code }) => code)).size).toBe(stock.lines.length);
	});
});
