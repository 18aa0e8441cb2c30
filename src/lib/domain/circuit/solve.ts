/**
 * The solution of a two-wire network: trees by a ladder pass, rings and several feeds by star-mesh elimination, lamps
 * by monotone Newton iteration (see `ladder.ts`, `mesh.ts`, `newton.ts`).
 */
import { faultOf, type Failure } from './check';
import { Ladder } from './ladder';
import { loadAmps } from './lamps';
import { Mesh, type Wire } from './mesh';
import { hang, settle, Work, type Settled } from './newton';
import { rootTree, spanningTree, type Rooted } from './tree';
import type { Network, Solution } from './types';

const failure = (why: Failure['why'], at: number, message: string): Failure => ({ ok: false, why, at, message });

/** Pushed number by number: a list of doubles from the start, without a copy on the way. */
function list(values: Float64Array): number[] {
	const numbers: number[] = [];
	for (let k = 0; k < values.length; k++) numbers.push(values[k]!);
	return numbers;
}

/** Amperes by segment and at the source, from the loads up the tree, with `leaving` amperes leaving each node. */
function gather(network: Network, tree: Rooted, leaving: Float64Array, segmentAmps: Float64Array): number {
	const { order, parent, via } = tree;
	for (let p = tree.reached - 1; p > 0; p--) {
		const above = order[parent[p]!]!;
		const s = via[p]!;
		const amps = leaving[order[p]!]!;
		segmentAmps[s] = network.segments[s]!.from === above ? amps : -amps;
		leaving[above]! += amps;
	}
	return leaving[0]!;
}

function lampsAt({ nodes, loads }: Network, volts: number[]) {
	const leaving = new Float64Array(nodes);
	const amps: number[] = [];
	const voltAmps: number[] = [];
	for (let k = 0; k < loads.length; k++) {
		const { node, load } = loads[k]!;
		const drawn = loadAmps(load, volts[node]!);
		leaving[node]! += drawn;
		amps.push(drawn);
		voltAmps.push(drawn * volts[node]!);
	}
	return { leaving, loadAmps: amps, loadVoltAmps: voltAmps };
}

/** Volts by node from volts by bus. */
function pick(byBus: Float64Array, busOf: Int32Array): number[] {
	const volts: number[] = [];
	for (let n = 0; n < busOf.length; n++) volts.push(byBus[busOf[n]!]!);
	return volts;
}

function tooMuch(settled: Extract<Settled, { ok: false }>, node: number): Failure {
	return settled.why === 'step-limit'
		? failure(
				'step-limit',
				node,
				`The circuit did not settle. It is at the edge of what the cable can carry at node ${node}; ease it there.`
			)
		: failure(
				'no-solution',
				node,
				`The lamps ask for more than this cable can deliver at node ${node}. Use thicker cable, fewer lamps or a higher tap.`
			);
}

/** Room for a tree, kept for the next of the same size: what is in it is written before it is read. */
let room = { ohms: new Float64Array(1), shares: new Float64Array(1), work: new Work(1) };
function roomFor(nodes: number): typeof room {
	if (room.ohms.length !== nodes)
		room = { ohms: new Float64Array(nodes), shares: new Float64Array(nodes), work: new Work(nodes) };
	return room;
}

function solveTree(network: Network, tree: Rooted): Solution {
	const { segments, nodes } = network;
	const { ohms, shares, work } = roomFor(nodes);
	ohms[0] = network.sourceOhms;
	for (let p = 1; p < nodes; p++) ohms[p] = segments[tree.via[p]!]!.ohms;
	const ladder = new Ladder(tree, ohms, network.sourceVolts, shares);
	const settled = settle(ladder, hang(network.loads, tree.position), network.sourceVolts, work);
	if (!settled.ok) return tooMuch(settled, tree.order[settled.bus]!);
	const volts = pick(settled.volts, tree.position);
	const { leaving, ...lamps } = lampsAt(network, volts);
	const segmentAmps = new Float64Array(segments.length);
	const sourceAmps = gather(network, tree, leaving, segmentAmps);
	return { ok: true, volts, segmentAmps: list(segmentAmps), ...lamps, sourceAmps, steps: settled.steps };
}

/** Nodes joined by segments of no resistance are one bus, named by its place in the order of first nodes. */
function joinNodes({ nodes, segments }: Network, tree: Rooted): { bus: Int32Array; buses: number } {
	const bus = new Int32Array(nodes);
	let buses = 0;
	for (let p = 0; p < nodes; p++) {
		const via = tree.via[p]!;
		bus[tree.order[p]!] = via >= 0 && segments[via]!.ohms === 0 ? bus[tree.order[tree.parent[p]!]!]! : buses++;
	}
	return { bus, buses };
}

function solveMesh(network: Network): Solution {
	const { segments, sourceVolts, sourceOhms } = network;
	const use = spanningTree(network);
	const tree = rootTree(network, use);
	const { bus, buses } = joinNodes(network, tree);
	const chords = segments.map((_, s) => s).filter((s) => !use[s]);
	const short = chords.find((s) => segments[s]!.ohms === 0);
	if (short !== undefined)
		return failure(
			'bad-network',
			segments[short]!.to,
			`Segment ${short} closes a loop without resistance: how it shares the current cannot be known. Give it its length.`
		);
	const feeds = network.feeds ?? [];
	const wires: Wire[] = segments
		.map(({ from, to, ohms }) => ({ a: bus[from]!, b: bus[to]!, ohms }))
		.filter(({ a, b }) => a !== b);
	const linear = new Mesh(buses, wires, [
		{ bus: bus[0]!, volts: sourceVolts, ohms: sourceOhms },
		...feeds.map(({ node, volts, ohms }) => ({ bus: bus[node]!, volts, ohms }))
	]);
	const top = Math.max(sourceVolts, ...feeds.map(({ volts }) => volts));
	const settled = settle(linear, hang(network.loads, bus), top, new Work(buses));
	if (!settled.ok) return tooMuch(settled, bus.indexOf(settled.bus));
	const volts = pick(settled.volts, bus);
	const { leaving, ...lamps } = lampsAt(network, volts);
	const segmentAmps = new Float64Array(segments.length);
	for (const s of chords) {
		const { from, to, ohms } = segments[s]!;
		const amps = (volts[from]! - volts[to]!) / ohms;
		segmentAmps[s] = amps;
		leaving[from]! += amps;
		leaving[to]! -= amps;
	}
	const feedAmps = feeds.map(({ node, volts: open, ohms }) => {
		const amps = (open - volts[node]!) / ohms;
		leaving[node]! -= amps;
		return amps;
	});
	const sourceAmps = gather(network, tree, leaving, segmentAmps);
	return {
		ok: true,
		volts,
		segmentAmps: list(segmentAmps),
		...lamps,
		sourceAmps,
		...(network.feeds && { feedAmps }),
		steps: settled.steps
	};
}

/**
 * Volts by node, amperes by segment and load. Any network is answered: where there is no solution, a node is cut off or
 * the figures are no network, `why` says so and `at` is the node (where it fails to settle, the one with the least volts).
 * Of several mathematical solutions it is the one with the highest volts. The same network gives the same bits.
 */
export function solve(network: Network): Solution {
	const fault = faultOf(network);
	if (fault) return fault;
	const tree = rootTree(network);
	const cutOff = tree.reached < network.nodes ? tree.position.indexOf(-1) : -1;
	if (cutOff >= 0) {
		const fed = network.feeds?.length ? ' from node 0' : '';
		return failure('island', cutOff, `Node ${cutOff} is not connected to the supply${fed}. Join it with a cable.`);
	}
	return tree.chords.length === 0 && !network.feeds?.length ? solveTree(network, tree) : solveMesh(network);
}
