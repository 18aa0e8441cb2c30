/**
 * What goes to keep to a budget, cut by cut, in the order of rule budget.order. A cut takes what belongs together, so that no
 * row is left lopsided: the lights round a tree but the first, a pair at the ends of a wall, every other light of a straight.
 */
import {
	between,
	dot,
	nearestOnLine,
	nearestOnSegment,
	polygonArea,
	subtract,
	towards,
	type Point
} from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Area, Site, Strip, Tree, Wall } from '../site';
import { middleOf, type Drafting, type Placed } from './drafting';
import type { Fixture } from './types';

const order = rules['budget.order'].figures;
/** Figures of a thing and of its image in the mirror differ by less, metres. */
const alike = 1e-6;
export type CutKind =
	'treeFurther' | 'wallEnds' | 'wall' | 'tree' | 'bed' | 'seating' | 'driveThin' | 'walkThin' | 'drive' | 'walk';
export interface Part {
	kind: CutKind;
	target: Fixture['target'];
	lights: Placed[];
}
/** Parts that go together: one, or two that are each other's image in the middle of the front. */
export interface Cut {
	parts: Part[];
}
interface Ranked extends Part {
	/** Compared figure by figure; the least goes first. Equal in all: images of each other. */
	rank: readonly number[];
}
/** How a target compares with others of its sort. */
interface Standing {
	/** Lights on a wall that marks a drive are for finding the way. */
	way: boolean;
	bright: boolean;
	/** Square metres that are lit; lights of a row. */
	size: number;
	middle: Point;
}

/** The cuts, first to go first. Lights for safety and those set by hand are in none. */
export function cutsOf({ site, placed, marking }: Pick<Drafting, 'site' | 'placed' | 'marking'>): Cut[] {
	const byTarget = new Map<string, Placed[]>();
	for (const one of placed) {
		const { kind, id } = one.fixture.target;
		const key = `${kind} ${id}`;
		byTarget.set(key, [...(byTarget.get(key) ?? []), one]);
	}
	const middle = middleOf(site);
	const things = byId(site);
	const ranked = [...byTarget.values()].flatMap((all) => partsOf(things, all, marking, middle));
	ranked.sort((a, b) => compare(a.rank, b.rank));
	const cuts: (Cut & { rank: readonly number[] })[] = [];
	for (const { rank, ...part } of ranked) {
		const last = cuts.at(-1);
		if (last && compare(last.rank, rank) === 0) last.parts.push(part);
		else cuts.push({ rank, parts: [part] });
	}
	return cuts;
}

interface Things {
	trees: Map<string, Tree>;
	walls: readonly Wall[];
	/** Beds and seating places, by kind and id. */
	areas: Map<string, Area>;
	strips: Map<string, Strip>;
}
const byId = (site: Site): Things => {
	const map = <T extends { id: string }>(list: readonly T[]): Map<string, T> =>
		new Map(list.map((one) => [one.id, one]));
	return {
		trees: map(site.trees),
		walls: site.walls,
		areas: new Map(site.areas.map((area) => [`${area.kind} ${area.id}`, area])),
		strips: new Map(site.strips.map((strip) => [`${strip.kind} ${strip.id}`, strip]))
	};
};

const compare = (a: readonly number[], b: readonly number[]): number => {
	for (const [i, value] of a.entries()) if (Math.abs(value - b[i]!) > alike) return value - b[i]!;
	return 0;
};
const rankOf = (kind: CutKind, { way, bright, size, middle }: Standing, front: number, depth = 0): number[] => [
	way ? 1 : 0,
	bright ? 1 : 0,
	kind === 'wallEnds' || kind === 'wall' ? (way ? order.drive : order.wall) : order[kind],
	size,
	-Math.abs(middle.x - front),
	middle.y,
	depth
];

/** Whether a light may go at all. */
function mayGo({ fixture, fills }: Placed): boolean {
	const { target, also, byHand } = fixture;
	if (byHand || also?.some(({ kind }) => kind === 'number')) return false;
	if (target.kind === 'walk' || target.kind === 'drive') return fills !== undefined;
	return target.kind === 'tree' || target.kind === 'wall' || target.kind === 'bed' || target.kind === 'seating';
}

function partsOf(things: Things, all: readonly Placed[], marking: ReadonlySet<Wall>, front: number): Ranked[] {
	const target = all[0]!.fixture.target;
	const open = all.filter(mayGo);
	if (open.length === 0) return [];
	switch (target.kind) {
		case 'tree':
			return ofTree(things, target, all, open, front);
		case 'wall': {
			// A garden wall may be called as a side of the house is: each light goes with the wall that it shines at.
			const walls = things.walls.filter(({ id }) => id === target.id);
			return walls.flatMap((wall) => {
				const row = open.filter((one) => nearestWall(walls, one) === wall);
				return row.length > 0 ? ofWall(wall, target, row, marking.has(wall), front) : [];
			});
		}
		case 'bed':
		case 'seating': {
			const area = things.areas.get(`${target.kind} ${target.id}`);
			if (!area) return [];
			const size = Math.abs(polygonArea(area.polygon));
			const standing = { way: false, bright: area.light === 'bright', size, middle: area.centre };
			return [{ kind: target.kind, target, lights: open, rank: rankOf(target.kind, standing, front) }];
		}
		default: {
			const strip = things.strips.get(`${target.kind} ${target.id}`);
			return strip ? ofStrip(strip, target, all, front) : [];
		}
	}
}

/** The further lights of a tree, then the first; one that serves another tree too goes with the first. */
function ofTree(
	{ trees }: Things,
	target: Fixture['target'],
	all: readonly Placed[],
	open: readonly Placed[],
	front: number
): Ranked[] {
	const own = trees.get(target.id);
	if (!own) return [];
	const keeps = all.some((one) => !open.includes(one));
	const shared = ({ fixture: { also } }: Placed): boolean => also !== undefined && also.length > 0;
	const further = open.filter((one, i) => !shared(one) && (keeps || i > 0));
	const main = open.filter((one) => !further.includes(one));
	const served = main.flatMap(({ fixture: { also } }) => also ?? []).flatMap(({ id }) => trees.get(id) ?? []);
	const standing = (of: readonly Tree[]): Standing => ({
		way: false,
		bright: of.some(({ light }) => light === 'bright'),
		size: of.reduce((sum, { spread, height, crownBase }) => sum + spread * Math.max(0, height - crownBase), 0),
		middle: own.at
	});
	const part = (kind: 'treeFurther' | 'tree', lights: Placed[], of: readonly Tree[]): Ranked[] =>
		lights.length > 0 ? [{ kind, target, lights, rank: rankOf(kind, standing(of), front) }] : [];
	return [...part('treeFurther', further, [own]), ...part('tree', main, [own, ...served])];
}

function nearestWall(walls: readonly Wall[], { fixture: { at, aim } }: Placed): Wall | null {
	const away = ({ from, to }: Wall): number => nearestOnSegment(aim?.point ?? at, from, to).distance;
	return walls.reduce<Wall | null>((best, wall) => (best && away(best) <= away(wall) ? best : wall), null);
}

/** The two at the ends, again and again down to half the row; then what is left, all at once. */
function ofWall(
	wall: Wall,
	target: Fixture['target'],
	open: readonly Placed[],
	marks: boolean,
	front: number
): Ranked[] {
	const along = towards(wall.from, wall.to);
	const place = ({ fixture: { at } }: Placed): number => dot(subtract(at, wall.from), along);
	const row = [...open].sort((a, b) => place(a) - place(b));
	const standing: Standing = {
		way: marks,
		// All that is for finding the way counts alike.
		bright: !marks && wall.light === 'bright',
		size: wall.length * wall.height,
		middle: between(wall.from, wall.to, 0.5)
	};
	const parts: Ranked[] = [];
	const least = row.length * order.wallLeast;
	while (row.length - 2 >= least && row.length > 2) {
		const lights = [row.shift()!, row.pop()!];
		parts.push({ kind: 'wallEnds', target, lights, rank: rankOf('wallEnds', standing, front, parts.length) });
	}
	return [...parts, { kind: 'wall', target, lights: row, rank: rankOf('wall', standing, front, parts.length) }];
}

/** Every other light of a straight, then the rest: a walk straight by straight, a drive as a whole, edge by edge. */
function ofStrip(strip: Strip, target: Fixture['target'], all: readonly Placed[], front: number): Ranked[] {
	const drive = strip.kind === 'drive';
	const sideOf = ({ fixture: { at } }: Placed): string => (drive ? (nearestOnLine(at, strip.centre)?.side ?? '') : '');
	const kept = all.filter((one) => !mayGo(one));
	const straights = new Map<string, { side: string; lights: Placed[] }>();
	for (const one of all.filter(mayGo)) {
		const side = sideOf(one);
		const before = kept.filter((k) => sideOf(k) === side && (k.order?.at ?? Infinity) < one.fills!).length;
		const key = `${side} ${before}`;
		const straight = straights.get(key) ?? { side, lights: [] };
		straight.lights.push(one);
		straights.set(key, straight);
	}
	const rows = [...straights.values()].map(({ lights }) => {
		const stations = [...new Set(lights.map(({ fills }) => fills!))].sort((a, b) => a - b);
		const thin = lights.filter(({ fills }) => stations.indexOf(fills!) % 2 === 0);
		return { thin, rest: lights.filter((one) => !thin.includes(one)) };
	});
	const whole = { thin: rows.flatMap(({ thin }) => thin), rest: rows.flatMap(({ rest }) => rest) };
	return (drive ? [whole] : rows).flatMap(({ thin, rest }) => {
		const lights = [...thin, ...rest];
		const mean = (of: (p: Point) => number): number =>
			lights.reduce((sum, { fixture: { at } }) => sum + of(at), 0) / lights.length;
		const middle = { x: mean(({ x }) => x), y: mean(({ y }) => y) };
		const standing = { way: true, bright: false, size: lights.length, middle };
		const part = (kind: CutKind, some: Placed[]): Ranked[] =>
			some.length > 0 ? [{ kind, target, lights: some, rank: rankOf(kind, standing, front) }] : [];
		return drive
			? [...part('driveThin', thin), ...part('drive', rest)]
			: [...part('walkThin', thin), ...part('walk', rest)];
	});
}
