/** A spot weighed: its sky, its lamplight, its year and its night. */
import type { Point } from '../../shared/geometry';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { Yard } from '../../yard/schema';
import { placeOf } from '../place';
import type { SensorView } from '../types';
import { lamplightOf, type Lamplight, type Runs } from './lamplight';
import { monthsOf, spanOf, type Months } from './months';
import { judgeNight, shownNight, type Falling, type Judged } from './night';
import { obstaclesOf, type Obstacles } from './obstacles';
import { skyOfPlace, type PlaceSky } from './place-sky';
import { finely, skyShare } from './sky-share';
import { paneOf, type Spot } from './spot';

/** What all spots of a yard have in common. */
export interface Surroundings {
	site: Site;
	obstacles: Obstacles;
	sky: PlaceSky;
	lightOn: ReturnType<typeof lamplightOf>;
}
/** What a spot gets and what comes of it. */
export interface Weighed {
	spot: Spot;
	sky: SensorView['sky'];
	taken: SensorView['taken'];
	light: Lamplight;
	months: Months;
	/** Least and most minutes early and late through the year; null where no dusk or dawn happens. */
	early: { least: number; most: number } | null;
	late: { least: number; most: number } | null;
	falling: Falling;
	night: Judged;
}
/** `about`: where the spots lie; lamps far from there are left out. */
export function surroundingsOf(
	site: Site,
	fixtures: readonly Fixture[],
	runs: Runs,
	yard: Yard,
	about: Point
): Surroundings {
	return {
		site,
		obstacles: obstaclesOf(site, yard),
		sky: skyOfPlace(placeOf(yard)),
		lightOn: lamplightOf(site, fixtures, runs, about)
	};
}
/** Less of the sky than this is not spoken of. */
const spoken = 0.005;
const rounded = (share: number): number => Math.round(share * 1e4) / 1e4;

/** `rays`: as `skyShare` has it. */
export function weigh({ site, obstacles, sky, lightOn }: Surroundings, spot: Spot, rays = finely): Weighed {
	const pane = paneOf(spot, site);
	const { taken, leafOn, leafOff } = skyShare(obstacles, pane, rays);
	const light = lightOn(pane);
	const months = monthsOf(sky, { leafOn, leafOff });
	const falling = { share: sky.night.leaves ? leafOn : leafOff, own: light.own, others: light.others };
	return {
		spot,
		sky: { leafOn: rounded(leafOn), leafOff: rounded(leafOff) },
		taken: takenBy(obstacles, taken),
		light,
		months,
		early: spanOf(months, 'early'),
		late: spanOf(months, 'late'),
		falling,
		night: judgeNight(sky.night, falling, months)
	};
}
function takenBy({ takers }: Obstacles, parts: Float64Array): SensorView['taken'] {
	const taken: SensorView['taken'] = [];
	for (const [i, taker] of takers.entries())
		if (parts[i]! >= spoken) taken.push({ ...taker, share: rounded(parts[i]!) });
	return taken.sort((a, b) => b.share - a.share);
}

/** As the plan tells it. */
export const viewOf = (
	{ sky: place }: Surroundings,
	{ spot, sky, taken, months, falling, night }: Weighed
): SensorView => ({
	faces: spot.faces,
	sky,
	taken,
	months,
	night: shownNight(place.night, falling, night)
});
