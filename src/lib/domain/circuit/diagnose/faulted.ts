/** A run with a fault in it, and where on it each reading is taken then. */
import type { Load, Network } from '../types';
import type { Fault, Inspected } from './types';

export interface Faulted {
	network: Network;
	/** By node as planned, the node at which its volts stand now; −1 where no volts get there. */
	at: readonly number[];
}

const times = (load: Load, factor: number): Load => {
	if (load.kind === 'led') return { ...load, voltAmps: load.voltAmps * factor };
	if (load.kind === 'halogen') return { ...load, watts: load.watts * factor };
	return { ...load, ohms: load.ohms / factor };
};

/** By node: whether a segment lies on its way from the supply. */
function behind({ nodes, segments }: Network, segment: number): boolean[] {
	const found = Array.from({ length: nodes }, () => false);
	found[segments[segment]!.to] = true;
	// Parents may come in any order: again until nothing is added.
	for (let isMore = true; isMore;) {
		isMore = false;
		for (const { from, to } of segments) {
			if (!found[from] || found[to]) continue;
			found[to] = isMore = true;
		}
	}
	return found;
}

/** Without what lies behind a segment. */
function cut(network: Network, segment: number): Faulted {
	const gone = behind(network, segment);
	const at: number[] = [];
	let next = 0;
	for (let node = 0; node < network.nodes; node++) at.push(gone[node] ? -1 : next++);
	const isThere = (node: number) => at[node]! >= 0;
	return {
		network: {
			...network,
			nodes: next,
			segments: network.segments
				.filter(({ to }) => isThere(to))
				.map(({ from, to, ohms }) => ({ from: at[from]!, to: at[to]!, ohms })),
			loads: network.loads.filter(({ node }) => isThere(node)).map(({ node, load }) => ({ node: at[node]!, load }))
		},
		at
	};
}

/** The lamp on ohms of its own, beside the node it hung on. */
function onLead(network: Network, load: number, ohms: number): Faulted {
	const { node } = network.loads[load]!;
	const lamp = network.nodes;
	const at = Array.from({ length: network.nodes }, (_, n) => (n === node ? lamp : n));
	return {
		network: {
			...network,
			nodes: lamp + 1,
			segments: [...network.segments, { from: node, to: lamp, ohms }],
			loads: network.loads.map((one, k) => (k === load ? { ...one, node: lamp } : one))
		},
		at
	};
}

/** `amount` as in `Suspect`; null: nothing is wrong. */
export function faulted({ network, otherTaps, otherSizes }: Inspected, fault: Fault | null, amount: number): Faulted {
	const at = Array.from({ length: network.nodes }, (_, n) => n);
	const segmentsBy = (ohmsOf: (ohms: number, k: number) => number) => ({
		network: { ...network, segments: network.segments.map((one, k) => ({ ...one, ohms: ohmsOf(one.ohms, k) })) },
		at
	});
	switch (fault?.kind) {
		case undefined:
		case 'mains':
			return { network, at };
		case 'splice':
			return segmentsBy((ohms, k) => (k === fault.segment ? ohms + amount : ohms));
		case 'size': {
			const { size } = fault;
			const other = otherSizes.find((one) => one.size.size === size.size && one.size.system === size.system);
			return segmentsBy((ohms) => ohms * (other?.factor ?? 1));
		}
		case 'lead':
			return onLead(network, fault.load, amount);
		case 'open':
			return cut(network, fault.segment);
		case 'load': {
			const loads = network.loads.map((one, k) => (k === fault.load ? { ...one, load: times(one.load, amount) } : one));
			return { network: { ...network, loads }, at };
		}
		case 'tap': {
			const other = otherTaps.find(({ tapVolts }) => tapVolts === fault.tapVolts);
			return { network: { ...network, sourceVolts: other?.sourceVolts ?? network.sourceVolts }, at };
		}
		case 'dead':
			return { network: { ...network, sourceVolts: 0 }, at: at.map(() => -1) };
	}
}
