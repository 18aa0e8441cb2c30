/** Undo that outlives the page. Loaded when there is something to keep, so that a first visit carries none of it. */
import { Keeper, type Desk } from './keeper';
import { openStore, readList } from './store';
import { inTodaysForm } from './today';

export type { Desk, Keeper } from './keeper';
export { wipeStore } from './store';

/**
 * Reads the kept steps, hands them to the desk before those made meanwhile, and keeps what follows. Rejects where this
 * browser has no store or bars it: undo then works in memory only.
 */
export async function keepUndo(desk: Desk): Promise<Keeper> {
	let keeper: Keeper | null = null;
	const db = await openStore(() => keeper?.lostStore());
	const found = await readList(db);
	const list = found && inTodaysForm(found.list);
	const mark = found && list === found.list ? found.mark : null;
	keeper = new Keeper(desk, db, list, mark);
	return keeper;
}
