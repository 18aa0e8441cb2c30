/** Soft light at the edge of a place to sit: rule seat.light. */
import {
	centroid,
	distance,
	distanceToPolygon,
	moved,
	nearestOnLine,
	rotated,
	unit,
	type Point
} from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Area } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { moved as movedReason, reason } from './reasons';
import type { Fixture } from './types';
import { called, capital, either } from './wording';

/** From this many metres across one light leaves the far side dark. */
const { two: twoFrom } = rules['seat.light'].figures;
const tried = [0, 20, 40, 60, 80];

/** Metres across, by the farthest corner from the centre. */
const across = (area: Area): number =>
	2 * Math.max(0, ...area.polygon.map((p) => Math.hypot(p.x - area.centre.x, p.y - area.centre.y)));

/** Away from the nearest walk or drive, else from the house: nobody walks into the lamp. */
function backOf(d: Drafting, area: Area): Point {
	let nearest: { point: Point; distance: number } | null = null;
	for (const strip of d.site.strips) {
		const near = nearestOnLine(area.centre, strip.centre);
		if (near && (!nearest || near.distance < nearest.distance)) nearest = near;
	}
	const from = nearest?.point ?? centroid(d.site.house);
	const away = unit({ x: area.centre.x - from.x, y: area.centre.y - from.y });
	return away.x === 0 && away.y === 0 ? { x: 0, y: 1 } : away;
}

export function placeSeating(d: Drafting, area: Area): void {
	if (area.kind !== 'seating' || area.light === 'none') return;
	const target: Fixture['target'] = { kind: 'seating', id: area.id };
	const the = called(area.name, 'seating place');
	const model = d.pick({ body: 'path', strength: area.light });
	const { low } = d.figures['path.setback'];
	const radius = model.headDiameter / 2;
	const size = across(area);
	const count = size > twoFrom ? 2 : 1;
	const back = backOf(d, area);
	const causes = new Set<Cause>();
	let placed = 0;
	for (const angle of count === 1 ? [0] : [-90, 90]) {
		const sense = angle === 0 ? d.handed(area.centre) * (back.y >= -1e-9 ? 1 : -1) : Math.sign(angle);
		const spot = spotRound(
			d,
			area,
			radius,
			tried.flatMap((turn) => (turn === 0 ? [angle] : [angle + sense * turn, angle - sense * turn])),
			back,
			causes
		);
		if (!spot) continue;
		d.place({
			target,
			role: 'area',
			technique: 'area',
			at: spot.at,
			model,
			reasons: [
				reason(
					'seat.light',
					null,
					'',
					`${count === 1 ? 'One soft light' : 'One of two soft lights'} at the edge of a place ${d.len(size)} across, enough to find a seat and a glass by.`
				),
				reason('path.setback', low, 'm', `${d.len(low)} clear of the edge: behind the chairs, not between them.`),
				reason('glare.shield', null, '', 'Light downwards under a shade: no bare lamp in the eyes of people sitting.'),
				...(spot.first
					? [
							movedReason(
								d,
								spot.first,
								distance(spot.at, spot.wanted),
								'straight across from the other or at the back'
							)
						]
					: [])
			]
		});
		placed++;
	}
	if (placed < count)
		d.say(
			'placement.no-room',
			'look',
			target,
			'path.setback',
			`${capital(the)} gets ${placed === 0 ? 'no light' : 'one light instead of two'}: at its edge ${either([...causes].map(d.because))}.`
		);
}

/** The first free place at the edge, by degrees round from `back`. */
function spotRound(
	d: Drafting,
	area: Area,
	radius: number,
	angles: readonly number[],
	back: Point,
	causes: Set<Cause>
): { at: Point; wanted: Point; first: Cause | null } | null {
	const { low } = d.figures['path.setback'];
	let wanted: Point | null = null;
	let first: Cause | null = null;
	for (const angle of angles) {
		const way = rotated(back, angle);
		let reach = 0;
		for (const p of area.polygon)
			reach = Math.max(reach, (p.x - area.centre.x) * way.x + (p.y - area.centre.y) * way.y);
		// The outline has corners: in from its farthest reach to the distance kept.
		const far = moved(area.centre, way, reach + low + radius);
		const spare = distanceToPolygon(far, area.polygon) - low - radius;
		const at = moved(far, way, -Math.max(0, spare));
		const cause = d.ground.blocked(at, radius, 'path');
		wanted ??= at;
		if (!cause) return { at, wanted, first };
		first ??= cause;
		causes.add(cause);
	}
	return null;
}
