/** What the terms of a text say: one length, or the several that they may mean. */
import { inMetres, isFeet, number, systemOf, termsOf, unit, valueOf, type Term, type Unit } from './read-length-terms';
import { formatLength, formatLengthFinely, metresPerFoot, metresPerInch, type UnitSystem } from './units';

/** `1,250` is a thousand and more to some, one and a quarter to others; so is `1.250 mm`. */
const isThousandsOrDecimals = ({ text, unit }: Term) =>
	/^[1-9]\d{0,2},\d{3}$/.test(text) || (unit === 'mm' && /^[1-9]\d{0,2}\.\d{3}$/.test(text));

/** Metres, where the terms say one thing only; else the readings they may have, written out. */
export function meaningOf(terms: readonly Term[], units: UnitSystem): number | string[] {
	const [first, second, third] = terms;
	if (!first || third) return [];
	const home: Unit = units === 'feet' ? 'ft' : 'm';
	if (terms.some((one) => !Number.isFinite(one.value))) return [];
	const torn = terms.find(isThousandsOrDecimals);
	if (torn) {
		const own = torn.unit ?? home;
		const readings = [
			`${torn.text.replace(/[.,]/, '.').replace(/0+$/, '').replace(/\.$/, '')} ${own}`,
			`${torn.text.replace(/[.,]/, '')} ${own}`
		];
		return units === 'metres' && !torn.unit ? [...readings, `${torn.text.replace(/[.,]/, '')} mm`] : readings;
	}
	if (!second) return first.value * inMetres[first.unit ?? home];
	if (!first.unit) return second.unit ? [] : twoBareNumbers(first, second, units);
	if (first.unit === 'ft') return feetThenInches(first, second);
	if (first.unit === 'in' && second.unit === 'ft') return [`${second.text} ft ${first.text} in`];
	if (first.unit === 'm' && second.unit === null)
		return [`${first.text}.${second.text} m`, `${first.text} m ${second.text} cm`];
	if (first.unit === 'm' && (second.unit === 'cm' || second.unit === 'mm')) {
		const rest = second.value * inMetres[second.unit];
		const metres = first.value + rest;
		return Number.isInteger(first.value) && rest < 1 ? metres : [`${Number(metres.toFixed(4))} m`];
	}
	const mixed = second.unit !== null && isFeet(first.unit) !== isFeet(second.unit);
	return mixed ? [`${first.text} ${first.unit}`, `${second.text} ${second.unit}`] : [];
}
function feetThenInches(feet: Term, inches: Term): number | string[] {
	if (inches.unit === 'ft') return [`${feet.text} ft ${inches.text} in`];
	if (inches.unit !== 'in' && inches.unit !== null) return [`${feet.text} ft`, `${inches.text} ${inches.unit}`];
	const metres = feet.value * metresPerFoot + inches.value * metresPerInch;
	if (!Number.isInteger(feet.value))
		return [`${Math.floor(feet.value)} ft ${inches.text} in`, formatLength(metres, 'feet')];
	if (/^0\d|^\d{3}/.test(inches.text)) return [`${feet.text} ft`, `${feet.text}${inches.text} mm`];
	if (inches.value >= 12) return [formatLength(metres, 'feet'), `${feet.text} ft ${inches.text.slice(0, 1)} in`];
	return metres;
}
function twoBareNumbers(first: Term, second: Term, units: UnitSystem): string[] {
	const joined = /^\d{3}$/.test(second.text) ? [`${first.text}${second.text} mm`] : [];
	const inches = second.value < 12 ? [`${first.text} ft ${second.text} in`] : [];
	const decimal = /^\d+$/.test(first.text + second.text)
		? [`${first.text}.${second.text} ${units === 'feet' ? 'ft' : 'm'}`]
		: [];
	return units === 'feet' ? [...inches, ...decimal] : [...joined, ...decimal, ...inches];
}

/** Readings for text that is not a length as a whole: what in it is one. */
export function salvage(text: string, units: UnitSystem): string[] {
	const yards = new RegExp(String.raw`^(${number})\s*(?:yd|yards?)\b\.?$`).exec(text);
	if (yards?.[1]) return [`${Number((valueOf(yards[1]) * 3).toFixed(3))} ft`];
	const home = units === 'feet' ? 'ft' : 'm';
	const dots = /^(\d+)[.,](\d+)[.,](\d+)\s*(m|ft|cm|mm)?$/.exec(text);
	if (dots) return [`${dots[1]}.${dots[2]} ${dots[4] ?? home}`, `${dots[1]}.${dots[2]}${dots[3]} ${dots[4] ?? home}`];
	const grouped = new RegExp(String.raw`^(\d{1,3}) (\d{3})\s*(${unit})?$`).exec(text);
	if (grouped) return [`${grouped[1]}${grouped[2]} ${grouped[3] ?? 'mm'}`];
	const inside = new RegExp(String.raw`${number}\s*${unit}(?:\s*${number}\s*${unit})?`).exec(text)?.[0]?.trim();
	const bare = inside ?? new RegExp(`^[^\\d]*(${number})[^\\d]*$`).exec(text)?.[1];
	if (!bare) return [];
	const terms = termsOf(bare);
	const meaning = terms ? meaningOf(terms, units) : [];
	const typed = systemOf(terms ?? [], units);
	return typeof meaning === 'number' ? [formatLengthFinely(meaning, typed)] : meaning;
}
