import { metresPerFoot, metresPerInch, type UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, withUnit } from '../tape';
import type { Given, Problem, ProblemKind, StepRule } from '../types';

/** One length, in the yard or on paper. `ratio`: one to so many. */
export interface OnPaper {
	what: string;
	ratio: number;
	way: 'to paper' | 'from paper';
	/** Yard: metres or feet. Paper: millimetres or inches. */
	length: number;
}
/** Scales of a scale rule, as the packet's plan has them. */
export const paperScales: Readonly<Record<UnitSystem, readonly { ratio: number; text: string }[]>> = {
	metres: [50, 100, 200].map((ratio) => ({ ratio, text: `1:${ratio}` })),
	feet: [
		{ ratio: 48, text: '1/4 in = 1 ft' },
		{ ratio: 96, text: '1/8 in = 1 ft' },
		{ ratio: 192, text: '1/16 in = 1 ft' }
	]
};
const lengths = ['the walk', 'the drive', 'the house front', 'the cable trench', 'the hedge'] as const;

type Rule = Pick<StepRule, 'symbol' | 'label' | 'expression' | 'unit' | 'decimals' | 'rule'>;
const metricSteps = {
	'to paper': [
		{
			symbol: 'k',
			label: 'the length in millimetres',
			expression: '1000 × L',
			unit: 'mm',
			decimals: 0,
			rule: 'A metre is 1000 mm.'
		},
		{ symbol: 'p', label: 'on paper', expression: 'k ÷ n', unit: 'mm', decimals: 1, rule: 'Divide by the scale.' }
	],
	'from paper': [
		{
			symbol: 'k',
			label: 'in the yard, in millimetres',
			expression: 'p × n',
			unit: 'mm',
			decimals: 0,
			rule: 'Multiply by the scale.'
		},
		{ symbol: 'L', label: 'in the yard', expression: 'k ÷ 1000', unit: 'm', decimals: 2, rule: 'A metre is 1000 mm.' }
	]
} satisfies Record<OnPaper['way'], Rule[]>;
// A scale of so many inches to the foot is a ratio of twelve inches to these.
const feetSteps = {
	'to paper': [
		{
			symbol: 'k',
			label: 'the length in inches',
			expression: '12 × L',
			unit: 'in',
			decimals: 0,
			rule: 'A foot is 12 in.'
		},
		{ symbol: 'p', label: 'on paper', expression: 'k ÷ n', unit: 'in', decimals: 2, rule: 'Divide by the scale.' }
	],
	'from paper': [
		{
			symbol: 'k',
			label: 'in the yard, in inches',
			expression: 'p × n',
			unit: 'in',
			decimals: 0,
			rule: 'Multiply by the scale.'
		},
		{ symbol: 'L', label: 'in the yard', expression: 'k ÷ 12', unit: 'ft', decimals: 1, rule: 'A foot is 12 in.' }
	]
} satisfies Record<OnPaper['way'], Rule[]>;

/** What the yard's own units give: all lengths through metres. */
function byMetres({ ratio, way, length }: OnPaper, units: UnitSystem): number {
	const [long, short] = units === 'metres' ? [1, 0.001] : [metresPerFoot, metresPerInch];
	return way === 'to paper' ? (length * long) / ratio / short : (length * short * ratio) / long;
}

function pose(drawn: OnPaper, units: UnitSystem): Problem | null {
	const { what, ratio, way, length } = drawn;
	const scale = paperScales[units].find((one) => one.ratio === ratio);
	if (!scale) return null;
	const onPaper = way === 'from paper';
	const metric = units === 'metres';
	const measured: Given = onPaper
		? given('p', `${what}, on paper`, length, metric ? 0 : 2, metric ? 'mm' : 'in')
		: given('L', `${what}, in the yard`, length, 1, metric ? 'm' : 'ft');
	const n = given('n', 'scale, one to', ratio, 0, '');
	const givens = [measured, n];
	const rules = (metric ? metricSteps : feetSteps)[way];
	const steps = reckon(
		givens,
		rules.map((rule) => ({ ...rule, source: 'geometry' }))
	);
	const engine = byMetres(drawn, units);
	if (!agrees(engine, steps)) return null;
	const { unit, decimals, text } = steps.at(-1)!;
	const drawing = metric ? `at ${scale.text}` : `at ${scale.text}, which is 1 to ${n.text}`;
	return {
		kind: 'offset.scale',
		story: onPaper
			? `A plan is drawn ${drawing}. On paper ${what} measures ${withUnit(measured)}.`
			: `A plan is drawn ${drawing}. In the yard ${what} measures ${withUnit(measured)}.`,
		ask: onPaper
			? `How long is it in the yard? Give ${metric ? 'metres to two decimals' : 'feet to one decimal'}.`
			: `How long is it on paper? Give ${metric ? 'millimetres to one decimal' : 'inches to two decimals'}.`,
		givens,
		steps,
		answer: { type: 'number', text, unit, decimals },
		because: 'Every length on the paper is the same part of its length in the yard.',
		engine
	};
}

/** A length on paper at a scale, and back. */
export const paper: ProblemKind<OnPaper> = {
	id: 'offset.scale',
	lesson: 'offset',
	title: 'A length on paper, and back in the yard',
	levels: ['solved', 'one', 'all'],
	draw(random, units) {
		const { ratio } = random.one(paperScales[units]);
		const way = random.one(['to paper', 'from paper'] as const);
		const metric = units === 'metres';
		const length =
			way === 'to paper'
				? random.stepped(metric ? 2 : 6, metric ? 18 : 60, metric ? 0.1 : 0.5)
				: random.stepped(metric ? 20 : 0.5, metric ? 150 : 6, metric ? 1 : 0.25);
		return { what: random.one(lengths), ratio, way, length };
	},
	pose
};
