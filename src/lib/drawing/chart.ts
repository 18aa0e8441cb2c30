/** Axes of the charts. */

/** Round steps, at most `most` of them, that cover low to high: 1, 2 or 5 × 10ⁿ. */
export function ticks(low: number, high: number, most: number): number[] {
	const span = high - low;
	if (!(span > 0) || !Number.isFinite(span)) return [low];
	const raw = span / Math.max(1, most);
	const ten = 10 ** Math.floor(Math.log10(raw));
	const step = ([1, 2, 5, 10].find((times) => times * ten >= raw - 1e-12) ?? 10) * ten;
	const first = Math.ceil(low / step - 1e-9);
	const last = Math.floor(high / step + 1e-9);
	return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}
/** A straight scale from `domain` to `range`. */
export const scale =
	([d0, d1]: readonly [number, number], [r0, r1]: readonly [number, number]) =>
	(value: number): number =>
		Math.round((d1 === d0 ? r0 : r0 + ((value - d0) / (d1 - d0)) * (r1 - r0)) * 100) / 100;
