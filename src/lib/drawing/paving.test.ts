/** Paved areas, gates and posts on the drawing of the yard that has them all. */
import { describe, expect, it } from 'vitest';
import { makePlan } from '../domain/plan';
import { awkward } from '../domain/yard';
import { drawPaving } from './paving';
import { svgOf } from './svg.testing';

const plan = makePlan(awkward.find(({ id }) => id === 'gate')!.yard);
const marks = drawPaving(plan.site);
const numbers = (d: string): number[] => d.match(/-?\d+(\.\d+)?/g)!.map(Number);

describe('the drawing of paving', () => {
	it('lays a paved area over the strips that run into it, so that they have no edges there', () => {
		const keys = marks.map(({ key }) => key);
		expect(keys.indexOf('ground-apron')).toBeGreaterThan(keys.indexOf('edges-drive'));
		expect(keys.indexOf('area-apron')).toBe(keys.indexOf('ground-apron') + 1);
		expect(marks.find(({ key }) => key === 'area-apron')).toMatchObject({ ink: 'paving', fill: 'dots' });
		const area = plan.site.areas.find(({ id }) => id === 'apron')!;
		const drawn = marks.find(({ key }) => key === 'ground-apron');
		expect(drawn?.kind === 'path' && numbers(drawn.d)).toEqual(area.polygon.flatMap(({ x, y }) => [x, y]));
	});
	it('marks a gate from edge to edge and two posts, each by name', () => {
		const gate = marks.find(({ key }) => key === 'gate-door-walk-garden-gate');
		expect(gate).toMatchObject({ kind: 'path', title: 'Gate' });
		const [x1, y1, x2, y2] = gate?.kind === 'path' ? numbers(gate.d) : [];
		// The walk is 1.2 m wide, and the mark stands out 0.15 m over either edge.
		expect(Math.hypot(x2! - x1!, y2! - y1!)).toBeCloseTo(1.5, 2);
		expect(marks.filter(({ key }) => key.startsWith('post-drive'))).toHaveLength(2);
		const svg = svgOf(plan);
		expect(svg.match(/<title>Gate post<\/title>/g)).toHaveLength(2);
		expect(svg.match(/<title>Gate<\/title>/g)).toHaveLength(1);
	});
});
