/** Light at many points, what the plan gives kept apart from what is there already. */
import type { Vector } from '../photometry';
import { emitterOf, type Emitter } from './emitter';
import { litBy } from './field';
import type { Shadows } from './shadows';
import type { LightField } from './types';

/** A point on a surface and the unit normal of it. */
export interface Spot {
	point: Vector;
	normal: Vector;
}
export interface Levels {
	average: number;
	least: number;
	most: number;
	evenness: number | null;
	fromPlan: { average: number; most: number };
	points: number;
}
export interface Probe {
	/** By fixture, in the order of the plan; and the lights that are there already. */
	own: readonly Emitter[];
	there: readonly Emitter[];
	shadows: Shadows;
}
export const probeOf = ({ sources, shadows }: Pick<LightField, 'sources' | 'shadows'>): Probe => ({
	own: sources.filter((source) => !source.existing).map(emitterOf),
	there: sources.filter((source) => source.existing).map(emitterOf),
	shadows
});

export const luxOf = (emitters: readonly Emitter[], shadows: Shadows, { point, normal }: Spot): number => {
	let sum = 0;
	for (let i = 0; i < emitters.length; i++) sum += litBy(emitters[i]!, shadows, point, normal);
	return sum;
};

/** Sums up what single points get: lux from the plan, and from what is there already. */
export class Tally {
	#sum = 0;
	#own = 0;
	#mostOwn = 0;
	#least = Infinity;
	#most = 0;
	#points = 0;

	add(own: number, there: number): void {
		const all = own + there;
		this.#sum += all;
		this.#own += own;
		this.#points += 1;
		if (own > this.#mostOwn) this.#mostOwn = own;
		if (all > this.#most) this.#most = all;
		if (all < this.#least) this.#least = all;
	}
	/** Lux. All zero, and no evenness, where there is no point. */
	levels(): Levels {
		const points = Math.max(1, this.#points);
		const least = this.#points > 0 ? this.#least : 0;
		const average = this.#sum / points;
		return {
			average,
			least,
			most: this.#most,
			evenness: least > 0 ? average / least : null,
			fromPlan: { average: this.#own / points, most: this.#mostOwn },
			points: this.#points
		};
	}
}

export function levelsAt({ own, there, shadows }: Probe, spots: readonly Spot[]): Levels {
	const tally = new Tally();
	for (const spot of spots) tally.add(luxOf(own, shadows, spot), luxOf(there, shadows, spot));
	return tally.levels();
}
