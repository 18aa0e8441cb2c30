/** What an address keeps of a lesson behind its `#`: the screen, and feet or metres. Predictions are never in it. */
import type { UnitSystem } from '$lib/domain/shared/units';

export const usualUnits: UnitSystem = 'feet';
export interface Fragment {
	/** Counted from 1; null where the address names none. */
	screen: number | null;
	/** Null where the address names none. */
	units: UnitSystem | null;
}

/** Reads `#screen=3&units=feet`, with or without its `#`; whatever else it holds is left out. Never throws. */
export function readFragment(text: string, screens: number): Fragment {
	const parts = new URLSearchParams(text.replace(/^#/, ''));
	const screen = Number(parts.get('screen'));
	const units = parts.get('units');
	return {
		screen: Number.isInteger(screen) && screen >= 1 && screen <= screens ? screen : null,
		units: units === 'feet' || units === 'metres' ? units : null
	};
}

/** `#screen=3&units=feet`; the first screen is not named. An empty text where nothing is. */
export function fragmentOf({ screen, units }: Fragment): string {
	const parts = [
		...(screen !== null && screen > 1 ? [`screen=${screen}`] : []),
		...(units !== null ? [`units=${units}`] : [])
	];
	return parts.length > 0 ? `#${parts.join('&')}` : '';
}
