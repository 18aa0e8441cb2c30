import type { Point, Polygon } from '../shared/geometry';
import { distance, rightOf, towards } from '../shared/geometry';
import { houseFacts, type YardSection } from '../yard';
import { measure, report, type Survey } from './survey';
import type { Wall } from './types';

/** One part of the front: from x to x, standing out by `out`. */
export interface FrontPart {
	id: string;
	from: number;
	to: number;
	out: number;
	wall: string;
}
export interface House {
	/** Ring, empty while the front is not known: from the back left corner along the front to the back right one. */
	outline: Polygon;
	parts: FrontPart[];
	walls: Wall[];
	eaves: number;
	/** Length of the front, metres. */
	width: number;
}
/** The shallowest the house can be behind a part of its front that stands back, metres. */
const shallowest = 1;

/** House outline and walls from the parts of the front. A front not told yet gives an empty outline and no walls. */
export function makeHouse(survey: Survey): House {
	const { yard, units, ledger } = survey;
	const { house } = yard;
	const sections = house.sections ?? [];
	const sides = [house.left?.light, house.right?.light, ...sections.map((section) => section.light)];
	const lit = sides.some((level) => level !== undefined && level !== 'none');
	const facts = houseFacts(yard, lit, units, ledger);
	if (sections.length === 0) {
		ledger.missing.push({ path: 'house.sections', message: 'How long the house front is.' });
		return { outline: [], parts: [], walls: [], eaves: facts.eaves, width: 0 };
	}
	const parts = frontParts(survey, sections, facts.depth);
	const width = parts.at(-1)!.to;
	const back = -facts.depth;
	const front = parts.flatMap((part): Point[] => [
		{ x: part.from, y: part.out },
		{ x: part.to, y: part.out }
	]);
	const corners = front.filter((p, i) => i === 0 || distance(p, front[i - 1]!) > 1e-9);
	const outline = [{ x: 0, y: back }, ...corners, { x: width, y: back }];

	const wall = (id: string, name: string, from: Point, to: Point, light: Wall['light'], isFront: boolean): Wall => ({
		id,
		name,
		of: 'house',
		from,
		to,
		outward: rightOf(towards(from, to)),
		length: distance(from, to),
		height: facts.eaves,
		finish: facts.finish,
		texture: facts.texture,
		light,
		openings: [],
		front: isFront
	});
	const walls: Wall[] = [
		wall(
			'left',
			'left side of the house',
			{ x: 0, y: back },
			{ x: 0, y: parts[0]!.out },
			house.left?.light ?? 'none',
			false
		)
	];
	parts.forEach((part, i) => {
		const before = parts[i - 1];
		if (before && Math.abs(before.out - part.out) > 1e-9) {
			const name = `return between parts ${i} and ${i + 1} of the front`;
			const from = { x: part.from, y: before.out };
			walls.push(wall(`return-${i}`, name, from, { x: part.from, y: part.out }, 'none', false));
		}
		const section = sections[i]!;
		if (section.light === undefined) {
			const which = parts.length === 1 ? 'the front' : `part ${i + 1} of the front`;
			ledger.missing.push({ path: `house.sections.${section.id}.light`, message: `Whether to light ${which}.` });
		}
		const name = parts.length === 1 ? 'front of the house' : `front, part ${i + 1} of ${parts.length}`;
		walls.push(
			wall(part.wall, name, { x: part.from, y: part.out }, { x: part.to, y: part.out }, section.light ?? 'none', true)
		);
	});
	walls.push(
		wall(
			'right',
			'right side of the house',
			{ x: width, y: parts.at(-1)!.out },
			{ x: width, y: back },
			house.right?.light ?? 'none',
			false
		)
	);
	if (facts.eaves > 9 && lit) {
		const message = `Eaves ${measure(survey, facts.eaves)} up are three storeys or more. Check the height: garden lamps reach about two storeys.`;
		report(survey, 'look', 'eaves-high', { kind: 'house', id: 'house' }, message);
	}
	return { outline, parts, walls, eaves: facts.eaves, width };
}

function frontParts(survey: Survey, sections: readonly YardSection[], depth: number): FrontPart[] {
	let x = 0;
	return sections.map((section, i) => {
		const from = x;
		x += section.width;
		const told = section.out ?? 0;
		const out = Math.max(told, shallowest - depth);
		if (out !== told) {
			const message = `Part ${i + 1} of the front stands ${measure(survey, -told)} back, but the house is ${measure(survey, depth)} deep. Check how far back it stands, or the depth of the house.`;
			report(survey, 'stop', 'section-behind-house', { kind: 'section', id: section.id }, message);
		}
		return { id: section.id, from, to: x, out, wall: `front-${i + 1}` };
	});
}
/**
 * The part of the front that something between two places along it belongs to: the one it shares most of its width with,
 * of equals the one farther out; beyond the ends the end part. Null while the front is not known.
 */
export function partFor(house: House, from: number, to: number): FrontPart | null {
	const shared = (part: FrontPart): number => Math.min(to, part.to) - Math.max(from, part.from);
	const better = (a: FrontPart, b: FrontPart): boolean => {
		const gain = shared(a) - shared(b);
		return Math.abs(gain) > 1e-6 ? gain > 0 : a.out > b.out;
	};
	return house.parts.reduce<FrontPart | null>((best, part) => (!best || better(part, best) ? part : best), null);
}
