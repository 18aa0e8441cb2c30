/** Marks of an axis. */

const steps = [1, 2, 2.5, 5, 10] as const;
/**
 * Round numbers from at or below `low` to at or above `high`, at even steps of 1, 2, 2.5 or 5 times a power of ten; about `wanted`
 * steps of them, never more than twice as many. `high` is above `low`.
 */
export function niceTicks(low: number, high: number, wanted: number): number[] {
	const rough = (high - low) / wanted;
	const power = 10 ** Math.floor(Math.log10(rough));
	const step = power * steps.find((one) => one * power >= rough * (1 - 1e-9))!;
	return ticksBy(low, high, step);
}
/** Hours of a clock, as minutes after noon, at steps of 1, 2, 3, 4, 6 or 12 hours. */
export function clockTicks(low: number, high: number, wanted: number): number[] {
	const hours = [1, 2, 3, 4, 6].find((one) => high - low <= one * 60 * wanted) ?? 12;
	return ticksBy(low, high, 60 * hours);
}
function ticksBy(low: number, high: number, step: number): number[] {
	const first = Math.floor(low / step + 1e-9);
	const last = Math.max(first + 1, Math.ceil(high / step - 1e-9));
	// Tenths and hundredths as decimal texts have them.
	return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}
