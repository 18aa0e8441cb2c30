/** A list read off the page's own thread: ten thousand rows take a second, in which the page still answers. */
import type { ReadShelf, Wish } from '$lib/shelf';

export interface ReadOrder {
	bytes: Uint8Array;
	wish: Wish;
}
/** Null: reading broke off. */
export type ReadDelivery = ReadShelf | null;

const broke = 'Reading this list broke off. Reload the page and open it again.';

/** Once in a worker. Rejects where the worker itself fails, since its file did not load or there is no room for it. */
function inWorker(order: ReadOrder): Promise<ReadDelivery> {
	return new Promise((resolve, reject) => {
		const worker = new Worker(new URL('./reading.worker.ts', import.meta.url), { type: 'module' });
		const end = (finish: () => void) => {
			worker.terminate();
			finish();
		};
		worker.addEventListener('message', ({ data }: MessageEvent<ReadDelivery>) => end(() => resolve(data)));
		worker.addEventListener('error', () => end(() => reject(new Error(broke))));
		worker.addEventListener('messageerror', () => end(() => reject(new Error(broke))));
		worker.postMessage(order, []);
	});
}
/** The bytes of a list as a shelf. Throws in plain words where they could not be read through at all. */
export async function readList(order: ReadOrder): Promise<ReadShelf> {
	let read: ReadDelivery;
	try {
		read = await inWorker(order);
	} catch {
		// Without workers it is read here: slower to the finger, the same shelf.
		const { readShelf } = await import('$lib/shelf');
		read = readShelf(order.bytes, order.wish);
	}
	if (!read) throw new Error(broke);
	return read;
}
