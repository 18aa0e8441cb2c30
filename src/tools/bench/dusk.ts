import { blankYard, type Yard } from '../../lib/domain/yard';
import { makeSite } from '../../lib/domain/site';
import { makePlan } from '../../lib/domain/plan';
import { planDusk, sensorOf } from '../../lib/domain/dusk';
import { example } from './example';
import { medianMs, type Row } from './measure';

const yardAt = (latitude: number): Yard => ({
	...blankYard(),
	place: { location: { latitude, longitude: -74, timeZone: 'America/New_York' } }
});
/** Of the demo with most in the way: one spot told, without a search, and the search for the best spots with their verdicts. */
function sensorRows(): Row[] {
	const { site, fixtures, supply, runs, dusk } = makePlan(example('suburban'));
	const { at, on, height } = dusk.sensor!;
	const spot = { at: { along: at.x, out: at.y }, on, height };
	const yard = example('suburban');
	const told = { ...yard, power: { ...yard.power, sensor: spot } };
	const open = { ...yard, power: { ...yard.power, sensor: 'suggest' as const } };
	return [
		{ name: 'dusk.spot', value: medianMs(() => sensorOf(site, fixtures, null, told, runs), 100), unit: 'ms' },
		{ name: 'dusk.search', value: medianMs(() => sensorOf(site, fixtures, supply, open, runs), 60), unit: 'ms' }
	];
}
/** A year of sun, hours, energy and cost; each call at another latitude, so that nothing kept from the last can help. */
export function rows(): Row[] {
	const site = makeSite(yardAt(40));
	let latitude = -60;
	const year = (): unknown => planDusk(site, [], null, yardAt((latitude += 0.25)));
	return [{ name: 'dusk.year', value: medianMs(year, 200), unit: 'ms' }, ...sensorRows()];
}
