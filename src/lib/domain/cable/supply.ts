import { distance, type Point } from '../shared/geometry';
import { figuresOf } from '../shared/settings';
import { formatLength } from '../shared/units';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { layingCostsOf, type LayingCosts } from './costs';
import { receptacleFindings, spotFindings } from './supply-findings';
import { reasonsFor } from './supply-reasons';
import { aboutTransformer, suggestedHeight, type SupplySpot } from './supply-spot';
import { choiceOf, type Choice, type Place } from './supply-spots';
import { downstreamOf, type Light } from './supply-spots-rank';
import { toldSpot } from './supply-told';

/**
 * Metres of trench that a place has to save before it is taken over the one right beside the receptacle: the estimate is no
 * finer, and a plan should not jump about as a light is moved by a foot (our figure, no source).
 */
export const worthMoving = 0.5;

/** Hanging there rather than at the plain place saves so many metres of trench in open ground, by estimate. */
interface Taken {
	place: Place;
	saved: number;
	/** Places that were weighed. */
	weighed: number;
}

/** The place with the least behind it; of places alike to a millimetre, the first. */
function cheapestOf(site: Site, { plain, others }: Choice, lights: readonly Light[], costs: LayingCosts): Taken {
	const places = [plain, ...others];
	if (others.length === 0 || lights.length === 0) return { place: plain, saved: 0, weighed: 1 };
	const behind = downstreamOf(
		site,
		places.map(({ at }) => at),
		lights,
		costs
	);
	const own = behind[0]!;
	let best = 0;
	behind.forEach(({ reached, cost }, k) => {
		const now = behind[best]!;
		if (reached > now.reached || (reached === now.reached && cost < now.cost - 1e-3)) best = k;
	});
	const { reached, cost } = behind[best]!;
	const saved = own.cost - cost;
	const isWorth = reached > own.reached || saved >= worthMoving;
	return { place: isWorth ? places[best]! : plain, saved: isWorth ? saved : 0, weighed: places.length };
}

/** The middle of the lights, of which there is at least one. */
export const middleOf = (lights: readonly { at: Point }[]): Point => ({
	x: lights.reduce((sum, { at }) => sum + at.x, 0) / lights.length,
	y: lights.reduce((sum, { at }) => sum + at.y, 0) / lights.length
});

function suggestedSpot(site: Site, lights: readonly Light[], costs: LayingCosts): SupplySpot | null {
	const choice = choiceOf(site, middleOf(lights));
	if (!choice) return null;
	const taken = cheapestOf(site, choice, lights, costs);
	const { at, wall } = taken.place;
	const where = wall ? `on the ${wall.name.replace(/^the /, '')}` : 'on a post beside the receptacle';
	const near = site.receptacle && wall && distance(at, site.receptacle.at) < 1 ? ', beside the receptacle' : '';
	const message = `The transformer is suggested ${where}, ${formatLength(suggestedHeight, site.units)} above the ground${near}.`;
	return {
		at,
		on: wall ? 'wall' : 'post',
		mountHeight: suggestedHeight,
		suggested: true,
		because: reasonsFor(site, taken),
		findings: [],
		assumptions: [{ path: 'power.transformer', message, about: aboutTransformer }]
	};
}

/** The laying costs in force. */
export const costsIn = (yard: Yard): LayingCosts => layingCostsOf(figuresOf(yard.rules).figures);

/**
 * Where the transformer hangs: the person's spot; or, of the places within the reach of its cord that are free of faults, the
 * one with the least trench and cable behind it. Null when there is neither house nor receptacle nor spot. `lights`: where
 * they stand, one at least.
 */
export function siteSupply(site: Site, yard: Yard, lights: readonly Pick<Fixture, 'at' | 'lamp'>[]): SupplySpot | null {
	const loads = lights.map(({ at, lamp }): Light => ({ at, voltAmps: lamp.voltAmps }));
	const spot = toldSpot(site, yard) ?? suggestedSpot(site, loads, costsIn(yard));
	if (!spot) return null;
	return {
		...spot,
		findings: [...spot.findings, ...receptacleFindings(site, yard), ...spotFindings(site, spot)]
	};
}
