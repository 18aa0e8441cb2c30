/** The worker that tries things out for this page; where there are no workers, this thread. */
import type { Workshop } from '$lib/state/planner';
import { makeBench, type Message } from './work';

export interface Bench extends Workshop {
	close(): void;
}
function here(): Bench {
	const target = new EventTarget();
	const bench = makeBench((answer) => target.dispatchEvent(new MessageEvent('message', { data: answer })));
	return {
		// After this turn, as a worker would.
		postMessage: (message: Message) => void setTimeout(() => bench(message)),
		addEventListener: target.addEventListener.bind(target),
		close: () => {}
	};
}
export function openBench(): Bench {
	if (typeof Worker === 'undefined') return here();
	try {
		const worker = new Worker(new URL('./explore.worker.ts', import.meta.url), { type: 'module' });
		return {
			postMessage: worker.postMessage.bind(worker),
			addEventListener: worker.addEventListener.bind(worker),
			close: () => worker.terminate()
		};
	} catch {
		// A browser may have workers and let none be made: slower here, and otherwise the same.
		return here();
	}
}
