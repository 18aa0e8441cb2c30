/** A lesson in one system of units, each part of it worked out once: ahead of time where there is time, else when it is asked for. */
import type { Choice, Lesson, Lever, Moment, Reveal, Scene } from '$lib/domain/lesson';
import type { UnitSystem } from '$lib/domain/shared/units';

const once = <T>(work: () => T): (() => T) => {
	let made: { value: T } | null = null;
	return () => (made ??= { value: work() }).value;
};

export class Prepared {
	readonly scene: () => Scene;
	readonly question: () => string;
	readonly choices: () => Choice[];
	readonly reveal: () => Reveal;
	readonly lever: () => Lever;
	#moments = new Map<number, Moment>();

	constructor(
		readonly lesson: Lesson,
		readonly units: UnitSystem
	) {
		this.scene = once(() => lesson.scene(units));
		this.question = once(() => lesson.question(units));
		this.choices = once(() => lesson.choices(units));
		this.reveal = once(() => lesson.reveal(units));
		this.lever = once(() => lesson.lever(units));
	}
	/** With the lever at one of its values. */
	at(value: number): Moment {
		const known = this.#moments.get(value);
		if (known) return known;
		const moment = this.lesson.at(value, this.units);
		this.#moments.set(value, moment);
		return moment;
	}
	/** What a class will ask for, in that order, to be worked out piece by piece while it thinks. */
	*ahead(): Generator<void> {
		this.reveal();
		yield;
		const { start, values } = this.lever();
		for (const value of [start, ...values]) {
			this.at(value);
			yield;
		}
	}
}

/** Takes one step of the work whenever the browser has nothing else to do; what it returns stops it. */
export function whileIdle(work: Iterator<void>): () => void {
	// Safari has no idle callback: there a step comes a moment later.
	const ask = globalThis.requestIdleCallback ?? ((go: () => void) => setTimeout(go, 30));
	let isStopped = false;
	const go = (): void => {
		if (!isStopped && !work.next().done) ask(go);
	};
	ask(go);
	return () => {
		isStopped = true;
	};
}
