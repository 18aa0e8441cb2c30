/** Changes made on the pages of the circuit and the hours: what was done last is said, with the way back, until something else is changed. */
import { tick } from 'svelte';
import type { Advice } from '$lib/domain/shared/findings';
import type { CircuitChoice, Yard } from '$lib/domain/yard';
import { session } from '$lib/state';

interface Said {
	kind: 'done' | 'undone' | 'refused';
	/** What it was, in a few words. */
	label: string;
	/** The yard of which it is said. */
	yard: Yard;
}

class Taken {
	#said = $state.raw<Said | null>(null);
	/** Null once another change was made. */
	said = $derived(this.#said?.yard === session.yard ? this.#said : null);
	/** Where the words stand; focus goes there when what was pressed is gone. */
	place: HTMLElement | null = null;

	#say(kind: Said['kind'], label: string): void {
		this.#said = { kind, label, yard: session.yard };
	}
	#change(changes: Advice['changes'], label: string): boolean {
		const before = session.yard;
		const written = session.answers(
			changes.map(({ path, value }) => ({ path, item: null, each: undefined, value: value ?? undefined })),
			label
		);
		const done = written && session.yard !== before;
		this.#say(done ? 'done' : 'refused', label);
		return done;
	}
	async #focus(): Promise<void> {
		await session.settled();
		await tick();
		this.place?.focus();
	}

	/** Takes an advice, or another change that is offered, as one that one undo takes back. */
	take({ changes, label }: Pick<Advice, 'changes' | 'label'>): Promise<void> {
		// An offer of the plan before the last change may undo that change: the new plan, on its way, makes its own offers.
		if (!session.isPlanCurrent) return Promise.resolve();
		this.#change(changes, label);
		return this.#focus();
	}
	/** Writes the circuit as set by hand. The control in hand keeps the focus, unless it went with the change. */
	async set(circuit: CircuitChoice | undefined, label: string): Promise<void> {
		this.#change([{ path: 'power.circuit', value: circuit ?? null }], label);
		await session.settled();
		await tick();
		if (document.activeElement === document.body) this.place?.focus();
	}
	/** Takes back what was said to be done, and nothing else. */
	undo(): Promise<void> {
		if (this.said?.kind !== 'done') return Promise.resolve();
		const { label } = this.said;
		session.undo();
		this.#say('undone', label);
		return this.#focus();
	}
}
export const taken = new Taken();
