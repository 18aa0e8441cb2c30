/** Ids that stay with a light although hand-set ones make others give way, share or stay out. */
import { distance } from '../../shared/geometry';
import type { Draft } from '../drafting';
import type { Fixture } from '../types';
import { partsOf } from './edits';

const here = 1e-6;
const keyOf = ({ kind, id }: Fixture['target'], role: string): string => `${kind} ${id} ${role}`;

export class Identity {
	readonly #open = new Map<string, Fixture[]>();
	readonly #taken: Set<string>;

	/** `own`: the lights as the plan alone would place them. `taken`: ids that no other light may get. */
	constructor(own: readonly Fixture[], taken: Iterable<string>) {
		for (const fixture of own) {
			const key = keyOf(fixture.target, partsOf(fixture.id).role);
			this.#open.set(key, [...(this.#open.get(key) ?? []), fixture]);
		}
		this.#taken = new Set(taken);
	}
	/** Which light of the plan alone this one is: the one that stood right there, else the nearest of its kind not met yet. */
	of({ target, role, at }: Draft): Fixture | null {
		const open = this.#open.get(keyOf(target, role)) ?? [];
		let best = -1;
		let least = Infinity;
		for (const [index, fixture] of open.entries()) {
			const away = distance(fixture.at, at);
			if (away >= least - here) continue;
			best = index;
			least = away;
		}
		return best < 0 ? null : (open.splice(best, 1)[0] ?? null);
	}
	/** The id wanted, or where another light has it the next number that is free. */
	free(id: string): string {
		const { stem, role } = partsOf(id);
		let found = id;
		for (let number = 1; this.#taken.has(found); number++) found = `${stem}/${role}-${number}`;
		this.#taken.add(found);
		return found;
	}
}
