import type { Yard } from '../../lib/domain/yard';
import { makeSite } from '../../lib/domain/site';
import { placeFixtures } from '../../lib/domain/placement';
import { example } from './example';
import { largeYard } from './large-yard';
import { medianMs, type Row } from './measure';

/** Placement alone: the three demo yards and the generated large one. */
export function rows(): Row[] {
	const yards: [string, Yard, number][] = [
		['town', example('town'), 200],
		['suburban', example('suburban'), 200],
		['rural', example('rural'), 100],
		['200', largeYard(), 30]
	];
	return yards.map(([name, yard, rounds]) => {
		const site = makeSite(yard);
		return { name: `placement.${name}`, value: medianMs(() => placeFixtures(site, yard), rounds), unit: 'ms' };
	});
}
