/** What speaks for a spot, in words: rules sensor.shade and sensor.light. */
import { distance } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import { offLux, onLux } from '../twilight';
import type { Dusk } from '../types';
import { isSheltered, type Faults } from './faults';
import { isLet } from './shade-findings';
import type { LampShare } from './lamplight';
import type { Weighed } from './view';
import { isOnTime, luxWords, minutesWords, partWords, shiftWords, takenWords, whose, windOf } from './words';

type Reasons = NonNullable<Dusk['sensor']>['reasons'];

export function reasonsFor(weighed: Weighed, faults: Faults, site: Site, fixtures: readonly Fixture[]): Reasons {
	const reasons: Reasons = [];
	const say = (rule: 'sensor.shade' | 'sensor.light', because: string): void => {
		reasons.push({ rule, because, source: rules[rule].source });
	};
	const { verdict } = weighed.night;
	if (!isSheltered(faults) && !faults.insideHouse && isLet(weighed))
		say('sensor.shade', skyWords(weighed, faults, site));
	if (verdict === 'steady' || verdict === 'shifted') say('sensor.light', lightWords(weighed, faults, site, fixtures));
	return reasons;
}
/** What it sees of the sky, and what that comes to. */
function skyWords({ spot, sky, taken, early }: Weighed, { roofEdge }: Faults, site: Site): string {
	const length = (metres: number): string => formatLength(metres, site.units);
	const below = roofEdge === null ? '' : `, ${length(Math.max(0, roofEdge - spot.height))} below the edge of the roof`;
	const gets = `its window looks ${windOf(spot.faces)} and gets ${partWords(sky.leafOn)} of the sky’s light that it would get in the open`;
	const most = takenWords(taken);
	const takes = most ? ` (${most})` : '';
	const when = early && !isOnTime(early) ? `${minutesWords(early)} early` : 'on time';
	const wakes = early ? `, so that it wakes the lights ${when} through the year` : '';
	return `${length(spot.height)} above the ground${below}, ${gets}${takes}${wakes}.`;
}
/** How much lamplight there is, and the lamp that is nearest. */
function lightWords({ spot, light }: Weighed, { lamps }: Faults, site: Site, fixtures: readonly Fixture[]): string {
	const length = (metres: number): string => formatLength(metres, site.units);
	const lux = light.own + light.others;
	const gets =
		lux < 0.05 ? 'No lamplight to speak of falls on its window' : `Lamps throw ${luxWords(lux)} on its window`;
	const nearest = fixtures
		.map((fixture) => ({ fixture, metres: distance(spot.at, fixture.at) }))
		.sort((a, b) => a.metres - b.metres)[0];
	const hidden =
		nearest && nearest.metres < rules['sensor.light'].figures.clear && lamps[0]?.fixture !== nearest.fixture;
	const which = !nearest
		? ''
		: hidden
			? ` The house stands between it and the nearest lamp, ${nearest.fixture.label}.`
			: ` The nearest lamp, ${nearest.fixture.label}, is ${length(nearest.metres)} off.`;
	return `${gets} at night, by the light model; it switches on at ${onLux} lx.${which}`;
}
/** One sentence for a list of spots: what speaks for it or against it. */
export function whyOf(weighed: Weighed, lead: number, site: Site, fixtures: readonly Fixture[]): string {
	const { light, night } = weighed;
	switch (night.verdict) {
		case 'held-off':
			return `Held off: ${lampsThrow(light.shares.filter(({ existing }) => existing))}.`;
		case 'hunting':
			return `It ${night.offAt < offLux ? 'may' : 'would'} blink: ${lampsThrow(light.shares)}.`;
		case 'shifted': {
			const taken = takenWords(weighed.taken);
			return `It would ${shiftWords(weighed) ?? 'switch in the wrong light'}${taken ? `: ${taken}` : ''}.`;
		}
		default:
			return goodWords(weighed, lead, site);
	}
	function lampsThrow(shares: readonly LampShare[]): string {
		const lux = shares.reduce((sum, one) => sum + one.lux, 0);
		const from = whose(shares, site, fixtures);
		return `${from} ${/ and |lamps$/.test(from) ? 'throw' : 'throws'} ${luxWords(lux)} on its window`;
	}
}
function goodWords({ spot, sky, light, early }: Weighed, lead: number, site: Site): string {
	const on = spot.on === 'wall' ? 'the wall' : 'a post';
	const off = lead < 0.1 ? 'at' : `${formatLength(lead, site.units)} from`;
	const lux = light.own + light.others;
	const wakes =
		early && !isOnTime(early)
			? `, at most ${minutesWords({ least: early.most, most: early.most })} early`
			: ', on time';
	const lamplight = lux < 0.05 ? 'no lamplight' : `${luxWords(lux)} of lamplight`;
	return `On ${on} ${off} the transformer, looking ${windOf(spot.faces)}: ${partWords(sky.leafOn)} of its sky${wakes}, ${lamplight}.`;
}
