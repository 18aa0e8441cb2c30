/**
 * What a load draws at the volts it gets.
 *
 * LED: constant volt-amperes, I = S/V, and constant light inside its window (rule lamp.led). Below the window it is off or
 * unknown: a real lamp may dim, flicker or stay dark there, and draws what its driver pleases. The law is kept at S/V, so that the
 * answer errs on the side of too much current, and `lampAt` says that the light is not known. Volt-amperes of LED and filament lamps are added as if in phase,
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

/** Least that a load can draw, volt-amperes: all but LED lamps take less below their rated volts. */
export const leastVoltAmps = (load: Load): number => markedVoltAmps(load) * (load.kind === 'led' ? 1 : 0.7);

/** Of a filament lamp, each as a fraction of its value at rated volts. */
export interface Filament {
	light: number;
	power: number;
	current: number;
	lifeLow: number;
	lifeHigh: number;
}
/** Filament lamp at `fraction` of its rated volts. The exponents are published for about ±10 %. */
export function filament(fraction: number): Filament {
	const lives = [fraction ** halogen.lifeLow, fraction ** halogen.lifeHigh];
	return {
		light: fraction ** halogen.light,
		power: fraction ** halogen.power,
		current: fraction ** halogen.current,
		lifeLow: Math.min(...lives),
		lifeHigh: Math.max(...lives)
	};
}

/** Fraction of rated volts to either side for which the exponents are published (rule lamp.halogen: about a tenth). */
const publishedWithin = 0.1;

/** What is known of a lamp at the volts it gets. */
export interface LampAt {
	/** Against its own volts. A plain resistance is always right. */
	state: 'right' | 'low' | 'high';
	/** Fraction of rated light; null where it is not known: an LED outside its window, a plain resistance. */
	light: number | null;
	/** Halogen only. */
	filament: Filament | null;
	/** True for a halogen further from its rated volts than the exponents are published for: the figures are then a guess. */
	isBeyondPublished: boolean;
}
/** `volts` > 0. */
export function lampAt(load: Load, volts: number): LampAt {
	const within = window(load);
	const state = !within ? 'right' : volts < within.min ? 'low' : volts > within.max ? 'high' : 'right';
	if (load.kind !== 'halogen') {
		const light = load.kind === 'led' && state === 'right' ? 1 : null;
		return { state, light, filament: null, isBeyondPublished: false };
	}
	const fraction = volts / load.ratedVolts;
	const figures = filament(fraction);
	// A hair wider, so that exactly a tenth is inside whatever the rounding.
	const isBeyondPublished = Math.abs(fraction - 1) > publishedWithin + 1e-9;
	return { state, light: figures.light, filament: figures, isBeyondPublished };
}

/** A load as it is where volts are divided by `tap` and amperes multiplied by it (`transformer.ts`). */
export function perUnit(load: Load, tap: number): Load {
	// Written out key by key: objects of one make are what the solver reads fastest.
	switch (load.kind) {
		case 'led':
			return {
				kind: 'led',
				voltAmps: load.voltAmps,
				minVolts: load.minVolts / tap,
				maxVolts: load.maxVolts / tap
			};
		case 'halogen':
			return {
				kind: 'halogen',
				watts: load.watts,
				ratedVolts: load.ratedVolts / tap,
				minVolts: load.minVolts / tap,
				maxVolts: load.maxVolts / tap
			};
		case 'resistance':
			return { kind: 'resistance', ohms: load.ohms / tap ** 2 };
	}
}

const isPositive = (value: number): boolean => value > 0 && value < Infinity;
const isFromZero = (value: number): boolean => value >= 0 && value < Infinity;
const windowFault = (minVolts: number, maxVolts: number): string | null =>
	isPositive(maxVolts) && minVolts >= 0 && minVolts <= maxVolts ? null : 'it has no window of volts';

/** What is wrong with a load, or null. */
export function loadFault(load: Load): string | null {
	if (load.kind !== 'led') return otherFault(load);
	if (!isFromZero(load.voltAmps)) return 'its volt-amperes are not a number from zero up';
	return windowFault(load.minVolts, load.maxVolts);
}
function otherFault(load: Exclude<Load, { kind: 'led' }>): string | null {
	if (load.kind === 'resistance') return isPositive(load.ohms) ? null : 'its ohms are not above zero';
	if (!isFromZero(load.watts)) return 'its watts are not a number from zero up';
	if (!isPositive(load.ratedVolts)) return 'it has no rated volts';
	return windowFault(load.minVolts, load.maxVolts);
}
