/** The drawing of a plan for a viewport: the whole yard is on it, words and furniture where they are seen. */
import type { Plan } from '../../domain/plan';
import type { Highlight } from '../dimensions';
import { drawPlan } from '../draw-plan';
import type { Drawing, Mark } from '../marks';
import { drawGround } from '../sheet';
import type { Box, Viewport } from './types';
import { heightOf, shownBox, widthOf } from './viewport';

export interface BoardDrawing {
	highlight: Highlight | null;
	roots: boolean;
	/** All of the yard, metres. */
	whole: Box;
}
/** The ground reaches this many times what is shown further each way: it is there when the drawing is moved before it is drawn anew. */
const spare = 1;

/** Marks for a viewport. Symbols and words have the size that they have on a drawing as wide as the viewport. */
export function drawBoard(plan: Plan, view: Viewport, { highlight, roots, whole }: BoardDrawing): Drawing {
	const box = shownBox(view);
	const drawing = drawPlan(plan, { widthPx: view.width, highlight, roots, box });
	const [x, y] = [widthOf(box) * spare, heightOf(box) * spare];
	const ground = drawGround(plan.site, {
		minX: Math.min(whole.minX, box.minX) - x,
		minY: Math.min(whole.minY, box.minY) - y,
		maxX: Math.max(whole.maxX, box.maxX) + x,
		maxY: Math.max(whole.maxY, box.maxY) + y
	});
	// The street, on which the scale bar lies, may be out of sight.
	const foot = { x: box.minX + 14 * drawing.px, y: box.maxY - 12 * drawing.px };
	const inSight = (mark: Mark): Mark =>
		mark.kind === 'scale-bar' && mark.at.y > foot.y ? { ...mark, at: foot } : mark;
	return {
		...drawing,
		layers: drawing.layers.map((layer) => {
			if (layer.id === 'ground') return { ...layer, marks: ground };
			return layer.id === 'sheet' ? { ...layer, marks: layer.marks.map(inSight) } : layer;
		})
	};
}
