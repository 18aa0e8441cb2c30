import type { UnitSystem } from '../../shared/units';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { isStruck } from './drive';

/** Short units: four places beside the mouth of a drive. */
export interface FourPlaces {
	flare: number;
	head: number;
	clear: number;
	places: readonly (readonly [out: number, back: number])[];
}
/** Each verdict holds also where a place is this much off, short units: no learner has to split hairs. */
const doubtful = { mm: 10, in: 0.5 } as const;

/** What is wrong with a place; null when nothing is, or when it is too close to call. */
function wrongWith(
	[out, back]: readonly [number, number],
	{ flare, head, clear }: FourPlaces,
	units: UnitSystem
): 'setback' | 'sweep' | 'clear' | null {
	const { unit, metres } = tapeOf(units).short;
	const by = doubtful[unit];
	const struck = (more: number) =>
		isStruck({ out: (out + more) * metres, back: (back + more) * metres, head: head * metres }, flare * metres);
	const near = (more: number) => out + more - head / 2 < clear;
	if (near(by)) return 'setback';
	if (near(-by)) return null;
	if (struck(by)) return 'sweep';
	return struck(-by) ? null : 'clear';
}
const words = { setback: 'too near the edge', sweep: 'in the corner that the car cuts', clear: 'clear' } as const;

function pose(drawn: FourPlaces, units: UnitSystem): Problem | null {
	const { flare, head, clear, places } = drawn;
	const { unit } = tapeOf(units).short;
	const verdicts = places.map((place) => wrongWith(place, drawn, units));
	const isPlain = verdicts.every((one) => one !== null) && verdicts.filter((one) => one === 'clear').length === 1;
	if (!isPlain) return null;
	const [f, d, c] = [
		given('f', 'radius of the arc', flare, 0, unit),
		given('d', 'width of the head', head, 0, unit),
		given('c', 'clear of the edge', clear, 0, unit)
	];
	const measured = places.map(([out, back], index) => ({
		letter: 'ABCD'[index]!,
		out: given(`o${index + 1}`, 'out from the edge', out, 0, unit),
		back: given(`b${index + 1}`, 'in from the street', back, 0, unit)
	}));
	return {
		kind: 'setback.clear',
		story: `Nothing of a lamp may be nearer to a drive’s edge than ${withUnit(c)}. A car that turns in cuts the corner on an arc of ${withUnit(f)} radius, its centre as far from the edge as from the street. A lamp with a square head ${withUnit(d)} wide may go on one of four stakes.`,
		ask: `Only one of them is clear of both. Which? ${measured.map(({ letter, out, back }) => `${letter}: ${withUnit(out)} out from the edge, ${withUnit(back)} in from the street.`).join(' ')}`,
		givens: [c, f, d, ...measured.flatMap(({ out, back }) => [out, back])],
		steps: [],
		answer: { type: 'choice', choices: measured.map(({ letter }) => letter), right: verdicts.indexOf('clear') },
		because: `${measured.map(({ letter }, index) => `${letter} is ${words[verdicts[index]!]}`).join('; ')}.`,
		engine: null
	};
}

/** Which of four places is clear of setback and turning car. */
export const clearPlace: ProblemKind<FourPlaces> = {
	id: 'setback.clear',
	lesson: 'setback',
	title: 'Which place is clear',
	levels: ['solved', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		const step = metric ? 50 : 2;
		const some = (least: number, most: number) => random.stepped(least * step, most * step, step);
		const flare = random.one(metric ? [1000, 1200, 1500] : [36, 48, 60]);
		const tooNear = (): [number, number] => [some(1, 3), some(6, 24)];
		const cut = (): [number, number] => [some(6, 10), some(2, 5)];
		const free = (): [number, number] => [some(7, 12), flare - some(2, 6)];
		return {
			flare,
			head: random.one(metric ? [120, 160] : [4, 6]),
			clear: metric ? 150 : 6,
			places: random.shuffled([tooNear(), cut(), cut(), free()])
		};
	},
	pose
};
