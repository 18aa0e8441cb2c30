/** What is to be said of the ground: crossings that cannot be used, lights on one spot, cable along the edge of a bed. */
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import { deadCrossings } from './crossings';
import type { Ground } from './ground';
import type { LaidWay } from './laid';
import { bedsOf, type Bed } from './lawn-edges';
import { lengthAlong } from './surface';
import { listed, the } from './wording';

const crossingNames = { sleeve: 'sleeve', joint: 'expansion joint', bore: 'bore' } as const;

/** Declared crossings that no cable can use, each by its kind and place. */
export const deadCrossingFindings = (site: Site, ground: Ground): Finding[] =>
	deadCrossings(site, ground).map(({ strip, crossing, blockedBy }): Finding => {
		const why =
			blockedBy === ''
				? 'one end lies outside your lot'
				: `no cable can be brought to it past ${the(blockedBy)}, which lies at its end or in between`;
		const where = `${formatLength(crossing.at, site.units)} along ${the(strip.name)}`;
		return {
			code: 'cable.crossing-unused',
			rank: 'look',
			message: `The ${crossingNames[crossing.kind]} told at ${where} is not used: ${why}. Check where it is, or leave it out.`,
			about: { kind: strip.kind, id: strip.id },
			rule: 'cable.crossing'
		};
	});

/** Lights nearer than this stand on one spot, metres. */
const oneSpot = 0.01;
/** Lights on one spot, named together. */
export function sameSpotFindings(fixtures: readonly Fixture[]): Finding[] {
	const left = [...fixtures];
	const found: Finding[] = [];
	for (let one = left.shift(); one; one = left.shift()) {
		const { at } = one;
		const here = left.filter((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y) < oneSpot);
		if (here.length === 0) continue;
		for (const other of here) left.splice(left.indexOf(other), 1);
		const names = listed([one, ...here].map(({ label }) => label));
		const message = `${names} stand on one spot: between them the cable is slack only. If that is one light, take the other away; if not, move them apart.`;
		found.push({
			code: 'cable.same-spot',
			rank: 'look',
			message,
			about: { kind: 'fixture', id: one.id },
			rule: 'place.clear'
		});
	}
	return found;
}

/** Metres along the edge of a bed below which nothing is said. */
const worthSaying = 1;
/** A note for each bed along whose edge against lawn a run lies: the sod there is thinner than the cover that is counted. */
export function sodEdgeFindings(site: Site, ground: Ground, runs: readonly Pick<LaidWay, 'segments'>[]): Finding[] {
	const length = (metres: number) => formatLength(metres, site.units);
	const { lawn } = rules['cable.depth'].figures;
	return bedsOf(site, ground.obstacles).flatMap((bed: Bed): Finding[] => {
		const along = lengthAlong(bed);
		const taken = runs.flatMap(({ segments }, k) => {
			const metres = segments.reduce(
				(sum, { route: { path } }) => path.reduce((s, p, i) => (i === 0 ? s : s + along(path[i - 1]!, p)), sum),
				0
			);
			return metres > worthSaying ? [`run ${k + 1} for ${length(metres)}`] : [];
		});
		if (taken.length === 0) return [];
		const message = `Along the edge of ${the(bed.name || 'bed')} ${taken.length > 1 ? 'lie' : 'lies'} ${listed(taken)}. Tucked under the edge of the sod, cable is shallower than the ${length(lawn)} of the table, and the plan counts the full depth. Lay it shallower only where the instructions of the listed system allow it.`;
		return [{ code: 'cable.sod-edge', rank: 'note', message, about: { kind: 'bed', id: bed.id }, rule: 'cable.depth' }];
	});
}
