/** Rules wall.setback, wall.openings. */
import { nearestOnSegment } from '../../../shared/geometry';
import { rules } from '../../../shared/rules';
import type { Wall } from '../../../site';
import type { RuleRow } from '../types';
import { lengthWorking, measured, rowOf, tolerance, type Ground, type Measure } from './ground';

const { low, high, mostLit } = rules['wall.setback'].figures;
const { clear } = rules['wall.openings'].figures;

interface OnWall {
	label: string;
	wall: Wall;
	off: number;
	/** Metres along the wall. */
	along: number;
}
const onWalls = ({ lights, plan }: Ground): OnWall[] =>
	lights.flatMap(({ kind, fixture }) => {
		const wall = kind === 'wall' ? plan.site.walls.find(({ id }) => id === fixture.target.id) : undefined;
		if (!wall) return [];
		const near = nearestOnSegment(fixture.at, wall.from, wall.to);
		return [{ label: fixture.label, wall, off: near.distance, along: near.t * wall.length }];
	});

const setbacks = (ground: Ground): Measure[] =>
	onWalls(ground).map(({ label, wall, off }) => {
		const lit = Math.min(wall.height, mostLit);
		return {
			lights: [label],
			subject: `${label} stands`,
			value: off,
			low: low * lit,
			high: high * lit,
			from: 'off the wall',
			working: lengthWorking('wall.setback', 'The least distance', low * lit, 'H ÷ 4', [['H', 'lit height', lit]])
		};
	});
/** How far a wall light stands aside of the nearest window of the ground floor. */
const windows = (ground: Ground): Measure[] =>
	onWalls(ground).flatMap(({ label, wall, along }) => {
		const aside = wall.openings
			.filter(({ kind }) => kind === 'window')
			.map(({ start, end }) => Math.max(start - along, along - end));
		if (aside.length === 0) return [];
		const value = Math.min(...aside);
		return [
			{
				lights: [label],
				subject: `${label} stands`,
				value,
				low: clear,
				high: null,
				from: 'aside of the window',
				...(value <= 0 ? { fault: `${label} stands before a window and would shine into it.` } : {})
			}
		];
	});

const { doorFront, garageFront } = rules['place.clear'].figures;
const doorWords = { door: 'a door, underfoot', garage: 'the garage door, where a car goes' } as const;
/** Any light within the room that a door or a garage door keeps free, also where a walk or a drive is in its way first. */
function beforeDoors({ lights, plan }: Ground): { label: string; fact: string }[] {
	return lights.flatMap(({ fixture, radius }) =>
		plan.site.walls
			.filter(({ length }) => length > 0)
			.flatMap(({ from, to, length, outward, openings }) => {
				const [dx, dy] = [fixture.at.x - from.x, fixture.at.y - from.y];
				const along = (dx * (to.x - from.x) + dy * (to.y - from.y)) / length;
				const off = dx * outward.x + dy * outward.y;
				return openings.flatMap(({ kind, start, end }) => {
					if (kind === 'window' || off < 0) return [];
					const aside = Math.max(start - clear - along, along - end - clear, 0);
					const beyond = Math.max(off - (kind === 'door' ? doorFront : garageFront), 0);
					// A pencil's line into it is let pass, as at every limit.
					if (Math.hypot(aside, beyond) >= radius - tolerance) return [];
					return [{ label: fixture.label, fact: `${fixture.label} stands in front of ${doorWords[kind]}.` }];
				});
			})
	);
}
const hint = 'Move it to a pier: the piece of wall between a door, a window and a corner.';
function openingsRow(ground: Ground): RuleRow {
	const row = measured('wall.openings', windows(ground), ground, { hint, none: 'No light stands by an opening.' });
	const doors = beforeDoors(ground);
	if (doors.length === 0) {
		const free = row.state === 'none' && ground.lights.length > 0;
		return free ? rowOf('wall.openings', 'held', ['No light stands before a door, a garage door or a window.']) : row;
	}
	const kept = row.state === 'not' || row.state === 'nearly' ? row : null;
	return rowOf('wall.openings', 'not', [...doors.map(({ fact }) => fact), ...(kept?.facts ?? [])], {
		hint: 'Move it out of the way of feet and cars, to a pier beside the opening.',
		lights: [...doors.map(({ label }) => label), ...(kept?.lights ?? [])]
	});
}
export const wallRows = (ground: Ground): RuleRow[] => [
	measured('wall.setback', setbacks(ground), ground, {
		hint: 'Take a quarter to a third of the height of the wall.',
		none: 'No light washes a wall.'
	}),
	openingsRow(ground)
];
