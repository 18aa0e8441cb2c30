import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chosenLayout, leftOver, sketchHeights, type SlipLayout } from './layout';

/** A page of so many millimetres: 140 of fixed words, 9 a line in one column, 16 a pair of lines in two, and the sketch. */
const fitsOn =
	(room: number) =>
	({ sketch, columns, lines }: SlipLayout): boolean =>
		140 + sketch + (columns === 1 ? 9 * lines : 16 * Math.ceil(lines / 2)) <= room;

describe('the layout of the slip', () => {
	it.each([
		// by hand, on 255 mm: 255 − 140 = 115 for sketch and list
		[1, { sketch: 105, columns: 1, lines: 1 }],
		[2, { sketch: 90, columns: 1, lines: 2 }],
		[7, { sketch: 50, columns: 1, lines: 7 }],
		[8, { sketch: 40, columns: 1, lines: 8 }],
		// two columns of nine lines are 80 mm, which leaves 35: the sketch goes
		[9, { sketch: 0, columns: 2, lines: 9 }],
		[14, { sketch: 0, columns: 2, lines: 14 }],
		[15, { sketch: 0, columns: 2, lines: 14 }]
	])('of %i lines', (lines, layout) => {
		const got = chosenLayout(lines, fitsOn(255));
		expect(got).toEqual(layout);
	});
	it('goes into two columns before the sketch leaves the page', () => {
		// 10 lines on 260 mm: 90 in one column leave 30, 80 in two leave 40
		expect(chosenLayout(10, fitsOn(260))).toEqual({ sketch: 40, columns: 2, lines: 10 });
	});
	it('always fits where a page holds one line, and loses no line', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 160, max: 400 }), (lines, room) => {
				const layout = chosenLayout(lines, fitsOn(room));
				expect(fitsOn(room)(layout)).toBe(true);
				expect(layout.lines === lines || layout.sketch === 0).toBe(true);
				const said = leftOver(layout, lines);
				expect(said === null).toBe(layout.sketch > 0);
				if (layout.lines < lines) expect(said).toContain(`${lines - layout.lines} more line`);
				if (layout.lines < lines) expect(fitsOn(room)({ ...layout, lines: layout.lines + 1 })).toBe(false);
			})
		);
	});
	it('shrinks the sketch step by step', () => {
		expect(sketchHeights.every((height, n) => n === 0 || height < sketchHeights[n - 1]!)).toBe(true);
	});
	it('says what is on the second page', () => {
		expect(leftOver({ sketch: 40, columns: 1, lines: 3 }, 3)).toBeNull();
		expect(leftOver({ sketch: 0, columns: 2, lines: 3 }, 3)).toBe('The sketch of the yard is on the second page.');
		expect(leftOver({ sketch: 0, columns: 2, lines: 3 }, 4)).toBe(
			'On the second page: 1 more line to buy, and the sketch of the yard.'
		);
	});
});
