/** Figures of the circuit stage: the solver by itself, the whole choice, and ngspice on the same networks. */
import { execFileSync } from 'node:child_process';
import {
	chooseSupply,
	solve,
	usualSizes,
	type ChooseOptions,
	type Feed,
	type Load,
	type Network,
	type RunShape,
	type RunWays
} from '../../lib/domain/circuit';
import { dice, evenChain, evenTree, led } from '../../lib/domain/circuit/networks.testing';
import { ngspiceVolts } from '../../lib/domain/circuit/ngspice.testing';
import { cables, transformers } from '../../lib/domain/shared/catalogue';
import { rules } from '../../lib/domain/shared/rules';
import { medianMs, type Row } from './measure';

/** Median of one call, milliseconds; calls are taken together until they fill about 2 ms. */
function callMs(call: () => unknown, batches = 60): number {
	const once = medianMs(call, 40);
	const many = Math.max(1, Math.ceil(2 / Math.max(once, 1e-4)));
	const batch = () => {
		for (let k = 0; k < many; k++) call();
	};
	return medianMs(batch, batches) / many;
}

/** Slope of log time against log lamps, least squares over the sizes. */
function exponent(sizes: number[]): number {
	const points = sizes.map((lamps) => {
		const network = evenTree(lamps);
		return { x: Math.log(lamps), y: Math.log(callMs(() => solve(network), 30)) };
	});
	const mean = (of: (p: { x: number; y: number }) => number) =>
		points.reduce((sum, p) => sum + of(p), 0) / points.length;
	const [x, y] = [mean((p) => p.x), mean((p) => p.y)];
	return mean((p) => (p.x - x) * (p.y - y)) / mean((p) => (p.x - x) ** 2);
}

interface Place {
	x: number;
	y: number;
}
const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/** A run over `places`, the supply first; `above` gives by lamp the place its cable comes from. Invented prices of digging and of a joint. */
function laid(id: string, feed: Feed, places: Place[], loads: Load[], above: number[]): RunShape {
	const segments = above.map((from, n) => ({ from, to: n + 1, metres: apart(places[from]!, places[n + 1]!) + 0.75 }));
	const digging = 0.3 * segments.reduce((sum, { metres }) => sum + metres, 0);
	return {
		id,
		feed,
		laying: digging + (feed === 'end' ? 0 : 2),
		nodes: places.length,
		segments,
		loads: loads.map((load, n) => ({ id: `${id}-${n}`, node: n + 1, load, alike: null }))
	};
}

/**
 * Four runs of ten LED lamps each, as a large front yard has them: rows that lead off from the supply at a slant, so that cable to
 * their middle is no longer than along them. Each may be fed at its near end, at either lamp in its middle, or from a hub there.
 */
function fortyLamps(): RunWays[] {
	const roll = dice(40);
	return Array.from({ length: 4 }, (_, run) => {
		const slant = (60 + roll() * 40) * (Math.PI / 180);
		const places: Place[] = [
			{ x: 0, y: 0 },
			{ x: 6 + roll() * 12, y: 0 }
		];
		while (places.length < 11) {
			const { x, y } = places.at(-1)!;
			const gap = 2.5 + roll() * 4;
			places.push({ x: x + gap * Math.cos(slant), y: y + gap * Math.sin(slant) });
		}
		const loads = Array.from({ length: 10 }, () => led(3 + roll() * 6));
		const lamps = loads.map((_load, n) => n + 1);
		const row = (entry: number) => lamps.map((n) => (n === entry ? 0 : n < entry ? n + 1 : n - 1));
		const star = (hub: number) => lamps.map((n) => (n === hub ? 0 : hub));
		const make = (feed: Feed, above: number[]) => laid(`run ${run + 1}`, feed, places, loads, above);
		return {
			shape: make('end', row(1)),
			others: () => [make('middle', row(5)), make('middle', row(6)), make('hub', star(5))]
		};
	});
}
/** The whole choice; what it works out only when read is read. */
function chooseAll(runs: RunWays[]): number {
	const { problems, alternatives } = chooseSupply(runs, homeOptions);
	return problems.reduce((sum, { cures }) => sum + cures.length, alternatives.length);
}
const perMetre = (size: { size: number; system: string }): number => {
	const roll = cables
		.filter((c) => c.system === size.system && c.size === size.size)
		.toSorted((a, b) => b.length - a.length)[0];
	return roll ? roll.price / roll.length : Infinity;
};
const homeOptions: ChooseOptions = {
	sizes: usualSizes('awg'),
	pricePerMetre: perMetre,
	transformers,
	temperatures: rules['cable.temperature'].figures,
	corners: rules['cable.corners'].figures,
	loadLimit: rules['supply.load'].figures.fraction,
	growth: 0.2,
	secondaryAmps: rules['supply.secondary'].figures.amps
};

const ngspiceMs = (network: Network, times: number): number => medianMs(() => ngspiceVolts([network]), times);
const hasNgspice = (): boolean => {
	try {
		execFileSync('ngspice', ['--version'], { stdio: 'ignore' });
		return true;
	} catch {
		return false;
	}
};

export async function rows(): Promise<Row[]> {
	const [twelve, thousand] = [evenChain(12), evenChain(1000)];
	const runs = fortyLamps();
	const [ours12, ours1000] = [callMs(() => solve(twelve)), callMs(() => solve(thousand))];
	const own: Row[] = [
		{ name: 'circuit.12', value: ours12 * 1000, unit: 'us' },
		{ name: 'circuit.1000', value: ours1000, unit: 'ms' },
		{ name: 'circuit.exponent', value: exponent([100, 300, 1000, 3000, 10_000]), unit: '' },
		{ name: 'circuit.choice', value: medianMs(() => chooseAll(runs), 60), unit: 'ms' }
	];
	// Without ngspice on the machine there is nothing to compare with, and a row would be an invention.
	if (!hasNgspice()) return own;
	return [
		...own,
		{ name: 'circuit.ngspice', value: ngspiceMs(twelve, 9) / ours12, unit: 'ratio' },
		{ name: 'circuit.ngspice.1000', value: ngspiceMs(thousand, 5) / ours1000, unit: 'ratio' }
	];
}
