/** Steps that others wait for: where a later one is ticked while they are open, that is said. */
import type { ChecklistPart, ChecklistStep } from '../types';
import type { StepProgress } from './progress';

interface Guard {
	/** Its step. */
	id: string;
	guards: (step: ChecklistStep, part: ChecklistPart['id']) => boolean;
	says: string;
}
const inParts =
	(...parts: ChecklistPart['id'][]): Guard['guards'] =>
	(_, part) =>
		parts.includes(part);
const powered = inParts('first-night');
const digs = new Set(['post', 'set-stakes', 'set-flush']);

/** In the order of the list. Common practice, no source; rules dig.notice, supply.receptacle and supply.secondary say why. */
const guards: readonly Guard[] = [
	{
		id: 'stops',
		guards: inParts('supply', 'trench', 'fixtures', 'connections', 'first-night'),
		says: 'Work is ticked while the plan still has a stop. Put that right before you go on.'
	},
	{
		id: 'dig-notice',
		guards: ({ id }, part) => part === 'trench' || digs.has(id),
		says: 'Digging is ticked while the call before it is open. Dig no further until every utility has answered.'
	},
	{
		id: 'receptacle',
		guards: powered,
		says: 'The first night is begun while the receptacle is open. Plug nothing in until an electrician has seen to it.'
	},
	{
		id: 'gfci',
		guards: powered,
		says: 'The first night is begun while the GFCI is open. Unplug until the receptacle is behind one; fitting it is work for a licensed electrician.'
	},
	{
		id: 'cover',
		guards: powered,
		says: 'The first night is begun while the cover of the receptacle is open. Leave nothing plugged in, in the wet, without one.'
	},
	{
		id: 'unplug',
		guards: ({ id }, part) => part === 'connections' && id !== 'unplug',
		says: 'Work on connections is ticked while the transformer is not ticked as unplugged. See to its plug first.'
	},
	{
		id: 'tug',
		guards: powered,
		says: 'The first night is begun while the last look at the connections is open. Unplug, and pull gently on each.'
	},
	{
		id: 'gfci-test',
		guards: ({ id }, part) => part === 'first-night' && id !== 'gfci-test',
		says: 'The first night is ticked while the GFCI test is open. Press its test button before you measure or aim.'
	}
];

export interface GuardNote {
	/** The step that is open. */
	step: ChecklistStep;
	/** The first step ticked that waits for it. */
	before: ChecklistStep;
	says: string;
}
const isBegun = ({ done, was, items }: StepProgress): boolean =>
	done || was !== null || items.some((item) => item.done || item.was !== null);

/** `steps`: all of the list, in order, each with its part. */
export function guardNotes(steps: readonly (StepProgress & { part: ChecklistPart['id'] })[]): GuardNote[] {
	return guards.flatMap(({ id, guards: waits, says }): GuardNote[] => {
		const open = steps.find(({ step, done }) => step.id === id && !done);
		const before = open && steps.find((one) => waits(one.step, one.part) && isBegun(one));
		return open && before ? [{ step: open.step, before: before.step, says }] : [];
	});
}
/** The guards of a list and the steps that wait for each, for checks of their order. */
export const guarded = (parts: readonly ChecklistPart[]): { guard: string; waiting: string[] }[] =>
	guards.map(({ id, guards: waits }) => ({
		guard: id,
		waiting: parts.flatMap((part) => part.steps.filter((step) => waits(step, part.id)).map((step) => step.id))
	}));
