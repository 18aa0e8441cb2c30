/** Where a sensor hangs, in words. */
import type { SensorSpot } from '../../domain/dusk';
import { compass } from '../../domain/checklist';
import type { Point } from '../../domain/shared/geometry';
import { formatLength, type UnitSystem } from '../../domain/shared/units';

type Spot = Pick<SensorSpot, 'at' | 'on' | 'height' | 'faces'>;

/** `12 ft along the front, 6 in out from it`. */
export function placeWords({ x, y }: Point, units: UnitSystem): string {
	const out = formatLength(Math.abs(y), units);
	const across = /[1-9]/.test(out) ? `${out} ${y < 0 ? 'behind it' : 'out from it'}` : 'on its line';
	return `${formatLength(x, units)} along the front, ${across}`;
}
/** `north-east, 48° from north`. */
export const facingWords = (faces: number): string =>
	`${compass(faces)}, ${Math.round(((faces % 360) + 360) % 360) % 360}° from north`;
/** `On a wall, 5 ft up: 12 ft along the front, 6 in out from it. Its window looks north-east, 48° from north.` */
export const spotWords = ({ at, on, height, faces }: Spot, units: UnitSystem): string =>
	`On a ${on}, ${formatLength(height, units)} up: ${placeWords(at, units)}. Its window looks ${facingWords(faces)}.`;
