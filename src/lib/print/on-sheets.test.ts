import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../domain/plan';
import { examples } from '../domain/yard';
import { drawPlan } from '../drawing';
import { barsOf, yardBar } from './measure';
import { paperSizes, pxPerMm } from './on-paper';
import { asPart } from './part-marks';
import { busyPoints, planOnPaper, planSheets } from './plan-on-paper';
import { chosenScale, readChoice, scaleChoices } from './scale-choice';
import { overlap, planAt, roomOn, type Fit, type Part } from './scale';

const metric = (ratio: number) => ({ ratio, text: `1:${ratio}` });
const rural = makePlan(examples.find(({ id }) => id === 'rural')!.yard);

describe('a plan at a chosen scale', () => {
	// By hand. A4 upright leaves 210 − 24 = 186 mm by 297 − 26 − 54 = 217 mm to a part, across 273 by 130; parts share 10 mm.
	test.each([
		// 40 m is 400 mm: (400 − 10) ÷ 176 = 2.2, so 3. 60 m is 600 mm: 590 ÷ 207 = 2.9, so 3. Across 390 ÷ 263 and 590 ÷ 120: 2 × 5.
		{ wide: 40, deep: 60, ratio: 100, columns: 3, rows: 3, orientation: 'portrait' },
		// 800 mm and 1200 mm. Upright 790 ÷ 176 = 4.5 and 1190 ÷ 207 = 5.7: 5 × 6 = 30; across 3.0 and 9.9: 4 × 10 = 40.
		{ wide: 40, deep: 60, ratio: 50, columns: 5, rows: 6, orientation: 'portrait' },
		// 250 mm by 125 mm: one sheet across, which has 273 by 142.
		{ wide: 25, deep: 12.5, ratio: 100, columns: 1, rows: 1, orientation: 'landscape' },
		// 500 mm by 125 mm: across 490 ÷ 263 = 1.9, so 2.
		{ wide: 50, deep: 12.5, ratio: 100, columns: 2, rows: 1, orientation: 'landscape' }
	])('$wide by $deep m at 1:$ratio on A4: $columns by $rows', ({ wide, deep, ratio, columns, rows, orientation }) => {
		const fit = planAt({ minX: 0, minY: 0, maxX: wide, maxY: deep }, 'a4', metric(ratio));
		expect({ columns: fit.columns, rows: fit.rows, orientation: fit.orientation }).toEqual({
			columns,
			rows,
			orientation
		});
		expect(fit.parts).toHaveLength(columns * rows);
	});
	test('parts are named by row and column, are of one size and overlap by 10 mm of paper', () => {
		const side = fc.double({ min: 5, max: 400, noNaN: true });
		const ratio = fc.constantFrom(50, 100, 200, 48, 96, 192);
		fc.assert(
			fc.property(side, side, ratio, fc.constantFrom('letter', 'a4'), (wide, deep, ratio, paper) => {
				const box = { minX: -4, minY: -9, maxX: wide - 4, maxY: deep - 9 };
				const { parts, columns, rows, orientation } = planAt(box, paper, metric(ratio));
				const room = roomOn(paper, orientation, parts.length > 1);
				expect(new Set(parts.map(({ name }) => name)).size).toBe(parts.length);
				for (const part of parts) {
					expect(part.width).toBeCloseTo(parts[0]!.width, 6);
					expect(part.width).toBeLessThanOrEqual(room.width + 1e-6);
					expect(part.height).toBeLessThanOrEqual(room.height + 1e-6);
					expect(((part.box.maxX - part.box.minX) * 1000) / ratio).toBeCloseTo(part.width, 6);
					const right = parts.find((one) => one.row === part.row && one.column === part.column + 1);
					if (right) expect(((part.box.maxX - right.box.minX) * 1000) / ratio).toBeCloseTo(overlap, 6);
				}
				expect(parts[0]!.name).toBe('A1');
				const last = parts.at(-1)!;
				expect([last.row, last.column]).toEqual([rows, columns]);
				expect(last.box.maxX).toBeCloseTo(box.maxX, 6);
				expect(last.box.maxY).toBeCloseTo(box.maxY, 6);
			}),
			{ numRuns: process.env.LONG ? 5000 : 300, seed: 4 }
		);
	});
	test('every light and all cable is on a sheet; sheets without any are left out, after one that shows all', () => {
		const paper = planOnPaper(rural, 'a4', '100');
		expect(paper.fit.parts.length).toBeLessThan(paper.fit.rows * paper.fit.columns);
		const inside = ({ box }: Part, { x, y }: { x: number; y: number }) =>
			x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;
		const busy = busyPoints(rural);
		expect(busy.filter((at) => !paper.fit.parts.some((part) => inside(part, at)))).toEqual([]);
		for (const part of paper.fit.parts) expect(busy.some((at) => inside(part, at))).toBe(true);
		const titles = planSheets(paper).map(({ title }) => title);
		expect(titles[0]).toBe('Plan, all of it');
		expect(titles[1]).toBe('Plan, part A1');
	});
	test('the choices: those of the own units first; only a choice is taken from what was kept', () => {
		expect(scaleChoices('feet').map(({ label }) => label)).toEqual([
			'What fits on one sheet',
			'1/4 in = 1 ft',
			'1/8 in = 1 ft',
			'1/16 in = 1 ft',
			'1:50',
			'1:100',
			'1:200'
		]);
		expect(chosenScale('96')).toEqual({ ratio: 96, text: '1/8 in = 1 ft' });
		expect([readChoice('96'), readChoice('97'), readChoice(null)]).toEqual(['96', null, null]);
	});
});

describe('match marks', () => {
	const { fit } = planOnPaper(rural, 'a4', '100');
	const drawn = (part: Part, of: Fit) =>
		asPart(
			drawPlan(rural, { widthPx: part.width * pxPerMm, box: part.box, sizes: paperSizes, glow: false }),
			rural,
			of,
			part
		).layers.find(({ id }) => id === 'sheet')!.marks;
	const lineTo = (part: Part, name: string) => {
		const mark = drawn(part, fit).find(({ key }) => key === `match-${name}`);
		return mark?.kind === 'path' ? mark.d.match(/-?[\d.]+/g)!.map(Number) : null;
	};
	test('two neighbours show the same line of the yard, and each names the other', () => {
		const pairs = fit.parts.flatMap((part) =>
			fit.parts
				.filter(
					({ row, column }) =>
						(row === part.row && column === part.column + 1) || (column === part.column && row === part.row + 1)
				)
				.map((next) => [part, next] as const)
		);
		expect(pairs.length).toBeGreaterThan(4);
		for (const [part, next] of pairs) {
			const [there, back] = [lineTo(part, next.name)!, lineTo(next, part.name)!];
			for (const [i, value] of there.entries()) expect(Math.abs(value - back[i]!)).toBeLessThanOrEqual(0.0011);
		}
	});
	test('no line leads to a part that is left out, and north is on every part', () => {
		const names = new Set(fit.parts.map(({ name }) => name));
		for (const part of fit.parts) {
			const marks = drawn(part, fit);
			for (const { key } of marks.filter(({ key }) => key.startsWith('match-')))
				expect(names.has(key.slice('match-'.length))).toBe(true);
			const north = marks.find(({ kind }) => kind === 'north');
			expect(north?.kind === 'north' && north.at.x > part.box.minX && north.at.x < part.box.maxX).toBe(true);
			expect(north?.kind === 'north' && north.at.y > part.box.minY && north.at.y < part.box.maxY).toBe(true);
			expect(marks.some(({ kind }) => kind === 'scale-bar')).toBe(false);
		}
	});
});

describe('the bars', () => {
	test('the rulers are 4 × 25.4 mm and 100 mm', () => {
		expect(barsOf('feet', 96).map(({ length }) => length)).toEqual([101.6, 100, (20 * 304.8) / 96]);
	});
	// Worked out by hand: the longest of 1, 2, 5 × 10ⁿ that is at most 100 mm of paper.
	test.each([
		['metres', 50, '5 m of the yard', 100],
		['metres', 100, '10 m of the yard', 100],
		['metres', 75, '5 m of the yard', 66.6667],
		['metres', 500, '50 m of the yard', 100],
		['feet', 48, '10 ft of the yard', 63.5],
		['feet', 192, '50 ft of the yard', 79.375],
		['feet', 384, '100 ft of the yard', 79.375]
	] as const)('%s at 1:%i', (units, ratio, text, length) => {
		const bar = yardBar(units, ratio);
		expect(bar.text).toBe(text);
		expect(bar.length).toBeCloseTo(length, 3);
	});
});
