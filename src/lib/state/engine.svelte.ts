/** Where plans come from: a worker, or where there are none this thread. Loaded after the first question stands. */
import type { Plan } from '../domain/plan';
import type { Yard } from '../domain/yard';
import { makePlanner, type Planner } from './planner';

type MakePlan = (yard: Yard) => Plan;

const planWords =
	'The plan could not be worked out from these answers. Your answers are safe: take back the last change, or save a copy and report it.';

/** The plan of the yard in hand, which `yardOf` reads. */
export class Engine {
	readonly #yardOf: () => Yard;
	#makePlan = $state.raw<MakePlan | null>(null);
	#planner = $state.raw<Planner | null>(null);
	/** The last plan that came, and the yard it was ordered for. */
	#delivered = $state.raw<{ yard: Yard; plan: Plan | null } | null>(null);
	#waiting: (() => void)[] = [];
	#worked = $derived.by(() => this.#work());

	/** Null before the first is there. After a change it is the plan from before for as long as the new one takes. */
	plan: Plan | null = $derived(this.#worked.plan);
	problem: string | null = $derived(this.#worked.problem);
	/** The plan is that of the yard in hand, not of the one before the last change. */
	isCurrent = $derived.by(() => this.#planner === null || this.#delivered?.yard === this.#yardOf());

	constructor(yardOf: () => Yard) {
		this.#yardOf = yardOf;
	}

	#work(): { plan: Plan | null; problem: string | null } {
		if (this.#planner) {
			const plan = this.#delivered?.plan ?? null;
			return { plan, problem: this.#delivered && !plan ? planWords : null };
		}
		if (!this.#makePlan) return { plan: null, problem: null };
		try {
			return { plan: this.#makePlan(this.#yardOf()), problem: null };
		} catch {
			return { plan: null, problem: planWords };
		}
	}

	/** Resolves when it stands; rejects when its parts did not load. */
	async start(): Promise<void> {
		if (typeof Worker === 'undefined') return this.#startHere();
		try {
			await this.#startWorker();
		} catch {
			// A browser may have workers and let none be made: then plans are made here, which is slower and otherwise the same.
			await this.#startHere();
		}
	}
	async #startHere(): Promise<void> {
		const { makePlan } = await import('../domain/plan');
		this.#makePlan = makePlan;
	}
	#startWorker(): Promise<void> {
		const worker = new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });
		return new Promise<void>((resolve, reject) => {
			const planner = makePlanner(
				worker,
				(yard, plan) => {
					this.#delivered = { yard, plan };
					resolve();
					if (yard === this.#yardOf()) this.#settle();
				},
				() => {
					worker.terminate();
					stop();
					this.#planner = null;
					this.#startHere()
						.then(resolve, reject)
						.finally(() => this.#settle());
				}
			);
			this.#planner = planner;
			const stop = $effect.root(() => {
				$effect(() => planner.ask(this.#yardOf()));
			});
		});
	}
	#settle(): void {
		for (const go of this.#waiting.splice(0)) go();
	}
	/** Resolves once the plan is that of the yard in hand, or cannot be had. */
	settled(): Promise<void> {
		return this.isCurrent ? Promise.resolve() : new Promise((go) => this.#waiting.push(go));
	}
	/** The yard in hand is another one altogether: the plan of the last is none of it. */
	drop(): void {
		this.#delivered = null;
	}
}
