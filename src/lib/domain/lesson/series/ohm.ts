/** Ohm's law, asked for each of its three quantities. */
import type { ProblemKind, StepRule } from '../types';
import { besideNetwork, resistor, solved } from './network';
import { decimalsFor, given, numberProblem } from './problem';

export interface OhmDrawn {
	asked: 'amps' | 'volts' | 'ohms';
	/** The other two count; the one asked for is worked out. */
	volts: number;
	amps: number;
	ohms: number;
}
const V = (value: number) => given('V', 'volts across it', value, 'V');
const I = (value: number) => given('I', 'amps through it', value, 'A');
const R = (value: number) => given('R', 'its resistance', value, 'Ω');
const source = 'physics';

interface Form {
	symbol: string;
	unit: string;
	label: string;
	expression: string;
	rule: string;
	because: string;
}
const forms: Readonly<Record<OhmDrawn['asked'], Form>> = {
	amps: {
		symbol: 'I',
		unit: 'A',
		label: 'amps through it',
		expression: 'V ÷ R',
		rule: 'Amps are volts shared out over the ohms.',
		because: 'More ohms at the same volts let fewer amps through.'
	},
	volts: {
		symbol: 'V',
		unit: 'V',
		label: 'volts across it',
		expression: 'I × R',
		rule: 'Volts are amps times ohms.',
		because: 'To push the same amps through more ohms takes more volts.'
	},
	ohms: {
		symbol: 'R',
		unit: 'Ω',
		label: 'its resistance',
		expression: 'V ÷ I',
		rule: 'Ohms are volts for each amp.',
		because: 'The fewer amps the same volts push through, the more ohms are in the way.'
	}
};
/** The engine's figure for what is asked: volts and ohms that make the given amps are found by solving for a resistance. */
function engineOf({ asked, volts, amps, ohms }: OhmDrawn): number | null {
	const tried = asked === 'volts' ? amps * ohms : volts;
	const across = asked === 'ohms' ? volts / amps : ohms;
	const solution = solved(besideNetwork(tried, [resistor(across)]));
	if (!solution) return null;
	const through = solution.sourceAmps;
	return asked === 'amps' ? through : asked === 'volts' ? solution.volts[0]! : solution.volts[0]! / through;
}

export const ohmKind: ProblemKind<OhmDrawn> = {
	id: 'series.ohm',
	lesson: 'series',
	title: 'Ohm’s law',
	levels: ['solved', 'all'],
	draw(random) {
		const asked = random.one(['amps', 'volts', 'ohms'] as const);
		// No more than the 24 V of a garden, also where they are worked out.
		return {
			asked,
			volts: random.stepped(2, 24, 0.5),
			amps: random.stepped(0.2, 2, 0.1),
			ohms: random.stepped(2, asked === 'volts' ? 12 : 40, 0.5)
		};
	},
	pose(drawn) {
		const { asked, volts, amps, ohms } = drawn;
		const form = forms[asked];
		const told = {
			amps: [V(volts), R(ohms)],
			volts: [I(amps), R(ohms)],
			ohms: [V(volts), I(amps)]
		}[asked];
		const value = { amps: volts / ohms, volts: amps * ohms, ohms: volts / amps }[asked];
		if (!(value > 0) || !Number.isFinite(value)) return null;
		const [a, b] = told;
		const rule: StepRule = { ...form, decimals: Math.min(3, decimalsFor(value)), source };
		return numberProblem({
			kind: ohmKind.id,
			story: {
				amps: `A resistor of ${b!.text} Ω lies across a supply of ${a!.text} V.`,
				volts: `A current of ${a!.text} A flows through a resistor of ${b!.text} Ω.`,
				ohms: `A supply of ${a!.text} V drives ${b!.text} A through a resistor.`
			}[asked],
			ask: {
				amps: 'How many amps flow?',
				volts: 'How many volts are across it?',
				ohms: 'How many ohms has it?'
			}[asked],
			givens: told,
			rules: [rule],
			because: form.because,
			engine: engineOf(drawn)
		});
	}
};
