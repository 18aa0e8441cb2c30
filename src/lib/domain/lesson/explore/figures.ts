/** Every figure of a plan that comes with its working, in the order in which the pages show them. */
import type { Plan } from '../../plan';
import { capital } from '../../yard';
import { given } from './figure';
import { lampFigures, reasonFigures } from './figures-lights';
import { runFigures, supplyFigures } from './figures-runs';
import { shoppingFigures, yearFigures } from './figures-year';
import type { PlanFigure } from './types';

/** Light on what it lands on, lux. */
const litFigures = ({ light }: Plan): PlanFigure[] =>
	light.receivers.flatMap(({ id, kind, name, working }) =>
		working ? [given(`lit/${kind}/${id}`, capital(name), working)] : []
	);

/** All figures of a plan, flat. Keys are unique. Pure; none of the workings that the plan does not hold is made yet. */
export const figuresOf = (plan: Plan): PlanFigure[] => [
	...lampFigures(plan),
	...reasonFigures(plan),
	...runFigures(plan),
	...supplyFigures(plan),
	...litFigures(plan),
	...yearFigures(plan),
	...shoppingFigures(plan)
];

/**
 * The figure that a page shows with this label and text; `at` is the id of its light or run, where several have one like it. Null where the plan has
 * none: the page shows something that is no figure of the plan.
 */
export function findFigure(
	figures: readonly PlanFigure[],
	{ label, text, at }: { label: string; text: string; at?: string | undefined }
): PlanFigure | null {
	const alike = figures.filter((figure) => figure.label === label);
	const near = alike.filter(({ key }) => at && (key.startsWith(`light/${at}/`) || key.startsWith(`run/${at}/`)));
	const called = near.length > 0 ? near : alike;
	return called.find((figure) => figure.text === text) ?? called[0] ?? null;
}
