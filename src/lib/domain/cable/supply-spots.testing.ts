/** Places for the transformer laid out in full: what the plan's own choice is measured by. */
import type { Fixture } from '../placement';
import { placeFixtures } from '../placement';
import { makeSite, type Site } from '../site';
import type { Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { layCable } from './lay';
import { middleOf } from './supply';
import { choiceOf, type Choice, type Place } from './supply-spots';
import type { Cabling } from './types';

export const suggesting = (yard: Yard): Yard => ({ ...yard, power: { ...yard.power, transformer: 'suggest' } });
export const hungAt = (yard: Yard, { face, wall }: Place): Yard => ({
	...yard,
	power: {
		...yard.power,
		transformer: { at: { along: face.x, out: face.y }, on: wall ? 'wall' : 'post', height: 0.46 }
	}
});

export interface Weighed {
	yard: Yard;
	site: Site;
	fixtures: Fixture[];
	choice: Choice;
}
/**
 * A seeded yard in which the plan chooses the place. Null where there is nothing to feed or nowhere to hang it, and where lamps are
 * filaments or runs are set by hand: cable that is too short can then be what costs.
 */
export function weighedYard(seed: number): Weighed | null {
	const yard = suggesting(randomYard(seed));
	if (yard.power.lamp === 'halogen' || yard.power.circuit) return null;
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	const choice = fixtures.length > 0 ? choiceOf(site, middleOf(fixtures)) : null;
	return choice && { yard, site, fixtures, choice };
}
export const fedBy = ({ runs }: Cabling): number =>
	runs.reduce((sum, { nodes }) => sum + nodes.filter(({ fixture }) => fixture !== null).length, 0);

export const laidAt = ({ yard, site, fixtures }: Weighed, place: Place): Cabling =>
	layCable(site, fixtures, hungAt(yard, place));
