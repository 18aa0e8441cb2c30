import { describe, expect, test } from 'vitest';
import { metresPerFoot } from '../shared/units';
import { rules } from '../shared/rules';
import { awgSquareMillimetres, loopOhms, ohmsPerKm } from './conductors';
import published from './drop.published.json';
import { evenChain } from './networks.testing';
import { solve } from './solve';
import type { Load, Network } from './types';

/** A lamp of constant volt-amperes that draws `amps` at `volts`: the published current, where the published volts hold. */
const drawing = (amps: number, volts: number): Load => ({
	kind: 'led',
	voltAmps: amps * volts,
	minVolts: 1,
	maxVolts: 1000
});

describe('voltage drop against published examples', () => {
	test.each(published.chains)('$source', ({ volts, ohmsPerKm, loads }) => {
		const network: Network = {
			sourceVolts: volts,
			sourceOhms: 0,
			nodes: loads.length + 1,
			segments: loads.map(({ metres }, k) => ({
				from: k,
				to: k + 1,
				ohms: loopOhms(ohmsPerKm, metres - (loads[k - 1]?.metres ?? 0))
			})),
			loads: loads.map(({ amps, volts: answer }, k) => ({ node: k + 1, load: drawing(amps, answer) }))
		};
		const solution = solve(network);
		if (!solution.ok) throw new Error(solution.message);
		for (const [k, load] of loads.entries()) {
			expect(solution.volts[k + 1]).toBeCloseTo(load.volts, 9);
			expect(solution.loadAmps[k]).toBeCloseTo(load.amps, 9);
		}
	});

	test(published.centreFed.source, () => {
		const lamps = 2000;
		// Lamps so small that the volts, and with them the currents, hardly differ along the line.
		const line = evenChain(lamps);
		const small: Network = {
			...line,
			sourceOhms: 0,
			loads: line.loads.map(({ node }) => ({ node, load: drawing(1e-6, 13) }))
		};
		const moved = (node: number) => (node === lamps / 2 ? 0 : node === 0 ? lamps / 2 : node);
		const fromCentre: Network = {
			...small,
			segments: small.segments.map(({ from, to, ohms }) => ({ from: moved(from), to: moved(to), ohms }))
		};
		const drop = (network: Network) => {
			const solution = solve(network);
			if (!solution.ok) throw new Error(solution.message);
			return network.sourceVolts - Math.min(...solution.volts);
		};
		expect(drop(fromCentre) / drop(small)).toBeCloseTo(published.centreFed.ratio, 3);
	});

	test(published.gauge.source, () => {
		const { ohmCmilPerFoot, feet, amps, voltsPerWire, circularMils, passes, fails } = published.gauge;
		const needed = (ohmCmilPerFoot * feet * amps) / voltsPerWire;
		expect(needed).toBeCloseTo(circularMils, 0);
		const mils = (gauge: number) => awgSquareMillimetres(gauge) / (Math.PI / 4) / 0.0254 ** 2;
		expect(mils(passes)).toBeGreaterThan(needed);
		expect(mils(fails)).toBeLessThan(needed);
	});

	test(published.circularMils.source, () => {
		const { ohmCmilPerFoot, circularMils, feet, volts, amps, drop } = published.circularMils;
		const perKm = (ohmCmilPerFoot / circularMils / metresPerFoot) * 1000;
		const ohms = loopOhms(perKm, feet * metresPerFoot);
		const solution = solve({
			sourceVolts: volts,
			sourceOhms: 0,
			nodes: 2,
			segments: [{ from: 0, to: 1, ohms }],
			loads: [{ node: 1, load: drawing(amps, volts - (2 * ohmCmilPerFoot * feet * amps) / circularMils) }]
		});
		if (!solution.ok) throw new Error(solution.message);
		expect(volts - solution.volts[1]!).toBeCloseTo(drop, 3);
		// K = 12.9 is the table rounded: the table itself gives 5.94 V.
		const byTable = ohmsPerKm({ system: 'awg', size: 12 }, 75) * 2 * 0.03048 * amps;
		expect(byTable).toBeCloseTo(5.94, 9);
		expect(Math.abs(drop / byTable - 1)).toBeLessThan(0.003);
	});

	test('IEC 60364-5-52:2009 Annex G: 1.500 V of 12 V is 12.5 %, over the 3 % for lighting and the 5 % for the rest', () => {
		const row = published.chains.find(({ source }) => source.startsWith('IEC 60364'))!;
		const dropped = 1 - row.loads[0]!.volts / row.volts;
		expect(dropped).toBeCloseTo(0.125, 12);
		expect(row.loads[0]!.amps * row.volts).toBeCloseTo(50, 9);
		for (const limit of Object.values(rules['cable.drop'].figures)) expect(dropped).toBeGreaterThan(limit);
	});
});
