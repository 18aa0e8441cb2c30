import { describe, expect, it } from 'vitest';
import type { Needs, ShelfLine, Solution } from '../../domain/kits/types';
import { assumedLine, labelsInWords, ownedLine, runLines, servedBy } from './words';

const lamp = {
	source: 'led',
	watts: 3,
	voltAmps: 3.75,
	lumens: 200,
	beam: null,
	minVolts: 9,
	maxVolts: 15,
	colour: 2700
} as const;
const needs: Needs = {
	fixtures: [
		{
			id: 'a',
			kind: 'path',
			fixtures: ['1', '2', '3'],
			labels: ['P1', 'P2', 'P3'],
			lumens: 200,
			beam: null,
			source: 'led'
		},
		{ id: 'b', kind: 'spot', fixtures: ['4'], labels: ['T1'], lumens: 300, beam: 36, source: 'led' }
	],
	runs: [
		{ id: 'run-1', name: 'run 1', shape: { id: 'run-1', nodes: 1, segments: [], loads: [] }, metres: 18.288 },
		{ id: 'run-2', name: 'run 2', shape: { id: 'run-2', nodes: 1, segments: [], loads: [] }, metres: 7.5 }
	],
	connectors: 8,
	system: 'awg',
	units: 'feet',
	hours: null
};
const solution: Solution = {
	buys: [],
	cents: 0,
	setup: {
		products: ['lantern', 'spike'],
		sizes: [
			{ system: 'awg', size: 12 },
			{ system: 'awg', size: 16 }
		],
		transformer: 'T'
	},
	judged: {
		ok: true,
		lamps: [],
		taps: [14, 12],
		loadVoltAmps: 20,
		limitVoltAmps: 80,
		margin: 1,
		problems: [],
		notes: []
	},
	spare: [],
	growth: 60,
	notes: []
};
const line = (products: string[]): ShelfLine => ({
	code: 'K',
	kind: 'kit',
	name: 'Kit',
	cents: 1,
	stock: null,
	place: null,
	contents: {
		fixtures: products.map((product) => ({ product, fixture: { kind: 'path', lamp }, count: 1 })),
		transformer: null,
		cable: [],
		connectors: 0
	}
});

describe('words of the slip', () => {
	it.each([
		[[], ''],
		[['P1'], 'P1'],
		[['P1', 'P2'], 'P1, P2'],
		[['P1', 'P2', 'P3'], 'P1 to P3'],
		[['T1', 'P10', 'P9', 'P8', 'P2'], 'P2, P8 to P10, T1'],
		[['lamp'], 'lamp']
	])('takes lights that follow each other together: %j', (labels, words) => expect(labelsInWords(labels)).toBe(words));
	it('says which lights a line is for', () => {
		expect(servedBy(line(['spike', 'lantern']), 3, solution, needs)).toBe('T1, P1 to P3');
		expect(servedBy(line(['spike', 'lantern']), 2, solution, needs)).toBe('T1, 2 of P1 to P3');
		expect(servedBy(line(['spike']), 1, solution, needs)).toBe('T1');
		expect(servedBy(line(['other']), 1, solution, needs)).toBe('');
	});
	it('says cable and tap run by run, in the person’s units', () => {
		// 18.288 m is 60 ft exactly
		expect(runLines(solution, needs, 'feet')[0]).toEqual({
			name: 'Run 1',
			words: '12 AWG cable, 60 ft, on the 14 V tap'
		});
		expect(runLines(solution, needs, 'metres')[1]?.words).toBe('16 AWG cable, 8 m, on the 12 V tap');
	});
	it('says what becomes of what is there', () => {
		expect(
			ownedLine({
				what: 'transformer',
				verdict: 'keep',
				name: '150 VA transformer',
				why: 'It carries this plan.',
				where: null
			})
		).toBe('Keep: 150 VA transformer. It carries this plan.');
	});
	it('says what was made up', () => {
		expect(assumedLine([])).toContain('Nothing');
		expect(assumedLine([{ path: 'lot', words: 'x' }])).toContain('One figure of this yard was taken');
		expect(
			assumedLine([
				{ path: 'lot', words: 'x' },
				{ path: 'house', words: 'y' }
			])
		).toMatch(/^Check at home: 2 figures of this yard were/);
	});
});
