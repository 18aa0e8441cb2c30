import { describe, expect, test } from 'vitest';
import type { RunPicture } from '$lib/domain/lesson';
import { groupsOf } from './load-groups';
import { least, lightOf, placesOf, wide } from './run-places';

const run = (arrangement: RunPicture['arrangement'], lamps: number, volts = '11.87 V'): RunPicture => ({
	kind: 'run',
	alt: 'A run of lamps for the test.',
	arrangement,
	supply: { text: '12 V' },
	lamps: Array.from({ length: lamps }, (_, k) => ({ label: `${k + 1}`, volts, share: 1, state: 'fine' })),
	cables: Array.from({ length: lamps + (arrangement === 'both ends' ? 1 : 0) }, () => ({
		length: '4 m',
		amps: '1.5 A'
	}))
});
const arrangements = ['series', 'parallel', 'chain', 'tee', 'both ends'] as const;

describe('the diagram of a run', () => {
	test.each(arrangements)('%s: texts of one column stay clear of the next, and inside', (arrangement) => {
		for (let lamps = 1; lamps <= 12; lamps += 1) {
			const picture = run(arrangement, lamps);
			const places = placesOf(picture);
			const columns = [...places.supplies, ...places.lamps].toSorted((a, b) => a - b);
			const half = wide('11.87 V') / 2;
			expect(places.width).toBeGreaterThanOrEqual(least);
			expect(columns[0]! - half).toBeGreaterThanOrEqual(0);
			expect(columns.at(-1)! + half).toBeLessThanOrEqual(places.width);
			for (const [k, x] of columns.entries()) if (k > 0) expect(x - columns[k - 1]!).toBeGreaterThan(2 * half);
			expect(places.cables.length).toBe(picture.cables.length);
		}
	});
	test('a tee feeds to both sides', () => {
		const { supplies, lamps, cables } = placesOf(run('tee', 4));
		expect(supplies[0]).toBeGreaterThan(lamps[1]!);
		expect(supplies[0]).toBeLessThan(lamps[2]!);
		expect(cables.map(({ way }) => way)).toEqual(['left', 'left', 'right', 'right']);
	});
	test('light in words', () => {
		const [lamp] = run('chain', 1).lamps;
		expect(lightOf({ ...lamp!, share: 0.734 })).toBe('73 %');
		expect(lightOf({ ...lamp!, share: 0.004 })).toBe('< 1 %');
		expect(lightOf({ ...lamp!, state: 'off' })).toBe('dark');
		expect(lightOf({ ...lamp!, state: 'over' })).toBe('too high');
	});
});
test('parts alike are told together', () => {
	const part = (label: string) => ({ label, voltAmps: 15, text: '15 VA' });
	expect(groupsOf([part('a'), part('a'), part('b'), part('a')])).toEqual(['2 × a, 15 VA each', 'b, 15 VA', 'a, 15 VA']);
});
