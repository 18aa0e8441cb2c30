/** What light should be where: the bounds that the rules set, and whether what lands keeps to them. Lux. */
import { rules } from '../shared/rules';
import { wallBand } from '../placement';
import type { Site, Wall } from '../site';
import type { Levels } from './probe';
import type { Receiver } from './types';

type Aim = NonNullable<Receiver['aim']>;

/** Rule path.level: an average, and average ÷ least at the most. */
export const walkAim = (): Aim => {
	const { walk, ratio } = rules['path.level'].figures;
	return { low: walk, high: null, evenness: ratio, rule: 'path.level' };
};
/** Rule path.level, on each tread. */
export const treadAim = (): Aim => ({
	low: rules['path.level'].figures.tread,
	high: null,
	evenness: null,
	rule: 'path.level'
});
/** Rule wall.level: an average, the band that lamps for walls are chosen by. */
export function wallAim({ surroundings }: Pick<Site, 'surroundings'>, { finish }: Pick<Wall, 'finish'>): Aim {
	return { ...wallBand(surroundings, finish), evenness: null, rule: 'wall.level' };
}
/** Rule spill.boundary, late at night: the hours of the lights are not known here, and the stricter figure is kept. */
export function spillAim({ surroundings }: Pick<Site, 'surroundings'>): Aim {
	const { ruralLate, suburbLate, townLate } = rules['spill.boundary'].figures;
	const high = { rural: ruralLate, suburb: suburbLate, town: townLate }[surroundings];
	return { low: null, high, evenness: null, rule: 'spill.boundary' };
}
/** Rule sensor.light: less on the sensor than the light at which it switches on (rule sensor.level). */
export const sensorAim = (): Aim => ({
	low: null,
	high: rules['sensor.level'].figures.on,
	evenness: null,
	rule: 'sensor.light'
});

/**
 * Average against the lower and the upper bound, then evenness. Spill is judged by the brightest point, and by the
 * plan's own share: a street lamp is not the garden's doing.
 */
export function verdictOf(kind: Receiver['kind'], levels: Levels, aim: Receiver['aim']): Receiver['verdict'] {
	if (!aim) return 'no-aim';
	const { low, high } = aim;
	if (kind === 'boundary' || kind === 'neighbour-window')
		return high !== null && levels.fromPlan.most > high ? 'spills' : 'right';
	if (low !== null && levels.average < low) return 'short';
	if (high !== null && (kind === 'sensor' ? levels.most : levels.average) > high) return 'too-bright';
	if (aim.evenness !== null && (levels.evenness === null || levels.evenness > aim.evenness)) return 'patchy';
	return 'right';
}
