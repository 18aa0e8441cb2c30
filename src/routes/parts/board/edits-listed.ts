/** Changes to what is kept in a list of the yard: trees, walks, beds and the rest. */
import type { Plan } from '$lib/domain/plan';
import { formatLength } from '$lib/domain/shared/units';
import { calledThe, capital, limits, type Yard } from '$lib/domain/yard';
import { newItemId, writeAnswer } from '$lib/flow';
import { itemsOf, listed, prefixOf, sizeField, type Item, type Listed } from './edits-kinds';
import { asTold, drawnPoints, offYard, onPlan, pointsOf, withPoints, wrongCount } from './edits-points';
import type { Edit, Edited } from './edits-types';
import type { Point } from '$lib/domain/shared/geometry';

type Of<Do extends Edit['do']> = Extract<Edit, { do: Do }>;
const longestName = 60;

export const refused = (problem: string): Edited => ({ ok: false, problem });
export const gone = 'That is no longer on the drawing. Choose another thing.';

/** A new one. Its id and its name are those that its question would give; all else of it is not asked yet. */
export function addListed(yard: Yard, plan: Plan, kind: Listed, edit: Of<'add'>): Edited {
	const { each, noun, many, sorts } = listed[kind];
	const items = itemsOf(yard, kind);
	if (items.length >= limits.items) return refused(`A yard holds ${limits.items} ${many} at most.`);
	const name = edit.name?.trim() ?? '';
	const sort = edit.sort ?? sorts?.usual ?? null;
	const drawn = drawnPoints(kind, edit.points, plan);
	const problem = 'problem' in drawn ? drawn.problem : (longName(name) ?? wrongSort(kind, sort));
	if ('problem' in drawn || problem !== null) return refused(problem ?? '');
	const id = newItemId(items, prefixOf(kind));
	const item = { id, ...(sort === null ? {} : { kind: sort }), name };
	const listedYard = writeAnswer(yard, each, null, undefined, [...items, item]);
	return {
		ok: true,
		yard: withPoints(listedYard, kind, id, drawn.points),
		label: `${capital(name || noun)} added`,
		key: `${kind}/${id}`
	};
}
/** Any other change to the item of a list with this id. */
export function changeListed(yard: Yard, plan: Plan, kind: Listed, id: string, edit: Exclude<Edit, Of<'add'>>): Edited {
	const item = itemsOf(yard, kind).find((one) => one.id === id);
	if (!item) return refused(gone);
	const on = { yard, plan, kind, item, points: pointsOf(yard, kind, id).map(onPlan) };
	switch (edit.do) {
		case 'draw': {
			const drawn = drawnPoints(kind, edit.points, plan);
			if ('problem' in drawn) return refused(drawn.problem);
			return done(on, withPoints(yard, kind, id, drawn.points), 'drawn');
		}
		case 'move':
			return moved(on, edit);
		case 'shift':
			if (on.points.length === 0) return refused(noPlace(on));
			return replaced(
				on,
				on.points.map(({ x, y }) => ({ x: x + edit.by.x, y: y + edit.by.y })),
				'moved'
			);
		case 'bend':
			return bent(on, edit);
		case 'straighten':
			return straightened(on, edit);
		case 'size':
			return sized(on, edit);
		case 'name':
			return named(on, edit);
		case 'sort':
			return sorted(on, edit);
		case 'remove':
			return {
				ok: true,
				yard: writeAnswer(
					yard,
					listed[kind].each,
					null,
					undefined,
					itemsOf(yard, kind).filter((one) => one !== item)
				),
				label: `${wordOf(on)} removed`,
				key: null
			};
	}
}

interface On {
	yard: Yard;
	plan: Plan;
	kind: Listed;
	item: Item;
	/** As told; empty where it has none yet. */
	points: Point[];
}
const wordOf = ({ kind, item }: On): string => capital(item.name?.trim() || listed[kind].noun);
const theOf = ({ kind, item }: On): string => calledThe(item.name ?? '', listed[kind].noun);
const noPlace = (on: On): string => `${capital(theOf(on))} is not on the drawing yet. Draw it first.`;
const pointWord = ({ kind }: On): string => (listed[kind].shape === 'outline' ? 'corner' : 'point');

const done = (on: On, yard: Yard, what: string): Edited => ({
	ok: true,
	yard,
	label: `${wordOf(on)} ${what}`,
	key: `${on.kind}/${on.item.id}`
});
/** Other points for the thing, held to the yard. */
function replaced(on: On, points: readonly Point[], what: string): Edited {
	const problem = offYard(points, on.plan.site.units);
	if (problem !== null) return refused(problem);
	return done(on, withPoints(on.yard, on.kind, on.item.id, points.map(asTold)), what);
}
function moved(on: On, { handle, to }: Of<'move'>): Edited {
	const { shape } = listed[on.kind];
	if (shape === 'place' && handle === 0) return replaced(on, [to], on.points.length > 0 ? 'moved' : 'placed');
	if (on.points.length === 0) return refused(noPlace(on));
	if (!(handle in on.points)) return refused(`${capital(theOf(on))} has no such ${pointWord(on)}. Choose another.`);
	return replaced(on, on.points.with(handle, to), 'moved');
}
function bent(on: On, { after, at }: Of<'bend'>): Edited {
	const { shape, noun } = listed[on.kind];
	if (shape === 'place' || shape === 'ends') return refused(`A ${noun} has no bends.`);
	if (on.points.length === 0) return refused(noPlace(on));
	if (!(after in on.points)) return refused(`${capital(theOf(on))} has no such ${pointWord(on)}. Choose another.`);
	const problem = wrongCount(on.kind, on.points.length + 1);
	if (problem !== null) return refused(problem);
	return replaced(on, on.points.toSpliced(after + 1, 0, at), `given a ${pointWord(on)}`);
}
function straightened(on: On, { handle }: Of<'straighten'>): Edited {
	const { shape, noun } = listed[on.kind];
	if (shape === 'place' || shape === 'ends') return refused(`A ${noun} has no bends.`);
	if (on.points.length === 0) return refused(noPlace(on));
	if (!(handle in on.points)) return refused(`${capital(theOf(on))} has no such ${pointWord(on)}. Choose another.`);
	const problem = wrongCount(on.kind, on.points.length - 1);
	if (problem !== null) return refused(`${problem} Remove the ${noun} instead.`);
	return replaced(on, on.points.toSpliced(handle, 1), `left a ${pointWord(on)} fewer`);
}
function sized(on: On, { what, to }: Of<'size'>): Edited {
	const { units } = on.plan.site;
	const field = sizeField(on.kind, what);
	if (!field) return refused(`${capital(theOf(on))} has no ${what} to set.`);
	if (field.when && !field.when(on.yard, on.item.id))
		return refused(`${capital(theOf(on))} has no ${what}: only a sign has one.`);
	if (!(to >= field.min && to <= field.max)) {
		const range = `${formatLength(field.min, units)} to ${formatLength(field.max, units)}`;
		return refused(`${field.label} of ${theOf(on)}: ${formatLength(to, units)} is not within ${range}.`);
	}
	const length = Math.round(to * 1e4) / 1e4;
	const { each } = listed[on.kind];
	return done(on, writeAnswer(on.yard, `@.${what}`, on.item.id, each, length), `given another ${what}`);
}
const longName = (name: string): string | null =>
	name.length > longestName ? `A name has ${longestName} letters at most; this one has ${name.length}.` : null;
function named(on: On, { to }: Of<'name'>): Edited {
	const name = to.trim();
	const problem = longName(name);
	if (problem !== null) return refused(problem);
	return done(on, writeAnswer(on.yard, '@.name', on.item.id, listed[on.kind].each, name), 'renamed');
}
/** Why a thing cannot be of this sort; null: it can, or none is told. */
function wrongSort(kind: Listed, sort: string | null): string | null {
	const { sorts, noun } = listed[kind];
	if (sort === null || sorts?.values.some(({ value }) => value === sort)) return null;
	if (!sorts) return `A ${noun} is of one kind only.`;
	return `Choose one of these: ${sorts.values.map(({ label }) => label.toLowerCase()).join(', ')}.`;
}
function sorted(on: On, { to }: Of<'sort'>): Edited {
	const problem = wrongSort(on.kind, to);
	if (problem !== null) return refused(problem);
	return done(on, writeAnswer(on.yard, '@.kind', on.item.id, listed[on.kind].each, to), 'of another kind');
}
