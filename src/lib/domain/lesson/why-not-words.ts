/** Distances from a light to what is in the yard, metres, and names as they stand in a sentence. */
import type { Plan } from '../plan';
import { distance, distanceToPolygon } from '../shared/geometry';
import { formatLength } from '../shared/units';
import { distanceToStrip } from '../site';
import { calledThe } from '../yard';
import type { Planned } from './why-not';

export type Light = Plan['fixtures'][number];
export type Site = Plan['site'];
export interface Near<T> {
	thing: T;
	/** Metres; below zero: on it. */
	away: number;
}
/** The one that is least far off; the first of two alike; null of none. */
export function nearestOf<T>(things: readonly T[], awayFrom: (thing: T) => number): Near<T> | null {
	let best: Near<T> | null = null;
	for (const thing of things) {
		const away = awayFrom(thing);
		if (Number.isFinite(away) && (best === null || away < best.away)) best = { thing, away };
	}
	return best;
}
export const nearestArea = (
	{ areas }: Site,
	{ at }: Light,
	isOne: (area: Site['areas'][number]) => boolean
): Near<Site['areas'][number]> | null =>
	nearestOf(areas.filter(isOne), ({ polygon }) => distanceToPolygon(at, polygon));
export const nearestStrip = (
	{ strips }: Site,
	{ at }: Light,
	kind: 'walk' | 'drive'
): Near<Site['strips'][number]> | null =>
	nearestOf(
		strips.filter((strip) => strip.kind === kind),
		(strip) => distanceToStrip(at, strip)
	);
export const nearestLight = (
	{ fixtures }: Planned,
	light: Light,
	isOne: (other: Light) => boolean
): Near<Light> | null =>
	nearestOf(
		fixtures.filter((other) => other.id !== light.id && isOne(other)),
		(other) => distance(light.at, other.at)
	);
export const len = (plan: Planned, metres: number): string => formatLength(metres, plan.site.units);
/** `the oak`, at the beginning of a sentence. */
export const The = (name: string, kind: string): string => {
	const called = calledThe(name, kind);
	return `${called.charAt(0).toUpperCase()}${called.slice(1)}`;
};
/** `L3`, or the light's id where it has no label. */
export const labelOf = ({ label, id }: Light): string => (label === '' ? id : label);
