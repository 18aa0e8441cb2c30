/** What the rows are worked out from, and how a row is made of measures. Metres. */
import type { Fixture } from '../../../placement';
import type { Plan } from '../../../plan';
import type { Finding } from '../../../shared/findings';
import { rules, type RuleId } from '../../../shared/rules';
import { sources } from '../../../shared/sources';
import { formatLength, formatLengthFinely, type UnitSystem } from '../../../shared/units';
import type { Working } from '../../../shared/working';
import type { Exercise, LightKind, MarkState, RuleRow } from '../types';

export interface PlacedLight {
	kind: LightKind;
	fixture: Fixture;
	/** Of its head seen from above. */
	radius: number;
}
export interface Ground {
	exercise: Exercise;
	plan: Plan;
	lights: PlacedLight[];
	/** Lights that could not be taken. */
	refused: number;
	supplyTold: boolean;
	units: UnitSystem;
}
/** On the limit counts as held, and so does what a pencil's line on paper is wide: 5 mm of the yard. */
export const tolerance = 0.005;
/** A miss of no more than this part of the limit is `nearly`: our assumption. */
const nearlyWithin = 0.2;

/** A measure against its limits. */
export interface Measure {
	lights: string[];
	/** `P2 stands`, `The entry has its nearest light`. */
	subject: string;
	value: number;
	low: number | null;
	high: number | null;
	/** `from the edge of the drive`. */
	from: string;
	/** Said in place of the measure where it breaks a limit and a figure says less. */
	fault?: string | undefined;
	working?: Working | undefined;
}
export const missOf = ({ value, low, high }: Pick<Measure, 'value' | 'low' | 'high'>): number =>
	Math.max(0, low === null ? 0 : low - value, high === null ? 0 : value - high);
const roomOf = ({ value, low, high }: Measure): number =>
	Math.min(low === null ? Infinity : value - low, high === null ? Infinity : high - value);
const isHeld = (measure: Measure): boolean => missOf(measure) <= tolerance + 1e-9;
const isNear = (measure: Measure): boolean => {
	const limit = measure.low !== null && measure.value < measure.low ? measure.low : (measure.high ?? 0);
	return missOf(measure) <= nearlyWithin * Math.abs(limit) + 1e-9;
};

/** Both as texts, finer where they would read the same and are not. */
function apart(value: number, limit: number, units: UnitSystem): [string, string] {
	const coarse = [formatLength(value, units), formatLength(limit, units)] as [string, string];
	return coarse[0] === coarse[1] && Math.abs(value - limit) > 5e-4
		? [formatLengthFinely(value, units), formatLengthFinely(limit, units)]
		: coarse;
}
/** `P2 stands 60 mm from the edge of the drive; 150 mm is the least.` */
export function sentenceOf(measure: Measure, units: UnitSystem): string {
	const { subject, value, low, high, from, fault } = measure;
	if (fault !== undefined && !isHeld(measure)) return fault;
	const tooFar = high !== null && (low === null || value > high);
	if (low !== null && high !== null && value >= low && value <= high) {
		const words = [value, low, high].map((metres) => formatLength(metres, units));
		return `${subject} ${words[0]} ${from}; ${words[1]} to ${words[2]} is right.`;
	}
	const [found, limit] = apart(value, (tooFar ? high : low) ?? 0, units);
	return `${subject} ${found} ${from}; ${limit} is the ${tooFar ? 'most' : 'least'}.`;
}

/** More than that are counted, not told one by one. */
const mostTold = 4;
export function told(facts: readonly string[]): string[] {
	const unique = [...new Set(facts)];
	const left = unique.length - mostTold;
	return left > 0 ? [...unique.slice(0, mostTold), `And ${left} more like that.`] : unique;
}
export function rowOf(
	rule: RuleId,
	state: MarkState,
	facts: readonly string[],
	more: { hint?: string; lights?: readonly string[]; working?: Working | null | undefined } = {}
): RuleRow {
	return {
		rule,
		title: rules[rule].title,
		state,
		facts: told(facts),
		hint: state === 'not' || state === 'nearly' ? (more.hint ?? '') : '',
		lights: [...new Set(more.lights ?? [])],
		working: more.working ?? null,
		source: sources[rules[rule].source].text
	};
}
/** A rule that is a matter of measures: held when all are, nearly when none is far off. `none`: why it does not apply without any. */
export function measured(
	rule: RuleId,
	measures: readonly Measure[],
	{ units }: Pick<Ground, 'units'>,
	{ hint, none }: { hint: string; none: string }
): RuleRow {
	if (measures.length === 0) return rowOf(rule, 'none', [none]);
	const broken = measures.filter((one) => !isHeld(one)).toSorted((a, b) => missOf(b) - missOf(a));
	if (broken.length === 0) {
		const closest = measures.toSorted((a, b) => roomOf(a) - roomOf(b))[0]!;
		const all =
			measures.length > 1
				? [`${measures.length === 2 ? 'Both' : `All ${measures.length}`} keep to it; the closest:`]
				: [];
		return rowOf(rule, 'held', [[...all, sentenceOf(closest, units)].join(' ')], {
			lights: closest.lights,
			working: closest.working
		});
	}
	return rowOf(
		rule,
		broken.every(isNear) ? 'nearly' : 'not',
		broken.map((one) => sentenceOf(one, units)),
		{ hint, lights: broken.flatMap(({ lights }) => lights), working: broken[0]!.working }
	);
}

/** What the plan says of a light set by hand, as a fact: without what it says of whose it is. */
export const factOf = ({ message }: Pick<Finding, 'message'>): string =>
	message.replace(', added by you,', '').replace(/ Move it, or take it away\.$/, '');
export const findingsOf = ({ plan }: Ground, rule: RuleId): Finding[] =>
	plan.findings.filter((finding) => finding.rule === rule && finding.about?.kind === 'fixture');
/** Label of the light that a finding is about. */
export const labelFor = ({ plan }: Ground, { about }: Finding): string[] =>
	plan.fixtures.filter(({ id }) => about?.kind === 'fixture' && about.id === id).map(({ label }) => label);
/** A working in metres. Inputs: symbol, name, value. */
export const lengthWorking = (
	rule: RuleId,
	label: string,
	value: number,
	expression: string,
	inputs: readonly (readonly [symbol: string, name: string, value: number])[]
): Working => ({
	label,
	value,
	unit: 'm',
	decimals: 2,
	rule: rules[rule].says,
	expression,
	inputs: inputs.map(([symbol, name, metres]) => ({ symbol, name, value: metres, unit: 'm' })),
	source: rules[rule].source
});
