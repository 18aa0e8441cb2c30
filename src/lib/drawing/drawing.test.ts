import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { makePlan, type Plan } from '../domain/plan';
import { blankYard, examples, outlines, type Yard } from '../domain/yard';
import { metresPerFoot } from '../domain/shared/units';
import { describePlan, drawPlan, roomOf } from './draw-plan';
import { frameOf, roundLength, screenFrame } from './frame';
import { textWidth } from './labels';
import type { Drawing, Mark, TextMark } from './marks';
import { drawNames } from './names';
import { bearingVector, northTurn } from './sheet';
import Sheet from './Sheet.svelte';
import { svgOf } from './svg.testing';

const yards: [string, Yard][] = [
	['blank', blankYard()],
	...[...examples, ...outlines].map(({ id, yard }): [string, Yard] => [id, yard])
];
const plans = new Map<string, Plan>(yards.map(([id, yard]) => [id, makePlan(yard)]));
const marksOf = (drawing: Drawing): Mark[] => drawing.layers.flatMap((layer) => layer.marks);
const numbersIn = (value: unknown): number[] =>
	typeof value === 'number'
		? [value]
		: typeof value === 'object' && value !== null
			? Object.values(value).flatMap(numbersIn)
			: [];

describe.each(yards.map(([id]) => id))('%s', (id) => {
	const plan = plans.get(id)!;

	test.each([320, 360, 820, 1280])('is drawn with sound numbers at %i px', (widthPx) => {
		const drawing = drawPlan(plan, { widthPx, roots: true });
		expect(numbersIn(drawing).every(Number.isFinite)).toBe(true);
		expect(JSON.stringify(drawing)).not.toMatch(/NaN|Infinity|undefined/);
		expect(drawing.box.maxX).toBeGreaterThan(drawing.box.minX);
		expect(drawing.box.maxY).toBeGreaterThan(drawing.box.minY);
		const keys = marksOf(drawing).map((mark) => mark.key);
		expect(new Set(keys).size).toBe(keys.length);
	});

	test('every fixture has its symbol at its place, and its label', () => {
		const marks = marksOf(drawPlan(plan, { widthPx: 820 }));
		for (const fixture of plan.fixtures) {
			expect(marks).toContainEqual(
				expect.objectContaining({ kind: 'symbol', key: `fixture-${fixture.id}`, at: fixture.at })
			);
			expect(marks).toContainEqual(expect.objectContaining({ kind: 'text', text: fixture.label }));
		}
	});

	test.each([
		['whole', frameOf],
		['on a screen', screenFrame],
		['on paper', (plan: Plan) => frameOf(plan, true)]
	])('everything that is planned lies on the sheet, %s', (_, frame) => {
		const box = frame(plan);
		for (const { x, y } of [
			...plan.fixtures.map((f) => f.at),
			...plan.runs.flatMap((run) => run.segments.flatMap((s) => s.path))
		]) {
			expect(x).toBeGreaterThan(box.minX);
			expect(x).toBeLessThan(box.maxX);
			expect(y).toBeGreaterThan(box.minY);
			expect(y).toBeLessThan(box.maxY);
		}
	});
});

const boxOf = (mark: TextMark, px: number) => {
	const width = textWidth(mark.text, mark.size, mark.bold) * px;
	const minX = mark.at.x - (mark.anchor === 'start' ? 0 : mark.anchor === 'end' ? width : width / 2);
	const half = (mark.size * px) / 2;
	return { minX, maxX: minX + width, minY: mark.at.y - half, maxY: mark.at.y + half };
};

describe.each(examples.map(({ id }) => id))('labels of %s', (id) => {
	test.each([360, 1280])('do not lie over one another at %i px', (widthPx) => {
		const drawing = drawPlan(plans.get(id)!, { widthPx });
		const texts = drawing.layers.find((layer) => layer.id === 'names')!.marks.filter((mark) => mark.kind === 'text');
		const boxes = texts.map((mark) => ({ text: mark.text, ...boxOf(mark, drawing.px) }));
		const clashes = boxes.flatMap((a, i) =>
			boxes
				.slice(i + 1)
				.filter((b) => a.minX < b.maxX && a.maxX > b.minX && a.minY < b.maxY && a.maxY > b.minY)
				.map((b) => `${a.text} over ${b.text}`)
		);
		expect(clashes).toEqual([]);
		for (const box of boxes) {
			expect(box.minX).toBeGreaterThanOrEqual(drawing.box.minX);
			expect(box.maxX).toBeLessThanOrEqual(drawing.box.maxX);
		}
	});

	test('are legible at any width: never below 10 px', () => {
		for (const widthPx of [320, 360, 1280])
			for (const mark of marksOf(drawPlan(plans.get(id)!, { widthPx })))
				if (mark.kind === 'text') expect(mark.size).toBeGreaterThanOrEqual(10);
	});
});

describe('the item in hand', () => {
	const plan = plans.get('suburban')!;
	test('names stand where they would if all were placed anew round its dimensions', () => {
		const things = [
			...plan.fixtures.map(({ id }) => ({ kind: 'fixture', id })),
			...plan.site.trees.flatMap(({ id }) => [
				{ kind: 'tree', id },
				{ kind: 'tree', id, what: 'place' as const }
			]),
			...plan.site.strips.map(({ id }) => ({ kind: 'strip', id }))
		];
		let moved = 0;
		for (const widthPx of [360, 820])
			for (const highlight of things) {
				const { box, px, sizes, layers } = drawPlan(plan, { widthPx, highlight });
				const layer = (id: string) => layers.find((one) => one.id === id)!.marks;
				const rooms = [...layer('emphasis'), ...layer('sheet')]
					.map((mark) => roomOf(mark, px, sizes.label))
					.filter((room) => room !== null);
				expect(layer('names')).toEqual(drawNames(plan, box, px, sizes, rooms));
				if (layer('names') !== drawPlan(plan, { widthPx }).layers.find(({ id }) => id === 'names')!.marks) moved += 1;
			}
		// Both ways are met: names kept as they stand, and placed anew.
		expect(moved).toBeGreaterThan(0);
		expect(moved).toBeLessThan(2 * things.length);
	});
	const dimensions = (kind: string, id: string, what?: 'size' | 'place') =>
		marksOf(drawPlan(plan, { widthPx: 820, highlight: { kind, id, ...(what ? { what } : {}) } })).filter(
			(mark) => mark.kind === 'dimension'
		);

	test('a tree shows its spread, or where it stands', () => {
		const tree = plan.site.trees[0]!;
		const [spread] = dimensions('tree', tree.id);
		expect(Math.abs(spread!.to.x - spread!.from.x)).toBeCloseTo(tree.spread, 9);
		const [along, out] = dimensions('tree', tree.id, 'place');
		expect(along!.to.x - along!.from.x).toBeCloseTo(tree.at.x, 9);
		expect(out!.to.y - out!.from.y).toBeCloseTo(tree.at.y, 9);
	});
	test('a strip shows its width, square to its line', () => {
		for (const strip of plan.site.strips) {
			const [width] = dimensions(strip.kind, strip.id);
			expect(Math.hypot(width!.to.x - width!.from.x, width!.to.y - width!.from.y)).toBeCloseTo(strip.width, 9);
		}
	});
	test.each([
		['house', ''],
		['lot', ''],
		['transformer', ''],
		['sensor', ''],
		['fixture', plan.fixtures[0]!.id],
		['wall', plan.site.walls[0]!.id],
		['opening', plan.site.walls.flatMap((wall) => wall.openings)[0]!.id],
		['water', plan.site.areas.find((area) => area.kind === 'water')!.id]
	])('%s has dimensions', (kind, id) => expect(dimensions(kind, id).length).toBeGreaterThan(0));
	test('what is not on the drawing has none', () => {
		expect(dimensions('tree', 'no-such-tree')).toEqual([]);
		expect(dimensions('no-such-kind', 'x')).toEqual([]);
	});
});

describe('north and scale', () => {
	// The front faces down the sheet: facing south, north is up; facing east (90°), north is to the right of someone looking down… turned 90° clockwise.
	test.each([
		[180, 0],
		[90, 90],
		[0, 180],
		[270, 270]
	])('a front that faces %i° turns north by %i°', (faces, turn) => expect(northTurn(faces)).toBe(turn));
	test('the bearing the front faces is down the sheet; clockwise of it is left', () => {
		expect(bearingVector(205, 205)).toEqual({ x: -0, y: 1 });
		expect(bearingVector(295, 205).x).toBeCloseTo(-1, 12);
	});
	test.each(['suburban', 'rural'])('the scale bar of %s is as long as it says', (id) => {
		const plan = plans.get(id)!;
		const bar = marksOf(drawPlan(plan, { widthPx: 820 })).find((mark) => mark.kind === 'scale-bar')!;
		const [number, unit] = bar.text.split(' ');
		expect(bar.length).toBeCloseTo(Number(number) * (unit === 'ft' ? metresPerFoot : 1), 9);
	});
	test('round lengths are 1, 2 or 5 times a power of ten', () => {
		expect([0.7, 1.9, 2, 4.99, 7, 33].map((most) => roundLength(most, 1))).toEqual([0.5, 1, 2, 2, 5, 20]);
	});
});

test('the description counts what is drawn', () => {
	const plan = plans.get('suburban')!;
	expect(describePlan(plan)).toContain(`${plan.fixtures.length} fixtures`);
	expect(describePlan(plans.get('blank')!)).toMatch(/empty sheet/);
});

describe('the drawing as SVG', () => {
	test.each(examples.map(({ id }) => id))('%s', async (id) => {
		await expect(svgOf(plans.get(id)!)).toMatchFileSnapshot(`${id}.snapshot.svg`);
	});
	test('carries no style attributes: the site forbids inline style sheets', () => {
		const { body } = render(Sheet, {
			props: { drawing: drawPlan(plans.get('suburban')!, { widthPx: 820 }), title: 't', description: 'd' }
		});
		expect(body).not.toMatch(/ style=/);
	});
});
