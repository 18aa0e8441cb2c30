/** The lesson's run: lamps at equal distances along a cable, fed from its end or from its middle, solved by the engine. */
import { lampAt, loopOhms, ohmsPerKm, type CableSize, type Load, type Network } from '../../circuit';
import { rules } from '../../shared/rules';
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import { lampOf, loadOf, sure } from '../series/network';

export const supplyVolts = 12;
export const lamps = 4;
/** A filament lamp and an LED lamp that give the same light. */
const lumens = 300;
export const filamentLamp = lampOf('halogen', lumens);
export const ledLamp = lampOf('led', lumens);
export type Kind = 'filament' | 'led';
const loads: Readonly<Record<Kind, Load>> = { filament: loadOf(filamentLamp), led: loadOf(ledLamp) };
export const celsius = rules['cable.temperature'].figures.nominal;

/** Cable from lamp to lamp, metres: a tape's mark. */
export const stretchOf = (units: UnitSystem): number => (units === 'feet' ? 20 * metresPerFoot : 4);
export const usualSize = (units: UnitSystem): CableSize =>
	units === 'feet' ? { system: 'awg', size: 12 } : { system: 'mm2', size: 2.5 };

export interface Laid {
	kind: Kind;
	feed: 'end' | 'middle';
	size: CableSize;
	/** Metres from lamp to lamp. */
	metres: number;
	lamps: number;
	/** Volts of the supply; absent: those of the lesson. */
	supply?: number;
}
/** As the class sees it first. */
export const firstRun = (units: UnitSystem): Laid => ({
	kind: 'filament',
	feed: 'end',
	size: usualSize(units),
	metres: stretchOf(units),
	lamps
});

export interface Solved {
	laid: Laid;
	/** By lamp, from the house outwards. */
	volts: number[];
	amps: number[];
	/** Part of the light at rated volts. */
	light: number[];
	/** By stretch, in the order of the lamps: metres, ohms there and back, amperes. */
	stretches: { metres: number; ohms: number; amps: number }[];
	/** Index of the lamp with the least volts. */
	lowest: number;
	/** Whether that one's light is further down than the handbook's law is published for. */
	isGuess: boolean;
}
/** Node before each lamp's stretch and the stretch's metres: lamp k is node k + 1, node 0 the supply. */
function stretchesOf({ feed, metres, lamps }: Laid): { from: number; to: number; metres: number }[] {
	const half = Math.floor(lamps / 2);
	return Array.from({ length: lamps }, (_, k) => {
		if (feed === 'end') return { from: k, to: k + 1, metres };
		const isNext = k === half - 1 || k === half;
		return { from: isNext ? 0 : k < half ? k + 2 : k, to: k + 1, metres: isNext ? metres / 2 : metres };
	});
}
export function networkOf(laid: Laid): Network {
	const perKm = ohmsPerKm(laid.size, celsius);
	return {
		sourceVolts: laid.supply ?? supplyVolts,
		sourceOhms: 0,
		nodes: laid.lamps + 1,
		segments: stretchesOf(laid).map(({ from, to, metres }) => ({ from, to, ohms: loopOhms(perKm, metres) })),
		loads: Array.from({ length: laid.lamps }, (_, k) => ({ node: k + 1, load: loads[laid.kind] }))
	};
}
/** The engine's volts and amperes. */
export function solvedRun(laid: Laid): Solved {
	const network = networkOf(laid);
	const { volts: byNode, loadAmps, segmentAmps } = sure(network);
	const volts = byNode.slice(1);
	const lowest = volts.indexOf(Math.min(...volts));
	return {
		laid,
		volts,
		amps: loadAmps,
		light: volts.map((v) => lampAt(loads[laid.kind], v).light ?? 0),
		stretches: stretchesOf(laid).map(({ metres }, k) => ({
			metres,
			ohms: network.segments[k]!.ohms,
			amps: segmentAmps[k]!
		})),
		lowest,
		isGuess: lampAt(loads[laid.kind], volts[lowest]!).isBeyondPublished
	};
}
export const isDim = ({ laid, volts }: Solved, lamp: number): boolean =>
	lampAt(loads[laid.kind], volts[lamp]!).state === 'low';
