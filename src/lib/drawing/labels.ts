/**
 * Where words go. Each label tries places round what it names and takes the one that covers least: greedy, in the
 * order given, so that what matters most is placed first. Metres; text sizes in px.
 */
import type { Box, Line, Point } from '../domain/shared/geometry';
import type { Ink, TextMark } from './marks';

export interface LabelWish {
	key: string;
	text: string;
	/** Points the label may name: one for a fixture, several along a cable. */
	anchors: readonly Point[];
	/** Clear of the anchor, metres: the symbol's half width; null sets the words on the anchor itself. */
	clear: number | null;
	size: number;
	ink: Ink;
	bold: boolean;
	/** A label that may be left out where there is no room for it. */
	optional: boolean;
}
export interface Obstacles {
	boxes: readonly Box[];
	/** Round other symbols: a label that comes this near could be taken for theirs. */
	near: readonly Box[];
	lines: readonly Line[];
	/** Lines that words must not break: the house. */
	walls: readonly Line[];
}
interface Segment {
	a: Point;
	b: Point;
	box: Box;
	weight: number;
}

/** Advance of a character in a legible sans, as a share of the text size: measured on the face used, by class. */
function advance(char: string): number {
	if ("iljI.,:;'’|!".includes(char)) return 0.3;
	if (' ()-frt'.includes(char)) return 0.38;
	if ('mwMW'.includes(char)) return 0.88;
	return char >= 'A' && char <= 'Z' ? 0.66 : 0.58;
}
/** Width of a line of text, in units of `size`. */
export const textWidth = (text: string, size: number, bold = false): number =>
	[...text].reduce((sum, char) => sum + advance(char), 0) * size * (bold ? 1.05 : 1);

interface Place {
	/** Direction from the anchor. */
	dx: number;
	dy: number;
	far: number;
	like: number;
}
const around: readonly [number, number, number][] = [
	[1, 0, 0],
	[-1, 0, 0.15],
	[0, 1, 0.35],
	[0, -1, 0.35],
	[1, -1, 0.45],
	[1, 1, 0.45],
	[-1, -1, 0.55],
	[-1, 1, 0.55]
];
/** Near places first; further out, a thin leader ties the words to their symbol. */
const places: readonly Place[] = [0, 1, 2.2].flatMap((far) =>
	around.map(([dx, dy, like]) => ({ dx, dy, far, like: like + far * 1.6 }))
);

const overlap = (a: Box, b: Box): number => {
	const w = Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX);
	const h = Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY);
	return w > 0 && h > 0 ? w * h : 0;
};
/** Does the segment a→b touch the box: Liang & Barsky's clipping by parameter. */
export function touches(a: Point, b: Point, box: Box): boolean {
	let from = 0;
	let to = 1;
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	for (const [p, q] of [
		[-dx, a.x - box.minX],
		[dx, box.maxX - a.x],
		[-dy, a.y - box.minY],
		[dy, box.maxY - a.y]
	] as const) {
		if (p === 0) {
			if (q < 0) return false;
			continue;
		}
		const t = q / p;
		if (p < 0) from = Math.max(from, t);
		else to = Math.min(to, t);
		if (from > to) return false;
	}
	return true;
}

interface Candidate {
	box: Box;
	like: number;
	anchor: Point;
	/** Null: on the anchor itself. */
	place: Place | null;
}

/** Half of the words' extent, metres. */
interface Extent {
	w: number;
	h: number;
}
const boxRound = (x: number, y: number, { w, h }: Extent): Box => ({
	minX: x - w,
	maxX: x + w,
	minY: y - h,
	maxY: y + h
});
/** How far from the anchor the words begin, metres. */
function startOf({ clear }: LabelWish, { dx, dy, far }: Place, px: number, { h }: Extent): number {
	const diagonal = dx !== 0 && dy !== 0 ? 0.8 : 1;
	return ((clear ?? 0) + 2.5 * px) * diagonal + far * 2 * h;
}

function candidates(wish: LabelWish, px: number, extent: Extent): Candidate[] {
	if (wish.clear === null)
		return wish.anchors.map((anchor, index) => ({
			box: boxRound(anchor.x, anchor.y, extent),
			like: index * 0.05,
			anchor,
			place: null
		}));
	return wish.anchors.flatMap((anchor, index) =>
		places.map((place) => {
			const reach = startOf(wish, place, px, extent);
			const x = anchor.x + place.dx * (reach + extent.w);
			const y = anchor.y + place.dy * (reach + extent.h * 0.9);
			return { box: boxRound(x, y, extent), like: place.like + index * 0.2, anchor, place };
		})
	);
}
/** The words as set at a candidate; those that stand further out are tied to their anchor by a leader. */
function markAt(wish: LabelWish, { box, anchor, place }: Candidate): TextMark {
	const { key, text, size, ink, bold } = wish;
	const bare = { kind: 'text' as const, key, text, size, ink, bold };
	if (place === null) return { ...bare, at: anchor, anchor: 'middle' };
	const { dx, dy, far } = place;
	const y = (box.minY + box.maxY) / 2;
	const at = { x: dx > 0 ? box.minX : dx < 0 ? box.maxX : (box.minX + box.maxX) / 2, y };
	const set: TextMark = { ...bare, at, anchor: dx > 0 ? 'start' : dx < 0 ? 'end' : 'middle' };
	if (far === 0) return set;
	const foot = { x: at.x, y: dy > 0 ? box.minY : box.maxY };
	return { ...set, leader: [anchor, dx === 0 ? foot : at] };
}

/** What a line of text covers, metres. */
export function boxOfText({ at, anchor, text, size, bold }: TextMark, px: number): Box {
	const w = textWidth(text, size, bold) * px;
	const minX = anchor === 'start' ? at.x : anchor === 'end' ? at.x - w : at.x - w / 2;
	const h = (size * px) / 2;
	return { minX, maxX: minX + w, minY: at.y - h, maxY: at.y + h };
}

/** Segments with their boxes, so that most are passed over by four comparisons. */
function segmentsOf(lines: readonly Line[], weight: number): Segment[] {
	return lines.flatMap((line) =>
		line.slice(1).map((b, i) => {
			const a = line[i]!;
			return {
				a,
				b,
				weight,
				box: { minX: Math.min(a.x, b.x), minY: Math.min(a.y, b.y), maxX: Math.max(a.x, b.x), maxY: Math.max(a.y, b.y) }
			};
		})
	);
}
export const meets = (a: Box, b: Box): boolean =>
	a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;

interface Near {
	boxes: readonly Box[];
	taken: readonly Box[];
	segments: readonly Segment[];
}

/** How much of the drawing a label at this box would cover; stops counting once it is more than `least`. */
function cost({ box, like }: Candidate, near: Near, within: Box, least: number): number {
	const area = Math.max(1e-9, (box.maxX - box.minX) * (box.maxY - box.minY));
	const off = box.minX < within.minX || box.maxX > within.maxX || box.minY < within.minY || box.maxY > within.maxY;
	let sum = like + (off ? 40 : 0);
	for (const other of near.boxes) {
		if (sum >= least) return sum;
		const shared = overlap(box, other);
		if (shared > 0) sum += 6 + (12 * shared) / area;
	}
	for (const other of near.taken) if (meets(other, box)) sum += 1.6;
	for (const segment of near.segments) {
		if (sum >= least) return sum;
		if (meets(segment.box, box) && touches(segment.a, segment.b, box)) sum += segment.weight;
	}
	return sum;
}

const inside = (at: Point, box: Box): boolean =>
	at.x >= box.minX && at.x <= box.maxX && at.y >= box.minY && at.y <= box.maxY;

function reachOf(choices: readonly Candidate[]): Box {
	const reach = { ...choices[0]!.box };
	for (const { box } of choices) {
		reach.minX = Math.min(reach.minX, box.minX);
		reach.maxX = Math.max(reach.maxX, box.maxX);
		reach.minY = Math.min(reach.minY, box.minY);
		reach.maxY = Math.max(reach.maxY, box.maxY);
	}
	return reach;
}

/** Labels placed, in the order of the wishes. `px` is metres to a pixel. An optional label without room is left out. */
export function placeLabels(wishes: readonly LabelWish[], obstacles: Obstacles, px: number, within: Box): TextMark[] {
	const boxes = [...obstacles.boxes];
	const segments = [...segmentsOf(obstacles.lines, 1.4), ...segmentsOf(obstacles.walls, 5)];
	const placed: TextMark[] = [];
	for (const wish of wishes) {
		const extent = { w: (textWidth(wish.text, wish.size, wish.bold) * px) / 2, h: (wish.size * px) / 2 };
		const choices = candidates(wish, px, extent);
		if (choices.length === 0) continue;
		const reach = reachOf(choices);
		const near: Near = {
			boxes: boxes.filter((box) => meets(box, reach)),
			taken:
				wish.clear === null
					? []
					: obstacles.near.filter((box) => meets(box, reach) && !wish.anchors.some((at) => inside(at, box))),
			segments: segments.filter((segment) => meets(segment.box, reach))
		};
		let best = choices[0]!;
		let least = Infinity;
		for (const choice of choices) {
			const total = cost(choice, near, within, least);
			if (total < least) {
				least = total;
				best = choice;
			}
		}
		if (wish.optional && least > 4.5) continue;
		boxes.push(best.box);
		placed.push(markAt(wish, best));
	}
	return placed;
}
