/** Everything on the drawing, as a person means it. Pure: the same plan and yard give the same things. */
import type { Plan } from '../../domain/plan';
import type { Yard } from '../../domain/yard';
import { edgesOf, fromEdgesOf } from './from-edges';
import { openingsOf, porchesOf, sectionsOf, stepsOf } from './house';
import { neighboursOf } from './neighbours';
import * as planted from './planted';
import { devicesOf, fixturesOf, runsOf } from './powered';
import type { Thing } from './thing';
import type { DrawnThing } from './types';
import { saidOf } from './words';

/** From the street to the house, as one walks; of those level with one another from left to right; what has no place yet comes last. */
function walking(things: readonly Thing[]): Thing[] {
	const at = (one: Thing) => one.at ?? one.line?.[0] ?? null;
	return things.toSorted((a, b) => {
		const [p, q] = [at(a), at(b)];
		if (!p || !q) return (p ? 0 : 1) - (q ? 0 : 1);
		return q.y - p.y || p.x - q.x;
	});
}
/** What a thing is not measured from: itself, and steps not from the walk that they are of. */
const partOf = ({ kind, id, key }: Thing): string => (kind === 'steps' ? `walk/${id.split('/')[0]}` : key);
/**
 * Every thing the drawing shows, and what was named and has no place yet: kinds in the order of `kindOrder`, within a kind from
 * the street to the house; lights and runs in the order of their labels. Places as told in `yard`, which may be a moment ahead of
 * its `plan`. Metres, in the yard's frame.
 */
export function thingsOf(plan: Plan, yard: Yard): DrawnThing[] {
	const { site } = plan;
	const things = [
		...sectionsOf(yard, site),
		...openingsOf(yard, site),
		...walking(porchesOf(yard, site)),
		...walking(planted.treesOf(yard, site)),
		...walking(planted.walksOf(yard, site)),
		...walking(planted.drivesOf(yard, site)),
		...walking(stepsOf(yard, site)),
		...walking(planted.bedsOf(yard)),
		...walking(planted.pavedOf(yard)),
		...walking(planted.seatingOf(yard)),
		...walking(planted.waterOf(yard, site)),
		...walking(planted.lightsOf(yard)),
		...walking(planted.wallsOf(yard)),
		...walking(planted.numbersOf(yard)),
		...devicesOf(yard, plan),
		...fixturesOf(yard, plan),
		...runsOf(plan)
	];
	const edges = edgesOf(site);
	const neighbours = neighboursOf(plan);
	return things.map((one): DrawnThing => {
		const first = one.at ?? one.handles[0]?.at ?? one.line?.[0] ?? null;
		const fromEdges = first ? fromEdgesOf(edges, first, partOf(one)) : [];
		return { ...one, fromEdges, neighbours: neighbours.get(one.key) ?? [], said: saidOf({ ...one, fromEdges }) };
	});
}
