/** For tests: the same networks solved by ngspice, a general circuit simulator that shares nothing with our solver. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Load, Network } from './types';

const number = (value: number): string => value.toExponential(17);

/** A load as a current source controlled by its own volts; the floor keeps ngspice's first guesses out of 1/0. */
function source(name: string, node: string, load: Load): string {
	const volts = `max(v(${node}),1e-3)`;
	switch (load.kind) {
		case 'led':
			return `B${name} ${node} 0 I=${number(load.voltAmps)}/${volts}`;
		case 'halogen':
			return `B${name} ${node} 0 I=${number(load.watts / load.ratedVolts)}*(${volts}/${number(load.ratedVolts)})^0.55`;
		case 'resistance':
			return `R${name} ${node} 0 ${number(load.ohms)}`;
	}
}
/** Nodes that segments of no ohms make one, by the least of their numbers: ngspice turns a resistor of zero ohms into one of 1 mΩ. */
function joined({ nodes, segments }: Network): number[] {
	const one = Array.from({ length: nodes }, (_, n) => n);
	for (let changed = true; changed;) {
		changed = false;
		for (const { from, to, ohms } of segments) {
			if (ohms > 0 || one[from] === one[to]) continue;
			one[from] = one[to] = Math.min(one[from]!, one[to]!);
			changed = true;
		}
	}
	return one;
}
const link = (name: string, a: string, b: string, ohms: number): string =>
	ohms === 0 ? `V${name} ${a} ${b} 0` : `R${name} ${a} ${b} ${number(ohms)}`;

/** Netlist lines; `k` keeps the names of one network apart from the next one's. */
export function netlist(network: Network, k: number): string[] {
	const one = joined(network);
	const node = (n: number) => `n${k}_${one[n]!}`;
	const top = number(Math.max(network.sourceVolts, ...(network.feeds ?? []).map(({ volts }) => volts)));
	return [
		`Vs${k} s${k} 0 ${number(network.sourceVolts)}`,
		link(`z${k}`, `s${k}`, node(0), network.sourceOhms),
		...network.segments.flatMap(({ from, to, ohms }, i) =>
			one[from] === one[to] ? [] : [link(`w${k}_${i}`, node(from), node(to), ohms)]
		),
		...network.loads.map(({ node: n, load }, i) => source(`l${k}_${i}`, node(n), load)),
		...(network.feeds ?? []).flatMap(({ node: n, volts, ohms }, i) => [
			`Vf${k}_${i} f${k}_${i} 0 ${number(volts)}`,
			link(`y${k}_${i}`, `f${k}_${i}`, node(n), ohms)
		]),
		...[...new Set(one)].map((n) => `.nodeset v(${node(n)})=${top}`)
	];
}

function run(networks: Network[]): Map<string, number> | null {
	const folder = mkdtempSync(join(tmpdir(), 'duskwright-ngspice-'));
	try {
		const raw = join(folder, 'out.raw');
		const deck = [
			'* networks of Duskwright',
			...networks.flatMap(netlist),
			'.options reltol=1e-10 abstol=1e-15 vntol=1e-13 gmin=1e-24 itl1=2000 noopiter=0',
			'.control',
			'set filetype=ascii',
			'op',
			`write ${raw}`,
			'quit 0',
			'.endc',
			'.end'
		];
		writeFileSync(join(folder, 'in.cir'), deck.join('\n'));
		const { error, status, stdout, stderr } = spawnSync('ngspice', ['-b', join(folder, 'in.cir')], {
			encoding: 'utf8',
			maxBuffer: 1e9
		});
		if (error) throw error;
		const gaveUp = status !== 0 || !existsSync(raw) || /singular|failed|aborted/i.test(stdout + stderr);
		return gaveUp ? null : readRaw(readFileSync(raw, 'utf8'));
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}
/** An ASCII raw file of one point: variables by index and name, then index and value, a value a line. */
function readRaw(text: string): Map<string, number> {
	const [head, tail] = text.split(/^Values:\s*$/m) as [string, string];
	const names = [...head.matchAll(/^\t(\d+)\t(\S+)\t\S+/gm)].map((match) => match[2]!);
	const values = tail.trim().split(/\s+/).map(Number).slice(1);
	return new Map(names.map((name, k) => [name.replace(/^v\((.*)\)$/, '$1'), values[k]!]));
}

export const didNotSettle = 'ngspice did not settle on a network';

/** Volts at which the floor in the netlist may hold a lamp, or draw it below zero: ngspice then ended where no circuit does. */
export const atFloor = 2e-3;

/**
 * Volts by node for each network, all in one ngspice process and one matrix; where that does not settle, or with one of several at no volts to
 * speak of, one process each. Throws when ngspice is missing or will not settle on a single network, so that no case is dropped.
 */
export function ngspiceVolts(networks: Network[]): number[][] {
	if (networks.length === 0) return [];
	const found = run(networks);
	const volts = found && networks.map((network, k) => readVolts(found, network, k));
	if (volts && (networks.length === 1 || volts.flat().every((v) => v > atFloor))) return volts;
	if (networks.length === 1) throw new Error(didNotSettle);
	return networks.map((network) => ngspiceVolts([network])[0]!);
}

const readVolts = (found: Map<string, number>, network: Network, k: number): number[] =>
	joined(network).map((n) => {
		const volts = found.get(`n${k}_${n}`);
		if (volts === undefined) throw new Error(`ngspice gave no volts for node ${n} of network ${k}`);
		return volts;
	});
