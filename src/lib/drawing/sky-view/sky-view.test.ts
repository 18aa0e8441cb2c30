import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import type { SensorSpot, SensorView } from '../../domain/dusk';
import { makePlan } from '../../domain/plan';
import { examples } from '../../domain/yard';
import { drawShares, shareWords } from './draw-shares';
import { drawSpots } from './draw-spots';
import SkyShares from './SkyShares.svelte';
import { facingWords, placeWords } from './words';

const view: Pick<SensorView, 'sky' | 'taken'> = {
	sky: { leafOn: 0.5, leafOff: 0.625 },
	taken: [
		{ kind: 'eaves', id: 'front', name: '', share: 0.25 },
		{ kind: 'tree', id: 'oak', name: 'Oak', share: 0.2 }
	]
};
describe('shares of the sky', () => {
	test('widths go as the shares, and fill the bar', () => {
		const [on, off] = drawShares(view, 402).bars;
		const widths = Object.fromEntries(on!.segments.map(({ key, width }) => [key, width]));
		expect(widths).toEqual({
			sky: expect.closeTo(200, 6),
			'eaves-front': expect.closeTo(100, 6),
			'tree-oak': expect.closeTo(80, 6),
			rest: expect.closeTo(20, 6)
		});
		expect(off!.segments.map(({ width }) => width)).toEqual([expect.closeTo(250, 6), expect.closeTo(150, 6)]);
		for (const { segments } of [on!, off!])
			segments.slice(1).forEach((segment, k) => expect(segment.x).toBeCloseTo(segments[k]!.x + segments[k]!.width, 6));
	});
	test('a window in the open has one whole bar; one that sees nothing has no bare part', () => {
		const open = drawShares({ sky: { leafOn: 1, leafOff: 1 }, taken: [] }, 402).bars[0]!;
		expect(open.segments.map(({ fill }) => fill)).toEqual(['sky']);
		const shut = drawShares({ sky: { leafOn: 0, leafOff: 0 }, taken: [] }, 402).bars[0]!;
		expect(shut.segments.map(({ fill }) => fill)).toEqual(['rest']);
	});
	test('every taker that counts is named with its share', () => {
		const { body } = render(SkyShares, { props: { view } });
		expect(body).toContain('the roof’s edge: 25 %');
		expect(body).toContain('Oak: 20 %');
		expect(render(SkyShares, { props: { view: { ...view, taken: [] } } }).body).toContain('Nothing stands in its way');
	});
	test.each([
		[0, '0 %'],
		[0.004, 'under 1 %'],
		[0.625, '63 %'],
		[1, '100 %']
	])('%f is %s', (share, words) => expect(shareWords(share)).toBe(words));
});
describe('spots on the plan', () => {
	const plan = makePlan(examples[0]!.yard);
	const near = (dx: number, dy: number, faces: number): SensorSpot => ({
		at: { x: plan.supply!.at.x + dx, y: plan.supply!.at.y + dy },
		height: 1.5,
		on: 'wall',
		faces,
		lead: Math.hypot(dx, dy),
		sky: view.sky,
		early: 3,
		own: 0,
		others: 0,
		verdict: 'steady',
		why: ''
	});
	const spots = [near(0, 0, plan.site.faces), near(5, 0, 90), near(-2, 3, 180)];
	test.each([300, 620])('%i px: numbered in their order, in sight', (width) => {
		const { layers, box, px } = drawSpots(plan, spots, width);
		const texts = layers.flatMap(({ marks }) => marks).filter((mark) => mark.kind === 'text');
		expect(texts.map(({ text }) => text).toSorted()).toEqual(['1', '2', '3']);
		for (const { text, at } of texts) {
			expect(at).toEqual(spots[Number(text) - 1]!.at);
			for (const gap of [at.x - box.minX, box.maxX - at.x, at.y - box.minY, box.maxY - at.y])
				expect(gap / px).toBeGreaterThan(11);
		}
		const keys = layers.flatMap(({ marks }) => marks.map(({ key }) => key));
		expect(new Set(keys).size).toBe(keys.length);
		expect(new Set(layers.map(({ id }) => id)).size).toBe(layers.length);
	});
	test('the tick points the way the window looks: out towards the street when it faces as the front does', () => {
		const drawn = drawSpots(plan, spots, 620).layers.flatMap(({ marks }) => marks);
		const tick = drawn.find(({ key }) => key === 'spot-way-0')!;
		const [from, to] =
			tick.kind === 'path'
				? tick.d
						.slice(1)
						.split('L')
						.map((pair) => pair.split(' ').map(Number))
				: [];
		expect(to![0]).toBeCloseTo(from![0]!, 3);
		expect(to![1]!).toBeGreaterThan(from![1]!);
	});
});
describe('words', () => {
	test('where', () => {
		expect(placeWords({ x: 3.6576, y: 0.0127 }, 'feet')).toBe('12 ft along the front, 1/2 in out from it');
		expect(placeWords({ x: 1, y: -2 }, 'metres')).toBe('1.00 m along the front, 2.00 m behind it');
		expect(placeWords({ x: 1, y: 0 }, 'metres')).toBe('1.00 m along the front, on its line');
	});
	test('facing', () => {
		expect(facingWords(48)).toBe('north-east, 48° from north');
		expect(facingWords(359.7)).toBe('north, 0° from north');
	});
});
