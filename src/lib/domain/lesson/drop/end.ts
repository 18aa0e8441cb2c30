/** The drop of one load at the end of its cable, in volts or against 3 %. */
import { rules } from '../../shared/rules';
import type { RunPicture } from '../pictures';
import { decimalsFor, given, numberProblem } from '../series/problem';
import type { ProblemKind, StepRule } from '../types';
import {
	anyLength,
	anySize,
	loopOf,
	ohmsGiven,
	ohmsWords,
	perThousandOf,
	thereAndBack,
	type PerThousand
} from './cable';
import { voltsAtAmps } from './given-amps';

export interface EndDrawn {
	asked: 'volts' | 'percent';
	volts: number;
	/** Watts at those volts, or amperes where a book gives them. */
	load: { watts: number } | { amps: number };
	/** In the unit of the cable. */
	length: number;
	cable: PerThousand;
}
const lighting = rules['cable.drop'].figures.lighting;

const ampsRule: StepRule = {
	symbol: 'I',
	label: 'amps in the cable',
	expression: 'P ÷ V',
	unit: 'A',
	decimals: 3,
	rule: 'Amps are watts over volts.',
	source: 'physics'
};
const lostRule: StepRule = {
	symbol: 'D',
	label: 'volts lost in the cable',
	expression: 'I × R',
	unit: 'V',
	decimals: 2,
	rule: 'Volts lost are amps times ohms.',
	source: 'physics'
};
const percentRule: StepRule = {
	symbol: 'p',
	label: 'of the supply’s volts',
	expression: '100 × D ÷ V',
	unit: '%',
	decimals: 1,
	rule: 'A part in a hundred.',
	source: 'physics'
};
const rulesOf = ({ asked, load, cable }: EndDrawn): StepRule[] => [
	...('watts' in load ? [ampsRule] : []),
	thereAndBack('R', 'L', 'ohms of the cable, there and back', cable.source),
	lostRule,
	...(asked === 'percent' ? [percentRule] : [])
];
const picture = ({ volts, length, cable }: EndDrawn, amount: string): RunPicture => ({
	kind: 'run',
	alt: `A lamp of ${amount} at the end of ${length} ${cable.unit} of cable, on ${volts} V.`,
	arrangement: 'chain',
	unlit: true,
	supply: { text: `${volts} V` },
	lamps: [{ label: amount, volts: '', share: 0, state: 'fine' }],
	cables: [{ length: `${length} ${cable.unit}`, amps: '' }]
});
const because = (percent: number): string =>
	`${percent > 100 * lighting ? 'More' : 'Not more'} than the ${100 * lighting} % that is a usual planning figure for lighting: ${
		percent > 100 * lighting ? 'thicker cable, a shorter way or fewer amps would help.' : 'this cable will do.'
	}`;

export const endKind: ProblemKind<EndDrawn> = {
	id: 'drop.end',
	lesson: 'drop',
	title: 'Volts lost to a lamp at the end of its cable',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random, units) => ({
		asked: random.one(['volts', 'percent'] as const),
		volts: 12,
		load: { watts: random.one([20, 25, 30, 35, 40, 45, 50]) },
		length: anyLength(random, units, 5, 25),
		cable: perThousandOf(anySize(random, units), units)
	}),
	pose(drawn) {
		const { asked, volts, load, length, cable } = drawn;
		const amps = 'watts' in load ? load.watts / volts : load.amps;
		const left = voltsAtAmps(volts, [{ ohms: loopOf(cable, length), amps }]);
		if (!left || decimalsFor(volts - left[0]!) > 4) return null;
		const lost = volts - left[0]!;
		const amount = 'watts' in load ? `${load.watts} W` : `${load.amps} A`;
		const takes =
			'watts' in load
				? `A lamp of ${amount} for ${volts} V hangs`
				: `A load that draws ${amount} from ${volts} V hangs`;
		return numberProblem({
			kind: endKind.id,
			story: `${takes} at the end of ${length} ${cable.unit} of two-conductor cable${cable.name ? `, ${cable.name}` : ''}. One conductor has ${ohmsWords(cable)}. Take the amps as they are at ${volts} V.`,
			ask:
				asked === 'volts'
					? 'How many volts are lost in the cable?'
					: `How much of the ${volts} V is lost, in per cent?`,
			givens: [
				given('V', 'volts of the supply', volts, 'V'),
				'watts' in load
					? given('P', 'watts of the lamp', load.watts, 'W')
					: given('I', 'amps in the cable', load.amps, 'A'),
				given('L', 'length of the cable, one way', length, cable.unit),
				ohmsGiven(cable)
			],
			rules: rulesOf(drawn),
			because: because((100 * lost) / volts),
			engine: asked === 'volts' ? lost : (100 * lost) / volts,
			picture: picture(drawn, amount)
		});
	}
};
