import { describe, expect, test } from 'vitest';
import { barkOffset } from '../../placement';
import { tradeFigures } from '../../shared/settings';
import { expectSound } from '../kinds.testing';
import { beam } from './beam';
import { count } from './count';
import { canopyKinds } from './kinds';
import { lean } from './lean';
import { saidRule, stand } from './stand';

describe('every problem is sound', () => {
	for (const kind of canopyKinds) test(kind.id, () => expectSound(kind));
});
const textOf = (answer: { type: string; text?: string } | undefined) => answer?.text;

// Common practice, no source: 6 in at 10 ft, 3 ft 5 in at 25 ft; 150 mm at 3 m, 1.05 m at 7.5 m.
test('the uplight stands on the straight line between the two canopies', () => {
	const at = (spread: number) => textOf(stand.pose({ tree: 'a maple', spread, trunk: 200 }, 'metres')?.answer);
	expect([3.5, 5, 7].map(at)).toEqual(['350', '650', '1050']);
	const inches = stand.pose({ tree: 'a maple', spread: 16, trunk: 10 }, 'feet')!;
	// 35 in over 15 ft: 14 in more for 6 ft.
	expect(inches.steps.map(({ text }) => text)).toEqual(['2.33', '20.0', '25']);
	expect(stand.pose({ tree: 'a maple', spread: 9, trunk: 200 }, 'metres')).toBeNull();
});
test('feet, rounded as the trade says them, are the plan’s within the inches of the trade’s own range', () => {
	for (const spread of [11, 14, 17.5, 20, 24]) {
		const { nearSpread, nearOffset, farSpread, farOffset } = saidRule.feet;
		const said = nearOffset + ((spread - nearSpread) / (farSpread - nearSpread)) * (farOffset - nearOffset);
		expect(Math.abs(said - barkOffset(spread * 0.3048, tradeFigures.figures) / 0.0254)).toBeLessThan(2);
	}
});

// Tables of tangents: tan 30° = 1/√3, tan 45° = 1; tan 20° = 0.364, tan 10° = 0.1763 (any four-figure table).
test.each([
	[0.364, '20.0'],
	[0.1763, '10.0']
])('a lean whose tangent is %f is %s°', (tangent, degrees) => {
	// Middle of the crown at 5.15 m, the lamp at 0.15 m: 5 m above it.
	const problem = lean.pose(
		{ tree: 'a maple', base: 2.3, height: 8, lamp: 0.15, aside: Math.round(5000 * tangent) },
		'metres'
	);
	expect(textOf(problem?.answer)).toBe(degrees);
});
test('beyond the most that a beam may lean there is no such problem', () => {
	expect(lean.pose({ tree: 'a maple', base: 1, height: 2, lamp: 0.15, aside: 1200 }, 'metres')).toBeNull();
});

test('the beam is the narrowest of the stock that covers the crown', () => {
	const tree = { tree: 'a maple', base: 2, height: 8.3, lamp: 0.15 };
	// The middle is 5 m above the lamp: a canopy 10 × tan 15° = 2.68 m across fills 30°.
	const problem = beam.pose({ ...tree, spread: 2.7 }, 'metres')!;
	expect(problem.steps.at(-1)!.text).toBe('30');
	expect(problem.answer).toEqual({ type: 'choice', choices: ['15°', '24°', '36°', '60°'], right: 2 });
	// 10 × tan 30° = 5.77 m fills 60°: too near to a beam of the stock to be asked.
	expect(beam.pose({ ...tree, spread: 5.8 }, 'metres')).toBeNull();
});

test('lights are counted tree by tree, each answer among those offered', () => {
	const problem = count.pose({ spreads: [3, 5, 8], first: 4 }, 'metres')!;
	expect(problem.because).toContain('1 + 2 + 3 = 6');
	expect(problem.answer).toEqual({ type: 'choice', choices: ['4', '5', '6', '7'], right: 2 });
	expect(count.pose({ spreads: [3, 5, 8], first: 7 }, 'metres')).toBeNull();
	expect(count.pose({ spreads: [3.5], first: 1 }, 'metres')).toBeNull();
	expect(count.pose({ spreads: [10, 20, 27], first: 4 }, 'feet')?.because).toContain('1 + 2 + 3 = 6');
});
