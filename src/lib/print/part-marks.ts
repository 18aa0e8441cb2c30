/** What a plan in parts carries beside the yard: match lines with crosses and the neighbour's name, and north. Metres. */
import type { Box, Point } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import type { Drawing, Mark, Sizes } from '../drawing';
import { between, openPath } from '../drawing/path';
import { northTurn } from '../drawing/sheet';
import { busyPoints } from './plan-on-paper';
import { overlap, type Fit, type Part } from './scale';

/** Half the width of a cross, px. */
const cross = 11;
const dash = [16, 4, 3, 4] as const;

interface Edge {
	/** Name of the part beyond. */
	name: string;
	from: Point;
	to: Point;
	/** Unit vector out of the part. */
	out: Point;
}
/** The match line lies in the middle of what both sheets show, so that it is the same line of the yard on both. */
function edgesOf({ parts, scale }: Fit, { box, row, column }: Part): Edge[] {
	const half = (overlap * scale.ratio) / 2000;
	const sides = [
		{ down: 0, right: 1, out: { x: 1, y: 0 } },
		{ down: 0, right: -1, out: { x: -1, y: 0 } },
		{ down: 1, right: 0, out: { x: 0, y: 1 } },
		{ down: -1, right: 0, out: { x: 0, y: -1 } }
	];
	return sides.flatMap(({ down, right, out }) => {
		const beyond = parts.find((part) => part.row === row + down && part.column === column + right);
		if (!beyond) return [];
		const x = right > 0 ? box.maxX - half : box.minX + half;
		const y = down > 0 ? box.maxY - half : box.minY + half;
		const ends =
			right === 0
				? ([
						{ x: box.minX, y },
						{ x: box.maxX, y }
					] as const)
				: ([
						{ x, y: box.minY },
						{ x, y: box.maxY }
					] as const);
		return [{ name: beyond.name, from: ends[0], to: ends[1], out }];
	});
}
const crossAt = ({ x, y }: Point, r: number): string =>
	openPath([
		{ x: x - r, y },
		{ x: x + r, y }
	]) +
	openPath([
		{ x, y: y - r },
		{ x, y: y + r }
	]);

/** Match lines towards the parts that are printed; crosses at a quarter and three quarters of each. */
export function matchMarks(fit: Fit, part: Part, px: number, sizes: Sizes): Mark[] {
	const half = (overlap * fit.scale.ratio) / 2000;
	return edgesOf(fit, part).flatMap(({ name, from, to, out }): Mark[] => {
		const middle = between(from, to, 0.5);
		return [
			{ kind: 'path', key: `match-${name}`, d: openPath([from, to]), ink: 'soft', weight: 0.9, fill: 'none', dash },
			{
				kind: 'path',
				key: `cross-${name}`,
				d: [0.25, 0.75].map((share) => crossAt(between(from, to, share), cross * px)).join(''),
				ink: 'house',
				weight: 1.1,
				fill: 'none'
			},
			{
				kind: 'text',
				key: `beyond-${name}`,
				at: { x: middle.x + (out.x * half) / 2, y: middle.y + (out.y * half) / 2 },
				text: name,
				anchor: 'middle',
				size: sizes.name,
				ink: 'house',
				bold: true
			}
		];
	});
}

/** The corner of the part that is farthest from fixtures and cable, inside the match lines. */
function emptiest(box: Box, busy: readonly Point[], inset: number): Point {
	const corners = [box.maxX - inset, box.minX + inset].flatMap((x) =>
		[box.minY + inset, box.maxY - inset].map((y) => ({ x, y }))
	);
	const clear = (at: Point) => Math.min(...busy.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)));
	return corners.reduce((best, next) => (clear(next) > clear(best) ? next : best));
}

/** The drawing of a part: its match marks and a north of its own in place of the whole sheet's scale bar and north. */
export function asPart(drawing: Drawing, plan: Plan, fit: Fit, part: Part): Drawing {
	const { px, sizes } = drawing;
	const { box } = part;
	const size = sizes.symbol * 2.1;
	const inset = (overlap * fit.scale.ratio) / 1000 + (size + sizes.label) * px;
	const shown = ({ x, y }: Point) => x > box.minX && x < box.maxX && y > box.minY && y < box.maxY;
	const kept = (mark: Mark) => mark.kind === 'text' && shown(mark.at);
	const north: Mark = {
		kind: 'north',
		key: 'north',
		at: emptiest(box, busyPoints(plan), inset),
		turn: northTurn(plan.site.faces),
		size
	};
	return {
		...drawing,
		layers: drawing.layers.map((layer) =>
			layer.id === 'sheet'
				? { ...layer, marks: [...layer.marks.filter(kept), north, ...matchMarks(fit, part, px, sizes)] }
				: layer
		)
	};
}
