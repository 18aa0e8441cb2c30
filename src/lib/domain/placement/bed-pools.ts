/** The pool of light under a low shaded head, and how far apart two of them meet: rule bed.spacing. Metres, lux. */
import type { Lamp } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Working } from '../shared/working';
import { pathHead } from '../photometry';
import type { Level } from '../yard';
import { input } from './reasons';

export type Lit = Exclude<Level, 'none'>;
/** Lux on the ground to which a pool is counted. */
export const poolEdge = (level: Lit): number => rules['bed.spacing'].figures[level];

/**
 * Metres from the foot of a head to where its light on level ground has fallen to `lux`, bare ground taken: 0 where even the
 * foot has less. From E = I·cosⁿγ·cosγ ÷ d² with cosγ = h ÷ d: d^(n + 3) = I·h^(n + 1) ÷ E. The rim of the shade ends it.
 */
export function poolReach(lamp: Pick<Lamp, 'lumens' | 'beamAngle'>, height: number, lux: number): number {
	const { centre, n, cosCut } = pathHead(lamp.lumens, lamp.beamAngle);
	const square = ((centre * height ** (n + 1)) / lux) ** (2 / (n + 3)) - height ** 2;
	const rim = height * Math.sqrt(1 / cosCut ** 2 - 1);
	return Math.min(rim, Math.sqrt(Math.max(0, square)));
}

/** How far apart two heads stand whose pools meet, shown. */
export function spacingWorking(lamp: Lamp, height: number, level: Lit): Working {
	const { centre, n } = pathHead(lamp.lumens, lamp.beamAngle);
	return {
		label: 'Lights in the bed apart, at most',
		value: 2 * poolReach(lamp, height, poolEdge(level)),
		unit: 'm',
		decimals: 2,
		rule: rules['bed.spacing'].says,
		expression: '2 × ((I × h ^ (n + 1) ÷ E) ^ (2 ÷ (n + 3)) − h ^ 2) ^ 0.5',
		inputs: [
			input('I', 'light straight down', centre, 'cd'),
			input('h', 'height of the lamp', height, 'm'),
			input('n', 'exponent of its beam', n, ''),
			input('E', 'light at the edge of a pool', poolEdge(level), 'lx')
		],
		source: 'physics'
	};
}
