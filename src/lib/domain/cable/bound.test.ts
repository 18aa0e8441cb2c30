import { describe, expect, it } from 'vitest';
import { placeFixtures } from '../placement';
import { makeSite } from '../site';
import { blankYard, examples, type Yard } from '../yard';
import { shortestLinks, type Link } from './bound';
import { layCable } from './lay';
import { generator, randomGround } from './random.testing';

const metres = (links: readonly Link[]): number => links.reduce((sum, { length }) => sum + length, 0);

/** The links of the tree that a Prüfer sequence stands for (Archiv der Mathematik und Physik 27, 1918): each tree once. */
function treeOf(sequence: readonly number[], count: number): [number, number][] {
	const degree = Array.from({ length: count }, (_, k) => 1 + sequence.filter((one) => one === k).length);
	const links = sequence.map((node): [number, number] => {
		const leaf = degree.indexOf(1);
		degree[leaf]!--;
		degree[node]!--;
		return [leaf, node];
	});
	const [a, b] = degree.flatMap((left, k) => (left === 1 ? [k] : []));
	return [...links, [a!, b!]];
}
/** The shortest of all trees with so many links or more at node 0. */
function shortestOfAll(table: readonly (readonly number[])[], runs: number): number {
	const count = table.length;
	let best = Infinity;
	for (let code = 0; code < count ** (count - 2); code++) {
		const sequence = Array.from({ length: count - 2 }, (_, k) => Math.floor(code / count ** k) % count);
		const links = treeOf(sequence, count);
		if (links.filter(([a, b]) => a === 0 || b === 0).length < runs) continue;
		best = Math.min(
			best,
			links.reduce((sum, [a, b]) => sum + table[a]![b]!, 0)
		);
	}
	return best;
}

describe('the shortest tree with so many links at the transformer', () => {
	it('is that of all trees, tried one by one, however low the first guesses are', () => {
		for (let seed = 1; seed <= 40; seed++) {
			const random = generator(seed);
			const count = 3 + (seed % 4);
			const table = Array.from({ length: count }, () => Array<number>(count).fill(0));
			for (let a = 0; a < count; a++) for (let b = 0; b < a; b++) table[a]![b] = table[b]![a] = random() * 10;
			const part = random();
			const lengths = {
				exact: (a: number, b: number) => table[a]![b]!,
				least: (a: number, b: number) => part * table[a]![b]!
			};
			for (let runs = 1; runs < count; runs++) {
				const links = shortestLinks(count, runs, lengths);
				expect(links).toHaveLength(count - 1);
				expect(links.filter(({ a, b }) => a === 0 || b === 0).length).toBeGreaterThanOrEqual(runs);
				expect(metres(links), `seed ${seed}, ${runs}`).toBeCloseTo(shortestOfAll(table, runs), 9);
			}
		}
	});
	it('is worked by hand on a line of three and on one lamp apart', () => {
		const at = [0, 4, 7];
		const exact = (a: number, b: number) => Math.abs(at[a]! - at[b]!);
		expect(metres(shortestLinks(3, 1, { exact, least: exact }))).toBe(7);
		// Two cables from the transformer: 4 m and 7 m.
		expect(metres(shortestLinks(3, 2, { exact, least: exact }))).toBe(11);
		const apart = (a: number, b: number) => (a === 2 || b === 2 ? Infinity : exact(a, b));
		expect(shortestLinks(3, 1, { exact: apart, least: () => 0 })).toEqual([{ a: 0, b: 1, length: 4 }]);
	});
});

describe('the bound of a plan', { timeout: 600_000 }, () => {
	const fed: (Yard['power']['circuit'] | undefined)[] = [
		undefined,
		{ runs: [{ id: 'run-1', feed: 'hub' }] },
		{ runs: [{ id: 'run-1', feed: 'middle' }] },
		{ runs: [{ id: 'run-1', lamps: ['f-0', 'f-3', 'f-5'] }, { id: 'run-2' }] }
	];
	const rounds = process.env.LONG ? 1000 : 60;
	it(`is never above its length, however it is fed, on ${rounds} seeded grounds`, () => {
		let tight = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures } = randomGround(seed, seed % 20 === 0 ? 70 : 3 + (seed % 14));
			const circuit = fed[seed % fed.length];
			const yard = { ...blankYard(), power: circuit ? { circuit } : {} };
			const { supply, runs } = layCable(site, fixtures, yard);
			if (runs.length === 0) continue;
			const { length, bound, gap, links, trench, trenchApart, savedBySharing } = supply!.route!;
			expect(bound, `seed ${seed}`).toBeLessThanOrEqual(length + 1e-9);
			expect(gap).toBeCloseTo(length / bound - 1, 9);
			expect(metres(links.map(({ length: one }) => ({ a: 0, b: 0, length: one })))).toBeCloseTo(bound, 9);
			expect(trench).toBeLessThanOrEqual(length + 1e-9);
			expect(savedBySharing).toBe(trenchApart - trench);
			const joined = new Set(links.flatMap(({ from, to }) => [from, to]));
			const lamps = runs.flatMap(({ nodes }) => nodes.flatMap(({ fixture }) => fixture ?? []));
			expect([...joined].filter((id) => id !== 'supply').toSorted()).toEqual(lamps.toSorted());
			if (gap < 0.01) tight++;
		}
		expect(tight).toBeGreaterThan(rounds / 8);
	});
	it.each(examples.map(({ id, yard }) => [id, yard] as const))(
		'stands beside the length of the %s demo yard',
		(_, yard) => {
			const site = makeSite(yard);
			const { fixtures } = placeFixtures(site, yard);
			const { route } = layCable(site, fixtures, yard).supply!;
			expect(route!.gap).toBeGreaterThanOrEqual(0);
			// Cables that follow each other are longer than the shortest tree, and dig less than it measures.
			expect(route!.trench).toBeLessThan(route!.bound);
		}
	);
});
