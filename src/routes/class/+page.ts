import type { PageLoad } from './$types';

// Lessons are fetched in a piece of their own: what a page is made of is listed in what the first question loads.
export const load: PageLoad = async () => ({ lessons: (await import('$lib/domain/lesson')).lessons });
