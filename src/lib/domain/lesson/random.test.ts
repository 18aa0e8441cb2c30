import { describe, expect, test } from 'vitest';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { randomOf } from './random';

describe('numbers drawn from a text', () => {
	test('are the same for ever', () => {
		const random = randomOf('blue hour');
		expect(Array.from({ length: 8 }, () => random.whole(1, 100))).toMatchInlineSnapshot(`
			[
			  35,
			  48,
			  88,
			  26,
			  99,
			  48,
			  78,
			  91,
			]
		`);
	});
	// Blackman and Vigna, xoroshiro128plus.c (rotations 24, 16, 37): rerun here in whole numbers of 64 bits from the library's own start.
	test('by the published generator', () => {
		const generator = xoroshiro128plus(7);
		const words = generator.getState().map((word) => BigInt(word >>> 0));
		const mask = (1n << 64n) - 1n;
		const rotated = (x: bigint, k: bigint) => ((x << k) | (x >> (64n - k))) & mask;
		let s0 = (words[0]! << 32n) | words[1]!;
		let s1 = (words[2]! << 32n) | words[3]!;
		for (let n = 0; n < 1000; n += 1) {
			const low = Number(BigInt.asIntN(32, s0 + s1));
			expect(generator.next()).toBe(low);
			const crossed = s0 ^ s1;
			s0 = rotated(s0, 24n) ^ crossed ^ ((crossed << 16n) & mask);
			s1 = rotated(crossed, 37n);
		}
	});
	test('stay in their range, reach its ends, and are decimal texts', () => {
		const random = randomOf('steps');
		const drawn = Array.from({ length: 2000 }, () => random.stepped(0.1, 0.7, 0.1));
		expect([...new Set(drawn)].sort()).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
	});
	test('each order of a list is as likely', () => {
		const random = randomOf('orders');
		const counts = new Map<string, number>();
		for (let n = 0; n < 6000; n += 1) {
			const order = random.shuffled(['a', 'b', 'c']).join('');
			counts.set(order, (counts.get(order) ?? 0) + 1);
		}
		// Chi-square with five degrees of freedom: 20.5 is passed once in a thousand.
		const chi = [...counts.values()].reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0);
		expect(counts.size).toBe(6);
		expect(chi).toBeLessThan(20.5);
	});
});
