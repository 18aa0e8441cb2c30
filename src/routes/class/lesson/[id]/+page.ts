import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageLoad } from './$types';

// Fetched in a piece of its own: what a page is made of is listed in what the first question loads.
const fetched = async () => (await import('$lib/domain/lesson')).lessons;

/** One page for each lesson there is. */
export const entries: EntryGenerator = async () => (await fetched()).map(({ id }) => ({ id }));
export const load: PageLoad = async ({ params }) => {
	const [lessons, room] = await Promise.all([fetched(), import('../parts/Room.svelte')]);
	const at = lessons.findIndex(({ id }) => id === params.id);
	const lesson = lessons[at];
	if (!lesson) error(404, 'There is no lesson of this name. The page “In class” lists all of them.');
	const next = lessons[at + 1];
	return { Room: room.default, lesson, next: next ? { id: next.id, title: next.title } : null };
};
