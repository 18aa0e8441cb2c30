/** Words of the exercise's page. */
import type { ExerciseId, LightKind, MarkState } from '$lib/domain/lesson/exercise';
import type { Tapped } from './desk.svelte';

export const exerciseNames: Readonly<Record<ExerciseId, { label: string; help: string }>> = {
	walk: { label: 'Walk and tree', help: 'Four or five lights; fifteen minutes with a lesson or two before it.' },
	drive: { label: 'And a drive and a wall', help: 'About a dozen lights; half an hour.' },
	pool: { label: 'And a bend and a pool', help: 'All of it: forty minutes.' }
};
export const kindNames: Readonly<Record<Tapped, string>> = {
	path: 'Walk light',
	tree: 'Tree light',
	drive: 'Drive light',
	wall: 'Wall light',
	transformer: 'Transformer'
};
/** As the first word of a line. */
export const kindWords: Readonly<Record<LightKind, string>> = {
	path: 'path',
	tree: 'tree',
	drive: 'drive',
	wall: 'wall'
};
export const stateWords: Readonly<Record<MarkState, string>> = {
	held: 'Held',
	nearly: 'Nearly',
	not: 'Not yet',
	none: 'Does not apply'
};
