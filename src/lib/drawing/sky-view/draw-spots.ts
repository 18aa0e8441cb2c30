/** The spots that were weighed for the sensor, numbered, on the part of the plan round the transformer. */
import type { SensorSpot } from '../../domain/dusk';
import type { Plan } from '../../domain/plan';
import type { Box } from '../../domain/shared/geometry';
import { drawPlan } from '../draw-plan';
import { sizesFor } from '../frame';
import type { Drawing, Mark } from '../marks';
import { boxAround, circlePath, segmentPath } from '../path';
import { bearingVector } from '../sheet';

/** Of a spot's mark, px. */
const radius = 11;
/** Least side of what is shown, and the room round it, metres. */
const least = 7;
const margin = 1.6;
/** Width to height of the drawing, at the least and the most. */
const shapes = { low: 1.15, high: 2.2 };

function frameFor({ supply }: Pick<Plan, 'supply'>, spots: readonly SensorSpot[]): Box {
	const box = boxAround([...spots.map(({ at }) => at), ...(supply ? [supply.at] : [])]) ?? {
		minX: 0,
		maxX: least,
		minY: 0,
		maxY: least
	};
	const [cx, cy] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
	let width = Math.max(least, box.maxX - box.minX + 2 * margin);
	let height = Math.max(least / shapes.high, box.maxY - box.minY + 2 * margin);
	width = Math.max(width, height * shapes.low);
	height = Math.max(height, width / shapes.high);
	return { minX: cx - width / 2, maxX: cx + width / 2, minY: cy - height / 2, maxY: cy + height / 2 };
}
function markOf({ at, faces }: SensorSpot, index: number, plan: Plan, px: number): Mark[] {
	const way = bearingVector(faces, plan.site.faces);
	const r = radius * px;
	const edge = { x: at.x + way.x * r, y: at.y + way.y * r };
	const tip = { x: at.x + way.x * 1.9 * r, y: at.y + way.y * 1.9 * r };
	return [
		{ kind: 'path', key: `spot-way-${index}`, d: segmentPath(edge, tip), ink: 'house', weight: 2.4, fill: 'none' },
		{ kind: 'path', key: `spot-${index}`, d: circlePath(at, r), ink: 'house', weight: 1.6, fill: 'sheet' },
		{
			kind: 'text',
			key: `spot-number-${index}`,
			at,
			text: String(index + 1),
			anchor: 'middle',
			size: 13,
			ink: 'house',
			bold: true
		}
	];
}
/** Metres; `widthPx` sets the size of the marks. */
export function drawSpots(plan: Plan, spots: readonly SensorSpot[], widthPx: number): Drawing {
	const wide = Math.max(240, widthPx);
	const box = frameFor(plan, spots);
	const yard = drawPlan(plan, { widthPx: wide, box, bare: true, glow: false, sizes: sizesFor(wide) });
	const isOwn = (mark: Mark): boolean => /^sensor(-tie)?$/.test(mark.key);
	const numbered = spots.flatMap((spot, index) => markOf(spot, index, plan, yard.px)).toReversed();
	// The first one on top, and every number over every ring.
	const rank = (mark: Mark): number => (mark.kind === 'text' ? 1 : 0);
	const names = numbered.toSorted((a, b) => rank(a) - rank(b));
	const layers = yard.layers
		.filter(({ id }) => id !== 'cable' && id !== 'emphasis')
		.map((layer) => {
			if (layer.id === 'names') return { ...layer, marks: names };
			return layer.id === 'devices' ? { ...layer, marks: layer.marks.filter((mark) => !isOwn(mark)) } : layer;
		});
	return { ...yard, layers };
}
