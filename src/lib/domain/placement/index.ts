/** Site -> fixtures, by the rules of the trade. */
import type { Assumption } from '../shared/findings';
import { figuresOf } from '../shared/settings';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { placeBed } from './beds';
import { keepToBudget } from './budget';
import { drafting, type Drafting } from './drafting';
import { finish, handFindings, placeByHand } from './hand';
import { labelled } from './labels';
import { lampChoice, picker } from './models';
import { placeDrive } from './drives';
import { placeNumber } from './number';
import { placeSeating } from './seating';
import { ownFigures, refusedFigures } from './own-figures';
import { ownLampAssumptions, ownLampFindings } from './own-lamp';
import { sightOf, type Sight } from './sight';
import { placeSteps } from './steps';
import { placeTree } from './trees';
import type { Placement } from './types';
import { placeWalk } from './walks';
import { placeWalls } from './walls';

export { fill } from './firsts';
export { groundLux, towardsGround } from './walk-light';
export { wallBand } from './wall-level';
export { firstsOf, type First } from './firsts';
export { inSweep, mouthAt, stakeOut } from './drive-spots';
export { stockBeamFor } from './models';
export { barkOffset, treeAim, uplightCount, type Aim } from './tree-aim';
export type { Fixture, HandMark, Placement, Reason, Technique } from './types';
export {
	faultOf,
	modelsAlike,
	ownLampOf,
	ownLightOf,
	ownModels,
	withOwnLamp,
	withoutOwnLamp,
	type OwnLampRead,
	type OwnLight
} from './own-lamp';

/**
 * The fixtures of a yard, each with the reasons it stands there, and findings for what was asked and cannot be lit. Total
 * and deterministic: same site and answers, same plan. What comes first keeps its place: steps, drives, walks, trees, walls,
 * seating, house numbers and signs, beds; before all of them what the person set by hand. At the end what a budget cannot bear goes again.
 */
export function placeFixtures(site: Site, yard: Yard): Placement {
	const choice = lampChoice(yard);
	const own = ownFigures(figuresOf(yard.rules), site.units);
	const sight = sightOf(site, own.figures['tree.aim'].maxLean);
	const fresh = (): Drafting => drafting(site, own, picker(yard), choice.kelvin, choice.kind);
	const placeAll = (d: Drafting): void => placeWhatIsWanted(d, site, sight);
	const hand = yard.fixtures ? placeByHand({ site, told: yard.fixtures, fresh, placeAll }) : null;
	const d = hand?.d ?? fresh();
	if (hand) finish(hand);
	else placeAll(d);
	const kept = keepToBudget(d, yard);
	const fixtures = labelled(kept.placed);
	return {
		fixtures,
		findings: [
			...refusedFigures(own, site.units),
			...ownLampFindings(yard),
			...kept.findings,
			...(hand ? handFindings(hand, fixtures, sight, choice.kind) : [])
		],
		assumptions:
			fixtures.length > 0 ? [...assumptionsOf(choice), ...ownLampAssumptions(yard, fixtures), ...kept.assumptions] : []
	};
}

function placeWhatIsWanted(d: Drafting, site: Site, sight: Sight): void {
	const strips = site.strips.map((strip, order) => ({ strip, order }));
	const walks = strips.filter(({ strip }) => strip.kind === 'walk');
	for (const { strip, order } of walks) placeSteps(d, strip, order);
	for (const { strip, order } of strips) if (strip.kind === 'drive') placeDrive(d, strip, order);
	for (const { strip, order } of walks) placeWalk(d, strip, order);
	for (const tree of site.trees) placeTree(d, tree, sight);
	placeWalls(d, site.walls);
	for (const area of site.areas) placeSeating(d, area);
	for (const number of site.houseNumber) placeNumber(d, number, sight);
	for (const area of site.areas) placeBed(d, area);
}

function assumptionsOf({ kelvin, told }: ReturnType<typeof lampChoice>): Assumption[] {
	return [
		...(told.kind
			? []
			: [
					{
						path: 'power.lamp',
						message: 'LED lamps are taken: about a fifth of the power of halogen for the same light.',
						about: null
					}
				]),
		...(told.kelvin
			? []
			: [{ path: 'power.warmth', message: `Warm white lamps of ${kelvin} K are taken.`, about: null }])
	];
}
