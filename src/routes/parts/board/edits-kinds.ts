/** Kinds of thing that are kept in a list of the yard: where, of what shape, and which of their sizes are told. */
import { fieldOf, readAnswer, type Each, type Field } from '$lib/flow';
import type { Yard } from '$lib/domain/yard';
import type { Addable, Size } from './edits-types';

export type Listed = Exclude<Addable, 'receptacle' | 'transformer' | 'sensor' | 'fixture'>;
/** `place`: one point; `line`: two or more; `outline`: three or more; `ends`: two. */
export type Shape = 'place' | 'line' | 'outline' | 'ends';
export interface ListedKind {
	each: NonNullable<Each>;
	shape: Shape;
	/** In a sentence: `bed`. */
	noun: string;
	many: string;
	/** Answers that hold its sizes are named as the sizes are. */
	sizes: readonly Size[];
	/** Kinds it comes in, where the yard tells them apart. */
	sorts?: { values: readonly { value: string; label: string }[]; usual: string | null };
}
export const listed: Readonly<Record<Listed, ListedKind>> = {
	tree: { each: 'trees', shape: 'place', noun: 'tree', many: 'trees', sizes: ['spread', 'height'] },
	walk: { each: 'walks', shape: 'line', noun: 'walk', many: 'walks', sizes: ['width'] },
	drive: { each: 'drives', shape: 'line', noun: 'drive', many: 'drives', sizes: ['width'] },
	bed: { each: 'spots.beds', shape: 'outline', noun: 'bed', many: 'beds', sizes: [] },
	paved: { each: 'spots.paved', shape: 'outline', noun: 'paved area', many: 'paved areas', sizes: [] },
	seating: { each: 'spots.seating', shape: 'place', noun: 'seating place', many: 'seating places', sizes: ['across'] },
	water: {
		each: 'spots.water',
		shape: 'place',
		noun: 'water',
		many: 'ponds and pools',
		sizes: ['length', 'width'],
		sorts: {
			values: [
				{ value: 'pond', label: 'Pond' },
				{ value: 'pool', label: 'Swimming pool' },
				{ value: 'spa', label: 'Spa or hot tub' },
				{ value: 'fountain', label: 'Fountain' }
			],
			// Of a pool the plan keeps furthest clear. Until it is told otherwise that errs on the safe side.
			usual: 'pool'
		}
	},
	light: {
		each: 'spots.lights',
		shape: 'place',
		noun: 'light',
		many: 'lights that are there',
		sizes: ['height'],
		sorts: {
			values: [
				{ value: 'street-lamp', label: 'Street lamp' },
				{ value: 'porch-light', label: 'Porch light' },
				{ value: 'other', label: 'Another light' }
			],
			usual: 'other'
		}
	},
	wall: { each: 'spots.walls', shape: 'ends', noun: 'garden wall', many: 'garden walls', sizes: ['height'] },
	number: {
		each: 'spots.numbers',
		shape: 'place',
		noun: 'house number',
		many: 'house numbers and signs',
		sizes: ['width'],
		sorts: {
			values: [
				{ value: 'number', label: 'A number' },
				{ value: 'sign', label: 'A sign' }
			],
			usual: null
		}
	}
};
export const isListed = (kind: string): kind is Listed => Object.hasOwn(listed, kind);
export const leastPoints: Readonly<Record<Shape, number>> = { place: 1, line: 2, outline: 3, ends: 2 };

export interface Item {
	id: string;
	name?: string;
}
const isItem = (value: unknown): value is Item =>
	typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string';
export const itemsOf = (yard: Yard, kind: Listed): Item[] => {
	const list = readAnswer(yard, listed[kind].each);
	return Array.isArray(list) ? list.filter(isItem) : [];
};
/** Before the number in the id of a new one: that of its question. */
export function prefixOf(kind: Listed): string {
	const field = fieldOf(listed[kind].each);
	return field?.kind === 'items' || field?.kind === 'rows' ? field.prefix : kind;
}
export type LengthField = Extract<Field, { kind: 'length' }>;
/** The question's field for a size: its label and what it takes. Null: this kind has no such size. */
export function sizeField(kind: Listed, what: Size): LengthField | null {
	const { sizes, each } = listed[kind];
	const field = sizes.includes(what) ? fieldOf(`@.${what}`, each) : null;
	return field?.kind === 'length' ? field : null;
}
