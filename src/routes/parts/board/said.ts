/** What is said after a change, and where a point lies, in the person's units. */
import type { Point } from '$lib/domain/shared/geometry';
import { formatLength } from '$lib/domain/shared/units';
import type { Plan } from '$lib/domain/plan';
import type { Units, Yard } from '$lib/domain/yard';
import type { Snapped } from '$lib/drawing/view/types';
import { whereWords } from '../by-hand/where';

/** Less than this is no way at all, metres. */
const still = 0.0005;

/** How far from one place to another: `2 ft right, 1 ft towards the house`. Null: nowhere. */
export function wayWords(from: Point, to: Point, units: Units): string | null {
	const [along, out] = [to.x - from.x, to.y - from.y];
	const side =
		Math.abs(along) < still ? [] : [`${formatLength(Math.abs(along), units)} ${along > 0 ? 'right' : 'left'}`];
	const depth =
		Math.abs(out) < still ? [] : [`${formatLength(Math.abs(out), units)} towards the ${out > 0 ? 'street' : 'house'}`];
	const words = [...side, ...depth];
	return words.length > 0 ? words.join(', ') : null;
}
/** `12 ft along, 3 ft out; the edge of Front walk`. The step is not said: every point has it. */
export function pointWords({ at, to }: Snapped, units: Units): string {
	const drawn = to.filter(({ kind }) => kind !== 'step').map(({ words }) => words);
	return [whereWords(at, units), ...drawn].join('; ');
}
/** `Oak moved. Undo takes it back.` */
export const doneWords = (label: string, way: string | null = null): string =>
	`${label}${way ? ` ${way}` : ''}. Undo takes it back.`;
/** A stretch of a line: `8 ft 6 in on`. */
export const legWords = (from: Point, to: Point, units: Units): string =>
	`${formatLength(Math.hypot(to.x - from.x, to.y - from.y), units)} on`;

/** How to begin on a sheet on which little is known; null where enough is. */
export function startWords({ house, trees, walks }: Yard, { site }: Pick<Plan, 'site'>): string | null {
	if (site.house.length > 0 && ((trees?.length ?? 0) > 0 || (walks?.length ?? 0) > 0)) return null;
	return (house.sections?.length ?? 0) > 0
		? 'The house is there. Press Add and draw the walks, the drive and the trees: each point is measured along the front and out from it.'
		: 'The heavy line is the house front, the street lies below. Press Add to draw the first thing; every point is measured along the front from its left corner, and out from it towards the street.';
}
