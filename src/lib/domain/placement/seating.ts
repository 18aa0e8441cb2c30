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
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Area } from '../site';
import { poolReach } from './bed-pools';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { moved as movedReason, reason } from './reasons';
import type { Fixture, Reason } from './types';
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
	const size = across(area);
	const count = size > twoFrom ? 2 : 1;
	const back = backOf(d, area);
	const causes = new Set<Cause>();
	let placed = 0;
	for (const angle of count === 1 ? [0] : [-90, 90]) {
		const sense = angle === 0 ? d.handed(area.centre) * (back.y >= -1e-9 ? 1 : -1) : Math.sign(angle);
		const angles = tried.flatMap((turn) => (turn === 0 ? [angle] : [angle + sense * turn, angle - sense * turn]));
		const spot = spotRound(d, area, model, angles, back, causes);
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
				...(spot.beyond === 0
					? [reason('path.setback', low, 'm', `${d.len(low)} clear of the edge: behind the chairs, not between them.`)]
					: [beyondPaving(d, spot.beyond, model)]),
				reason('glare.shield', null, '', 'Light downwards under a shade: no bare lamp in the eyes of people sitting.'),
				...(spot.first && spot.beyond === 0
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
			`${capital(the)} gets ${placed === 0 ? 'no light' : 'one light instead of two'}: at its edge ${either([...causes].map(d.because))}.${causes.has('paved') ? ' Beyond the paving there is no room, or the light of a low lamp no longer reaches the place: a lamp on the house wall does it better.' : ''}`
		);
}

interface Spot {
	at: Point;
	/** Where it would stand with nothing in the way, and what was. */
	wanted: Point;
	first: Cause | null;
	/** Metres further out than the edge of the place: where the ground round it is paved. */
	beyond: number;
}
/** Metres between places tried outwards over paving. */
const outward = 0.05;

/** The first free place at the edge, by degrees round from `back`; where all round is paved, the nearest beyond the paving. */
function spotRound(
	d: Drafting,
	area: Area,
	model: FixtureModel,
	angles: readonly number[],
	back: Point,
	causes: Set<Cause>
): Spot | null {
	const { low } = d.figures['path.setback'];
	const radius = model.headDiameter / 2;
	let wanted: Point | null = null;
	let first: Cause | null = null;
	const overPaving: { from: Point; way: Point }[] = [];
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
		if (!cause) return { at, wanted, first, beyond: 0 };
		first ??= cause;
		causes.add(cause);
		if (cause === 'paved') overPaving.push({ from: at, way });
	}
	const out = nearestBeyond(d, overPaving, model);
	return out && { ...out, wanted: wanted!, first };
}

/**
 * The nearest free place straight out from one of several over their paving, as far as the light of the head still meets the
 * edge of the place to sit. Of places as near the first.
 */
function nearestBeyond(
	d: Drafting,
	ways: readonly { from: Point; way: Point }[],
	model: FixtureModel
): { at: Point; beyond: number } | null {
	const radius = model.headDiameter / 2;
	const { low } = d.figures['path.setback'];
	const most = poolReach(model.lamp, model.lampHeight, rules['path.meet'].figures.rural) - low - radius;
	for (let k = 1; k * outward <= most + 1e-9; k++) {
		for (const { from, way } of ways) {
			const at = moved(from, way, k * outward);
			if (!d.ground.blocked(at, radius, 'path')) return { at, beyond: k * outward };
		}
	}
	return null;
}
const beyondPaving = (d: Drafting, beyond: number, model: FixtureModel): Reason =>
	reason(
		'place.clear',
		beyond,
		'm',
		`Not at the edge of the place, ${d.len(beyond)} from here: the ground there is paved. From beyond the paving its light still reaches, up to ${d.len(poolReach(model.lamp, model.lampHeight, rules['path.meet'].figures.rural))} from the lamp.`,
		{ notHere: true }
	);
