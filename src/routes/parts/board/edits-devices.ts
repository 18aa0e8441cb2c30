/** Changes to the receptacle, the transformer and the sensor: one of each. */
import type { Plan } from '$lib/domain/plan';
import { distanceToPolygon, nearestOnSegment, type Point } from '$lib/domain/shared/geometry';
import type { Site } from '$lib/domain/site';
import { capital, type Yard } from '$lib/domain/yard';
import { gone, refused } from './edits-listed';
import { asTold, offYard, onPlan } from './edits-points';
import type { Edit, Edited } from './edits-types';

export type Device = 'receptacle' | 'transformer' | 'sensor';
const words: Readonly<Record<Device, string>> = {
	receptacle: 'receptacle',
	transformer: 'transformer',
	sensor: 'dusk sensor'
};
export const isDevice = (kind: string): kind is Device => Object.hasOwn(words, kind);

/** What is this near to a wall hangs on it, metres: a wall's thickness. */
const atWall = 0.3;
const isAtWall = (p: Point, { house, walls }: Site): boolean =>
	distanceToPolygon(p, house) <= atWall ||
	walls.some(({ from, to }) => nearestOnSegment(p, from, to).distance <= atWall);

/** Where the person has it; null: nowhere yet, or the plan chooses. */
function toldPlace({ power }: Yard, device: Device): Point | null {
	const told = power[device];
	if (typeof told !== 'object') return null;
	return onPlan('at' in told ? told.at : told);
}
function place(yard: Yard, plan: Plan, device: Device): Point | null {
	const planned = { receptacle: undefined, transformer: plan.supply?.at, sensor: plan.dusk.sensor?.at }[device];
	return toldPlace(yard, device) ?? planned ?? null;
}
/** The yard with it at a point. What is told of it besides stays; on a post or on the wall goes by where it is then. */
function put(yard: Yard, { site }: Plan, device: Device, to: Point): Yard {
	const { power } = yard;
	const at = asTold(to);
	if (device === 'receptacle') return { ...yard, power: { ...power, receptacle: at } };
	const told = power[device];
	const before = typeof told === 'object' ? told : null;
	const on = before?.on === 'post' || !isAtWall(to, site) ? ('post' as const) : ('wall' as const);
	return { ...yard, power: { ...power, [device]: { ...before, at, on } } };
}
function without(yard: Yard, device: Device): Yard {
	if (device !== 'receptacle') return { ...yard, power: { ...yard.power, [device]: 'suggest' } };
	// Taken off the drawing it is not asked yet: that there is none at all is an answer of its own.
	const { receptacle: _, ...power } = yard.power;
	return { ...yard, power };
}

/** The plan places a transformer and a sensor itself where nobody else does. */
const leftWords = (device: Device): string =>
	`${capital(words[device])} ${device === 'receptacle' ? 'removed' : 'left to the plan'}`;

/** A change to one of them: placed, moved or taken away. */
export function changeDevice(yard: Yard, plan: Plan, device: Device, edit: Edit): Edited {
	const { units } = plan.site;
	const the = `the ${words[device]}`;
	const to = (at: Point | undefined, what: string): Edited => {
		const problem = at ? offYard([at], units) : `Point to where ${the} is.`;
		if (!at || problem !== null) return refused(problem ?? '');
		return {
			ok: true,
			yard: put(yard, plan, device, at),
			label: `${capital(words[device])} ${what}`,
			key: `${device}/${device}`
		};
	};
	const now = place(yard, plan, device);
	switch (edit.do) {
		case 'add':
		case 'draw':
			if (edit.points.length > 1) return refused(`${capital(the)} has one point.`);
			if (edit.do === 'add' && toldPlace(yard, device))
				return refused(`There is one already, and a plan has one ${words[device]}. Move it instead.`);
			return to(edit.points[0], edit.do === 'add' ? 'added' : 'moved');
		case 'move':
			return now && edit.handle === 0 ? to(edit.to, 'moved') : refused(gone);
		case 'shift':
			return now ? to({ x: now.x + edit.by.x, y: now.y + edit.by.y }, 'moved') : refused(gone);
		case 'remove':
			if (!toldPlace(yard, device))
				return refused(`Where ${the} hangs is the plan’s own suggestion. Move it to set its place yourself.`);
			return { ok: true, yard: without(yard, device), label: leftWords(device), key: null };
		case 'size':
		case 'name':
		case 'sort':
		case 'bend':
		case 'straighten':
			return refused(`${capital(the)} has a place only. What else is told of it is asked in the chapter Power.`);
	}
}
