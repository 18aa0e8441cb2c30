/** The whole way through, for finding one's place on it: the chapters that ask, then the pages that answer. */
import type { ChapterId } from '$lib/flow';

export const results = [
	{ id: 'plan', title: 'Layout' },
	{ id: 'light', title: 'After dark' },
	{ id: 'circuit', title: 'Circuit' },
	{ id: 'hours', title: 'Hours' },
	{ id: 'shopping', title: 'Shopping' },
	{ id: 'checklist', title: 'Checklist' },
	{ id: 'packet', title: 'Packet' }
] as const;
export type ResultId = (typeof results)[number]['id'];

export const resultPath = (id: ResultId) => `/${id}/` as const;

const order: (ChapterId | ResultId)[] = [
	'place',
	'house',
	'trees',
	'walks',
	'drive',
	'spots',
	'power',
	'plan',
	'light',
	'circuit',
	'hours',
	'shopping',
	'checklist'
];

/** The hour of the evening for a page: 0 early afternoon at the first question, 1 deep night at the checklist. */
export function hourOf(routeId: string | null, chapter: string | undefined): number {
	const id = chapter ?? routeId?.split('/')[1] ?? '';
	if (id === 'packet') return 1;
	const at = order.indexOf(id as ChapterId);
	if (at >= 0) return at / (order.length - 1);
	return id === 'answers' ? 7 / (order.length - 1) : 0;
}
