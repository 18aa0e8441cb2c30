/**
 * A lamp at the volts it gets. Filament lamps by Fink & Beaty's exponents (rule lamp.halogen), within about a tenth of rated
 * volts and no further; LED lamps by their marking, inside their window and no further.
 */
import { filament } from '../circuit';
import type { Fixture } from '../placement';
import type { Lamp } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Working } from '../shared/working';
import { holdsWithin, ratedLife, years } from './figures';
import { rounded } from './sums';
import type { LampAtWork, WorkingRange } from './types';

const exponents = rules['lamp.halogen'].figures;
/** Rounding of the solver must not put a lamp that stands on the edge of its window outside. */
const nearly = 1e-6;

/** Are light and life known at these volts? */
export const isKnown = (lamp: Lamp, volts: number): boolean =>
	lamp.kind === 'halogen'
		? Math.abs(volts / lamp.ratedVolts - 1) <= holdsWithin
		: volts >= lamp.minVolts - nearly && volts <= lamp.maxVolts + nearly;

function lightOf(lamp: Lamp, label: string, volts: number): Working {
	const marked = { symbol: 'M', name: 'marked lumens', value: lamp.lumens, unit: 'lm' };
	const base = { label: `Light of ${label}`, unit: 'lm', decimals: 0 };
	if (lamp.kind === 'led')
		return {
			...base,
			value: rounded(lamp.lumens, 0),
			rule: 'Inside its window an LED lamp gives its marked light, whatever the volts.',
			expression: 'M',
			inputs: [marked],
			source: 'catalogue'
		};
	return {
		...base,
		value: rounded(lamp.lumens * filament(volts / lamp.ratedVolts).light, 0),
		rule: 'The light of a filament goes with the volts to the power 3.4, within about a tenth of rated volts.',
		expression: 'M × ( V ÷ R ) ^ p',
		inputs: [
			marked,
			{ symbol: 'V', name: `volts at ${label}`, value: volts, unit: 'V' },
			{ symbol: 'R', name: 'rated volts', value: lamp.ratedVolts, unit: 'V' },
			{ symbol: 'p', name: 'exponent of light', value: exponents.light, unit: '' }
		],
		source: 'finkBeaty'
	};
}
/** Per cent of the marked light, from the law itself: whole lumens of a small lamp would be too coarse. */
function percentOf(lamp: Lamp, label: string, volts: number): Working {
	const base = { label: `Light of ${label} against its marking`, unit: '%', decimals: 0 };
	if (lamp.kind === 'led')
		return {
			...base,
			value: 100,
			rule: 'Inside its window an LED lamp gives its marked light, whatever the volts.',
			expression: '100',
			inputs: [],
			source: 'catalogue'
		};
	return {
		...base,
		value: rounded(100 * filament(volts / lamp.ratedVolts).light, 0),
		rule: 'The light of a filament goes with the volts to the power 3.4, within about a tenth of rated volts.',
		expression: '100 × ( V ÷ R ) ^ p',
		inputs: [
			{ symbol: 'V', name: `volts at ${label}`, value: volts, unit: 'V' },
			{ symbol: 'R', name: 'rated volts', value: lamp.ratedVolts, unit: 'V' },
			{ symbol: 'p', name: 'exponent of light', value: exponents.light, unit: '' }
		],
		source: 'finkBeaty'
	};
}
function lifeOf(lamp: Lamp, label: string, volts: number, exponent: number): Working {
	const taken = ratedLife[lamp.kind].taken;
	const rated = {
		symbol: 'L',
		name: `life at rated volts, ${lamp.kind === 'led' ? 'or more' : `${ratedLife.halogen.low} to ${ratedLife.halogen.high} in the trade`}; from memory, check`,
		value: taken,
		unit: 'h'
	};
	const base = { label: `Life of ${label}`, unit: 'h', decimals: 0 };
	if (lamp.kind === 'led')
		return {
			...base,
			value: taken,
			rule: 'Inside its window an LED lamp is taken to last as long as LED lamps for gardens are often marked.',
			expression: 'L',
			inputs: [rated],
			source: 'memory'
		};
	return {
		...base,
		value: rounded(taken * (volts / lamp.ratedVolts) ** exponent, 0),
		rule: 'The life of a filament goes with the volts to a power from −12 to −16, within about a tenth of rated volts. The life at rated volts is from memory: check the box.',
		expression: 'L × ( V ÷ R ) ^ x',
		inputs: [
			rated,
			{ symbol: 'V', name: `volts at ${label}`, value: volts, unit: 'V' },
			{ symbol: 'R', name: 'rated volts', value: lamp.ratedVolts, unit: 'V' },
			{ symbol: 'x', name: 'exponent of life', value: exponent, unit: '' }
		],
		source: 'finkBeaty'
	};
}
function livesOf(label: string, life: Working, hours: Working): Working {
	return {
		label: `Lives of ${label} used up in ${years} years`,
		value: rounded((years * hours.value) / life.value, 2),
		unit: '',
		decimals: 2,
		rule: 'Hours of light over the life of one lamp. Each whole one is a lamp replaced; the last is still burning.',
		expression: 'n × H ÷ L',
		inputs: [
			{ symbol: 'n', name: 'years', value: years, unit: '' },
			{ symbol: 'H', name: 'hours of light in a year', value: hours.value, unit: 'h', from: hours },
			{ symbol: 'L', name: `life of ${label}`, value: life.value, unit: 'h', from: life }
		],
		source: 'physics'
	};
}

/** The lamp of a fixture at `volts` (null: it gets none that are known), in a year of so many hours of light. */
export function lampAtWork(fixture: Fixture, volts: number | null, hours: Working): LampAtWork {
	const { id, label, model, lamp } = fixture;
	const base = { fixture: id, label, model, volts };
	if (volts === null || !isKnown(lamp, volts)) return { ...base, light: null, percent: null, life: null, lives: null };
	const ends = [exponents.lifeLow, exponents.lifeHigh]
		.map((exponent) => lifeOf(lamp, label, volts, exponent))
		.toSorted((a, b) => a.value - b.value);
	const life: WorkingRange = { low: ends[0]!, high: ends[1]! };
	return {
		...base,
		light: lightOf(lamp, label, volts),
		percent: percentOf(lamp, label, volts),
		life,
		// the longer life uses up the fewer lamps
		lives: { low: livesOf(label, life.high, hours), high: livesOf(label, life.low, hours) }
	};
}

/** Whole lamps used up by the end of a year, out of the lives used up over all of them. */
export const wholeLamps = (lives: Working, year: number = years): number =>
	Math.floor(rounded((lives.value * year) / years, 6));
