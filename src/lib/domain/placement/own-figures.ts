/** What the plan says where a figure of a rule is the person's own, and of figures that it does not apply. */
import type { Finding } from '../shared/findings';
import { formatFigure, labelOf } from '../shared/rule-words';
import type { RuleId } from '../shared/rules';
import { isSettable, partsOfKey, settings, usual, type FiguresInForce, type SettableKey } from '../shared/settings';
import type { UnitSystem } from '../shared/units';
import type { Reason } from './types';

export interface OwnFigures extends FiguresInForce {
	/** Says of a reason that figures of its rule are the person's own, and which. */
	reason: (reason: Reason) => Reason;
	/** The same of the words of a finding. */
	words: (rule: string | null, message: string) => string;
	/** The end of a message that hangs on one figure; empty while that is the trade's. */
	tail: (key: SettableKey) => string;
}

export function ownFigures(force: FiguresInForce, units: UnitSystem): OwnFigures {
	const tails = new Map<string, string>([...force.own].map(([rule, keys]) => [rule, tailOf(force, keys, units)]));
	const words: OwnFigures['words'] = (rule, message) => {
		const tail = rule === null ? undefined : tails.get(rule);
		// A light kept by hand brings its reasons with it, already so said.
		return tail === undefined || message.includes(tail) ? message : message + tail;
	};
	return {
		...force,
		words,
		tail: (key) => (force.own.get(partsOfKey(key)[0])?.includes(key) ? tailOf(force, [key], units) : ''),
		reason(reason) {
			if (!tails.has(reason.rule)) return reason;
			const { working } = reason;
			return {
				...reason,
				because: words(reason.rule, reason.because),
				source: 'asked',
				...(working && { working: { ...working, rule: words(reason.rule, working.rule) } })
			};
		}
	};
}

function tailOf({ figures }: FiguresInForce, keys: readonly SettableKey[], units: UnitSystem): string {
	const list = keys.map((key) => {
		const [rule, figure] = partsOfKey(key);
		const { unit } = settings[key];
		const value = (figures[rule] as Readonly<Record<string, number>>)[figure]!;
		return `${labelOf(key)} ${formatFigure(value, unit, units)} (the trade’s is ${formatFigure(usual(key), unit, units)})`;
	});
	return ` Your own ${list.length === 1 ? 'figure' : 'figures'}: ${list.join('; ')}.`;
}

/** One note for each figure that is beyond its range, one for all that are unknown. */
export function refusedFigures({ refused }: FiguresInForce, units: UnitSystem): Finding[] {
	const note = (rule: RuleId | null, message: string): Finding => ({
		code: 'placement.rule-figure',
		rank: 'note',
		message,
		about: null,
		rule
	});
	const strange = refused.filter(({ key }) => !isSettable(key));
	const named = strange.slice(0, 3).map(({ key }) => `“${key}”`);
	return [
		...refused.flatMap(({ key, value }) => {
			if (!isSettable(key)) return [];
			const { unit, least, most } = settings[key];
			const read = (figure: number): string => formatFigure(figure, unit, units);
			const message = `Your own figure for “${labelOf(key)}”, ${read(value)}, is not from ${read(least)} to ${read(most)}. The trade’s ${read(usual(key))} is used. Yours is kept: set it again, or take it away, on the rules page.`;
			return [note(partsOfKey(key)[0], message)];
		}),
		...(strange.length > 0
			? [
					note(
						null,
						`${strange.length === 1 ? 'A figure' : `${strange.length} figures`} in this yard ${strange.length === 1 ? 'is' : 'are'} of no rule whose figures may be set (${named.join(', ')}${strange.length > 3 ? ', …' : ''}): kept, and not used.`
					)
				]
			: [])
	];
}
