import type { Cabling } from '../cable';
import type { Dusk } from '../dusk';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard/schema';
import { cableItems } from './cable-items';
import { connectionItems } from './connection-items';
import { fixtureItems, spareItems } from './fixture-items';
import type { Basis } from './goods';
import { groundItems } from './ground-items';
import { pricesOf, totalOf } from './item';
import { supplyItems } from './supply-items';
import { toolItems } from './tool-items';
import type { Shopping, ShoppingItem } from './types';

const groups: readonly ShoppingItem['group'][] = [
	'fixtures',
	'supply',
	'cable',
	'connections',
	'crossing',
	'spares',
	'tools'
];

/**
 * Everything to buy for the plan, group by group, what is in hand taken off. Prices are the person's own where told, else
 * the catalogue's; sums are exact to the hundredth. Empty for a yard with nothing to build.
 */
export function makeShopping(
	site: Site,
	fixtures: readonly Fixture[],
	cabling: Cabling,
	{ sensor }: Pick<Dusk, 'sensor'>,
	yard: Yard
): Shopping {
	const basis: Basis = { site, fixtures, cabling, yard, sensor, prices: pricesOf(yard) };
	const cable = cableItems(basis);
	const all = [
		...fixtureItems(basis),
		...supplyItems(basis),
		...cable.items,
		...connectionItems(basis, cable.joints),
		...groundItems(basis),
		...spareItems(basis),
		...toolItems(basis)
	];
	const items = groups.flatMap((group) => all.filter((one) => one.group === group));
	const price = yard.power.price;
	const currency = price && price !== 'unsure' ? price.currency : '$';
	return { items, rolls: cable.rolls, currency, total: totalOf(items) };
}
