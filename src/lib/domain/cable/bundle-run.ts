/** The cables of laid runs, led along each other and put back into their runs. */
import type { ChooseOptions, RunShape } from '../circuit';
import type { Bundler, Cable } from './bundle';
import { BundleGround } from './bundle-ground';
import { costedAlone, groundwork, jointsPrice, routeAlong, type CostedRoute } from './bundle-total';
import { layingCosts, trenchPricePerMetre } from './costs';
import { cableLength, type Laying } from './laid';
import type { LaidRun } from './layout';

/** Runs in the ground. `price`: digging and crossings once, branches, and starts at the transformer, currency; each run's shape bears its part. */
export interface Led {
	runs: readonly LaidRun[];
	price: number;
	/** A cable lies otherwise than by itself. */
	isLed: boolean;
}
/** Currency a metre of each run's cable, by place. A size that nobody sells is in hand already. */
export const metrePrice = (size: Parameters<ChooseOptions['pricePerMetre']>[0], options: ChooseOptions): number => {
	const price = options.pricePerMetre(size);
	return price >= 0 && price < Infinity ? price : 0;
};

/** Digging shared out by what each run would dig alone, so that the parts together are the whole. */
function withParts(runs: readonly LaidRun[], costed: readonly CostedRoute[], laying: Laying): Omit<Led, 'isLed'> {
	const joints = runs.map((run) => jointsPrice(run, laying));
	const ground = groundwork(costed) * trenchPricePerMetre;
	let next = 0;
	const own = runs.map(({ segments }) =>
		segments.reduce((sum) => sum + costed[next++]!.costs.reduce((part, cost) => part + cost, 0), 0)
	);
	const all = own.reduce((sum, one) => sum + one, 0);
	const part = (k: number) => joints[k]! + (all > 0 ? (ground * own[k]!) / all : 0);
	return {
		price: ground + joints.reduce((sum, one) => sum + one, 0),
		runs: runs.map((run, k) => ({ ...run, shape: { ...run.shape, laying: part(k) } }))
	};
}

/** Runs over one ground: as they lie, and led along each other. */
export class Leading {
	private readonly ground: BundleGround | null;
	constructor(private readonly laying: Laying) {
		const { sought } = laying.routes;
		this.ground = sought ? new BundleGround(sought) : null;
	}
	private chainsOf(runs: readonly LaidRun[]): (readonly number[] | null)[] {
		const { ground } = this;
		return runs.flatMap(({ nodes, segments }) =>
			segments.map(({ from, to, route }) => ground?.chain(nodes[from]!.terminal, nodes[to]!.terminal, route) ?? null)
		);
	}
	/** Each cable where it lies now. */
	asLaid(runs: readonly LaidRun[]): Led {
		const chains = this.chainsOf(runs);
		const routes = runs.flatMap(({ segments }) => segments.map(({ route }) => route));
		const costed = routes.map((route, k) => this.costed(route, chains[k]!));
		return { ...withParts(runs, costed, this.laying), isLed: false };
	}
	private costed(route: CostedRoute['route'], chain: readonly number[] | null): CostedRoute {
		const along = this.ground && chain ? routeAlong(this.ground, chain) : null;
		return along && along.costs.length === route.path.length - 1
			? { route, costs: along.costs }
			: costedAlone(route, this.laying.routes.sought?.costs ?? layingCosts);
	}
	/** Led along each other where that is cheaper. `prices`: currency a metre of cable, by place of its run. */
	along(runs: readonly LaidRun[], prices: readonly number[], bundler: Bundler): Led {
		const { ground } = this;
		const chains = this.chainsOf(runs);
		const places = runs.flatMap(({ segments }, run) =>
			segments.map(({ isBent = false }) => ({ run, isFixed: isBent }))
		);
		const cables = chains.flatMap((chain, k): (Cable & { k: number })[] =>
			chain && chain.length > 1 ? [{ chain, price: prices[places[k]!.run]!, isFixed: places[k]!.isFixed, k }] : []
		);
		if (!ground || cables.length < 2) return this.asLaid(runs);
		const found = bundler(ground, cables, trenchPricePerMetre);
		const after = [...chains];
		cables.forEach(({ k, chain }, c) => {
			if (found[c]!.chain !== chain) after[k] = found[c]!.chain;
		});
		let next = 0;
		const costed: CostedRoute[] = [];
		const led = runs.map((run): LaidRun => {
			const segments = run.segments.map((segment) => {
				const k = next++;
				const isSame = after[k] === chains[k];
				costed.push(isSame ? this.costed(segment.route, chains[k]!) : routeAlong(ground, after[k]!));
				if (isSame) return segment;
				const { route } = costed.at(-1)!;
				return { ...segment, route, length: cableLength(route.length, segment.from === 0, this.laying.mountHeight) };
			});
			return { ...run, segments, shape: shapeWith(run.shape, segments) };
		});
		return { ...withParts(led, costed, this.laying), isLed: after.some((chain, k) => chain !== chains[k]) };
	}
}
const shapeWith = (shape: RunShape, segments: LaidRun['segments']): RunShape => ({
	...shape,
	segments: segments.map(({ from, to, length }) => ({ from, to, metres: length }))
});
