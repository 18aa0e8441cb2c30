/** A search that breaks off: what is shown can be bought and passes, and no word says more than is known. */
import { describe, expect, test } from 'vitest';
import { demoShelf } from '../../shelf';
import { makePlan } from '../plan';
import { examples } from '../yard/examples';
import { matchShelf } from './match';
import { needsOf } from './needs';
import { problemOf } from './problem';
import { searchFully } from './search';
import { chain, feet, kit, led, line, shelfOf } from './shelf.testing';
import type { Limits } from './search-types';
import type { Match, Needs } from './types';

const { yard } = examples.find(({ id }) => id === 'suburban')!;
const needs = needsOf(makePlan(yard), yard);
const sure = matchShelf(needs, demoShelf);
const brokenOff = (limits: Limits, of: Needs = needs): Match => matchShelf({ ...of }, { ...demoShelf }, limits);

describe('the demo shelf, as far as the search goes by itself', () => {
	test('is proven, with each of its kits too', () => {
		expect(sure.isProven).toBe(true);
		expect(sure.kits.map(({ isProven }) => isProven)).toEqual(sure.kits.map(() => true));
	});
	test('one step further than it needs is proven, as far as it needs is not', () => {
		const asked = (steps?: number) =>
			searchFully(problemOf({ ...needs }, { ...demoShelf }).problem, {
				most: 3,
				...(steps ? { limits: { steps, haste: 0 } } : {})
			});
		const { steps, ...found } = asked();
		expect(asked(steps + 1)).toMatchObject(found);
		expect(asked(steps).isProven).toBe(false);
		expect(asked(steps).purchases).toEqual(found.purchases.slice(0, 2));
	});
});

describe('where it broke off with something in hand', () => {
	const match = brokenOff({ steps: 2, haste: 10_000 });
	test('what it found passes and is no cheaper than the cheapest', () => {
		expect(match.isProven).toBe(false);
		expect(match.best!.judged.ok).toBe(true);
		expect(match.best!.cents).toBeGreaterThanOrEqual(sure.best!.cents);
		expect(match.lacking).toEqual([]);
	});
	test('no kit is said to be part of, or dearer than, the cheapest that works', () => {
		for (const { why, isProven, withIt, code } of match.kits) {
			expect(isProven).toBe(false);
			expect(why).not.toMatch(/that works|With it in the basket nothing|the price is the same/);
			const known = sure.kits.find((one) => one.code === code)!;
			if (withIt) expect(match.best!.cents + withIt.moreCents).toBeGreaterThanOrEqual(sure.best!.cents);
			if (known.withIt === null) expect(withIt).toBeNull();
		}
		const words = match.kits.map(({ why }) => why).join(' ');
		expect(words).toMatch(/the cheapest found/);
		expect(words).toMatch(/the search broke off before it had tried them all\./);
	});
});

describe('where it broke off with nothing in hand', () => {
	const nothing = { steps: 1, haste: 0 };
	test('it says so, and not that nothing passes; no kit is said to be no use', () => {
		const match = brokenOff(nothing);
		expect(match).toMatchObject({ best: null, runnersUp: [], isProven: false });
		expect(match.lacking[0]).toMatch(/^The search broke off before it was sure: it had found nothing/);
		expect(match.lacking.join(' ')).not.toMatch(/nothing (on the shelf )?passes|No combination|Even with|not enough/i);
		for (const { why, isProven, withIt } of match.kits) {
			expect(isProven).toBe(false);
			expect(withIt).toBeNull();
			expect(why).not.toMatch(/nothing on the shelf passes|that works/);
		}
	});
	test('a reason that stands by itself is told all the same', () => {
		const short = shelfOf({ ...kit('K', 100, { metres: feet(40) }), stock: 1 });
		const lacking = (limits?: Limits) => matchShelf(chain(4, feet(20), feet(10)), short, limits).lacking;
		expect(lacking(nothing)).toEqual(['53 ft of cable are wanted, and 40 ft are in stock.']);
		expect(lacking(nothing)).toEqual(lacking());
	});
	test('nothing is worked out of a shelf on which nothing can pass, and that is proven', () => {
		const light = line('L', 'fixture', 100, { fixtures: [{ product: 'P', fixture: led('path', 3, 150), count: 1 }] });
		expect(matchShelf(chain(4, 5, 3), shelfOf(light), nothing)).toMatchObject({ isProven: true, best: null });
	});
});
