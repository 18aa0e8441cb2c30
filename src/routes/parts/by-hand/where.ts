/** A place as a tape measures it: `12 ft along, 3 ft out`. */
import { formatLength } from '$lib/domain/shared/units';
import type { Units } from '$lib/domain/yard';

export function whereWords({ x, y }: { x: number; y: number }, units: Units): string {
	const along = `${formatLength(x, units)} along`;
	if (Math.abs(y) < 0.005) return `${along}, on the front line`;
	return `${along}, ${formatLength(Math.abs(y), units)} ${y > 0 ? 'out' : 'behind the front'}`;
}
