import { describe, expect, test } from 'vitest';
import type { Receiver } from '$lib/domain/light';
import { makePlan } from '$lib/domain/plan';
import { examples } from '$lib/domain/yard';
import { removed } from './by-hand/changes';
import { lightMoves } from './light-change';

const walk: Receiver = {
	id: 'w',
	kind: 'walk',
	name: 'the front walk',
	average: 4.1,
	least: 0.6,
	most: 20,
	evenness: 7,
	fromPlan: { average: 4.1, most: 20 },
	aim: { low: 3.5, high: null, evenness: null, rule: 'path.level' },
	verdict: 'right',
	points: 30
};
const of = (...receivers: Receiver[]) => ({ receivers });

describe('before and after', () => {
	test('the figures, and that the aim is no longer kept', () => {
		const after: Receiver = { ...walk, average: 3.2, least: 0.2, verdict: 'short' };
		expect(lightMoves(of(walk), of(after))).toEqual([
			{
				id: 'walk w',
				words: 'the front walk: 4.1 → 3.2 lx on average, least 0.60 → 0.20',
				size: expect.closeTo(0.9 / 4.1, 9),
				turned: 'worse'
			}
		]);
	});
	test('what does not show is no change', () =>
		expect(lightMoves(of(walk), of({ ...walk, average: 4.1004 }))).toEqual([]));
	test('a surface that comes or goes is no change of light', () => {
		expect(lightMoves(of(), of(walk))).toEqual([]);
		expect(lightMoves(of(walk), of())).toEqual([]);
	});
	test('one figure that stays is said once', () =>
		expect(lightMoves(of(walk), of({ ...walk, average: 5 }))[0]!.words).toBe(
			'the front walk: 4.1 → 5.0 lx on average, least 0.60'
		));
	test('the most changed first', () => {
		const wall: Receiver = { ...walk, id: 'f', kind: 'wall', name: 'the front', average: 10 };
		const moves = lightMoves(of(walk, wall), of({ ...walk, average: 4 }, { ...wall, average: 20 }));
		expect(moves.map(({ id }) => id)).toEqual(['wall f', 'walk w']);
	});
});

test('a path light taken away takes light from its walk, and nothing gets brighter', () => {
	const { yard } = examples[0]!;
	const before = makePlan(yard);
	const gone = before.fixtures.find(({ technique, target }) => technique === 'path' && target.kind === 'walk')!;
	const after = makePlan({ ...yard, fixtures: removed(yard.fixtures, gone) });
	const moves = lightMoves(before.light, after.light);
	expect(moves.some(({ id }) => id === `walk ${gone.target.id}`)).toBe(true);
	const was = before.light.receivers.find(({ kind, id }) => kind === 'walk' && id === gone.target.id)!;
	const now = after.light.receivers.find(({ kind, id }) => kind === 'walk' && id === gone.target.id)!;
	expect(now.average).toBeLessThan(was.average);
});
