import { describe, expect, test } from 'vitest';
import { assess, type Pick } from './assess';
import { chooseSupply } from './choose';
import { judge } from './judge';
import { halogen, led } from './networks.testing';
import { anyShape, evenRun, options, transformer } from './runs.testing';
import { wayCost } from './ways';
import type { Choice, ChooseOptions, RunShape, TransformerOption } from './types';

/** Price of the cheapest choice without a problem, by trying every size and tap of every run on every transformer. */
function byBruteForce(shapes: RunShape[], o: ChooseOptions): number {
	let best = Infinity;
	const visit = (picks: Pick[], cost: number, t: TransformerOption): void => {
		const shape = shapes[picks.length];
		if (!shape) {
			if (cost < best && judge(assess(picks, t, o), o).length === 0) best = cost;
			return;
		}
		for (const size of o.sizes)
			for (const tapVolts of t.taps) visit([...picks, { shape, size, tapVolts }], cost + wayCost(shape, size, o), t);
	};
	for (const t of o.transformers) visit([], t.price, t);
	return best;
}
const codes = (choice: Choice) =>
	choice.problems.map(({ code, cornerOnly }) => (cornerOnly ? `${code} (corner)` : code));

describe('the choice is the cheapest of all that keep every limit', () => {
	const seeds = Array.from({ length: process.env.LONG ? 120 : 14 }, (_, k) => k);
	test.each(seeds)(
		'two runs, seed %i',
		(seed) => {
			const alike = seed % 3 === 0 ? 'row' : null;
			const shapes = [
				anyShape(seed * 2, 'a', 'led', alike),
				anyShape(seed * 2 + 1, 'b', 'led', seed % 6 === 0 ? 'row' : null)
			];
			const choice = chooseSupply(shapes, options());
			const least = byBruteForce(shapes, options());
			if (least === Infinity) expect(choice.problems.length).toBeGreaterThan(0);
			else {
				expect(codes(choice)).toEqual([]);
				expect(choice.cost).toBeCloseTo(least, 6);
			}
		},
		300_000
	);
	test('most of those seeds can be met at all', () => {
		expect(
			seeds.filter((seed) => chooseSupply([anyShape(seed * 2, 'a')], options()).problems.length === 0).length
		).toBeGreaterThan(seeds.length / 2);
	});
});

test('what is promised without a problem holds in each case: windows, cables, load with growth, secondaries', () => {
	for (let seed = 100; seed < 130; seed++) {
		const o = options();
		const shapes = ['a', 'b', 'c', 'd', 'e'].map((id, k) => anyShape(seed * 10 + k, id));
		const choice = chooseSupply(shapes, o);
		if (choice.problems.length) continue;
		expect(choice.loadVoltAmps * (1 + o.growth)).toBeLessThanOrEqual(0.8 * choice.transformer.voltAmps + 1e-6);
		const bySecondary = new Map<number, number>();
		for (const [k, run] of choice.runs.entries()) {
			if (!run.nominal.ok) throw new Error('no solution without a problem');
			bySecondary.set(run.secondary, (bySecondary.get(run.secondary) ?? 0) + run.nominal.sourceAmps);
			expect(run.secondary).toBeLessThan(choice.transformer.secondaries);
			for (const [i, lamp] of run.lamps.entries()) {
				const { load } = shapes[k]!.loads[i]!;
				if (load.kind !== 'led') throw new Error('an LED is expected');
				expect(lamp.low).toBeGreaterThanOrEqual(load.minVolts - 1e-6);
				expect(lamp.high).toBeLessThanOrEqual(load.maxVolts + 1e-6);
				expect(lamp.low).toBeLessThanOrEqual(lamp.volts!);
				expect(lamp.volts).toBeLessThanOrEqual(lamp.high!);
			}
		}
		for (const amps of bySecondary.values()) expect(amps).toBeLessThanOrEqual(25);
	}
});

describe('problems, each with cures that were solved', () => {
	test('a far lamp starved on the only size at hand: thicker, or split, cures it', () => {
		const o = options({ sizes: [{ system: 'awg', size: 16 }] });
		const choice = chooseSupply([evenRun('far', 12, 25, 4, led(8))], o);
		const problem = choice.problems.find(({ cornerOnly }) => !cornerOnly)!;
		expect(['lamp-low', 'no-solution']).toContain(problem.code);
		const thicker = problem.cures.find(({ kind }) => kind === 'thicker')!;
		expect(thicker.size!.size).toBeLessThan(16);
		// The cure, applied, leaves nothing hard on the run.
		const cured = chooseSupply([evenRun('far', 12, 25, 4, led(8))], {
			...o,
			sizes: [thicker.size!],
			pricePerMetre: () => 1
		});
		expect(cured.problems.filter(({ cornerOnly }) => !cornerOnly)).toEqual([]);
	});
	test('a halogen window breaks in the corners alone, and says so; LED lamps cure it', () => {
		const choice = chooseSupply([evenRun('warm', 4, 5, 3, halogen(20))], options());
		expect(choice.problems.length).toBeGreaterThan(0);
		for (const problem of choice.problems) {
			expect(problem.cornerOnly).toBe(true);
			expect(['lamp-low', 'lamp-high']).toContain(problem.code);
			expect(problem.cures.map(({ kind }) => kind)).toContain('led');
		}
		const [run] = choice.runs;
		for (const { volts } of run!.lamps) {
			expect(volts).toBeGreaterThanOrEqual(10.8);
			expect(volts).toBeLessThanOrEqual(12);
		}
	});
	test('a near halogen over its window when the only tap is 14 V', () => {
		const o = options({ transformers: [{ ...transformer(150, 100), taps: [14] }] });
		const choice = chooseSupply([evenRun('near', 2, 1, 1, halogen(10))], o);
		expect(choice.problems[0]).toMatchObject({
			code: 'lamp-high',
			run: 'near',
			load: 'near/0',
			limit: 12,
			cornerOnly: false
		});
		expect(choice.problems[0]!.value).toBeGreaterThan(12);
	});
	test('one run over 25 A on the secondary is to be split', () => {
		const choice = chooseSupply([evenRun('heavy', 10, 2, 0.5, led(42))], options());
		expect(codes(choice)).toContain('secondary-amps');
		const split = choice.problems
			.find(({ code }) => code === 'secondary-amps')!
			.cures.find(({ kind }) => kind === 'split');
		expect(split).toBeDefined();
	});
	test('more than the largest transformer carries', () => {
		const shapes = ['a', 'b', 'c', 'd'].map((id) => evenRun(id, 10, 2, 1, led(24)));
		const choice = chooseSupply(shapes, options());
		expect(choice.problems.find(({ code }) => code === 'transformer-load')).toMatchObject({
			run: null,
			limit: 720,
			cornerOnly: false
		});
		expect(choice.transformer.voltAmps).toBe(900);
	});
	test('a larger transformer in the list is taken rather than advised', () => {
		const shapes = ['a', 'b', 'c'].map((id) => evenRun(id, 8, 4, 2, led(6)));
		const choice = chooseSupply(shapes, options());
		expect(choice.problems).toEqual([]);
		expect(choice.transformer.voltAmps).toBe(300);
	});
	test('lamps that cannot be alike are the lesser problem', () => {
		const shape = evenRun('row', 10, 40, 8, led(6));
		const alike = { ...shape, loads: shape.loads.map((l) => ({ ...l, alike: 'row' })) };
		const choice = chooseSupply([alike], options());
		expect(codes(choice)).toEqual(['uneven']);
		expect(choice.problems[0]!.value).toBeGreaterThan(0.5);
	});
});

describe('nothing to work with', () => {
	test('no runs: the smallest transformer and no problem', () => {
		expect(chooseSupply([], options())).toMatchObject({
			transformer: { id: 't60' },
			runs: [],
			problems: [],
			loadVoltAmps: 0
		});
	});
	test('no sizes, no transformers, no taps', () => {
		const shape = evenRun('a', 3, 3, 3);
		expect(codes(chooseSupply([shape], options({ sizes: [] })))).toEqual(['bad-network']);
		expect(codes(chooseSupply([shape], options({ transformers: [] })))).toContain('transformer-load');
		expect(codes(chooseSupply([shape], options({ transformers: [{ ...transformer(100, 1), taps: [] }] })))).toContain(
			'transformer-load'
		);
	});
	test('a shape that is no network is left out, the rest goes on', () => {
		const good = evenRun('good', 3, 3, 3);
		const bad = { ...evenRun('bad', 3, 3, 3), segments: [] };
		const negative = { ...good, id: 'negative', segments: good.segments.map((s) => ({ ...s, metres: -1 })) };
		const choice = chooseSupply([bad, good, negative], options());
		expect(choice.runs.map(({ id }) => id)).toEqual(['bad', 'good', 'negative']);
		expect(choice.problems).toMatchObject([
			{ code: 'bad-network', run: 'bad' },
			{ code: 'bad-network', run: 'negative' }
		]);
		expect(choice.runs[0]!.lamps[0]!.volts).toBeNull();
		expect(choice.runs[1]!.lamps[0]!.volts).toBeGreaterThan(9);
		expect(Number.isFinite(choice.cost)).toBe(true);
	});
	test('a run without lamps', () => {
		const choice = chooseSupply(
			[{ id: 'a', nodes: 2, segments: [{ from: 0, to: 1, metres: 3 }], loads: [] }],
			options()
		);
		expect(choice.problems).toEqual([]);
		expect(choice.loadVoltAmps).toBe(0);
	});
	test('far too much for anything: problems, never NaN', () => {
		const choice = chooseSupply([evenRun('a', 40, 80, 10, led(50)), evenRun('b', 3, 3, 3)], options());
		expect(codes(choice)).toContain('no-solution');
		expect(JSON.stringify(choice)).not.toMatch(/NaN|Infinity/);
		for (const value of [choice.cost, choice.loadVoltAmps, choice.loadWatts]) expect(Number.isFinite(value)).toBe(true);
	});
	test('eight runs that must look alike, a ring among them, end in time', () => {
		const shapes = Array.from({ length: 8 }, (_, k) => anyShape(k + 50, `r${k}`, 'led', 'all'));
		shapes[0]!.segments.push({ from: 0, to: shapes[0]!.nodes - 1, metres: 12 });
		const from = performance.now();
		const choice = chooseSupply(shapes, options());
		expect(choice.runs.length).toBe(8);
		expect(performance.now() - from).toBeLessThan(10_000);
	});
});
