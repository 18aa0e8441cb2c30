/**
 * Low plants in beds: a picture of bare mulch would be no garden. Of what grows there nothing is known, so that they are drawn low, and
 * clear of every lamp. Metres.
 */
import { boxOf, inPolygon } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import type { Area, Tree } from '../domain/site';
import type { Crown } from './crown';
import { hash3, sequence, seedOf } from './noise';

/** Between plants; clear of lamps and of trunks; at most so many in a bed. */
const apart = 0.42;
const clear = { lamp: 0.34, edge: 0.16 } as const;
const most = 260;

/** One tuft of plants for each bed, as a crown without a tree. */
export function beddingOf(plan: Plan, centre: number): { crown: Crown; bed: Area }[] {
	return plan.site.areas
		.filter((area) => area.kind === 'bed')
		.map((bed) => ({ bed, crown: tufts(plan, bed, centre) }))
		.filter(({ crown }) => crown.clumps.length > 0);
}
function tufts(plan: Plan, bed: Area, centre: number): Crown {
	const box = boxOf(bed.polygon);
	const seed = seedOf(bed.id);
	const next = sequence(seed);
	const hand = bed.centre.x > centre ? -1 : 1;
	const step = Math.max(apart, Math.sqrt(((box.maxX - box.minX) * (box.maxY - box.minY)) / most));
	const stands = [...plan.fixtures.map(({ at }) => at), ...plan.site.trees.map(({ at }) => at)];
	const clumps: Crown['clumps'] = [];
	const columns = Math.ceil((box.maxX - box.minX) / step);
	const rows = Math.ceil((box.maxY - box.minY) / step);
	for (let j = 0; j < rows; j++)
		for (let i = 0; i < columns; i++) {
			// From the left in one half, from the right in the other: mirrored yards have mirrored beds.
			const aside = (i + 0.5 * (j % 2) + 0.3 + 0.4 * next()) * step;
			const x = hand > 0 ? box.minX + aside : box.maxX - aside;
			const y = box.minY + (j + 0.3 + 0.4 * next()) * step;
			const radius = step * (0.32 + 0.16 * next());
			const tone = next();
			if (!inPolygon({ x, y }, bed.polygon) || hash3(i, j, seed) < 0.12) continue;
			if (stands.some((p) => Math.hypot(p.x - x, p.y - y) < clear.lamp + radius * 0.4)) continue;
			clumps.push({ x, y, z: radius * 0.5, radius, flat: 0.8, out: 0.8, tone });
		}
	const tree: Tree = {
		id: bed.id,
		name: bed.name,
		at: bed.centre,
		spread: 0.01,
		height: 0.5,
		crownBase: 0,
		trunkDiameter: 0.01,
		form: 'round',
		ground: 'bed',
		light: 'none',
		seenFrom: bed.centre,
		rootRadius: 0
	};
	return { tree, hand, seed, clumps, middle: 0.2, half: 0.01, paint: [0.13, 0.21, 0.085] };
}
