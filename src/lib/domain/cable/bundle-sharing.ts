import { chooseSupply, type Choice, type ChooseOptions, type RunWays } from '../circuit';
import { bundled, bundledAnew, type Bundler } from './bundle';
import { Leading, metrePrice, type Led } from './bundle-run';
import { jointsPrice } from './bundle-total';
import { trenchPricePerMetre } from './costs';
import type { Hand } from './hand';
import type { Laying } from './laid';
import { stops, worthIt, type LaidRun, type Layout } from './layout';
import { leastCost } from './least';
import { withCost, withCuresOf } from './recost';
import { minimumTree } from './spanning';

interface Apart {
	runs: readonly LaidRun[];
	choice: Choice;
}
export interface Found {
	runs: readonly LaidRun[];
	/** The same with each cable as it would lie by itself. */
	apart: Apart;
	/** Its cost is the true one. */
	choice: Choice;
	/** Of that for digging, crossings, branches and starts. */
	ground: number;
}
/** Cable taken at so many times its price: where the lengths of the first break a limit, less is led a long way round. */
const prudence = [1, 2.5] as const;
/** Steiner trees in the plane are no shorter than 0.824 of the minimum spanning tree (Chung & Graham, 1985; from memory). */
const steinerRatio = 0.82;
/** Other layouts over the same ground hardly dig less than this part of what the best so far digs (tried out on random yards). */
const hardlyLess = 0.97;
/** Digging that is no more than so many times the shortest tree of ways is hardly ever bettered (the same). */
const nearTree = 1.15;

const goodsPrice = (runs: readonly LaidRun[], prices: readonly number[]): number =>
	prices.reduce(
		(sum, price, k) => sum + price * runs[k]!.shape.segments.reduce((metres, one) => metres + one.metres, 0),
		0
	);

/** Layouts over one ground and answers, priced in truth and led along each other. */
export class Sharing {
	private readonly leading: Leading;
	/** Currency: of digging all along the shortest tree of ways, and the least that any layout digs, as far as we know. */
	private readonly tree: number;
	private readonly digging: number;
	constructor(
		readonly laying: Laying,
		private readonly hand: Hand,
		private readonly options: ChooseOptions,
		{ runs }: Layout
	) {
		this.leading = new Leading(laying);
		const lights = new Set(
			runs.flatMap(({ nodes }) => nodes.flatMap(({ terminal }) => (terminal > 0 ? terminal : [])))
		);
		const tree = minimumTree(laying.routes, [...lights]);
		this.tree = Number.isFinite(tree.cost) ? trenchPricePerMetre * tree.cost : 0;
		this.digging = steinerRatio * this.tree;
	}
	/** Solved in these shapes and no others. */
	private solve(runs: readonly LaidRun[]): Choice {
		const ways = runs.map(({ shape }): RunWays => {
			const set = this.hand.runs.find(({ id }) => id === shape.id);
			const size = set?.size ? { size: set.size } : {};
			const tap = set && set.tapVolts !== null ? { tapVolts: set.tapVolts } : {};
			return { shape, ...(set && { held: { ...size, ...tap } }) };
		});
		return chooseSupply(ways, this.options);
	}
	/** Of a choice's cables by place, currency a metre. */
	private prices(runs: readonly LaidRun[], choice: Choice): number[] {
		const sizes = new Map(choice.runs.map(({ id, size }) => [id, size]));
		return runs.map(({ shape }) => metrePrice(sizes.get(shape.id)!, this.options));
	}
	private goods(runs: readonly LaidRun[], choice: Choice): number {
		return choice.transformer.price + goodsPrice(runs, this.prices(runs, choice));
	}
	asLaid(runs: readonly LaidRun[], choice: Choice): Found {
		const led = this.leading.asLaid(runs);
		const cost = this.goods(runs, choice) + led.price;
		return { runs: led.runs, apart: { runs, choice }, ground: led.price, choice: withCost(choice, cost) };
	}
	/** Whether a layout could be cheaper than the best so far: no proof, but where it could not it is not led. */
	couldBeat(best: Found, runs: readonly LaidRun[], choice: Choice): boolean {
		if (stops(choice) > stops(best.choice)) return false;
		return this.goods(runs, choice) + this.leastGround(runs, best) < best.choice.cost - worthIt;
	}
	private joints(runs: readonly LaidRun[]): number {
		return runs.reduce((sum, run) => sum + jointsPrice(run, this.laying), 0);
	}
	private leastGround(runs: readonly LaidRun[], best: Found): number {
		return this.joints(runs) + Math.max(this.digging, hardlyLess * (best.ground - this.joints(best.runs)));
	}
	/** Led along each other where that is cheaper and the circuit has no more problems for it; else as laid. */
	best(runs: readonly LaidRun[], choice: Choice): Found {
		return this.ledFrom(this.asLaid(runs, choice), bundled);
	}
	/** The same from other starts: what is better than `found`, or that; not sought where little is left to save. */
	bettered(found: Found): Found {
		return found.ground - this.joints(found.runs) <= nearTree * this.tree ? found : this.ledFrom(found, bundledAnew);
	}
	private ledFrom(plain: Found, bundler: Bundler): Found {
		const { apart } = plain;
		const { runs, choice } = apart;
		const prices = this.prices(runs, choice);
		for (const times of prudence) {
			const asked = prices.map((price) => price * times);
			const led = this.leading.along(runs, asked, bundler);
			if (!led.isLed) return plain;
			if (this.goods(led.runs, choice) + led.price >= plain.choice.cost - worthIt) return plain;
			const next = this.solve(led.runs);
			const isNoWorse = stops(next) <= stops(choice) && next.problems.length <= choice.problems.length;
			if (isNoWorse && next.cost < plain.choice.cost - worthIt)
				return { runs: led.runs, apart, ground: led.price, choice: withCuresOf(next, choice) };
		}
		return plain;
	}
	/** Solved as they lie. */
	solved(runs: readonly LaidRun[]): Found {
		return this.asLaid(runs, this.solve(runs));
	}
	/** In the thinnest cable that could do, not solved, currency; led along each other where it could be the better one then. */
	thinnest(runs: readonly LaidRun[], best: Found): number {
		const sizes = new Map(this.hand.runs.map(({ id, size }) => [id, size]));
		const least = ({ runs: led }: Pick<Led, 'runs'>) =>
			leastCost(
				led.map(({ shape }) => ({ plain: shape, others: [], size: sizes.get(shape.id) ?? null })),
				this.options
			);
		const plain = this.leading.asLaid(runs);
		const cost = least(plain);
		if (cost - plain.price + this.leastGround(runs, best) >= best.choice.cost - worthIt) return cost;
		const thin = Math.min(...this.options.sizes.map((size) => metrePrice(size, this.options)));
		const led = this.leading.along(
			runs,
			runs.map(() => thin),
			bundled
		);
		return Math.min(cost, least(led));
	}
}
