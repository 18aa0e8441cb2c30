/**
 * How the rules hold of a layout: the engine plans the yard with the group's lights set by hand, and each rule is measured in that plan. Where the plan has
 * a finding of its own the mark is that finding, but for what lies within a pencil's line of a limit (`tolerance`). Pure and total.
 */
import { makePlan } from '../../plan';
import { fixtureModels } from '../../shared/catalogue';
import { techniqueOf } from './make';
import { placeLayout } from './place';
import { aroundRows } from './rows/around';
import { driveRows } from './rows/drives';
import type { Ground, PlacedLight } from './rows/ground';
import { supplyRows } from './rows/supply';
import { treeRows } from './rows/trees';
import { walkRows } from './rows/walks';
import { wallRows } from './rows/walls';
import { lightKinds, type Exercise, type Layout, type Marked, type RuleRow } from './types';

const rowsOf = (ground: Ground): RuleRow[] =>
	[walkRows, treeRows, driveRows, wallRows, aroundRows, supplyRows].flatMap((rows) => rows(ground));

export function markLayout(exercise: Exercise, layout: Layout): Marked {
	const { yard, ids, problems, supplyTold } = placeLayout(exercise, layout);
	const plan = makePlan(yard);
	const byId = new Map(plan.fixtures.map((fixture) => [fixture.id, fixture]));
	const fixtures = ids.map((id) => (id === null ? undefined : byId.get(id)));
	const lights = fixtures.flatMap((fixture, index): PlacedLight[] => {
		const kind = layout.lights[index]?.kind;
		if (!fixture || !kind) return [];
		const head = fixtureModels.find(({ id }) => id === fixture.model)?.headDiameter ?? 0;
		return [{ kind, fixture, radius: head / 2 }];
	});
	const refused = ids.length - lights.length;
	// A size of transformer that is not sold, and what was taken in its place.
	const unmet = plan.findings.filter(({ code }) => code === 'cable.hand-unmet').map(({ message }) => message);
	const rows = rowsOf({ exercise, plan, lights, refused, supplyTold, units: exercise.units });
	const applies = rows.filter(({ state }) => state !== 'none');
	return {
		plan,
		labels: fixtures.map((fixture) => fixture?.label ?? null),
		problems: [...problems, ...unmet],
		rows,
		held: applies.filter(({ state }) => state === 'held').length,
		applies: applies.length
	};
}

/** What the engine would do, as a layout that a group might have drawn. */
export function ownLayout({ own }: Pick<Exercise, 'own'>): Layout {
	return {
		lights: own.fixtures.flatMap(({ technique, at }) => {
			const kind = lightKinds.find((one) => techniqueOf[one] === technique);
			return kind ? [{ kind, along: at.x, out: at.y }] : [];
		}),
		supply: own.supply && {
			along: own.supply.at.x,
			out: own.supply.at.y,
			height: own.supply.mountHeight,
			voltAmps: null
		}
	};
}
