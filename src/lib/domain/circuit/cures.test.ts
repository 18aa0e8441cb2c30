import { describe, expect, test } from 'vitest';
import { chooseSupply } from './choose';
import { dice, halogen, led } from './networks.testing';
import { evenRun, options, planeRun, transformer } from './runs.testing';
import { splitRun, withLeds } from './split';
import type {
	Choice,
	ChooseOptions,
	ChoiceProblem,
	ChosenRun,
	Cure,
	RunShape,
	RunWays,
	TransformerOption
} from './types';

/** Homes that are short of something: heavy lamps, thin cable, small transformers, halogen lamps, runs held by hand. */
function shortHome(seed: number): { runs: RunWays[]; o: ChooseOptions } {
	const roll = dice(seed + 900);
	const kind = seed % 4;
	const runs = [0, 1, 2].map((k): RunWays => {
		const lamp = kind === 3 && k === 0 ? () => halogen(10) : led;
		const run = planeRun(seed * 3 + k, `r${k}`, { lamp, heavy: kind === 0 ? 3 : 1.5 });
		if (kind === 1) return { ...run, held: { size: { system: 'awg', size: 16 } } };
		return kind === 2 ? { ...run, held: { tapVolts: 12 } } : run;
	});
	const some = [60, 150, 300].map((va, k) => transformer(va, [65, 110, 170][k]!));
	return { runs, o: options(roll() < 0.5 ? { transformers: some } : {}) };
}

/**
 * All runs held as they were chosen, but for the run of the problem, which is changed as the cure says; once for each way of
 * the feed that it names.
 */
function applied(choice: Choice, problem: ChoiceProblem, cure: Cure, given: RunWays[], o: ChooseOptions): Choice[] {
	const model = o.transformers.find(({ id }) => id === (cure.transformer ?? choice.transformer.id))!;
	const changed = ({ shape, size, tapVolts }: ChosenRun): RunWays[][] => {
		const own = problem.run === null ? cure.kind === 'led' : shape.id === problem.run;
		if (!own) return [[{ shape, held: { size, tapVolts } }]];
		const held = { size: cure.size ?? size, tapVolts: cure.tapVolts ?? tapVolts };
		const as = (one: RunShape): RunWays => ({ shape: one, held });
		if (cure.kind === 'led') return [[as(withLeds(shape) ?? shape)]];
		if (cure.kind === 'split') {
			const halves = splitRun(shape)!;
			expect(halves.map(({ loads }) => loads.map(({ id }) => id))).toEqual(cure.groups);
			return [halves.map(as)];
		}
		if (cure.kind !== 'feed') return [[as(shape)]];
		const run = given.find((one) => one.shape.id === shape.id)!;
		return [run.shape, ...run.others!()].filter((way) => (way.feed ?? 'end') === cure.feed).map((way) => [as(way)]);
	};
	const all = choice.runs.map(changed);
	const count = Math.max(...all.map((ways) => ways.length));
	return Array.from({ length: count }, (_, k) =>
		chooseSupply(
			all.flatMap((ways) => ways[k] ?? ways[0]!),
			{ ...o, transformers: [model] }
		)
	);
}
const stands = (choice: Choice, { code, run, cornerOnly }: ChoiceProblem): ChoiceProblem[] =>
	choice.problems.filter(
		(left) =>
			left.code === code &&
			(code === 'uneven' || left.run === run || left.run === `${run}'`) &&
			(cornerOnly || code === 'uneven' || !left.cornerOnly)
	);

const isClose = (a: number, b: number) => Math.abs(a - b) < 1e-6;

describe('every cure, applied, removes the problem and costs what it says', () => {
	const seeds = Array.from({ length: process.env.LONG ? 80 : 16 }, (_, k) => k);
	const kinds = new Map<string, number>();
	test.each(seeds)('seed %i', (seed) => {
		const { runs, o } = shortHome(seed);
		const choice = chooseSupply(runs, o);
		for (const problem of choice.problems) {
			const costs = problem.cures.map(({ cost }) => cost);
			expect(costs).toEqual(costs.toSorted((a, b) => a - b));
			expect(new Set(problem.cures.map(({ kind }) => kind)).size).toBe(costs.length);
			for (const cure of problem.cures) {
				kinds.set(cure.kind, (kinds.get(cure.kind) ?? 0) + 1);
				const all = applied(choice, problem, cure, runs, o);
				const after = all.find(
					(one) => stands(one, problem).length === 0 && isClose(one.cost - choice.cost, cure.cost)
				);
				if (!after) throw new Error(`${problem.code} on ${problem.run}: ${JSON.stringify(cure)} does not do`);
				if (cure.size) expect(o.pricePerMetre(cure.size)).toBeLessThan(Infinity);
				if (cure.volts === undefined) continue;
				const lamp = after.runs.flatMap(({ lamps }) => lamps).find(({ id }) => id === problem.load);
				expect(lamp!.volts).toBeCloseTo(cure.volts, 6);
			}
		}
	});
	test('among these seeds every kind of cure is offered that changes a run', () => {
		expect([...kinds.keys()].toSorted()).toEqual(['feed', 'led', 'split', 'tap', 'thicker']);
	});
});

describe('cures', () => {
	test('name no size that nobody sells', () => {
		const o = options({
			sizes: [{ system: 'awg', size: 16 }],
			pricePerMetre: ({ size }) => ({ 16: 1, 10: 3 })[size] ?? Infinity
		});
		const [problem] = chooseSupply([evenRun('far', 12, 14, 4, led(6))], o).problems;
		expect(problem!.cures.find(({ kind }) => kind === 'thicker')!.size).toMatchObject({ size: 10 });
	});
	test('cost of thicker cable that needs a larger transformer holds both', () => {
		const sizes = [{ system: 'awg', size: 16 } as const];
		const o = options({ transformers: [transformer(150, 110), transformer(300, 170)] });
		for (let va = 8; va < 16; va += 0.25) {
			const choice = chooseSupply([{ shape: evenRun('far', 8, 14, 3, led(va)), held: { size: sizes[0]! } }], o);
			for (const { cures } of choice.problems)
				for (const cure of cures) if (cure.transformer) expect(cure.cost).toBeGreaterThanOrEqual(60 - 1e-9);
		}
	});
	describe('a larger transformer', () => {
		const three = [transformer(150, 110), transformer(300, 170), transformer(600, 400)];
		test('is taken unasked where the smaller one is overloaded, though in the worst case alone', () => {
			const sizes = [{ system: 'awg', size: 14 } as const];
			const on = (va: number, transformers: TransformerOption[]) =>
				chooseSupply([evenRun('a', 8, 10, 3, led(va))], options({ sizes, transformers }));
			const loads = Array.from({ length: 80 }, (_, k) => 10.5 + k / 50);
			const inCornerOnly = loads.filter((va) =>
				on(va, three.slice(0, 1)).problems.some(({ code, cornerOnly }) => code === 'transformer-load' && cornerOnly)
			);
			expect(inCornerOnly.length).toBeGreaterThan(0);
			for (const va of inCornerOnly) expect(on(va, three)).toMatchObject({ transformer: { id: 't300' }, problems: [] });
		});
		test('is offered, with its id and what it costs more, where it sags less and a lamp falls short in the worst case', () => {
			const { problems } = chooseSupply([evenRun('h', 2, 5, 3, halogen(15))], options({ transformers: three }));
			const low = problems.find(({ code }) => code === 'lamp-low')!;
			expect(low.cornerOnly).toBe(true);
			expect(low.cures.find(({ kind }) => kind === 'larger-transformer')).toMatchObject({
				transformer: 't300',
				cost: 60
			});
		});
	});
	test('a home where nothing holds is answered in a moment', () => {
		const runs = Array.from({ length: 4 }, (_, k) => {
			const run = planeRun(k + 60, `r${k}`, { heavy: 9 });
			return {
				...run,
				shape: { ...run.shape, segments: run.shape.segments.map((s) => ({ ...s, metres: s.metres * 2 })) }
			};
		});
		const from = performance.now();
		const choice = chooseSupply(runs, options());
		expect(choice.problems.length).toBeGreaterThan(0);
		expect(JSON.stringify(choice)).not.toMatch(/NaN|Infinity|null,"cures":null/);
		expect(performance.now() - from).toBeLessThan(2000);
	});
});
