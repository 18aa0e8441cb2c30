/** One number of a yard moved on trial, and what moves with it. The yard in hand is only looked at. */
import { dependents, figuresOf, inputsOf, likelyFirst, type Tried, type YardInput } from '$lib/domain/lesson/explore';
import type { Plan } from '$lib/domain/plan';
import type { Yard } from '$lib/domain/yard';
import { makePlanner, type Planner } from '$lib/state/planner';
import { openBench, type Bench } from './bench';
import type { Answer, TryDelivery, TryOrder } from './work';

interface Worked {
	yard: Yard;
	plan: Plan;
}
const lostWords = 'The part that works out the plan did not load. Nothing is lost. Check the connection and reload.';
const planWords = 'The plan could not be worked out with that. Put it back, or take another value.';

export class Explore {
	readonly #bench: Bench;
	readonly #planner: Planner;
	#count = 0;
	/** What was set for each trial yard that was ordered. */
	readonly #owners = new WeakMap<Yard, { input: string; value: number }>();
	#yard = $state.raw<Yard | null>(null);
	#base = $state.raw<Worked | null>(null);
	#trial = $state.raw<(Worked & { input: string; value: number }) | null>(null);
	#tried = $state.raw<readonly Tried[]>([]);
	/** The trial yard last ordered, and what was set for it. */
	#ordered: { yard: Yard; input: string; value: number } | null = null;

	/** Id of the input that was looked at before the yard changed. */
	#wanted: string | null = null;

	key = $state<string | null>(null);
	input = $state.raw<YardInput | null>(null);
	/** Null: as it is in the yard. */
	value = $state<number | null>(null);
	problem = $state<string | null>(null);

	/** The yard as it is, worked out; null until it is. */
	base = $derived(this.#base?.yard === this.#yard ? this.#base : null);
	figures = $derived(this.base ? figuresOf(this.base.plan) : []);
	figure = $derived(this.figures.find(({ key }) => key === this.key) ?? null);
	inputs = $derived(this.base ? likelyFirst(inputsOf(this.base.yard, this.base.plan), this.key ?? '') : []);
	/** Those that were tried and move the figure. */
	movers = $derived.by(() => {
		const moving = new Set(this.#tried.flatMap(({ input, moved }) => (moved.has(this.key ?? '') ? [input] : [])));
		return this.inputs.filter(({ id }) => moving.has(id));
	});
	triedCount = $derived(this.#tried.length);
	/** The plan with the change, the last that came; null while there is none. */
	trial = $derived(this.value === null || this.#trial?.input !== this.input?.id ? null : this.#trial);
	/** What is shown is that of the value set. */
	isCurrent = $derived(this.value === null || this.#trial?.value === this.value);
	found = $derived(this.base && this.trial ? dependents(this.base.plan, this.trial.plan) : null);
	after = $derived(this.trial ? (figuresOf(this.trial.plan).find(({ key }) => key === this.key) ?? null) : this.figure);

	constructor() {
		this.#bench = openBench();
		this.#planner = makePlanner(
			this.#bench,
			(yard, plan) => this.#take(yard, plan),
			() => (this.problem = lostWords)
		);
		this.#bench.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
			if ('tries' in data && data.tries === this.#count) this.#takeTry(data);
		});
	}
	#take(yard: Yard, plan: Plan | null): void {
		const isTrial = yard === this.#ordered?.yard;
		if (!plan) {
			if (isTrial || yard === this.#yard) this.problem = planWords;
			return;
		}
		if (yard === this.#yard) {
			this.#base = { yard, plan };
			this.input = this.inputs.find(({ id }) => id === this.#wanted) ?? null;
			this.#order();
			return;
		}
		// One that was ordered for a value left since then still shows the way there; one of another input is dropped.
		const owner = this.#owners.get(yard);
		if (owner && this.value !== null && owner.input === this.#ordered?.input) this.#trial = { yard, plan, ...owner };
	}
	#takeTry({ input, moved }: TryDelivery): void {
		this.#tried = [...this.#tried, { input, moved: new Set(moved) }];
		if (!this.input) this.input = this.movers[0] ?? null;
	}
	/** Has what is not tried yet tried, the likely first. */
	#order(): void {
		const { base, key } = this;
		if (!base || key === null) return;
		const done = this.#tried.map(({ input }) => input);
		const order: TryOrder = { tries: ++this.#count, text: JSON.stringify(base.yard), key, done };
		this.#bench.postMessage(order, []);
	}

	/** Looks at another yard, or at the same one after a change. The figure and the input stay where the yard has them. */
	look(yard: Yard): void {
		if (yard === this.#yard) return;
		this.#wanted = this.input?.id ?? this.#wanted;
		this.#yard = yard;
		this.#tried = [];
		this.#count++;
		this.value = this.#trial = this.#ordered = null;
		this.problem = null;
		this.input = null;
		this.#planner.ask(yard);
	}
	/** Takes a figure in question. */
	choose(key: string): void {
		if (this.key === key) return;
		this.key = key;
		const stays = this.#tried.some(({ input, moved }) => input === this.input?.id && moved.has(key));
		if (!stays && this.value === null) this.input = this.movers[0] ?? null;
		this.#order();
	}
	take(input: YardInput): void {
		this.input = input;
		this.putBack();
	}
	move(value: number): void {
		const { input, base } = this;
		if (!input || !base) return;
		this.problem = null;
		this.value = value === input.start ? null : value;
		if (this.value === null) return;
		const yard = input.put(base.yard, value);
		const owner = { input: input.id, value };
		this.#ordered = { yard, ...owner };
		this.#owners.set(yard, owner);
		this.#planner.ask(yard);
	}
	putBack(): void {
		this.value = this.#trial = this.#ordered = null;
		this.problem = null;
	}
	/** The yard with the change; null while there is none. */
	get changed(): Yard | null {
		return this.value === null ? null : (this.#ordered?.yard ?? null);
	}
	close(): void {
		this.#bench.close();
	}
}
