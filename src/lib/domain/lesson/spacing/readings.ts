/** Five readings of a light meter along a walk: average, evenness, and what the rules say of them. Lux. */
import { Tally } from '../../light';
import { fixed } from '../../shared/show-working';
import { rules } from '../../shared/rules';
import type { Random } from '../random';
import { agrees, reckon } from '../reckon';
import { given } from '../tape';
import type { Given, Problem, ProblemKind, Step, StepRule } from '../types';

/** Five of them, above zero. */
export interface DrawnReadings {
	lux: readonly number[];
}
const listed = (texts: readonly string[]): string => `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)!}`;
const decimalsOf = (lux: readonly number[]): number => (lux.every(Number.isInteger) ? 0 : 1);

/** Under a light, and falling off to midway: readings as a walk has them, in any order. */
function drawReadings(random: Random): DrawnReadings {
	const least = random.stepped(0.5, 3, 0.1);
	const most = random.stepped(6, 16, 0.5);
	const between = [random.stepped(2, 6, 0.5), random.stepped(3, 8, 0.5), random.stepped(3, 10, 0.5)];
	return { lux: random.shuffled([least, most, ...between]) };
}
interface Read {
	givens: Given[];
	steps: Step[];
	/** By the light stage. */
	average: number;
	evenness: number;
	story: string;
}
/** Null where they are not five readings above zero. */
function read({ lux }: DrawnReadings): Read | null {
	if (lux.length !== 5 || lux.some((one) => !(one > 0))) return null;
	const tally = new Tally();
	for (const one of lux) tally.add(one, 0);
	const { average, evenness, least } = tally.levels();
	if (evenness === null) return null;
	const givens = lux.map((one, i) => given(`E${i + 1}`, `reading ${i + 1}`, one, decimalsOf(lux), 'lx'));
	const darkest = givens[lux.indexOf(least)]!.symbol;
	const all: StepRule[] = [
		{
			symbol: 'S',
			label: 'all readings added up',
			expression: givens.map(({ symbol }) => symbol).join(' + '),
			unit: 'lx',
			decimals: 1,
			rule: 'Add them all.',
			source: 'physics'
		},
		{
			symbol: 'A',
			label: 'average',
			expression: 'S ÷ 5',
			unit: 'lx',
			decimals: 2,
			rule: 'The sum over the number of readings.',
			source: 'physics'
		},
		{
			symbol: 'r',
			label: 'average to darkest',
			expression: `A ÷ ${darkest}`,
			unit: '',
			decimals: 1,
			rule: 'The average over the least reading.',
			source: 'iesLevels'
		}
	];
	const story = `Along the middle of a walk a light meter reads ${listed(givens.map(({ text }) => text))} lx, at equal steps.`;
	return { givens, steps: reckon(givens, all), average, evenness, story };
}
export const evennessKind: ProblemKind<DrawnReadings> = {
	id: 'spacing.evenness',
	lesson: 'spacing',
	title: 'Average to darkest',
	levels: ['solved', 'one', 'several', 'all'],
	draw: drawReadings,
	pose(drawn): Problem | null {
		const found = read(drawn);
		if (!found || !agrees(found.evenness, found.steps)) return null;
		const { givens, steps, story, evenness } = found;
		return {
			kind: 'spacing.evenness',
			story,
			ask: 'How many times the darkest reading is the average? To one decimal.',
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit: '', decimals: 1 },
			because: `At most ${rules['path.level'].figures.ratio} is wanted on a walk: the darkest spot is where one stumbles.`,
			engine: evenness
		};
	}
};
const verdicts = [
	'Both rules are kept.',
	'Only the average is enough.',
	'Only the evenness is enough.',
	'Both are broken.'
];
const verdictOf = (bright: boolean, even: boolean): number => (bright ? (even ? 0 : 1) : even ? 2 : 3);

export const rulesKind: ProblemKind<DrawnReadings> = {
	id: 'spacing.rules',
	lesson: 'spacing',
	title: 'Is the walk lit well enough?',
	levels: ['solved', 'one', 'several', 'all'],
	draw: drawReadings,
	pose(drawn): Problem | null {
		const found = read(drawn);
		if (!found) return null;
		const { givens, steps, story, average, evenness } = found;
		const { walk, ratio } = rules['path.level'].figures;
		const right = verdictOf(average >= walk, evenness <= ratio);
		const [mean, even] = steps.slice(1).map(({ text }) => Number(text));
		if (verdictOf(mean! >= walk, even! <= ratio) !== right) return null;
		const [bright, patchy] = [average >= walk, evenness > ratio];
		return {
			kind: 'spacing.rules',
			story,
			ask: `A walk wants ${walk} lx on average, and an average of at most ${ratio} times the darkest spot. Which is true here?`,
			givens,
			steps,
			answer: { type: 'choice', choices: [...verdicts], right },
			because: `The average, ${fixed(average, 2)} lx, is ${bright ? 'at least' : 'less than'} ${walk} lx; it is ${fixed(evenness, 1)} times the darkest, ${patchy ? 'more than' : 'not more than'} ${ratio}.`,
			engine: evenness
		};
	}
};
