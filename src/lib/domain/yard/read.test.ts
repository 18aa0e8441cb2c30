import { assert, property, string, json } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blankYard, examples, longestFile, readYard, writeYard } from '.';
import { randomYard } from './random.testing';

const problems = (text: string): string[] => {
	const read = readYard(text);
	return read.ok ? [] : read.problems;
};
const changed = (change: (yard: Record<string, never>) => void): string => {
	const yard = JSON.parse(writeYard(examples[1]!.yard)) as Record<string, never>;
	change(yard);
	return JSON.stringify(yard);
};

describe('round trip', () => {
	test('what is written reads back the same, and is written the same again', () => {
		for (let seed = 1; seed <= 200; seed++) {
			const yard = randomYard(seed);
			const text = writeYard(yard);
			expect(readYard(text), `seed ${seed}`).toEqual({ ok: true, yard });
			expect(writeYard({ ...yard })).toBe(text);
		}
	});
	test('keys come in one order whatever order they were answered in', () => {
		const { format, version, place, ...rest } = blankYard();
		expect(writeYard({ ...rest, place, version, format })).toBe(writeYard(blankYard()));
		expect(writeYard(blankYard())).toContain('{\n  "format": "duskwright/yard",\n  "version": 1,\n');
	});
	test('a yard that would not be read is still written, nothing lost', () => {
		const odd = { ...blankYard(), name: 'x'.repeat(61) };
		expect(JSON.parse(writeYard(odd))).toEqual(odd);
	});
});

describe('not a yard', () => {
	test.each([
		['', 'This file is empty.'],
		['  \n', 'This file is empty.'],
		['{"format":"duskwright/yard",', 'This file is not a yard, or it was cut short: it cannot be read as JSON.'],
		['[]', 'This file is not a Duskwright yard.'],
		['null', 'This file is not a Duskwright yard.'],
		['{"name":"something"}', 'This file is not a Duskwright yard.'],
		[
			'{"format":"duskwright/plan","version":1}',
			'This is a plan, not a yard. Open the yard file that it was made from.'
		],
		['{"format":"duskwright/yard"}', 'This yard does not say which version it was saved by.'],
		['{"format":"duskwright/yard","version":1.5}', 'This yard does not say which version it was saved by.']
	])('%s', (text, problem) => {
		expect(problems(text)).toEqual([problem]);
	});
	test('a newer version is refused whole, and says what to do', () => {
		expect(problems(changed((yard) => Object.assign(yard, { version: 2 })))[0]).toMatch(/newer version.*Reload/);
	});
	test('a file of megabytes is not even parsed', () => {
		expect(problems(' '.repeat(longestFile + 1))).toEqual(['This file is far too long to be a yard.']);
	});
	test('nothing that is typed makes it throw', () => {
		assert(property(string(), (text) => !readYard(text).ok));
		assert(property(json(), (text) => !readYard(text).ok));
	});
});

describe('a broken yard says where, in words', () => {
	test.each<[string, (yard: Record<string, never>) => void, string]>([
		[
			'a size beyond sense',
			(y) => set(y, ['trees', 1, 'spread'], 400),
			'Trees, number 2 (middle hornbeam), spread: at most 40 is possible.'
		],
		['a negative height', (y) => set(y, ['house', 'eaves'], -1), 'House, eaves: at least 1.8 is needed.'],
		[
			'text for a number',
			(y) => set(y, ['walks', 0, 'width'], '4 ft'),
			'Walks, number 1 (front walk), width: a number is expected here.'
		],
		[
			'a part of a thing for a count',
			(y) => set(y, ['power', 'budget'], { kind: 'fixtures', fixtures: 3.5 }),
			'Power, budget, fixtures: a whole number is expected here.'
		],
		[
			'an unknown word',
			(y) => set(y, ['place', 'units'], 'cubits'),
			'Place, units: one of these is expected: feet, metres.'
		],
		['an unknown key', (y) => set(y, ['house', 'chimney'], 1), 'House: this is not known here: chimney.'],
		[
			'a missing coordinate',
			(y) => set(y, ['trees', 0, 'at'], { along: 1 }),
			'Trees, number 1 (corner linden), at, out: a number is expected here, and it is missing.'
		],
		[
			'a short line',
			(y) => set(y, ['drives', 0, 'line'], []),
			'Drives, number 1 (drive), line: at least 2 are needed.'
		],
		[
			'a bad id',
			(y) => set(y, ['trees', 0, 'id'], 'Linden!'),
			'Trees, number 1 (corner linden), id: this is not written the way it should be.'
		],
		[
			'an id used twice',
			(y) => set(y, ['trees', 2, 'id'], 'linden'),
			'Trees, number 3 (drive-side maple): the id "linden" is used twice in this list.'
		],
		['a part missing whole', (y) => delete y.power, 'Power: a group of answers is expected here, and it is missing.']
	])('%s', (_, change, problem) => {
		expect(problems(changed(change))).toEqual([problem]);
	});
	test('a number too large for JSON is refused, not taken as infinite', () => {
		const text = writeYard(examples[1]!.yard).replace(/"eaves": [\d.]+/, '"eaves": 1e999');
		expect(problems(text)).toEqual(['House, eaves: a number is expected here.']);
	});
	test('a key named __proto__ changes nothing and is refused', () => {
		const text = writeYard(blankYard()).replace('"place"', '"__proto__": {"polluted": true},\n  "place"');
		expect(readYard(text).ok).toBe(false);
		expect(({} as Record<string, unknown>).polluted).toBe(undefined);
		const prices = writeYard(blankYard()).replace(
			'"power": {}',
			'"power": {"prices": {"__proto__": 3, "constructor": 2}}'
		);
		const read = readYard(prices);
		if (!read.ok) throw new Error(read.problems.join(' '));
		expect(Object.keys(read.yard.power.prices!)).toEqual(['constructor']);
		expect(Object.getPrototypeOf(read.yard.power.prices)).toBe(Object.prototype);
	});
	test('a file broken everywhere names the first few places and counts the rest', () => {
		const found = problems(
			changed((yard) => {
				for (let i = 0; i < 5; i++) set(yard, ['trees', i, 'spread'], -1);
				set(yard, ['house', 'eaves'], 99);
			})
		);
		expect(found.length).toBe(6);
		expect(found.at(-1)).toBe('And 1 more like this.');
	});
});
function set(yard: unknown, path: (string | number)[], value: unknown): void {
	let parent = yard as Record<string | number, unknown>;
	for (const key of path.slice(0, -1)) parent = parent[key] as Record<string | number, unknown>;
	parent[path.at(-1)!] = value;
}
