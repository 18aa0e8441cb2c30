/**
 * What a load draws at the volts it gets.
 *
 * LED: constant volt-amperes, I = S/V. Below its window a real lamp goes dim or dark and draws what its driver
 * pleases; the law is kept at S/V there, so that the answer errs on the side of too much current, and whoever reads
 * the solution compares the volts with `window`. Volt-amperes of LED and filament lamps are added as if in phase,
 * which overstates the drop and never understates it.
 *
 * Halogen: I = (W/Vr) (V/Vr)^0.55 (rule lamp.halogen, Fink & Beaty). Light, power and life have exponents of their
 * own; they do not close exactly, so none is derived from another.
 */
import { rules } from '../shared/rules';
import type { Load } from './types';

const halogen = rules['lamp.halogen'].figures;

/** Amperes drawn at `volts` > 0. */
export function loadAmps(load: Load, volts: number): number {
	switch (load.kind) {
		case 'led':
			return load.voltAmps / volts;
		case 'halogen':
			return (load.watts / load.ratedVolts) * (volts / load.ratedVolts) ** halogen.current;
		case 'resistance':
			return volts / load.ohms;
	}
}

/** Volts between which a lamp works as meant; null for a plain resistance. */
export const window = (load: Load): { min: number; max: number } | null =>
	load.kind === 'resistance' ? null : { min: load.minVolts, max: load.maxVolts };

/** Volt-amperes as marked, at rated volts; a resistance is taken at 12 V. */
export function markedVoltAmps(load: Load): number {
	switch (load.kind) {
		case 'led':
			return load.voltAmps;
		case 'halogen':
			return load.watts;
		case 'resistance':
			return 144 / load.ohms;
	}
}

/** Filament lamp at `fraction` of its rated volts, each as a fraction of the rated value; good within about ±10 %. */
export function filament(fraction: number): {
	light: number;
	power: number;
	current: number;
	lifeLow: number;
	lifeHigh: number;
} {
	const lives = [fraction ** halogen.lifeLow, fraction ** halogen.lifeHigh];
	return {
		light: fraction ** halogen.light,
		power: fraction ** halogen.power,
		current: fraction ** halogen.current,
		lifeLow: Math.min(...lives),
		lifeHigh: Math.max(...lives)
	};
}

const positive = (value: number): boolean => Number.isFinite(value) && value > 0;

/** What is wrong with a load, or null. */
export function loadFault(load: Load): string | null {
	if (load.kind === 'resistance') return positive(load.ohms) ? null : 'its ohms are not above zero';
	if (load.kind === 'led' && !(Number.isFinite(load.voltAmps) && load.voltAmps >= 0))
		return 'its volt-amperes are not a number from zero up';
	if (load.kind === 'halogen' && !(Number.isFinite(load.watts) && load.watts >= 0))
		return 'its watts are not a number from zero up';
	if (load.kind === 'halogen' && !positive(load.ratedVolts)) return 'it has no rated volts';
	if (!(positive(load.maxVolts) && load.minVolts >= 0 && load.minVolts <= load.maxVolts))
		return 'it has no window of volts';
	return null;
}
