/** The comparison of places for the transformer, in words. */
import type { SpotFigures } from '$lib/domain/compare';
import type { Advice } from '$lib/domain/shared/findings';
import { formatLength, type UnitSystem } from '$lib/domain/shared/units';
import { capital, costWords } from '../advice';

/** Below this, in the currency's units, two places cost the same. */
export const same = 1;
const isSame = (difference: number): boolean => Math.abs(difference) < same;

/** As it is called on the small plan and in the list: `yours`, `plan’s`, `3`. */
export const markOf = ({ id }: SpotFigures): string =>
	id === 'yours' ? 'yours' : id === 'plan' ? 'plan’s' : id.replace('spot-', '');

/** What a place costs beside the one compared with; nothing for that one itself. */
export function differenceWords(spot: SpotFigures, first: SpotFigures, currency: string): string {
	if (spot === first) return spot.kind === 'yours' ? 'where you want it' : 'where the plan hangs it';
	return isSame(spot.difference) ? 'the same cost' : costWords(spot.difference, currency);
}

/** Length of trench and cable, crossings, and the lamp that gets least. */
export function figureWords(spot: SpotFigures, units: UnitSystem): string[] {
	return [
		`${formatLength(spot.trench, units)} of trench`,
		`${formatLength(spot.cable, units)} of cable`,
		spot.crossings === 0 ? 'no crossing' : `${spot.crossings} ${spot.crossings === 1 ? 'crossing' : 'crossings'}`,
		spot.lowestVolts === null ? 'volts not known' : `${spot.lowestVolts.toFixed(2)} V at the lamp that gets least`
	];
}

/** The person's own place beside the plan's; or, where they leave it to the plan, how that stands among the others. */
export function headlineOf(spots: readonly SpotFigures[], currency: string): string {
	const [first] = spots;
	const plan = spots.find(({ kind }) => kind === 'plan');
	if (!first) return '';
	if (first.kind === 'yours') {
		if (!plan) return 'The plan has no place of its own to set beside yours.';
		if (isSame(plan.difference)) return 'Your place costs the same as the one the plan would choose.';
		return `Your place costs ${costWords(-plan.difference, currency)} than the one the plan would choose.`;
	}
	const cheaper = spots.find(({ kind, difference }) => kind === 'reach' && difference <= -same);
	if (cheaper)
		return `Laid out in full, number ${markOf(cheaper)} comes to ${costWords(cheaper.difference, currency)} than the plan’s own place.`;
	return 'Nothing within the cord’s reach comes cheaper than the place the plan chose.';
}

/** One change of answers, that one undo takes back. */
export const changeTo = (spot: SpotFigures): Advice => ({
	id: spot.id,
	kind: 'transformer',
	label: spot.kind === 'plan' ? 'the transformer where the plan hangs it' : `the transformer on ${spot.where}`,
	gives: spot.why,
	cost: spot.difference,
	changes: [{ path: 'power.transformer', value: spot.answer }]
});
/** Its place as the title of an entry. */
export const titleOf = ({ where }: SpotFigures): string => capital(where);
