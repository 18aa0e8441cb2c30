import { describe, expect, test } from 'vitest';
import { metresPerFoot, metresPerInch } from '../../shared/units';
import { exerciseOf } from './make';
import { ownLayout } from './mark';
import { layoutOf, readLines, writeLayout } from './read';
import { exerciseIds } from './types';

const lightOf = (text: string, units: 'feet' | 'metres') => {
	const [line] = readLines(text, units);
	return line?.kind === 'light' ? [line.light.kind, line.light.along, line.light.out] : line;
};
const feet = (ft: number, inches = 0) => Number((ft * metresPerFoot + inches * metresPerInch).toFixed(7));

describe('a line', () => {
	test.each([
		['path 3.2 1.5', ['path', 3.2, 1.5]],
		['path 3.2, 1.5', ['path', 3.2, 1.5]],
		['  2. Path: 3,2 1,5', ['path', 3.2, 1.5]],
		['tree\t-0.8\t4', ['tree', -0.8, 4]],
		['wall 80 cm; 0.79', ['wall', 0.8, 0.79]],
		['drive 3.2 m 250 mm', ['drive', 3.2, 0.25]],
		['uplight −0.8, 4', ['tree', -0.8, 4]]
	])('in metres: %s', (text, wanted) => expect(lightOf(text, 'metres')).toEqual(wanted));
	test.each([
		['path 12 5', ['path', feet(12), feet(5)]],
		["path 12' 6\" 5'", ['path', feet(12, 6), feet(5)]],
		['path 12 ft 6 in, 5 ft', ['path', feet(12, 6), feet(5)]],
		['tree -2 ft 6 in, 8 1/2 in', ['tree', -feet(2, 6), feet(0, 8.5)]],
		['wall 3 m, 0.8 m', ['wall', 3, 0.8]]
	])('in feet: %s', (text, wanted) => expect(lightOf(text, 'feet')).toEqual(wanted));
	test.each(['path', 'path 3', 'path 1 2 3', 'lamp 3 2', 'path 3 two', `path ${'9'.repeat(300)}`, '{"a":1}'])(
		'that cannot be read says what to write: %s',
		(text) => {
			const [line] = readLines(text, 'metres');
			expect(line?.kind).toBe('problem');
			expect(line?.kind === 'problem' && line.message).toMatch(/^Line 1: .{20}/);
		}
	);
	test('of the transformer', () => {
		const supplyOf = (text: string) => layoutOf(readLines(text, 'metres')).supply;
		expect(supplyOf('transformer 9, 0, 0.45, 60 VA')).toEqual({ along: 9, out: 0, height: 0.45, voltAmps: 60 });
		expect(supplyOf('transformer 9 0 0.45')).toEqual({ along: 9, out: 0, height: 0.45, voltAmps: null });
		expect(supplyOf('transformer 9 0 150va')).toEqual({ along: 9, out: 0, height: null, voltAmps: 150 });
		expect(supplyOf('transformer 9 0\ntransformer 8 0')?.along).toBe(8);
		expect(layoutOf(readLines('transformer 9 0 18 in, 60 VA', 'feet')).supply?.height).toBe(feet(0, 18));
		expect(layoutOf(readLines('transformer 30 ft, 0, 18 in, 60 VA', 'feet')).supply).toEqual({
			along: feet(30),
			out: 0,
			height: feet(0, 18),
			voltAmps: 60
		});
	});
});
test('blank lines and remarks are passed over, whatever ends a line', () => {
	const lines = readLines('# group A\r\n\npath 1 2\rtree 3 4\n', 'metres');
	expect(lines.map(({ kind }) => kind)).toEqual(['blank', 'blank', 'light', 'light', 'blank']);
});
test.each(exerciseIds)('what is written is read again: %s', (id) => {
	for (const units of ['metres', 'feet'] as const) {
		const layout = ownLayout(exerciseOf(id, 'again', units));
		const again = layoutOf(readLines(writeLayout(layout, units), units));
		expect(again.lights).toHaveLength(layout.lights.length);
		// To the millimetre, or to half of a sixteenth of an inch.
		const exact = units === 'feet' ? metresPerInch / 32 : 0.0005;
		for (const [i, light] of again.lights.entries()) {
			expect(light.kind).toBe(layout.lights[i]!.kind);
			expect(Math.abs(light.along - layout.lights[i]!.along)).toBeLessThanOrEqual(exact + 1e-9);
			expect(Math.abs(light.out - layout.lights[i]!.out)).toBeLessThanOrEqual(exact + 1e-9);
		}
		expect(again.supply?.along).toBeCloseTo(layout.supply!.along, 2);
	}
});
