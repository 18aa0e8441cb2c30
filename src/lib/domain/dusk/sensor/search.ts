/** The best spots for the sensor near the transformer. */
import { bearingOf, distance, subtract } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import type { Fixture } from '../../placement';
import type { PowerPoint } from '../types';
import { onLux } from '../twilight';
import { candidates, fitsPost, type Candidate } from './candidates';
import { faultsOf, isSheltered } from './faults';
import type { Spot } from './spot';
import { weigh, type Surroundings, type Weighed } from './view';
import { coarsely } from './sky-share';

export interface Found {
	weighed: Weighed;
	/** Metres of lead to the transformer. */
	lead: number;
	/** What it costs, in metres of lead one would lay to be rid of it. */
	cost: number;
}
/** Spots that are found, so far apart, metres. */
const wanted = 4;
const apart = 2;
/** A spot that shade or lamps defeat, in metres of lead. Common practice, no source. */
const defeated = 20;
const perMinute = 0.5;
/** Spots in shelter, or where no lamp-free way to look is left, are weighed only where too few others are found: so many. */
const mostDefeated = 12;

/**
 * What a spot costs at first sight: shelter defeats the sensor, a post is one more thing to buy and set, a window shines only now and
 * then, and a little room round it is better, since lamps get moved. Common practice, no source.
 */
function firstCost({ spot, cost }: Candidate, { site }: Surroundings, fixtures: readonly Fixture[]): number {
	const clear = rules['sensor.light'].figures.clear;
	const faults = faultsOf(spot, site, fixtures);
	const close = faults.lamps[0] ? (3 * (clear - faults.lamps[0].distance)) / clear : 0;
	const inside = faults.insideHouse ? 1000 : 0;
	return cost + close + inside + (faults.window ? 3 : 0) + (isSheltered(faults) ? defeated : 0);
}
/** What its light and its minutes add. */
function nightCost({ light, night, early, late }: Weighed): number {
	const minutes = Math.max(0, early?.most ?? 0, late?.most ?? 0);
	const lamplight = Math.min(1, (light.own + light.others) / onLux);
	return 10 * lamplight + perMinute * minutes + (night.verdict === 'steady' ? 0 : defeated);
}
/** A post may be turned: away from the sun, or where lamps spoil that, straight away from the one that throws most. */
function turned(around: Surroundings, spot: Spot, first: Weighed, fixtures: readonly Fixture[]): Weighed {
	const { verdict } = first.night;
	if (spot.on !== 'post' || (verdict !== 'hunting' && verdict !== 'held-off')) return first;
	const brightest = first.light.shares[0];
	const lamps: readonly { id: string; at: Spot['at'] }[] = [...fixtures, ...around.site.existing];
	const lamp = lamps.find(({ id }) => id === brightest?.id);
	if (!lamp || distance(lamp.at, spot.at) < 1e-6) return first;
	const faces = Math.round(bearingOf(subtract(spot.at, lamp.at), around.site.faces)) % 360;
	const away = weigh(around, { ...spot, faces }, coarsely);
	return nightCost(away) < nightCost(first) ? away : first;
}
/** The cheapest of those found that lie well apart. */
function wellApart(found: readonly Found[]): Found[] {
	const picked: Found[] = [];
	for (const one of [...found].sort((a, b) => a.cost - b.cost))
		if (
			picked.length < wanted &&
			picked.every(({ weighed }) => distance(weighed.spot.at, one.weighed.spot.at) >= apart)
		)
			picked.push(one);
	return picked;
}
/**
 * The best spots near the transformer, best first, some metres apart: by lead, shelter, sky, lamplight and what the night comes
 * to. Faults only add to the lead, so that a spot further off than what is found needs no look.
 */
export function search(around: Surroundings, fixtures: readonly Fixture[], supply: PowerPoint): Found[] {
	const found: Found[] = [];
	const later: { candidate: Candidate; cost: number }[] = [];
	let picked: Found[] = [];
	const look = (candidate: Candidate, cost: number): void => {
		const first = weigh(around, candidate.spot, coarsely);
		const weighed = turned(around, candidate.spot, first, fixtures);
		found.push({ weighed, lead: candidate.lead, cost: cost + nightCost(weighed) });
		picked = wellApart(found);
	};
	const isUseless = ({ spot, cost }: Pick<Candidate, 'spot' | 'cost'>): boolean =>
		(picked.length === wanted && cost >= picked.at(-1)!.cost) ||
		picked.some(({ weighed, cost: less }) => less <= cost && distance(weighed.spot.at, spot.at) < apart);
	for (const candidate of candidates(around.site, supply, around.sky.latitude)) {
		if (picked.length === wanted && candidate.cost >= picked.at(-1)!.cost) break;
		if (isUseless(candidate) || (candidate.isNew && !fitsPost(candidate.spot.at, around.site))) continue;
		const cost = firstCost(candidate, around, fixtures);
		if (cost >= defeated) later.push({ candidate, cost });
		else if (!isUseless({ ...candidate, cost })) look(candidate, cost);
	}
	later.sort((a, b) => a.cost - b.cost);
	for (const { candidate, cost } of later.slice(0, mostDefeated))
		if (!isUseless({ ...candidate, cost })) look(candidate, cost);
	return picked;
}
