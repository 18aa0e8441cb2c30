/** Where a slider may stand: round numbers of the person's units, and the value it starts from. */
import { metresPerFoot, metresPerInch, type UnitSystem } from '../../shared/units';
import type { Range } from './schema-range';

/** Stops of a slider, about: enough for a smooth look, few enough to step through by keys. */
const about = 48;
const metric = [0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];
const imperial = [0.5, 1, 2, 3, 6]
	.map((inches) => inches * metresPerInch)
	.concat([1, 2, 5, 10].map((feet) => feet * metresPerFoot));
const plainSteps = [0.005, 0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000];

const someMetres = 4;
const tidy = (value: number): number => Number(value.toFixed(6));

/** From one end to the other by a step, counted from nothing; the ends only where they are steps, `start` always. */
export function stopsBy(step: number, start: number, { least, most }: Range): number[] {
	const first = Math.ceil(least / step - 1e-9);
	const last = Math.floor(most / step + 1e-9);
	const round = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => tidy((first + k) * step));
	const apart = round.filter((value) => Math.abs(value - start) > step / 1000);
	return [...apart, start].toSorted((a, b) => a - b);
}
const fitting = (steps: readonly number[], start: number, range: Range): number[] => {
	const step = steps.find((one) => (range.most - range.least) / one <= about) ?? steps.at(-1)!;
	return stopsBy(step, start, range);
};
export const lengthStops = (start: number, range: Range, units: UnitSystem): number[] =>
	fitting(units === 'feet' ? imperial : metric, start, range);
export const numberStops = (start: number, range: Range): number[] => fitting(plainSteps, start, range);

const inside = (low: number, high: number, { least, most }: Range): Range => ({
	least: Math.max(least, Math.min(low, most)),
	most: Math.min(most, Math.max(high, least))
});
/** What a slider shows of a size: from two fifths of it to twice it, and of none at all some metres. */
export const roundSize = (start: number, range: Range): Range =>
	inside(start * 0.4, start === 0 ? someMetres : start * 2, range);
/** Of a place: so far either way, metres. */
export const roundPlace = (start: number, range: Range, reach = 4): Range =>
	inside(start - reach, start + reach, range);
