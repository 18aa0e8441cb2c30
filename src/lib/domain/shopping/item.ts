import type { Yard } from '../yard/schema';
import type { ShoppingItem } from './types';

/** Prices in hundredths of the currency: sums are exact. */
export type Prices = (id: string, catalogue: number) => number;
/** The person's own price by catalogue id, else the catalogue's. */
export const pricesOf = (yard: Yard): Prices => {
	const told = yard.power.prices ?? {};
	return (id, catalogue) => (Object.hasOwn(told, id) ? told[id]! : catalogue);
};
export const cents = (price: number): number => Math.round(price * 100);

/** One line of the list; cost is quantity times unit price, exact to the hundredth. */
export function item(line: Omit<ShoppingItem, 'cost' | 'unitPrice'> & { price: number }): ShoppingItem {
	const { price, why, ...rest } = line;
	return { ...rest, unitPrice: cents(price) / 100, cost: (cents(price) * line.quantity) / 100, why };
}
export const totalOf = (items: readonly ShoppingItem[]): number =>
	items.reduce((sum, one) => sum + cents(one.cost), 0) / 100;
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
