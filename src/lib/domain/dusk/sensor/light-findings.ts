/** What is said of the lamplight on the sensor: rules sensor.light and sensor.level. */
import type { Finding } from '../../shared/findings';
import { rules } from '../../shared/rules';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { Lamplight, Share } from './lamplight';

/** Lux from which lamps alone are day to the sensor. */
export const dayFrom = rules['sensor.level'].figures.on;
/** Of the light on the sensor, what a lamp is named from; and how many at the most. */
const named = 0.1;
const mostNamed = 3;

/** Lux as said: one decimal below ten, none above. */
export const luxWords = (lux: number): string => `${lux.toFixed(lux < 9.95 ? 1 : 0)} lx`;

/** Whose light it is, the brightest first, by label or name. */
function whose(shares: readonly Share[], all: number, site: Site, fixtures: readonly Fixture[]): string {
	const names = shares
		.filter(({ lux }) => lux >= named * all)
		.slice(0, mostNamed)
		.map(({ id, existing }) =>
			existing
				? site.existing.find((light) => light.id === id)?.name.trim() || 'a light that is there'
				: fixtures.find((fixture) => fixture.id === id)?.label || id
		);
	return names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)!}` : (names[0] ?? 'many lamps');
}

/** One finding where lamps throw more on the sensor than it switches at; about the lights that are there where most is theirs. */
export function lightFindings({ lux, shares }: Lamplight, site: Site, fixtures: readonly Fixture[]): Finding[] {
	if (lux <= dayFrom) return [];
	const there = shares.filter(({ existing }) => existing);
	const ofThere = there.reduce((sum, one) => sum + one.lux, 0);
	const from = whose(shares, lux, site, fixtures);
	const throws = `Lamps throw ${luxWords(lux)} on the sensor, most of it from ${from}, and it switches at ${dayFrom} lx`;
	const does =
		ofThere > lux / 2
			? 'it may take that for day and hold your lights off'
			: 'it would take its own lamps for day and blink all night';
	return [
		{
			code: `dusk.sensor-${ofThere > lux / 2 ? 'existing' : 'lamps'}`,
			rank: 'look',
			message: `${throws}: ${does}. Hang it elsewhere, put a hood or a corner of the house between, or turn it away from them.`,
			about: { kind: 'power', id: 'sensor' },
			rule: 'sensor.light'
		}
	];
}
