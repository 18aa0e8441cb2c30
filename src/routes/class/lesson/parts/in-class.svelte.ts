/** What is said and shown in class in one lesson. It lives as long as the page does and is kept nowhere. */
import type { Choice, Lesson } from '$lib/domain/lesson';
import type { UnitSystem } from '$lib/domain/shared/units';
import { usualUnits } from '../../fragment';
import { Prepared } from './prepared';

export const screenNames = ['Question', 'Prediction', 'Reveal', 'Working', 'Change it', 'The idea'] as const;
export const screenCount = screenNames.length;
/** More than one room holds. */
export const mostHands = 999;

export class InClass {
	/** Counted from 1. */
	screen = $state(1);
	units = $state.raw<UnitSystem>(usualUnits);
	/** Id of what is predicted. */
	choice = $state.raw<string | null>(null);
	/** Why they think so. */
	reason = $state('');
	/** How many hands went up, by id of the choice. */
	#hands = $state<Record<string, number>>({});
	/** Where the lever was moved to. */
	#lever = $state.raw<number | null>(null);

	constructor(readonly lesson: Lesson) {}

	prepared: Prepared = $derived.by(() => new Prepared(this.lesson, this.units));
	/** The value at which the lever stands; where it begins as long as nobody moved it. */
	lever: number = $derived.by(() => {
		const { values, start } = this.prepared.lever();
		return this.#lever !== null && values.includes(this.#lever) ? this.#lever : start;
	});
	moveLever(value: number): void {
		this.#lever = value;
	}
	/** Takes a prediction; the same again takes it back. */
	choose(id: string): void {
		this.choice = this.choice === id ? null : id;
	}
	handsFor(id: string): number {
		return this.#hands[id] ?? 0;
	}
	/** One hand more or less, never below none. */
	count(id: string, by: 1 | -1): void {
		this.#hands[id] = Math.min(mostHands, Math.max(0, this.handsFor(id) + by));
	}
	allHands(choices: readonly Choice[]): number {
		return choices.reduce((sum, { id }) => sum + this.handsFor(id), 0);
	}
}
