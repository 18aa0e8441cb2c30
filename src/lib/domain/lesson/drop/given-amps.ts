/** Loads that draw given amperes, as handbooks and textbooks have them, solved by the engine. */
import { solve, type Load, type Network } from '../../circuit';

/** Volt-amperes `amps` at `volts`, whatever the volts. */
const drawing = (amps: number, volts: number): Load => ({
	kind: 'led',
	voltAmps: amps * volts,
	minVolts: volts / 1e6,
	maxVolts: volts * 1e6
});
/** Stretches in a row: ohms there and back, and amperes drawn at the end of each. */
export interface Stretch {
	ohms: number;
	amps: number;
}
export const networkAt = (sourceVolts: number, stretches: readonly Stretch[], volts: readonly number[]): Network => ({
	sourceVolts,
	sourceOhms: 0,
	nodes: stretches.length + 1,
	segments: stretches.map(({ ohms }, k) => ({ from: k, to: k + 1, ohms })),
	loads: stretches.map(({ amps }, k) => ({ node: k + 1, load: drawing(amps, volts[k]!) }))
});
/** Volts are settled when none moves by more than this part. */
const settled = 1e-12;
const most = 500;

/**
 * Volts at the end of each stretch. The engine's loads draw by their volts, so it is solved again at the volts found until they stay:
 * each then draws the amperes given. Null where there is no solution, or where it takes the supply's volts to below a half.
 */
export function voltsAtAmps(sourceVolts: number, stretches: readonly Stretch[]): number[] | null {
	let volts = stretches.map(() => sourceVolts);
	for (let n = 0; n < most; n += 1) {
		const solution = solve(networkAt(sourceVolts, stretches, volts));
		if (!solution.ok) return null;
		const next = solution.volts.slice(1);
		if (next.some((v) => v < sourceVolts / 2)) return null;
		if (next.every((v, k) => Math.abs(v - volts[k]!) <= settled * sourceVolts)) return next;
		volts = next;
	}
	return null;
}
