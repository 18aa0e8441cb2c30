/** What to mark on the drawing while a question is asked. */
import type { Place, Question } from '$lib/flow';

const eachKind: Record<NonNullable<Question['each']>, string> = {
	trees: 'tree',
	walks: 'walk',
	drives: 'drive',
	'spots.beds': 'bed',
	'spots.paved': 'paved',
	'spots.seating': 'seating',
	'spots.water': 'water',
	'spots.lights': 'light',
	'spots.walls': 'wall',
	'spots.numbers': 'number'
};
/** Kind of thing that a question is asked for, as the plan names it. */
const kindOf = (place: Place): string | null => (place.question.each ? eachKind[place.question.each] : null);

/** What to mark on the drawing while a question is asked. */
export function highlightOf(place: Place): { kind: string; id: string; what?: 'place' } | null {
	const kind = kindOf(place);
	const where = place.question.fields[0]?.kind === 'point';
	if (kind && place.item) return { kind, id: place.item, ...(where ? { what: 'place' as const } : {}) };
	const single: Record<string, string> = {
		lot: 'lot',
		'house-size': 'house',
		receptacle: 'receptacle',
		transformer: 'transformer',
		sensor: 'sensor'
	};
	const own = single[place.question.id];
	return own ? { kind: own, id: '' } : null;
}
