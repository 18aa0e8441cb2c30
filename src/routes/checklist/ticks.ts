/** Ticks of the checklist, each one change that one undo takes back. */
import { targetsOf, withTicks, type ChecklistItem, type ChecklistStep } from '$lib/domain/checklist';
import { session } from '$lib/state';

const longest = 44;
/** A step in a few words: up to its first stop, or to a word's end. */
export function inShort({ text }: Pick<ChecklistStep, 'text'>): string {
	const first = text.split(/[.:,;](?:\s|$)| \(/, 1)[0]!;
	return first.length <= longest ? first : `${first.slice(0, first.lastIndexOf(' ', longest))}…`;
}
const words = 'the tick at';
/** Whether the last change was a tick: it can be taken back beside the list. */
export const isTick = (label: string | null): boolean => label?.startsWith(words) ?? false;

function keep(targets: readonly Pick<ChecklistItem, 'id' | 'doneFor'>[], isOn: boolean, what: string): boolean {
	const { done, ...others } = session.yard;
	const next = withTicks(done, targets, isOn);
	return session.change({ ...others, ...(next ? { done: next } : {}) }, `${words} “${what}”`);
}
/** Ticks a step with all its parts, or takes the ticks away. */
export const tickStep = (step: ChecklistStep, isOn: boolean): boolean => keep(targetsOf(step), isOn, inShort(step));
export const tickItem = (item: ChecklistItem, step: ChecklistStep, isOn: boolean): boolean =>
	keep([item], isOn, `${item.label}: ${inShort(step)}`);
/** Forgets ticks whose step is no longer on the list. `entries`: as in the yard. */
export function forget(entries: readonly string[]): boolean {
	const { done = [], ...others } = session.yard;
	const left = done.filter((entry) => !entries.includes(entry));
	return session.change({ ...others, ...(left.length > 0 ? { done: left } : {}) }, 'ticks no longer on the list');
}

/** Id in the document of a step's box. */
export const boxId = (id: string): string => `do-${id.replace(/[^a-z0-9]+/gi, '-')}`;
