/** The item in hand: its measures drawn with ticks, and a line round it. */
import type { Box, Point } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import { formatLength } from '../domain/shared/units';
import type { DimensionMark, Mark, Sizes } from './marks';
import {
	boxAround,
	circlePath,
	closedPath,
	distance,
	lineLength,
	openPath,
	pointAlong,
	segmentPath,
	shifted
} from './path';
import { rootZone } from './planting';

/** What is in hand: kinds as in the yard and its findings. */
export interface Highlight {
	kind: string;
	id: string;
	/** Which measures to draw: how large it is or where it stands. Its size when absent, its place when it has none. */
	what?: 'size' | 'place';
}
interface Context {
	plan: Plan;
	box: Box;
	px: number;
	sizes: Sizes;
	what?: Highlight['what'];
}
interface InHand {
	/** The line round it. */
	outline: string;
	dimensions: DimensionMark[];
	extra?: Mark[];
}

function measured(
	{ plan }: Context,
	key: string,
	from: Point,
	to: Point,
	feet: readonly [Point, Point] | null = null
): DimensionMark[] {
	const length = distance(from, to);
	if (!(length > 0.005)) return [];
	const witness = feet ? ([[feet[0], from] as const, [feet[1], to] as const] as const) : [];
	return [
		{ kind: 'dimension', key: `dimension-${key}`, from, to, text: formatLength(length, plan.site.units), witness }
	];
}

/** Along and out, as the tape measures them: from the left corner, then square to the base line. */
function offsets(context: Context, at: Point): DimensionMark[] {
	const corner = { x: 0, y: 0 };
	const foot = { x: at.x, y: 0 };
	// Behind the base line, so that it does not hide doors and windows.
	const back = -20 * context.px;
	return [
		...measured(context, 'along', shifted(corner, 0, back), shifted(foot, 0, back), [corner, foot]),
		...measured(context, 'out', foot, at)
	];
}

/** Width and depth of a box, below it and to its right, kept on the sheet. */
function boxed(context: Context, b: Box): DimensionMark[] {
	if (context.what === 'place') return offsets(context, { x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2 });
	const gap = 15 * context.px;
	const below = b.maxY + gap < context.box.maxY ? b.maxY + gap : b.minY - gap;
	const beside = b.maxX + gap * 2 < context.box.maxX ? b.maxX + gap : b.minX - gap;
	return [
		...measured(context, 'width', { x: b.minX, y: below }, { x: b.maxX, y: below }, [
			{ x: b.minX, y: b.maxY },
			{ x: b.maxX, y: b.maxY }
		]),
		...measured(context, 'depth', { x: beside, y: b.minY }, { x: beside, y: b.maxY }, [
			{ x: b.maxX, y: b.minY },
			{ x: b.maxX, y: b.maxY }
		])
	];
}

function tree(context: Context, id: string): InHand | null {
	const found = context.plan.site.trees.find((tree) => tree.id === id);
	if (!found) return null;
	const { at, spread } = found;
	const r = spread / 2;
	const gap = 13 * context.px;
	const y = at.y + r + gap < context.box.maxY ? at.y + r + gap : at.y - r - gap;
	return {
		outline: circlePath(at, r + 4 * context.px),
		dimensions:
			context.what === 'place'
				? offsets(context, at)
				: measured(context, 'spread', { x: at.x - r, y }, { x: at.x + r, y }, [
						{ x: at.x - r, y: at.y },
						{ x: at.x + r, y: at.y }
					]),
		extra: [rootZone(found)]
	};
}
function strip(context: Context, id: string): InHand | null {
	const found = context.plan.site.strips.find((strip) => strip.id === id);
	const place = found ? pointAlong(found.centre, lineLength(found.centre) * 0.42) : null;
	if (!found || !place) return null;
	const half = found.width / 2;
	const left = shifted(place.at, place.ahead.y * half, -place.ahead.x * half);
	const right = shifted(place.at, -place.ahead.y * half, place.ahead.x * half);
	return { outline: closedPath(found.polygon), dimensions: measured(context, 'width', left, right) };
}
function area(context: Context, id: string): InHand | null {
	const found = context.plan.site.areas.find((area) => area.id === id);
	const b = found ? boxAround(found.polygon) : null;
	if (!found || !b) return null;
	return {
		outline: closedPath(found.polygon),
		dimensions: found.kind === 'bed' || found.kind === 'paved' ? [] : boxed(context, b)
	};
}
function wall(context: Context, id: string): InHand | null {
	const found = context.plan.site.walls.find((wall) => wall.id === id);
	if (!found) return null;
	const gap = 16 * context.px;
	const [dx, dy] = [found.outward.x * gap, found.outward.y * gap];
	const [from, to] = [shifted(found.from, dx, dy), shifted(found.to, dx, dy)];
	return {
		outline: segmentPath(found.from, found.to),
		dimensions: measured(context, 'wall', from, to, [found.from, found.to])
	};
}
function opening(context: Context, id: string): InHand | null {
	for (const wall of context.plan.site.walls) {
		const found = wall.openings.find((opening) => opening.id === id);
		const start = found ? pointAlong([wall.from, wall.to], found.start) : null;
		const end = found ? pointAlong([wall.from, wall.to], found.end) : null;
		if (!start || !end) continue;
		const gap = 16 * context.px;
		const out = (p: Point) => shifted(p, wall.outward.x * gap, wall.outward.y * gap);
		return {
			outline: segmentPath(start.at, end.at),
			dimensions: measured(context, 'opening', out(start.at), out(end.at), [start.at, end.at])
		};
	}
	return null;
}
function house(context: Context): InHand | null {
	const ring = context.plan.site.house;
	const b = boxAround(ring);
	if (!b) return null;
	return { outline: closedPath(ring), dimensions: boxed(context, b) };
}
function lot(context: Context): InHand | null {
	const { site } = context.plan;
	const b = boxAround(site.house) ?? { minX: 0, maxX: 0, minY: 0, maxY: 0 };
	const x = b.minX + Math.min(2, (b.maxX - b.minX) / 4);
	return {
		outline: '',
		dimensions: [
			...measured(context, 'street', { x, y: 0 }, { x, y: site.street }),
			...(site.leftBoundary > context.box.minX
				? measured(context, 'left', { x: site.leftBoundary, y: -1 }, { x: b.minX, y: -1 })
				: []),
			...(site.rightBoundary < context.box.maxX
				? measured(context, 'right', { x: b.maxX, y: -1 }, { x: site.rightBoundary, y: -1 })
				: [])
		]
	};
}
function spot(context: Context, at: Point | null | undefined): InHand | null {
	if (!at) return null;
	return { outline: circlePath(at, (context.sizes.symbol + 5) * context.px), dimensions: offsets(context, at) };
}

type Find = (context: Context, id: string) => InHand | null;
const find: Readonly<Record<string, Find>> = {
	tree,
	walk: strip,
	drive: strip,
	strip,
	steps: (context, id) => {
		const owner = context.plan.site.strips.find((strip) => strip.steps.some((steps) => steps.id === id));
		return owner ? strip(context, owner.id) : null;
	},
	bed: area,
	seating: area,
	porch: area,
	paved: area,
	water: area,
	area,
	wall,
	section: wall,
	opening,
	house: (context, id) => wall(context, id) ?? house(context),
	lot,
	street: lot,
	number: (context, id) => spot(context, context.plan.site.houseNumber.find((number) => number.id === id)?.at),
	light: (context, id) => spot(context, context.plan.site.existing.find((light) => light.id === id)?.at),
	fixture: (context, id) => spot(context, context.plan.fixtures.find((fixture) => fixture.id === id)?.at),
	receptacle: ({ plan, ...rest }) => spot({ plan, ...rest }, plan.site.receptacle?.at),
	transformer: ({ plan, ...rest }) => spot({ plan, ...rest }, plan.supply?.at),
	supply: ({ plan, ...rest }) => spot({ plan, ...rest }, plan.supply?.at),
	sensor: ({ plan, ...rest }) => spot({ plan, ...rest }, plan.dusk.sensor?.at),
	run: ({ plan }, id) => {
		const run = plan.runs.find((run) => run.id === id);
		return run ? { outline: run.segments.map((segment) => openPath(segment.path)).join(''), dimensions: [] } : null;
	}
};

/** Marks for the item in hand; none when it is not on the drawing (yet). */
export function drawEmphasis(highlight: Highlight | null, context: Context): Mark[] {
	const inHand = highlight ? find[highlight.kind]?.({ ...context, what: highlight.what }, highlight.id) : null;
	if (!inHand) return [];
	const outline: Mark[] = inHand.outline
		? [{ kind: 'path', key: 'in-hand', d: inHand.outline, ink: 'action', weight: 2.4, fill: 'none' }]
		: [];
	return [...(inHand.extra ?? []), ...outline, ...inHand.dimensions];
}
