import { expect, test } from 'vitest';
import { blankYard, examples } from '$lib/domain/yard';
import { countsOf } from './counts';

test('counts what is told, and nothing else', () => {
	expect(countsOf(blankYard())).toEqual([]);
	expect(countsOf({ ...blankYard(), trees: [], walks: [{ id: 'a', name: '' }] })).toEqual(['1 walk']);
	expect(countsOf(examples[1]!.yard)).toEqual(['5 trees', '1 walk', '1 drive', '2 beds']);
});
test('counts what was done by hand', () => {
	const added = [{ id: 'light-1', technique: 'path' as const, at: { along: 0, out: 3 } }];
	expect(
		countsOf({
			...blankYard(),
			fixtures: { set: [{ id: 'a/b', removed: true }], added },
			power: { circuit: { runs: [{ id: 'run-1' }] }, measured: { 'terminals/run-1': 12.3 } },
			done: ['before/notice', 'first-night/look']
		})
	).toEqual(['2 lights changed by hand', '1 run set by hand', '1 reading of the first night', '2 steps ticked off']);
});
