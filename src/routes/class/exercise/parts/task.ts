/** How a task goes on paper. Millimetres of paper, metres of yard. */
import type { Exercise } from '$lib/domain/lesson/exercise';
import type { Box } from '$lib/domain/shared/geometry';
import { fitPlan, papers, type Fit, type Paper } from '$lib/print';
import { margin, type Orientation } from '$lib/print/scale';
import { frameOf } from './frame';

/** The largest usual scale at which the yard fits on one sheet. */
export function fitTask(exercise: Exercise, paper: Paper): { box: Box; fit: Fit; width: number; height: number } {
	const box = frameOf(exercise);
	const fit = fitPlan(box, paper, exercise.units);
	const size = (metres: number) => (metres * 1000) / fit.scale.ratio;
	return { box, fit, width: size(box.maxX - box.minX), height: size(box.maxY - box.minY) };
}
/** The page of both sheets, upright or across. */
export function taskPageRules(paper: Paper, orientation: Orientation): string {
	const { width, height } = papers[paper];
	const [across, down] = orientation === 'portrait' ? [width, height] : [height, width];
	return `@page { size: ${across}mm ${down}mm; margin: ${margin.top}mm ${margin.side}mm ${margin.bottom}mm; }`;
}
