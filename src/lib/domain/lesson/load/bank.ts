/** LED lamps at the terminals of a transformer, and what it may carry for hours: the engine's figures. */
import { chooseSupply, usualSizes, type Choice, type Load, type TransformerOption } from '../../circuit';
import { fixtureModels, transformers } from '../../shared/catalogue';
import { rules } from '../../shared/rules';
import { besideNetwork, loadOf, solved, type Solved } from '../series/network';

export const { fraction, powerFactor } = rules['supply.load'].figures;
export const mostAmps = rules['supply.secondary'].figures.amps;
export const tapVolts = 12;

/** Window of the LED lamps of the catalogue. */
const window = fixtureModels.find(({ lamp }) => lamp.kind === 'led')!.lamp;
/** A lamp by its volt-amperes, in the usual window. */
export const ledLoad = (voltAmps: number): Load => loadOf({ ...window, kind: 'led', voltAmps });

/** `lamps` of `voltAmps` each at the terminals, on cable so short that it takes nothing; null without a solution. */
export const bank = (lamps: number, voltAmps: number, volts = tapVolts): Solved | null =>
	solved(
		besideNetwork(
			volts,
			Array.from({ length: lamps }, () => ledLoad(voltAmps))
		)
	);
export const voltAmpsOf = ({ loadVoltAmps }: Solved): number => loadVoltAmps.reduce((sum, one) => sum + one, 0);

/** A hair, so that just the limit is inside it whatever the rounding. */
const rounding = 1e-9;
export const limitOf = (rated: number): number => fraction * rated;
/** The most lamps of `voltAmps` each that a transformer may feed for hours, and that keep its secondary within its amperes. */
export function mostLamps(rated: number, voltAmps: number, volts = tapVolts): number {
	for (let lamps = 1; ; lamps += 1) {
		const solution = bank(lamps, voltAmps, volts);
		const isOver =
			!solution || voltAmpsOf(solution) > limitOf(rated) + rounding || solution.sourceAmps > mostAmps + rounding;
		if (isOver) return lamps - 1;
	}
}

/** Ratings that are sold, and what they may carry. */
export const ratings = transformers.map(({ voltAmps }) => voltAmps);
/**
 * What the engine's search for a transformer takes for lamps of so many volt-amperes together at its terminals, from these ratings. No room for growth, no worst case: the
 * sum that is done by hand.
 */
export function chosenFor(voltAmps: number, rated: readonly number[]): Choice {
	const nominal = rules['cable.temperature'].figures.nominal;
	const options: TransformerOption[] = transformers
		.filter(({ voltAmps }) => rated.includes(voltAmps))
		.map(({ id, voltAmps, taps, secondaries, price }) => ({ id, voltAmps, taps, secondaries, price, regulation: 0 }));
	return chooseSupply(
		[
			{
				id: 'terminals',
				nodes: 2,
				segments: [{ from: 0, to: 1, metres: 0 }],
				loads: [{ id: 'lamps', node: 1, load: ledLoad(voltAmps), alike: null }]
			}
		],
		{
			// The thickest, so that the cable never decides.
			sizes: usualSizes('mm2').slice(-1),
			pricePerMetre: () => 1,
			transformers: options,
			temperatures: { nominal, hot: nominal, cold: nominal },
			corners: { length: 0, mains: 0 },
			loadLimit: fraction,
			growth: 0,
			secondaryAmps: mostAmps
		}
	);
}
