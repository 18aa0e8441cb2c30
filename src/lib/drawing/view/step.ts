/** Round lengths in the person's units. */
import { metresPerFoot, metresPerInch } from '../../domain/shared/units';
import type { Units } from '../../domain/yard';

export interface Step {
	/** Metres. */
	metres: number;
	/** `6 in` */
	words: string;
}
const steps: Readonly<Record<Units, readonly Step[]>> = {
	feet: [
		{ metres: metresPerFoot, words: '1 ft' },
		{ metres: 6 * metresPerInch, words: '6 in' },
		{ metres: metresPerInch, words: '1 in' }
	],
	metres: [
		{ metres: 0.5, words: '0.5 m' },
		{ metres: 0.1, words: '0.1 m' },
		{ metres: 0.01, words: '10 mm' }
	]
};
/** The longest round length that is not longer on the screen than `most` px; the shortest there is where all are. */
export const stepFor = (units: Units, pxPerMetre: number, most: number): Step =>
	steps[units].find(({ metres }) => metres * pxPerMetre <= most) ?? steps[units].at(-1)!;

/** To a tenth of a millimetre, as lengths are kept: whole inches and whole centimetres come out exactly as typed ones do. */
export const kept = (metres: number): number => Math.round(metres * 1e4) / 1e4 || 0;
export const keptPoint = ({ x, y }: { x: number; y: number }): { x: number; y: number } => ({ x: kept(x), y: kept(y) });

/** The nearest whole number of steps, metres. */
export const stepped = (metres: number, step: Step): number => kept(Math.round(metres / step.metres) * step.metres);
