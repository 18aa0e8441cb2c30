/** Matched kits and each kit by itself against ngspice, a general circuit simulator that shares nothing with our solver. */
import { expect, test } from 'vitest';
import { demoShelf } from '../../shelf';
import { ngspiceVolts } from '../circuit/ngspice.testing';
import type { CableSize, Load, Network, RunShape } from '../circuit';
import { makePlan } from '../plan';
import { quickYard, usualAnswers, type QuickAnswers } from '../quick';
import { examples } from '../yard/examples';
import type { Yard } from '../yard';
import { aloneOf } from './alone';
import type { Lamps } from './judge';
import { matchShelf } from './match';
import { needsOf } from './needs';
import { problemOf } from './problem';
import type { Judged, Needs, ShelfTransformer } from './types';

/** Volts. */
const tolerance = 1e-3;
/** NEC Chapter 9 Table 8, stranded, ohms in 1000 ft at 75 °C, change with temperature 0.00323 of that a degree. */
const nec: Record<number, number> = { 18: 7.95, 16: 4.99, 14: 3.14, 12: 1.98, 10: 1.24, 8: 0.778 };
/** IEC 60228 class 5, ohms in a kilometre at 20 °C, 0.00393 of that a degree. */
const iec: Record<number, number> = { 1.5: 13.3, 2.5: 7.98, 4: 4.95, 6: 3.3, 10: 1.91 };
const ohmsPerMetre = ({ system, size }: CableSize, celsius: number): number =>
	system === 'awg'
		? (2 * nec[size]! * (1 + 0.00323 * (celsius - 75))) / 304.8
		: (2 * iec[size]! * (1 + 0.00393 * (celsius - 20))) / 1000;
/** Rules cable.corners and cable.temperature: as built; long, hot, mains low; short, cold, mains high. */
const cases = [
	{ mains: 1, length: 1, celsius: 30 },
	{ mains: 0.95, length: 1.1, celsius: 50 },
	{ mains: 1.05, length: 0.9, celsius: -10 }
];

interface Built {
	runs: { shape: RunShape; size: CableSize; tap: number; loads: { node: number; fixture: string; load: Load }[] }[];
	transformer: ShelfTransformer;
	judged: Judged;
}
function built(
	needs: Needs,
	lamps: (Lamps | null)[],
	sizes: CableSize[],
	transformer: ShelfTransformer,
	judged: Judged
): Built {
	const needOf = new Map(needs.fixtures.flatMap(({ fixtures }, n) => fixtures.map((id) => [id, n] as const)));
	const runs = needs.runs.map(({ shape }, r) => ({
		shape,
		size: sizes[r]!,
		tap: judged.taps[r]!,
		loads: shape.loads.flatMap(({ id, node }) => {
			const lamp = lamps[needOf.get(id)!]?.lamp;
			if (!lamp) return [];
			const { source, voltAmps, watts, minVolts, maxVolts } = lamp;
			const load: Load =
				source === 'led'
					? { kind: 'led', voltAmps, minVolts, maxVolts }
					: { kind: 'halogen', watts, ratedVolts: 12, minVolts, maxVolts };
			return [{ node, fixture: id, load }];
		})
	}));
	return { runs, transformer, judged };
}
/**
 * All runs on the transformer, seen from the first one's tap: a run on a tap t has its ohms times (t₁ ÷ t)², as behind an ideal transformer of that ratio.
 * Gives the network, and where each lamp is: node, and the factor from there to its own volts.
 */
function networkOf({ runs, transformer }: Built, { mains, length, celsius }: (typeof cases)[number]) {
	const first = runs[0]!.tap;
	const network: Network = {
		sourceVolts: mains * first,
		sourceOhms: (transformer.regulation * first ** 2) / transformer.voltAmps,
		nodes: 1,
		segments: [],
		loads: []
	};
	const at = new Map<string, { node: number; factor: number }>();
	for (const { shape, size, tap, loads } of runs) {
		const shift = network.nodes - 1;
		const node = (n: number) => (n === 0 ? 0 : n + shift);
		const perMetre = ohmsPerMetre(size, celsius) * (first / tap) ** 2;
		for (const { from, to, metres } of shape.segments)
			network.segments.push({ from: node(from), to: node(to), ohms: perMetre * metres * length });
		for (const { node: n, fixture, load } of loads) {
			const seen = load.kind === 'halogen' ? { ...load, ratedVolts: (load.ratedVolts * first) / tap } : load;
			network.loads.push({ node: node(n), load: seen });
			at.set(fixture, { node: node(n), factor: tap / first });
		}
		network.nodes += shape.nodes - 1;
	}
	return { network, at };
}

/** The best, the runners-up and each kit by itself. */
function circuitsOf(yard: Yard): Built[] {
	const needs = needsOf(makePlan(yard), yard);
	const posed = problemOf(needs, demoShelf);
	const { stock } = posed.judge;
	const match = matchShelf(needs, demoShelf);
	const bought = [match.best, ...match.runnersUp].flatMap((one) => {
		if (!one) return [];
		const { transformer } = stock.supplies[stock.supplyOf.get(one.setup.transformer)!]!;
		const lamps = one.setup.products.map((id) => posed.judge.lampsOf(id));
		return [built(needs, lamps, one.setup.sizes, transformer, one.judged)];
	});
	const kits = demoShelf.lines.flatMap((line) => {
		if (line.kind !== 'kit') return [];
		const { lamps, tried } = aloneOf(line, needs, posed);
		expect(tried?.judged ?? null).toEqual(match.kits.find(({ code }) => code === line.code)!.alone);
		if (!tried) return [];
		const sizes = needs.runs.map(() => tried.size);
		return [built(needs, lamps, sizes, tried.transformer, tried.judged)];
	});
	return [...bought, ...kits];
}
const quick = (change: Partial<QuickAnswers>): Yard => quickYard({ ...usualAnswers('feet'), ...change }).yard;
const yards: Yard[] = [
	...examples.map(({ yard }) => yard),
	quick({}),
	quick({ walk: 18.288, receptacle: 15.24 }),
	quick({ walk: 24.384, shape: 'bent' }),
	quick({ walk: 12.192, trees: { small: 1, medium: 1, large: 1 }, wall: 6.096 }),
	quick({ walk: 15.24, drive: 12.192, trees: { small: 2, medium: 1, large: 0 }, wall: 9.144 }),
	quick({ walk: 12.192, lamp: 'halogen' })
];

test('lamp by lamp the volts of ngspice, within 1e-3 V, as built and in both worst cases', () => {
	const circuits = yards.flatMap(circuitsOf).filter(({ judged }) => judged.lamps.every(({ low }) => low !== null));
	const all = circuits.map((one) => cases.map((which) => networkOf(one, which)));
	const volts = ngspiceVolts(all.flatMap((three) => three.map(({ network }) => network)));
	let [worst, lamps, refused] = [0, 0, 0];
	circuits.forEach(({ judged }, k) => {
		if (!judged.ok) refused++;
		for (const { fixture, volts: own, low, high } of judged.lamps) {
			const theirs = cases.map((_, c) => {
				const { node, factor } = all[k]![c]!.at.get(fixture)!;
				return volts[3 * k + c]![node]! * factor;
			});
			lamps++;
			const off = [own! - theirs[0]!, low! - Math.min(...theirs), high! - Math.max(...theirs)];
			worst = Math.max(worst, ...off.map(Math.abs));
		}
	});
	expect(worst).toBeLessThan(tolerance);
	expect(circuits.length).toBeGreaterThan(40);
	expect(lamps).toBeGreaterThan(250);
	expect(refused).toBeGreaterThan(5);
}, 120_000);
