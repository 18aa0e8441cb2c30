/** Walks, drives and other paving: dots between medium edges, treads, rails, gates, crossings, posts, places where wheels run off. */
import type { Point } from '../domain/shared/geometry';
import { leafOf, postsOf, type Site, type Strip } from '../domain/site';
import type { Mark } from './marks';
import { between, closedPath, distance, openPath, pointAlong, segmentPath, shifted } from './path';

type Side = 'left' | 'right';
/** Left of the way of travel, with x to the right and y down the sheet. */
const leftOf = (ahead: Point): Point => ({ x: ahead.y, y: -ahead.x });

/** The point beside the centre line, `out` metres from it to one side. */
function beside(strip: Strip, d: number, side: Side, out: number): Point | null {
	const place = pointAlong(strip.centre, d);
	if (!place) return null;
	const left = leftOf(place.ahead);
	const sign = side === 'left' ? 1 : -1;
	return shifted(place.at, left.x * out * sign, left.y * out * sign);
}

const across = (strip: Strip, d: number): string => {
	const left = beside(strip, d, 'left', strip.width / 2);
	const right = beside(strip, d, 'right', strip.width / 2);
	return left && right ? segmentPath(left, right) : '';
};

function stepMarks(strip: Strip): Mark[] {
	return strip.steps.map((flight) => {
		const going = (flight.end - flight.start) / Math.max(1, flight.treads);
		const lines = Array.from({ length: flight.treads + 1 }, (_, n) => across(strip, flight.start + n * going));
		return {
			kind: 'path',
			key: `steps-${strip.id}-${flight.id}`,
			d: lines.join(''),
			ink: 'paving',
			weight: 1.1,
			fill: 'none'
		};
	});
}

function railMarks(strip: Strip): Mark[] {
	const sides: Side[] = strip.rail === 'both' ? ['left', 'right'] : strip.rail === 'none' ? [] : [strip.rail];
	return sides.map((side) => ({
		kind: 'path',
		key: `rail-${strip.id}-${side}`,
		d: openPath(strip[side]),
		ink: 'paving',
		weight: 3,
		fill: 'none',
		dash: [1.5, 7]
	}));
}

/** A sleeve is a pair of lines with open ends, a joint a single one, a bore a dashed pair. */
function crossingMarks(strip: Strip): Mark[] {
	return strip.crossings.flatMap((crossing): Mark[] => {
		const size = distance(crossing.left, crossing.right);
		if (size === 0) return [];
		const half = 0.06;
		const n = {
			x: (-(crossing.right.y - crossing.left.y) / size) * half,
			y: ((crossing.right.x - crossing.left.x) / size) * half
		};
		const pair =
			segmentPath(shifted(crossing.left, n.x, n.y), shifted(crossing.right, n.x, n.y)) +
			segmentPath(shifted(crossing.left, -n.x, -n.y), shifted(crossing.right, -n.x, -n.y));
		return [
			{
				kind: 'path',
				key: `crossing-${strip.id}-${crossing.id}`,
				d: crossing.kind === 'joint' ? segmentPath(crossing.left, crossing.right) : pair,
				ink: 'paving',
				weight: 0.9,
				fill: 'none',
				...(crossing.kind === 'bore' ? { dash: [4, 3] } : {})
			}
		];
	});
}

/** Metres by which the mark of a gate stands out over the edges. */
const overhang = 0.15;
/** A shut leaf across the walk, its ends marked: which way it opens is not known. */
function gateMarks(strip: Strip): Mark[] {
	return strip.gates.map((gate) => {
		const [left, right] = leafOf(strip, gate);
		const over = overhang / (distance(left, right) || 1);
		const ends = [between(left, right, -over), between(left, right, 1 + over)] as const;
		const tick = { x: -(right.y - left.y) * over, y: (right.x - left.x) * over };
		const across = ends.map((end) => segmentPath(shifted(end, tick.x, tick.y), shifted(end, -tick.x, -tick.y)));
		return {
			kind: 'path',
			key: `gate-${strip.id}-${gate.id}`,
			d: segmentPath(...ends) + across.join(''),
			ink: 'house',
			weight: 1.6,
			fill: 'none',
			title: 'Gate'
		};
	});
}

function driveMarks(strip: Strip): Mark[] {
	const marks: Mark[] = postsOf(strip).map((ring, index) => ({
		kind: 'path',
		key: `post-${strip.id}-${index}`,
		d: closedPath(ring),
		ink: 'house',
		weight: 1,
		fill: 'ink',
		title: 'Gate post'
	}));
	for (const run of strip.runOffs) {
		const ticks = [-0.6, 0, 0.6].map((d) => {
			const edge = beside(strip, run.at + d, run.side, strip.width / 2);
			const out = beside(strip, run.at + d, run.side, strip.width / 2 + 0.5);
			return edge && out ? segmentPath(edge, out) : '';
		});
		marks.push({
			kind: 'path',
			key: `run-off-${strip.id}-${run.id}`,
			d: ticks.join(''),
			ink: 'soft',
			weight: 1,
			fill: 'none'
		});
	}
	return marks;
}

/** Walks and drives are laid before any edge, so that a junction reads as one surface. */
export function drawPaving(site: Site): Mark[] {
	const strips = site.strips.filter((strip) => strip.polygon.length >= 3);
	const paved = site.areas.filter((area) => area.kind === 'paved' && area.polygon.length >= 3);
	const seats = site.areas.filter((area) => area.kind === 'seating' && area.polygon.length >= 3);
	return [
		...strips.map((strip): Mark => ({
			kind: 'path',
			key: `paved-${strip.id}`,
			d: closedPath(strip.polygon),
			ink: 'paving',
			weight: 0,
			fill: 'dots'
		})),
		...strips.map((strip): Mark => ({
			kind: 'path',
			key: `edges-${strip.id}`,
			d: openPath(strip.left) + openPath(strip.right),
			ink: 'paving',
			weight: 1.4,
			fill: 'none'
		})),
		// Laid over walks and drives: within an apron or a patio they have no edges.
		...paved.flatMap((area): Mark[] => [
			{ kind: 'path', key: `ground-${area.id}`, d: closedPath(area.polygon), ink: 'paving', weight: 0, fill: 'sheet' },
			{ kind: 'path', key: `area-${area.id}`, d: closedPath(area.polygon), ink: 'paving', weight: 1.4, fill: 'dots' }
		]),
		...seats.map((area): Mark => ({
			kind: 'path',
			key: `seating-${area.id}`,
			d: closedPath(area.polygon),
			ink: 'paving',
			weight: 1.4,
			fill: 'dots'
		})),
		...strips.flatMap((strip) => [
			...stepMarks(strip),
			...railMarks(strip),
			...gateMarks(strip),
			...crossingMarks(strip),
			...driveMarks(strip)
		])
	];
}
