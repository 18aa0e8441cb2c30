/** The questions as data. The flow routes, the domain decides, words sit with the question. */
import type { Yard } from '../domain/yard';

export type ChapterId = 'place' | 'house' | 'trees' | 'walks' | 'drive' | 'spots' | 'power';
export interface Chapter {
	id: ChapterId;
	title: string;
	/** One sentence: what this chapter is for. */
	about: string;
}
export interface Option {
	value: string | number | boolean;
	label: string;
	help?: string;
}
interface FieldBase {
	/** Where the answer lives: dot path with item ids, `@` for the item a question is asked for: `@.spread`, `house.depth`. In rows: the key in the row. */
	path: string;
	label: string;
	help?: string;
	/** "Not sure" is an answer here: what is then assumed, in a few words. */
	unsure?: string;
	/** May be left empty. */
	optional?: boolean;
	/** Shown only while this holds (other fields of the same page decide). */
	when?: (yard: Yard, item: string | null) => boolean;
}
export type Field = FieldBase &
	(
		| { kind: 'length'; min: number; max: number; example: string }
		| { kind: 'number'; min: number; max: number; unit: string }
		| { kind: 'count'; min: number; max: number }
		/** `usual`: taken while an optional one is left empty, and shown as chosen. */
		| { kind: 'choice'; options: Option[]; usual?: Option['value'] }
		| { kind: 'text'; maxLength: number }
		/** Bearing by eight directions or in degrees. */
		| { kind: 'bearing' }
		/** A point on the ground. `none`: also offered as an answer, stored as "none". */
		| { kind: 'point'; none?: string }
		/** "Suggest one for me", or a point and what it hangs on; `faces`: and which way it looks. */
		| { kind: 'spot'; faces?: true }
		| { kind: 'line'; least: number; closed: boolean }
		/** A small table; each row an object with an id. `none`: label of the empty answer; '' = an empty list is not offered. */
		| { kind: 'rows'; columns: Field[]; add: string; none: string; prefix: string; fixed?: Record<string, unknown> }
		/** Named things that are each asked about afterwards. */
		| {
				kind: 'items';
				add: string;
				none: string;
				prefix: string;
				suggestions: string[];
				fixed?: Record<string, unknown>;
		  }
		| { kind: 'place' }
		| { kind: 'hours' }
		/** Other hours from one date to another. */
		| { kind: 'season' }
		| { kind: 'price' }
	);
export interface Question {
	/** Slug, unique: `canopy`. Route: `/ask/<chapter>/<id>`. */
	id: string;
	chapter: ChapterId;
	/** Asked once for every item of this list, e.g. `trees`, `spots.water`. */
	each?:
		| 'trees'
		| 'walks'
		| 'drives'
		| 'spots.beds'
		| 'spots.paved'
		| 'spots.seating'
		| 'spots.water'
		| 'spots.lights'
		| 'spots.walls'
		| 'spots.numbers';
	/** The heading, a question in the second person. `name`: the item's own name. */
	title: (name: string) => string;
	/** One or two sentences under the heading. Trade words in it are explained from the glossary. */
	hint: string;
	fields: Field[];
	/** Asked only while this holds. */
	when?: (yard: Yard, item: string | null) => boolean;
	/** Id of the question whose answer decides whether this one, or a field of it, is asked. */
	decidedBy?: string;
	/** Words used here that are explained in place: keys of the glossary. */
	words?: string[];
}
/** One page in the way through. */
export interface Step {
	question: Question;
	item: string | null;
	/** open: something not answered; answered: all; unsure: all, at least one "not sure". */
	status: 'open' | 'answered' | 'unsure';
}
