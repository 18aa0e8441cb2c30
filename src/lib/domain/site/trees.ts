import type { Point, Polygon } from '../shared/geometry';
import { nearestOnLine, nearestOnPolygon } from '../shared/geometry';
import { rules } from '../shared/rules';
import { calledThe, capital, treeFacts } from '../yard';
import { measure, report, type Survey } from './survey';
import type { Strip, Tree } from './types';

/** Trees with every size resolved. One that has no place yet is left out and said. */
export function makeTrees(survey: Survey, strips: readonly Strip[], house: Polygon, street: number): Tree[] {
	const { yard, units, ledger } = survey;
	if (yard.trees === undefined)
		ledger.missing.push({ path: 'trees', message: 'Which trees stand in the yard, if any.' });
	return (yard.trees ?? []).flatMap((told): Tree[] => {
		const the = calledThe(told.name, 'tree');
		const facts = treeFacts(told, units, ledger);
		if (!told.at) {
			ledger.missing.push({ path: `trees.${told.id}.at`, message: `Where ${the} stands.` });
			return [];
		}
		const at = { x: told.at.along, y: told.at.out };
		const about = { kind: 'tree', id: told.id };
		let { crownBase } = facts;
		if (crownBase >= facts.height) {
			crownBase = facts.height * 0.6;
			const message = `${capital(the)} is ${measure(survey, facts.height)} tall, so its lowest branches cannot be ${measure(survey, facts.crownBase)} up. ${measure(survey, crownBase)} is taken; check both.`;
			report(survey, 'look', 'crown-above-top', about, message);
		}
		if (facts.trunk > facts.spread) {
			const message = `The trunk of ${the} is thicker than its canopy is wide. Check both: the trunk is measured through, not round.`;
			report(survey, 'look', 'trunk-wider-than-canopy', about, message);
		}
		return [
			{
				id: told.id,
				name: told.name,
				at,
				spread: facts.spread,
				height: facts.height,
				crownBase,
				trunkDiameter: facts.trunk,
				form: facts.form,
				ground: facts.ground,
				light: facts.light,
				seenFrom: lookedAtFrom(facts.seenFrom, at, strips, house, street),
				rootRadius: rules['tree.roots'].figures.perDiameter * facts.trunk
			}
		];
	});
}
function lookedAtFrom(
	from: 'street' | 'house' | 'walk',
	at: Point,
	strips: readonly Strip[],
	house: Polygon,
	street: number
): Point {
	// From the street straight opposite; a tree that stands beyond the street's edge is seen from still farther out.
	const opposite = { x: at.x, y: Math.max(street, at.y + 1) };
	if (from === 'house') return nearestOnPolygon(at, house)?.point ?? { x: at.x, y: Math.min(0, at.y - 1) };
	if (from === 'street') return opposite;
	const walks = strips.filter((strip) => strip.kind === 'walk').map((strip) => nearestOnLine(at, strip.centre)!);
	return walks.sort((a, b) => a.distance - b.distance)[0]?.point ?? opposite;
}
