import { describe, expect, test } from 'vitest';
import { makePlan } from '../domain/plan';
import type { Finding } from '../domain/shared/findings';
import { examples } from '../domain/yard';
import { chapters } from './chapters';
import { grouped, saidOnce } from './grouped';
import { cssString, pageRules } from './page-rules';
import { stakesOf, walkingOrder } from './stakes';
import { whatInWords } from './words';

describe('findings said once', () => {
	test('what differs is listed in the middle', () => {
		expect(
			saidOnce([
				'Within 11 ft of the trunk of the linden dig by hand; go round roots thicker than 1 in.',
				'Within 9 ft of the trunk of the maple dig by hand; go round roots thicker than 1 in.',
				'Within 3 ft of the trunk of the left column dig by hand; go round roots thicker than 1 in.'
			])
		).toBe(
			'Within 11 ft of the trunk of the linden; 9 ft of the trunk of the maple and 3 ft of the trunk of the left column dig by hand; go round roots thicker than 1 in.'
		);
	});
	test('a figure keeps its unit', () => {
		expect(saidOnce(['Under the drive, 44.00 m from the street.', 'Under the drive, 5.00 m from the street.'])).toBe(
			'Under the drive, 44.00 m and 5.00 m from the street.'
		);
		expect(saidOnce(['It lies 6 in deep.', 'It lies 1 ft 6 in deep.'])).toBe('It lies 6 in and 1 ft 6 in deep.');
	});
	test('sentences that differ by more than a list can hold are not joined', () => {
		expect(saidOnce(['Run 1: look at the hub. Then go on.', 'Run 2: wait. Then go on.'])).toBeNull();
		expect(saidOnce(['One thing.', 'Quite another.'])).toBeNull();
		expect(saidOnce(['The same.', 'The same.'])).toBe('The same.');
	});
	const finding = (code: string, message: string): Finding => ({
		code,
		rank: 'note',
		message,
		about: null,
		rule: null
	});
	test('findings of other codes stay apart, in the order of the plan', () => {
		const list = [
			finding('a', 'Near the oak dig by hand.'),
			finding('b', 'Near the oak dig by hand.'),
			finding('a', 'Near the elm dig by hand.')
		];
		expect(grouped(list)).toEqual(['Near the oak and elm dig by hand.', 'Near the oak dig by hand.']);
	});
	test.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))(
		'%s: no figure and no name of any finding is lost',
		(_, plan) => {
			const said = grouped(plan.findings);
			for (const { message } of plan.findings)
				expect(
					said.some((line) => {
						let at = 0;
						return message.split(' ').every((word) => {
							const found = line.indexOf(word.replace(/[.,;]$/, ''), at);
							at = found < 0 ? at : found + 1;
							return found >= 0;
						});
					}),
					message
				).toBe(true);
		}
	);
});

describe('staking out', () => {
	test('is walked along the front and back farther out', () => {
		const at = (x: number, y: number) => ({ at: { x, y } });
		// Bands of 10 m: [0, 10) left to right, with what hangs just behind the front; [10, 20) right to left; [30, 40) left to right.
		const order = walkingOrder([at(5, 35), at(1, 12), at(9, 12), at(8, -0.3), at(2, 4), at(1, 31), at(2, 3)]);
		expect(order.map(({ at: { x, y } }) => [x, y])).toEqual([
			[2, 3],
			[2, 4],
			[8, -0.3],
			[9, 12],
			[1, 12],
			[1, 31],
			[5, 35]
		]);
	});
	test.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))(
		'%s: along, out and both diagonals agree by Pythagoras; the first and the farthest are checked',
		(_, plan) => {
			const stakes = stakesOf(plan);
			expect(stakes).toHaveLength(plan.fixtures.length + 2);
			// The front begins at 0 and its right corner lies at its width: c² = a² + b².
			const front = plan.site.walls.filter(({ of, front }) => of === 'house' && front);
			const right = front.map(({ from, to }) => (from.x > to.x ? from : to)).reduce((a, b) => (b.x > a.x ? b : a));
			const left = front.map(({ from, to }) => (from.x < to.x ? from : to)).reduce((a, b) => (b.x < a.x ? b : a));
			for (const stake of stakes) {
				expect(stake.left! ** 2).toBeCloseTo((stake.at.x - left.x) ** 2 + (stake.at.y - left.y) ** 2, 6);
				expect(stake.right! ** 2).toBeCloseTo((stake.at.x - right.x) ** 2 + (stake.at.y - right.y) ** 2, 6);
			}
			expect(stakes[0]!.check).toBe(true);
			const far = Math.max(...stakes.map((stake) => stake.left!));
			expect(stakes.find((stake) => stake.left === far)!.check).toBe(true);
			expect(stakes.filter(({ check }) => check).length).toBeLessThanOrEqual(3);
		}
	);
});

describe('the foot of the pages', () => {
	const head = { name: 'A "yard" \\ <b>', code: 'ABC', onDate: '2026-11-30', program: '1.2.3' };
	test('names cannot end the rule: quotes, backslashes and line ends go by their code', () => {
		// CSS Syntax Module Level 3, 4.3.7: an escape is a backslash, hexadecimal digits and one white space.
		expect(cssString('a"b\\c\nd')).toBe('"a\\22 b\\5c c\\a d"');
		expect(pageRules(head, 'a4')).not.toContain('A "yard"');
	});
	test.each([
		['a4', '210mm 297mm', '297mm 210mm'],
		['letter', '215.9mm 279.4mm', '279.4mm 215.9mm']
	] as const)('%s: each chapter has its page, upright and across', (paper, upright, across) => {
		const rules = pageRules(head, paper);
		for (const { id, title } of chapters) {
			expect(rules).toMatch(new RegExp(`@page dw-${id}-portrait \\{\\s*size: ${upright};`));
			expect(rules).toMatch(new RegExp(`@page dw-${id}-landscape \\{\\s*size: ${across};`));
			expect(rules).toContain(`${title} · plan ABC`);
		}
	});
});

test('the plan in one line', () => {
	const plan = makePlan(examples.find(({ id }) => id === 'suburban')!.yard);
	const { fixtures, runs, supply } = plan;
	expect(whatInWords(plan)).toBe(
		`${fixtures.length} lights on ${runs.length} runs of cable; a transformer of ${supply!.ratedVoltAmps} VA carries ${Math.round(supply!.loadVoltAmps)} VA.`
	);
	expect(whatInWords({ ...plan, fixtures: [], runs: [], supply: null })).toBe('No lights yet.');
});
