/** The words of a route's drawing: its points first, then what of the yard they are told by. */
import type { RouteCard } from '../../domain/checklist';
import type { Plan } from '../../domain/plan';
import { inPolygon, type Box, type Line, type Point } from '../../domain/shared/geometry';
import { placeLabels, type LabelWish } from '../labels';
import type { Sizes, TextMark } from '../marks';
import { boxAround, centroid, lineLength, pointAlong } from '../path';

const round = (at: Point, r: number): Box => ({ minX: at.x - r, maxX: at.x + r, minY: at.y - r, maxY: at.y + r });
const inside = ({ x, y }: Point, box: Box): boolean => x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;

/** Places for the name of a thing that runs off the sheet: those that are on it. */
const along = (line: Line, box: Box): Point[] =>
	[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9].flatMap((share) => {
		const place = pointAlong(line, lineLength(line) * share);
		return place && inside(place.at, box) ? [place.at] : [];
	});
function within(ring: readonly Point[], box: Box): Point[] {
	const on = boxAround(
		ring.map((p) => ({
			x: Math.min(box.maxX, Math.max(box.minX, p.x)),
			y: Math.min(box.maxY, Math.max(box.minY, p.y))
		}))
	);
	if (!on || on.maxX <= on.minX || on.maxY <= on.minY) return [];
	const at = (dx: number, dy: number): Point => ({
		x: on.minX + dx * (on.maxX - on.minX),
		y: on.minY + dy * (on.maxY - on.minY)
	});
	const shares = [0.5, 0.25, 0.75];
	const grid = shares.flatMap((dy) => shares.map((dx) => at(dx, dy)));
	return [centroid(ring), ...grid].filter((p) => inside(p, box) && inPolygon(p, ring));
}

function pointWishes(card: RouteCard, px: number, sizes: Sizes): LabelWish[] {
	return card.points.map((point): LabelWish => {
		const letter = point.kind !== 'light' && point.kind !== 'transformer';
		return {
			key: `point-${point.label}`,
			text: point.label,
			anchors: [point.at],
			clear: letter ? 2.5 * px : sizes.symbol * px * (point.kind === 'transformer' ? 1.3 : 1),
			size: letter ? sizes.label * 1.1 : sizes.label,
			ink: letter ? 'cable' : 'house',
			bold: true,
			optional: false
		};
	});
}
function yardWishes({ site }: Plan, box: Box, px: number, sizes: Sizes): LabelWish[] {
	const named = (key: string, text: string, anchors: readonly Point[], bold = false): LabelWish => ({
		key,
		text,
		anchors,
		clear: null,
		size: sizes.name,
		ink: bold ? 'house' : 'soft',
		bold,
		optional: true
	});
	const zero = { x: 0, y: 0 };
	return [
		...(inside(zero, box) ? [{ ...named('name-zero', 'tapes 0', [zero], true), clear: 4 * px, optional: false }] : []),
		named(
			'name-house',
			'House',
			within(site.house, box).filter((p) => !site.areas.some((area) => inPolygon(p, area.polygon))),
			true
		),
		...site.strips.map((strip) => named(`name-strip-${strip.id}`, strip.name, along(strip.centre, box))),
		...site.areas.map((area) => named(`name-${area.kind}-${area.id}`, area.name, within(area.polygon, box))),
		...site.trees
			.filter(({ at }) => inside(at, box))
			.map((tree) => ({ ...named(`name-tree-${tree.id}`, tree.name, [tree.at]), clear: tree.trunkDiameter / 2 }))
	];
}

/** `taken`: boxes of the furniture, of symbols and dots, over which no word is set. */
export function nameRoute(
	plan: Plan,
	card: RouteCard,
	box: Box,
	px: number,
	sizes: Sizes,
	taken: readonly Box[]
): TextMark[] {
	const { site } = plan;
	const spots = card.points.map((point) => round(point.at, (point.kind === 'light' ? sizes.symbol + 1 : 3) * px));
	return placeLabels(
		[...pointWishes(card, px, sizes), ...yardWishes(plan, box, px, sizes)].filter(
			({ text, anchors }) => text !== '' && anchors.length > 0
		),
		{
			boxes: [...taken, ...spots, ...site.trees.map(({ at }) => round(at, 3 * px))],
			near: card.points.map(({ at }) => round(at, (sizes.symbol + 5) * px)),
			lines: [
				...card.lines.flatMap((line) => line.legs.map((leg) => leg.path)),
				...site.strips.flatMap((strip) => [strip.left, strip.right])
			],
			walls: site.house.length > 0 ? [[...site.house, site.house[0]!]] : []
		},
		px,
		box
	);
}
