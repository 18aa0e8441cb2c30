/** What is said of the lamplight on the sensor: rules sensor.light and sensor.level. */
import type { Finding } from '../../shared/findings';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import { nearestOffLux, offLux, onLux } from '../twilight';
import type { Weighed } from './view';
import { luxWords, whose } from './words';

const mend = 'Hang it elsewhere, put a hood or a corner of the house between, or turn it away from them.';

/** Own lamps against the off level: what it would do, or may do with an off level as near as the standard allows. */
function huntingWords({ light, night }: Weighed): string {
	const may = night.offAt < offLux;
	const level = may
		? `a sensor may switch off from as little as ${luxWords(nearestOffLux)}`
		: `it switches off at ${luxWords(offLux)}`;
	const allNight = light.own + light.others >= night.offAt;
	const does = may ? 'it may take its own lamps for day and blink' : 'it would take its own lamps for day and blink';
	return `${level}: ${does} ${allNight ? 'all night' : 'at dusk and before dawn'}`;
}
/** One finding where lamps make the sensor blink, or lights that are there hold it off. */
export function lightFindings(weighed: Weighed, site: Site, fixtures: readonly Fixture[]): Finding[] {
	const { verdict } = weighed.night;
	const { own, others } = weighed.light;
	if (verdict !== 'hunting' && verdict !== 'held-off') return [];
	const isHeld = verdict === 'held-off';
	const shares = weighed.light.shares.filter(({ existing }) => existing || !isHeld);
	const many = isHeld ? luxWords(others) : luxWords(own + others);
	const from = whose(shares, site, fixtures);
	const does = isHeld
		? `it switches on at ${luxWords(onLux)} or less: it takes that for day and holds your lights off`
		: huntingWords(weighed);
	return [
		{
			code: `dusk.sensor-${isHeld ? 'existing' : 'lamps'}`,
			rank: 'look',
			message: `On the window of the sensor fall ${many} of lamplight, most of it from ${from}, and ${does}. ${mend}`,
			about: { kind: 'power', id: 'sensor' },
			rule: 'sensor.light'
		}
	];
}
