import { describe, expect, test } from 'vitest';
import { chooseSupply } from './choose';
import { led } from './networks.testing';
import { evenRun, options, planeRun } from './runs.testing';
import type { Alternative, Choice, RunShape, RunWays } from './types';

const seeds = Array.from({ length: process.env.LONG ? 60 : 12 }, (_, k) => k);
const o = options();
const home = (seed: number): RunWays[] =>
	[0, 1, 2].map((k) => planeRun(seed * 3 + k, `r${k}`, { heavy: 1 + (seed % 2) }));
const feedOf = ({ feed }: RunShape) => feed ?? 'end';

/** The choice with one run as in the alternative, all others as they are; once for each way of the feed it names. */
function instead(choice: Choice, one: Alternative, given: RunWays[]): Choice[] {
	const run = given.find(({ shape }) => shape.id === one.run)!;
	return [run.shape, ...run.others!()]
		.filter((way) => feedOf(way) === one.feed)
		.map((way) =>
			chooseSupply(
				choice.runs.map(({ shape, size, tapVolts }) =>
					shape.id === one.run
						? { shape: way, held: { size: one.size, tapVolts: one.tapVolts } }
						: { shape, held: { size, tapVolts } }
				),
				{ ...o, transformers: [choice.transformer] }
			)
		);
}
const isClose = (a: number, b: number) => Math.abs(a - b) < 1e-6;

describe('what was weighed and not taken', () => {
	const seen = { sound: 0, broken: 0 };
	test.each(seeds)('seed %i: the dearer keeps every limit, the cheaper breaks what it says', (seed) => {
		const runs = home(seed);
		const choice = chooseSupply(runs, o);
		if (choice.problems.length > 0) return;
		for (const { id, shape, size } of choice.runs) {
			const own = choice.alternatives.filter(({ run }) => run === id);
			const [sound, broken] = [own.filter(({ problem }) => !problem), own.filter(({ problem }) => problem)];
			expect(sound.length).toBeLessThanOrEqual(1);
			expect(broken.length).toBeLessThanOrEqual(1);
			for (const one of own) {
				expect([feedOf(shape), size]).not.toEqual([one.feed, one.size]);
				const same = instead(choice, one, runs).filter((made) => isClose(made.cost - choice.cost, one.costDifference));
				const matches = ({ problems }: Choice) => {
					if (!one.problem) return problems.length === 0;
					const { code, run, value, limit } = one.problem;
					return problems.some(
						(p) => p.code === code && p.run === run && p.limit === limit && isClose(p.value ?? 0, value ?? 0)
					);
				};
				expect(same.some(matches)).toBe(true);
				expect(Math.sign(one.costDifference)).toBe(one.problem ? -1 : 1);
				seen[one.problem ? 'broken' : 'sound']++;
			}
		}
	});
	test('both sorts are among them', () => {
		expect(seen.sound).toBeGreaterThan(seeds.length);
		expect(seen.broken).toBeGreaterThan(0);
	});
	test('nothing is cheaper than the plain way on the thinnest cable', () => {
		const { runs, alternatives } = chooseSupply([evenRun('a', 4, 4, 3)], o);
		expect(runs[0]!.size.size).toBe(16);
		expect(alternatives).toMatchObject([{ run: 'a', feed: 'end', size: { size: 14 }, problem: null }]);
	});
	test('the thinner size that a run on thicker cable did not get is named with the lamp that would go short', () => {
		const choice = chooseSupply([evenRun('far', 8, 20, 4, led(7))], o);
		expect(choice.runs[0]!.size.size).toBe(14);
		const cheaper = choice.alternatives.find(({ problem }) => problem)!;
		expect(cheaper).toMatchObject({ size: { size: 16 }, problem: { run: 'far', load: 'far/7' } });
		expect(cheaper.costDifference).toBeCloseTo(-(20 + 7 * 4) * 0.4, 9);
	});
});
