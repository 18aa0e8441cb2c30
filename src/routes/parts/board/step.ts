/** How far one press of a key moves what is in hand, metres. */
import { metresPerFoot, metresPerInch } from '$lib/domain/shared/units';
import type { Units } from '$lib/domain/yard';

export interface Steps {
	usual: number;
	/** With Shift. */
	fine: number;
	/** Page up, page down, Home, End. */
	coarse: number;
	words: { usual: string; fine: string; coarse: string };
}
const feet: Steps = {
	usual: 6 * metresPerInch,
	fine: metresPerInch,
	coarse: 10 * metresPerFoot,
	words: { usual: '6 in', fine: '1 in', coarse: '10 ft' }
};
const metres: Steps = {
	usual: 0.1,
	fine: 0.01,
	coarse: 2,
	words: { usual: '100 mm', fine: '10 mm', coarse: '2 m' }
};
export const stepsOf = (units: Units): Steps => (units === 'feet' ? feet : metres);

/** A tenth of a millimetre: what a tape, a tap or a step can mean, without the dust of arithmetic. */
export const tidy = (length: number): number => Math.round(length * 1e4) / 1e4 + 0;
/** To the nearest whole step, so that the keys then meet round lengths. */
export const onStep = (length: number, step: number): number => tidy(Math.round(length / step) * step);
