import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { randomYard } from './random.testing';
import { yardSchema } from './schema';

test('every random yard is valid, the same for its seed, and another for the next', () => {
	const seen = new Set<string>();
	const many = process.env.LONG ? 5000 : 300;
	for (let seed = 1; seed <= many; seed++) {
		const yard = randomYard(seed);
		const checked = z.safeParse(yardSchema, yard);
		expect(checked.error?.issues ?? [], `seed ${seed}`).toEqual([]);
		expect(randomYard(seed)).toEqual(yard);
		seen.add(JSON.stringify({ ...yard, name: '' }));
	}
	expect(seen.size).toBe(many);
});
