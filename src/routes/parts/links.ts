import { resolve } from '$app/paths';
import type { Place } from '$lib/flow';

/** Address of a question's page on this site, whatever folder the site is served from. */
export const questionHref = ({ question, item }: Place): string =>
	`${resolve('/')}ask/${question.chapter}/${question.id}/${item === null ? '' : `?item=${encodeURIComponent(item)}`}`;
