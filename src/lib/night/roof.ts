/**
 * A simple roof over the house. Its pitch is our assumption: nobody is asked about it, and no lamp of the plan lights it on purpose. Hipped;
 * a section told with a gable has its ridge run back from it; against a neighbour's wall the ridge runs through.
 */
import type { Vector } from '../domain/photometry';
import type { Site, Wall } from '../domain/site';
import { rules } from '../domain/shared/rules';
import { panelOf, type Panel } from './panels';

/** Rise over run (from memory: 25° to 40° are usual); how far the eaves stand out, metres, as the light of the plan has it. */
const pitch = 0.55;
const overhang = rules['place.clear'].figures.eaves;
/** A side this near the boundary is taken for a wall shared with next door. */
const shared = 0.35;

/** A part of the roof over an upright box: `back` and `front` in y. */
export interface RoofPart {
	x0: number;
	x1: number;
	back: number;
	front: number;
	eaves: number;
	/** Height of the point of the gable at its front; null: hipped. */
	peak: number | null;
	/** No hip at that side: it goes on next door. */
	openLeft: boolean;
	openRight: boolean;
}
interface Section {
	x0: number;
	x1: number;
	out: number;
	eaves: number;
	peak: number | null;
}
const sectionOf = (wall: Wall): Section => ({
	x0: Math.min(wall.from.x, wall.to.x),
	x1: Math.max(wall.from.x, wall.to.x),
	out: wall.from.y,
	eaves: wall.height,
	peak: wall.peak ?? null
});

/** The parts of a house's roof, the wide ones first. */
export function roofParts(site: Site): RoofPart[] {
	const sections = site.walls.filter((wall) => wall.of === 'house' && wall.front).map(sectionOf);
	if (sections.length === 0 || site.house.length < 3) return [];
	const back = Math.min(...site.house.map((p) => p.y));
	const groups: Section[][] = [];
	for (const section of sections) {
		const last = groups.at(-1);
		if (last && Math.abs(last[0]!.eaves - section.eaves) < 0.05) last.push(section);
		else groups.push([section]);
	}
	const left = Math.min(...sections.map((s) => s.x0));
	const right = Math.max(...sections.map((s) => s.x1));
	const openLeft = left - site.leftBoundary < shared;
	const openRight = site.rightBoundary - right < shared;
	return groups.flatMap((group) => {
		const front = Math.min(...group.map((s) => s.out));
		const [x0, x1] = [group[0]!.x0, group.at(-1)!.x1];
		const eaves = group[0]!.eaves;
		const alone = group.length === 1 && group[0]!.peak !== null;
		const open = { openLeft: openLeft && x0 === left, openRight: openRight && x1 === right };
		const main = { x0, x1, back, front, eaves, peak: alone ? group[0]!.peak : null, ...open };
		const wings = group
			.filter((s) => !alone && (s.out > front + 0.05 || s.peak !== null))
			.map((s) => ({
				x0: s.x0,
				x1: s.x1,
				back: (back + front) / 2,
				front: s.out,
				eaves,
				peak: s.peak,
				openLeft: false,
				openRight: false
			}));
		return [main, ...wings];
	});
}
/** Height of the ridge of a part. */
export function ridgeOf(part: RoofPart): number {
	if (part.peak !== null) return part.peak;
	const wide = part.x1 - part.x0 + 2 * overhang;
	const deep = part.front - part.back + 2 * overhang;
	const half = part.openLeft || part.openRight ? deep / 2 : Math.min(wide, deep) / 2;
	return part.eaves + Math.min(half * pitch, 4.5);
}
/** The highest point of the house, metres; 4 where there is none yet. */
export const roofTop = (site: Site): number => Math.max(4, ...roofParts(site).map(ridgeOf));

/** The slopes, the boards at the eaves and their undersides. */
export function roofPanels(site: Site, roof: number, eave: number): Panel[] {
	return roofParts(site).flatMap((part) => partPanels(part, roof, eave));
}
export const partPanels = (part: RoofPart, roof: number, eave: number): Panel[] =>
	(part.peak === null ? hipped(part, roof, eave) : gabled(part, roof, eave)).filter((panel) => panel !== null);
/**
 * Slopes and boards as seen square on from the street, for an elevation: x along the front, heights as −y; the furthest back first. `y`: of the
 * walls under them.
 */
export function roofFaces(site: Site): { y: number; ring: { x: number; y: number }[] }[] {
	const middle = ({ corners }: Panel): number => corners.reduce((sum, { y }) => sum + y, 0) / corners.length;
	return roofParts(site)
		.toSorted((a, b) => a.front - b.front)
		.flatMap((part) =>
			partPanels(part, 0, 0)
				.filter(({ material }) => material !== 'soffit')
				.toSorted((a, b) => middle(a) - middle(b))
				.map(({ corners }) => ({ y: part.front, ring: corners.map(({ x, z }) => ({ x, y: -z })) }))
		);
}
const at = (x: number, y: number, z: number): Vector => ({ x, y, z });

function hipped(part: RoofPart, roof: number, eave: number): (Panel | null)[] {
	const x0 = part.x0 - (part.openLeft ? 0 : overhang);
	const x1 = part.x1 + (part.openRight ? 0 : overhang);
	const [y0, y1] = [part.back - overhang, part.front + overhang];
	const [low, top] = [part.eaves + 0.12, ridgeOf(part)];
	const middle = (y0 + y1) / 2;
	const half = Math.min(x1 - x0, y1 - y0) / 2;
	const across = part.openLeft || part.openRight || x1 - x0 >= y1 - y0;
	// The ridge, from left to right or from front to back.
	const [a, b] = across
		? [at(x0 + (part.openLeft ? 0 : half), middle, top), at(x1 - (part.openRight ? 0 : half), middle, top)]
		: [at((x0 + x1) / 2, y1 - half, top), at((x0 + x1) / 2, y0 + half, top)];
	const corner = [at(x0, y1, low), at(x1, y1, low), at(x1, y0, low), at(x0, y0, low)] as const;
	const slope = (points: Vector[]): Panel | null => panelOf(points, roof, 'roof');
	const slopes = across
		? [
				slope([corner[0], corner[1], b, a]),
				slope([corner[2], corner[3], a, b]),
				...(part.openLeft ? [] : [slope([corner[3], corner[0], a])]),
				...(part.openRight ? [] : [slope([corner[1], corner[2], b])])
			]
		: [
				slope([corner[0], corner[1], a]),
				slope([corner[1], corner[2], b, a]),
				slope([corner[2], corner[3], b]),
				slope([corner[3], corner[0], a, b])
			];
	return [...slopes, ...eaveBoards(part, x0, x1, eave)];
}
function eaveBoards(part: RoofPart, x0: number, x1: number, eave: number): (Panel | null)[] {
	const { front, back, eaves } = part;
	const y = front + overhang;
	const under = (a: Vector, b: Vector, c: Vector, d: Vector): Panel | null => panelOf([a, b, c, d], eave, 'soffit');
	const board = (a: Vector, b: Vector): Panel | null =>
		panelOf([a, b, at(b.x, b.y, eaves + 0.14), at(a.x, a.y, eaves + 0.14)], eave, 'trim');
	return [
		under(at(x0, front, eaves), at(x1, front, eaves), at(x1, y, eaves), at(x0, y, eaves)),
		board(at(x0, y, eaves - 0.02), at(x1, y, eaves - 0.02)),
		...(part.openLeft
			? []
			: [
					under(at(x0, back, eaves), at(part.x0, back, eaves), at(part.x0, y, eaves), at(x0, y, eaves)),
					board(at(x0, back, eaves - 0.02), at(x0, y, eaves - 0.02))
				]),
		...(part.openRight
			? []
			: [
					under(at(part.x1, back, eaves), at(x1, back, eaves), at(x1, y, eaves), at(part.x1, y, eaves)),
					board(at(x1, back, eaves - 0.02), at(x1, y, eaves - 0.02))
				])
	];
}
function gabled(part: RoofPart, roof: number, eave: number): (Panel | null)[] {
	const { x0, x1, eaves, back } = part;
	const top = part.peak ?? eaves;
	const middle = (x0 + x1) / 2;
	const drop = ((top - eaves) / Math.max(0.1, (x1 - x0) / 2)) * overhang;
	const front = part.front + overhang * 0.75;
	const thick = 0.16;
	const ridge = [at(middle, front, top + thick), at(middle, back, top + thick)] as const;
	const edge = (x: number): [Vector, Vector] => [at(x, front, eaves - drop + thick), at(x, back, eaves - drop + thick)];
	const [left, right] = [edge(x0 - overhang), edge(x1 + overhang)];
	// The board along the slope's front edge, and the underside of what stands out before the wall.
	const board = (low: Vector): Panel | null =>
		panelOf([low, ridge[0], at(middle, front, top - 0.06), at(low.x, front, low.z - thick - 0.06)], eave, 'trim');
	const under = (low: Vector): Panel | null =>
		panelOf(
			[
				at(low.x, front, low.z - thick),
				at(middle, front, top),
				at(middle, part.front, top),
				at(low.x, part.front, low.z - thick)
			],
			eave,
			'soffit'
		);
	return [
		panelOf([left[0], ridge[0], ridge[1], left[1]], roof, 'roof'),
		panelOf([right[0], ridge[0], ridge[1], right[1]], roof, 'roof'),
		board(left[0]),
		board(right[0]),
		under(left[0]),
		under(right[0])
	];
}
