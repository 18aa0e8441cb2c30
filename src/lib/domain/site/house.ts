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
	/** Height of its eaves, and of the point of its gable; null without one. */
	eaves: number;
	peak: number | null;
	light: Wall['light'];
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
/** Eaves from here up are three storeys or more, metres: our assumption. */
const threeStoreys = 9;
/** A gable that rises by more than this for each metre in is a spire, or a slip of the pen: our assumption. */
const spire = 3;

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
	const parts = frontParts(survey, sections, facts);
	const width = parts.at(-1)!.to;
	const back = -facts.depth;
	const front = parts.flatMap((part): Point[] => [
		{ x: part.from, y: part.out },
		{ x: part.to, y: part.out }
	]);
	const corners = front.filter((p, i) => i === 0 || distance(p, front[i - 1]!) > 1e-9);
	const outline = [{ x: 0, y: back }, ...corners, { x: width, y: back }];

	type Told = Pick<Wall, 'id' | 'name' | 'from' | 'to' | 'height'> & Partial<Pick<Wall, 'light' | 'peak' | 'front'>>;
	const wall = (told: Told): Wall => ({
		peak: null,
		light: 'none',
		front: false,
		...told,
		of: 'house',
		outward: rightOf(towards(told.from, told.to)),
		length: distance(told.from, told.to),
		finish: facts.finish,
		texture: facts.texture,
		openings: []
	});
	const walls: Wall[] = [
		wall({
			id: 'left',
			name: 'left side of the house',
			from: { x: 0, y: back },
			to: { x: 0, y: parts[0]!.out },
			height: parts[0]!.eaves,
			light: house.left?.light ?? 'none'
		})
	];
	parts.forEach((part, i) => {
		const before = parts[i - 1];
		if (before && Math.abs(before.out - part.out) > 1e-9) {
			const name = `return between parts ${i} and ${i + 1} of the front`;
			const [from, to] = [before, part].map(({ out }) => ({ x: part.from, y: out }));
			// It is a side of the part that stands further out.
			const { eaves } = part.out > before.out ? part : before;
			walls.push(wall({ id: `return-${i}`, name, from: from!, to: to!, height: eaves }));
		}
		const section = sections[i]!;
		if (section.light === undefined) {
			const which = parts.length === 1 ? 'the front' : `part ${i + 1} of the front`;
			ledger.missing.push({ path: `house.sections.${section.id}.light`, message: `Whether to light ${which}.` });
		}
		const name = parts.length === 1 ? 'front of the house' : `front, part ${i + 1} of ${parts.length}`;
		const { eaves: height, peak, light } = part;
		const [from, to] = [part.from, part.to].map((x) => ({ x, y: part.out }));
		walls.push(wall({ id: part.wall, name, from: from!, to: to!, height, peak, light, front: true }));
	});
	walls.push(
		wall({
			id: 'right',
			name: 'right side of the house',
			from: { x: width, y: parts.at(-1)!.out },
			to: { x: width, y: back },
			height: parts.at(-1)!.eaves,
			light: house.right?.light ?? 'none'
		})
	);
	if (lit) tooHigh(survey, facts.eaves, sections);
	return { outline, parts, walls, eaves: facts.eaves, width };
}

function tooHigh(survey: Survey, eaves: number, sections: readonly YardSection[]): void {
	const told = [
		{ about: { kind: 'house', id: 'house' }, height: eaves },
		...sections.map((section) => ({ about: { kind: 'section', id: section.id }, height: section.eaves ?? 0 }))
	];
	for (const { about, height } of told) {
		if (height <= threeStoreys) continue;
		const message = `Eaves ${measure(survey, height)} up are three storeys or more. Check the height: garden lamps reach about two storeys.`;
		report(survey, 'look', 'eaves-high', about, message);
	}
}

/** The point of a part's gable, with a finding about one that cannot be; null where there is none. */
function peakOf(survey: Survey, { id, width, gable }: YardSection, which: string, eaves: number): number | null {
	if (gable === undefined) return null;
	const about = { kind: 'section', id };
	if (gable <= eaves) {
		const message = `The point of the gable ${which} is ${measure(survey, gable)} up, not above its eaves at ${measure(survey, eaves)}. Measure both from the ground.`;
		report(survey, 'look', 'gable-below-eaves', about, message);
		return null;
	}
	if (gable - eaves > (spire * width) / 2) {
		const message = `The gable ${which} rises ${measure(survey, gable - eaves)} over a width of ${measure(survey, width)}, as steep as a spire. Check the height of its point, and the width.`;
		report(survey, 'look', 'gable-steep', about, message);
	}
	return gable;
}

function frontParts(
	survey: Survey,
	sections: readonly YardSection[],
	{ depth, eaves }: { depth: number; eaves: number }
): FrontPart[] {
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
		const which = sections.length === 1 ? 'of the front' : `of part ${i + 1} of the front`;
		const own = section.eaves ?? eaves;
		return {
			id: section.id,
			from,
			to: x,
			out,
			wall: `front-${i + 1}`,
			eaves: own,
			peak: peakOf(survey, section, which, own),
			light: section.light ?? 'none'
		};
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
