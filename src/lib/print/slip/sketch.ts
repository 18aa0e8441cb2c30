/** The small drawing of the yard: how much of it is shown, and which words it carries. */
import { drawPlan, frameOf, type Drawing, type Sizes } from '../../drawing';
import type { Plan } from '../../domain/plan';
import type { Box } from '../../domain/shared/geometry';
import { paperSizes, pxPerMm } from '../on-paper';
import { busyPoints } from '../plan-on-paper';
import type { SlipPaper } from './papers';

/** Letters of 6 pt: twelve dots of a receipt printer high. */
const smallSizes: Sizes = { symbol: 3.8, label: 8, name: 8 };
/** Below this width the words of beds, trees and walks would crowd the letters of the lights, millimetres. */
const narrow = 85;
/** Kept round lights and cable where the rest of the yard is left off, metres. */
const around = 2.5;

/** What is shown, metres: the front without the back of the house; on a roll only where lights and cable are. */
export function sketchBox(plan: Plan, paper: SlipPaper): Box {
	const whole = frameOf(plan, true);
	const busy = busyPoints(plan);
	if (paper !== 'receipt' || busy.length === 0) return whole;
	const [xs, ys] = [busy.map(({ x }) => x), busy.map(({ y }) => y)];
	return {
		minX: Math.max(whole.minX, Math.min(...xs) - around),
		maxX: Math.min(whole.maxX, Math.max(...xs) + around),
		minY: Math.max(whole.minY, Math.min(...ys) - around),
		maxY: whole.maxY
	};
}

/** The sketch `width` millimetres wide: lights lettered, runs and transformer named, and in a wide one the rest of the yard too. */
export function drawSketch(plan: Plan, box: Box, width: number): Drawing {
	const isSmall = width < narrow;
	const sizes = isSmall ? smallSizes : paperSizes;
	const drawing = drawPlan(plan, { widthPx: width * pxPerMm, box, sizes, glow: false });
	if (!isSmall) return drawing;
	const kept = new Set(['name-transformer', ...plan.runs.map(({ id }) => `name-${id}`)]);
	const isKept = (key: string) => key.startsWith('label-') || kept.has(key);
	return {
		...drawing,
		layers: drawing.layers.map((layer) =>
			layer.id === 'names' ? { ...layer, marks: layer.marks.filter(({ key }) => isKept(key)) } : layer
		)
	};
}
