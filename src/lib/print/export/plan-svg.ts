/** The whole plan as one SVG file, true to scale in millimetres. It needs no style sheet: every mark carries its own colours. In a browser only. */
import { flushSync, mount, unmount } from 'svelte';
import '../../drawing/drawing.css';
import '../print.css';
import { describePlan, drawPlan, Sheet } from '../../drawing';
import type { Plan } from '../../domain/plan';
import { paperSizes, pxPerMm } from '../on-paper';
import { planOnPaper } from '../plan-on-paper';
import type { ScaleChoice } from '../scale-choice';
import type { Paper } from '../scale';
import { standAlone } from './stand-alone';

export interface PlanSvg {
	text: string;
	/** Millimetres. */
	width: number;
	height: number;
}

/** The plan at the scale of the packet, in one piece however large. `name`: the yard's. */
export function planSvg(plan: Plan, paper: Paper, choice: ScaleChoice, name: string): PlanSvg {
	const { box, fit } = planOnPaper(plan, paper, choice);
	const { ratio, text } = fit.scale;
	const width = ((box.maxX - box.minX) * 1000) / ratio;
	const height = ((box.maxY - box.minY) * 1000) / ratio;
	const drawing = drawPlan(plan, { widthPx: width * pxPerMm, box, sizes: paperSizes, glow: false, roots: true });
	const place = document.createElement('div');
	place.className = 'packet dw-drawing unseen';
	place.ariaHidden = 'true';
	document.body.append(place);
	const props = {
		drawing,
		title: `${name}: plan, ${text}`,
		description: `${describePlan(plan)} Scale ${text}: a millimetre of the drawing is ${ratio} mm of the yard.`
	};
	const shown = mount(Sheet, { target: place, props });
	try {
		flushSync();
		const svg = place.querySelector('svg');
		if (!svg) throw new Error('The drawing did not appear.');
		standAlone(svg, { box, width, height });
		return {
			text: `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(svg)}\n`,
			width,
			height
		};
	} finally {
		void unmount(shown);
		place.remove();
	}
}
