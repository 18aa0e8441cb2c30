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
	/** Worst volts below and above the lamps' windows, 0 where all are inside; least room left to an edge. */
	under: number;
	over: number;
	margin: number;
	/** Amperes at the supply, and most in any one cable. */
	amps: number;
	cable: number;
	/** By `alike` group, in the order of `Sketcher.groups`, volts. */
	lows: number[];
	highs: number[];
}
const failed: Sketch = {
	ok: false,
	under: Infinity,
	over: 0,
	margin: -Infinity,
	amps: 0,
	cable: 0,
	lows: [],
	highs: []
};

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
	private readonly compiled: Compiled | null;

	/** `shape` is a sound network. */
	constructor(shape: RunShape) {
		this.shape = shape;
		this.groupOf = Int32Array.from(shape.loads, ({ alike }) => {
			if (alike === null) return -1;
			const known = this.groups.indexOf(alike);
			return known < 0 ? this.groups.push(alike) - 1 : known;
		});
		const { nodes, segments, loads } = shape;
		const tree = rootTree({
			sourceVolts: 1,
			sourceOhms: 0,
			nodes,
			segments: segments.map((s) => ({ ...s, ohms: 0 })),
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
			return this.read((k) => solution.volts[shape.loads[k]!.node]!, solution.sourceAmps, cable);
		}
		const { tree, metres, ohms, ladder, hung, work, leaving } = compiled;
		const perMetre = loopOhms(perKm, one.length);
		for (let p = 1; p < ohms.length; p++) ohms[p] = metres[p]! * perMetre;
		ladder.sourceVolts = volts;
		const settled = settle(ladder, hung, volts, work);
		if (!settled.ok) return failed;
		leaving.fill(0);
		for (let k = 0; k < shape.loads.length; k++) {
			const bus = hung.bus[k]!;
			leaving[bus]! += loadAmps(shape.loads[k]!.load, settled.volts[bus]!);
		}
		let cable = 0;
		for (let p = leaving.length - 1; p > 0; p--) {
			leaving[tree.parent[p]!]! += leaving[p]!;
			cable = Math.max(cable, leaving[p]!);
		}
		return this.read((k) => settled.volts[hung.bus[k]!]!, leaving[0]!, cable);
	}

	private read(voltsOf: (load: number) => number, amps: number, cable: number): Sketch {
		const sketch: Sketch = {
			ok: true,
			under: 0,
			over: 0,
			margin: Infinity,
			amps,
			cable,
			lows: this.groups.map(() => Infinity),
			highs: this.groups.map(() => 0)
		};
		for (let k = 0; k < this.shape.loads.length; k++) {
			const volts = voltsOf(k);
			const range = window(this.shape.loads[k]!.load);
			if (range) {
				sketch.under = Math.max(sketch.under, range.min - volts);
				sketch.over = Math.max(sketch.over, volts - range.max);
				sketch.margin = Math.min(sketch.margin, volts - range.min, range.max - volts);
			}
			const group = this.groupOf[k]!;
			if (group >= 0) {
				sketch.lows[group] = Math.min(sketch.lows[group]!, volts);
				sketch.highs[group] = Math.max(sketch.highs[group]!, volts);
			}
		}
		return sketch;
	}
}
