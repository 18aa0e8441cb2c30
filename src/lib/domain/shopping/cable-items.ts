import { cables } from '../shared/catalogue';
import { sizeName, type CableSize } from '../circuit';
import type { Run } from '../cable';
import { formatLength } from '../shared/units';
import { cents, count, item } from './item';
import type { Basis } from './goods';
import { pullsOf } from './pulls';
import { cutRolls, numbered } from './cut-list';
import { cheapestRolls, cutLengths, wasteShare } from './rolls';
import type { CutRoll, ShoppingItem } from './types';

export interface CableList {
	items: ShoppingItem[];
	/** Joints that the ends of rolls add to the planned ones. */
	joints: number;
	rolls: CutRoll[];
}
export const laidLength = (run: Run): number => run.segments.reduce((sum, segment) => sum + segment.length, 0);

function listSize(basis: Basis, cable: CableSize, runs: readonly Run[]): CableList {
	const { site, yard, prices } = basis;
	const name = sizeName(cable);
	const owned = yard.power.owned;
	const inHand =
		owned?.cableSize === cable.size && (yard.power.cable ?? cable.system) === cable.system
			? (owned.cableLength ?? 0)
			: 0;
	const length = (metres: number): string => formatLength(metres, site.units);
	const laid = runs.reduce((sum, run) => sum + laidLength(run), 0);
	const need = `${runs.map((run) => `${run.name} ${length(laidLength(run))}`).join(', ')}: ${length(laid)} with slack, and ${wasteShare * 100} % for waste`;
	const rolls = cables.filter((roll) => roll.system === cable.system && roll.size === cable.size);
	const base = { group: 'cable' as const };
	const mine: ShoppingItem[] =
		inHand > 0
			? [
					item({
						...base,
						id: 'cable-in-hand',
						name: `${name} cable in hand`,
						quantity: 1,
						unit: length(inHand),
						price: 0,
						why: `Used first for ${need}.`
					})
				]
			: [];
	if (rolls.length === 0) {
		const why = `${need}. This size is not in our catalogue: ask what a roll of it costs.`;
		const id = `cable-${cable.system}-${cable.size}`;
		const quantity = Math.ceil(Math.max(0, laid * (1 + wasteShare) - inHand));
		const lengths = cutLengths(runs.flatMap(pullsOf), quantity, inHand);
		return {
			items: [
				...mine,
				item({
					...base,
					id,
					name: `${name} two-conductor cable for direct burial`,
					quantity,
					unit: 'm',
					price: 0,
					why
				})
			],
			joints: lengths.joints,
			rolls: cutRolls(lengths.rolls, [id], name, runs, basis.fixtures)
		};
	}
	const kinds = rolls.map((roll) => ({ id: roll.id, length: roll.length, cents: cents(prices(roll.id, roll.price)) }));
	const choice = cheapestRolls(runs.flatMap(pullsOf), kinds, inHand);
	const off = inHand > 0 ? `, less ${length(inHand)} in hand` : '';
	const joins = choice.joints > 0 ? ` ${count(choice.joints, 'roll end')} must be joined on the way.` : '';
	const bought = rolls.flatMap((roll, i) =>
		choice.counts[i]! > 0
			? [
					item({
						...base,
						id: roll.id,
						name: roll.name,
						quantity: choice.counts[i]!,
						unit: `roll of ${length(roll.length).replace('.00 ', ' ')}`,
						price: prices(roll.id, roll.price),
						why: `${need}${off}. The cheapest rolls that cover it; about ${length(choice.spare)} is left over.${joins}`
					})
				]
			: []
	);
	const lines = kinds.map(({ id }) => id);
	return {
		items: [...mine, ...bought],
		joints: choice.joints,
		rolls: cutRolls(choice.rolls, lines, name, runs, basis.fixtures)
	};
}
/** Cable by size, as rolls. */
export function cableItems(basis: Basis): CableList {
	const bySize = new Map<string, Run[]>();
	for (const run of basis.cabling.runs) {
		if (laidLength(run) <= 0) continue;
		const key = `${run.cable.system}-${run.cable.size}`;
		bySize.set(key, [...(bySize.get(key) ?? []), run]);
	}
	const lists = [...bySize.values()].map((runs) => listSize(basis, runs[0]!.cable, runs));
	return {
		items: lists.flatMap((list) => list.items),
		joints: lists.reduce((sum, list) => sum + list.joints, 0),
		rolls: numbered(lists.flatMap((list) => list.rolls))
	};
}
