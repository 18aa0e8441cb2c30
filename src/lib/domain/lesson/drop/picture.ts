/** The run drawn, and its figures in words. */
import { sizeName } from '../../circuit';
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import type { RunPicture } from '../pictures';
import { isDim, supplyVolts, type Solved } from './run';

export const voltsText = (volts: number): string => `${volts.toFixed(2)} V`;
export const lightText = (light: number): string => `${(100 * light).toFixed(0)} %`;
/** Whole or half metres, whole feet: as on a tape. */
export const lengthText = (metres: number, units: UnitSystem): string =>
	units === 'feet' ? `${Number((metres / metresPerFoot).toFixed(1))} ft` : `${Number(metres.toFixed(1))} m`;

/** Volts that are the same but for the last bits. */
const alike = 1e-9;
/** `changed` marks the lamp with the least volts; both of a run that is fed in its middle. */
export function pictureOf(run: Solved, units: UnitSystem, changed = false): RunPicture {
	const { laid, volts, light, stretches, lowest } = run;
	const fed = laid.feed === 'end' ? 'fed from its end' : 'fed in its middle';
	return {
		kind: 'run',
		alt: `${laid.lamps} ${laid.kind === 'led' ? 'LED' : 'filament'} lamps along ${sizeName(laid.size)} cable, ${fed} with ${supplyVolts} V: ${volts.map(voltsText).join(', ')}.`,
		arrangement: laid.feed === 'end' ? 'chain' : 'tee',
		supply: { text: `${supplyVolts} V` },
		lamps: volts.map((v, k) => ({
			label: `${k + 1}`,
			volts: voltsText(v),
			share: Math.min(1, light[k]!),
			state: isDim(run, k) ? 'dim' : 'fine',
			changed: changed && v - volts[lowest]! < alike
		})),
		cables: stretches.map(({ metres, amps }) => ({
			length: lengthText(metres, units),
			amps: `${amps.toFixed(1)} A`
		}))
	};
}
