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
	if (solution.ok) return 'ok';
	// Whatever the reason: a node to look at, and a sentence without figures that are none.
	expect(Number.isInteger(solution.at) && solution.at >= 0).toBe(true);
	expect(solution.message).toMatch(/^[A-Z].*\.$/);
	expect(solution.message).not.toMatch(/NaN|undefined|Infinity|null/);
	return solution.why;
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

describe('where volts are low', () => {
	test('a heater that takes all but a twentieth of the volts: by the divider rule', () => {
		const { volts, loadAmps, segmentAmps } = solved(one(12, 1.9, { kind: 'resistance', ohms: 0.1 }));
		expect(volts[1]).toBeCloseTo(0.6, 12);
		expect(loadAmps[0]).toBeCloseTo(6, 11);
		expect(segmentAmps[0]).toBeCloseTo(6, 11);
	});
	test('an LED beside a heater, at less than half of the source volts', () => {
		// 12 V behind 1 Ω with 0.5 Ω across is 4 V behind 1/3 Ω.
		const network = one(12, 1, led(9));
		network.loads.push({ node: 1, load: { kind: 'resistance', ohms: 0.5 } });
		expect(solved(network).volts[1]).toBeCloseTo(2 + Math.sqrt(4 - 3), 10);
		network.loads.push({ node: 1, load: led(3.001) });
		expect(why(network)).toBe('no-solution');
	});
	test('an endless ladder of 1 Ω along and 1 Ω across looks like (1 + √5)/2 Ω', () => {
		const rungs = 300;
		const network: Network = {
			sourceVolts: (1 + Math.sqrt(5)) / 2,
			sourceOhms: 0,
			nodes: rungs + 1,
			segments: Array.from({ length: rungs }, (_, n) => ({ from: n, to: n + 1, ohms: 1 })),
			loads: Array.from({ length: rungs }, (_, n) => ({ node: n + 1, load: { kind: 'resistance', ohms: 1 } }))
		};
		const { sourceAmps, volts } = solved(network);
		expect(sourceAmps).toBeCloseTo(1, 12);
		expect(volts[1]! / volts[2]!).toBeCloseTo(((1 + Math.sqrt(5)) / 2) ** 2, 10);
	});
});

test('a drop so great that the first guess is below zero does not end there', () => {
	// From there a single step leads to volts above those of the source.
	expect(why(anyNetwork(27486, 'chain'))).toBe('no-solution');
	expect(why({ ...anyNetwork(27486, 'chain'), feeds: [{ node: 0, volts: 12, ohms: 1e15 }] })).toBe('no-solution');
});

describe('bad networks are reported', () => {
	const chain = evenChain(3);
	test('more nodes than could be joined: the first that is not, without making room for them', () => {
		expect(solve({ ...chain, nodes: 1e9 })).toMatchObject({ ok: false, why: 'island', at: 4 });
		expect(solve({ ...chain, nodes: 9 })).toMatchObject({ ok: false, why: 'island', at: 4 });
	});
	test('two nodes joined to each other only', () => {
		const segments = [chain.segments[0]!, { from: 2, to: 3, ohms: 0.1 }];
		expect(solve({ ...chain, segments })).toMatchObject({ ok: false, why: 'island', at: 2 });
		const ring = [...segments, { from: 3, to: 2, ohms: 0.2 }];
		expect(solve({ ...chain, segments: ring })).toMatchObject({ ok: false, why: 'island', at: 2 });
	});
	test('the fault says which part and why', () => {
		const lamp = { kind: 'led', voltAmps: 4, minVolts: 15, maxVolts: 9 } as const;
		expect(solve({ ...chain, loads: [...chain.loads, { node: 2, load: lamp }] })).toMatchObject({
			at: 2,
			message: 'Load 3 cannot be worked out: it has no window of volts.'
		});
		const segments = chain.segments.map((s, k) => (k === 1 ? { ...s, ohms: -0.1 } : s));
		expect(solve({ ...chain, segments })).toMatchObject({ at: 2, message: 'Segment 1 needs a length from zero up.' });
	});
	test('an island names its node', () => {
		const solution = solve({ ...chain, segments: chain.segments.slice(0, 2) });
		expect(solution).toMatchObject({ ok: false, why: 'island', at: 3 });
	});
	test.each<[string, Partial<Network>]>([
		['negative length', { segments: chain.segments.map((s) => ({ ...s, ohms: -1 })) }],
		['NaN length', { segments: chain.segments.map((s) => ({ ...s, ohms: Number.NaN })) }],
		['infinite length', { segments: chain.segments.map((s) => ({ ...s, ohms: Infinity })) }],
		['half a node', { segments: chain.segments.map((s, k) => (k === 1 ? { ...s, from: 0.5 } : s)) }],
		['a lamp at half a node', { loads: [{ node: 1.5, load: led(4) }] }],
		['a lamp at no node', { loads: [{ node: Number.NaN, load: led(4) }] }],
		['a lamp of negative volt-amperes', { loads: [{ node: 1, load: led(-4) }] }],
		['a halogen without rated volts', { loads: [{ node: 1, load: { ...halogen(20), ratedVolts: 0 } as Load }] }],
		['a resistance of none', { loads: [{ node: 1, load: { kind: 'resistance', ohms: 0 } }] }],
		['ohms of the supply that are no number', { sourceOhms: Number.NaN }],
		['endless volts', { sourceVolts: Infinity }],
		['nodes that are no number', { nodes: Number.NaN }],
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

test('10,000 lamps on one run, as a chain, a tree and a ring, without running out of stack or time', () => {
	const chain = evenChain(10_000);
	const ring = { ...chain, segments: [...chain.segments, { from: 10_000, to: 0, ohms: 0.01 }] };
	// Numbered from the far end: not in the order in which it could be laid.
	const backwards = {
		...chain,
		segments: chain.segments.map(({ from, to, ohms }) => ({ from: (10_001 - from) % 10_001, to: 10_001 - to, ohms })),
		loads: chain.loads.map(({ node, load }) => ({ node: 10_001 - node, load }))
	};
	for (const network of [chain, backwards, evenTree(10_000), ring]) {
		const from = performance.now();
		const { volts, sourceAmps } = solved(network);
		// 0.4 ms as a tree and 15 ms as a ring; cold and on a busy machine many times that.
		expect(performance.now() - from).toBeLessThan(2000);
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

test('the same network gives the same bits, whatever was solved before it, and no answer changes afterwards', () => {
	const first = Array.from({ length: 60 }, (_, seed) => solve(anyNetwork(seed)));
	const copy = structuredClone(first);
	solve(evenChain(500));
	solve({ ...evenChain(30), loads: [{ node: 3, load: led(Number.NaN) }] });
	for (let seed = 59; seed >= 0; seed--) expect(solve(anyNetwork(seed))).toEqual(copy[seed]);
	expect(first).toEqual(copy);
});
