/** Changes to the lights of the plan: kept as what the hand did, over what the plan does. */
import type { Technique } from '$lib/domain/placement';
import type { Plan } from '$lib/domain/plan';
import { distance, distanceToPolygon, nearestOnLine, nearestOnSegment, type Point } from '$lib/domain/shared/geometry';
import { distanceToStrip, type Site } from '$lib/domain/site';
import { capital, limits, type AddedFixture, type Yard, type YardPoint } from '$lib/domain/yard';
import { added, addedOf, editOf, moved, removed, targetsFor, type Told } from '../by-hand/changes';
import { techniqueName } from '../words';
import { gone, refused } from './edits-listed';
import { asTold, offYard, onPlan } from './edits-points';
import type { Edit, Edited } from './edits-types';

const techniques: readonly Technique[] = ['uplight', 'wash', 'graze', 'path', 'step', 'drive', 'area', 'number'];
/** A light further off than this is for nothing in particular, metres: about the reach of a garden lamp. */
const farthest = 5;

type Target = NonNullable<AddedFixture['target']>;
function distanceTo(site: Site, { kind, id }: Target, p: Point): number {
	const wall = site.walls.find((one) => one.id === id);
	const strip = site.strips.find((one) => one.id === id && one.kind === kind);
	const area = site.areas.find((one) => one.id === id && one.kind === kind);
	const tree = site.trees.find((one) => one.id === id);
	const flown = site.strips.find(({ steps }) => steps.some((one) => one.id === id));
	const number = site.houseNumber.find((one) => one.id === id);
	switch (kind) {
		case 'tree':
			return tree ? distance(p, tree.at) : Infinity;
		case 'wall':
			return wall ? nearestOnSegment(p, wall.from, wall.to).distance : Infinity;
		case 'walk':
		case 'drive':
			return strip ? Math.max(0, distanceToStrip(p, strip)) : Infinity;
		case 'bed':
		case 'seating':
			return area ? Math.max(0, distanceToPolygon(p, area.polygon)) : Infinity;
		case 'number':
			return number ? distance(p, number.at) : Infinity;
		case 'steps': {
			const flight = flown?.steps.find((one) => one.id === id);
			const near = flown && nearestOnLine(p, flown.centre);
			if (!flight || !near) return Infinity;
			return near.distance + Math.max(0, flight.start - near.at, near.at - flight.end);
		}
	}
}
/** What a light at a place is for: the nearest thing of those that such a light is for. */
function targetAt(plan: Plan, technique: Technique, p: Point): Target | null {
	let best: { target: Target; far: number } | null = null;
	for (const { target } of targetsFor(plan, technique)) {
		const far = distanceTo(plan.site, target, p);
		if (far <= farthest && (!best || far < best.far - 1e-9)) best = { target, far };
	}
	return best?.target ?? null;
}

function addFixture(yard: Yard, plan: Plan, edit: Extract<Edit, { do: 'add' }>): Edited {
	const technique = techniques.find((one) => one === (edit.technique ?? 'path'));
	if (!technique) return refused(`There is no kind of light called ${edit.technique}. Choose one of the list.`);
	const [at, ...more] = edit.points;
	if (!at || more.length > 0) return refused('A light has one place. Point to where it stands.');
	const problem = offYard([at], plan.site.units);
	if (problem !== null) return refused(problem);
	if ((yard.fixtures?.added?.length ?? 0) >= limits.items)
		return refused(`A yard holds ${limits.items} lights of your own at most.`);
	const { told, id } = added(yard.fixtures, technique, asTold(at), targetAt(plan, technique, at));
	return {
		ok: true,
		yard: withFixtures(yard, told),
		label: `${capital(techniqueName(technique))} added`,
		key: `fixture/${id}`
	};
}
function withFixtures(yard: Yard, told: Told): Yard {
	const { fixtures: _, ...rest } = yard;
	return told ? { ...rest, fixtures: told } : rest;
}

/** What of a light its changes are made from. One just added is not in the plan before the plan has followed. */
function lightOf(yard: Yard, plan: Plan, id: string): { id: string; label: string; at: Point; told: YardPoint } | null {
	const fixture = plan.fixtures.find((one) => one.id === id);
	const own = addedOf(yard.fixtures, id);
	const told = own?.at ?? editOf(yard.fixtures, id)?.at ?? (fixture ? asTold(fixture.at) : null);
	if (!told || (!fixture && !own)) return null;
	const label = fixture?.label ?? (own ? capital(techniqueName(own.technique)) : '');
	return { ...fixture, id, label, at: fixture?.at ?? onPlan(told), told };
}
export function changeFixture(yard: Yard, plan: Plan, id: string, edit: Edit): Edited {
	if (edit.do === 'add') return addFixture(yard, plan, edit);
	const light = lightOf(yard, plan, id);
	if (!light) return refused(gone);
	const to = (at: Point): Edited => {
		const problem = offYard([at], plan.site.units);
		if (problem !== null) return refused(problem);
		const told = moved(yard.fixtures, light, at);
		return { ok: true, yard: withFixtures(yard, told), label: `${light.label} moved`, key: `fixture/${id}` };
	};
	switch (edit.do) {
		case 'move':
			return edit.handle === 0 ? to(edit.to) : refused(`${light.label} has one place.`);
		case 'draw':
			return edit.points[0] && edit.points.length === 1 ? to(edit.points[0]) : refused(`${light.label} has one place.`);
		case 'shift':
			return to({ x: light.told.along + edit.by.x, y: light.told.out + edit.by.y });
		case 'remove':
			return {
				ok: true,
				yard: withFixtures(yard, removed(yard.fixtures, light)),
				label: `${light.label} removed`,
				key: null
			};
		case 'size':
		case 'name':
		case 'sort':
		case 'bend':
		case 'straighten':
			return refused(
				`${light.label} can be moved and removed here. Its lamp and its aim are set on the page of the layout.`
			);
	}
}
