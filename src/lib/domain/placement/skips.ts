import type { ExistingLight, Wall } from '../site';
import type { Drafting } from './drafting';
import type { Fixture } from './types';
import { called } from './wording';

/** Counts the places along one walk or drive that need no light of their own, and says so once (rule existing.light). */
export class Skips {
	readonly #d: Drafting;
	readonly #target: Fixture['target'];
	readonly #called: string;
	readonly #byLight = new Map<string, { name: string; count: number }>();
	readonly #byWall = new Map<string, { name: string; count: number }>();
	#shared = 0;

	constructor(d: Drafting, target: Fixture['target'], called: string) {
		this.#d = d;
		this.#target = target;
		this.#called = called;
	}
	existing(light: ExistingLight): void {
		const entry = this.#byLight.get(light.id) ?? { name: called(light.name, 'existing light'), count: 0 };
		entry.count++;
		this.#byLight.set(light.id, entry);
	}
	shared(): void {
		this.#shared++;
	}
	/** A lit wall beside the edge marks it. */
	wall(wall: Wall): void {
		const entry = this.#byWall.get(wall.id) ?? { name: called(wall.name, 'wall'), count: 0 };
		entry.count++;
		this.#byWall.set(wall.id, entry);
	}
	report(): void {
		for (const { name, count } of this.#byLight.values())
			this.#d.say(
				'placement.existing',
				'note',
				this.#target,
				'existing.light',
				`${places(count)} on ${this.#called} ${count === 1 ? 'is' : 'are'} lit by ${name} already: no new light there. If it is off at night, say so and plan again.`
			);
		for (const { name, count } of this.#byWall.values())
			this.#d.say(
				'placement.shared',
				'note',
				this.#target,
				'drive.spacing',
				`${places(count)} on ${this.#called} ${count === 1 ? 'is' : 'are'} marked by the light on ${name}: no other light there.`
			);
		if (this.#shared > 0)
			this.#d.say(
				'placement.shared',
				'note',
				this.#target,
				'path.spacing',
				`${places(this.#shared)} on ${this.#called} ${this.#shared === 1 ? 'shares' : 'share'} a light that stands beside another walk or drive.`
			);
	}
}
const places = (count: number): string => (count === 1 ? 'One place' : `${count} places`);
