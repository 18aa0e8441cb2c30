/** Inside: metres, degrees. Feet and inches are read on the way in and written on the way out. */

export type UnitSystem = 'feet' | 'metres';
export const metresPerFoot = 0.3048;
export const metresPerInch = 0.0254;

const minus = '−';
const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** A size in feet and inches, to the nearest 1/`parts` inch. `metres` is not negative. */
function feetAndInches(metres: number, parts: number): string {
	const total = Math.round((metres / metresPerInch) * parts);
	const feet = Math.floor(total / (12 * parts));
	const rest = total - feet * 12 * parts;
	const whole = Math.floor(rest / parts);
	const over = rest - whole * parts;
	const shared = divisor(parts, over);
	const fraction = over === 0 ? '' : `${over / shared}/${parts / shared}`;
	const inches = [whole === 0 && fraction ? '' : String(whole), fraction].filter(Boolean).join(' ');
	if (feet === 0) return `${inches} in`;
	return rest === 0 ? `${feet} ft` : `${feet} ft ${inches} in`;
}
const signed = (metres: number, size: string) => (metres < 0 && /[1-9]/.test(size) ? minus + size : size);

/**
 * A length as read back to a person. Feet to the nearest half inch (`19 ft 8 in`), below one foot in inches; metres
 * to the centimetre, below 1 m in millimetres.
 */
export function formatLength(metres: number, units: UnitSystem): string {
	if (!Number.isFinite(metres)) return 'unknown';
	const size = Math.abs(metres);
	if (units === 'feet') return signed(metres, feetAndInches(size, 2));
	const mm = Math.round(size * 1000);
	return signed(metres, mm < 1000 ? `${mm} mm` : `${size.toFixed(2)} m`);
}

/** A length as it was typed, without rounding away what the person wrote: sixteenths of an inch, or millimetres. */
export function formatLengthFinely(metres: number, units: UnitSystem): string {
	if (!Number.isFinite(metres)) return 'unknown';
	const size = Math.abs(metres);
	if (units === 'feet') return signed(metres, feetAndInches(size, 16));
	const mm = Math.round(size * 1000);
	return signed(metres, mm < 1000 ? `${mm} mm` : `${size.toFixed(mm % 10 === 0 ? 2 : 3)} m`);
}
