/**
 * A tree as columns of numbers, by position in a walk from the supply. A network whose segments come as people lay them,
 * each on to one node more, is checked and read in one look at each of its parts. The columns are kept from one network to
 * the next.
 */
import { Ladder } from './ladder';
import { loadFault, perUnit } from './lamps';
import { clear, hangOne, hangOther, roomToHang, Work, type Hung } from './newton';
import type { Rooted } from './tree';
import type { Network } from './types';

/** A network on a tap of a transformer that it shares with others. */
export interface Part {
	/** As from `runNetwork`; its own source is not used. */
	network: Network;
	tapVolts: number;
}

/** Room for `capacity` nodes and as many loads. */
export class Sheet {
	readonly capacity: number;
	readonly parent: Int32Array;
	/** Of the segment to the parent; at 0 of the source. */
	readonly ohms: Float64Array;
	/** 1 where the segment from the parent points away from the supply, −1 where it points to it. */
	readonly sense: Float64Array;
	readonly hung: Hung;
	readonly work: Work;
	readonly ladder: Ladder;

	constructor(capacity: number) {
		this.capacity = capacity;
		this.parent = new Int32Array(capacity).fill(-1);
		this.ohms = new Float64Array(capacity);
		this.sense = new Float64Array(capacity);
		this.hung = roomToHang(capacity, capacity);
		this.work = new Work(capacity);
		this.ladder = new Ladder({ parent: this.parent }, this.ohms, 1);
	}

	private begin({ nodes, sourceVolts, sourceOhms }: Pick<Network, 'nodes' | 'sourceVolts' | 'sourceOhms'>): void {
		this.ladder.buses = nodes;
		this.ladder.sourceVolts = sourceVolts;
		this.ohms[0] = sourceOhms;
		clear(this.hung, nodes);
	}

	/**
	 * For a network of one segment fewer than nodes: true when it is a sound tree and segment s joins node s + 1 to an
	 * earlier one; it is then on the sheet, each node at the position of its number. False for any other.
	 */
	read(network: Network): boolean {
		const { nodes, segments, loads, sourceVolts, sourceOhms } = network;
		if (!(sourceVolts > 0 && sourceVolts < Infinity && sourceOhms >= 0 && sourceOhms < Infinity)) return false;
		this.begin(network);
		return this.readSegments(segments) && this.readLoads(loads, nodes);
	}

	private readSegments(segments: Network['segments']): boolean {
		const { parent, ohms, sense } = this;
		for (let s = 0; s < segments.length; s++) {
			const segment = segments[s]!;
			const p = s + 1;
			const points = segment.to === p;
			if (!points && segment.from !== p) return false;
			const above = points ? segment.from : segment.to;
			const value = segment.ohms;
			parent[p] = above;
			if (!(parent[p] === above && above >= 0 && above <= s && value >= 0 && value < Infinity)) return false;
			ohms[p] = value;
			sense[p] = points ? 1 : -1;
		}
		return true;
	}

	private readLoads(loads: Network['loads'], nodes: number): boolean {
		const { bus, kind, factor, led } = this.hung;
		for (let k = 0; k < loads.length; k++) {
			const { node, load } = loads[k]!;
			bus[k] = node;
			if (!(bus[k] === node && node >= 0 && node < nodes) || loadFault(load) !== null) return false;
			if (load.kind === 'led') {
				kind[k] = 0;
				factor[k] = load.voltAmps;
				led[node]! += load.voltAmps;
			} else hangOther(this.hung, k, node, load);
		}
		return true;
	}

	/**
	 * The same for several networks behind one source, each in volts per unit of its tap: their nodes 0 are one, the others stand
	 * one network after the other. `nodes`: of all together.
	 */
	readTogether(parts: readonly Part[], nodes: number, sourceVolts: number, sourceOhms: number): boolean {
		if (!(sourceVolts > 0 && sourceVolts < Infinity && sourceOhms >= 0 && sourceOhms < Infinity)) return false;
		this.begin({ nodes, sourceVolts, sourceOhms });
		let shift = 0;
		let load = 0;
		for (const part of parts) {
			if (!this.readPart(part, shift, load)) return false;
			shift += part.network.nodes - 1;
			load += part.network.loads.length;
		}
		return true;
	}

	private readPart({ network, tapVolts }: Part, shift: number, firstLoad: number): boolean {
		const { parent, ohms, sense } = this;
		const { nodes, segments, loads } = network;
		if (segments.length !== nodes - 1) return false;
		for (let s = 0; s < segments.length; s++) {
			const { from, to, ohms: value } = segments[s]!;
			const own = s + 1;
			const above = to === own ? from : to;
			if ((to !== own && from !== own) || !(above >= 0 && above <= s && value >= 0 && value < Infinity)) return false;
			const p = shift + own;
			parent[p] = above === 0 ? 0 : above + shift;
			ohms[p] = value / tapVolts ** 2;
			sense[p] = to === own ? 1 : -1;
		}
		const { bus, kind, factor, led } = this.hung;
		for (let l = 0; l < loads.length; l++) {
			const { node, load } = loads[l]!;
			if (!(node >= 0 && node < nodes) || loadFault(load) !== null) return false;
			const b = node === 0 ? 0 : node + shift;
			const k = firstLoad + l;
			if (load.kind === 'led') {
				bus[k] = b;
				kind[k] = 0;
				factor[k] = load.voltAmps;
				led[b]! += load.voltAmps;
			} else hangOne(this.hung, k, b, perUnit(load, tapVolts));
		}
		return true;
	}

	/** Any sound tree, as it was walked. */
	lay(network: Network, { order, position, parent, via }: Rooted): void {
		const { nodes, segments, loads } = network;
		this.begin(network);
		for (let p = 1; p < nodes; p++) {
			const { to, ohms } = segments[via[p]!]!;
			this.parent[p] = parent[p]!;
			this.ohms[p] = ohms;
			this.sense[p] = to === order[p] ? 1 : -1;
		}
		for (let k = 0; k < loads.length; k++) hangOne(this.hung, k, position[loads[k]!.node]!, loads[k]!.load);
	}
}
