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

/** Far above rounding, volts. */
const surely = 1e-6;

interface Compiled {
	tree: Rooted;
	metres: Float64Array;
	ohms: Float64Array;
	ladder: Ladder;
	hung: Hung;
	work: Work;
	leaving: Float64Array;
}

/** By position, of the segment to the parent; `via` as in `Rooted`. */
function metresBy(via: Int32Array, segments: RunShape['segments']): Float64Array {
	const metres = new Float64Array(via.length);
	for (let p = 0; p < via.length; p++) if (via[p]! >= 0) metres[p] = segments[via[p]!]!.metres;
	return metres;
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
	readonly isLed: boolean;
	/** Of LED lamps in a tree the one with most volt-ampere metres before it, and the lower edge of its window; else null. */
	private readonly far: { moment: number; min: number } | null;

	/** `shape` is a sound network. `groups` come first in `this.groups`: the ways of one run have theirs in one order. */
	constructor(shape: RunShape, groups: readonly string[] = []) {
		this.shape = shape;
		this.groups.push(...groups);
		const { nodes, segments, loads } = shape;
		this.groupOf = new Int32Array(loads.length);
		this.least = new Float64Array(loads.length);
		this.most = new Float64Array(loads.length);
		this.lowestTop = Infinity;
		this.isLed = true;
		for (let k = 0; k < loads.length; k++) {
			const { load, alike } = loads[k]!;
			const within = window(load);
			this.groupOf[k] = alike === null ? -1 : this.groupNumber(alike);
			this.least[k] = within?.min ?? -Infinity;
			this.most[k] = within?.max ?? Infinity;
			this.lowestTop = Math.min(this.lowestTop, this.most[k]!);
			if (load.kind !== 'led') this.isLed = false;
		}
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
					metres: metresBy(tree.via, segments),
					ohms,
					ladder: new Ladder(tree, ohms, 1),
					hung: hang(loads, tree.position),
					work: new Work(nodes),
					leaving: new Float64Array(nodes)
				};
		this.far = this.compiled && this.isLed ? this.farthest(this.compiled) : null;
	}
	private groupNumber(name: string): number {
		const known = this.groups.indexOf(name);
		return known < 0 ? this.groups.push(name) - 1 : known;
	}
	private farthest({ tree: { parent }, metres, hung: { led, bus } }: Compiled): Sketcher['far'] {
		const through = led.slice();
		for (let p = through.length - 1; p > 0; p--) through[parent[p]!]! += through[p]!;
		// In the same room: what goes through a place is read before its moment is written.
		const moment = through.fill(0, 0, 1);
		for (let p = 1; p < moment.length; p++) moment[p] = moment[parent[p]!]! + metres[p]! * through[p]!;
		let far: Sketcher['far'] = null;
		bus.forEach((b, k) => {
			if (!far || moment[b]! > far.moment) far = { moment: moment[b]!, min: this.least[k]! };
		});
		return far;
	}

	/**
	 * True only where a lamp is surely more than `leeway` volts below its window, with cable of `perMetre` ohms both ways: none has more
	 * than `volts`, so each LED draws its volt-amperes over these at the least.
	 */
	isStarved(perMetre: number, volts: number, leeway: number): boolean {
		const { far } = this;
		return far !== null && volts - (perMetre * far.moment) / volts < far.min - leeway - surely;
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
