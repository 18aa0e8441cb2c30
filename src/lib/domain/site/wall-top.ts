import type { Wall } from './types';

/**
 * How high a wall reaches at a place along it, metres above the ground: its eaves, or under a gable the slope from the eaves
 * at either end up to the point over the middle. `at`: metres from its `from` end.
 */
export function wallTop({ height, peak, length }: Pick<Wall, 'height' | 'peak' | 'length'>, at: number): number {
	if (peak === null || length <= 0) return height;
	const fromMiddle = Math.min(1, Math.abs(at - length / 2) / (length / 2));
	return height + (peak - height) * (1 - fromMiddle);
}
