/**
 * Which beginnings of a setup can never pass. The search asks this before it looks further, so that it does not try the hundreds of choices
 * of lamps beside cable that is too thin for any of them.
 */
import { leastVoltAmps } from '../circuit';
import { loadLimit, loadOfLamp } from './circuit';
import type { Judge, Lamps } from './judge';
import type { Problem, SetupIndex } from './search-types';

type Part = Parameters<NonNullable<Problem['hopeless']>>[0];

/**
 * A lamp that asks no more than any of those given: the least volt-amperes and volts of them, and no limit above. As an LED lamp,
 * whose amperes at given volts are then the fewest of all: in the place of any of them it lets no lamp's volts fall and loads nothing more.
 */
function easiest(lamps: readonly Lamps[]): Lamps {
	const least = (of: (lamp: Lamps['lamp']) => number) => Math.min(...lamps.map(({ lamp }) => of(lamp)));
	const voltAmps = least((lamp) => leastVoltAmps(loadOfLamp(lamp)));
	return {
		product: '',
		lamp: {
			...lamps[0]!.lamp,
			source: 'led',
			voltAmps,
			watts: voltAmps,
			minVolts: least((lamp) => lamp.minVolts),
			maxVolts: 100
		}
	};
}

/** What `Problem.hopeless` answers. It says no more than what holds for everything that a part can become. */
export interface Hopes {
	hopeless: NonNullable<Problem['hopeless']>;
	/** To be told of each whole setup that does not pass. */
	failed: (setup: SetupIndex) => void;
}
/**
 * By volt-amperes; and once a setup with the same transformer and cable has failed, by solving with the easiest lamp in every place that is
 * open. Most shelves never come to that, and it takes as long as solving the whole. Not solved where a filament lamp stands or may stand: it passes
 * outside its window in the worst case, where it draws less than any LED lamp that is put in its place.
 */
export function hopesOf(needs: Problem['needs'], judge: Judge): Hopes {
	const { products, supplies, sizes: stocked } = judge.stock;
	const own = products.map(({ id }) => easiest([judge.lampsOf(id)]));
	const open = needs.map((need) => (need.products.length > 0 ? easiest(need.products.map((p) => own[p]!)) : null));
	const isFilament = (p: number): boolean => products[p]!.fixture.lamp.source !== 'led';
	const mayBeFilament = (part: Part): boolean =>
		needs.some((need, n) => {
			const chosen = part.products[n] ?? null;
			return chosen === null ? need.products.some(isFilament) : isFilament(chosen);
		});
	const failed = new Set<string>();
	const keyOf = ({ transformer, sizes }: Pick<Part, 'transformer' | 'sizes'>) => [transformer, ...sizes].join();
	const hopeless = (part: Part): boolean => {
		const { transformer } = supplies[part.transformer]!;
		const lamps = needs.map((_, n) => {
			const chosen = part.products[n] ?? null;
			return chosen === null ? open[n]! : own[chosen]!;
		});
		const sum = lamps.reduce((all, one, n) => all + needs[n]!.count * (one?.lamp.voltAmps ?? 0), 0);
		if (sum > loadLimit * transformer.voltAmps + 1e-6) return true;
		const sizes = part.sizes.flatMap((size) => (size === null ? [] : [stocked[size]!]));
		if (sizes.length < part.sizes.length || !failed.has(keyOf(part)) || mayBeFilament(part)) return false;
		return !judge.passes(lamps, sizes, transformer);
	};
	return { hopeless, failed: (setup) => failed.add(keyOf(setup)) };
}
