import { count, item } from './item';
import { listed, material, modelsUsed, type Basis } from './goods';
import type { ShoppingItem } from './types';

/** Whole fixtures: one spare of each model used this often or more; common practice, no source. */
const spareFrom = 4;

export const fixtureItems = ({ fixtures, prices }: Basis): ShoppingItem[] =>
	modelsUsed(fixtures).map((model) =>
		item({
			id: model.id,
			group: 'fixtures',
			name: model.name,
			quantity: model.labels.length,
			unit: 'each',
			price: prices(model.id, model.price),
			why: `${count(model.labels.length, 'place')} on the plan: ${listed(model.labels)}.${model.own ? ' The price is that of the list; put in that of your own lamp.' : ''}`
		})
	);

/** Spares: an LED fixture matches only its own kind in colour, a filament lamp burns out. */
export const spareItems = ({ fixtures, prices }: Basis): ShoppingItem[] =>
	modelsUsed(fixtures).flatMap((model) => {
		const used = model.labels.length;
		if (model.halogen) {
			const lamps = Math.ceil(used / spareFrom);
			return material(
				'lamp-halogen',
				'spares',
				lamps,
				`One spare lamp for every ${spareFrom} in use or part of that: ${used} in use (${listed(model.labels)}).`,
				prices,
				{
					id: `spare-lamp-${model.id}`,
					name: `Spare lamp for: ${model.name}`
				}
			);
		}
		if (used < spareFrom) return [];
		return [
			item({
				id: `spare-${model.id}`,
				priceOf: model.id,
				group: 'spares',
				name: `Spare: ${model.name}`,
				quantity: 1,
				unit: 'each',
				price: prices(model.id, model.price),
				why: `One spare of a model used ${spareFrom} times or more: this one ${used} times. Bought later it may not match in colour.`
			})
		];
	});
