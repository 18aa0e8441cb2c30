import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { gapOf, isStruck } from './drive';

/** Short units. */
export interface ByTheArc {
	flare: number;
	out: number;
	back: number;
	head: number;
}

function pose({ flare, out, back, head }: ByTheArc, units: UnitSystem): Problem | null {
	const { unit, metres } = tapeOf(units).short;
	const decimals = units === 'metres' ? 0 : 1;
	const [f, o, b, d] = [
		given('f', 'radius of the arc', flare, 0, unit),
		given('o', 'stake, out from the edge', out, 0, unit),
		given('b', 'stake, in from the street', back, 0, unit),
		given('d', 'width of the head', head, 0, unit)
	];
	const givens = [f, o, b, d];
	const step = { unit, decimals, source: 'geometry' };
	const steps = reckon(givens, [
		{
			...step,
			symbol: 'x',
			label: 'from the centre to the lamp’s corner, across the drive',
			expression: 'f − (o − d ÷ 2)',
			rule: 'The corner lies half a head nearer to the edge than the stake.'
		},
		{
			...step,
			symbol: 'y',
			label: 'from the centre to the lamp’s corner, along the drive',
			expression: 'f − (b − d ÷ 2)',
			rule: 'And half a head nearer to the street.'
		},
		{
			...step,
			symbol: 'q',
			label: 'from the centre straight to the lamp’s corner',
			expression: '√(x ^ 2 + y ^ 2)',
			rule: 'Pythagoras.'
		},
		{
			...step,
			symbol: 'g',
			label: 'between lamp and arc',
			expression: 'f − q',
			rule: 'The radius less that distance; less than nothing where the car strikes the lamp.'
		}
	]);
	const lamp = { out: out * metres, back: back * metres, head: head * metres };
	const gap = gapOf(lamp, flare * metres);
	if (gap === null) return null;
	const engine = gap / metres;
	if (Math.abs(engine) < 0.5 || !agrees(engine, steps)) return null;
	return {
		kind: 'setback.arc',
		story: `A car that turns in cuts the corner of a drive on an arc of ${withUnit(f)} radius; its centre lies ${withUnit(f)} from the edge and ${withUnit(f)} from the street. A lamp with a square head ${withUnit(d)} wide stands on a stake ${withUnit(o)} out from the edge and ${withUnit(b)} in from the street.`,
		ask: `How far is the lamp’s nearest corner from the arc? Give ${units === 'metres' ? 'whole millimetres' : 'inches to one decimal'}, with a minus sign if the car strikes it.`,
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit, decimals },
		because: isStruck(lamp, flare * metres)
			? 'It is further from the centre than the radius: in the corner that the car cuts.'
			: 'It is nearer to the centre than the radius: the arc passes it by.',
		engine
	};
}

/** How far a lamp is from the arc of a turning car. */
export const arc: ProblemKind<ByTheArc> = {
	id: 'setback.arc',
	lesson: 'setback',
	title: 'Between a lamp and the car’s arc',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		return {
			flare: random.one(metric ? [1000, 1200, 1500, 2000] : [36, 48, 60, 72]),
			out: random.stepped(metric ? 300 : 12, metric ? 600 : 24, metric ? 50 : 2),
			back: random.stepped(metric ? 200 : 8, metric ? 900 : 36, metric ? 50 : 2),
			head: random.one(metric ? [120, 160, 200] : [4, 6, 8])
		};
	},
	pose
};
