/** One figure of a plan, as it is shown. */
import { fixed } from '../../shared/show-working';
import type { Working } from '../../shared/working';
import type { PlanFigure } from './types';

type Head = Pick<Working, 'label' | 'unit' | 'decimals'>;

export const shownAs = (value: number, { unit, decimals }: Pick<Head, 'unit' | 'decimals'>): string =>
	unit ? `${fixed(value, decimals)} ${unit}` : fixed(value, decimals);

/** A figure whose working is at hand. */
export const given = (key: string, place: string, working: Working): PlanFigure => ({
	key,
	place,
	label: working.label,
	value: working.value,
	unit: working.unit,
	decimals: working.decimals,
	text: shownAs(working.value, working),
	working: () => working
});
/**
 * A figure whose working is made later. `value` is what the plan holds; `make` gives null only where the plan has no such figure,
 * which whoever calls has made sure of.
 */
export const later = (
	key: string,
	place: string,
	value: number,
	head: Head,
	make: () => Working | null
): PlanFigure => ({
	key,
	place,
	...head,
	value,
	text: shownAs(value, head),
	working() {
		const working = make();
		if (!working) throw new Error(`The figure ${key} has no working`);
		return working;
	}
});
