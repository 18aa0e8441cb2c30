/** Light that a filament lamp gives at fewer volts. */
import { filament } from '../../circuit';
import { rules } from '../../shared/rules';
import { given, numberProblem } from '../series/problem';
import type { ProblemKind, StepRule } from '../types';

export interface LightDrawn {
	volts: number;
	amps: number;
	/** Ohms of the cable, there and back. */
	ohms: number;
}
const exponent = rules['lamp.halogen'].figures.light;
/** The law is published for about a tenth up and down. */
const least = 0.9;
const steps: StepRule[] = [
	{
		symbol: 'D',
		label: 'volts lost in the cable',
		expression: 'I × R',
		unit: 'V',
		decimals: 2,
		rule: 'Volts lost are amps times ohms.',
		source: 'physics'
	},
	{
		symbol: 'V',
		label: 'volts at the lamp',
		expression: 'U − D',
		unit: 'V',
		decimals: 2,
		rule: 'What the cable leaves of the supply’s volts.',
		source: 'physics'
	},
	{
		symbol: 'f',
		label: 'part of its rated volts',
		expression: 'V ÷ U',
		unit: '',
		decimals: 4,
		rule: 'The volts it gets over those it is made for.',
		source: 'physics'
	},
	{
		symbol: 'F',
		label: 'light, of what it is made for',
		expression: `100 × f ^ ${exponent}`,
		unit: '%',
		decimals: 0,
		rule: `The light of a filament goes with the volts to the power ${exponent}.`,
		source: 'finkBeaty'
	}
];

export const lightKind: ProblemKind<LightDrawn> = {
	id: 'drop.light',
	lesson: 'drop',
	title: 'Light left at fewer volts',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random) => ({
		volts: 12,
		amps: random.stepped(0.8, 5, 0.1),
		ohms: random.stepped(0.05, 0.6, 0.01)
	}),
	pose({ volts, amps, ohms }) {
		const part = 1 - (amps * ohms) / volts;
		if (part < least || part > 0.995) return null;
		return numberProblem({
			kind: lightKind.id,
			story: `A filament lamp for ${volts} V hangs on a ${volts} V supply. Its cable has ${ohms} Ω there and back and carries ${amps} A. The light of a filament goes with the volts to the power ${exponent}.`,
			ask: 'How much of its light is left, in per cent?',
			givens: [
				given('U', 'rated volts, and those of the supply', volts, 'V'),
				given('I', 'amps in the cable', amps, 'A'),
				given('R', 'ohms of the cable, there and back', ohms, 'Ω')
			],
			rules: steps,
			because:
				'A little less of the volts is a lot less of a filament’s light; an LED lamp inside its window would keep all of it.',
			engine: 100 * filament(part).light
		});
	}
};
