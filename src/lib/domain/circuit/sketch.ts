/**
 * One run solved again and again while size, tap and case vary: shape, loads and room to work in are set up once, and of
 * the solution only what limits are about is worked out. The solver is the same as in `solve.ts`.
 */
import { loopOhms } from './conductors';
import { runNetwork, type Case } from './corners';
import { Ladder } from './ladder';
import { loadAmps, window } from './lamps';
import { hang, settle, Work, type Hung } from './newton';
import { solve } from './solve';
import { rootTree, type Rooted } from './tree';
import type { CableSize, RunShape } from './types';

export interface Sketch {
	ok: boolean;
	/** Least volts left to the lower and to the upper edge of a lamp's window; below zero where one is outside. */
	lowRoom: number;
	highRoom: number;
	/** Amperes at the supply, and most in any one cable. */
	amps: number;
	cable: number;
	/** By `alike` group, in the order of `Sketcher.groups`, volts. */
	lows: number[];
	highs: number[];
}
/** Shared by all sketches without groups: most have none. */
const none: number[] = [];
const failed: Sketch = {
	ok: false,
	lowRoom: -Infinity,
	highRoom: -Infinity,
	amps: 0,
	cable: 0,
	lows: [],
	highs: []
};
/** Volts by which the worst lamp is out of its window, and the room where none is. */
export const outside = ({ lowRoom, highRoom }: Sketch): number => Math.max(0, -lowRoom) + Math.max(0, -highRoom);
export const margin = ({ lowRoom, highRoom }: Sketch): number => Math.min(lowRoom, highRoom);

interface Compiled {
	tree: Rooted;
	metres: Float64Array;
	ohms: Float64Array;
	ladder: Ladder;
	hung: Hung;
	work: Work;
	leaving: Float64Array;
}

export class Sketcher {
	readonly shape: RunShape;
	readonly groups: string[] = [];
	private readonly groupOf: Int32Array;
	private readonly least: Float64Array;
	private readonly most: Float64Array;
	private readonly compiled: Compiled | null;

	/** Least of the upper edges of its lamps' windows, volts. */
	readonly lowestTop: number;

	/** `shape` is a sound network. `groups` come first in `this.groups`: the ways of one run have theirs in one order. */
	constructor(shape: RunShape, groups: readonly string[] = []) {
		this.shape = shape;
		this.groups.push(...groups);
		this.groupOf = Int32Array.from(shape.loads, ({ alike }) => {
			if (alike === null) return -1;
			const known = this.groups.indexOf(alike);
			return known < 0 ? this.groups.push(alike) - 1 : known;
		});
		const { nodes, segments, loads } = shape;
		this.least = Float64Array.from(loads, ({ load }) => window(load)?.min ?? -Infinity);
		this.most = Float64Array.from(loads, ({ load }) => window(load)?.max ?? Infinity);
		this.lowestTop = this.most.reduce((least, top) => Math.min(least, top), Infinity);
		const tree = rootTree({
			sourceVolts: 1,
			sourceOhms: 0,
			nodes,
			segments: segments.map(({ from, to }) => ({ from, to, ohms: 0 })),
			loads
		});
		const ohms = new Float64Array(nodes);
		this.compiled = tree.chords.length
			? null
			: {
					tree,
					metres: Float64Array.from(tree.via, (s) => (s < 0 ? 0 : segments[s]!.metres)),
					ohms,
					ladder: new Ladder(tree, ohms, 1),
					hung: hang(loads, tree.position),
					work: new Work(nodes),
					leaving: new Float64Array(nodes)
				};
	}

	/** With the terminals held at `volts`; `perKm` is one conductor of `size` at the case's temperature. */
	at(size: CableSize, perKm: number, one: Case, volts: number): Sketch {
		const { compiled, shape } = this;
		if (!compiled) {
			const solution = solve(runNetwork(shape, size, one, volts));
			if (!solution.ok) return failed;
			const cable = solution.segmentAmps.reduce((most, amps) => Math.max(most, Math.abs(amps)), 0);
			const byLoad = Float64Array.from(shape.loads, ({ node }) => solution.volts[node]!);
			return this.read(byLoad, null, solution.sourceAmps, cable);
		}
		const { tree, metres, ohms, ladder, hung, work, leaving } = compiled;
		const perMetre = loopOhms(perKm, one.length);
		for (let p = 1; p < ohms.length; p++) ohms[p] = metres[p]! * perMetre;
		ladder.sourceVolts = volts;
		const settled = settle(ladder, hung, volts, work);
		if (!settled.ok) return failed;
		const byBus = settled.volts;
		const { bus, kind, factor } = hung;
		leaving.fill(0);
		for (let k = 0; k < bus.length; k++) {
			const b = bus[k]!;
			const v = byBus[b]!;
			leaving[b]! += kind[k] === 0 ? factor[k]! / v : loadAmps(shape.loads[k]!.load, v);
		}
		const { parent } = tree;
		let cable = 0;
		for (let p = leaving.length - 1; p > 0; p--) {
			const amps = leaving[p]!;
			leaving[parent[p]!]! += amps;
			if (amps > cable) cable = amps;
		}
		return this.read(byBus, bus, leaving[0]!, cable);
	}

	/** `at`: index into `volts` by load; the load's own number where null. */
	private read(volts: Float64Array, at: Int32Array | null, amps: number, cable: number): Sketch {
		const { groupOf, least, most, groups } = this;
		const lows: number[] = groups.length === 0 ? none : [];
		const highs: number[] = groups.length === 0 ? none : [];
		for (let g = 0; g < groups.length; g++) {
			lows.push(Infinity);
			highs.push(-Infinity);
		}
		let lowRoom = Infinity;
		let highRoom = Infinity;
		for (let k = 0; k < groupOf.length; k++) {
			const v = volts[at ? at[k]! : k]!;
			if (v - least[k]! < lowRoom) lowRoom = v - least[k]!;
			if (most[k]! - v < highRoom) highRoom = most[k]! - v;
			const group = groupOf[k]!;
			if (group < 0) continue;
			if (v < lows[group]!) lows[group] = v;
			if (v > highs[group]!) highs[group] = v;
		}
		return { ok: true, lowRoom, highRoom, amps, cable, lows, highs };
	}
}
