import * as z from 'zod/mini';
import rural from './examples/rural.json';
import suburban from './examples/suburban.json';
import town from './examples/town.json';
import { yardSchema, type Yard } from './schema';

/** A yard to start from. */
export interface Start {
	id: string;
	title: string;
	about: string;
	yard: Yard;
}
const start = (id: string, title: string, about: string, yard: unknown): Start => ({
	id,
	title,
	about,
	// JSON as imported is typed loosely; checking it once gives it its type.
	get yard() {
		return z.parse(yardSchema, yard);
	}
});

// Marked pure so that a page which only needs the schema does not carry the demos with it.
/** Three finished yards, invented, ready to dig. Each reading of `yard` is a fresh copy. */
export const examples: readonly Start[] = [
	/* @__PURE__ */ start(
		'town',
		'Quince Row',
		'A narrow town front: a straight walk with a railing, and one small tree.',
		town
	),
	/* @__PURE__ */ start(
		'suburban',
		'Alder Bend',
		'An L-shaped house with a porch, a walk that bends twice and climbs two flights of steps, five trees, a seating circle and a pond.',
		suburban
	),
	/* @__PURE__ */ start(
		'rural',
		'Hazelmoor',
		'Sixty metres of curving drive between posts, an avenue of six trees, a long stone wall, and a walk round to a side door.',
		rural
	)
];
