/** The house: heavy outline over a hatch, broken at doors and garage doors, thinned at windows, ridges and upper windows dashed; porches; garden walls. */
import type { Point } from '../domain/shared/geometry';
import type { Opening, Site, Wall } from '../domain/site';
import type { Mark } from './marks';
import { between, closedPath, distance, mm, segmentPath, shifted } from './path';

const heavy = 3.2;

interface Gap {
	opening: Opening;
	/** Fractions along the edge. */
	from: number;
	to: number;
	outward: Point;
}

/** A plan is a cut above the sills of the ground floor: openings of the upper floor lie over it. */
const cut = ({ sill }: Opening): boolean => sill < 2.5;

/** Openings of the walls that lie on the edge a→b, as fractions of it. */
function gapsOn(a: Point, b: Point, walls: readonly Wall[]): Gap[] {
	const size = distance(a, b);
	if (size === 0) return [];
	const ahead = { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
	const offLine = (p: Point) => Math.abs((p.x - a.x) * ahead.y - (p.y - a.y) * ahead.x);
	const along = (p: Point) => ((p.x - a.x) * ahead.x + (p.y - a.y) * ahead.y) / size;
	return walls
		.filter((wall) => wall.length > 0 && offLine(wall.from) < 0.05 && offLine(wall.to) < 0.05)
		.flatMap((wall) =>
			wall.openings.filter(cut).map((opening) => {
				const ends = [opening.start, opening.end].map((d) => along(between(wall.from, wall.to, d / wall.length)));
				return {
					opening,
					from: Math.max(0, Math.min(...ends)),
					to: Math.min(1, Math.max(...ends)),
					outward: wall.outward
				};
			})
		)
		.filter((gap) => gap.to > gap.from)
		.toSorted((p, q) => p.from - q.from);
}

/** Door: leaf and swing into the house. Garage: a dashed line. Window: two thin lines, the glass and the sill. */
function openingMarks(a: Point, b: Point, gap: Gap): Mark[] {
	const { opening, outward } = gap;
	const start = between(a, b, gap.from);
	const end = between(a, b, gap.to);
	const key = `opening-${opening.id}`;
	const thin = { kind: 'path', ink: 'house', fill: 'none' } as const;
	if (opening.kind === 'garage') return [{ ...thin, key, d: segmentPath(start, end), weight: 1.1, dash: [6, 3] }];
	if (opening.kind === 'window') {
		const sill = segmentPath(
			shifted(start, outward.x * 0.09, outward.y * 0.09),
			shifted(end, outward.x * 0.09, outward.y * 0.09)
		);
		return [
			{ ...thin, key, d: segmentPath(start, end), weight: 0.9 },
			{ ...thin, key: `${key}-sill`, d: sill, weight: 0.9 }
		];
	}
	const width = distance(start, end);
	const leaf = shifted(start, -outward.x * width, -outward.y * width);
	const turn = (leaf.x - start.x) * (end.y - start.y) - (leaf.y - start.y) * (end.x - start.x) > 0 ? 1 : 0;
	const swing = `M${mm(start.x)} ${mm(start.y)}L${mm(leaf.x)} ${mm(leaf.y)}A${mm(width)} ${mm(width)} 0 0 ${turn} ${mm(end.x)} ${mm(end.y)}Z`;
	return [{ ...thin, key, d: swing, weight: 0.9, fill: 'sheet' }];
}

/** What lies over the cut is dashed: windows upstairs along the face of the wall, and the ridge that runs back from the point of a gable. */
function overhead(walls: readonly Wall[]): Mark[] {
	const dashed = (key: string, from: Point, to: Point): Mark => ({
		kind: 'path',
		key,
		d: segmentPath(from, to),
		ink: 'house',
		weight: 0.9,
		fill: 'none',
		dash: [4, 3]
	});
	return walls.flatMap((wall) => {
		if (wall.length === 0) return [];
		const { from, to, outward, length, peak } = wall;
		const out = (p: Point, by: number): Point => shifted(p, outward.x * by, outward.y * by);
		const windows = wall.openings
			.filter((opening) => !cut(opening))
			.map(({ id, start, end }) => {
				const [a, b] = [start, end].map((d) => out(between(from, to, d / length), 0.09));
				return dashed(`opening-${id}`, a!, b!);
			});
		const point = between(from, to, 0.5);
		return peak === null ? windows : [...windows, dashed(`ridge-${wall.id}`, point, out(point, -length / 2))];
	});
}

export function drawHouse(site: Site): Mark[] {
	const ring = site.house;
	const marks: Mark[] = [];
	if (ring.length >= 3)
		marks.push({ kind: 'path', key: 'house-hatch', d: closedPath(ring), ink: 'house', weight: 0, fill: 'hatch' });
	const solid: string[] = [];
	const openings: Mark[] = [];
	const walls = site.walls.filter((wall) => wall.of === 'house');
	ring.forEach((a, index) => {
		const b = ring[(index + 1) % ring.length]!;
		let from = 0;
		for (const gap of gapsOn(a, b, walls)) {
			if (gap.from > from) solid.push(segmentPath(between(a, b, from), between(a, b, gap.from)));
			from = Math.max(from, gap.to);
			openings.push(...openingMarks(a, b, gap));
		}
		if (from < 1) solid.push(segmentPath(between(a, b, from), b));
	});
	if (solid.length > 0)
		marks.push(...openings, {
			kind: 'path',
			key: 'house',
			d: solid.join(''),
			ink: 'house',
			weight: heavy,
			fill: 'none'
		});
	marks.push(...overhead(walls));
	for (const area of site.areas.filter((area) => area.kind === 'porch'))
		marks.push({
			kind: 'path',
			key: `porch-${area.id}`,
			d: closedPath(area.polygon),
			ink: 'house',
			weight: 1.4,
			fill: 'sheet',
			...(area.sort === 'roofed' ? { dash: [8, 3] } : {})
		});
	for (const wall of site.walls.filter((wall) => wall.of === 'garden'))
		marks.push({
			kind: 'path',
			key: `wall-${wall.id}`,
			d: segmentPath(wall.from, wall.to),
			ink: 'house',
			weight: 2.6,
			fill: 'none'
		});
	return marks;
}
