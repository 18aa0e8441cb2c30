import { describe, expect, test } from 'vitest';
import { casesOf, runNetwork } from './corners';
import { anyShape, options, transformer } from './runs.testing';
import { assignSecondaries } from './secondaries';
import { ngspiceVolts } from './ngspice.testing';
import { solve } from './solve';
import { terminalFraction, together } from './transformer';

const model = transformer(300, 170);
const { nominal } = casesOf(options());
const part = (seed: number, id: string, tapVolts: number) => ({
	network: runNetwork(anyShape(seed, id, seed % 2 ? 'led' : 'halogen'), { system: 'awg', size: 10 }, nominal, tapVolts),
	tapVolts
});

describe('sag of the transformer', () => {
	test('one run: the same as regulation × tap² / rating in series with the tap', () => {
		for (const tapVolts of model.taps) {
			const only = part(7, 'a', tapVolts);
			const u = terminalFraction([only], model, 1)!;
			const solution = solve({ ...only.network, sourceOhms: (model.regulation * tapVolts ** 2) / model.voltAmps });
			if (!solution.ok) throw new Error(solution.message);
			expect(u * tapVolts).toBeCloseTo(solution.volts[0]!, 10);
		}
	});
	test('at its rated load the terminals stand at 1 − regulation', () => {
		const rated = {
			sourceVolts: 12,
			sourceOhms: 0,
			nodes: 1,
			segments: [],
			loads: [{ node: 0, load: { kind: 'resistance', ohms: (12 ** 2 * 0.95) / 300 } as const }]
		};
		expect(terminalFraction([{ network: rated, tapVolts: 12 }], model, 1)).toBeCloseTo(0.95, 12);
	});
	test('several runs on several taps: each solved at its terminals adds up to the sag that it was solved with', () => {
		const parts = [part(1, 'a', 12), part(2, 'b', 14), part(3, 'c', 15), part(4, 'd', 13)];
		for (const mains of [0.95, 1, 1.05]) {
			const u = terminalFraction(parts, model, mains)!;
			const burden = parts.reduce((sum, { network, tapVolts }) => {
				const solution = solve({ ...network, sourceVolts: tapVolts * u });
				if (!solution.ok) throw new Error(solution.message);
				return sum + tapVolts * solution.sourceAmps;
			}, 0);
			expect(u).toBeCloseTo(mains - (model.regulation * burden) / model.voltAmps, 11);
		}
	});
	test('the whole in ngspice', () => {
		const parts = [part(1, 'a', 12), part(2, 'b', 14), part(3, 'c', 15)];
		const joint = together(parts, model, 1);
		// Back to volts of a 12 V winding: ngspice's floors are made for volts.
		const scaled = {
			...joint,
			sourceVolts: 12,
			sourceOhms: joint.sourceOhms * 144,
			segments: joint.segments.map((s) => ({ ...s, ohms: s.ohms * 144 })),
			loads: joint.loads.map(({ node, load }) => ({
				node,
				load: load.kind === 'halogen' ? { ...load, ratedVolts: load.ratedVolts * 12 } : load
			}))
		};
		expect(ngspiceVolts([scaled])[0]![0]! / 12).toBeCloseTo(terminalFraction(parts, model, 1)!, 8);
	});
});

describe('runs to secondaries', () => {
	test('an exact fit that largest-first misses is found', () => {
		// 7 + 6 + 12 and 9 + 8 + 8 fill two of 25; largest first puts 12 + 8 + 7 together.
		const { at, fits } = assignSecondaries([7, 6, 12, 9, 8, 8], 2, 25);
		expect(fits).toBe(true);
		const sums = [0, 0];
		for (const [run, amps] of [7, 6, 12, 9, 8, 8].entries()) sums[at[run]!]! += amps;
		expect(sums).toEqual([25, 25]);
	});
	test('more than there is room for does not fit', () => {
		expect(assignSecondaries([20, 20, 20], 2, 25).fits).toBe(false);
		expect(assignSecondaries([26], 4, 25).fits).toBe(false);
		expect(assignSecondaries([], 1, 25).fits).toBe(true);
	});
});
