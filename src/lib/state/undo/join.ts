/** The steps that were kept and those made since the page opened, put together to one list. */
import { writeYard, type Yard } from '../../domain/yard';
import { mostSteps, type History, type Step } from '../history';
import { keptOf, stepOf, type Kept, type KeptList } from './kept';
import { backward, forward } from './splice';

/** What undo takes back where the yard that is kept had gone on without its list: the tab was cut off in between. */
export const joinLabel = 'the last change';

interface Walked {
	list: KeptList;
	/** Steps from the state of the list to the one looked for; negative is back. Null: it is not in the list. */
	found: number | null;
}
/** One way along the list: how many steps hold together, and the first that leads to `wanted`. */
function along(steps: readonly Kept[], text: string, wanted: string, go: typeof forward) {
	let here = text;
	let found: number | null = null;
	for (const [index, step] of steps.entries()) {
		const next = go(here, step);
		if (next === null) return { sound: index, found };
		here = next;
		if (found === null && here === wanted) found = index + 1;
	}
	return { sound: steps.length, found };
}
/**
 * The list up to the first step on either side that does not fit the text beside it, and where in it `wanted` stands:
 * nearest to its state, and of two as near the older one, because the yard is written after its step.
 */
export function walked(list: KeptList, wanted: string): Walked {
	const back = along(list.past.toReversed(), list.text, wanted, backward);
	const ahead = along(list.future, list.text, wanted, forward);
	const places = [list.text === wanted ? 0 : null, back.found && -back.found, ahead.found].filter(
		(place) => place !== null
	);
	const found = places.sort((a, b) => Math.abs(a) - Math.abs(b))[0] ?? null;
	const past = list.past.slice(list.past.length - back.sound);
	return { list: { ...list, past, future: list.future.slice(0, ahead.sound) }, found };
}

/** The list with the state at `place` in hand. */
function moved(list: KeptList, place: number): { past: readonly Kept[]; future: readonly Kept[] } {
	const all = [...list.past, ...list.future];
	const finger = list.past.length + place;
	return { past: all.slice(0, finger), future: all.slice(finger) };
}
export interface Joined {
	history: History<Yard>;
	/** What is kept of each step. */
	kept: [Step<Yard>, Kept][];
	/** Number of the last step done. */
	at: number;
	/** The list in the store is this one already. */
	same: boolean;
}
/** The yards of a history made since the page opened, oldest first, up to the one in hand or to the last one ahead. */
function filesOf(own: History<Yard>): { before: string; steps: { step: Step<Yard>; text: string }[] } {
	const yards = [own.now];
	for (const step of own.past.toReversed()) yards.unshift(step.back(yards[0] ?? own.now) ?? own.now);
	for (const step of own.future) yards.push(step.forth(yards.at(-1) ?? own.now) ?? own.now);
	const [before = '', ...texts] = yards.map(writeYard);
	return { before, steps: [...own.past, ...own.future].map((step, i) => ({ step, text: texts[i] ?? '' })) };
}
/**
 * The kept list with the session's own steps after it. The yard that the page opened with is looked for in the kept list;
 * when it is not there, one step leads to it from where the list ends, so that nothing is lost and no step is ever applied
 * to another yard than its own. Changes of one's own drop what was ahead, as any change does.
 */
export function joined(kept: KeptList | null, own: History<Yard>, onUnreadable: () => void): Joined {
	const { before, steps } = filesOf(own);
	const ownKept = steps.map(({ step, text }, i): [Step<Yard>, Kept] => [
		step,
		keptOf(step.label, steps[i - 1]?.text ?? before, text)
	]);
	if (kept === null) return { history: own, kept: ownKept, at: own.past.length, same: false };
	const { list, found } = walked(kept, before);
	const { past, future } = found === null ? bridged(list, before) : moved(list, found);
	const asStep = (one: Kept): [Step<Yard>, Kept] => [stepOf(one, onUnreadable), one];
	const pastSteps = past.map(asStep);
	const futureSteps = steps.length > 0 ? [] : future.map(asStep);
	return {
		history: {
			now: own.now,
			past: [...pastSteps.map(([step]) => step), ...own.past].slice(-mostSteps),
			future: steps.length > 0 ? own.future : futureSteps.map(([step]) => step)
		},
		kept: [...pastSteps, ...futureSteps, ...ownKept],
		at: list.at + (found ?? 1) + own.past.length,
		same: found === 0 && steps.length === 0
	};
}
const bridged = (list: KeptList, text: string) => ({
	past: [...list.past, keptOf(joinLabel, list.text, text)],
	future: []
});
