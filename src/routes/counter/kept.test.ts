import { describe, expect, it } from 'vitest';
import { picks, usualAnswers, type QuickAnswers } from '$lib/domain/quick';
import { readKept, written } from './kept';

const full: QuickAnswers = {
	...usualAnswers('metres'),
	trees: { small: 1, medium: 2, large: 3 },
	clear: ['pool', 'drive-crossing'],
	halogens: { count: 6, watts: 20 },
	transformer: 150,
	cable: { size: 2.5, metres: 30 },
	lamp: 'halogen'
};

describe('what is kept of a customer', () => {
	it('comes back as it was', () => {
		for (const answers of [usualAnswers('feet'), usualAnswers('metres'), full])
			for (const taken of [null, '2 × "K-1"'])
				expect(readKept(written({ answers, taken }))).toEqual({ answers, taken });
	});
	it('takes every pick that the page offers', () => {
		for (const units of ['feet', 'metres'] as const) {
			const offered = picks(units);
			for (const key of ['walk', 'drive', 'wall', 'receptacle', 'shape', 'lamp'] as const)
				for (const { value } of offered[key]) {
					const answers = { ...usualAnswers(units), [key]: value };
					expect(readKept(written({ answers, taken: null }))?.answers, key).toEqual(answers);
				}
		}
	});
	it.each([
		['nothing', null],
		['no JSON', '{'],
		['another thing', '"duskwright"'],
		['a list', '[]'],
		['no answers', '{"taken":null}'],
		['a length that is none', written({ answers: { ...full, walk: -1 }, taken: null })],
		['a length beyond all yards', written({ answers: { ...full, wall: 1e9 }, taken: null })],
		['half a tree', written({ answers: { ...full, trees: { small: 0.5, medium: 0, large: 0 } }, taken: null })],
		['an unknown shape', written({ answers: full, taken: null }).replace('straight', 'crooked')],
		['an unknown spot', written({ answers: full, taken: null }).replace('pool', 'moat')],
		['cable without a size', written({ answers: full, taken: null }).replace('"size":2.5', '"size":null')]
	])('starts anew from %s', (_, text) => expect(readKept(text)).toBeNull());
});
