/** What one plan has otherwise than another. */
import type { Finding } from '../../shared/findings';
import type { Plan } from '../../plan';
import { figuresOf } from './figures';
import type { Dependents, Gone, Moved, PlanFigure } from './types';

/** Of the larger of the two. */
const shareOf = (before: number, after: number): number => {
	const larger = Math.max(Math.abs(before), Math.abs(after));
	return larger === 0 ? 0 : Math.abs(after - before) / larger;
};
function moved(before: PlanFigure, after: PlanFigure): Moved[] {
	if (before.text === after.text) return [];
	return [
		{
			key: after.key,
			place: after.place,
			label: after.label,
			before: before.text,
			after: after.text,
			share: shareOf(before.value, after.value),
			percent: before.value === 0 ? null : (100 * (after.value - before.value)) / Math.abs(before.value)
		}
	];
}
const byKey = (figures: readonly PlanFigure[]) => new Map(figures.map((figure) => [figure.key, figure]));
/** The light, run or surface that a figure is of: the part of its key that is the same for all its figures. */
function thingOf(key: string): string {
	const parts = key.split('/');
	return parts[0] === 'light' ? parts.slice(0, 3).join('/') : parts[0] === 'run' ? parts.slice(0, 2).join('/') : key;
}
/** What of `here` is not `there`: whole things by their place, and single figures of things that stay. */
function gone(here: readonly PlanFigure[], there: readonly PlanFigure[]): Gone[] {
	const [keys, things] = [new Set(there.map(({ key }) => key)), new Set(there.map(({ key }) => thingOf(key)))];
	const found = new Map<string, Gone>();
	for (const { key, label, place } of here) {
		if (keys.has(key)) continue;
		const thing = thingOf(key);
		const isWhole = !things.has(thing);
		const name = isWhole ? thing : key;
		const known = found.get(name);
		if (known) known.figures += 1;
		else found.set(name, { place: isWhole ? place : `${label} (${place})`, figures: 1 });
	}
	return [...found.values()];
}
const nameOf = ({ code, about }: Finding): string => `${code} ${about?.kind ?? ''}/${about?.id ?? ''}`;
const without = (here: readonly Finding[], there: readonly Finding[]): Finding[] => {
	const known = new Set(there.map(nameOf));
	return here.filter((finding) => !known.has(nameOf(finding)));
};

/**
 * Which figures moved, matched by their keys, and by how much of themselves; which came or went; and findings likewise, matched by code and thing. A
 * figure has moved when what is shown of it is not what it was. Pure and total.
 */
export function dependents(before: Plan, after: Plan): Dependents {
	const [then, now] = [figuresOf(before), figuresOf(after)];
	const thenBy = byKey(then);
	const pairs = now.flatMap((figure) => {
		const was = thenBy.get(figure.key);
		return was ? [[was, figure] as const] : [];
	});
	const changed = pairs.flatMap(([was, is]) => moved(was, is));
	return {
		moved: changed.toSorted((a, b) => b.share - a.share),
		still: pairs.length - changed.length,
		came: gone(now, then),
		went: gone(then, now),
		findings: { came: without(after.findings, before.findings), went: without(before.findings, after.findings) }
	};
}
/** Keys of all figures that moved, came or went: cheaper than `dependents`. */
export function movedKeys(before: readonly PlanFigure[], after: readonly PlanFigure[]): Set<string> {
	const was = byKey(before);
	const found = new Set(after.flatMap(({ key, text }) => (was.get(key)?.text === text ? [] : [key])));
	const is = new Set(after.map(({ key }) => key));
	for (const { key } of before) if (!is.has(key)) found.add(key);
	return found;
}
