import { describe, expect, test } from 'vitest';
import { leastOfTwo } from './brute.testing';
import { chooseSupply } from './choose';
import { halogen, led } from './networks.testing';
import { evenRun, options, planeRun, transformer } from './runs.testing';
import type { Choice, RunShape, RunWays } from './types';

const waysOf = (run: RunWays): RunShape[] => [run.shape, ...(run.others?.() ?? [])];
const feeds = (choice: Choice) => choice.runs.map(({ shape }) => shape.feed);

describe('the choice is the cheapest over ways, sizes, taps and transformers', () => {
	const seeds = Array.from({ length: process.env.LONG ? 120 : 14 }, (_, k) => k);
	const o = options({ sizes: [16, 14, 12, 10].map((size) => ({ system: 'awg', size })) });
	const runsOf = (seed: number): [RunWays, RunWays] => {
		const heavy = seed % 2 ? 2 : 1;
		const alike = seed % 5 === 4 ? 'row' : null;
		return [planeRun(seed * 2, 'a', { heavy, alike }), planeRun(seed * 2 + 1, 'b', { heavy })];
	};
	const taken: (string | undefined)[] = [];
	test.each(seeds)(
		'two runs, seed %i',
		(seed) => {
			const runs = runsOf(seed);
			const choice = chooseSupply(runs, o);
			const least = leastOfTwo([waysOf(runs[0]), waysOf(runs[1])], o);
			if (least === Infinity) return expect(choice.problems.length).toBeGreaterThan(0);
			expect(choice.problems).toEqual([]);
			expect(choice.cost).toBeCloseTo(least, 6);
			taken.push(...feeds(choice));
		},
		300_000
	);
	test('among these seeds the plain way wins, and so does a feed at the middle and at a hub', () => {
		expect(new Set(taken)).toEqual(new Set(['end', 'middle', 'hub']));
	});
});

describe('other ways', () => {
	const counted = (run: RunWays) => {
		const seen = { calls: 0 };
		return { seen, run: { ...run, others: () => (seen.calls++, run.others!()) } };
	};
	test('are not made where the plain one does on the thinnest cable', () => {
		const { seen, run } = counted({ shape: evenRun('near', 4, 4, 3), others: planeRun(1, 'near').others });
		expect(chooseSupply([run], options()).runs[0]!.size.size).toBe(16);
		expect(seen.calls).toBe(0);
	});
	test('are made once where one could do on thinner cable', () => {
		const { seen, run } = counted(planeRun(3, 'far', { heavy: 2 }));
		const plain = chooseSupply([run.shape], options());
		expect(plain.runs[0]!.size.size).toBeLessThan(16);
		expect(chooseSupply([run], options()).cost).toBeLessThanOrEqual(plain.cost);
		expect(seen.calls).toBe(1);
	});
	test('are tried at any cost for a run that cannot keep every limit in its plain way', () => {
		const lamps = { loads: evenRun('row', 9, 1, 1, halogen(20)).loads, id: 'row' };
		const chain = evenRun('row', 9, 6, 6, halogen(20));
		const hub: RunShape = {
			...lamps,
			feed: 'hub',
			laying: 500,
			nodes: 10,
			segments: Array.from({ length: 9 }, (_, n) => ({ from: 0, to: n + 1, metres: 8 }))
		};
		const o = options({ sizes: [{ system: 'awg', size: 12 }] });
		expect(chooseSupply([chain], o).problems.some(({ cornerOnly }) => !cornerOnly)).toBe(true);
		const choice = chooseSupply([{ shape: chain, others: () => [hub] }], o);
		expect(feeds(choice)).toEqual(['hub']);
		expect(choice.problems.every(({ cornerOnly }) => cornerOnly)).toBe(true);
		expect(choice.runs[0]!.lamps.map(({ id }) => id)).toEqual(lamps.loads.map(({ id }) => id));
		expect(choice.runs[0]!.nominal).toMatchObject({ ok: true });
	});
	test('laying counts in the cost whichever way is taken', () => {
		const shape = evenRun('a', 3, 4, 3);
		const free = chooseSupply([shape], options());
		const dug = chooseSupply([{ ...shape, laying: 37 }], options());
		expect(dug.cost - free.cost).toBeCloseTo(37, 9);
	});
	test('that are no network, or leave a lamp out, are passed over', () => {
		const { shape } = planeRun(3, 'far', { heavy: 2 });
		const less = { ...shape, loads: shape.loads.slice(1) };
		const broken = { ...shape, segments: shape.segments.slice(1) };
		const negative = { ...shape, segments: shape.segments.map((s) => ({ ...s, metres: -s.metres })) };
		const choice = chooseSupply([{ shape, others: () => [less, broken, negative] }], options());
		expect(choice.runs[0]!.shape).toBe(shape);
	});
});

/**
 * A line evenly loaded from end to end drops, fed at its centre, one quarter of what it drops fed at one end: G. Kapp,
 * Electricity (1912), p. 233. For currents that do not depend on the volts, and for a continuous load; with 2n equal lamps
 * in the middles of 2n equal pieces the ratio of the sums is exactly a quarter too: n² / (2n)². LED lamps of
 * little load on stout cable draw the same current within the drop as a fraction of the volts, so the tolerance is
 * twice the end-fed drop as a fraction.
 */
test('fed at its centre an evenly loaded line drops a quarter of what it drops fed at one end', () => {
	const lamps = 24;
	const piece = 2;
	const loads = evenRun('line', lamps, 1, 1, led(0.5)).loads;
	const end = evenRun('line', lamps, piece / 2, piece, led(0.5));
	// Node `lamps + 1` is the far end of the plain line's first half piece: here the centre, where the feed comes in.
	const half = lamps / 2;
	const centre: RunShape = {
		id: 'line',
		feed: 'middle',
		nodes: lamps + 1,
		segments: Array.from({ length: lamps }, (_, n) => {
			const from = n === half || n === half - 1 ? 0 : n < half ? n + 2 : n;
			return { from, to: n + 1, metres: from === 0 ? piece / 2 : piece };
		}),
		loads
	};
	const o = options({ sizes: [{ system: 'awg', size: 10 }] });
	const dropOf = (shape: RunShape) => {
		const { nominal, lamps: got } = chooseSupply([{ shape, held: { tapVolts: 12 } }], o).runs[0]!;
		if (!nominal.ok) throw new Error(nominal.message);
		return nominal.volts[0]! - Math.min(...got.map(({ volts }) => volts!));
	};
	const [whole, quarter] = [dropOf(end), dropOf(centre)];
	expect(whole).toBeGreaterThan(0.1);
	expect(Math.abs(quarter / whole - 0.25)).toBeLessThan((0.25 * 2 * whole) / 12);
});

describe('held by hand', () => {
	const shape = evenRun('a', 6, 8, 4, led(6));
	test('size and tap are kept, and what is left is chosen', () => {
		const run = { shape, held: { size: { system: 'awg', size: 10 } as const, tapVolts: 13 } };
		const choice = chooseSupply([run, evenRun('b', 3, 4, 3)], options());
		expect(choice.runs[0]).toMatchObject({ size: { size: 10 }, tapVolts: 13 });
		expect(choice.runs[1]).toMatchObject({ size: { size: 16 } });
		expect(choice.problems).toEqual([]);
		expect(choice.cost).toBeGreaterThan(chooseSupply([shape, evenRun('b', 3, 4, 3)], options()).cost);
	});
	test('a size that nobody sells is in hand already: solved, at no price', () => {
		const run = { shape: { ...shape, laying: 5 }, held: { size: { system: 'awg', size: 13 } as const } };
		const choice = chooseSupply([run], options());
		expect(choice.problems).toEqual([]);
		expect(choice.cost).toBeCloseTo(5 + choice.transformer.price, 9);
		expect(choice.runs[0]!.size.size).toBe(13);
	});
	test('a transformer with the tap is taken, though it costs more', () => {
		const o = options({ transformers: [{ ...transformer(150, 100), taps: [12] }, transformer(300, 170)] });
		const choice = chooseSupply([{ shape, held: { tapVolts: 14 } }], o);
		expect(choice.transformer.id).toBe('t300');
		expect(choice.problems).toEqual([]);
	});
	test('a tap that no transformer has is tried all the same, and said', () => {
		const o = options({ transformers: [{ ...transformer(150, 100), taps: [12] }] });
		const choice = chooseSupply([{ shape, held: { tapVolts: 14 } }, evenRun('b', 3, 4, 3)], o);
		expect(choice.runs.map(({ tapVolts }) => tapVolts)).toEqual([14, 12]);
		expect(choice.problems).toMatchObject([{ code: 'no-tap', run: 'a', value: 14, cornerOnly: false }]);
		expect(choice.problems[0]!.cures).toMatchObject([{ kind: 'tap', tapVolts: 12 }]);
	});
	test('what is no size and no tap is a bad network', () => {
		for (const held of [{ size: { system: 'mm2', size: Number.NaN } as const }, { tapVolts: -3 }]) {
			const choice = chooseSupply([{ shape, held }], options());
			expect(choice.problems).toMatchObject([{ code: 'bad-network', run: 'a' }]);
			expect(Number.isFinite(choice.runs[0]!.ohmsPerKm)).toBe(true);
		}
	});
});

test('the order of runs, sizes and ways does not bear on the choice', () => {
	for (let seed = 0; seed < 8; seed++) {
		const o = options();
		const runs = [0, 1, 2].map((k) => planeRun(seed * 3 + k, `r${k}`, { heavy: 1 + (seed % 2) }));
		const turned = runs.toReversed().map((run) => ({ ...run, others: () => run.others().toReversed() }));
		const one = chooseSupply(runs, o);
		const other = chooseSupply(turned, { ...o, sizes: o.sizes.toReversed() });
		const told = ({ transformer: { id }, cost, loadVoltAmps, runs: chosen }: Choice) => ({
			id,
			cost,
			loadVoltAmps,
			runs: chosen
				.map(({ shape, size, tapVolts, lamps }) => ({ id: shape.id, feed: shape.feed, size, tapVolts, lamps }))
				.toSorted((a, b) => a.id.localeCompare(b.id))
		});
		expect(told(other)).toEqual(told(one));
		// And again, to the last bit.
		expect(JSON.stringify(chooseSupply(runs, o))).toBe(JSON.stringify(one));
	}
});

describe('of taps at one price', () => {
	const thin = (taps: number[]) =>
		options({ sizes: [{ system: 'awg', size: 16 }], transformers: [{ ...transformer(300, 100), taps }] });
	const on = (va: number, taps: number[]) => chooseSupply([evenRun('far', 6, 12, 4, led(va))], thin(taps));
	const loads = [6, 7, 8, 9, 10, 11, 12, 13];
	const does = (va: number, tap: number) => on(va, [tap]).problems.length === 0;
	const onlyHigh = loads.filter((va) => does(va, 15) && !does(va, 14));
	const both = loads.filter((va) => does(va, 15) && does(va, 14));
	test('one whose own volts no lamp minds with every other lamp out comes first', () => {
		expect(both.length).toBeGreaterThan(0);
		// 15 V with the mains 5 % high is 15.75 V; these lamps take 15 V at most.
		for (const va of both) expect(on(va, [14, 15]).runs[0]!.tapVolts).toBe(14);
	});
	test('and where no other does, the one that is right with all lamps in is taken', () => {
		expect(onlyHigh.length).toBeGreaterThan(0);
		for (const va of onlyHigh) expect(on(va, [12, 13, 14, 15]).runs[0]!.tapVolts).toBe(15);
	});
});
