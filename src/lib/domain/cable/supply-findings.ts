/** What is said of the receptacle, and of a place for the transformer, told or suggested. */
import { distance, nearestOnSegment } from '../shared/geometry';
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { atOpening, cord, houseWalls, mostHeight, offWall, standsIn, waterGap, type SupplySpot } from './supply-spot';

const openingClear = rules['wall.openings'].figures.clear;

export const supplyFinding = (
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

/** Whether there is a receptacle, and whether it is a safe one. */
export function receptacleFindings(site: Site, yard: Yard): Finding[] {
	const { receptacle } = site;
	const rule = 'supply.receptacle';
	const found: Finding[] = [];
	const say = (code: string, rank: Finding['rank'], message: string) =>
		found.push(supplyFinding(code, rank, rule, message, 'receptacle'));
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
export function spotFindings(site: Site, spot: SupplySpot): Finding[] {
	const { units, receptacle } = site;
	const length = (metres: number) => formatLength(metres, units);
	const found: Finding[] = [];
	const least = rules['supply.height'].figures.bottom;
	if (spot.mountHeight < least - 1e-9) {
		const message = `The transformer's bottom edge is ${length(spot.mountHeight)} above the ground. Hang it ${length(least)} or higher, out of splash and snow.`;
		found.push(supplyFinding('low', 'stop', 'supply.height', message));
	} else if (spot.mountHeight > mostHeight) {
		const message = `The transformer's bottom edge is ${length(spot.mountHeight)} above the ground. Hang it below ${length(mostHeight)}, where you can reach its terminals from the ground.`;
		found.push(supplyFinding('high', 'look', 'supply.height', message));
	}
	const toReceptacle = receptacle ? distance(spot.at, receptacle.at) : 0;
	if (receptacle && toReceptacle > Math.hypot(cord, offWall) + 1e-9) {
		const most = rules['supply.receptacle'].figures.cordMost;
		const message = `The transformer hangs ${length(toReceptacle)} from the receptacle. Its own cord reaches about ${length(cord)}, and an extension cord will not do. Hang it nearer, or have an electrician fit a receptacle there.`;
		found.push(supplyFinding('cord', toReceptacle > most + offWall ? 'stop' : 'look', 'supply.receptacle', message));
	}
	const clear = rules['water.clear'].figures.clear;
	const gap = waterGap(site, spot.at);
	if (gap < clear - 1e-9) {
		const message = `The transformer hangs ${length(Math.max(0, gap))} from the water. Keep it ${length(clear)} away; choose another spot on the wall, or have an electrician fit a receptacle further off.`;
		found.push(supplyFinding('water', 'stop', 'water.clear', message));
	}
	for (const place of standsIn(site, spot.at)) {
		if ('kind' in place && place.kind === 'water') continue;
		const message = `Under the transformer lies ${place.name}. Its cables cannot go straight down into the ground there; a spot beside it is easier.`;
		found.push(supplyFinding('over-paving', 'look', 'supply.height', message));
	}
	if (spot.on === 'wall') {
		for (const wall of houseWalls(site)) {
			const near = nearestOnSegment(spot.at, wall.from, wall.to);
			const opening = near.distance < offWall + 0.01 ? atOpening(wall, near.t * wall.length) : null;
			if (!opening) continue;
			const message = `The transformer hangs at the ${opening.kind === 'garage' ? 'garage door' : opening.kind}. Keep it ${length(openingClear)} to the side.`;
			found.push(supplyFinding('opening', 'look', 'wall.openings', message));
		}
	}
	return found;
}
