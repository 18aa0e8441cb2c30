import { fixtureModels, materials } from '../shared/catalogue';
import { modelName } from '../shared/model-name';
import type { Cabling } from '../cable';
import type { Dusk } from '../dusk';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard/schema';
import { item, type Prices } from './item';
import type { ShoppingItem } from './types';

/** What every part of the list is drawn up from. */
export interface Basis {
	site: Site;
	fixtures: readonly Fixture[];
	cabling: Cabling;
	yard: Yard;
	sensor: Dusk['sensor'];
	prices: Prices;
}
export type MaterialId =
	| 'connector'
	| 'end-cap'
	| 'photocell'
	| 'timer'
	| 'wall-anchor'
	| 'post'
	| 'sleeve'
	| 'joint-sand'
	| 'gravel'
	| 'cable-pin'
	| 'marker-tape'
	| 'in-use-cover'
	| 'lamp-halogen';

/** A line for one of the catalogue's materials; no line when none is needed. */
export function material(
	id: MaterialId,
	group: ShoppingItem['group'],
	quantity: number,
	why: string,
	prices: Prices,
	as: { id?: string; name?: string } = {}
): ShoppingItem[] {
	const goods = materials.find((one) => one.id === id);
	if (!goods || quantity <= 0) return [];
	const { name, unit } = goods;
	return [
		item({
			id: as.id ?? id,
			...(as.id && { priceOf: id }),
			group,
			name: as.name ?? name,
			quantity,
			unit,
			price: prices(id, goods.price),
			why
		})
	];
}
export interface ModelUse {
	id: string;
	name: string;
	price: number;
	halogen: boolean;
	/** Its lamp is one of the person's own. */
	own: boolean;
	watts: number;
	labels: string[];
}
/** Fixtures by model, in the order in which the plan first uses them. */
export function modelsUsed(fixtures: readonly Fixture[]): ModelUse[] {
	const used = new Map<string, ModelUse>();
	for (const fixture of fixtures) {
		const model = fixtureModels.find((one) => one.id === fixture.model);
		const use = used.get(fixture.model) ?? {
			id: fixture.model,
			name: modelName(fixture.model, fixture.lamp),
			price: model?.price ?? 0,
			halogen: fixture.lamp.kind === 'halogen',
			own: fixture.lamp.measured !== undefined,
			watts: fixture.lamp.watts,
			labels: []
		};
		use.labels.push(fixture.label);
		used.set(fixture.model, use);
	}
	return [...used.values()];
}
/** Labels as a person lists them: `P1, P2, P3`. */
export const listed = (labels: readonly string[]): string => labels.join(', ');
