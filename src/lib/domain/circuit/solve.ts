/**
 * The solution of a two-wire network: trees by a ladder pass, rings and several feeds by star-mesh elimination, lamps
 * by Newton iteration (see `sheet.ts`, `ladder.ts`, `mesh.ts`, `newton.ts`).
 */
import { faultOf, island, type Failure } from './check';
import { Mesh, type Wire } from './mesh';
import { carry, exponent, hang, settle, Work, type Hung, type Settled } from './newton';
import { Sheet, type Part } from './sheet';
import { rootTree, spanningTree, type Rooted } from './tree';
import type { Network, Solution } from './types';

export type { Part };

const failure = (why: Failure['why'], at: number, message: string): Failure => ({ ok: false, why, at, message });

const halves: number[] = [];
/** `count` numbers to be overwritten: doubles from the start and of its final length, so that the engine never moves it. */
function list(count: number): number[] {
	while (halves.length < count) halves.push(0.5);
	return halves.slice(0, count);
}

/** Amperes and volt-amperes by load, of volts by bus. */
function drawn({ bus, kind, factor, halogens, resistances }: Hung, loads: number, volts: Float64Array) {
	const loadAmps = list(loads);
	const loadVoltAmps = list(loads);
	for (let k = 0; k < loads; k++) {
		const f = factor[k]!;
		loadAmps[k] = f / volts[bus[k]!]!;
		loadVoltAmps[k] = f;
	}
	if (halogens + resistances === 0) return { loadAmps, loadVoltAmps };
	for (let k = 0; k < loads; k++) {
		if (kind[k] === 0) continue;
		const v = volts[bus[k]!]!;
		const amps = factor[k]! * (kind[k] === 1 ? v ** exponent : v);
		loadAmps[k] = amps;
		loadVoltAmps[k] = amps * v;
	}
	return { loadAmps, loadVoltAmps };
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

let sheet = new Sheet(64);
/** Above this a sheet is not kept, so that one very large network does not hold its room for good. */
const mostKept = 2 ** 16;
/** The sheet, grown if need be: what is on it is written before it is read. */
function sheetFor(nodes: number, loads: number): Sheet {
	const needed = Math.max(nodes, loads);
	if (needed > mostKept) return new Sheet(needed);
	if (needed > sheet.capacity) sheet = new Sheet(2 ** Math.ceil(Math.log2(needed)));
	return sheet;
}

/** What is on the sheet: nodes by position, each segment before the one it leads to. `order`: node by position, if not the same. */
function solveSheet(
	{ nodes, loads, sourceVolts }: Network,
	{ ladder, hung, work, sense }: Sheet,
	order: Int32Array | null
): Solution {
	const settled = settle(ladder, hung, sourceVolts, work);
	if (!settled.ok) return tooMuch(settled, order ? order[settled.bus]! : settled.bus);
	const { loadAmps, loadVoltAmps } = drawn(hung, loads.length, settled.volts);
	carry(ladder, hung, work);
	const { draw, next } = work;
	const best = settled.isHigh ? next : settled.volts;
	const volts = list(nodes);
	const segmentAmps = list(nodes - 1);
	volts[0] = best[0]!;
	for (let p = 1; p < nodes; p++) {
		volts[p] = best[p]!;
		segmentAmps[p - 1] = draw[p]! * sense[p]!;
	}
	return { ok: true, volts, segmentAmps, loadAmps, loadVoltAmps, sourceAmps: draw[0]!, steps: settled.steps };
}

/** Any sound tree: laid on the sheet in the order it was walked, and back. */
function solveWalked(network: Network, tree: Rooted): Solution {
	const laid = sheetFor(network.nodes, network.loads.length);
	laid.lay(network, tree);
	const solution = solveSheet(network, laid, tree.order);
	if (!solution.ok) return solution;
	const segmentAmps = list(network.segments.length);
	for (let p = 1; p < network.nodes; p++) segmentAmps[tree.via[p]!] = solution.segmentAmps[p - 1]!;
	return { ...solution, volts: Array.from(tree.position, (p) => solution.volts[p]!), segmentAmps };
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
	const hung = hang(network.loads, bus);
	const settled = settle(linear, hung, top, new Work(buses));
	if (!settled.ok) return tooMuch(settled, bus.indexOf(settled.bus));
	const byNode = Float64Array.from(bus, (b) => settled.volts[b]!);
	const lamps = drawn(hung, network.loads.length, settled.volts);
	const leaving = new Float64Array(network.nodes);
	for (let k = 0; k < network.loads.length; k++) leaving[network.loads[k]!.node]! += lamps.loadAmps[k]!;
	const segmentAmps = list(segments.length);
	for (const s of chords) {
		const { from, to, ohms } = segments[s]!;
		const amps = (byNode[from]! - byNode[to]!) / ohms;
		segmentAmps[s] = amps;
		leaving[from]! += amps;
		leaving[to]! -= amps;
	}
	const feedAmps = feeds.map(({ node, volts: open, ohms }) => {
		const amps = (open - byNode[node]!) / ohms;
		leaving[node]! -= amps;
		return amps;
	});
	for (let p = tree.reached - 1; p > 0; p--) {
		const amps = leaving[tree.order[p]!]!;
		const above = tree.order[tree.parent[p]!]!;
		segmentAmps[tree.via[p]!] = segments[tree.via[p]!]!.from === above ? amps : -amps;
		leaving[above]! += amps;
	}
	return {
		ok: true,
		volts: Array.from(byNode),
		segmentAmps,
		...lamps,
		sourceAmps: leaving[0]!,
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
	const hasFeeds = (network.feeds?.length ?? 0) > 0;
	if (!hasFeeds && network.segments.length === network.nodes - 1) {
		const laid = sheetFor(network.nodes, network.loads.length);
		if (laid.read(network)) return solveSheet(network, laid, null);
	}
	const fault = faultOf(network);
	if (fault) return fault;
	const tree = rootTree(network);
	const cutOff = tree.reached < network.nodes ? tree.position.indexOf(-1) : -1;
	if (cutOff >= 0) return island(cutOff, network);
	return tree.chords.length > 0 || hasFeeds ? solveMesh(network) : solveWalked(network, tree);
}

/**
 * Networks on taps of one transformer (`transformer.ts`), solved as one without being put together: u, the volts per unit at
 * the source, and each one's part in its own volts and amperes. `sourceVolts` per unit, `sourceOhms` in volts per unit per
 * volt-ampere. Null without a solution; undefined where one is no tree laid node by node, so that this way does not serve.
 */
export function solveParts(
	parts: readonly Part[],
	sourceVolts: number,
	sourceOhms: number
): { u: number; solutions: Solution[] } | null | undefined {
	let nodes = 1;
	let loads = 0;
	for (const { network } of parts) {
		nodes += network.nodes - 1;
		loads += network.loads.length;
	}
	const laid = sheetFor(nodes, loads);
	if (!laid.readTogether(parts, nodes, sourceVolts, sourceOhms)) return undefined;
	const { ladder, hung, work } = laid;
	const settled = settle(ladder, hung, sourceVolts, work);
	if (!settled.ok) return null;
	carry(ladder, hung, work);
	const best = settled.isHigh ? work.next : settled.volts;
	let [node, load] = [1, 0];
	const solutions = parts.map((part): Solution => {
		const solution = ownPart(part, laid, { node, load, best, drawnAt: settled.volts, steps: settled.steps });
		node += part.network.nodes - 1;
		load += part.network.loads.length;
		return solution;
	});
	return { u: best[0]!, solutions };
}
interface Joint {
	/** First node and load of the part. */
	node: number;
	load: number;
	/** Volts per unit, and those at which the loads draw: the same but for the last digits. */
	best: Float64Array;
	drawnAt: Float64Array;
	steps: number;
}
function ownPart({ network, tapVolts }: Part, { hung, work, sense }: Sheet, joint: Joint): Solution {
	const { bus, kind, factor } = hung;
	const { nodes, segments, loads } = network;
	const volts = list(nodes);
	const segmentAmps = list(segments.length);
	const loadAmps = list(loads.length);
	const loadVoltAmps = list(loads.length);
	volts[0] = tapVolts * joint.best[0]!;
	for (let n = 1; n < nodes; n++) {
		const p = joint.node + n - 1;
		volts[n] = joint.best[p]! * tapVolts;
		segmentAmps[n - 1] = (work.draw[p]! * sense[p]!) / tapVolts;
	}
	let sourceAmps = 0;
	for (let l = 0; l < loads.length; l++) {
		const k = joint.load + l;
		const v = joint.drawnAt[bus[k]!]!;
		const amps = kind[k] === 0 ? factor[k]! / v : factor[k]! * (kind[k] === 1 ? v ** exponent : v);
		loadAmps[l] = amps / tapVolts;
		loadVoltAmps[l] = kind[k] === 0 ? factor[k]! : amps * v;
		sourceAmps += loadAmps[l]!;
	}
	return { ok: true, volts, segmentAmps, loadAmps, loadVoltAmps, sourceAmps, steps: joint.steps };
}
