/** A tab as the undo list sees it: a yard in hand, the way back, and what was said, over a store shared with other tabs. */
import { blankYard, readYard, writeYard, type Yard } from '../../domain/yard';
import { changed, historyOf, redone, undone, type History } from '../history';
import { keepUndo, type Keeper } from '.';

export interface UndoTab {
	history: History<Yard>;
	keeper: Keeper | null;
	/** Everything that was said, in order. */
	said: (string | null)[];
	/** The file of the yard in hand. */
	file(): string;
	change(yard: Yard, label?: string): void;
	undo(): void;
	redo(): void;
	/** All that was noted is written. */
	idle(): Promise<void>;
}
export const yardIn = (file: string): Yard => {
	const read = readYard(file);
	if (!read.ok) throw new Error(read.problems[0]);
	return read.yard;
};
/** A tab whose list has not come yet: `arrive` brings it. */
export function bareTab(file: string = writeYard(blankYard())): { tab: UndoTab; arrive: () => Promise<void> } {
	const go = (history: History<Yard>) => {
		if (history === tab.history) return;
		tab.history = history;
		tab.keeper?.moved(history);
	};
	const tab: UndoTab = {
		history: historyOf(yardIn(file)),
		keeper: null,
		said: [],
		file: () => writeYard(tab.history.now),
		change: (yard, label = 'a change') => go(changed(tab.history, yard, label)),
		undo: () => go(undone(tab.history)),
		redo: () => go(redone(tab.history)),
		idle: async () => tab.keeper?.idle()
	};
	const arrive = async () => {
		await keepUndo({
			history: () => tab.history,
			adopt: (history, keeper) => Object.assign(tab, { history, keeper }),
			say: (problem) => void tab.said.push(problem)
		});
		await tab.idle();
	};
	return { tab, arrive };
}
/** A tab that found the yard of `file` in the browser and has read its list. */
export async function openTab(file?: string): Promise<UndoTab> {
	const { tab, arrive } = bareTab(file);
	await arrive();
	return tab;
}
/** The files from the one in hand back to the oldest, and ahead to the newest; the tab is left as it was. */
export function everyFile(tab: UndoTab): { back: string[]; ahead: string[]; labels: string[] } {
	const walk = (go: typeof undone, left: (history: History<Yard>) => number) => {
		const files: string[] = [];
		for (let history = tab.history; left(history) > 0;) {
			history = go(history);
			files.push(writeYard(history.now));
		}
		return files;
	};
	return {
		back: walk(undone, ({ past }) => past.length),
		ahead: walk(redone, ({ future }) => future.length),
		labels: [...tab.history.past, ...tab.history.future].map(({ label }) => label)
	};
}
