/** Lamps one after another in a single loop, and side by side on two conductors, as networks of the engine. */
import { loadAmps, solve, type Load, type Network, type Solution } from '../../circuit';
import { fixtureModels, type Lamp } from '../../shared/catalogue';

export type Solved = Extract<Solution, { ok: true }>;
/** The engine's solution; null where there is none. */
export function solved(network: Network): Solved | null {
	const solution = solve(network);
	return solution.ok ? solution : null;
}
/** For a lesson's own circuit, which has one: anything else is a mistake of ours. */
export function sure(network: Network): Solved {
	const solution = solve(network);
	if (!solution.ok) throw new Error(solution.message);
	return solution;
}

/** A lamp of the catalogue that gives its light by a filament, or by LEDs. */
export const lampOf = (kind: Lamp['kind'], lumens: number): Lamp => {
	const model = fixtureModels.find(({ lamp }) => lamp.kind === kind && lamp.lumens === lumens);
	if (!model) throw new Error(`The catalogue has no ${kind} lamp of ${lumens} lm`);
	return model.lamp;
};
export const loadOf = ({ kind, watts, voltAmps, ratedVolts, minVolts, maxVolts }: Lamp): Load =>
	kind === 'led' ? { kind, voltAmps, minVolts, maxVolts } : { kind, watts, ratedVolts, minVolts, maxVolts };

const usual = lampOf('halogen', 300);
/** A filament lamp by its watts, with the window that such lamps have in the catalogue, in proportion to its volts. */
export const filamentLamp = (watts: number, ratedVolts = usual.ratedVolts): Load => ({
	kind: 'halogen',
	watts,
	ratedVolts,
	minVolts: (ratedVolts * usual.minVolts) / usual.ratedVolts,
	maxVolts: (ratedVolts * usual.maxVolts) / usual.ratedVolts
});
export const resistor = (ohms: number): Load => ({ kind: 'resistance', ohms });

/** Ohms of a lamp when it is hot, at its rated volts: V ÷ I there. A cold filament has far fewer. */
export const hotOhms = (watts: number, ratedVolts: number): number =>
	ratedVolts / loadAmps(filamentLamp(watts, ratedVolts), ratedVolts);

/** Loads side by side on conductors so short that they take no volts. */
export const besideNetwork = (volts: number, loads: readonly Load[]): Network => ({
	sourceVolts: volts,
	sourceOhms: 0,
	nodes: 1,
	segments: [],
	loads: loads.map((load) => ({ node: 0, load }))
});
/**
 * Resistances in one loop, in ohms: all but the last are segments that lead to it. With one taken out the loop ends there: what is
 * left of it feeds nothing.
 */
export const loopNetwork = (volts: number, ohms: readonly number[], takenOut: number | null = null): Network => {
	const whole = takenOut === null ? ohms.length - 1 : takenOut;
	return {
		sourceVolts: volts,
		sourceOhms: 0,
		nodes: whole + 1,
		segments: ohms.slice(0, whole).map((one, k) => ({ from: k, to: k + 1, ohms: one })),
		loads: takenOut === null ? [{ node: whole, load: resistor(ohms.at(-1)!) }] : []
	};
};
/** Volts across each resistance of a loop, and the amperes through all of them; null without a solution. */
export function loop(volts: number, ohms: readonly number[]): { amps: number; volts: number[] } | null {
	const solution = solved(loopNetwork(volts, ohms));
	if (!solution) return null;
	return {
		amps: solution.sourceAmps,
		volts: solution.volts.map((v, k) => v - (solution.volts[k + 1] ?? 0))
	};
}
