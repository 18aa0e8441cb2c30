/** The page's side of the painter: asks a worker for maps and pictures, and holds what came back. */
import type { LightMap } from '$lib/domain/light';
import type { Plan } from '$lib/domain/plan';
import type { Box } from '$lib/domain/shared/geometry';
import type { Grid } from '$lib/drawing/light-map/contours';
import type { View } from '$lib/night/types';
import type { Answer, Request, Seen, Sheet } from './messages';

type Wish = Request extends infer R ? (R extends unknown ? Omit<R, 'id'> : never) : never;

export class Painter {
	map = $state.raw<LightMap | null>(null);
	walls = $state.raw<Map<string, Grid> | null>(null);
	/** Of the picture in hand. */
	seen = $state.raw<Seen | null>(null);
	/** It is the fine one, which stays. */
	fine = $state(false);
	/** How much of the fine picture is done, 0 to 1. */
	share = $state(0);
	/** Why there is no picture. */
	problem = $state<string | null>(null);
	/** Takes a picture for the canvas. */
	onsheet: (sheet: Sheet) => void = () => undefined;

	#worker: Worker | null = null;
	#count = 0;
	/** The latest request of each kind: answers to earlier ones are dropped. */
	readonly #latest = new Map<Request['kind'], number>();
	#developing = false;
	#nextDaylight: number | null = null;

	start(): void {
		try {
			this.#worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
		} catch {
			this.#fail();
			return;
		}
		this.#worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => this.#take(data));
		this.#worker.addEventListener('error', () => this.#fail());
		this.#worker.addEventListener('messageerror', () => this.#fail());
	}
	stop(): void {
		this.#worker?.terminate();
		this.#worker = null;
	}

	/** Maps of a plan; without a worker the page works them out itself. */
	async measure(plan: Plan, box: Box): Promise<void> {
		if (this.#worker) {
			this.#ask({ kind: 'ground', plan, box });
			this.#ask({ kind: 'walls', plan });
			return;
		}
		const { fieldOf, groundOf, wallsOf } = await import('./grids');
		const field = fieldOf(plan);
		this.map = groundOf(field, box);
		this.walls = wallsOf(field, plan);
	}
	/** `box`: what is shown from above, metres. `daylight`: 0 night, 1 full day. */
	paint(plan: Plan, view: View, box: Box, daylight: number): void {
		this.seen = null;
		this.fine = false;
		this.share = 0;
		this.#developing = false;
		this.#nextDaylight = null;
		this.#ask({ kind: 'paint', plan, view, box, daylight });
	}
	/** The picture in hand at another hour. While one is being developed only the last wish is kept. */
	develop(daylight: number): void {
		if (!this.seen || this.#developing) {
			this.#nextDaylight = daylight;
			return;
		}
		this.#developing = true;
		this.#nextDaylight = null;
		this.#ask({ kind: 'develop', daylight });
	}

	#ask(wish: Wish): void {
		if (!this.#worker) return;
		const id = ++this.#count;
		this.#latest.set(wish.kind, id);
		this.#worker.postMessage({ ...wish, id }, []);
	}
	#take(answer: Answer): void {
		const current = (kind: Request['kind']) => this.#latest.get(kind) === answer.id;
		switch (answer.kind) {
			case 'ground':
				if (current('ground')) this.map = answer.map;
				return;
			case 'walls':
				if (current('walls')) this.walls = answer.walls;
				return;
			case 'progress':
				if (current('paint')) this.share = answer.share;
				return;
			case 'painted':
				if (!current('paint')) return;
				this.seen = answer.seen;
				this.fine = answer.fine;
				return this.#catchUp();
			case 'developed':
				if (!current('paint') && !current('develop')) return;
				this.onsheet(answer.sheet);
				if (!current('develop')) return;
				this.#developing = false;
				return this.#catchUp();
			case 'failed':
				this.#fail(answer.words);
		}
	}
	#catchUp(): void {
		if (this.#nextDaylight !== null) this.develop(this.#nextDaylight);
	}
	#fail(words = ''): void {
		this.problem = `The picture could not be painted in this browser.${words ? ` It says: ${words}.` : ''} The light map and the figures below do not need it.`;
		this.stop();
	}
}
