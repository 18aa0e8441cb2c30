import type { RuleId } from '../shared/rules';
import { rules } from '../shared/rules';
import type { SourceId } from '../shared/sources';
import type { Working, WorkingInput } from '../shared/working';
import { ruleFor, type Cause } from './conflicts';
import type { Drafting } from './drafting';
import type { Reason } from './types';

/** A reason of a fixture; the source is the rule's unless another is named. */
export const reason = (
	rule: RuleId,
	value: number | null,
	unit: string,
	because: string,
	more: { source?: SourceId; working?: Working; notHere?: true } = {}
): Reason => ({
	rule,
	value,
	unit,
	because,
	source: more.source ?? rules[rule].source,
	...(more.working ? { working: more.working } : {}),
	...(more.notHere ? { notHere: more.notHere } : {})
});

export const input = (symbol: string, name: string, value: number, unit: string, from?: Working): WorkingInput => ({
	symbol,
	name,
	value,
	unit,
	...(from ? { from } : {})
});

/** Why a fixture is not where it would stand with nothing in the way: the rule, what was there, and how far it moved. */
export const moved = (
	d: Pick<Drafting, 'len' | 'because' | 'own'>,
	cause: Cause,
	metres: number,
	where: string
): Reason => {
	// The room before doors is a figure of another rule than the one that keeps it free.
	const tail =
		cause === 'door' || cause === 'garage'
			? d.own.tail(`place.clear/${cause === 'door' ? 'doorFront' : 'garageFront'}`)
			: '';
	const because = `Not ${where}, ${d.len(metres)} from here: ${d.because(cause)}.${tail}`;
	return reason(ruleFor(cause), metres, 'm', because, { notHere: true });
};
