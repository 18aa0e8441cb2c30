/** What is written down of a tick: the id of the step and, after `@`, what it was done for. */
import { fnv1a } from '../../shared/fnv1a';
import type { DoneFor } from '../types';

/** The yard takes 120 characters; what it was done for takes up to 20 of them. */
const longest = 96;
const kept = 84;

/** An id from what a step is about: `leg/oak/1`. Names too long for the yard are cut and keep a sum of the whole, so that they stay apart. */
export function tickId(...parts: string[]): string {
	const whole = parts.join('/').replaceAll('@', '_');
	return whole.length <= longest ? whole : `${whole.slice(0, kept)}~${fnv1a(whole).toString(16)}`;
}

export interface DoneEntry {
	id: string;
	/** As in `DoneFor`; null where the step is the same in any plan. */
	mark: string | null;
}
export const entryOf = (id: string, doneFor?: DoneFor): string => (doneFor ? `${id}@${doneFor.mark}` : id);
export function readEntry(text: string): DoneEntry {
	const at = text.indexOf('@');
	return at < 0 ? { id: text, mark: null } : { id: text.slice(0, at), mark: text.slice(at + 1) };
}
