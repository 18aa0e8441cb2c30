import { describe, expect, test } from 'vitest';
import { chooseSupply } from './choose';
import { dice, led } from './networks.testing';
import { evenRun, options, planeRun, transformer } from './runs.testing';
import type { Choice, Load, RunShape, RunWays } from './types';

/** Paths of numbers that are none; the shapes, which are the input, aside. */
function notNumbers(value: unknown, path = ''): string[] {
	if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
	if (typeof value !== 'object' || value === null) return [];
	return Object.entries(value).flatMap(([key, one]) => (key === 'shape' ? [] : notNumbers(one, `${path}.${key}`)));
}
const codes = (choice: Choice) => choice.problems.map(({ code, run }) => `${code} ${run}`);
const good = evenRun('good', 3, 3, 3);
const long = (metres: number): RunShape => ({
	...evenRun('bad', 3, 3, 3),
	segments: evenRun('bad', 3, 3, 3).segments.map((s, k) => (k === 1 ? { ...s, metres } : s))
});
const lit = (load: Load): RunShape => evenRun('bad', 3, 3, 3, load);

describe('bad input is said, and the rest goes on', () => {
	test.each<[string, RunShape | RunWays]>([
		['a negative length', long(-1)],
		['a length that is no number', long(Number.NaN)],
		['an endless cable', long(Infinity)],
		[
			'lengths that cannot be added',
			{ ...long(1e308), segments: long(1e308).segments.map((s) => ({ ...s, metres: 1e308 })) }
		],
		['a lamp with no window', lit({ kind: 'led', voltAmps: 5, minVolts: Number.NaN, maxVolts: Number.NaN })],
		['a window upside down', lit({ kind: 'led', voltAmps: 5, minVolts: 15, maxVolts: 9 })],
		['a resistance of nothing', lit({ kind: 'resistance', ohms: 0 })],
		['an island', { ...evenRun('bad', 3, 3, 3), segments: evenRun('bad', 3, 3, 3).segments.filter((_, k) => k !== 1) }],
		['more nodes than memory holds', { ...evenRun('bad', 3, 3, 3), nodes: 4e9 }],
		['a node that is none', { ...evenRun('bad', 3, 3, 3), segments: [{ from: 0, to: 1.5, metres: 3 }] }],
		[
			'a loop without resistance',
			{
				...evenRun('bad', 3, 0, 0),
				segments: [...evenRun('bad', 3, 0, 0).segments, { from: 0, to: 3, metres: 0 }]
			}
		],
		['laying that is no price', { ...evenRun('bad', 3, 3, 3), laying: Number.NaN }],
		['laying below nothing', { ...evenRun('bad', 3, 3, 3), laying: -5 }]
	])('%s', (_, run) => {
		const ways = 'shape' in run ? run : { shape: run, others: () => [run, evenRun('bad', 3, 4, 3)] };
		const choice = chooseSupply([ways, good], options());
		expect(codes(choice)).toEqual(['bad-network bad']);
		expect(choice.runs.map(({ id }) => id)).toEqual(['bad', 'good']);
		expect(choice.runs[0]!.lamps.every(({ volts }) => volts === null)).toBe(true);
		expect(choice.runs[1]!.lamps.every(({ volts }) => volts! > 9)).toBe(true);
		expect(notNumbers(choice)).toEqual([]);
	});
	test('no length at all is a network: the lamps hang at the transformer', () => {
		const choice = chooseSupply([evenRun('a', 3, 0, 0)], options());
		expect(choice.problems).toEqual([]);
		expect(choice.cost).toBe(choice.transformer.price);
	});
	test('transformers that are none are not offered', () => {
		const odd = [
			{ ...transformer(300, Number.NaN) },
			{ ...transformer(300, 1), taps: [Number.NaN] },
			{ ...transformer(300, 1), regulation: Infinity }
		];
		expect(chooseSupply([good], options({ transformers: [...odd, transformer(150, 110)] })).transformer.id).toBe(
			't150'
		);
		expect(notNumbers(chooseSupply([good], options({ transformers: odd })))).toEqual([]);
	});
	test('two runs of one name', () => {
		const choice = chooseSupply([good, good], options());
		expect(choice.problems).toEqual([]);
		expect(choice.runs.length).toBe(2);
	});
});

test('whatever is spoilt, there is an answer, and no figure in it is none', () => {
	const odd = [0, -1, Number.NaN, Infinity, 1e9, 1e-9];
	for (let seed = 0; seed < (process.env.LONG ? 2000 : 200); seed++) {
		const roll = dice(seed + 5000);
		const any = () => odd[Math.floor(roll() * odd.length)]!;
		const spoil = (shape: RunShape): RunShape => ({
			...shape,
			...(roll() < 0.1 && { laying: any() }),
			segments: shape.segments.map((s) => (roll() < 0.05 ? { ...s, metres: any() } : s)),
			loads: shape.loads.map((l) =>
				roll() < 0.05 ? { ...l, load: { kind: 'led', voltAmps: any(), minVolts: 9, maxVolts: 15 } } : l
			)
		});
		const runs = [0, 1, 2].map((k): RunWays => {
			const { shape, others } = planeRun(seed * 3 + k, `r${k}`, { heavy: 1 + 3 * roll() });
			const held = roll() < 0.3 ? { size: { system: 'awg' as const, size: roll() < 0.5 ? 12 : any() } } : undefined;
			return { shape: spoil(shape), others: () => others().map(spoil), ...(held && { held }) };
		});
		const choice = chooseSupply(runs, options());
		expect(notNumbers(choice)).toEqual([]);
		expect(choice.runs.map(({ id }) => id)).toEqual(['r0', 'r1', 'r2']);
	}
});

describe('ten thousand lamps on one run', () => {
	const lamps = 10_000;
	const hub = (load: Load): RunShape => ({
		...evenRun('big', lamps, 5, 0.05, load),
		feed: 'hub',
		segments: Array.from({ length: lamps }, (_, n) => ({ from: 0, to: n + 1, metres: 5 }))
	});
	test.each([
		['small ones that do', 0.004, 0.005, []],
		[
			'too many for the cable',
			0.05,
			0.005,
			['no-solution big', 'cable-amps big', 'secondary-amps big', 'transformer-load null']
		],
		['lamps of a garden', 5, 2, ['no-solution big', 'transformer-load null']]
	])('%s: answered in a few seconds', (_, va, gap, expected) => {
		const from = performance.now();
		const shape = evenRun('big', lamps, 5, gap, led(va));
		const choice = chooseSupply([{ shape, others: () => [hub(led(va))] }], options());
		expect(notNumbers(choice)).toEqual([]);
		expect(codes(choice)).toEqual(expected);
		expect(performance.now() - from).toBeLessThan(5000);
	});
});
