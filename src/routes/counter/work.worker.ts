/// <reference lib="webworker" />
import { worked, type Job, type Work } from './work';

export interface JobOrder {
	id: number;
	job: Job;
}
export interface JobDone {
	id: number;
	/** Null: it could not be worked out; the page says so. */
	work: Work | null;
}
const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const tried = (job: Job): Work | null => {
	try {
		return worked(job);
	} catch {
		return null;
	}
};
scope.addEventListener('message', ({ data: { id, job } }: MessageEvent<JobOrder>) => {
	scope.postMessage({ id, work: tried(job) } satisfies JobDone, []);
});
