import type { Point } from '../shared/geometry';
import { formatLength } from '../shared/units';
import type { Site } from '../site';
import type { ChecklistItem, ChecklistStep, DoneFor } from './types';

/** A point as two tapes give it: along the house front from its left corner, and out from it towards the street. */
export function place(at: Point, site: Site): string {
	const along =
		at.x < -0.005
			? `${formatLength(-at.x, site.units)} left of the left corner`
			: `${formatLength(Math.abs(at.x), site.units)} along`;
	const out =
		at.y < -0.005 ? `${formatLength(-at.y, site.units)} back` : `${formatLength(Math.abs(at.y), site.units)} out`;
	return `${along}, ${out}`;
}
const points = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const;
/** Nearest of the eight points for a bearing, degrees clockwise from north. */
export const compass = (bearing: number): string => points[Math.round((((bearing % 360) + 360) % 360) / 45) % 8]!;

/** `21:05`; minutes past midnight may run into the next day. */
export function clock(minutes: number): string {
	const whole = ((Math.round(minutes) % 1440) + 1440) % 1440;
	return `${String(Math.floor(whole / 60)).padStart(2, '0')}:${String(whole % 60).padStart(2, '0')}`;
}

/** Whom a step defers to. */
export const defer = {
	code: 'Local code comes before this plan.',
	authority: 'Ask the authority that enforces code where you live before you do it this way.',
	maker: 'The maker’s instructions come before this plan.',
	electrician: 'Mains work is for a licensed electrician.',
	dig: 'The dig-notice service and the law behind it say when you may dig and how near a mark.'
} as const;

interface More {
	cautions?: string[];
	defers?: string[];
	rule?: string;
	doneFor?: DoneFor;
	items?: ChecklistItem[];
}
export const step = (id: string, text: string, more: More = {}): ChecklistStep => ({
	id,
	text,
	cautions: more.cautions ?? [],
	defers: more.defers ?? [],
	rule: more.rule ?? null,
	...(more.doneFor ? { doneFor: more.doneFor } : {}),
	...(more.items ? { items: more.items } : {})
});
/** The item when it applies. */
export const when = <T>(applies: boolean, make: () => T): T[] => (applies ? [make()] : []);

export const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
