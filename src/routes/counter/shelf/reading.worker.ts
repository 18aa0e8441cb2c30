/// <reference lib="webworker" />
import { readShelf } from '$lib/shelf';
import type { ReadDelivery, ReadOrder } from './reading';

const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const worked = ({ bytes, wish }: ReadOrder): ReadDelivery => {
	try {
		return readShelf(bytes, wish);
	} catch {
		// The page says so, with what to do.
		return null;
	}
};

scope.addEventListener('message', ({ data }: MessageEvent<ReadOrder>) => scope.postMessage(worked(data), []));
