import { expect, test } from 'vitest';
import { fragmentOf, readFragment } from './fragment';

test('what is written is read again', () => {
	for (const units of ['feet', 'metres'] as const)
		for (const screen of [1, 2, 6]) {
			const read = readFragment(fragmentOf({ screen, units }), 6);
			expect({ ...read, screen: read.screen ?? 1 }).toEqual({ screen, units });
		}
	expect(fragmentOf({ screen: 1, units: null })).toBe('');
});

test('an address that someone has changed by hand gives what of it makes sense', () => {
	expect(readFragment('#screen=7&units=miles', 6)).toEqual({ screen: null, units: null });
	expect(readFragment('#screen=2.5', 6).screen).toBeNull();
	expect(readFragment('#screen=-1', 6).screen).toBeNull();
	expect(readFragment('#page', 6)).toEqual({ screen: null, units: null });
	expect(readFragment('#units=metres&screen=3', 6)).toEqual({ screen: 3, units: 'metres' });
	// The form of a query as the URL standard has it: %-encoded.
	expect(readFragment('#screen=%32', 6).screen).toBe(2);
});
