import type { Yard } from '../../lib/domain/yard';
import { makeSite } from '../../lib/domain/site';
import { placeFixtures } from '../../lib/domain/placement';
import { example } from './example';
import { estateSite, targetsOf, targetsYard } from './estate';
import { largeYard } from './large-yard';
import { medianMs, slope, type Row } from './measure';

/** Placement alone: the demo yards, the large one of 200 fixtures, 40 things to light, an estate, and how time grows. */
export function rows(): Row[] {
	const yards: [string, Yard, number][] = [
		['town', example('town'), 200],
		['suburban', example('suburban'), 200],
		['rural', example('rural'), 100],
		['200', largeYard(), 30]
	];
	const demos = yards.map(([name, yard, rounds]): Row => {
		const site = makeSite(yard);
		return { name: `placement.${name}`, value: medianMs(() => placeFixtures(site, yard), rounds), unit: 'ms' };
	});
	const forty = targetsYard(40);
	const fortySite = makeSite(forty);
	const estate = estateSite(1000, 2000);
	return [
		...demos,
		{ name: 'placement.40', value: medianMs(() => placeFixtures(fortySite, forty), 100), unit: 'ms' },
		{ name: 'placement.40.targets', value: targetsOf(fortySite), unit: 'targets' },
		{ name: 'placement.estate', value: medianMs(() => placeFixtures(estate.site, estate.yard), 12), unit: 'ms' },
		{ name: 'placement.estate.trees', value: estate.site.trees.length, unit: 'trees' },
		{
			name: 'placement.estate.drive',
			value: estate.site.strips.reduce((sum, strip) => sum + strip.length, 0),
			unit: 'm'
		},
		{
			name: 'placement.estate.fixtures',
			value: placeFixtures(estate.site, estate.yard).fixtures.length,
			unit: 'fixtures'
		},
		{ name: 'placement.exponent', value: exponent([250, 500, 1000, 2000]), unit: '' }
	];
}
/** Slope of log time against log size over estates that grow in trees and drive alike, two metres of drive a tree. */
function exponent(sizes: readonly number[]): number {
	return slope(
		sizes.map((trees) => {
			const { site, yard } = estateSite(trees, 2 * trees);
			return { size: trees, ms: medianMs(() => placeFixtures(site, yard), 8) };
		})
	);
}
