import { expect, test } from 'vitest';
import { matchShelf } from './match';
import { chain, feet, kit, led, line, shelfOf, transformer } from './shelf.testing';
import type { Needs, Shelf } from './types';

const needs = chain(4, feet(20), feet(10));
const lacking = (shelf: Shelf, of: Needs = needs): string[] => {
	const match = matchShelf(of, shelf);
	expect(match.best).toBeNull();
	expect(match.kits.every(({ withIt, isIn }) => withIt === null && !isIn)).toBe(true);
	return match.lacking;
};

test('an empty shelf: lights, transformer and cable', () => {
	expect(lacking(shelfOf())).toEqual([
		'The shelf has no path lights of 90 to 240 lm, for P1, P2, P3 and P4.',
		'The shelf has no transformer. Put one on it.',
		'The shelf has no cable. Put some on it.'
	]);
});
test('lights of the kind with other light: the nearest miss is told', () => {
	expect(lacking(shelfOf(kit('K', 100, { fixture: led('path', 3, 400) })))).toEqual([
		'The shelf has no path lights of 90 to 240 lm, for P1, P2, P3 and P4. The nearest has too much light: 400 lm, and the plan wants 90 to 240 lm.'
	]);
});
test('no transformer is large enough', () => {
	expect(lacking(shelfOf(kit('K', 100, { supply: transformer(14) })))[0]).toBe(
		'The lights take more than 11 VA, and the largest transformer, 14 VA, may carry no more: 80 % of its rating. Put a larger one on the shelf, or light less.'
	);
});
test('not enough cable in stock', () => {
	// 20 + 3 × 10 ft and 5 % for waste are 52.5 ft.
	expect(lacking(shelfOf({ ...kit('K', 100, { metres: feet(40) }), stock: 1 }))).toEqual([
		'53 ft of cable are wanted, and 40 ft are in stock.'
	]);
});
test('not enough lights in stock, and how many more would do', () => {
	const few = { ...kit('K', 100, { count: 3, metres: feet(200) }), stock: 1 };
	expect(lacking(shelfOf(few))).toEqual([
		'4 path lights alike are wanted for P1, P2, P3 and P4, and 3 are in stock.',
		'8 connectors rated for direct burial are wanted, and the shelf has 6. Put connectors on the shelf.',
		'There is not enough in stock. It would work with 1 more of kit K (K).'
	]);
});
test('no connectors on the shelf', () => {
	const none = kit('K', 100);
	none.contents.connectors = 0;
	expect(lacking(shelfOf(none))).toEqual([
		'8 connectors rated for direct burial are wanted, and the shelf has 0. Put connectors on the shelf.'
	]);
});
test('all there and no circuit: the lamp and its volts at best', () => {
	const far = chain(8, feet(300), feet(20));
	const shelf = shelfOf(
		line('L', 'fixture', 100, { fixtures: [{ product: 'P', fixture: led('path', 5, 150), count: 1 }] }),
		kit('K', 100, { fixture: led('path', 5, 150), count: 8, metres: feet(500) })
	);
	const [first, last] = lacking(shelf, far);
	expect(first).toMatch(
		/^Even with the thickest cable on the shelf, 16 AWG, and its 60 VA transformer, run 1 would ask/
	);
	expect(last).toBe('A thicker cable, a transformer with a higher tap, or fewer lights would help.');
});
