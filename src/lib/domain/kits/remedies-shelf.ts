/** What of the loose items puts a kit's circuit right: thicker cable, another transformer, or both. Solved before it is said. */
import { byThickness, sizeName, squareMillimetres, type CableSize } from '../circuit';
import type { Alone, Tried } from './alone';
import { loadLimit, lowestWords } from './circuit';
import type { Judge } from './judge';
import { sizeKey } from './stock';
import type { Judged, Needs, Shelf, ShelfLine, ShelfTransformer } from './types';
import { listed, money, sentence } from './words';

/** A kit whose own circuit does not pass. */
export interface Case {
	needs: Needs;
	shelf: Shelf;
	judge: Judge;
	lamps: Alone['lamps'];
	tried: Tried;
}
interface Loose {
	line: ShelfLine;
	count: number;
	cents: number;
}
/** Pairs of a loose cable and a loose transformer that are solved, the cheapest first. */
const mostPairs = 40;

/** The cheapest single loose line of which enough is in stock. */
function cheapest(lines: readonly ShelfLine[], countOf: (line: ShelfLine) => number | null): Loose | null {
	const all = lines.flatMap((line): Loose[] => {
		const count = line.kind === 'kit' ? null : countOf(line);
		return count === null || count > (line.stock ?? Infinity) ? [] : [{ line, count, cents: count * line.cents }];
	});
	return all.toSorted((a, b) => a.cents - b.cents || a.count - b.count)[0] ?? null;
}
const looseCable = ({ lines }: Shelf, size: CableSize, metres: number): Loose | null =>
	cheapest(lines, ({ contents }) => {
		const each = contents.cable
			.filter((one) => sizeKey(one.size) === sizeKey(size))
			.reduce((sum, one) => sum + one.metres * one.count, 0);
		return each > 0 ? Math.ceil(metres / each - 1e-9) : null;
	});

interface CableChange {
	size: CableSize;
	/** Places of the runs laid in it. */
	runs: number[];
	loose: Loose;
}
/** Sets of runs that may change their cable: every one while there are few, else each by itself and all. */
function setsOf(runs: readonly number[]): number[][] {
	if (runs.length > 3) return [...runs.map((run) => [run]), [...runs]];
	return runs.reduce<number[][]>((sets, run) => [...sets, ...sets.map((set) => [...set, run])], [[]]).slice(1);
}
function cableChanges({ needs, shelf, judge, lamps, tried }: Case): CableChange[] {
	const own = squareMillimetres(tried.size);
	const fed = needs.runs.flatMap((run, r) => (judge.fitted(run, lamps).loads.length > 0 ? [r] : []));
	return judge.stock.sizes
		.filter((size) => squareMillimetres(size) > own)
		.toSorted(byThickness)
		.flatMap((size) =>
			setsOf(fed).flatMap((runs): CableChange[] => {
				const loose = looseCable(
					shelf,
					size,
					runs.reduce((sum, r) => sum + needs.runs[r]!.metres, 0)
				);
				return loose ? [{ size, runs, loose }] : [];
			})
		);
}
interface SupplyChange {
	transformer: ShelfTransformer;
	loose: Loose;
}
function supplyChanges({ shelf, tried, judge, lamps, needs }: Case): SupplyChange[] {
	const lights = needs.fixtures.map(({ fixtures }) => fixtures.length);
	const least = lamps.reduce((sum, one, n) => sum + (one ? one.lamp.voltAmps * lights[n]! : 0), 0);
	return judge.stock.supplies.flatMap(({ transformer, codes }): SupplyChange[] => {
		if (transformer === tried.transformer || transformer.voltAmps * loadLimit < least * 0.7) return [];
		const loose = cheapest(shelf.lines, ({ code }) => (codes.includes(code) ? 1 : null));
		return loose ? [{ transformer, loose }] : [];
	});
}

interface Change {
	cents: number;
	cable: CableChange | null;
	supply: SupplyChange | null;
}
const byCents = (a: { cents: number }, b: { cents: number }): number => a.cents - b.cents;

/** `on its 13 V tap`. */
const onTaps = ({ taps }: Judged): string => {
	const used = [...new Set(taps)].toSorted((a, b) => a - b);
	return `on its ${listed(used.map((tap) => `${tap} V`))} ${used.length === 1 ? 'tap' : 'taps'}`;
};
function bought({ needs, shelf }: Case, { cable, supply }: Change, judged: Judged): string {
	const line = ({ loose: { line: own, count, cents } }: { loose: Loose }): string =>
		`${count > 1 ? `${count} of ` : ''}${own.code}, ${money(cents, shelf.currency)}`;
	const parts = [
		...(cable
			? [
					`lay ${listed(cable.runs.map((r) => needs.runs[r]!.name))} in ${sizeName(cable.size)} cable from the shelf (${line(cable)})`
				]
			: []),
		...(supply
			? [
					`take the ${supply.transformer.voltAmps} VA transformer in place of its own, ${onTaps(judged)} (${line(supply)})`
				]
			: [])
	];
	return sentence(parts.join(' and '));
}
/** The cheapest loose cable, transformer, or both that make it pass. */
export function fromShelf(one: Case): string | null {
	const { needs, judge, lamps, tried } = one;
	const passing = (changes: readonly Change[]): string | null => {
		for (const change of changes) {
			const sizes = needs.runs.map((_, r) => (change.cable?.runs.includes(r) ? change.cable.size : tried.size));
			const transformer = change.supply?.transformer ?? tried.transformer;
			if (!judge.passes(lamps, sizes, transformer)) continue;
			const judged = judge.of(lamps, sizes, transformer);
			return `${bought(one, change, judged)} ${lowestWords(judged)}`;
		}
		return null;
	};
	const cables = cableChanges(one).map((cable): Change => ({ cents: cable.loose.cents, cable, supply: null }));
	const supplies = supplyChanges(one).map((supply): Change => ({ cents: supply.loose.cents, cable: null, supply }));
	const both = () =>
		cables
			.flatMap(({ cable, cents }) =>
				supplies.map(({ supply, cents: more }) => ({ cable, supply, cents: cents + more }))
			)
			.toSorted(byCents)
			.slice(0, mostPairs);
	return passing([...cables, ...supplies].toSorted(byCents)) ?? passing(both());
}
