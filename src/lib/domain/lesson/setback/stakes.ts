import { distance } from '../../shared/geometry';
import type { UnitSystem } from '../../shared/units';
import { stakeOut } from '../../placement';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { litDrive } from './drive';

/** Drive in the long unit, head and clearance in the short one. */
export interface Stakes {
	width: number;
	head: number;
	clear: number;
}

function pose({ width, head, clear }: Stakes, units: UnitSystem): Problem | null {
	const { long, short } = tapeOf(units);
	const decimals = units === 'metres' ? 0 : 1;
	const [W, d, c] = [
		given('W', 'width of the drive', width, 1, long.unit),
		given('d', 'diameter of the head', head, 0, short.unit),
		given('c', 'clear of the edge', clear, 0, short.unit)
	];
	const givens = [W, d, c];
	const step = { unit: short.unit, decimals, source: 'geometry' };
	const steps = reckon(givens, [
		{
			...step,
			symbol: 'o',
			label: 'stake, out from the edge',
			expression: 'c + d ÷ 2',
			rule: 'The head reaches half its diameter towards the drive; the rest is to be clear.',
			source: 'practice'
		},
		{
			...step,
			symbol: 'w',
			label: `width of the drive in ${short.unit === 'mm' ? 'millimetres' : 'inches'}`,
			expression: `${short.perLong} × W`,
			rule: 'All lengths in one unit.'
		},
		{
			...step,
			symbol: 'p',
			label: 'from stake to stake',
			expression: 'w + 2 × o',
			rule: 'The drive, and the stake’s distance on either side of it.'
		}
	]);
	const { strip } = litDrive({ width: width * long.metres, length: 8, flare: 1 }, units);
	const out = stakeOut(head * short.metres, { stake: 0, clear: clear * short.metres });
	const engine = (distance(strip.left[0]!, strip.right[0]!) + 2 * out) / short.metres;
	if (!agrees(engine, steps)) return null;
	return {
		kind: 'setback.stakes',
		story: `A pair of lamps marks both sides of a drive ${withUnit(W)} wide. Their heads are round, ${withUnit(d)} across, with the stake in the middle. Nothing of a lamp may be nearer to the drive’s edge than ${withUnit(c)}.`,
		ask: `What is the least distance from stake to stake? Give ${units === 'metres' ? 'whole millimetres' : 'inches to one decimal'}.`,
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit: short.unit, decimals },
		because: 'The setback is measured to the nearest part of the lamp, not to its stake.',
		engine
	};
}

/** Where the stakes of a pair go for a given setback and head. */
export const stakes: ProblemKind<Stakes> = {
	id: 'setback.stakes',
	lesson: 'setback',
	title: 'From stake to stake across a drive',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		return {
			width: random.stepped(metric ? 2.4 : 8, metric ? 5 : 18, metric ? 0.1 : 0.5),
			head: random.stepped(metric ? 100 : 4, metric ? 240 : 10, metric ? 20 : 1),
			clear: random.one(metric ? [150, 200, 300] : [6, 8, 12])
		};
	},
	pose
};
