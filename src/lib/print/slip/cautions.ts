/**
 * The three cautions on a slip, in the plan's own words. The rule: first the mains side, then the call before digging, always; third what this
 * yard most needs, the first of these that it has: something to put right before any digging, water, a way under paving, hot lamps, a
 * transformer that is nearly full, tree roots, and else the power off while wires are joined.
 */
import type { Solution } from '../../domain/kits/types';
import type { Plan } from '../../domain/plan';
import type { ChecklistStep } from '../../domain/checklist';

export interface SlipCaution {
	title: string;
	text: string;
}
/** Said after the three: what comes before the slip. */
export const comesFirst =
	'Local code comes first, then the makers’ instructions. Mains work is for a licensed electrician. Where they differ from this slip, they are right.';

/** Of the load limit; what is fuller has no room for a light more. Common practice, no source. */
const nearlyFull = 0.9;
/**
 * What the plan says of its own cable and transformer. What is bought is another, and was solved by itself: `Judged` says how it does.
 */
const ofItsOwnCircuit =
	/^cable\.(no-|cable-amps|secondary-amps|transformer-load|lamp-|uneven|bad-network|owned-|hand-)/;
const crossings = ['cable.bore-needed', 'cable.joint-shallow', 'cable.drive-depth'];
const roots = ['cable.roots', 'placement.roots'];

const stepsOf = (plan: Plan, part: string): ChecklistStep[] =>
	plan.checklist.parts.find(({ id }) => id === part)?.steps ?? [];
const found = (plan: Plan, codes: readonly string[]): string | null => {
	for (const code of codes) {
		const finding = plan.findings.find((one) => one.code === code);
		if (finding) return finding.message;
	}
	return null;
};

function mainsSide(plan: Plan): SlipCaution {
	const steps = stepsOf(plan, 'supply');
	const step = (id: string) => steps.find((one) => one.id === id);
	const told = step('receptacle') ?? step('gfci');
	return {
		title: 'Mains side',
		text: [
			told?.text ??
				'Plug the transformer only into a GFCI-protected outdoor receptacle whose cover closes over the plug.',
			step('transformer')?.cautions.at(-1) ?? 'Never open or cut a transformer, and use no extension cord.'
		].join(' ')
	};
}
function beforeDigging(plan: Plan): SlipCaution {
	const step = stepsOf(plan, 'before').find(({ id }) => id === 'dig-notice');
	return {
		title: 'Before you dig',
		text: step
			? [step.text, ...step.cautions.slice(0, 1)].join(' ')
			: 'Call the dig-notice service (811 in the US) at least two full working days before you dig.'
	};
}
const hotLamp = (plan: Plan): string | null =>
	stepsOf(plan, 'fixtures')
		.find(({ id, defers }) => id.startsWith('fixture/') && defers.length > 0)
		?.cautions.at(-1) ?? null;
function fullTransformer({ judged }: Solution): string | null {
	if (judged.loadVoltAmps <= nearlyFull * judged.limitVoltAmps) return null;
	const [load, limit] = [judged.loadVoltAmps, judged.limitVoltAmps].map(Math.round);
	return `The transformer carries ${load} VA of the ${limit} it may. Put no further light on it without a larger one.`;
}
/** The third: what it is called, and its words where this yard has it. The gravest first; what is wrong with the receptacle is in the first caution. */
const candidates: { title: string; of: (plan: Plan, solution: Solution) => string | null }[] = [
	{
		title: 'Put right first',
		of: ({ findings }) =>
			findings.find(
				({ rank, code, about }) => rank === 'stop' && !ofItsOwnCircuit.test(code) && about?.id !== 'receptacle'
			)?.message ?? null
	},
	{
		title: 'Water',
		of: (plan) => stepsOf(plan, 'fixtures').find(({ id }) => id === 'fixtures-measure')?.cautions[0] ?? null
	},
	{ title: 'Under paving', of: (plan) => found(plan, crossings) },
	{ title: 'Hot lamps', of: hotLamp },
	{ title: 'Load', of: (_, solution) => fullTransformer(solution) },
	{ title: 'Tree roots', of: (plan) => found(plan, roots) },
	{
		title: 'Power off',
		of: (plan) => stepsOf(plan, 'connections').find(({ id }) => id === 'unplug')?.cautions[0] ?? null
	}
];

/** Three at most, in the order in which they are printed; two where the plan has nothing to lay. */
export function slipCautions(plan: Plan, solution: Solution): SlipCaution[] {
	const third = candidates.flatMap(({ title, of }) => {
		const text = of(plan, solution);
		return text === null ? [] : [{ title, text }];
	})[0];
	return [mainsSide(plan), beforeDigging(plan), ...(third ? [third] : [])];
}
