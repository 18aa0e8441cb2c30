/** The small plan of places for the transformer: the yard, and a mark and a word at each place. */
import type { SpotFigures } from '$lib/domain/compare';
import type { Plan } from '$lib/domain/plan';
import { drawPlan, type Drawing, type Mark } from '$lib/drawing';
import { placeLabels } from '$lib/drawing/labels';
import { circlePath } from '$lib/drawing/path';
import type { Box, Point } from '$lib/domain/shared/geometry';
import { markOf } from './words';

/** Half the width of a mark, px. */
const half = 5;
/** Round the house and the places, metres. */
const margin = 2.5;

/** The house's front and sides with every place on it, and a strip of the yard before them. */
export function spotsFrame(plan: Plan, spots: readonly SpotFigures[]): Box {
	const points: Point[] = [
		...plan.site.walls.flatMap((wall) => (wall.of === 'house' ? [wall.from, wall.to] : [])),
		...spots.map(({ at }) => at),
		...(plan.site.receptacle ? [plan.site.receptacle.at] : [])
	];
	const xs = points.map(({ x }) => x);
	const ys = points.map(({ y }) => y);
	return {
		minX: Math.min(...xs) - margin,
		maxX: Math.max(...xs) + margin,
		minY: Math.min(...ys) - margin / 2,
		maxY: Math.max(...ys) + margin
	};
}

export function drawSpots(plan: Plan, spots: readonly SpotFigures[], widthPx: number, box: Box): Drawing {
	const drawing = drawPlan(plan, { widthPx, box, bare: true, glow: false });
	const { px, sizes } = drawing;
	const around = ({ x, y }: Point): Box => ({
		minX: x - half * px,
		maxX: x + half * px,
		minY: y - half * px,
		maxY: y + half * px
	});
	const marks = spots.map((spot): Mark => ({
		kind: 'path',
		key: `spot-${spot.id}`,
		d: circlePath(spot.at, half * px),
		ink: 'action',
		weight: 1.6,
		fill: spot.kind === 'yours' || spot.kind === 'plan' ? 'action' : 'sheet',
		title: `${markOf(spot)}: ${spot.where}`
	}));
	const words = placeLabels(
		spots.map((spot) => ({
			key: `spot-word-${spot.id}`,
			text: markOf(spot),
			anchors: [spot.at],
			clear: half * px,
			size: sizes.label,
			ink: 'action',
			bold: true,
			optional: false
		})),
		{
			boxes: spots.map(({ at }) => around(at)),
			near: spots.map(({ at }) => around(at)),
			lines: plan.site.strips.map(({ polygon }) => polygon),
			walls: [plan.site.house]
		},
		px,
		box
	);
	const hidden = new Set(['cable', 'light', 'devices', 'names', 'sheet']);
	return {
		...drawing,
		layers: drawing.layers.map((layer) =>
			layer.id === 'emphasis'
				? { ...layer, marks: [...marks, ...words] }
				: { ...layer, marks: hidden.has(layer.id) ? [] : layer.marks }
		)
	};
}
