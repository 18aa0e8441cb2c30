import { cables, materials, transformers, type Lamp, type TransformerModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import {
	squareMillimetres,
	type CableSize,
	type CableSystem,
	type ChooseOptions,
	type Load,
	type TransformerOption
} from '../circuit';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { runChoices } from './hand';

/** A lamp as the circuit sees it. */
export const loadOf = (lamp: Lamp): Load =>
	lamp.kind === 'led'
		? { kind: 'led', voltAmps: lamp.voltAmps, minVolts: lamp.minVolts, maxVolts: lamp.maxVolts }
		: {
				kind: 'halogen',
				watts: lamp.watts,
				ratedVolts: lamp.ratedVolts,
				minVolts: lamp.minVolts,
				maxVolts: lamp.maxVolts
			};

/**
 * Lamps that should look alike (rule cable.volts): filament lamps of one model on one tree, wall or walk. An LED inside
 * its window gives the same light whatever its volts (rule lamp.led), so nothing is asked of it.
 */
export const alikeOf = (fixture: Fixture): string | null =>
	fixture.lamp.kind === 'halogen' ? `${fixture.target.kind}/${fixture.target.id}/${fixture.model}` : null;

/** Lamps whose windows differ want different taps, and so different runs. */
export const windowOf = (fixture: Fixture): string => `${fixture.lamp.minVolts}-${fixture.lamp.maxVolts}`;

export const systemOf = (site: Site, yard: Yard): CableSystem =>
	yard.power.cable ?? (site.units === 'feet' ? 'awg' : 'mm2');

/**
 * A transformer already owned, of which only the rating is known: a 12 V tap and those that runs set by hand are on, a
 * secondary for each 300 VA.
 */
export function ownedTransformer(yard: Yard): TransformerOption | null {
	const voltAmps = yard.power.owned?.transformerVoltAmps;
	if (voltAmps === undefined) return null;
	const tap = 12;
	const perSecondary = rules['supply.secondary'].figures.amps * tap;
	return {
		id: modelLike(voltAmps),
		voltAmps,
		taps: [...new Set([tap, ...runChoices(yard).flatMap((run) => run.tap ?? [])])].toSorted((a, b) => a - b),
		secondaries: Math.max(1, Math.ceil(voltAmps / perSecondary - 1e-9)),
		regulation: rules['supply.regulation'].figures.taken,
		price: 0
	};
}
/** Catalogue id of the model whose rating is nearest. */
const modelLike = (voltAmps: number): string =>
	transformers.reduce((best, model) =>
		Math.abs(model.voltAmps - voltAmps) < Math.abs(best.voltAmps - voltAmps) ? model : best
	).id;

/** What a thing of the catalogue costs this person. */
export const priceOf = (yard: Yard, { id, price }: { id: string; price: number }): number =>
	yard.power.prices?.[id] ?? price;

export const connectorPrice = (yard: Yard): number =>
	priceOf(
		yard,
		materials.find(({ id }) => id === 'connector')!
	);

/** Currency per metre by size, off the longest roll sold; a size that is not sold goes by the one nearest in copper. */
function cablePrices(system: CableSystem, yard: Yard) {
	const sold = cables.filter((cable) => cable.system === system);
	const sizes = [...new Set(sold.map((cable) => cable.size))].map((size) => ({ system, size }));
	const perMetre = new Map(
		sizes.map(({ size }) => {
			const roll = sold
				.filter((cable) => cable.size === size)
				.reduce((best, cable) => (cable.length > best.length ? cable : best));
			return [size, priceOf(yard, roll) / roll.length];
		})
	);
	const price = (wanted: CableSize): number => {
		const own = perMetre.get(wanted.size);
		if (own !== undefined) return own;
		const off = (size: CableSize) => Math.abs(Math.log(squareMillimetres(size) / squareMillimetres(wanted)));
		return perMetre.get(sizes.reduce((best, size) => (off(size) < off(best) ? size : best)).size)!;
	};
	return { sizes, price };
}

/** What may be chosen from: the catalogue at the person's prices; `only` this transformer where one is given. */
export function chooseOptions(system: CableSystem, yard: Yard, only: TransformerOption | null): ChooseOptions {
	const { sizes, price } = cablePrices(system, yard);
	const temperature = rules['cable.temperature'].figures;
	return {
		sizes,
		pricePerMetre: price,
		transformers: only ? [only] : transformers.map((model) => transformerOption(model, yard)),
		temperatures: { nominal: temperature.nominal, hot: temperature.hot, cold: temperature.cold },
		corners: rules['cable.corners'].figures,
		loadLimit: rules['supply.load'].figures.fraction,
		growth: 0,
		secondaryAmps: rules['supply.secondary'].figures.amps
	};
}
export const transformerOption = (model: TransformerModel, yard: Yard): TransformerOption => ({
	id: model.id,
	voltAmps: model.voltAmps,
	taps: model.taps,
	secondaries: model.secondaries,
	regulation: model.regulation,
	price: priceOf(yard, model)
});
