/** The whole way through, for finding one's place on it: the chapters that ask, then the pages that answer. */
import { chapters } from '$lib/flow';

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

/** The hour of the evening for a page: 0 early afternoon at the first question, 1 deep night at the checklist and after. */
export function hourOf(routeId: string | null, chapter: string | undefined): number {
	const id = chapter ?? routeId?.split('/')[1];
	const order = [...chapters, ...results].map((part) => part.id as string);
	// All answers stand before the layout.
	const at = id === 'answers' ? chapters.length : order.indexOf(id ?? '');
	return Math.min(1, Math.max(0, at / (order.length - 2)));
}
