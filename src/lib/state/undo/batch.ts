/** Which steps go into the store: the nearest ones, as many as there is room for. */
import type { Kept } from './kept';
import type { Batch } from './store';

/** Most characters that all steps together may take: a small part of what browsers allow a site. */
const mostRoom = 20_000_000;
const sizeOf = ({ label, gone, come }: Kept): number => label.length + gone.length + come.length;

/**
 * A batch for the state after step number `at`. `past` is oldest first, `future` nearest first; what lies ahead is kept
 * before what lies long back, and of the past the newest.
 */
export function batchOf(
	at: number,
	text: string,
	past: readonly (Kept | undefined)[],
	future: readonly (Kept | undefined)[],
	freshNumbers: ReadonlySet<number>,
	most: number
): Batch {
	const all = new Map<number, Kept>();
	let room = mostRoom;
	const take = (number: number, kept: Kept | undefined): boolean => {
		if (!kept || all.size >= most || sizeOf(kept) > room) return false;
		room -= sizeOf(kept);
		all.set(number, kept);
		return true;
	};
	let to = at;
	while (take(to + 1, future[to - at])) to += 1;
	let from = at + 1;
	while (take(from - 1, past[past.length + from - at - 2])) from -= 1;
	const fresh = new Map([...all].filter(([number]) => freshNumbers.has(number)));
	return { at, text, from, to, fresh, all };
}
