import { distance, distanceToPolygon, moved, nearestOnSegment, type Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Site, Wall } from '../site';
import type { Yard } from '../yard';

/** Where the transformer hangs, before anything is known of its size. */
export interface SupplySpot {
	at: Point;
	on: 'wall' | 'post';
	/** Bottom edge above grade, metres. */
	mountHeight: number;
	suggested: boolean;
	findings: Finding[];
	assumptions: Assumption[];
}

/** Bottom edge when we choose it: above the least, still easy to reach kneeling (common practice, no source). */
const suggestedHeight = 0.46;
/** Above this the dials are out of reach (from memory). */
const mostHeight = 1.8;
/** Stands this far out from the wall, metres. */
const offWall = 0.1;
/** Room beside the receptacle for its cover and the plug. */
const besideReceptacle = 0.4;
const about = { kind: 'power', id: 'transformer' };
const clear = rules['water.clear'].figures.clear;
const cord = rules['supply.receptacle'].figures.cord;

const finding = (
	code: string,
	rank: Finding['rank'],
	rule: Finding['rule'],
	message: string,
	id = 'transformer'
): Finding => ({
	code: `supply.${code}`,
	rank,
	message,
	about: { kind: 'power', id },
	rule
});

interface Candidate {
	at: Point;
	/** Metres along the wall from its `from` end. */
	along: number;
	wall: Wall;
	cost: number;
}
const houseWalls = (site: Site) => site.walls.filter((wall) => wall.of === 'house' && wall.length > 0);
const waterGap = (site: Site, p: Point) =>
	Math.min(
		Infinity,
		...site.areas.flatMap((area) => (area.kind === 'water' ? [distanceToPolygon(p, area.polygon)] : []))
	);
const standsIn = (site: Site, p: Point) =>
	[...site.areas.filter((area) => area.kind !== 'bed'), ...site.strips].filter(
		(place) => distanceToPolygon(p, place.polygon) < 0
	);
const atOpening = (wall: Wall, along: number) =>
	wall.openings.find((opening) => along > opening.start - openingClear && along < opening.end + openingClear) ?? null;
const openingClear = rules['wall.openings'].figures.clear;

/** Places on the house wall, every quarter of a metre and either side of the receptacle, the dearest faults first. */
function candidates(site: Site, near: Point, towards: Point, within: number): Candidate[] {
	return houseWalls(site).flatMap((wall) => {
		const at = nearestOnSegment(near, wall.from, wall.to).t * wall.length;
		const inset = Math.min(0.2, wall.length / 2);
		const steps = Math.min(400, Math.max(1, Math.round(wall.length / 0.25)));
		const regular = Array.from({ length: steps + 1 }, (_, i) => inset + ((wall.length - 2 * inset) * i) / steps);
		const places = [...regular, at - besideReceptacle, at + besideReceptacle];
		return places.flatMap((along): Candidate[] => {
			if (along < inset - 1e-9 || along > wall.length - inset + 1e-9) return [];
			const t = along / wall.length;
			const onWall = { x: wall.from.x + (wall.to.x - wall.from.x) * t, y: wall.from.y + (wall.to.y - wall.from.y) * t };
			const spot = moved(onWall, wall.outward, offWall);
			const far = distance(onWall, near);
			if (far > within) return [];
			const cost =
				(far > cord ? 50 + 10 * (far - cord) : 0) +
				(waterGap(site, spot) < clear ? 200 : 0) +
				(atOpening(wall, along) ? 100 : 0) +
				20 * standsIn(site, spot).length +
				Math.abs(far - besideReceptacle) +
				0.01 * distance(spot, towards);
			return [{ at: spot, along, wall, cost }];
		});
	});
}

/** Cheapest place, as long as it has no fault worth going further for. */
const faulty = 20;
const cheapest = (places: readonly Candidate[], limit = faulty): Candidate | null =>
	places.reduce<Candidate | null>(
		(kept, one) => (one.cost >= limit || (kept && kept.cost <= one.cost + 1e-9) ? kept : one),
		null
	);

function receptacleFindings(site: Site, yard: Yard): Finding[] {
	const { receptacle } = site;
	const rule = 'supply.receptacle';
	const found: Finding[] = [];
	const say = (code: string, rank: Finding['rank'], message: string) =>
		found.push(finding(code, rank, rule, message, 'receptacle'));
	if (yard.power.receptacle === 'none') {
		say(
			'no-receptacle',
			'stop',
			'There is no outdoor receptacle to plug the transformer into. A licensed electrician has to fit one, GFCI-protected and with an in-use cover, before you dig.'
		);
		return found;
	}
	if (!receptacle) return found;
	if (!receptacle.known) {
		say(
			'receptacle-unsure',
			'look',
			'Find the outdoor receptacle and measure where it is: the transformer hangs beside it, and every run starts there. If there is none, a licensed electrician has to fit one.'
		);
	}
	if (receptacle.gfci === false) {
		say(
			'gfci',
			'stop',
			'The receptacle has no GFCI protection. A licensed electrician has to put that right before anything is plugged in outdoors.'
		);
	} else if (receptacle.gfci === 'unsure') {
		say(
			'gfci-unsure',
			'look',
			'Check that the receptacle is GFCI-protected: look for test and reset buttons on it, or at the breaker. If you cannot tell, ask a licensed electrician.'
		);
	}
	if (receptacle.inUseCover !== true) {
		const unsure = receptacle.inUseCover === 'unsure';
		say(
			unsure ? 'cover-unsure' : 'cover',
			'look',
			`${unsure ? 'Check whether' : 'See that'} the receptacle ${unsure ? 'has' : 'gets'} a cover that closes over the plug. It stays plugged in, in all weathers.`
		);
	}
	return found;
}

/** What is wrong with a spot, told or suggested. */
function spotFindings(site: Site, spot: SupplySpot): Finding[] {
	const { units, receptacle } = site;
	const length = (metres: number) => formatLength(metres, units);
	const found: Finding[] = [];
	const least = rules['supply.height'].figures.bottom;
	if (spot.mountHeight < least - 1e-9) {
		const message = `The transformer's bottom edge is ${length(spot.mountHeight)} above the ground. Hang it ${length(least)} or higher, out of splash and snow.`;
		found.push(finding('low', 'stop', 'supply.height', message));
	} else if (spot.mountHeight > mostHeight) {
		const message = `The transformer's bottom edge is ${length(spot.mountHeight)} above the ground. Hang it below ${length(mostHeight)}, where you can reach its terminals from the ground.`;
		found.push(finding('high', 'look', 'supply.height', message));
	}
	const toReceptacle = receptacle ? distance(spot.at, receptacle.at) : 0;
	if (receptacle && toReceptacle > Math.hypot(cord, offWall) + 1e-9) {
		const most = rules['supply.receptacle'].figures.cordMost;
		const message = `The transformer hangs ${length(toReceptacle)} from the receptacle. Its own cord reaches about ${length(cord)}, and an extension cord will not do. Hang it nearer, or have an electrician fit a receptacle there.`;
		found.push(finding('cord', toReceptacle > most + offWall ? 'stop' : 'look', 'supply.receptacle', message));
	}
	const gap = waterGap(site, spot.at);
	if (gap < clear - 1e-9) {
		const message = `The transformer hangs ${length(Math.max(0, gap))} from the water. Keep it ${length(clear)} away; choose another spot on the wall, or have an electrician fit a receptacle further off.`;
		found.push(finding('water', 'stop', 'water.clear', message));
	}
	for (const place of standsIn(site, spot.at)) {
		if ('kind' in place && place.kind === 'water') continue;
		const message = `Under the transformer lies ${place.name}. Its cables cannot go straight down into the ground there; a spot beside it is easier.`;
		found.push(finding('over-paving', 'look', 'supply.height', message));
	}
	if (spot.on === 'wall') {
		for (const wall of houseWalls(site)) {
			const near = nearestOnSegment(spot.at, wall.from, wall.to);
			const opening = near.distance < offWall + 0.01 ? atOpening(wall, near.t * wall.length) : null;
			if (!opening) continue;
			const message = `The transformer hangs at the ${opening.kind === 'garage' ? 'garage door' : opening.kind}. Keep it ${length(openingClear)} to the side.`;
			found.push(finding('opening', 'look', 'wall.openings', message));
		}
	}
	return found;
}

/** The person's spot, put just outside the wall it hangs on. */
function toldSpot(site: Site, yard: Yard): SupplySpot | null {
	const told = yard.power.transformer;
	if (!told || told === 'suggest') return null;
	const point = { x: told.at.along, y: told.at.out };
	const findings: Finding[] = [];
	const assumptions: Assumption[] = [];
	const depth = site.house.length > 2 ? -distanceToPolygon(point, site.house) : -Infinity;
	if (depth > 0.3) {
		const message = `The transformer's spot lies ${formatLength(depth, site.units)} inside the house. The plan hangs it outside on the nearest wall; check that this is where you want it.`;
		findings.push(finding('inside', 'stop', 'supply.height', message));
	}
	let at = point;
	if (told.on === 'wall' || depth > 0) {
		const walls = told.on === 'wall' && depth <= 0 ? site.walls : houseWalls(site);
		const nearest = walls
			.filter((wall) => wall.length > 0)
			.map((wall) => ({ wall, near: nearestOnSegment(point, wall.from, wall.to) }))
			.reduce<{ wall: Wall; near: { point: Point; distance: number } } | null>(
				(best, one) => (best && best.near.distance <= one.near.distance ? best : one),
				null
			);
		if (nearest && (nearest.near.distance <= 1 || depth > 0)) {
			const { outward, from } = nearest.wall;
			// A garden wall is hung on from the side the spot lies; a house wall only from outside.
			const side = (point.x - from.x) * outward.x + (point.y - from.y) * outward.y;
			at = moved(nearest.near.point, outward, nearest.wall.of === 'garden' && side < 0 ? -offWall : offWall);
		} else if (told.on === 'wall') {
			const message = `No wall stands within ${formatLength(1, site.units)} of the transformer's spot. Hang it on a wall, or on a solid post.`;
			findings.push(finding('no-wall', 'look', 'supply.height', message));
		}
	}
	if (told.height === undefined) {
		const message = `The bottom of the transformer is taken to be ${formatLength(suggestedHeight, site.units)} above the ground.`;
		assumptions.push({ path: 'power.transformer.height', message, about });
	}
	return { at, on: told.on, mountHeight: told.height ?? suggestedHeight, suggested: false, findings, assumptions };
}

/**
 * Where the transformer hangs: the person's spot, or the best one on the house within reach of the receptacle. Null when
 * there is neither house nor receptacle nor spot. `load`: the middle of what it feeds.
 */
export function siteSupply(site: Site, yard: Yard, load: Point): SupplySpot | null {
	const told = toldSpot(site, yard);
	let spot = told;
	if (!spot) {
		const near = site.receptacle?.at ?? load;
		const best =
			cheapest(candidates(site, near, load, cord)) ?? cheapest(candidates(site, near, load, Infinity), Infinity);
		const at = best?.at ?? (site.receptacle ? { x: near.x, y: near.y + besideReceptacle } : null);
		if (!at) return null;
		const where = best ? `on the ${best.wall.name.replace(/^the /, '')}` : 'on a post beside the receptacle';
		const message = `The transformer is suggested ${where}, ${formatLength(suggestedHeight, site.units)} above the ground${site.receptacle ? ', beside the receptacle' : ''}.`;
		spot = {
			at,
			on: best ? 'wall' : 'post',
			mountHeight: suggestedHeight,
			suggested: true,
			findings: [],
			assumptions: [{ path: 'power.transformer', message, about }]
		};
	}
	return {
		...spot,
		findings: [...spot.findings, ...receptacleFindings(site, yard), ...spotFindings(site, spot)]
	};
}
