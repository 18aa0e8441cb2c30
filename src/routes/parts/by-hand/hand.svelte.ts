/** Changes made by hand on the layout page: each one change that one undo takes back, and what was done last is said. */
import { tick } from 'svelte';
import type { Yard } from '$lib/domain/yard';
import { session } from '$lib/state';
import type { Told } from './changes';

class Hand {
	#said = $state.raw<{ words: string; yard: Yard } | null>(null);
	/** Null once another change was made. */
	said = $derived(this.#said?.yard === session.yard ? this.#said.words : null);
	/** Where the words stand; focus goes there when what was pressed is gone. */
	place: HTMLElement | null = null;
	/** Who waits for a point on the drawing. */
	picking = $state.raw<{ key: string; take: (at: { along: number; out: number }) => void } | null>(null);

	get told(): Told {
		return session.yard.fixtures;
	}
	/** `label`: what undo says it takes back. False: the yard could not hold it. */
	set(told: Told, label: string): boolean {
		const done = session.answers([{ path: 'fixtures', item: null, each: undefined, value: told }], label);
		this.#said = {
			words: done ? `Done: ${label}.` : `Nothing changed: ${label} is further than a yard reaches.`,
			yard: session.yard
		};
		void session
			.settled()
			.then(tick)
			.then(() => {
				if (document.activeElement === document.body) this.place?.focus();
			});
		return done;
	}
	pick(key: string, take: (at: { along: number; out: number }) => void): void {
		this.picking = this.picking?.key === key ? null : { key, take };
	}
}
export const hand = new Hand();
