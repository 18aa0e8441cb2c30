/** Marking places on the picture: which mark is being set, and where its cross-hair is. Pixels of the picture. */
import type { Point } from '$lib/domain/shared/geometry';
import { underlay } from './underlay.svelte';

/** A and B make the scale and are answers; C and D check it and are not kept. */
export const letters = ['A', 'B', 'C', 'D'] as const;
export type Letter = (typeof letters)[number];
const kept = { A: 'from', B: 'to' } as const;

class Marking {
	/** The mark being set. */
	active = $state<Letter | null>(null);
	cursor = $state.raw<Point>({ x: 0, y: 0 });
	#check = $state.raw<Partial<Record<'C' | 'D', Point>>>({});

	readonly at = $derived<Partial<Record<Letter, Point>>>({
		...(underlay.told?.from && { A: underlay.told.from }),
		...(underlay.told?.to && { B: underlay.told.to }),
		...this.#check
	});

	/** Takes a mark in hand, its cross-hair where it is or in the middle of the picture; a second press lets it go. */
	begin(letter: Letter): void {
		const { told } = underlay;
		if (!told) return;
		this.active = this.active === letter ? null : letter;
		this.cursor = this.at[letter] ?? { x: told.width / 2, y: told.height / 2 };
	}
	/** Puts the cross-hair somewhere, within the picture. */
	point({ x, y }: Point): void {
		const { told } = underlay;
		if (!told) return;
		this.cursor = { x: Math.min(told.width, Math.max(0, x)), y: Math.min(told.height, Math.max(0, y)) };
	}
	step(x: number, y: number): void {
		this.point({ x: this.cursor.x + x, y: this.cursor.y + y });
	}
	/** Sets the mark in hand where the cross-hair is; the next of its pair is taken in hand while it is not set. */
	set(): void {
		const letter = this.active;
		if (!letter) return;
		this.mark(letter, this.cursor);
		this.active = null;
		const next = letter === 'A' ? 'B' : letter === 'C' ? 'D' : null;
		if (next && !this.at[next]) this.begin(next);
	}
	mark(letter: Letter, at: Point): void {
		if (letter === 'A' || letter === 'B') underlay.mark(kept[letter], at);
		else this.#check = { ...this.#check, [letter]: at };
	}
	letGo(): void {
		this.active = null;
	}
	/** Another picture: the check marks were on the old one. */
	forget(): void {
		this.#check = {};
		this.active = null;
	}
}
export const marking = new Marking();
