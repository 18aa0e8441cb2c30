import { describe, expect, test } from 'vitest';
import { anyNetwork, evenChain, type Family } from './networks.testing';
import { atFloor, didNotSettle, ngspiceVolts } from './ngspice.testing';
import { solve } from './solve';
import type { Network } from './types';

/**
 * Volts. Reached: 1e-10 on a typical network; the residual is ngspice's relative tolerance of 1e-10, which counts for more
 * the nearer a network is to the edge of solvability.
 */
const tolerance = 1e-6;
const batch = 50;
const count = process.env.LONG ? 8000 : 2000;

function compare(networks: Network[]): number {
	const solvable = networks.flatMap((network) => {
		const solution = solve(network);
		return solution.ok ? [{ network, volts: solution.volts }] : [];
	});
	let worst = 0;
	for (let k = 0; k < solvable.length; k += batch) {
		const some = solvable.slice(k, k + batch);
		const theirs = ngspiceVolts(some.map(({ network }) => network));
		for (const [i, { volts }] of some.entries())
			for (const [n, v] of volts.entries()) worst = Math.max(worst, Math.abs(theirs[i]![n]! - v));
	}
	expect(solvable.length).toBeGreaterThan(networks.length * 0.6);
	return worst;
}

describe(`ngspice on ${count} networks by lot, within 1e-6 V, no solvable case dropped`, () => {
	test.each<Family>(['chain', 'tree', 'ring', 'feeds'])(
		'%s',
		(family) => {
			const networks = Array.from({ length: count / 4 }, (_, k) => anyNetwork(k * 7 + 3, family));
			expect(compare(networks)).toBeLessThan(tolerance);
		},
		600_000
	);
	test('where we find no solution, ngspice does not settle, or only with a lamp at no volts to speak of', () => {
		const beyond = Array.from({ length: count }, (_, k) => anyNetwork(k * 7 + 3)).filter(
			(network) => !solve(network).ok
		);
		expect(beyond.length).toBeGreaterThan(2);
		for (const network of beyond) {
			let volts: number[] | null = null;
			try {
				volts = ngspiceVolts([network])[0]!;
			} catch (error) {
				expect((error as Error).message).toBe(didNotSettle);
			}
			// The floor of 1 mV in the netlist lets it hold a lamp there, or draw it below zero.
			if (volts) expect(Math.min(...network.loads.map(({ node }) => volts[node]!))).toBeLessThan(atFloor);
		}
	}, 600_000);
	test('a chain of 1,000 lamps', () => {
		expect(compare([evenChain(1000)])).toBeLessThan(tolerance);
	});
});
