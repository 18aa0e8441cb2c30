import { describe, expect, test } from 'vitest';
import { makeSite } from '../site';
import { treeShapes } from './defaults-trees';
import { emptyLedger, take } from './ledger';
import { blankYard, type Yard, type YardTree } from './schema';

const withTree = (tree: Partial<YardTree>): Yard => ({
	...blankYard(),
	place: { units: 'feet', faces: 180, surroundings: 'suburb' },
	trees: [{ id: 'oak', name: 'oak', at: { along: 1, out: 5 }, light: 'soft', ...tree }]
});

describe('asked, not known, not asked', () => {
	const fallback = { path: 'a.b', about: null, value: 3, says: 'Three is taken.', needed: 'How many.' };
	test('an answer is taken as it is', () => {
		const ledger = emptyLedger();
		expect(take(ledger, 5 as number, fallback)).toBe(5);
		expect(take(ledger, 0 as number, fallback)).toBe(0);
		expect(ledger).toEqual(emptyLedger());
	});
	test('"not sure" is an answer: assumed, not missing', () => {
		const ledger = emptyLedger();
		expect(take(ledger, 'unsure' as number | 'unsure', fallback)).toBe(3);
		expect(ledger.assumptions).toEqual([{ path: 'a.b', message: 'Three is taken.', about: null }]);
		expect(ledger.missing).toEqual([]);
	});
	test('not asked yet: assumed so that it can be drawn, and missing', () => {
		const ledger = emptyLedger();
		expect(take(ledger, undefined as number | undefined, fallback)).toBe(3);
		expect(ledger.assumptions.length).toBe(1);
		expect(ledger.missing).toEqual([{ path: 'a.b', message: 'How many.' }]);
	});
});

describe('trees', () => {
	test('what is not known follows from what is, by the proportions of the form', () => {
		const [tree] = makeSite(
			withTree({ spread: 6, form: 'spreading', height: 'unsure', crownBase: 'unsure', trunk: 'unsure' })
		).trees;
		expect(tree!.height).toBeCloseTo(6 * treeShapes.spreading.tall, 2);
		expect(tree!.crownBase).toBeCloseTo(tree!.height * treeShapes.spreading.base, 2);
		const [tall] = makeSite(withTree({ height: 12, form: 'columnar', spread: 'unsure' })).trees;
		expect(tall!.spread).toBeCloseTo(12 / treeShapes.columnar.tall, 2);
	});
	test('a tree to be lit misses its sizes, one left dark does not', () => {
		const paths = (tree: Partial<YardTree>) =>
			makeSite(withTree(tree))
				.missing.map((item) => item.path)
				.filter((path) => path.startsWith('trees'));
		expect(paths({})).toEqual(['trees.oak.spread', 'trees.oak.height', 'trees.oak.crownBase', 'trees.oak.trunk']);
		expect(paths({ light: 'none' })).toEqual([]);
		expect(paths({ light: undefined })).toEqual(['trees.oak.light']);
		expect(paths({ spread: 'unsure', height: 'unsure', crownBase: 'unsure', trunk: 'unsure' })).toEqual([]);
	});
	test('the sentences are in the person’s units', () => {
		const said = (units: 'feet' | 'metres') => {
			const yard = withTree({ spread: 'unsure' });
			return makeSite({ ...yard, place: { ...yard.place, units } }).assumptions.find(
				(item) => item.path === 'trees.oak.spread'
			)!.message;
		};
		expect(said('feet')).toBe('The oak is taken to be 16 ft 5 in across the canopy.');
		expect(said('metres')).toBe('The oak is taken to be 5.00 m across the canopy.');
	});
	test('every form gives a tree that could stand: crown below the top, trunk thinner than the canopy', () => {
		for (const form of Object.keys(treeShapes) as (keyof typeof treeShapes)[]) {
			const { trees, findings } = makeSite(withTree({ form }));
			expect(findings, form).toEqual([]);
			expect(trees[0]!.crownBase).toBeLessThan(trees[0]!.height);
			expect(trees[0]!.trunkDiameter).toBeLessThan(trees[0]!.spread);
		}
	});
});
