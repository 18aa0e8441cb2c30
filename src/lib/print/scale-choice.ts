/** Which scale the person wants the plan at: one to lay a scale rule on, or what fits one sheet. */
import type { UnitSystem } from '../domain/shared/units';
import { scales, type Scale } from './scale';

/** `fit`, or the ratio as text: `100` is 1:100. */
export type ScaleChoice = 'fit' | '50' | '100' | '200' | '48' | '96' | '192';
const ratios: Readonly<Record<UnitSystem, readonly ScaleChoice[]>> = {
	metres: ['50', '100', '200'],
	feet: ['48', '96', '192']
};
const order = (units: UnitSystem): ScaleChoice[] =>
	units === 'metres' ? [...ratios.metres, ...ratios.feet] : [...ratios.feet, ...ratios.metres];

/** The scale chosen; null where it is whatever fits. */
export const chosenScale = (choice: ScaleChoice): Scale | null =>
	[...scales.metres, ...scales.feet].find(({ ratio }) => String(ratio) === choice) ?? null;

/** All choices with their words, those of the person's own units first. */
export const scaleChoices = (units: UnitSystem): { value: ScaleChoice; label: string }[] => [
	{ value: 'fit', label: 'What fits on one sheet' },
	...order(units).map((value) => ({ value, label: chosenScale(value)!.text }))
];
/** What was kept, if it is still a choice. */
export const readChoice = (text: string | null): ScaleChoice | null =>
	(['fit', ...ratios.metres, ...ratios.feet] as const).find((choice) => choice === text) ?? null;
