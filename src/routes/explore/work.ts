/** What is worked out off the page's thread: plans, and which inputs move which figures. */
import { figuresOf, inputsOf, likelyFirst, tryOne } from '$lib/domain/lesson/explore';
import { makePlan, type Plan } from '$lib/domain/plan';
import type { Yard } from '$lib/domain/yard';
import type { Delivery, Order } from '$lib/state/planner';

/** Asks which inputs move the figures of a yard; the ones tried already are left out. It replaces the one before it. */
export interface TryOrder {
	tries: number;
	/** The yard as JSON. */
	text: string;
	/** The figure in question: what is likely to move it comes first. */
	key: string;
	done: readonly string[];
}
export interface TryDelivery {
	/** Of no order for a plan. */
	id: 0;
	tries: number;
	input: string;
	/** Keys of the figures that moved, came or went. */
	moved: string[];
}
export type Message = Order | TryOrder;
export type Answer = Delivery | TryDelivery;

const planOf = (text: string): Plan | null => {
	try {
		return makePlan(JSON.parse(text) as Yard);
	} catch {
		// The page says so, with what to do.
		return null;
	}
};
function* triesOf({ text, key, done, tries }: TryOrder): Generator<TryDelivery> {
	const plan = planOf(text);
	if (!plan) return;
	const yard = JSON.parse(text) as Yard;
	const figures = figuresOf(plan);
	const left = likelyFirst(inputsOf(yard, plan), key).filter(({ id }) => !done.includes(id));
	for (const input of left) yield { id: 0, tries, input: input.id, moved: [...tryOne(yard, figures, input).moved] };
}

/** Answers orders through `say`. Between two tries it lets other orders in, so that a plan waits for one try at most. */
export function makeBench(say: (answer: Answer) => void): (message: Message) => void {
	let running: Generator<TryDelivery> | null = null;
	const step = (own: Generator<TryDelivery>) => {
		if (own !== running) return;
		const next = own.next();
		if (next.done) return;
		say(next.value);
		setTimeout(() => step(own));
	};
	return (message) => {
		if ('id' in message) return say({ id: message.id, plan: planOf(message.text) });
		const own = triesOf(message);
		running = own;
		setTimeout(() => step(own));
	};
}
