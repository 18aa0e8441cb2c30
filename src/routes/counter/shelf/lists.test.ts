import { expect, test } from 'vitest';
import type { Contents } from '$lib/domain/kits/types';
import { fields, type Column } from '$lib/shelf';
import { demoShelf } from '$lib/shelf/demo';
import { contentsWords } from './contents-words';
import { csvName, lineCount, linesFound, listsOf } from './lists';
import { offered } from './matches';
import { inOrder, troubleWords } from './opened-list.svelte';

test('every line is in one list, in the order of the shelf', () => {
	const lists = listsOf(demoShelf.lines);
	expect(
		lists.flatMap(({ lines }) => lines).toSorted((a, b) => demoShelf.lines.indexOf(a) - demoShelf.lines.indexOf(b))
	).toEqual(demoShelf.lines);
	for (const { kind, lines } of lists) for (const line of lines) expect(line.kind).toBe(kind);
	expect(lists.map(({ kind }) => kind)).toEqual(['kit', 'fixture', 'transformer', 'cable', 'connectors']);
});

test('a search finds words of code, name and place, in any order and case', () => {
	const line = demoShelf.lines.find(({ place }) => place !== null)!;
	const words = [...line.name.split(' ').toReversed(), line.code, line.place].join(' ').toUpperCase();
	expect(linesFound(demoShelf.lines, words)).toEqual([line]);
	expect(linesFound(demoShelf.lines, '  ')).toEqual(demoShelf.lines);
	expect(linesFound(demoShelf.lines, `${line.code} nowhere`)).toEqual([]);
	// Never a pattern: what a person types is looked for as it stands.
	expect(linesFound(demoShelf.lines, '.*')).toEqual([]);
});

test('what is in a line is said shortly, gauges by the foot and cross-sections by the metre', () => {
	const lamp = {
		source: 'led',
		watts: 4,
		voltAmps: 5,
		lumens: 280,
		beam: 36,
		minVolts: 9,
		maxVolts: 15,
		colour: null
	} as const;
	const contents: Contents = {
		fixtures: [
			{ product: 'a', count: 6, fixture: { kind: 'path', lamp } },
			{ product: 'b', count: 1, fixture: { kind: 'well', lamp } }
		],
		transformer: { voltAmps: 120, taps: [12, 13, 14], secondaries: 1, regulation: 0.05 },
		cable: [
			{ size: { system: 'awg', size: 16 }, metres: 30.48, count: 1 },
			{ size: { system: 'mm2', size: 2.5 }, metres: 15, count: 2 }
		],
		connectors: 8
	};
	expect(contentsWords('kit', contents)).toBe(
		'6 path lights; 1 well light; transformer 120 VA, taps 12 to 14 V; 100 ft of 16 AWG; 2 × 15 m of 2.5 mm²; 8 connectors'
	);
	const light = { ...contents, fixtures: contents.fixtures.slice(1), transformer: null, cable: [], connectors: 0 };
	expect(contentsWords('fixture', light)).toBe('well light, LED 4 W, 280 lm, 36°, 9 to 15 V');
	expect(contentsWords('kit', { fixtures: [], transformer: null, cable: [], connectors: 0 })).toBe('nothing in it');
});

test('columns are offered one kind of light beyond what there is', () => {
	const column = (field: Column['field']): Column => ({ header: 'h', sample: '', field });
	const first = offered([column('code')]);
	expect(first).toContain('watts 2');
	expect(first).not.toContain('watts 3');
	expect(offered([column('watts 6'), column('cable 3')])).toEqual(fields);
	expect(new Set(offered([column('lumens 3')])).has('watts 4')).toBe(true);
	expect(first).not.toContain('cable 3');
});

test('troubles are told by row and column, stops first', () => {
	const look = { rank: 'look', row: 3, column: 'Watts', field: 'watts', message: '“20W” was taken as 20.' } as const;
	const stop = { rank: 'stop', row: 9, column: null, field: null, message: 'Nothing is in it.' } as const;
	const file = { rank: 'look', row: null, column: null, field: null, message: 'Not used: “EAN”.' } as const;
	expect(inOrder([look, stop, file]).map(troubleWords)).toEqual([
		'Row 9: Nothing is in it.',
		'Row 3, Watts: “20W” was taken as 20.',
		'Not used: “EAN”.'
	]);
});

test('counts and names of files', () => {
	expect([lineCount(1), lineCount(10_000)]).toEqual(['1 line', '10,000 lines']);
	expect(csvName('Fern & Gate, Goods!')).toBe('fern-gate-goods.csv');
	expect(csvName('  ', '-left-out')).toBe('shelf-left-out.csv');
	expect(csvName('../Ää')).toBe('ää.csv');
});
