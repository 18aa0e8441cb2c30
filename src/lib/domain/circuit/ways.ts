/** The ways a run may be laid, each with its price by size. The others than the plain one are made when first asked for. */
import { rounding } from './assess';
import { faultOf } from './check';
import { ohmsPerKm } from './conductors';
import { casesOf, runNetwork } from './corners';
import { Sketcher } from './sketch';
import { solve } from './solve';
import { rootTree } from './tree';
import type { CableSize, ChooseOptions, Network, RunShape, RunWays, Solution } from './types';

/** A run of more lamps than this is tried in its plain way only: ten times what a home puts on one cable. */
const mostLamps = 400;

export interface Sized {
	size: CableSize;
	/** Of the whole run in it: cable and laying. */
	cost: number;
}
export interface Way {
	shape: RunShape;
	sketcher: Sketcher;
	/** Sizes to be had, thin to thick. */
	sizes: Sized[];
}

/** Currency per metre, or null where nobody sells that size. */
export function soldAt(size: CableSize, { pricePerMetre }: ChooseOptions): number | null {
	const price = pricePerMetre(size);
	return price >= 0 && price < Infinity && Number.isFinite(ohmsPerKm(size, 20)) ? price : null;
}

/** Cable and laying. A size that nobody sells is taken to be in hand already, at no price. */
export function wayCost({ segments, laying = 0 }: RunShape, size: CableSize, options: ChooseOptions): number {
	return segments.reduce((sum, { metres }) => sum + metres, 0) * (soldAt(size, options) ?? 0) + laying;
}

/** Why a shape is no network that can be priced, at a size and tap that it may have; null where it is one. */
export function faultOfShape(
	shape: RunShape,
	size: CableSize,
	tapVolts: number,
	options: ChooseOptions
): Solution | null {
	const fault = (why: 'bad-network' | 'island', message: string): Solution => ({ ok: false, why, at: 0, message });
	const { nodes, segments, laying = 0 } = shape;
	if (!Number.isFinite(ohmsPerKm(size, 20))) return fault('bad-network', 'The cable held for this run is no size.');
	if (!(laying >= 0 && laying < Infinity))
		return fault('bad-network', 'What laying costs is not a number from zero up.');
	if (nodes > segments.length + 1) return fault('island', 'There are more nodes than cables can have joined.');
	if (!Number.isFinite(wayCost(shape, size, options))) return fault('bad-network', 'A length is not a number.');
	const network = runNetwork(shape, size, casesOf(options).nominal, tapVolts);
	if (isTree(network)) return null;
	const solution = solve(network);
	return solution.ok || (solution.why !== 'bad-network' && solution.why !== 'island') ? null : solution;
}

/** A sound tree from the supply to all nodes: a network beyond doubt, without solving it. */
function isTree(network: Network): boolean {
	if (network.segments.length !== network.nodes - 1 || faultOf(network)) return false;
	return rootTree(network).reached === network.nodes;
}

/** A way whose sketcher is made when it is first tried: most cost too much for that. */
class PricedWay implements Way {
	private made: Sketcher | null = null;
	constructor(
		readonly shape: RunShape,
		readonly sizes: Sized[],
		private readonly groups: readonly string[]
	) {}
	get sketcher(): Sketcher {
		return (this.made ??= new Sketcher(this.shape, this.groups));
	}
}

/** One run as it may be chosen: sound, with a size to be had. */
export class WaysOfRun {
	readonly plain: Way;
	/** Taps to be tried, where the run is held on one. */
	readonly taps: number[] | null;
	private readonly sizes: CableSize[];
	private made: Way[] | null = null;

	/** `options.sizes` thin to thick, all with a price; `tapVolts` is any tap that its ways may be checked at. */
	constructor(
		private readonly run: RunWays,
		private readonly options: ChooseOptions,
		private readonly tapVolts: number
	) {
		const { size, tapVolts: tap } = run.held ?? {};
		this.sizes = size ? [size] : options.sizes;
		this.taps = tap === undefined ? null : [tap];
		this.plain = this.priced(run.shape, []);
	}
	private priced(shape: RunShape, groups: readonly string[]): Way {
		const sizes = this.sizes.map((size) => ({ size, cost: wayCost(shape, size, this.options) }));
		return new PricedWay(shape, sizes, groups);
	}

	/** All but the plain way. One that is no network, or does not feed the same loads, is passed over. */
	get others(): Way[] {
		if (this.made) return this.made;
		const { shape, others } = this.run;
		const ids = new Set(shape.loads.map(({ id }) => id));
		const made = others && ids.size <= mostLamps ? others() : [];
		this.made = made
			.filter(
				(way) =>
					way.id === shape.id &&
					way.loads.length === shape.loads.length &&
					way.loads.every(({ id }) => ids.has(id)) &&
					!faultOfShape(way, this.sizes[0]!, this.tapVolts, this.options)
			)
			.map((way) => this.priced(way, this.plain.sketcher.groups));
		return this.made;
	}
	/** Those made so far. */
	get known(): Way[] {
		return [this.plain, ...(this.made ?? [])];
	}
	/** The plain way in all sizes; of the others, the sizes that cost less than `below`. */
	within(below: number): Way[] {
		if (!this.reaches(below)) return [this.plain];
		const cheap = this.others.flatMap((way): Way[] => {
			const sizes = way.sizes.filter(({ cost }) => cost < below - epsilon);
			return sizes.length > 0 ? [{ shape: way.shape, sketcher: way.sketcher, sizes }] : [];
		});
		return [this.plain, ...cheap];
	}
	/** Whether another way costs `from` or more and less than `to`; they are made only where one could. */
	gains(from: number, to: number): boolean {
		return (
			to > from &&
			this.reaches(to) &&
			this.others.some(({ sizes }) => sizes.some(({ cost }) => cost >= from - epsilon && cost < to - epsilon))
		);
	}
	/** No other way costs less than the plain one of the same size (`RunWays`). */
	private reaches(below: number): boolean {
		return this.plain.sizes.some(({ cost }) => cost < below - epsilon);
	}
	get least(): number {
		return this.plain.sizes.reduce((least, { cost }) => Math.min(least, cost), Infinity);
	}
}
/** Differences of money below this are none. */
const epsilon = 1e-6 + rounding;
