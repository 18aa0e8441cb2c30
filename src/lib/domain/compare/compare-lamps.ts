import { makePlan } from '../plan';
import type { Finding } from '../shared/findings';
import type { Yard } from '../yard';
import { differencesOf, keptOf } from './differences';
import { ratedLife, years } from './figures';
import { sideOf } from './side';
import type { Comparison, Kind, Range, Side } from './types';

/** The yard with another kind of lamp, all else as it is. */
export const withLamp = (yard: Yard, lamp: Kind): Yard => ({ ...yard, power: { ...yard.power, lamp } });

/** End of the first year from which `mine` is no more than `theirs` and stays so to the end; null: of none. */
function aheadFrom(mine: readonly number[], theirs: readonly number[]): number | null {
	const behind = mine.findLastIndex((value, year) => value > theirs[year]!);
	return behind + 1 < mine.length ? behind + 1 : null;
}
const series = ({ byYear }: Side, end: keyof Range): number[] => byYear.map((range) => range[end]);

const stopsOf = ({ plan }: Side): Finding[] => plan.findings.filter(({ rank }) => rank === 'stop');
const without = (stops: readonly Finding[], others: readonly Finding[]): Finding[] =>
	stops.filter(({ code, message }) => !others.some((other) => other.code === code && other.message === message));

/**
 * The same yard lit with LED and with halogen lamps, side by side: two whole plans, and what each comes to over ten years at
 * present prices without interest. Pure and total, as `makePlan` is; a yard with nothing to light has no `places`.
 */
export function compareLamps(yard: Yard): Comparison {
	const led = sideOf('led', makePlan(withLamp(yard, 'led')));
	const halogen = sideOf('halogen', makePlan(withLamp(yard, 'halogen')));
	const stops = { led: stopsOf(led), halogen: stopsOf(halogen) };
	const ledAlone = without(stops.led, stops.halogen);
	return {
		led,
		halogen,
		years,
		ratedLife,
		places: [...new Set([...led.plan.fixtures, ...halogen.plan.fixtures].map(({ id }) => id))],
		differences: differencesOf(led.plan, halogen.plan),
		kept: keptOf(yard),
		stops: {
			both: stops.led.filter((stop) => !ledAlone.includes(stop)),
			led: ledAlone,
			halogen: without(stops.halogen, stops.led)
		},
		ledAhead: {
			earliest: aheadFrom(series(led, 'low'), series(halogen, 'high')),
			latest: aheadFrom(series(led, 'high'), series(halogen, 'low'))
		}
	};
}
