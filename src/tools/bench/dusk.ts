import { blankYard, type Yard } from '../../lib/domain/yard';
import { makeSite } from '../../lib/domain/site';
import { planDusk } from '../../lib/domain/dusk';
import { medianMs, type Row } from './measure';

const yardAt = (latitude: number): Yard => ({
	...blankYard(),
	place: { location: { latitude, longitude: -74, timeZone: 'America/New_York' } }
});
/** A year of sun, hours, energy and cost; each call at another latitude, so that nothing kept from the last can help. */
export function rows(): Row[] {
	const site = makeSite(yardAt(40));
	let latitude = -60;
	const year = (): unknown => planDusk(site, [], null, yardAt((latitude += 0.25)));
	return [{ name: 'dusk.year', value: medianMs(year, 200), unit: 'ms' }];
}
