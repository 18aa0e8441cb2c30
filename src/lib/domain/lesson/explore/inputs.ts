/** The numbers of a yard that may be moved, one at a time. */
import type { Plan } from '../../plan';
import type { Yard } from '../../yard';
import { circuitInputs } from './inputs-circuit';
import { houseInputs, lotInputs, spotInputs, treeInputs } from './inputs-garden';
import { placeInputs, yearInputs } from './inputs-place';
import { budgetInputs, ruleInputs } from './inputs-rules';
import { stripInputs } from './inputs-strips';
import type { YardInput } from './types';

/**
 * All of them, each with its range and its stops. `plan` is the yard's: what was not told starts from what the plan takes. Pure and total; what it lists may
 * still move nothing in this yard: `tryOut` says.
 */
export const inputsOf = (yard: Yard, plan: Plan): YardInput[] => [
	...yearInputs(yard, plan),
	...circuitInputs(yard, plan),
	...treeInputs(yard, plan),
	...stripInputs(yard, plan),
	...houseInputs(yard, plan),
	...spotInputs(yard, plan),
	...lotInputs(yard, plan),
	...placeInputs(yard, plan),
	...budgetInputs(yard, plan),
	...ruleInputs(yard, plan)
];
