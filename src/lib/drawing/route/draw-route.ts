/** One run on its route card: its trench over the yard in quiet ink, its points by name or letter. */
import type { RouteCard } from '../../domain/checklist';
import type { Plan } from '../../domain/plan';
import type { Box } from '../../domain/shared/geometry';
import { drawFixtures } from '../fixtures';
import { sizesFor } from '../frame';
import { drawHouse } from '../house';
import { quiet } from '../light-map/isolux';
import type { Drawing, Mark, Sizes, SymbolMark } from '../marks';
import { boxAround, circlePath, openPath } from '../path';
import { drawPaving } from '../paving';
import { drawPlanting, rootZone } from '../planting';
import { drawFurniture, drawGround, gridFor } from '../sheet';
import { nameRoute } from './names';

export interface RouteOptions {
	/** Width of the drawing as shown, px (1/96 in on paper). */
	widthPx: number;
	/** The part of the yard shown, metres. */
	box: Box;
	sizes?: Sizes;
}

/** The trench: dug for this run a full line, in another run's trench dots, under paving a heavy one. */
function trenchMarks(card: RouteCard): Mark[] {
	return card.lines.flatMap((line, l) =>
		line.legs.map((leg, i): Mark => ({
			kind: 'path',
			key: `leg-${l}-${i}`,
			d: openPath(leg.path),
			ink: 'cable',
			weight: leg.crossing ? 3.2 : 1.7,
			fill: 'none',
			...(leg.sharedWith && !leg.crossing ? { dash: [2, 3] } : {})
		}))
	);
}
/** A dot at each letter, a ring round a light at which cables part. */
function pointMarks(card: RouteCard, px: number, sizes: Sizes): Mark[] {
	return card.points.flatMap((point): Mark[] => {
		const ring = point.branches;
		if (!ring && (point.kind === 'light' || point.kind === 'transformer')) return [];
		return [
			{
				kind: 'path',
				key: `dot-${point.label}`,
				d: circlePath(point.at, (ring ? sizes.symbol + 2.2 : 2.4) * px),
				ink: 'cable',
				weight: ring ? 1.1 : 1,
				fill: ring ? 'none' : 'action'
			}
		];
	});
}
/** Where both tapes begin: the left front corner, where it is on the sheet. */
function tapeZero(box: Box, px: number): Mark[] {
	if (box.minX > 0 || box.maxX < 0 || box.minY > 0 || box.maxY < 0) return [];
	const arm = 7 * px;
	const cross = `M${-arm} 0H${arm}M0 ${-arm}V${arm}`;
	return [
		{ kind: 'path', key: 'zero', d: cross, ink: 'action', weight: 1.2, fill: 'none', title: 'Both tapes begin here' }
	];
}
function furnitureOf(plan: Plan, box: Box, px: number, sizes: Sizes, busy: readonly Box[]): Mark[] {
	const { site } = plan;
	// The bar keeps to the street's band; where the street is off the sheet, to its foot.
	const foot = Math.min(site.street, box.maxY - 30 * px);
	const marks = drawFurniture({ ...site, street: foot }, box, px, sizes, busy);
	return marks.filter(({ key }) => key !== 'street-name');
}
function boxesOf(marks: readonly Mark[], px: number): Box[] {
	return marks.flatMap((mark): Box[] => {
		if (mark.kind === 'scale-bar')
			return [{ minX: mark.at.x, maxX: mark.at.x + mark.length, minY: mark.at.y - 20 * px, maxY: mark.at.y + 8 * px }];
		if (mark.kind !== 'north') return [];
		const r = mark.size * 1.4 * px;
		return [{ minX: mark.at.x - r, maxX: mark.at.x + r, minY: mark.at.y - r, maxY: mark.at.y + r }];
	});
}

/** The drawing of a card. Geometry in metres; `widthPx` sets the size of symbols and words. */
export function drawRoute(plan: Plan, card: RouteCard, { widthPx, box, sizes: told }: RouteOptions): Drawing {
	const { site, fixtures } = plan;
	const wide = Math.max(160, widthPx);
	const px = (box.maxX - box.minX) / wide;
	const sizes = told ?? sizesFor(wide);
	const busy = card.lines.flatMap((line) => line.legs.flatMap((leg) => boxAround(leg.path) ?? []));
	const furniture = furnitureOf(plan, box, px, sizes, busy);
	const mine = new Set(card.points.filter(({ kind }) => kind === 'light').map(({ label }) => label));
	const start = card.points.find(({ kind }) => kind === 'transformer');
	const transformer: SymbolMark[] = start
		? [{ kind: 'symbol', key: 'transformer', at: start.at, shape: 'transformer', turn: 0, size: sizes.symbol * 1.3 }]
		: [];
	const lights = drawFixtures(
		fixtures.filter(({ label }) => mine.has(label)),
		site.faces,
		sizes
	);
	return {
		box,
		px,
		sizes,
		grid: gridFor(site, px),
		layers: [
			{ id: 'ground', marks: drawGround(site, box) },
			{ id: 'paving', marks: drawPaving(site) },
			{ id: 'house', marks: drawHouse(site) },
			{ id: 'planting', marks: [...quiet(drawPlanting(site, px)), ...site.trees.map(rootZone)] },
			{ id: 'cable', marks: [...trenchMarks(card), ...tapeZero(box, px)] },
			{ id: 'devices', marks: [...transformer, ...lights, ...pointMarks(card, px, sizes)] },
			{ id: 'names', marks: nameRoute(plan, card, box, px, sizes, boxesOf(furniture, px)) },
			{ id: 'sheet', marks: furniture }
		]
	};
}
/** One sentence for those who hear the drawing rather than see it. */
export const describeRoute = (card: RouteCard): string =>
	`${card.name} seen from above, the street at the bottom: ${card.lines.length === 1 ? 'one line' : `a main line and ${card.lines.length - 1} branches`} through ${card.points.map(({ label }) => label).join(', ')}. The table has each stretch.`;
