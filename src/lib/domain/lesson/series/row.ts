/** The lesson's lamps, worked out both ways by the engine, and their pictures. */
import { filament, lampAt, type Load } from '../../circuit';
import type { RunPicture } from '../pictures';
import { besideNetwork, filamentLamp, hotOhms, loop, loopNetwork, sure } from './network';

/** What the class has on the table: lamps of 20 W for 12 V on a 12 V supply. */
export const supplyVolts = 12;
export const watts = 20;
const lamp: Load = filamentLamp(watts, supplyVolts);
export const ohms = hotOhms(watts, supplyVolts);

export interface Row {
	lamps: number;
	/** In one loop: volts a lamp, amperes through all, part of a lamp's light. */
	loop: { volts: number; amps: number; light: number };
	/** Side by side: volts a lamp, amperes of all. */
	beside: { volts: number; amps: number; light: number };
	/** With one lamp taken out, amperes of those that are left. */
	without: { loop: number; beside: number };
	/** Whether the light in the loop is further down than the handbook's law is published for. */
	isGuess: boolean;
}
/** The same lamps both ways. */
export function rowOf(lamps: number): Row {
	const all = Array.from({ length: lamps }, () => lamp);
	const beside = sure(besideNetwork(supplyVolts, all));
	const resistances = all.map(() => ohms);
	const inLoop = loop(supplyVolts, resistances)!;
	const volts = inLoop.volts[0]!;
	const at = lampAt(lamp, volts);
	return {
		lamps,
		loop: { volts, amps: inLoop.amps, light: filament(volts / supplyVolts).light },
		beside: {
			volts: beside.volts[0]!,
			amps: beside.sourceAmps,
			light: filament(beside.volts[0]! / supplyVolts).light
		},
		without: {
			loop: sure(loopNetwork(supplyVolts, resistances, 0)).sourceAmps,
			beside: sure(besideNetwork(supplyVolts, all.slice(1))).sourceAmps
		},
		isGuess: at.isBeyondPublished
	};
}
export const voltsText = (volts: number): string => `${volts.toFixed(1)} V`;
export const ampsText = (amps: number): string => `${amps.toFixed(2)} A`;

/** The loop drawn; `changed` marks the first lamp's volts. */
export const loopPicture = ({ lamps, loop }: Row): RunPicture => ({
	kind: 'run',
	alt: `${lamps === 1 ? 'One lamp' : `${lamps} lamps in series`} on ${voltsText(supplyVolts)}: each gets ${voltsText(loop.volts)}, and ${ampsText(loop.amps)} flow through all.`,
	arrangement: 'series',
	supply: { text: `${supplyVolts} V` },
	lamps: Array.from({ length: lamps }, (_, k) => ({
		label: `${watts} W`,
		volts: voltsText(loop.volts),
		share: Math.min(1, loop.light),
		state: loop.light > 0.99 ? 'fine' : 'dim',
		changed: k === 0
	})),
	cables: Array.from({ length: lamps }, (_, k) => ({ length: '', amps: k === 0 ? ampsText(loop.amps) : '' }))
});
/** Lamps between two conductors: what flows in each stretch is what the lamps beyond take. */
export const besidePicture = ({ lamps, beside }: Row): RunPicture => ({
	kind: 'run',
	alt: `${lamps} lamps in parallel between two conductors on ${voltsText(supplyVolts)}: each gets ${voltsText(beside.volts)}.`,
	arrangement: 'parallel',
	supply: { text: `${supplyVolts} V` },
	lamps: Array.from({ length: lamps }, () => ({
		label: `${watts} W`,
		volts: voltsText(beside.volts),
		share: Math.min(1, beside.light),
		state: 'fine'
	})),
	cables: Array.from({ length: lamps }, (_, k) => ({
		length: '',
		amps: ampsText((beside.amps * (lamps - k)) / lamps)
	}))
});
