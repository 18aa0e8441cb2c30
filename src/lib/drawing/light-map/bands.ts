/** The steps of the false colour, and light in words: lux with footcandles beside. */
import { metresPerFoot } from '../../domain/shared/units';

/** Lux at which one colour ends and the next begins; a line is drawn at each. */
export const lightSteps = [0.2, 0.5, 1, 2, 5, 10, 20, 50] as const;
/** A footcandle is a lumen on a square foot: 10.76391 lx, from the exact foot. */
export const luxPerFootcandle = 1 / metresPerFoot ** 2;

/** Two figures that count, no more than `decimals` of them after the point. */
function figure(value: number, decimals: number): string {
	if (value >= 9.95) return Math.round(value).toString();
	if (value >= 0.995) return value.toFixed(Math.min(1, decimals));
	return value.toFixed(Math.min(decimals, value >= 0.0995 ? 2 : 3));
}
/** `3.2 lx`, `0.25 lx`, `under 0.01 lx`. */
export function luxWords(lux: number): string {
	if (!(lux >= 0)) return 'not known';
	return lux < 0.005 ? 'under 0.01 lx' : `${figure(lux, 2)} lx`;
}
/** The same in footcandles: `0.30 fc`. `lux` is lux. */
export function footcandleWords(lux: number): string {
	if (!(lux >= 0)) return 'not known';
	const value = lux / luxPerFootcandle;
	return value < 0.0005 ? 'under 0.001 fc' : `${figure(value, 3)} fc`;
}
/** `3.2 lx (0.30 fc)`. */
export const lightWords = (lux: number): string =>
	lux < 0.005 ? 'no light to speak of' : `${luxWords(lux)} (${footcandleWords(lux)})`;
