/** How lamps in one loop share the volts: each by its ohms. */
import type { RunPicture } from '../pictures';
import type { ProblemKind, StepRule } from '../types';
import { hotOhms, loop } from './network';
import { given, numberProblem } from './problem';

export interface ShareDrawn {
	supply: number;
	/** The lamps' rated volts. */
	rated: number;
	/** Watts of two lamps; the volts of the first are asked for. */
	watts: [number, number];
}
const source = 'physics';
const rules = (watts: readonly number[]): StepRule[] => [
	...watts.map((one, k): StepRule => ({
		symbol: `R${k + 1}`,
		label: `ohms of the ${one} W lamp when hot`,
		expression: `U × U ÷ P${k + 1}`,
		unit: 'Ω',
		decimals: 2,
		rule: 'Ohms are volts over amps, and amps are watts over volts.',
		source
	})),
	{
		symbol: 'I',
		label: 'amps in the loop',
		expression: 'V ÷ (R1 + R2)',
		unit: 'A',
		decimals: 3,
		rule: 'In series the ohms add up, and one current goes through all.',
		source
	},
	{
		symbol: 'V1',
		label: `volts of the ${watts[0]} W lamp`,
		expression: 'I × R1',
		unit: 'V',
		decimals: 1,
		rule: 'Volts are amps times ohms.',
		source
	}
];
const picture = ({ supply, watts }: ShareDrawn): RunPicture => ({
	kind: 'run',
	alt: `Two lamps in series on ${supply} V: ${watts[0]} W, then ${watts[1]} W.`,
	arrangement: 'series',
	unlit: true,
	supply: { text: `${supply} V` },
	lamps: watts.map((one, k) => ({ label: `${one} W`, volts: k === 0 ? '? V' : '', share: 0, state: 'fine' })),
	cables: watts.map(() => ({ length: '', amps: '' }))
});

export const shareKind: ProblemKind<ShareDrawn> = {
	id: 'series.share',
	lesson: 'series',
	title: 'Volts of lamps in series',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random) {
		const [a, b] = random.shuffled([5, 8, 10, 12, 15, 20, 35]);
		return { supply: random.one([12, 15, 24]), rated: random.one([12, 24]), watts: [a!, b!] };
	},
	pose(drawn) {
		const { supply, rated, watts } = drawn;
		const [a, b] = watts;
		const shared = loop(
			supply,
			watts.map((one) => hotOhms(one, rated))
		);
		// Above its rated volts the filament would burn out: no sensible circuit.
		if (!shared || a === b || shared.volts.some((volts) => volts > rated)) return null;
		const more = shared.volts[0]! > shared.volts[1]!;
		return numberProblem({
			kind: shareKind.id,
			story: `A filament lamp of ${a} W and one of ${b} W, both for ${rated} V, are in series, one after the other in one loop, on ${supply} V. Take each as the resistance it has at its rated volts.`,
			ask: `How many volts does the ${a} W lamp get?`,
			givens: [
				given('U', 'rated volts of the lamps', rated, 'V'),
				given('P1', 'watts of the lamp in question', a, 'W'),
				given('P2', 'watts of the other', b, 'W'),
				given('V', 'volts of the supply', supply, 'V')
			],
			rules: rules(watts),
			because: `In series the lamp with more ohms takes more of the volts: here that is the ${Math.min(a, b)} W lamp, ${more ? 'the one asked for' : 'the other one'}.`,
			engine: shared.volts[0]!,
			picture: picture(drawn)
		});
	}
};
