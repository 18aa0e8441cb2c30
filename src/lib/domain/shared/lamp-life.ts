/**
 * Lives of lamps: figures from memory, no source at hand. Wherever they are shown, "from memory, check" is shown with
 * them. Set down on 2026-11-25.
 */
interface Remembered {
	known: 'memory';
	/** Hours at rated volts: what is met in the trade, and what is taken here. */
	low: number;
	high: number | null;
	taken: number;
}
export const ratedLife = {
	halogen: { known: 'memory', low: 2000, high: 4000, taken: 3000 },
	/** Inside its window; many are marked with more. */
	led: { known: 'memory', low: 25000, high: null, taken: 25000 }
} as const satisfies Record<'halogen' | 'led', Remembered>;

/** Fink & Beaty's exponents hold within about a tenth of rated volts; the small rest is what two decimals of a volt hide. */
export const holdsWithin = 0.1 + 0.0005;
