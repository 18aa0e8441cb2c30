import type { Fixture } from '../placement';
import type { Working } from '../shared/working';
import { sumWorking } from './sums';
import type { LampAtWork, Light } from './types';

/** Fixtures by model, in the order in which the plan first uses them. */
export function byModel<T extends { model: string }>(list: readonly T[]): T[][] {
	const groups = new Map<string, T[]>();
	for (const one of list) groups.set(one.model, [...(groups.get(one.model) ?? []), one]);
	return [...groups.values()];
}

/** Marked figures of all lamps, by model: count times what is marked on one. */
export function markedWorking(
	fixtures: readonly Fixture[],
	of: 'watts' | 'lumens',
	names: (model: string) => string
): Working {
	const unit = of === 'watts' ? 'W' : 'lm';
	const decimals = of === 'watts' ? 1 : 0;
	return sumWorking(
		byModel(fixtures).map((same) => ({
			name: `${same.length} × ${same[0]!.lamp[of]} ${unit}, ${names(same[0]!.model)}`,
			value: same.length * same[0]!.lamp[of],
			unit
		})),
		{
			label: of === 'watts' ? 'Watts of all lamps as marked' : 'Light of all lamps at rated volts',
			unit,
			decimals,
			rule: 'What is marked on each lamp, added up.',
			source: 'catalogue'
		}
	);
}

export function lightOfAll(
	fixtures: readonly Fixture[],
	lamps: readonly LampAtWork[],
	names: (model: string) => string
): Light {
	const known = lamps.flatMap(({ model, label, light, percent }) =>
		light && percent ? [{ model, label, light, percent }] : []
	);
	const ordered = known.toSorted((a, b) => a.percent.value - b.percent.value);
	const rest = { unit: 'lm', decimals: 0, source: 'physics' };
	const [lowest, highest] = [ordered[0] ?? null, ordered.at(-1) ?? null];
	return {
		rated: markedWorking(fixtures, 'lumens', names),
		real:
			known.length === 0
				? null
				: sumWorking(
						byModel(known).map((same) => {
							const from = sumWorking(
								same.map(({ label, light }) => ({ name: label, value: light.value, unit: 'lm', from: light })),
								{ ...rest, label: names(same[0]!.model), rule: 'The light of each lamp of this kind, added up.' }
							);
							return { name: from.label, value: from.value, unit: 'lm', from };
						}),
						{
							...rest,
							label: 'Light at the volts each lamp gets',
							rule: 'The light of each lamp at its own volts, added up.'
						}
					),
		lowest: lowest && { label: lowest.label, percent: lowest.percent },
		highest: highest && { label: highest.label, percent: highest.percent },
		unknown: lamps.filter(({ light }) => light === null).map(({ label }) => label)
	};
}
