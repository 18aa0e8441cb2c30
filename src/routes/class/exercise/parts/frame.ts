/** The part of a yard that an exercise shows, and the grid over it. Metres. */
import type { Exercise } from '$lib/domain/lesson/exercise';
import type { Box } from '$lib/domain/shared/geometry';
import { metresPerFoot, metresPerInch, type UnitSystem } from '$lib/domain/shared/units';

/** How much of the house behind its front is shown, and of the street, and beyond the boundaries. */
const [behind, street, beyond] = [1.6, 1.7, 0.6];

export function frameOf({ empty: { site } }: Pick<Exercise, 'empty'>): Box {
	return {
		minX: site.leftBoundary - beyond,
		minY: -behind,
		maxX: site.rightBoundary + beyond,
		maxY: site.street + street
	};
}
/** A tap is put on the nearest mark that a tape has. */
export const snapped = (metres: number, units: UnitSystem): number => {
	const grain = units === 'feet' ? 3 * metresPerInch : 0.1;
	return Number((Math.round(metres / grain) * grain).toFixed(4));
};

export interface GridLine {
	at: number;
	/** Each fifth in feet, each whole metre: drawn heavier. */
	heavy: boolean;
	/** What stands at its end; null where numbers would touch. */
	text: string | null;
}
/** Lines from the house's left corner, `px` metres to a pixel: those too close to be told apart are left out. */
export function gridLines(from: number, to: number, units: UnitSystem, px: number): GridLine[] {
	const unit = units === 'feet' ? metresPerFoot : 0.5;
	const heavyEach = units === 'feet' ? 5 : 2;
	const isFine = unit >= 7 * px;
	const wide = [1, 2, 4, 8].find((times) => times * heavyEach * unit >= 26 * px) ?? 16;
	const [first, last] = [Math.ceil(from / unit - 1e-9), Math.floor(to / unit + 1e-9)];
	return Array.from({ length: Math.max(0, last - first + 1) }, (_, i): GridLine => {
		const n = first + i;
		const heavy = n % heavyEach === 0;
		const number = units === 'feet' ? n : n / 2;
		return { at: n * unit, heavy, text: n % (wide * heavyEach) === 0 ? String(number).replace('-', '−') : null };
	}).filter(({ heavy }) => heavy || isFine);
}
