/** Faults of a network that make it no network at all, or no whole one: reported, never thrown. */
import { loadFault } from './lamps';
import type { Network, Solution } from './types';

export type Failure = Extract<Solution, { ok: false }>;
const isNode = (node: number, nodes: number): boolean => Number.isInteger(node) && node >= 0 && node < nodes;
const bad = (at: number, message: string): Failure => ({ ok: false, why: 'bad-network', at, message });

/**
 * The first node that no segment touches, where there are so many nodes that there must be one: known before room is made for
 * all of them, however many they claim to be. Otherwise −1.
 */
function untouched({ nodes, segments }: Network): number {
	const reach = 2 * segments.length + 1;
	if (nodes <= reach) return -1;
	const touched = new Uint8Array(reach + 1);
	touched[0] = 1;
	for (const { from, to } of segments) touched[from] = touched[to] = 1;
	return touched.indexOf(0);
}

export const island = (node: number, network: Network): Failure => ({
	ok: false,
	why: 'island',
	at: node,
	message: `Node ${node} is not connected to the supply${network.feeds?.length ? ' from node 0' : ''}. Join it with a cable.`
});

/** The first fault found, in the order supply, segments, loads, feeds; null when the figures are in order. */
export function faultOf(network: Network): Failure | null {
	const { nodes, segments, loads, feeds } = network;
	if (!Number.isInteger(nodes) || nodes < 1) return bad(0, 'The circuit has no supply node.');
	if (!(Number.isFinite(network.sourceVolts) && network.sourceVolts > 0))
		return bad(0, 'The supply has no volts above zero.');
	if (!(Number.isFinite(network.sourceOhms) && network.sourceOhms >= 0))
		return bad(0, 'The series ohms of the supply are not a number from zero up.');
	for (let index = 0; index < segments.length; index++) {
		const { from, to, ohms } = segments[index]!;
		if (!isNode(from, nodes) || !isNode(to, nodes))
			return bad(isNode(from, nodes) ? from : 0, `Segment ${index} ends at a node that does not exist.`);
		if (!(Number.isFinite(ohms) && ohms >= 0)) return bad(to, `Segment ${index} needs a length from zero up.`);
		if (from === to) return bad(from, `Segment ${index} starts and ends at the same node.`);
	}
	for (let index = 0; index < loads.length; index++) {
		const { node, load } = loads[index]!;
		if (!isNode(node, nodes)) return bad(0, `Load ${index} hangs on a node that does not exist.`);
		const fault = loadFault(load);
		if (fault) return bad(node, `Load ${index} cannot be worked out: ${fault}.`);
	}
	for (const [index, { node, volts, ohms }] of (feeds ?? []).entries()) {
		if (!isNode(node, nodes)) return bad(0, `Feed ${index} joins a node that does not exist.`);
		if (!(Number.isFinite(volts) && volts > 0 && Number.isFinite(ohms) && ohms > 0))
			return bad(node, `Feed ${index} needs volts and series ohms above zero.`);
	}
	const alone = untouched(network);
	return alone < 0 ? null : island(alone, network);
}
