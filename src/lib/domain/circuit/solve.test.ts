import { describe, expect, test } from 'vitest';
import { anyNetwork, evenChain, evenTree, halogen, led } from './networks.testing';
import { solve } from './solve';
import type { Load, Network } from './types';

const one = (volts: number, ohms: number, load: Load): Network => ({
	sourceVolts: volts,
	sourceOhms: 0,
	nodes: 2,
	segments: [{ from: 0, to: 1, ohms }],
	loads: [{ node: 1, load }]
});
const solved = (network: Network) => {
	const solution = solve(network);
	if (!solution.ok) throw new Error(solution.message);
	return solution;
};
const why = (network: Network) => {
	const solution = solve(network);
	return solution.ok ? 'ok' : solution.why;
};

describe('one lamp of constant volt-amperes: V = (E + √(E² − 4RS)) / 2', () => {
	test.each([
		[12, 0.5, 20],
		[12, 1.7, 20],
		[12, 0, 20],
		[15, 0.01, 300]
	])('%s V, %s Ω, %s VA', (volts, ohms, voltAmps) => {
		expect(solved(one(volts, ohms, led(voltAmps))).volts[1]).toBeCloseTo(
			(volts + Math.sqrt(volts ** 2 - 4 * ohms * voltAmps)) / 2,
			10
		);
	});
	test('S > E²/4R has no solution; just below it the upper root is found, 7 digits from the edge', () => {
		const most = 12 ** 2 / 4 / 0.9;
		for (const beyond of [1 + 1e-9, 1.001, 1.5, 100]) expect(why(one(12, 0.9, led(most * beyond)))).toBe('no-solution');
		for (const under of [1e-7, 1e-4, 0.1]) {
			const { volts } = solved(one(12, 0.9, led(most * (1 - under))));
			expect(volts[1]).toBeCloseTo(6 + 6 * Math.sqrt(under), 6);
			expect(volts[1]).toBeGreaterThan(6);
		}
	});
	test('added to a halogen lamp or a resistance it is still an answer or none', () => {
		for (let voltAmps = 1; voltAmps < 80; voltAmps++) {
			const network = one(12, 0.9, led(voltAmps));
			network.loads.push({ node: 1, load: halogen(20) });
			const solution = solve(network);
			if (!solution.ok) expect(solution.why).toBe('no-solution');
			else {
				const [v] = [solution.volts[1]!];
				const surplus = (u: number) => (12 - u) / 0.9 - voltAmps / u - (20 / 12) * (u / 12) ** 0.55;
				expect(Math.abs(surplus(v))).toBeLessThan(1e-9);
				// No root above: the surplus stays below zero from here to the source volts.
				for (let u = v + 1e-3; u <= 12; u += 1e-2) expect(surplus(u)).toBeLessThan(0);
			}
		}
	});
});

describe('bad networks are reported', () => {
	const chain = evenChain(3);
	test('an island names its node', () => {
		const solution = solve({ ...chain, segments: chain.segments.slice(0, 2) });
		expect(solution).toMatchObject({ ok: false, why: 'island', at: 3 });
	});
	test.each<[string, Partial<Network>]>([
		['negative length', { segments: chain.segments.map((s) => ({ ...s, ohms: -1 })) }],
		['NaN length', { segments: chain.segments.map((s) => ({ ...s, ohms: Number.NaN })) }],
		['infinite length', { segments: chain.segments.map((s) => ({ ...s, ohms: Infinity })) }],
		['a segment to nowhere', { segments: [...chain.segments, { from: 0, to: 9, ohms: 1 }] }],
		['a segment back to its node', { segments: [...chain.segments, { from: 2, to: 2, ohms: 1 }] }],
		[
			'a lamp without a window',
			{ loads: [{ node: 1, load: { kind: 'led', voltAmps: 4, minVolts: Number.NaN, maxVolts: 15 } }] }
		],
		['a lamp nowhere', { loads: [{ node: -1, load: led(4) }] }],
		['no volts', { sourceVolts: 0 }],
		['no node', { nodes: 0 }],
		['a feed without ohms', { feeds: [{ node: 1, volts: 12, ohms: 0 }] }],
		[
			'a loop of zero resistance',
			{
				segments: [
					{ from: 0, to: 1, ohms: 0.1 },
					{ from: 1, to: 2, ohms: 0 },
					{ from: 2, to: 3, ohms: 0 },
					{ from: 3, to: 1, ohms: 0 }
				]
			}
		]
	])('%s', (_, change) => {
		expect(why({ ...chain, ...change })).toBe('bad-network');
	});
	test('zero length is nothing special', () => {
		const { volts } = solved({
			...chain,
			segments: chain.segments.map((s, k) => ({ ...s, ohms: k === 1 ? 0 : s.ohms }))
		});
		expect(volts[2]).toBe(volts[1]);
	});
	test('nothing connected leaves the source volts', () => {
		expect(solved({ sourceVolts: 12, sourceOhms: 1, nodes: 1, segments: [], loads: [] })).toMatchObject({
			volts: [12],
			sourceAmps: 0
		});
	});
});

describe('rings', () => {
	const lamp = led(20);
	test('two equal ways carry half each, as one of half the ohms', () => {
		const ring = solved({
			...one(12, 0.4, lamp),
			segments: [
				{ from: 0, to: 1, ohms: 0.4 },
				{ from: 1, to: 0, ohms: 0.4 }
			]
		});
		const single = solved(one(12, 0.2, lamp));
		expect(ring.volts[1]).toBeCloseTo(single.volts[1]!, 11);
		expect(ring.segmentAmps[0]).toBeCloseTo(single.sourceAmps / 2, 10);
		expect(ring.segmentAmps[1]).toBeCloseTo(-single.sourceAmps / 2, 10);
	});
	test('a second feed of the same volts and ohms is the same as half the ohms', () => {
		const two = solved({ ...one(12, 0, lamp), sourceOhms: 0.4, feeds: [{ node: 1, volts: 12, ohms: 0.4 }] });
		expect(two.volts[1]).toBeCloseTo(solved(one(12, 0.2, lamp)).volts[1]!, 11);
		expect(two.feedAmps?.[0]).toBeCloseTo(two.sourceAmps, 10);
	});
	test('a load beyond each way alone but not beyond both is solved', () => {
		const most = 12 ** 2 / 4 / 0.9;
		expect(why(one(12, 0.9, led(most * 1.5)))).toBe('no-solution');
		const both = {
			...one(12, 0.9, led(most * 1.5)),
			segments: [
				{ from: 0, to: 1, ohms: 0.9 },
				{ from: 0, to: 1, ohms: 0.9 }
			]
		};
		expect(solved(both).volts[1]).toBeCloseTo((12 + Math.sqrt(144 - 4 * 0.45 * most * 1.5)) / 2, 10);
	});
});

test('10,000 lamps on one run, as a chain and as a tree, without running out of stack', () => {
	for (const network of [evenChain(10_000), evenTree(10_000)]) {
		const { volts, sourceAmps } = solved(network);
		expect(Math.min(...volts)).toBeGreaterThan(11);
		expect(sourceAmps).toBeCloseTo(60 / 12.1, 0);
	}
	// Far beyond what the cable can carry: an answer all the same.
	const heavy = evenChain(10_000);
	expect(why({ ...heavy, loads: heavy.loads.map(({ node }) => ({ node, load: led(1) })) })).toBe('no-solution');
});

test('a large ring network is solved', () => {
	const chain = evenChain(3000);
	const ring = {
		...chain,
		segments: [
			...chain.segments,
			...Array.from({ length: 60 }, (_, k) => ({ from: k * 50, to: k * 50 + 45, ohms: 0.01 }))
		]
	};
	expect(Math.min(...solved(ring).volts)).toBeGreaterThan(Math.min(...solved(chain).volts));
});

test('the same network gives the same bits', () => {
	for (let seed = 0; seed < 40; seed++) expect(solve(anyNetwork(seed))).toEqual(solve(anyNetwork(seed)));
});
