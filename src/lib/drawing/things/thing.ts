/** What all things have in common, before their place is put into words. */
import type { Line, Point } from '../../domain/shared/geometry';
import type { YardPoint } from '../../domain/yard';
import type { DrawnThing, Handle, ThingKind } from './types';
import { pointWords } from './words';

/** A thing without what is said of its place. */
export type Thing = Omit<DrawnThing, 'said' | 'fromEdges' | 'neighbours'>;
/** Half the size of what has a place and no size of its own, metres: about a hand. */
export const hand = 0.1;

type Told = Pick<Thing, 'kind' | 'id' | 'kindWord' | 'name'> & Partial<Omit<Thing, 'key'>>;
export const thing = (told: Told): Thing => ({
	label: null,
	at: null,
	line: null,
	closed: false,
	reach: 0,
	handles: [],
	...told,
	key: keyOf(told.kind, told.id)
});
export const keyOf = (kind: ThingKind, id: string): string => `${kind}/${id}`;

export const onPlan = ({ along, out }: YardPoint): Point => ({ x: along, y: out });
/** Of what has one place. */
export const placed = (at: Point | null): Pick<Thing, 'at' | 'handles'> => ({
	at,
	handles: at ? [{ index: 0, at, words: 'Where it stands' }] : []
});
export const handlesOf = (points: Line, closed: boolean): Handle[] =>
	points.map((at, index) => ({ index, at, words: pointWords(index, points.length, closed) }));
/** Of an outline. */
export const outlined = (outline: readonly YardPoint[] | undefined): Pick<Thing, 'line' | 'closed' | 'handles'> => {
	const line = outline?.map(onPlan) ?? null;
	return { line, closed: true, handles: line ? handlesOf(line, true) : [] };
};
