/** Which part of the yard the plan's sheets show, and at what scale. */
import type { Box, Point } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import { frameOf } from '../drawing/frame';
import { chosenScale, type ScaleChoice } from './scale-choice';
import { busyParts, detailPlan, fitPlan, planAt, type Fit, type Paper, type Part } from './scale';

export interface PlanOnPaper {
	/** Metres. */
	box: Box;
	fit: Fit;
	/** All on one sheet, before the parts of a chosen scale; null where that one sheet is what was chosen. */
	overview: Fit | null;
	/** Larger, in parts, where the one sheet is crowded. */
	detail: Fit | null;
	/** The back of a deep house runs off the sheet: only where that buys a larger scale. */
	backLeftOff: boolean;
}
export interface PlanSheetOf {
	kind: 'plan' | 'part' | 'detail';
	fit: Fit;
	part: Part;
	title: string;
}

/** Places at which there is something to do. */
export const busyPoints = ({ fixtures, runs }: Plan): Point[] => [
	...fixtures.map((fixture) => fixture.at),
	...runs.flatMap((run) => run.segments.flatMap((segment) => segment.path))
];

export function planOnPaper(plan: Plan, paper: Paper, choice: ScaleChoice = 'fit'): PlanOnPaper {
	const { units } = plan.site;
	const scale = chosenScale(choice);
	const choose = (trim: boolean) => {
		const box = frameOf(plan, trim);
		return { box, fit: scale ? planAt(box, paper, scale) : fitPlan(box, paper, units) };
	};
	const whole = choose(false);
	const trimmed = choose(true);
	const sheets = ({ fit }: typeof whole) => fit.rows * fit.columns;
	const backLeftOff = trimmed.fit.scale.ratio < whole.fit.scale.ratio || sheets(trimmed) < sheets(whole);
	const { box, fit } = backLeftOff ? trimmed : whole;
	const busy = busyPoints(plan);
	if (!scale) return { box, fit, overview: null, detail: detailPlan(box, busy, fit, paper, units), backLeftOff };
	const parts = busyParts(fit.parts, busy);
	const overview = sheets({ box, fit }) > 1 ? fitPlan(whole.box, paper, units) : null;
	return { box, fit: parts.length > 0 ? { ...fit, parts } : fit, overview, detail: null, backLeftOff };
}

/** The plan's sheets in their order, each with its title. */
export function planSheets({ fit, overview, detail }: PlanOnPaper): PlanSheetOf[] {
	const of = (kind: PlanSheetOf['kind'], name: string, from: Fit | null): PlanSheetOf[] =>
		from?.parts.map((part) => {
			const parts = from.rows * from.columns > 1;
			return {
				kind: parts && kind === 'plan' ? 'part' : kind,
				fit: from,
				part,
				title: parts ? `${name}, part ${part.name}` : name
			};
		}) ?? [];
	return [
		...of('plan', 'Plan, all of it', overview),
		...of('plan', 'Plan', fit),
		...of('detail', 'Plan, larger', detail)
	];
}
