import { rules } from '../../shared/rules';
import type { UnitSystem } from '../../shared/units';
import { uplightCount } from '../../placement';
import { given, tapeOf, withUnit } from '../tape';
import type { Given, Problem, ProblemKind } from '../types';
import { treeOf } from './tree';

/** Canopies in the long unit. */
export interface Row {
	spreads: readonly number[];
	/** What the totals offered begin with. */
	first: number;
}
/** Rule tree.count (common practice, no source), feet rounded as a tape is read. */
const said: Readonly<Record<UnitSystem, { one: number; two: number; further: number }>> = {
	metres: { one: 3.5, two: 7.5, further: 3.5 },
	feet: { one: 11.5, two: 24.5, further: 11.5 }
};
/** Nearer to where the number changes than this part of a canopy, rounding would decide. */
const doubtful = 0.04;

function isPlain(spread: number, units: UnitSystem): boolean {
	const { one, two, further } = said[units];
	const ends = [one, two, two + further, two + 2 * further];
	return ends.every((end) => Math.abs(spread - end) > doubtful * spread);
}
const lightsFor = (spread: number, units: UnitSystem): number => {
	const metres = spread * tapeOf(units).long.metres;
	return uplightCount(treeOf({ spread: metres, height: 2 * metres, crownBase: 0.5 * metres, trunk: 0.2 }, units));
};

function pose({ spreads, first }: Row, units: UnitSystem): Problem | null {
	const { one, two } = rules['tree.count'].figures;
	const { unit, metres } = tapeOf(units).long;
	const rule = said[units];
	// The rule as said is the engine's, to the half foot.
	if (Math.abs(rule.one * metres - one) > 0.05 || Math.abs(rule.two * metres - two) > 0.05) return null;
	if (spreads.length === 0 || !spreads.every((spread) => isPlain(spread, units))) return null;
	const [o, t, f] = [
		given('o', 'widest canopy for one light', rule.one, 1, unit),
		given('t', 'widest canopy for two', rule.two, 1, unit),
		given('f', 'wider by, for one more', rule.further, 1, unit)
	];
	const canopies: Given[] = spreads.map((spread, index) =>
		given(`S${index + 1}`, `canopy ${index + 1}`, spread, 1, unit)
	);
	const counts = spreads.map((spread) => lightsFor(spread, units));
	const total = counts.reduce((sum, count) => sum + count, 0);
	const choices = [0, 1, 2, 3].map((more) => first + more);
	if (!choices.includes(total)) return null;
	return {
		kind: 'canopy.count',
		story: `A tree takes one uplight up to a canopy ${withUnit(o)} across and two up to ${withUnit(t)}. From there it takes three, and one more for each further ${withUnit(f)}. Round crowns stand in a row, ${canopies
			.map(withUnit)
			.join(', ')
			.replace(/, (?=[^,]*$)/, ' and ')} across.`,
		ask: 'How many uplights do they take together?',
		givens: [o, t, f, ...canopies],
		steps: [],
		answer: { type: 'choice', choices: choices.map(String), right: choices.indexOf(total) },
		because: `They take ${counts.join(' + ')} = ${total}, each by its own canopy.`,
		engine: total
	};
}

/** How many uplights a row of trees takes. */
export const count: ProblemKind<Row> = {
	id: 'canopy.count',
	lesson: 'canopy',
	title: 'How many uplights',
	levels: ['solved', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		const spread = () => random.stepped(metric ? 2 : 6, metric ? 12 : 40, 0.5);
		return { spreads: [spread(), spread(), spread()], first: random.whole(3, 9) };
	},
	pose
};
