/** A list kept by an older version of the format, written as today's files are: steps are differences between files. */
import { readYard, writeYard } from '../../domain/yard';
import { keptOf, type Kept, type KeptList } from './kept';
import { backward, forward } from './splice';

const fileIn = (text: string | null): string | null => {
	if (text === null) return null;
	const read = readYard(text);
	return read.ok ? writeYard(read.yard) : null;
};
/** Steps in one direction from a text, as far as each leads to a yard that can still be read. */
function restated(steps: readonly Kept[], text: string, file: string, back: boolean): Kept[] {
	const found: Kept[] = [];
	let [oldHere, here] = [text, file];
	for (const step of steps) {
		const oldNext = (back ? backward : forward)(oldHere, step);
		const next = fileIn(oldNext);
		if (oldNext === null || next === null) break;
		found.push(back ? keptOf(step.label, next, here) : keptOf(step.label, here, next));
		[oldHere, here] = [oldNext, next];
	}
	return found;
}
/** The list as it is when its file is in today's form; else written anew. Null when its yard cannot be read at all. */
export function inTodaysForm(list: KeptList): KeptList | null {
	const file = fileIn(list.text);
	if (file === null || file === list.text) return file === null ? null : list;
	return {
		at: list.at,
		text: file,
		past: restated(list.past.toReversed(), list.text, file, true).reverse(),
		future: restated(list.future, list.text, file, false)
	};
}
