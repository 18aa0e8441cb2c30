/** Places for the transformer that are worth laying out in full, beside the one in hand. */
import { distance, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard';
import type { LayingCosts } from './costs';
import { costsIn, middleOf, siteSupply } from './supply';
import { mostHeight, suggestedHeight } from './supply-spot';
import { choiceOf, freeByWall, type Place } from './supply-spots';
import { downstreamOf } from './supply-spots-rank';

export type TransformerAnswer = NonNullable<Yard['power']['transformer']>;
export interface SpotToTry {
	/**
	 * yours: as told. plan: as the plan would hang it. reach: another within the cord's reach. beyond: further off, where
	 * a receptacle may have to be fitted first.
	 */
	kind: 'yours' | 'plan' | 'reach' | 'beyond';
	/** What to answer to have it there. */
	answer: TransformerAnswer;
}

/** Places nearer to one another than this are one place, metres. */
const apart = 0.3;
/** Walls on which a place beyond the cord is looked for: those nearest the lights. */
const mostWalls = 8;

/** The person's own height where it is within the limits. */
function heightOf(yard: Yard): number {
	const told = yard.power.transformer;
	const height = typeof told === 'object' ? told.height : undefined;
	const { bottom } = rules['supply.height'].figures;
	return height !== undefined && height >= bottom && height <= mostHeight ? height : suggestedHeight;
}
const millimetres = (metres: number) => Math.round(metres * 1000) / 1000;
const answerFor = ({ face, wall }: Place, height: number): TransformerAnswer => ({
	at: { along: millimetres(face.x), out: millimetres(face.y) },
	on: wall ? 'wall' : 'post',
	height
});

/** Of each house wall the place free of faults with the least behind it. */
function bestByWall(site: Site, lights: readonly Fixture[], costs: LayingCosts): Place[] {
	const load = middleOf(lights);
	const walls = freeByWall(site, load)
		.map((places) => ({ places, far: Math.min(...places.map(({ at }) => Math.round(distance(at, load) * 1e6))) }))
		.toSorted((a, b) => a.far - b.far)
		.slice(0, mostWalls)
		.map(({ places }) => places);
	const all = walls.flat();
	if (all.length === 0) return [];
	const behind = downstreamOf(
		site,
		all.map(({ at }) => at),
		lights.map(({ at, lamp }) => ({ at, voltAmps: lamp.voltAmps })),
		costs
	);
	const rank = new Map(all.map((place, k) => [place, behind[k]!]));
	return walls.map((places) =>
		places.reduce((best, place) => {
			const [a, b] = [rank.get(place)!, rank.get(best)!];
			return a.reached > b.reached || (a.reached === b.reached && a.cost < b.cost - 1e-3) ? place : best;
		})
	);
}

/**
 * The person's own place first, then the plan's, others within the cord's reach, and the best of each house wall beyond it.
 * Without a receptacle all but those two are `beyond`. Empty where there is nothing to feed or nowhere to hang it.
 */
export function spotsToTry(site: Site, yard: Yard, lights: readonly Fixture[]): SpotToTry[] {
	if (lights.length === 0) return [];
	const spotWith = (transformer: TransformerAnswer) =>
		siteSupply(site, { ...yard, power: { ...yard.power, transformer } }, lights);
	const told = yard.power.transformer;
	const first: SpotToTry[] = [
		...(typeof told === 'object' ? [{ kind: 'yours' as const, answer: told }] : []),
		...(spotWith('suggest') ? [{ kind: 'plan' as const, answer: 'suggest' as const }] : [])
	];
	const kept: Point[] = first.flatMap(({ answer }) => spotWith(answer)?.at ?? []);
	const choice = choiceOf(site, middleOf(lights));
	const height = heightOf(yard);
	const add = (kind: SpotToTry['kind'], places: readonly Place[]): SpotToTry[] =>
		places.flatMap((place) => {
			if (kept.some((at) => distance(at, place.at) < apart)) return [];
			kept.push(place.at);
			return [{ kind, answer: answerFor(place, height) }];
		});
	const reach = site.receptacle && choice ? [choice.plain, ...choice.others] : [];
	return [...first, ...add('reach', reach), ...add('beyond', bestByWall(site, lights, costsIn(yard)))];
}
