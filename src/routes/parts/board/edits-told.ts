/** What is told of a thing now, for the fields that change it. The plan may be a moment behind. */
import type { Point } from '$lib/domain/shared/geometry';
import type { Yard } from '$lib/domain/yard';
import type { DrawnThing } from '$lib/drawing/things/types';
import { readAnswer, type Field } from '$lib/flow';
import { addedOf, editOf } from '../by-hand/changes';
import { isListed, leastPoints, listed, sizeField, type LengthField } from './edits-kinds';
import { onPlan, pointsOf } from './edits-points';
import type { Size } from './edits-types';

/** Its points as they are told; as drawn where the plan has the say. */
export function pointsNow(yard: Yard, { kind, id, handles }: DrawnThing): Point[] {
	if (isListed(kind)) return pointsOf(yard, kind, id).map(onPlan);
	const spot = kind === 'receptacle' || kind === 'transformer' || kind === 'sensor' ? yard.power[kind] : undefined;
	if (typeof spot === 'object') return [onPlan('at' in spot ? spot.at : spot)];
	const byHand = kind === 'fixture' ? (addedOf(yard.fixtures, id)?.at ?? editOf(yard.fixtures, id)?.at) : undefined;
	return byHand ? [onPlan(byHand)] : handles.map(({ at }) => at);
}
/** Whether points can be put in and taken out; and the fewest and the most it has. */
export function pointsTaken({ kind }: DrawnThing): { bends: boolean; closed: boolean; least: number; most: number } {
	const shape = isListed(kind) ? listed[kind].shape : 'place';
	const bends = shape === 'line' || shape === 'outline';
	return { bends, closed: shape === 'outline', least: leastPoints[shape], most: bends ? 60 : leastPoints[shape] };
}

export interface SizeNow {
	what: Size;
	field: LengthField;
	/** Apart from the fields of its place, which go along the front and out too. */
	label: string;
	/** Metres; null: not told, or not known. */
	value: number | null;
}
/** Its sizes as they are told; those that its question would not ask left out. */
export function sizesNow(yard: Yard, { kind, id }: DrawnThing): SizeNow[] {
	if (!isListed(kind)) return [];
	const { each, sizes } = listed[kind];
	return sizes.flatMap((what): SizeNow[] => {
		const field = sizeField(kind, what);
		if (!field || field.when?.(yard, id) === false) return [];
		const told = readAnswer(yard, `@.${what}`, id, each);
		const label = kind === 'water' ? `Size ${field.label.charAt(0).toLowerCase()}${field.label.slice(1)}` : field.label;
		return [{ what, field, label, value: typeof told === 'number' ? told : null }];
	});
}
/** Its own name as it is told; null: this kind has none. */
export function nameNow(yard: Yard, { kind, id }: DrawnThing): string | null {
	if (!isListed(kind)) return null;
	const name = readAnswer(yard, '@.name', id, listed[kind].each);
	return typeof name === 'string' ? name : '';
}
export const nameField: Extract<Field, { kind: 'text' }> = { kind: 'text', path: '', label: 'Name', maxLength: 60 };
export interface SortNow {
	options: { value: string; label: string }[];
	value: string | null;
}
/** Which kind of water, light or number it is; null where there is one kind only. */
export function sortNow(yard: Yard, { kind, id }: DrawnThing): SortNow | null {
	const sorts = isListed(kind) ? listed[kind].sorts : undefined;
	if (!isListed(kind) || !sorts) return null;
	const told = readAnswer(yard, '@.kind', id, listed[kind].each);
	// A number that is not said to be a sign is a number.
	return { options: [...sorts.values], value: typeof told === 'string' ? told : (sorts.values[0]?.value ?? null) };
}
