/** The current that a supply gives to lamps in parallel. */
import type { ProblemKind, StepRule } from '../types';
import { besideNetwork, filamentLamp, solved } from './network';
import { given, numberProblem } from './problem';

export interface BesideDrawn {
	volts: number;
	/** Two kinds of lamp, each for these volts. */
	lamps: { count: number; watts: number }[];
	/** `A front walk`; absent: a garden. */
	place?: string;
}
const source = 'physics';
const places = ['A patio', 'A front walk', 'A pond', 'A hedge', 'A terrace', 'A gate'];

export const besideAmpsKind: ProblemKind<BesideDrawn> = {
	id: 'series.beside-amps',
	lesson: 'series',
	title: 'Amps of lamps in parallel',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random) {
		const [first, second] = random.shuffled([5, 10, 15, 20, 35]);
		return {
			volts: 12,
			place: random.one(places),
			lamps: [
				{ count: random.whole(2, 6), watts: first! },
				{ count: random.whole(2, 5), watts: second! }
			]
		};
	},
	pose({ volts, lamps: [a, b], place = 'A garden' }) {
		if (!a || !b) return null;
		const rules: StepRule[] = [
			{
				symbol: 'P1',
				label: `watts of the ${a.watts} W lamps`,
				expression: 'n1 × W1',
				unit: 'W',
				decimals: 0,
				rule: 'Lamps times the watts of one.',
				source
			},
			{
				symbol: 'P2',
				label: `watts of the ${b.watts} W lamps`,
				expression: 'n2 × W2',
				unit: 'W',
				decimals: 0,
				rule: 'Lamps times the watts of one.',
				source
			},
			{
				symbol: 'I',
				label: 'amps from the supply',
				expression: '(P1 + P2) ÷ V',
				unit: 'A',
				decimals: 2,
				rule: 'In parallel the currents add up: all watts over the volts.',
				source
			}
		];
		const loads = [a, b].flatMap(({ count, watts }) => Array.from({ length: count }, () => filamentLamp(watts, volts)));
		return numberProblem({
			kind: besideAmpsKind.id,
			story: `${place} has ${a.count} filament lamps of ${a.watts} W and ${b.count} of ${b.watts} W, all for ${volts} V. They hang in parallel on a ${volts} V supply, on short thick cable.`,
			ask: 'How many amps does the supply give?',
			givens: [
				given('n1', `lamps of ${a.watts} W`, a.count, ''),
				given('W1', 'watts of one of them', a.watts, 'W'),
				given('n2', `lamps of ${b.watts} W`, b.count, ''),
				given('W2', 'watts of one of those', b.watts, 'W'),
				given('V', 'volts of the supply', volts, 'V')
			],
			rules,
			because: 'Each lamp has the whole volts to itself, so each takes its own amps and the supply gives them all.',
			engine: solved(besideNetwork(volts, loads))?.sourceAmps ?? null
		});
	}
};
