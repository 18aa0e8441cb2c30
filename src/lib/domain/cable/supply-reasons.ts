/** Why the plan hangs the transformer where it does, in the person's words and units. */
import { rules, type RuleId } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Site } from '../site';
import { cord, suggestedHeight, waterGap } from './supply-spot';
import type { Place } from './supply-spots';
import type { SupplyReason } from './types';

const reason = (rule: RuleId, because: string): SupplyReason => ({ rule, because, source: rules[rule].source });
/** Water further off than this is not worth a word, metres. */
const waterInSight = 10;

interface Why {
	place: Place;
	/** Metres of trench in open ground that it saves against the place right beside the receptacle, by estimate. */
	saved: number;
	/** Places that were weighed, it among them. */
	weighed: number;
}

function trenchReason(site: Site, { saved, weighed }: Why): SupplyReason[] {
	const length = (metres: number) => formatLength(metres, site.units);
	if (weighed < 2) return [];
	const plain = site.receptacle ? 'right beside the receptacle' : 'opposite the middle of the lights';
	const places = `Of ${weighed} places that were weighed`;
	if (saved > 0)
		return [
			reason(
				'ground.dig',
				`${places} this one has the least to lay behind it: about as much as ${length(saved)} of trench less than ${plain}.`
			)
		];
	return [reason('ground.dig', `${places} none saves enough digging to leave the one ${plain}.`)];
}
function cordReason(site: Site, { place }: Why): SupplyReason {
	const length = (metres: number) => formatLength(metres, site.units);
	if (!site.receptacle)
		return reason(
			'supply.receptacle',
			'There is no receptacle yet, so it may be fitted where the lights want it: by a licensed electrician, beside this place.'
		);
	const because =
		place.far <= cord + 1e-9
			? `It hangs ${length(place.far)} from the receptacle; its own cord reaches ${length(cord)}.`
			: `No place within the ${length(cord)} of its cord is free of doors, windows, paving and water. This is the nearest that is better.`;
	return reason('supply.receptacle', because);
}

/** The dearest to get wrong first: the cord, the height, the water; then what it saves. */
export function reasonsFor(site: Site, why: Why): SupplyReason[] {
	const length = (metres: number) => formatLength(metres, site.units);
	const { bottom } = rules['supply.height'].figures;
	const gap = waterGap(site, why.place.at);
	const { clear } = rules['water.clear'].figures;
	return [
		cordReason(site, why),
		reason(
			'supply.height',
			`Its bottom is ${length(suggestedHeight)} above the ground: ${length(bottom)} at least, out of splash and snow, and still easy to reach.`
		),
		...(gap < waterInSight && gap >= clear
			? [reason('water.clear', `The water is ${length(gap)} away; ${length(clear)} is the least.`)]
			: []),
		...trenchReason(site, why)
	];
}
