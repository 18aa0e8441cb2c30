/// <reference lib="webworker" />
import { makePlan } from '../domain/plan';
import type { Plan } from '../domain/plan';
import type { Delivery, Order } from './planner';

const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const worked = (yard: Order['yard']): Plan | null => {
	try {
		return makePlan(yard);
	} catch {
		// The page says so, with what to do.
		return null;
	}
};

scope.addEventListener('message', ({ data: { id, yard } }: MessageEvent<Order>) => {
	const delivery: Delivery = { id, plan: worked(yard) };
	scope.postMessage(delivery, []);
});
