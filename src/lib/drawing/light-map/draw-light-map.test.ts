import { describe, expect, test } from 'vitest';
import { lightField, lightMap } from '../../domain/light';
import { makePlan } from '../../domain/plan';
import { examples } from '../../domain/yard';
import { screenFrame } from '../frame';
import { lightSteps } from './bands';
import { drawLightMap } from './draw-light-map';

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('the light map of %s', (_, plan) => {
	const box = screenFrame(plan);
	const field = lightField(plan.site, plan.fixtures, plan.runs);
	const map = lightMap(field, box, 0.3);
	test.each([320, 1000])('is whole, %i px wide', (width) => {
		const drawing = drawLightMap(plan, map, box, width);
		expect(JSON.stringify(drawing)).not.toMatch(/NaN|null|Infinity/);
		const keys = drawing.layers.flatMap(({ marks }) => marks.map(({ key }) => key));
		expect(new Set(keys).size).toBe(keys.length);
		for (const { id } of plan.fixtures) expect(keys).toContain(`fixture-${id}`);
	});
	test('has a colour and a line for every step that is reached, and for no other', () => {
		const most = Math.max(...map.lux);
		const keys = drawLightMap(plan, map, box, 700).layers.flatMap(({ marks }) => marks.map(({ key }) => key));
		for (const step of lightSteps)
			for (const what of ['fill', 'line']) expect(keys.includes(`ground-${what}-${step}`)).toBe(step <= most);
	});
	test('carries figures of steps on its lines, for whom colour says nothing', () => {
		const names = drawLightMap(plan, map, box, 1000).layers.find(({ id }) => id === 'names')!.marks;
		const figures = names.filter(({ key }) => key.startsWith('isolux-'));
		expect(figures.length).toBeGreaterThan(3);
		for (const mark of figures)
			expect(mark.kind === 'text' && lightSteps.map(String)).toContain((mark as { text: string }).text);
	});
});
