import { transformers, cables, type Lamp } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { CableSystem, ChooseOptions, Load, TransformerOption } from '../circuit';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard';

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

/** A transformer already owned, of which only the rating is known: one 12 V tap, a secondary for each 300 VA. */
export function ownedTransformer(yard: Yard): TransformerOption | null {
	const voltAmps = yard.power.owned?.transformerVoltAmps;
	if (voltAmps === undefined) return null;
	const tap = 12;
	const perSecondary = rules['supply.secondary'].figures.amps * tap;
	return {
		id: modelLike(voltAmps),
		voltAmps,
		taps: [tap],
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

/** What may be chosen from: the catalogue at the person's prices. */
export function chooseOptions(system: CableSystem, yard: Yard, owned: TransformerOption | null): ChooseOptions {
	const prices = yard.power.prices ?? {};
	const sold = cables.filter((cable) => cable.system === system);
	const sizes = [...new Set(sold.map((cable) => cable.size))].map((size) => ({ system, size }));
	const perMetre = new Map(
		sizes.map(({ size }) => {
			const roll = sold
				.filter((cable) => cable.size === size)
				.reduce((best, cable) => (cable.length > best.length ? cable : best));
			return [size, (prices[roll.id] ?? roll.price) / roll.length];
		})
	);
	const temperature = rules['cable.temperature'].figures;
	return {
		sizes,
		pricePerMetre: ({ size }) => perMetre.get(size) ?? 0,
		transformers: owned
			? [owned]
			: transformers.map((model) => ({
					id: model.id,
					voltAmps: model.voltAmps,
					taps: model.taps,
					secondaries: model.secondaries,
					regulation: model.regulation,
					price: prices[model.id] ?? model.price
				})),
		temperatures: { nominal: temperature.nominal, hot: temperature.hot, cold: temperature.cold },
		corners: rules['cable.corners'].figures,
		loadLimit: rules['supply.load'].figures.fraction,
		growth: 0,
		secondaryAmps: rules['supply.secondary'].figures.amps
	};
}
