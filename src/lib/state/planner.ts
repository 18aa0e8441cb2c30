/** The plan worked out off the page's own thread, so that a slow phone still answers the finger. */
import type { Plan } from '../domain/plan';
import type { Yard } from '../domain/yard';

export interface Order {
	id: number;
	/** The yard as JSON: what a page has put into it may be a reactive proxy, which does not pass between threads. */
	text: string;
}
export interface Delivery {
	id: number;
	/** Null: it could not be worked out. */
	plan: Plan | null;
}
export interface Planner {
	/** Orders the plan of a yard. While one is being worked out only the last order is kept. */
	ask(yard: Yard): void;
}
/** Answers that the plan says nothing of: ticking a step or typing a reading changes none of it. */
const apart: readonly string[] = ['name', 'done', 'underlay', 'pictures'];
const isSame = (a: object, b: object, except: readonly string[]): boolean => {
	const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
	const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
	return [...keys].every((key) => except.includes(key) || one[key] === other[key]);
};
/** The two yards have one plan. Parts are told apart by identity: a change leaves the parts it does not touch as they are. */
export const haveOnePlan = (a: Yard, b: Yard): boolean =>
	isSame(a, b, [...apart, 'power']) && isSame(a.power, b.power, ['measured']);

/** What of a `Worker` is used, for tests. */
export type Workshop = Pick<Worker, 'postMessage' | 'addEventListener'>;

/**
 * `take` is given each plan with the very yard it was ordered for, in order; a null plan says that it could not be worked out. `lost` is called
 * once when the workshop itself fails (its file did not load): nothing comes from it any more.
 */
export function makePlanner(
	workshop: Workshop,
	take: (yard: Yard, plan: Plan | null) => void,
	lost: () => void
): Planner {
	let inWork: { id: number; yard: Yard } | null = null;
	let waiting: Yard | null = null;
	let last: { yard: Yard; plan: Plan } | null = null;
	let count = 0;
	let closed = false;
	const send = (yard: Yard) => {
		inWork = { id: ++count, yard };
		workshop.postMessage({ id: count, text: JSON.stringify(yard) } satisfies Order, []);
	};
	const close = () => {
		if (closed) return;
		closed = true;
		lost();
	};
	workshop.addEventListener('message', ({ data }: MessageEvent<Delivery>) => {
		if (closed || data.id !== inWork?.id) return;
		const { yard } = inWork;
		inWork = null;
		last = data.plan && { yard, plan: data.plan };
		const next = waiting;
		waiting = null;
		// The next one is begun before this one is drawn.
		if (next) send(next);
		take(yard, data.plan);
	});
	workshop.addEventListener('error', close);
	workshop.addEventListener('messageerror', close);
	return {
		ask(yard) {
			if (closed || yard === (waiting ?? inWork?.yard)) return;
			if (inWork && waiting === null && haveOnePlan(inWork.yard, yard)) inWork = { ...inWork, yard };
			else if (inWork) waiting = yard;
			else if (last && last.yard !== yard && haveOnePlan(last.yard, yard)) take(yard, (last = { ...last, yard }).plan);
			else send(yard);
		}
	};
}
