/** Where a point of the yard is, in words: on what, and how far from which light. */
import { distance, inPolygon, type Point } from '../../domain/shared/geometry';
import { formatLength, type UnitSystem } from '../../domain/shared/units';
import { calledThe } from '../../domain/yard';
import type { Plan } from '../../domain/plan';
import { areaWords, type Area } from '../../domain/site';

/** A light further off than this says nothing about where one is, metres. */
const near = 30;

const sunken = new Set<Area['kind']>(['bed', 'water']);

/** `on the front walk`, `in the house`, `in the street`, `on open ground`. */
export function surfaceWords({ site }: Pick<Plan, 'site'>, at: Point): string {
	if (isUnderHouse({ site }, at)) return 'in the house';
	if (at.y > site.street) return 'in the street';
	if (at.x < site.leftBoundary || at.x > site.rightBoundary) return 'next door';
	const area = site.areas.find(({ polygon }) => polygon.length >= 3 && inPolygon(at, polygon));
	const strip = site.strips.find(({ polygon }) => polygon.length >= 3 && inPolygon(at, polygon));
	if (area && (area.kind !== 'bed' || !strip))
		return `${sunken.has(area.kind) ? 'in' : 'on'} ${calledThe(area.name, areaWords[area.kind])}`;
	if (strip) return `on ${calledThe(strip.name, strip.kind)}`;
	const tree = site.trees.find((one) => distance(at, one.at) < one.spread / 2);
	return tree ? `under ${calledThe(tree.name, 'tree')}` : 'on open ground';
}
/** `1.20 m from P3`; empty where no light is near. */
export function fromLight({ fixtures }: Pick<Plan, 'fixtures'>, at: Point, units: UnitSystem): string {
	const nearest = fixtures.reduce<Plan['fixtures'][number] | null>(
		(best, one) => (best && distance(best.at, at) <= distance(one.at, at) ? best : one),
		null
	);
	if (!nearest || distance(nearest.at, at) > near) return '';
	const away = distance(nearest.at, at);
	return away < 0.05 ? `at ${nearest.label}` : `${formatLength(away, units)} from ${nearest.label}`;
}
/** `on the front walk, 1.20 m from P3`. */
export const placeWords = (plan: Pick<Plan, 'site' | 'fixtures'>, at: Point, units: UnitSystem): string =>
	[surfaceWords(plan, at), fromLight(plan, at, units)].filter(Boolean).join(', ');

/** Whether the ground there is under the house, where no light is read. */
export const isUnderHouse = ({ site }: Pick<Plan, 'site'>, at: Point): boolean =>
	site.house.length >= 3 && inPolygon(at, site.house);
