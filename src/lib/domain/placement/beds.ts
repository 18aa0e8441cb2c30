/** Low shaded lights among the plants of a bed: rules bed.spacing and bed.inset. */
import {
	boxOf,
	directionAt,
	distance,
	inPolygon,
	leftOf,
	lineLength,
	moved,
	nearestOnSegment,
	padded,
	pointAt,
	rightOf,
	segmentMeeting,
	sidesOf,
	signedArea,
	type Line,
	type Point,
	type Polygon
} from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Area, ExistingLight } from '../site';
import { evenly, reachedLength, unreached, type Pool } from './bed-cover';
import { bedSides, crossesItself, ringOf, type Side } from './bed-edges';
import { poolEdge, poolReach, type Lit } from './bed-pools';
import { insetLines } from './bed-rows';
import { bedFindings, bedReasons } from './bed-words';
import type { Cause } from './conflicts';
import { middleOf, type Drafting, type Placed } from './drafting';
import type { Fixture } from './types';

/** Steps tried along the row, and further into the bed, when a place is taken, metres. */
const slides = [0, 0.25, 0.5, 0.75];
const deeper = [0, 0.2, 0.4];
/** The back of a bed, which the eye meets last, counts as lit out to so many reaches of a pool: our assumption. */
const backReach = 1.5;
/** Nearer than this another light crowds one in the bed, metres: our assumption, as for trees. */
const crowd = 0.6;

/** What lights the bed: lights of its own, or ones that stand there for something else. */
interface Counted extends Pool {
	by: Placed | ExistingLight | null;
	own: boolean;
}
export interface Row {
	line: Line;
	/** Metres in from the edge. */
	depth: number;
	front: boolean;
}

export function placeBed(d: Drafting, area: Area): void {
	if (area.kind !== 'bed' || area.light === 'none') return;
	const ring = ringOf(area.polygon);
	const target: Fixture['target'] = { kind: 'bed', id: area.id };
	if (crossesItself(ring)) bedFindings(d, area, target, { crosses: true });
	else if (ring.length >= 3) new BedLights(d, area, area.light, ring, target).place();
}

class BedLights {
	readonly #d: Drafting;
	readonly #area: Area;
	readonly #level: Lit;
	readonly #ring: Polygon;
	readonly #target: Fixture['target'];
	readonly #model: FixtureModel;
	readonly #reach: number;
	readonly #sides: readonly Side[];
	/** What lights the bed. */
	readonly #pools: Counted[];
	/** Where low lights stand, those that a wall hides from it among them. */
	readonly #low: Point[];
	readonly #inTheWay = new Set<Cause>();
	#placed = 0;

	constructor(d: Drafting, area: Area, level: Lit, ring: Polygon, target: Fixture['target']) {
		this.#d = d;
		this.#area = area;
		this.#level = level;
		this.#ring = ring;
		this.#target = target;
		this.#model = d.pick({ body: 'path', strength: level });
		// A lamp of one's own may be too faint to have a pool: lights stand no nearer than room for a spade all the same.
		const least = d.figures['place.clear'].apart / 2;
		this.#reach = Math.max(least, poolReach(this.#model.lamp, this.#model.lampHeight, poolEdge(level)));
		this.#sides = bedSides(d.site, area, ring);
		const standing = this.#standing();
		this.#pools = standing.filter(({ at }) => !this.#hidden(at));
		this.#low = standing.filter(({ by }) => !isExisting(by)).map(({ at }) => at);
	}

	place(): void {
		const front = this.#rows(true);
		for (const row of front) this.#fill(row, 1);
		const back = this.#rows(false);
		for (const row of back) this.#fill(row, backReach);
		const lines = front.length > 0 ? front : back;
		const counted = this.#pools.filter((pool) => !pool.own && this.#counts(pool, lines));
		for (const { by } of counted)
			if (by && 'fixture' in by) by.fixture = { ...by.fixture, also: [...(by.fixture.also ?? []), this.#target] };
		const lit = this.#placed > 0 || counted.length > 0;
		bedFindings(this.#d, this.#area, this.#target, {
			placed: this.#placed,
			counted: counted.map(({ by }) => by),
			narrow: front.length + back.length === 0,
			dark: !lit || front.some(({ line }) => unreached(line, this.#pools, this.#worth(line)).length > 0),
			deep: lit && this.#isDeep(),
			inTheWay: [...this.#inTheWay],
			least: 2 * (rules['bed.inset'].figures.clear + this.#model.headDiameter / 2)
		});
	}

	/** Lights that stand already and whose pools could reach the bed. */
	#standing(): Counted[] {
		const { minX, minY, maxX, maxY } = boxOf(this.#ring);
		const near = ({ x, y }: Point, reach: number): boolean => {
			const box = padded({ minX, minY, maxX, maxY }, reach);
			return x > box.minX && x < box.maxX && y > box.minY && y < box.maxY;
		};
		const low = this.#d.placed.flatMap((by): Counted[] => {
			const { technique, at, lamp, height } = by.fixture;
			if (technique !== 'path' && technique !== 'drive' && technique !== 'area') return [];
			const reach = poolReach(lamp, height, poolEdge(this.#level));
			return near(at, reach) ? [{ at, reach, by, own: false }] : [];
		});
		const there = this.#d.site.existing.map((by): Counted => ({ at: by.at, reach: by.reach, by, own: false }));
		return [...low, ...there.filter(({ at, reach }) => near(at, reach))];
	}

	/** Whether the house or a garden wall stands between a light and where the bed is nearest to it. */
	#hidden(at: Point): boolean {
		if (inPolygon(at, this.#ring)) return false;
		const near = sidesOf(this.#ring)
			.map(([a, b]) => nearestOnSegment(at, a, b))
			.reduce((best, one) => (one.distance < best.distance ? one : best));
		return this.#screened(at, near.point);
	}
	#screened(p: Point, q: Point): boolean {
		const { walls, house } = this.#d.site;
		return (
			sidesOf(house).some(([a, b]) => segmentMeeting(p, q, a, b) !== null) ||
			walls.some((wall) => wall.of === 'garden' && segmentMeeting(p, q, wall.from, wall.to) !== null)
		);
	}

	/** The rows along the front, or along the other sides, deepest first: where the bed is narrow the depth gives way. */
	#rows(front: boolean): Row[] {
		const { back, clear } = rules['bed.inset'].figures;
		const radius = this.#model.headDiameter / 2;
		const least = clear + radius;
		const middle = middleOf(this.#d.site);
		return [back, (back + least) / 2, least].flatMap((depth) =>
			insetLines(this.#sides, this.#ring, (side) => side.front === front, depth, radius)
				.map((line) => ({ line, depth, front, length: lineLength(line), mid: pointAt(line, lineLength(line) / 2) }))
				.sort(
					(a, b) =>
						different(b.length, a.length) ||
						different(Math.abs(a.mid.x - middle), Math.abs(b.mid.x - middle)) ||
						different(b.mid.y, a.mid.y)
				)
		);
	}

	/** Lights along what no pool of a row reaches yet. */
	#fill(row: Row, share: number): void {
		const lit = this.#placed > 0 || this.#pools.some((pool) => this.#counts(pool, [row]));
		const pools = this.#pools.map(({ at, reach }) => ({ at, reach: reach * share }));
		for (const span of unreached(row.line, pools, lit ? this.#worth(row.line) : 0))
			for (const station of evenly(row.line, span, this.#reach)) this.#stand(row, station, span);
	}

	/** The least of a row, metres, that is worth a light: the reach of a pool, or the whole of a row between that and half of it. */
	#worth(line: Line): number {
		return Math.min(this.#reach, Math.max(this.#reach / 2, lineLength(line)));
	}

	/** Whether a pool takes in a good part of the rows, not just a corner. */
	#counts(pool: Pool, rows: readonly Row[]): boolean {
		return rows.some(({ line }) => {
			const length = reachedLength(line, pool);
			return length > 0 && length >= Math.min(this.#reach, lineLength(line)) / 2;
		});
	}

	#stand(row: Row, station: number, { from, to }: { from: number; to: number }): void {
		const wanted = pointAt(row.line, station);
		const way = directionAt(row.line, station);
		// The same way first in a yard and its mirror image, whichever way round the corners were told.
		const hand = Math.abs(way.x) > 1e-6 ? Math.sign(way.x) * this.#d.handed(wanted) : Math.sign(way.y) || 1;
		let first: Cause | null = null;
		for (const slide of slides.flatMap((by) => (by === 0 ? [0] : [by * hand, -by * hand]))) {
			const at = station + slide;
			if (at < from - 1e-9 || at > to + 1e-9) continue;
			for (const further of deeper) {
				const p = moved(pointAt(row.line, at), this.#inward(row.line, at), further);
				const cause = this.#blocked(p);
				if (cause === null) return this.#put(row, p, wanted, first);
				if (cause === 'edge') continue;
				first ??= cause;
				this.#inTheWay.add(cause);
			}
		}
	}
	/** Unit vector into the bed: rows run round it the way its corners were told. */
	#inward(line: Line, at: number): Point {
		const way = directionAt(line, at);
		return signedArea(this.#ring) > 0 ? rightOf(way) : leftOf(way);
	}

	#blocked(p: Point): Cause | 'edge' | null {
		const radius = this.#model.headDiameter / 2;
		const clearOf = ({ from, to, clear }: Side): boolean =>
			nearestOnSegment(p, from, to).distance >= clear + radius - 1e-6;
		if (!inPolygon(p, this.#ring) || !this.#sides.every(clearOf)) return 'edge';
		const cause = this.#d.ground.blocked(p, radius, 'path');
		if (cause) return cause;
		if (this.#d.placed.some(({ fixture }) => distance(fixture.at, p) < crowd - 1e-6)) return 'fixture';
		// Nearer than a reach two lights do the work of one.
		const near = this.#low.some((at) => distance(at, p) < this.#reach - 1e-6 && !this.#screened(at, p));
		return near ? 'fixture' : null;
	}

	#put(row: Row, at: Point, wanted: Point, first: Cause | null): void {
		const nearest = Math.min(Infinity, ...this.#low.map((p) => distance(p, at)));
		const depth = Math.min(...this.#sides.map(({ from, to }) => nearestOnSegment(at, from, to).distance));
		this.#pools.push({ at, reach: this.#reach, by: null, own: true });
		this.#low.push(at);
		this.#placed++;
		this.#d.place({
			target: this.#target,
			role: 'bed',
			technique: 'area',
			at,
			model: this.#model,
			reasons: bedReasons(this.#d, this.#area, this.#level, this.#model, {
				nearest,
				depth,
				front: row.front,
				first,
				aside: distance(at, wanted)
			})
		});
	}

	/** Whether more than a quarter of the bed lies further from every light than two lights stand apart. */
	#isDeep(): boolean {
		const { minX, minY, maxX, maxY } = boxOf(this.#ring);
		const [columns, rows] = [maxX - minX, maxY - minY].map((size) => Math.min(40, Math.ceil(size / 0.5)));
		let inside = 0;
		let dark = 0;
		for (let i = 0; i < columns!; i++)
			for (let j = 0; j < rows!; j++) {
				const p = {
					x: minX + ((i + 0.5) * (maxX - minX)) / columns!,
					y: minY + ((j + 0.5) * (maxY - minY)) / rows!
				};
				if (!inPolygon(p, this.#ring)) continue;
				inside++;
				if (this.#pools.every(({ at, reach }) => distance(at, p) > 2 * reach)) dark++;
			}
		return dark > inside / 4;
	}
}
const isExisting = (by: Placed | ExistingLight | null): boolean => by !== null && !('fixture' in by);
const different = (a: number, b: number): number => (Math.abs(a - b) > 1e-6 ? a - b : 0);
