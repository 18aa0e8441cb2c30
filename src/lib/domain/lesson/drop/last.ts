/** Volts along a chain: what flows in a stretch is what the lamps beyond it draw. */
import type { RunPicture } from '../pictures';
import { given, numberProblem } from '../series/problem';
import type { Given, ProblemKind, StepRule } from '../types';
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

export interface LastDrawn {
	volts: number;
	cable: PerThousand;
	/** From the supply outwards: length of the stretch to it, in the cable's unit, and what is drawn there, amperes. */
	loads: { length: number; amps: number }[];
}
const source = 'physics';
const beyond = (count: number, k: number): string =>
	Array.from({ length: count - k }, (_, j) => `A${k + j + 1}`).join(' + ');

function rulesOf({ loads, cable }: LastDrawn): StepRule[] {
	return loads.flatMap((_, k): StepRule[] => {
		const n = k + 1;
		const isTip = n === loads.length;
		return [
			...(isTip
				? []
				: [
						{
							symbol: `I${n}`,
							label: `amps in stretch ${n}`,
							expression: beyond(loads.length, k),
							unit: 'A',
							decimals: 1,
							rule: 'What flows in a stretch is what the lamps beyond it draw.',
							source
						}
					]),
			thereAndBack(`R${n}`, `L${n}`, `ohms of stretch ${n}, there and back`, cable.source),
			{
				symbol: `V${n}`,
				label: `volts at lamp ${n}`,
				expression: `${k === 0 ? 'V0' : `V${k}`} − ${isTip ? `A${n}` : `I${n}`} × R${n}`,
				unit: 'V',
				decimals: 2,
				rule: 'The volts before, less amps times ohms.',
				source
			}
		];
	});
}
const givensOf = ({ volts, cable, loads }: LastDrawn): Given[] => [
	given('V0', 'volts of the supply', volts, 'V'),
	ohmsGiven(cable),
	...loads.flatMap(({ length, amps }, k) => [
		given(`L${k + 1}`, `length of stretch ${k + 1}, one way`, length, cable.unit),
		given(`A${k + 1}`, `amps of lamp ${k + 1}`, amps, 'A')
	])
];
const picture = ({ volts, cable, loads }: LastDrawn): RunPicture => ({
	kind: 'run',
	alt: `${loads.length} lamps along a cable on ${volts} V, after ${loads.map(({ length }) => `${length} ${cable.unit}`).join(', ')}.`,
	arrangement: 'chain',
	unlit: true,
	supply: { text: `${volts} V` },
	lamps: loads.map(({ amps }, k) => ({
		label: `${amps} A`,
		volts: k === loads.length - 1 ? '? V' : '',
		share: 0,
		state: 'fine'
	})),
	cables: loads.map(({ length }) => ({ length: `${length} ${cable.unit}`, amps: '' }))
});

export const lastKind: ProblemKind<LastDrawn> = {
	id: 'drop.last',
	lesson: 'drop',
	title: 'Volts at the last lamp of a run',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random, units) => ({
		volts: random.one([12, 13]),
		cable: perThousandOf(anySize(random, units), units),
		loads: Array.from({ length: 3 }, () => ({
			length: anyLength(random, units, 3, 10),
			amps: random.stepped(0.5, 2, 0.1)
		}))
	}),
	pose(drawn) {
		const { volts, cable, loads } = drawn;
		const found = voltsAtAmps(
			volts,
			loads.map(({ length, amps }) => ({ ohms: loopOf(cable, length), amps }))
		);
		if (!found || loads.length < 2) return null;
		const told = loads
			.map(
				({ length, amps }, k) =>
					`${length} ${cable.unit} ${k === 0 ? 'to the first' : 'to the next'}, which draws ${amps} A`
			)
			.join('; ');
		return numberProblem({
			kind: lastKind.id,
			story: `${loads.length} lamps hang along one cable on ${volts} V${cable.name ? `, ${cable.name}` : ''}: ${told}. One conductor has ${ohmsWords(cable)}.`,
			ask: 'How many volts has the last lamp?',
			givens: givensOf(drawn),
			rules: rulesOf(drawn),
			because: 'The first stretch carries the amps of all lamps, so metre for metre it loses the most.',
			engine: found.at(-1)!,
			picture: picture(drawn)
		});
	}
};
