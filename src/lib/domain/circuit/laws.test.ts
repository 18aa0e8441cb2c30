import { describe, expect, test } from 'vitest';
import { loadAmps as drawnBy } from './lamps';
import { anyNetwork, dice, led, type Family } from './networks.testing';
import { solve } from './solve';
import type { Network, Solution } from './types';

const count = process.env.LONG ? 60_000 : 12_000;
const seeds = Array.from({ length: count }, (_, seed) => seed);
type Solved = Extract<Solution, { ok: true }>;

/** Each solvable network of the families; checks that a fair number is. */
function each(families: Family[], check: (network: Network, solution: Solved, seed: number) => void): void {
	let solvable = 0;
	for (const seed of seeds) {
		const network = anyNetwork(seed, families[seed % families.length]);
		const solution = solve(network);
		if (!solution.ok) {
			expect(solution.why, `seed ${seed}`).toBe('no-solution');
			continue;
		}
		solvable++;
		check(network, solution, seed);
	}
	expect(solvable).toBeGreaterThan(count / 2);
}
/** Cheaper than `expect` some hundred thousand times. */
function hold(isTrue: boolean, where: string): void {
	if (!isTrue) throw new Error(`the law is broken: ${where}`);
}
const all: Family[] = ['chain', 'tree', 'ring', 'feeds'];
const radial: Family[] = ['chain', 'tree'];
const most = (values: number[]) => values.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
const shuffled = <T>(list: T[], roll: () => number): T[] => {
	const copy = [...list];
	for (let k = copy.length - 1; k > 0; k--) {
		const other = Math.floor(roll() * (k + 1));
		[copy[k], copy[other]] = [copy[other]!, copy[k]!];
	}
	return copy;
};

describe(`laws on ${count} networks by lot`, () => {
	test("Kirchhoff's current law at each node, Ohm's law along each segment, each lamp's own law", () => {
		each(all, (network, { volts, segmentAmps, loadAmps, sourceAmps, feedAmps }, seed) => {
			const into = Array.from({ length: network.nodes }, () => 0);
			into[0] = sourceAmps;
			for (const [s, { from, to, ohms }] of network.segments.entries()) {
				into[from]! -= segmentAmps[s]!;
				into[to]! += segmentAmps[s]!;
				hold(Math.abs(volts[from]! - volts[to]! - ohms * segmentAmps[s]!) < 1e-8, `seed ${seed}`);
			}
			for (const [k, { node }] of network.loads.entries()) into[node]! -= loadAmps[k]!;
			for (const [k, { node }] of (network.feeds ?? []).entries()) into[node]! += feedAmps![k]!;
			for (const [k, { node, load }] of network.loads.entries()) {
				hold(volts[node]! > 0, `seed ${seed}`);
				hold(Math.abs(loadAmps[k]! - drawnBy(load, volts[node]!)) < 1e-8, `seed ${seed} load ${k}`);
			}
			hold(most(into) < 1e-10 * Math.max(1, Math.abs(sourceAmps)), `seed ${seed}`);
			hold(Math.abs(network.sourceVolts - network.sourceOhms * sourceAmps - volts[0]!) < 1e-8, `seed ${seed}`);
		});
	});

	test('power in = lamps + losses', () => {
		each(all, (network, { segmentAmps, loadVoltAmps, sourceAmps, feedAmps }, seed) => {
			const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);
			const feeds = network.feeds ?? [];
			const given = network.sourceVolts * sourceAmps + sum(feeds.map(({ volts }, k) => volts * feedAmps![k]!));
			const lost =
				network.sourceOhms * sourceAmps ** 2 +
				sum(network.segments.map(({ ohms }, s) => ohms * segmentAmps[s]! ** 2)) +
				sum(feeds.map(({ ohms }, k) => ohms * feedAmps![k]! ** 2));
			hold(Math.abs(given - lost - sum(loadVoltAmps)) < 1e-7, `seed ${seed}`);
		});
	});

	test('an added lamp raises the volts nowhere in a radial run, and only ever takes a solution away', () => {
		each(radial, (network, { volts }, seed) => {
			const node = 1 + (seed % (network.nodes - 1));
			const more = solve({ ...network, loads: [...network.loads, { node, load: led(6) }] });
			if (!more.ok) return;
			for (const [n, v] of more.volts.entries()) hold(v <= volts[n]! + 1e-10, `seed ${seed} node ${n}`);
		});
	});

	test('less resistance everywhere, the source included, is never worse anywhere', () => {
		each(all, (network, { volts }, seed) => {
			const better = solve({
				...network,
				sourceOhms: network.sourceOhms * 0.8,
				segments: network.segments.map((s) => ({ ...s, ohms: s.ohms * 0.8 })),
				feeds: network.feeds?.map((feed) => ({ ...feed, ohms: feed.ohms * 0.8 }))
			});
			if (!better.ok) throw new Error(`seed ${seed}: less resistance lost the solution`);
			// Two feeds of unlike volts drive current through each other, so there the lower one may lose.
			if (network.feeds?.some((feed) => feed.volts !== network.sourceVolts)) return;
			for (const [n, v] of better.volts.entries()) hold(v >= volts[n]! - 1e-10, `seed ${seed} node ${n}`);
		});
	});

	// With filament lamps it may be: on thicker cable they take more, and lamps behind the same series ohms get less.
	test('with LED lamps, one thicker or shorter segment is never worse anywhere in a radial run', () => {
		let solvable = 0;
		for (const seed of seeds) {
			const mixed = anyNetwork(seed, radial[seed % 2]);
			const network = {
				...mixed,
				loads: mixed.loads.map(({ node }, k) => ({ node, load: led(1 + ((seed + k) % 8)) }))
			};
			const solution = solve(network);
			if (!solution.ok) continue;
			solvable++;
			const changed = seed % network.segments.length;
			const better = solve({
				...network,
				segments: network.segments.map((s, k) => (k === changed ? { ...s, ohms: s.ohms * 0.6 } : s))
			});
			if (!better.ok) throw new Error(`seed ${seed}: thicker cable lost the solution`);
			for (const [n, v] of better.volts.entries()) hold(v >= solution.volts[n]! - 1e-10, `seed ${seed} node ${n}`);
		}
		expect(solvable).toBeGreaterThan(count / 2);
	});

	test('the order of segments and loads, the direction of segments and the numbers of nodes do not matter', () => {
		each(all, (network, { volts, sourceAmps }, seed) => {
			const roll = dice(seed + 1e6);
			const rest = shuffled(
				Array.from({ length: network.nodes - 1 }, (_, n) => n + 1),
				roll
			);
			const number = [0, ...rest];
			const other = solve({
				...network,
				segments: shuffled(network.segments, roll).map(({ from, to, ohms }) =>
					roll() < 0.5 ? { from: number[from]!, to: number[to]!, ohms } : { from: number[to]!, to: number[from]!, ohms }
				),
				loads: shuffled(network.loads, roll).map(({ node, load }) => ({ node: number[node]!, load })),
				feeds: network.feeds?.map((feed) => ({ ...feed, node: number[feed.node]! }))
			});
			if (!other.ok) throw new Error(`seed ${seed}: another order lost the solution`);
			// Near the edge of solvability rounding counts for more; the networks here stay 1e-9 V within it.
			for (const [n, v] of volts.entries())
				hold(Math.abs(other.volts[number[n]!]! - v) < 1e-9, `seed ${seed} node ${n}`);
			expect(other.sourceAmps).toBeCloseTo(sourceAmps, 8);
		});
	});

	test('trees come out the same from both methods', () => {
		each(radial, (network, { volts }, seed) => {
			// A second feed with next to nothing behind it sends the tree through the method for rings.
			const asMesh = solve({ ...network, feeds: [{ node: 0, volts: network.sourceVolts, ohms: 1e15 }] });
			if (!asMesh.ok) throw new Error(`seed ${seed}: ${asMesh.message}`);
			for (const [n, v] of volts.entries()) hold(Math.abs(asMesh.volts[n]! - v) < 1e-9, `seed ${seed} node ${n}`);
		});
	});

	// Each lamp's current from the volts before, Ohm's law from the tip to the supply and back, from the source volts down: nothing
	// of the method of the solver, slow, and sure to end at the highest volts or below zero (it only ever descends).
	test('LED only: the same as plain substitution, and no solution where that ends in none', () => {
		let refused = 0;
		for (const seed of seeds) {
			const mixed = anyNetwork(seed, radial[seed % 2]);
			const heavy = 1 + (seed % 9);
			const network = { ...mixed, loads: mixed.loads.map(({ node }) => ({ node, load: led(heavy) })) };
			const solution = solve(network);
			const plain = substituted(network, heavy, solution.ok ? solution.volts : null);
			if (solution.ok)
				for (const [n, v] of plain.entries()) hold(Math.abs(v - solution.volts[n]!) < 1e-9, `seed ${seed} node ${n}`);
			else {
				refused++;
				hold(Math.min(...plain) <= 0, `seed ${seed}: plain substitution ends at ${Math.min(...plain)} V`);
			}
		}
		expect(refused).toBeGreaterThan(count / 100);
	});
});

/** Volts by node; ends once it is within 1e-10 V of `expected`, at volts of zero or less, or after many rounds. */
function substituted(
	{ sourceVolts, sourceOhms, nodes, segments, loads }: Network,
	voltAmps: number,
	expected: number[] | null
) {
	const lamps = new Float64Array(nodes);
	for (const { node } of loads) lamps[node]!++;
	let volts = new Float64Array(nodes).fill(sourceVolts);
	for (let round = 0; round < 100_000; round++) {
		const amps = lamps.map((many, n) => (many * voltAmps) / volts[n]!);
		for (let s = segments.length - 1; s >= 0; s--) amps[Math.min(segments[s]!.from, segments[s]!.to)]! += amps[s + 1]!;
		const next = new Float64Array(nodes);
		next[0] = sourceVolts - sourceOhms * amps[0]!;
		for (const [s, { from, to, ohms }] of segments.entries())
			next[s + 1] = next[Math.min(from, to)]! - ohms * amps[s + 1]!;
		volts = next;
		if (expected ? expected.every((v, n) => Math.abs(v - next[n]!) < 1e-10) : Math.min(...next) <= 0) break;
	}
	return volts;
}
