/** What a step was done for, against what it is for now. */
import { sizeName, type CableSize } from '../../circuit';
import { distance, type Point } from '../../shared/geometry';
import { formatLength } from '../../shared/units';
import type { Site } from '../../site';
import type { Hours } from '../../yard/schema';
import type { DoneFor } from '../types';
import { place } from '../words';

/** Less than this is no other place, and no other length, metres: a foot, as a loop of slack takes up (common practice, no source). */
const sameWithin = 0.3;

/** To the decimetre, without a minus before nought. */
const tenth = (metres: number): string => String(Math.round(metres * 10) / 10 || 0);

export const atPlace = ({ x, y }: Point): DoneFor => ({ kind: 'place', mark: `${tenth(x)},${tenth(y)}` });
export const overGround = (metres: number): DoneFor => ({ kind: 'ground', mark: tenth(metres) });
export const ofCable = ({ system, size }: CableSize, metres: number): DoneFor => ({
	kind: 'cable',
	mark: `${system}-${size},${tenth(metres)}`
});
export const onTap = (volts: number): DoneFor => ({ kind: 'tap', mark: String(volts) });
const partsOf = (hours: Hours): (string | number)[] => {
	switch (hours.kind) {
		case 'dusk-to-dawn':
			return ['dawn'];
		case 'after-dusk':
			return [hours.hours];
		case 'until':
			return [hours.clock];
		case 'split':
			return [hours.evening, hours.morning];
	}
};
/** `season`: the hours of the other part of the year, null where there is none. */
export const forHours = (hours: Hours, season: Hours | null): DoneFor => ({
	kind: 'hours',
	mark: [...partsOf(hours), ...(season ? partsOf(season) : [])].join('-')
});

const numbers = (mark: string): number[] => mark.split(',').map(Number);
const pointOf = (mark: string): Point | null => {
	const [x, y, ...more] = numbers(mark);
	return Number.isFinite(x) && Number.isFinite(y) && more.length === 0 ? { x: x!, y: y! } : null;
};
interface Laid {
	size: CableSize;
	metres: number;
}
function laidOf(mark: string): Laid | null {
	const found = /^(awg|mm2)-(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)$/.exec(mark);
	if (!found) return null;
	return { size: { system: found[1] as 'awg' | 'mm2', size: Number(found[2]) }, metres: Number(found[3]) };
}
/** A float's own error must not tip what lies on the limit. */
const near = (difference: number): boolean => difference <= sameWithin + 1e-9;

/** Whether what was done is what is to be done now. */
export function isSame({ kind, mark }: DoneFor, was: string): boolean {
	if (mark === was) return true;
	switch (kind) {
		case 'place': {
			const [now, then] = [pointOf(mark), pointOf(was)];
			return now !== null && then !== null && near(distance(now, then));
		}
		case 'ground':
			return near(Math.abs(Number(mark) - Number(was)));
		case 'cable': {
			const [now, then] = [laidOf(mark), laidOf(was)];
			if (!now || !then) return false;
			const sameSize = now.size.system === then.size.system && now.size.size === then.size.size;
			return sameSize && near(Math.abs(now.metres - then.metres));
		}
		case 'tap':
		case 'hours':
			return false;
	}
}

/** `It was done at 2.40 m along, 1.20 m out.`: for a step that is to be looked at again. */
export function wasWords(kind: DoneFor['kind'], was: string, site: Site): string {
	const length = (metres: number) => formatLength(metres, site.units);
	const other = 'It was done for something else.';
	switch (kind) {
		case 'place': {
			const at = pointOf(was);
			return at ? `It was done at ${place(at, site)}.` : other;
		}
		case 'ground':
			return was !== '' && Number.isFinite(Number(was)) ? `It was done over ${length(Number(was))} of ground.` : other;
		case 'cable': {
			const laid = laidOf(was);
			return laid ? `It was done for ${length(laid.metres)} of ${sizeName(laid.size)}.` : other;
		}
		case 'tap':
			return /^\d+(?:\.\d+)?$/.test(was) ? `It was done on ${was} V.` : other;
		case 'hours':
			return 'It was done for other hours.';
	}
}
