/** Where all that is told of a thing is asked: the page of its questions, or of what sets it. */
import { resolve } from '$app/paths';
import type { DrawnThing, ThingKind } from '$lib/drawing/things/types';
import { questions, type Question } from '$lib/flow';
import { questionHref } from '../../links';
import { isListed, listed } from '../edits-kinds';

const single: Partial<Record<ThingKind, string>> = {
	section: 'front',
	opening: 'openings',
	porch: 'porches',
	receptacle: 'receptacle',
	transformer: 'transformer',
	sensor: 'sensor'
};
/** Address of the page; null: nothing is asked of it. */
export function askedAt({ kind, id }: DrawnThing): string | null {
	const page = (found: Question | undefined, item: string | null) =>
		found ? questionHref({ question: found, item }) : null;
	if (kind === 'fixture') return resolve('/plan/');
	if (kind === 'run') return resolve('/circuit/draw/');
	if (kind === 'steps')
		return page(
			questions.find((one) => one.id === 'walk-steps'),
			id.split('/')[0] ?? null
		);
	if (isListed(kind))
		return page(
			questions.find((one) => one.each === listed[kind].each),
			id
		);
	return page(
		questions.find((one) => one.id === single[kind]),
		null
	);
}
