/** Which part of the yard the plan's sheets show, and at what scale. */
import type { Box } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import { frameOf } from '../drawing';
import { detailPlan, fitPlan, type Fit, type Paper } from './scale';

export interface PlanOnPaper {
	/** Metres. */
	box: Box;
	fit: Fit;
	/** Larger, in parts, where the one sheet is crowded. */
	detail: Fit | null;
	/** The back of a deep house runs off the sheet: only where that buys a larger scale. */
	backLeftOff: boolean;
}

export function planOnPaper(plan: Plan, paper: Paper): PlanOnPaper {
	const { units } = plan.site;
	const choose = (trim: boolean) => {
		const box = frameOf(plan, trim);
		return { box, fit: fitPlan(box, paper, units) };
	};
	const whole = choose(false);
	const trimmed = choose(true);
	const sheets = ({ fit }: typeof whole) => fit.rows * fit.columns;
	const backLeftOff = trimmed.fit.scale.ratio < whole.fit.scale.ratio || sheets(trimmed) < sheets(whole);
	const { box, fit } = backLeftOff ? trimmed : whole;
	const busy = [
		...plan.fixtures.map((fixture) => fixture.at),
		...plan.runs.flatMap((run) => run.segments.flatMap((segment) => segment.path))
	];
	return { box, fit, detail: detailPlan(box, busy, fit, paper, units), backLeftOff };
}
