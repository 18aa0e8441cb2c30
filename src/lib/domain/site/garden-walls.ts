import type { Line, Point } from '../shared/geometry';
import { between, distance, dot, leftOf, nearestOnLine, rightOf, subtract, towards } from '../shared/geometry';
import { calledThe, capital, freeWallFacts } from '../yard';
import { report, type Survey } from './survey';
import type { Strip, Wall } from './types';

/** Farther off than this, a drive or walk is not what a wall is looked at from. */
const near = 15;

/** Walls that stand by themselves. `taken`: wall ids already in use. */
export function gardenWalls(
	survey: Survey,
	strips: readonly Strip[],
	street: number,
	taken: readonly string[]
): Wall[] {
	const { yard, units, ledger } = survey;
	return (yard.spots.walls ?? []).flatMap((told): Wall[] => {
		const the = calledThe(told.name, 'wall');
		const about = { kind: 'wall', id: told.id };
		const facts = freeWallFacts(told, units, ledger);
		if (!told.from || !told.to) {
			ledger.missing.push({
				path: `spots.walls.${told.id}.${told.from ? 'to' : 'from'}`,
				message: `Where ${the} begins and ends.`
			});
			return [];
		}
		const a = { x: told.from.along, y: told.from.out };
		const b = { x: told.to.along, y: told.to.out };
		if (distance(a, b) < 0.1) {
			const message = `${capital(the)} begins and ends at the same place. Tap its other end on the drawing, or type it.`;
			report(survey, 'stop', 'wall-no-length', about, message);
			return [];
		}
		const side = litSide(a, b, strips, street);
		// Seen from its lit side `from` is at the left, so the lit side is on the right going from–to.
		const [from, to] = dot(rightOf(towards(a, b)), side.outward) > 0 ? [a, b] : [b, a];
		if (told.light === undefined) {
			ledger.missing.push({ path: `spots.walls.${told.id}.light`, message: `Whether to light ${the}.` });
		} else if (told.light !== 'none') {
			ledger.assumptions.push({
				path: `spots.walls.${told.id}.light`,
				message: `${capital(the)} is lit on the side towards ${side.seenFrom}.`,
				about
			});
		}
		return [
			{
				id: taken.includes(told.id) ? `garden-${told.id}` : told.id,
				name: told.name,
				of: 'garden',
				from,
				to,
				outward: side.outward,
				length: distance(from, to),
				height: facts.height,
				peak: null,
				finish: facts.finish,
				texture: facts.texture,
				light: told.light ?? 'none',
				openings: [],
				front: false
			}
		];
	});
}
/** The side of a–b that is looked at: from the nearest walk or drive within reach, or else from the street. */
function litSide(a: Point, b: Point, strips: readonly Strip[], street: number): { outward: Point; seenFrom: string } {
	const middle = between(a, b, 0.5);
	const along = towards(a, b);
	let best: { at: Point; distance: number; name: string } | null = null;
	for (const strip of strips) {
		const found = nearestOnLine(middle, strip.centre as Line);
		if (found && found.distance <= near && (!best || found.distance < best.distance)) {
			best = { at: found.point, distance: found.distance, name: calledThe(strip.name, strip.kind) };
		}
	}
	const seen = best ?? { at: { x: middle.x, y: Math.max(street, middle.y + 1) }, name: 'the street' };
	const right = rightOf(along);
	const lean = dot(right, subtract(seen.at, middle));
	// A wall that points straight at where it is seen from shows both sides; take the one towards the street, else the right.
	const facesRight = Math.abs(lean) > 1e-6 ? lean > 0 : Math.abs(right.y) > 1e-6 ? right.y > 0 : right.x > 0;
	return { outward: facesRight ? right : leftOf(along), seenFrom: seen.name };
}
