import { array, assert, double, integer, property, record } from 'fast-check';
import { expect, test } from 'vitest';
import type { Box, Point, Viewport } from './types';
import {
	bringIn,
	closest,
	fitted,
	held,
	heightOf,
	isClose,
	panned,
	shownBox,
	toScreen,
	toYard,
	transformFrom,
	widthOf,
	zoomed
} from './viewport';

const number = (min: number, max: number) => double({ min, max, noNaN: true });
const point = (min: number, max: number) => record({ x: number(min, max), y: number(min, max) });
const box = record({ at: point(-50, 50), width: number(4, 90), height: number(4, 90) }).map(
	({ at, width, height }): Box => ({ minX: at.x, minY: at.y, maxX: at.x + width, maxY: at.y + height })
);
const size = record({ width: integer({ min: 160, max: 2000 }), height: integer({ min: 120, max: 1600 }) });
const view = record({ whole: box, size, times: number(1, 40), at: point(0, 1) }).map(
	({ whole, size: { width, height }, times, at }) => {
		const fit = fitted(whole, width, height);
		return { whole, view: zoomed(fit, { x: at.x * width, y: at.y * height }, times, whole) };
	}
);
const expectNear = (a: Point, b: Point, within: number) => {
	expect(Math.abs(a.x - b.x)).toBeLessThanOrEqual(within);
	expect(Math.abs(a.y - b.y)).toBeLessThanOrEqual(within);
};
const runs = { numRuns: process.env.LONG ? 20_000 : 800, seed: 7 };

test('the whole of a box fits and fills one way, by its own figures', () => {
	const whole = { minX: -2, minY: -3, maxX: 18, maxY: 7 };
	expect(fitted(whole, 400, 400)).toEqual({ centre: { x: 8, y: 2 }, scale: 20, width: 400, height: 400 });
	expect(shownBox(fitted(whole, 400, 400))).toEqual({ minX: -2, minY: -8, maxX: 18, maxY: 12 });
	expect(toScreen(fitted(whole, 400, 400), { x: -2, y: -3 })).toEqual({ x: 0, y: 100 });
});

test('to the screen and back again is where it was', () =>
	assert(
		property(view, point(-100, 100), ({ view }, p) => expectNear(toYard(view, toScreen(view, p)), p, 1e-9)),
		runs
	));

test('zoom about a point keeps that point, however far it goes and wherever it ends', () =>
	assert(
		property(view, point(0, 1), number(0.05, 20), ({ whole, view }, at, factor) => {
			const on = { x: at.x * view.width, y: at.y * view.height };
			const next = zoomed(view, on, factor, whole);
			expectNear(toYard(next, on), toYard(view, on), 1e-9);
			expect(next.scale).toBeLessThanOrEqual(closest);
			expect(next.scale).toBeGreaterThanOrEqual(fitted(whole, view.width, view.height).scale);
		}),
		runs
	));

test('zoom in and out by the same is where it was, unless a limit was met', () =>
	assert(
		property(view, point(0, 1), number(1, 3), ({ whole, view }, at, factor) => {
			const on = { x: at.x * view.width, y: at.y * view.height };
			const there = zoomed(view, on, factor, whole);
			if (there.scale >= closest) return;
			const back = zoomed(there, on, 1 / factor, whole);
			expectNear(back.centre, view.centre, 1e-9);
			expect(back.scale / view.scale).toBeCloseTo(1, 12);
		}),
		runs
	));

test('pan and then back is where it was; it moves by as many px', () =>
	assert(
		property(view, point(-900, 900), point(-30, 30), ({ view }, by, p) => {
			const moved = panned(view, by.x, by.y);
			const [before, after] = [toScreen(view, p), toScreen(moved, p)];
			expectNear(after, { x: before.x + by.x, y: before.y + by.y }, 1e-7);
			expectNear(panned(moved, -by.x, -by.y).centre, view.centre, 1e-9);
		}),
		runs
	));

test('whatever is done, the yard stays in sight: the middle is in it, the whole is never smaller than it need be', () => {
	type Step = { pan: Point; zoom: number; at: Point };
	const steps = array(record({ pan: point(-3000, 3000), zoom: number(0.1, 8), at: point(0, 1) }), { maxLength: 12 });
	const done = (view: Viewport, { pan, zoom, at }: Step, whole: Box) => {
		const on = { x: at.x * view.width, y: at.y * view.height };
		return held(zoomed(panned(view, pan.x, pan.y), on, zoom, whole), whole);
	};
	assert(
		property(view, steps, ({ whole, view }, list) => {
			for (const step of list) {
				view = done(view, step, whole);
				const slack = 1e-9;
				expect(view.centre.x).toBeGreaterThanOrEqual(whole.minX - slack);
				expect(view.centre.x).toBeLessThanOrEqual(whole.maxX + slack);
				expect(view.centre.y).toBeGreaterThanOrEqual(whole.minY - slack);
				expect(view.centre.y).toBeLessThanOrEqual(whole.maxY + slack);
				expect(held(view, whole).scale).toBe(view.scale);
				expectNear(held(view, whole).centre, view.centre, 1e-9);
				const shown = shownBox(view);
				if (!isClose(view, whole)) {
					// The whole yard is all there.
					expect(shown.minX).toBeLessThanOrEqual(whole.minX + 0.01 * widthOf(whole));
					expect(shown.maxX).toBeGreaterThanOrEqual(whole.maxX - 0.01 * widthOf(whole));
					expect(shown.minY).toBeLessThanOrEqual(whole.minY + 0.01 * heightOf(whole));
					expect(shown.maxY).toBeGreaterThanOrEqual(whole.maxY - 0.01 * heightOf(whole));
				}
			}
		}),
		{ ...runs, numRuns: runs.numRuns / 4 }
	);
});

test('a yard that is wider than its place is held to its edges one way and to its middle the other', () => {
	const whole = { minX: 0, minY: 0, maxX: 40, maxY: 10 };
	const fit = fitted(whole, 400, 400);
	expect(held(panned(fit, 999, -999), whole)).toEqual(fit);
	const near = held(panned(zoomed(fit, { x: 200, y: 200 }, 2, whole), 9999, 0), whole);
	// Twice as close 20 m are shown, of which a quarter may lie past the edge.
	expect(shownBox(near).minX).toBeCloseTo(-5, 9);
	expect(near.centre.y).toBe(5);
});

test('a point is brought in by as little as need be', () =>
	assert(
		property(view, point(-60, 60), ({ view }, p) => {
			const next = bringIn(view, p, 30);
			const on = toScreen(next, p);
			expect(on.x).toBeGreaterThanOrEqual(30 - 1e-6);
			expect(on.x).toBeLessThanOrEqual(view.width - 30 + 1e-6);
			expect(on.y).toBeGreaterThanOrEqual(30 - 1e-6);
			expect(on.y).toBeLessThanOrEqual(view.height - 30 + 1e-6);
			expect(bringIn(next, p, 29.9)).toBe(next);
		}),
		runs
	));

test('moved as one, what was drawn lies where it would be drawn', () =>
	assert(
		property(view, point(-200, 200), number(0.5, 2), point(-60, 60), ({ whole, view }, by, factor, p) => {
			const next = zoomed(panned(view, by.x, by.y), { x: 10, y: 20 }, factor, whole);
			const [, x, y, times] = /^translate\((.+)px, (.+)px\) scale\((.+)\)$/.exec(transformFrom(view, next) ?? '') ?? [
				'',
				'0',
				'0',
				'1'
			];
			const drawn = toScreen(view, p);
			const moved = { x: Number(x) + Number(times) * drawn.x, y: Number(y) + Number(times) * drawn.y };
			// What is taken for the same is off by less than a hundredth of a px near what is shown.
			expectNear(moved, toScreen(next, p), 0.05);
		}),
		runs
	));
