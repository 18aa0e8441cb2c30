/** A setup put into the plan's runs and solved; each distinct one once. */
import type { RunShape } from '../circuit';
import { loadOfLamp, passesTrial, solveTrial, type Trial } from './circuit';
import { sizeKey, stockOf, supplyKey, type Stock } from './stock';
import type { Judged, Needs, RunNeed, Setup, Shelf, ShelfLamp, ShelfTransformer } from './types';

/** By need: the product whose lamp takes the plan's place; null: these lights are left out. */
export interface Lamps {
	product: string;
	lamp: ShelfLamp;
}
const lampKey = ({ source, watts, voltAmps, minVolts, maxVolts }: ShelfLamp): string =>
	[source, watts, voltAmps, minVolts, maxVolts].join(' ');

/** What makes a trial the same; halogen products stand apart, since those of one are asked to look alike. */
const keyOf = (lamps: readonly (Lamps | null)[], sizes: Setup['sizes'], transformer: ShelfTransformer): string =>
	[
		supplyKey(transformer),
		...lamps.map((one) => (one ? `${lampKey(one.lamp)}${one.lamp.source === 'led' ? '' : ` ${one.product}`}` : '-')),
		...sizes.map(sizeKey)
	].join('|');

/** The run with the lamps of the products: of those left out, no load. */
export function withLamps(shape: RunShape, lampOf: (fixture: string) => Lamps | null): RunShape {
	return {
		...shape,
		loads: shape.loads.flatMap((load) => {
			const own = lampOf(load.id);
			if (!own) return [];
			const alike = own.lamp.source === 'halogen' && load.alike !== null ? `${load.alike}/${own.product}` : null;
			return [{ ...load, load: loadOfLamp(own.lamp), alike }];
		})
	};
}

/** Answers for one plan on one shelf, and remembers. */
export class Judge {
	private readonly known = new Map<string, Judged>();
	private readonly passed = new Map<string, boolean>();
	private readonly needOf: ReadonlyMap<string, number>;
	/** By fixture id: how it is lettered. */
	readonly labels: ReadonlyMap<string, string>;

	constructor(
		private readonly needs: Needs,
		readonly stock: Stock
	) {
		this.needOf = new Map(needs.fixtures.flatMap(({ fixtures }, n) => fixtures.map((id) => [id, n] as const)));
		this.labels = new Map(
			needs.fixtures.flatMap(({ fixtures, labels }) => fixtures.map((id, k) => [id, labels[k]!] as const))
		);
	}
	/** Throws where the setup names what is not on the shelf. */
	judge({ products, sizes, transformer }: Setup): Judged {
		const lamps = products.map((id) => this.lampsOf(id));
		const place = this.stock.supplyOf.get(transformer);
		const supply = place === undefined ? undefined : this.stock.supplies[place];
		if (!supply) throw new Error(`The line ${transformer} has no transformer in it. Name one that has.`);
		return this.of(lamps, sizes, supply.transformer);
	}
	lampsOf(product: string): Lamps {
		const own = this.stock.products[this.stock.product.get(product) ?? -1];
		if (!own) throw new Error(`The shelf has no product ${product}. Name one that it has.`);
		return { product, lamp: own.fixture.lamp };
	}
	/** By need its lamps, by run its size. */
	of(lamps: readonly (Lamps | null)[], sizes: Setup['sizes'], transformer: ShelfTransformer): Judged {
		const key = keyOf(lamps, sizes, transformer);
		const judged = this.known.get(key) ?? this.solve({ runs: this.runsWith(lamps, sizes), transformer });
		this.known.set(key, judged);
		return judged;
	}
	/** Whether `of` would be ok; quicker where it would not. */
	passes(lamps: readonly (Lamps | null)[], sizes: Setup['sizes'], transformer: ShelfTransformer): boolean {
		const key = keyOf(lamps, sizes, transformer);
		const known = this.known.get(key)?.ok ?? this.passed.get(key);
		if (known !== undefined) return known;
		const quick = passesTrial({ runs: this.runsWith(lamps, sizes), transformer });
		const ok = quick ?? this.of(lamps, sizes, transformer).ok;
		this.passed.set(key, ok);
		return ok;
	}
	private runsWith(lamps: readonly (Lamps | null)[], sizes: Setup['sizes']): Trial['runs'] {
		return this.needs.runs.map((run, r) => ({ name: run.name, shape: this.fitted(run, lamps), size: sizes[r]! }));
	}
	/** Runs of another shape than the plan's: not remembered. */
	solve(trial: Omit<Trial, 'labels'>): Judged {
		return solveTrial({ ...trial, labels: this.labels });
	}
	/** A run of the plan with lamps by need. */
	fitted({ shape }: RunNeed, lamps: readonly (Lamps | null)[]): RunShape {
		return withLamps(shape, (id) => lamps[this.needOf.get(id) ?? -1] ?? null);
	}
}

const judges = new WeakMap<Needs, WeakMap<Shelf, Judge>>();
/** The one judge of these needs on this shelf, as long as both objects live and stand unchanged. */
export function judgeOf(needs: Needs, shelf: Shelf): Judge {
	const own = judges.get(needs) ?? new WeakMap<Shelf, Judge>();
	judges.set(needs, own);
	const judge = own.get(shelf) ?? new Judge(needs, stockOf(shelf, needs));
	own.set(shelf, judge);
	return judge;
}
/**
 * How a setup does on the needs' runs: the products' lamps in the plan's places, each run in its size, on the taps of the
 * transformer that serve best, nominal and in the worst cases. Needs and shelf are not changed between calls. Throws where
 * the setup names a product or a transformer that the shelf does not have.
 */
export const judge = (setup: Setup, needs: Needs, shelf: Shelf): Judged => judgeOf(needs, shelf).judge(setup);
