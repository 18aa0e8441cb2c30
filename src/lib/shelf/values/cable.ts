/** Sizes and lengths of cable as lists write them. */
import { tidy } from '../../domain/shared/read-tidy';
import { formatLength, metresPerFoot, metresPerInch, type UnitSystem } from '../../domain/shared/units';
import type { CableSize } from '../../domain/circuit';
import { plainNumber } from './number';
import { quoted, refused, taken, type ReadValue } from './types';

/** Gauges and cross-sections that are sold as garden cable, with some room (common practice, no source). */
const gauges = { min: 6, max: 18 };
const areas = { min: 0.5, max: 16 };
const sizeHelp = 'Write it like 16 AWG or 2.5 mm².';

function sized(system: CableSize['system'], size: number, text: string): ReadValue<CableSize> {
	const range = system === 'awg' ? gauges : areas;
	const isOdd = system === 'awg' && !Number.isInteger(size);
	if (isOdd || size < range.min || size > range.max)
		return refused(`${quoted(text)} is no size of garden cable. ${sizeHelp}`);
	return taken({ system, size });
}
/**
 * `16 AWG`, `16/2`, `16-2`, `16 ga`, `2.5 mm²`, `2 x 2.5`. A number alone goes by the column's own unit; without one, by the one system that
 * has it; 6, 10 and 16 are in both and are refused.
 */
export function readSize(text: string, unit: CableSize['system'] | null): ReadValue<CableSize> {
	const clean = tidy(text)
		.replace(/squared/g, '2')
		.replace(/\bsq\.? ?mm\b/g, 'mm2')
		.replace(/mm 2\b/g, 'mm2');
	const awg =
		/^(?:awg|ga(?:uge)?|#)?\s*#?\s*(\d{1,2})\s*(?:awg|ga(?:uge)?\.?)?(?:\s*[/-]\s*2(?:\s*(?:awg|ga(?:uge)?))?)?$/.exec(
			clean
		);
	const hasAwg = /awg|ga|#|\d\s*[/-]\s*2\b/.test(clean);
	if (awg && hasAwg) return sized('awg', Number(awg[1]), text);
	const area = /^(?:2\s*[x×*]\s*|2g\s*)?([\d.,]+)\s*(?:mm2?)?$/.exec(clean);
	const size = area ? (plainNumber(area[1] ?? '')?.value ?? Number.NaN) : Number.NaN;
	if (Number.isNaN(size)) return refused(`${quoted(text)} is no size of cable. ${sizeHelp}`);
	if (/mm|[x×*]|g/.test(clean)) return sized('mm2', size, text);
	if (unit) return sized(unit, size, text);
	if ([6, 10, 16].includes(size))
		return refused(`${quoted(text)} can be AWG or mm². Write ${size} AWG or ${size} mm².`);
	return sized(size >= 8 && Number.isInteger(size) ? 'awg' : 'mm2', size, text);
}

/** Metres, to the tenth of a micrometre: what feet leave in the sixteenth decimal is dust. */
const exact = (metres: number) => Number(metres.toFixed(7));
const lengths = { min: 0.3, max: 2000 };

/** `50 ft`, `50'`, `15 m`, `15,5 m`, `600 in`. A number alone is in `units`; null: in none that is known, refused. */
export function readCableLength(text: string, units: UnitSystem | null): ReadValue<number> {
	const clean = tidy(text);
	const [, digits = '', word = ''] =
		/^([\d.,' ]*\d)\s*(ft|feet|foot|'|m|mtrs?|metres?|meters?|in|inch|inches|")?\.?$/.exec(clean) ?? [];
	const plain = plainNumber(digits.trim());
	if (!plain) return refused(`${quoted(text)} is not a length. Write it like 50 ft or 15 m.`);
	if (plain.torn === 'comma')
		return refused(`${quoted(text)} can mean ${plain.value} or ${plain.value / 1000}. Write one of them.`);
	const scale = /^(?:ft|feet|foot|')$/.test(word) ? metresPerFoot : /^i|"/.test(word) ? metresPerInch : 1;
	if (!word && !units) return refused(`${quoted(text)} has no unit. Write ${plain.value} ft or ${plain.value} m.`);
	const metres = exact(plain.value * (word ? scale : units === 'feet' ? metresPerFoot : 1));
	if (metres < lengths.min || metres > lengths.max)
		return refused(
			`${quoted(text)} is no usual length of cable: ${formatLength(lengths.min, units ?? 'metres')} to ${formatLength(lengths.max, units ?? 'metres')}.`
		);
	return taken(metres);
}
/** A length as it is written into a file, in feet where it is whole feet; read back it is the same number. */
export function lengthText(metres: number): string {
	const feet = Number((metres / metresPerFoot).toFixed(4));
	return Number.isInteger(feet) && exact(feet * metresPerFoot) === metres ? `${feet} ft` : `${metres} m`;
}
/** The unit in a heading: `Length (ft)`, `AWG`. */
export function unitOfHeader(header: string): { length: UnitSystem | null; size: CableSize['system'] | null } {
	const clean = tidy(header);
	const has = (pattern: RegExp) => pattern.test(clean);
	const length = has(/\b(?:ft|feet|foot)\b/) ? 'feet' : has(/\b(?:m|mtrs?|metres?|meters?)\b/) ? 'metres' : null;
	const size = has(/\b(?:awg|gauge|ga)\b/) ? 'awg' : has(/\bmm|sq\.? ?mm/) ? 'mm2' : null;
	return { length, size };
}
