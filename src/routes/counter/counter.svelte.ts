/**
 * The customer at the counter: what was picked, the yard made of it, its plan, and what of the shelf meets it. The yard in hand of the wizard is
 * not touched. What is picked is kept in this browser until the next customer.
 */
import { browser } from '$app/environment';
import { untrack } from 'svelte';
import type { Shelf, Solution } from '$lib/domain/kits/types';
import { withLines } from '$lib/domain/kits';
import type { Plan } from '$lib/domain/plan';
import { quickYard, usualAnswers, type QuickAnswers, type QuickYard } from '$lib/domain/quick';
import { Engine } from '$lib/state/engine.svelte';
import { loadShelf, saveShelf } from '$lib/state/shelf-store';
import { Bench } from './bench';
import { nameOfBuys } from './buys';
import { readKept, written } from './kept';
import type { Job, Work } from './work';

/** The plan and what follows from it, all of one set of answers. */
export interface Result extends Job, Work {
	/** What was searched: the customer's own lines, then the shelf's. */
	stock: Shelf;
}
const key = 'duskwright/counter';
const loadWords =
	'The part that works out the plan did not load. What you picked is kept. Check the connection and reload.';
const planWords = 'No plan could be worked out from these picks. Change one, or go deeper.';
const matchWords =
	'The shelf could not be matched to this yard. What you picked is kept: look through the shelf for a line that is not right, then come back.';
const keepWords = 'This browser keeps nothing: a reload loses what was picked.';
type Units = QuickAnswers['units'];
const unitsKey = 'duskwright/shop/units';

export class Counter {
	#answers = $state.raw<QuickAnswers>(usualAnswers('feet'));
	#quick = $state.raw<QuickYard>(quickYard(usualAnswers('feet')));
	#engine = $state.raw<Engine | null>(null);
	#taken = $state.raw<string | null>(null);
	#drawn = $state.raw<{ quick: QuickYard; plan: Plan } | null>(null);
	#result = $state.raw<Result | null>(null);
	#failed = $state.raw<Job | null>(null);
	#started: Promise<void> | null = null;
	#bench: Bench | null = null;

	/** What was kept has been read. */
	ready = $state(false);
	/** Something was picked for this customer. */
	isBegun = $state(false);
	/** Null: there is none yet. */
	shelf = $state.raw<Shelf | null>(null);
	/** The store was asked for it. */
	shelfRead = $state(false);
	/** What the store says of the kept shelf, where not all is well. */
	shelfProblem = $state.raw<string | null>(null);
	keepProblem = $state.raw<string | null>(null);
	#loadProblem = $state.raw<string | null>(null);

	answers: QuickAnswers = $derived(this.#answers);
	quick: QuickYard = $derived(this.#quick);
	/** The last plan that came, with its yard; while another is on the way it is that of before. */
	drawn = $derived(this.#drawn);
	/** The last that was matched; it goes on standing while what follows a change is on the way. */
	result: Result | null = $derived(this.shelf ? this.#result : null);
	/** Result and drawing are those of the answers in hand and of the shelf as it is. */
	isCurrent = $derived(this.#result?.quick === this.#quick && this.#result.shelf === this.shelf);
	problem: string | null = $derived(
		this.#loadProblem ??
			(this.#engine?.problem ? planWords : null) ??
			(this.#failed && this.#failed.quick === this.#quick && this.#failed.shelf === this.shelf ? matchWords : null)
	);
	/** What is to be bought: the cheapest, or the other one that was taken. */
	chosen: Solution | null = $derived.by(() => {
		if (!this.result) return null;
		const { best, runnersUp } = this.result.match;
		return runnersUp.find(({ buys }) => nameOfBuys(buys) === this.#taken) ?? best;
	});

	/** In a browser only: elsewhere it does nothing. Safe to call often. */
	start(): Promise<void> {
		if (!browser) return Promise.resolve();
		this.#started ??= this.#open();
		return this.#started;
	}
	async #open(): Promise<void> {
		// What is made from here on belongs to no component: it outlives the page that asked first.
		await Promise.resolve();
		const kept = readKept(this.#read(key));
		this.#take(kept?.answers ?? usualAnswers(this.#read(unitsKey) === 'metres' ? 'metres' : 'feet'));
		this.#taken = kept?.taken ?? null;
		this.isBegun = kept !== null;
		this.ready = true;
		this.#bench = new Bench((job, work) => {
			if (work) this.#result = { ...job, ...work, stock: withLines(job.shelf, work.own) };
			else this.#failed = job;
		});
		this.#engine = new Engine(() => this.#quick.yard);
		$effect.root(() => {
			$effect(() => this.#order());
		});
		await Promise.all([
			this.lookAtShelf(),
			this.#engine.start().catch(() => {
				this.#loadProblem = loadWords;
			})
		]);
	}
	/** Reads the shelf as it is kept now: it may have been changed on its own page, or in another tab. */
	async lookAtShelf(): Promise<void> {
		const found = await loadShelf();
		// The same shelf read anew is no other shelf: nothing has to be matched again.
		if (JSON.stringify(found.shelf) !== JSON.stringify(this.shelf)) this.shelf = found.shelf;
		this.shelfProblem = found.problem;
		this.shelfRead = true;
	}
	/** Puts the invented shelf where the shop's own will be. What to tell the person where it is not kept: it serves all the same. */
	async useDemoShelf(): Promise<string | null> {
		try {
			const { demoShelf } = await import('$lib/shelf');
			const problem = await saveShelf(demoShelf, []);
			this.shelf = demoShelf;
			return problem;
		} catch {
			return 'The demo shelf did not load. Check the connection and try again.';
		}
	}
	#order(): void {
		const { plan, isCurrent } = this.#engine ?? { plan: null, isCurrent: false };
		const [quick, shelf] = [this.#quick, this.shelf];
		if (!plan || !isCurrent) return;
		untrack(() => {
			this.#drawn = { quick, plan };
			if (shelf) this.#bench?.ask({ answers: this.#answers, quick, plan, shelf });
		});
	}
	#take(answers: QuickAnswers): void {
		this.#answers = answers;
		this.#quick = quickYard(answers);
	}
	/** Takes what was picked. */
	pick(change: Partial<QuickAnswers>): void {
		this.#take({ ...this.#answers, ...change });
		this.isBegun = true;
		this.#keep();
	}
	/** Takes another way to meet the needs than the cheapest, or the cheapest again. */
	choose({ buys }: Solution): void {
		this.#taken = nameOfBuys(buys);
		this.#keep();
	}
	#read(from: string): string | null {
		try {
			return localStorage.getItem(from);
		} catch {
			this.keepProblem = keepWords;
			return null;
		}
	}
	#keep(): void {
		const units: Units = this.#answers.units;
		try {
			// What the shop measures in is its own: the next customer starts with it.
			localStorage.setItem(unitsKey, units);
			localStorage.setItem(key, written({ answers: this.#answers, taken: this.#taken }));
			this.keepProblem = null;
		} catch {
			this.keepProblem = keepWords;
		}
	}
}
export const counter = new Counter();
