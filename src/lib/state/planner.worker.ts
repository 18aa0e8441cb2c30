/// <reference lib="webworker" />
import { makePlan } from '../domain/plan';
import type { Plan } from '../domain/plan';
import type { Delivery, Order } from './planner';

const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const worked = (text: Order['text']): Plan | null => {
	try {
		return makePlan(JSON.parse(text));
	} catch {
		// The page says so, with what to do.
		return null;
	}
};

scope.addEventListener('message', ({ data: { id, text } }: MessageEvent<Order>) => {
	const delivery: Delivery = { id, plan: worked(text) };
	scope.postMessage(delivery, []);
});
