import { describe, expect, it } from 'vitest';
import { dice, halogen, led } from '../networks.testing';
import { ngspiceVolts } from '../ngspice.testing';
import { solve } from '../solve';
import type { Network } from '../types';
import { diagnose } from './diagnose';
import { faulted } from './faulted';
import type { Diagnosis, Fault, Inspected } from './types';

const long = Boolean(process.env.LONG);
/** 16 AWG at 30 °C: ohms there and back by the metre. */
const perMetre = 0.0279;

/** A run as a home has it: a chain with branches, 4 to 10 lamps of one kind. */
function anyRun(seed: number): Network {
	const roll = dice(seed);
	const lamps = 4 + Math.floor(roll() * 7);
	const isLed = roll() < 0.7;
	const segments = Array.from({ length: lamps }, (_, n) => ({
		from: n === 0 || roll() < 0.75 ? n : 1 + Math.floor(roll() * n),
		to: n + 1,
		ohms: perMetre * (n === 0 ? 6 + roll() * 14 : 3 + roll() * 6)
	}));
	const loads = segments.map(({ to }) => ({ node: to, load: isLed ? led(4 + roll() * 8) : halogen(10 + roll() * 10) }));
	return { sourceVolts: 13, sourceOhms: 0.03, nodes: lamps + 1, segments, loads };
}
const about = (network: Network): Omit<Inspected, 'readings'> => ({
	network,
	otherTaps: [12, 14, 15].map((tapVolts) => ({ tapVolts, sourceVolts: tapVolts })),
	otherSizes: [
		{ size: { system: 'awg', size: 18 }, factor: 1.59 },
		{ size: { system: 'awg', size: 14 }, factor: 0.63 },
		{ size: { system: 'awg', size: 12 }, factor: 0.4 }
	]
});
const normal = (roll: () => number): number => Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());

/** Volts at every lamp and at the terminals of the run as it was laid: with the fault, and with all that is never quite as planned. */
function measured(network: Network, fault: Fault | null, amount: number, seed: number): Inspected | null {
	const roll = dice(seed);
	const plan = about(network);
	const { network: laid, at } = faulted({ ...plan, readings: [] }, fault, amount);
	const mains = 1 + 0.02 * normal(roll);
	const copper = 1 + 0.04 * normal(roll);
	const solution =
		laid.sourceVolts === 0
			? null
			: solve({
					...laid,
					sourceVolts: laid.sourceVolts * mains,
					segments: laid.segments.map((one) => ({ ...one, ohms: one.ohms * copper }))
				});
	if (solution && !solution.ok) return null;
	const readings = Array.from({ length: network.nodes }, (_, node) => {
		const volts = !solution || at[node]! < 0 ? 0 : solution.volts[at[node]!]! + 0.03 * normal(roll);
		return { node, volts: Math.max(0, volts) };
	});
	return { ...plan, readings };
}
const same = (a: Fault, b: Fault): boolean => JSON.stringify(a) === JSON.stringify(b);
const names = ({ suspects }: Diagnosis, fault: Fault): boolean => suspects.some((one) => same(one.fault, fault));
const sound = (seed: number): Network | null => {
	const network = anyRun(seed);
	const planned = solve(network);
	return planned.ok && planned.volts.every((volts) => volts > 9) ? network : null;
};
const runs: { seed: number; network: Network }[] = [];
for (let seed = 1; runs.length < (long ? 400 : 24); seed++) {
	const network = sound(seed);
	if (network) runs.push({ seed, network });
}

describe('readings of a run as planned', () => {
	it('leave nothing to say, whatever mains, copper and meter do within what is usual', () => {
		const wrong = runs.filter(({ seed, network }) => {
			const inspected = measured(network, null, 1, seed + 7);
			return diagnose(inspected!).verdict !== 'as-planned';
		});
		expect(wrong.length).toBeLessThanOrEqual(0.05 * runs.length);
	});
	it('none at all is no verdict', () => {
		expect(diagnose({ ...about(runs[0]!.network), readings: [] })).toMatchObject({ verdict: 'none', suspects: [] });
	});
	it('by hand: three equal lamps on one cable, read as they should be', () => {
		// 5 VA at 12 V is 0.4167 A: drops of 1.25, 0.8333, 0.4167 A over 0.2 Ω each, near enough with constant power.
		const network: Network = {
			sourceVolts: 12,
			sourceOhms: 0,
			nodes: 4,
			segments: [0, 1, 2].map((n) => ({ from: n, to: n + 1, ohms: 0.2 })),
			loads: [1, 2, 3].map((node) => ({ node, load: led(5) }))
		};
		const readings = [12, 11.74, 11.57, 11.48].map((volts, node) => ({ node, volts }));
		expect(diagnose({ ...about(network), readings })).toMatchObject({ verdict: 'as-planned', suspects: [] });
		// The third lamp reads 0.6 V lower, the others the same: only what is its own can do that.
		const low = readings.with(3, { node: 3, volts: 10.9 });
		const { verdict, suspects } = diagnose({ ...about(network), readings: low });
		expect(verdict).toBe('fault');
		expect(suspects.map(({ fault }) => fault)).toEqual([
			{ kind: 'splice', segment: 2 },
			{ kind: 'lead', load: 2 }
		]);
		// 5 VA at 10.9 V is 0.459 A: 0.58 V over it is 1.26 Ω.
		expect(suspects[0]!.amount).toBeCloseTo(1.26, 1);
	});
});

describe('a fault planted in a run', () => {
	const kinds: [string, (network: Network, roll: () => number) => { fault: Fault; amount: number }][] = [
		[
			'a bad splice',
			(network, roll) => ({
				fault: { kind: 'splice', segment: Math.floor(roll() * network.segments.length) },
				amount: 0.3 + 0.4 * roll()
			})
		],
		[
			'a bad lead to one lamp',
			(network, roll) => ({
				fault: { kind: 'lead', load: Math.floor(roll() * network.loads.length) },
				amount: 1.5 + roll()
			})
		],
		[
			'a cut cable',
			(network, roll) => ({ fault: { kind: 'open', segment: Math.floor(roll() * network.segments.length) }, amount: 1 })
		],
		['a transformer without volts', () => ({ fault: { kind: 'dead' }, amount: 1 })]
	];
	it.each(kinds)('%s is named', (_, plant) => {
		let [planted, told, named, first] = [0, 0, 0, 0];
		for (const { seed, network } of runs) {
			const { fault, amount } = plant(network, dice(seed + 99));
			const inspected = measured(network, fault, amount, seed + 13);
			if (!inspected) continue;
			planted++;
			const found = diagnose(inspected);
			if (found.verdict !== 'as-planned') told++;
			if (names(found, fault)) named++;
			if (found.suspects[0] && same(found.suspects[0].fault, fault)) first++;
		}
		expect(planted).toBeGreaterThan(0.8 * runs.length);
		// What drops no more than chance is not told: a bad splice before a small lamp at the end.
		expect(told / planted).toBeGreaterThanOrEqual(0.85);
		expect(named / told).toBeGreaterThanOrEqual(0.95);
		expect(first / told).toBeGreaterThanOrEqual(0.6);
	});
	it('thinner cable, a lamp of four times the watts or another tap is named where it can be told from chance', () => {
		const plants: ((network: Network, roll: () => number) => { fault: Fault; amount: number })[] = [
			() => ({ fault: { kind: 'size', size: { system: 'awg', size: 18 } }, amount: 1 }),
			(network, roll) => ({ fault: { kind: 'load', load: Math.floor(roll() * network.loads.length) }, amount: 4 }),
			(_, roll) => ({ fault: { kind: 'tap', tapVolts: [12, 14, 15][Math.floor(roll() * 3)]! }, amount: 1 })
		];
		for (const plant of plants) {
			let [told, named] = [0, 0];
			for (const { seed, network } of runs) {
				const { fault, amount } = plant(network, dice(seed + 5));
				const inspected = measured(network, fault, amount, seed + 3);
				const found = inspected && diagnose(inspected);
				if (!found || found.verdict === 'as-planned') continue;
				told++;
				if (names(found, fault)) named++;
			}
			expect(told).toBeGreaterThan(0.3 * runs.length);
			expect(named / told).toBeGreaterThanOrEqual(0.85);
		}
	});
	it('two at once leave what no single one explains: lamps dark at both ends of a run that is well between', () => {
		const network: Network = {
			sourceVolts: 13,
			sourceOhms: 0.03,
			nodes: 6,
			segments: [
				{ from: 0, to: 1, ohms: 0.2 },
				{ from: 1, to: 2, ohms: 0.1 },
				{ from: 2, to: 3, ohms: 0.1 },
				{ from: 1, to: 4, ohms: 0.1 },
				{ from: 4, to: 5, ohms: 0.1 }
			],
			loads: [1, 2, 3, 4, 5].map((node) => ({ node, load: led(6) }))
		};
		const planned = solve(network);
		const readings = (planned.ok ? planned.volts : []).map((volts, node) => ({
			node,
			volts: node === 3 || node === 5 ? 0 : volts
		}));
		expect(diagnose({ ...about(network), readings }).verdict).toBe('unexplained');
	});
});

it('takes the volts of a run with a bad splice as a circuit simulator has them (ngspice)', () => {
	const plant: Fault = { kind: 'splice', segment: 1 };
	const laid = runs.flatMap(({ network }) => {
		const bad = faulted({ ...about(network), readings: [] }, plant, 0.35).network;
		return solve(bad).ok ? [{ network, bad }] : [];
	});
	expect(laid.length).toBeGreaterThan(0.7 * runs.length);
	const volts = ngspiceVolts(laid.map(({ bad }) => bad));
	laid.forEach(({ network }, k) => {
		const found = diagnose({ ...about(network), readings: volts[k]!.map((one, node) => ({ node, volts: one })) });
		if (found.verdict === 'as-planned') return;
		expect(names(found, plant), `run ${k}`).toBe(true);
		expect(found.suspects.find((one) => same(one.fault, plant))!.amount!, `run ${k}`).toBeCloseTo(0.35, 1);
	});
});
