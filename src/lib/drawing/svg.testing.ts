/** For tests: a plan's drawing as an SVG file that can be opened by itself. */
import { readFileSync } from 'node:fs';
import { render } from 'svelte/server';
import type { Plan } from '../domain/plan';
import { describePlan, drawPlan } from './draw-plan';
import Sheet from './Sheet.svelte';

const css = readFileSync(new URL('drawing.css', import.meta.url), 'utf8');

/** To the tenth of a millimetre, so that the last digits of another machine's arithmetic do not count. */
export const svgOf = (plan: Plan): string =>
	render(Sheet, {
		props: { drawing: drawPlan(plan, { widthPx: 820 }), title: 'The plan', description: describePlan(plan) }
	})
		.body.replace(/<!--.*?-->/g, '')
		.replace(/\d+\.\d{5,}/g, (number) => String(Math.round(Number(number) * 1e4) / 1e4))
		.replace(/<svg /, '<svg class="dw-drawing" ')
		.replace('<defs>', `<style>${css.replaceAll('.dw-drawing svg', 'svg.dw-drawing')}</style><defs>`)
		.replace(/></g, '>\n<');
