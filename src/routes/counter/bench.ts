/** Where the shelf is matched: in a worker, so that a long shelf does not hold up a tap; where there is none, on this thread. */
import type { Job, Work } from './work';
import type { JobDone, JobOrder } from './work.worker';

type Take = (job: Job, work: Work | null) => void;

export class Bench {
	#worker: Worker | null = null;
	#count = 0;
	/** In work, and the last one asked for meanwhile. */
	#now: { id: number; job: Job } | null = null;
	#next: Job | null = null;

	/** `take` is given each job with what came of it; null: it could not be worked out. */
	constructor(private readonly take: Take) {
		try {
			this.#worker = new Worker(new URL('./work.worker.ts', import.meta.url), { type: 'module' });
		} catch {
			// None can be made here: the work is done on this thread, slower and otherwise the same.
			return;
		}
		this.#worker.addEventListener('message', ({ data }: MessageEvent<JobDone>) => this.#done(data));
		this.#worker.addEventListener('error', () => this.#lost());
		this.#worker.addEventListener('messageerror', () => this.#lost());
	}
	/** While one is in work only the last job asked for is kept. */
	ask(job: Job): void {
		if (this.#now) this.#next = job;
		else this.#send(job);
	}
	#send(job: Job): void {
		const id = ++this.#count;
		this.#now = { id, job };
		if (this.#worker) this.#worker.postMessage({ id, job } satisfies JobOrder, []);
		else void this.#here(id, job);
	}
	async #here(id: number, job: Job): Promise<void> {
		try {
			const { worked } = await import('./work');
			this.#done({ id, work: worked(job) });
		} catch {
			this.#done({ id, work: null });
		}
	}
	#done({ id, work }: JobDone): void {
		if (id !== this.#now?.id) return;
		const { job } = this.#now;
		const next = this.#next;
		this.#now = this.#next = null;
		if (next) this.#send(next);
		this.take(job, work);
	}
	#lost(): void {
		this.#worker?.terminate();
		this.#worker = null;
		const job = this.#next ?? this.#now?.job;
		this.#now = this.#next = null;
		if (job) this.#send(job);
	}
}
