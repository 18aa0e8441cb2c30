/** Where the volts of the lowest lamp come from, down to the table of the cable. */
import { ohmsPerKm, resistanceLaw, sizeName } from '../../circuit';
import { rules } from '../../shared/rules';
import type { Working, WorkingInput } from '../../shared/working';
import { celsius, filamentLamp, ledLamp, supplyVolts, type Laid, type Solved } from './run';

const halogen = rules['lamp.halogen'].figures;

function perKmWorking({ size }: Laid): Working {
	const law = resistanceLaw(size.system);
	return {
		label: `Ohms of a kilometre of one conductor, ${sizeName(size)}`,
		value: ohmsPerKm(size, celsius),
		unit: 'Ω/km',
		decimals: 3,
		rule: `The table’s figure at ${law.celsius} °C, brought to ${celsius} °C: copper has more ohms the warmer it is.`,
		expression: 'R × (1 + a × (t − b))',
		inputs: [
			{ symbol: 'R', name: 'the table’s figure', value: ohmsPerKm(size, law.celsius), unit: 'Ω/km' },
			{ symbol: 'a', name: 'more with each degree, as a part', value: law.alpha, unit: '' },
			{ symbol: 't', name: 'copper in the ground', value: celsius, unit: '°C' },
			{ symbol: 'b', name: 'temperature of the table', value: law.celsius, unit: '°C' }
		],
		source: size.system === 'awg' ? 'necTable8' : 'iec60228'
	};
}
export function ohmsWorking(laid: Laid, metres: number, ohms: number): Working {
	const perKm = perKmWorking(laid);
	return {
		label: 'Ohms of a stretch, there and back',
		value: ohms,
		unit: 'Ω',
		decimals: 4,
		rule: 'Twice the length, because the current goes out and comes back.',
		expression: '2 × L × r ÷ 1000',
		inputs: [
			{ symbol: 'L', name: 'length of the stretch', value: metres, unit: 'm' },
			{ symbol: 'r', name: 'one conductor', value: perKm.value, unit: 'Ω/km', from: perKm }
		],
		source: 'physics'
	};
}
/** What a lamp draws at the volts it gets. */
function lampAmps({ laid, volts, amps }: Solved, lamp: number): Working {
	const base = { label: `Amps of lamp ${lamp + 1}`, value: amps[lamp]!, unit: 'A', decimals: 3 };
	const at: WorkingInput = { symbol: 'V', name: `volts at lamp ${lamp + 1}`, value: volts[lamp]!, unit: 'V' };
	if (laid.kind === 'led')
		return {
			...base,
			rule: 'An LED lamp takes the same volt-amperes whatever the volts: fewer volts, more amps.',
			expression: 'S ÷ V',
			inputs: [{ symbol: 'S', name: 'marked on the lamp', value: ledLamp.voltAmps, unit: 'VA' }, at],
			source: 'physics'
		};
	return {
		...base,
		rule: `A filament takes fewer amps at fewer volts: the volts to the power ${halogen.current}.`,
		expression: `P ÷ U × (V ÷ U) ^ ${halogen.current}`,
		inputs: [
			{ symbol: 'P', name: 'marked on the lamp', value: filamentLamp.watts, unit: 'W' },
			{ symbol: 'U', name: 'rated volts', value: filamentLamp.ratedVolts, unit: 'V' },
			at
		],
		source: 'finkBeaty'
	};
}
/** Lamps that a stretch feeds: those from its own outwards, away from the supply. */
function beyond({ feed, lamps }: Laid, stretch: number): number[] {
	const isLeft = feed === 'middle' && stretch < Math.floor(lamps / 2);
	return Array.from({ length: lamps }, (_, k) => k).filter((k) => (isLeft ? k <= stretch : k >= stretch));
}
function stretchAmps(run: Solved, stretch: number): Working {
	const fed = beyond(run.laid, stretch);
	return {
		label: `Amps through the stretch before lamp ${stretch + 1}`,
		value: run.stretches[stretch]!.amps,
		unit: 'A',
		decimals: 3,
		rule: 'What flows in a stretch is what the lamps beyond it draw.',
		expression: fed.map((k) => `I${k + 1}`).join(' + '),
		inputs: fed.map((k) => {
			const from = lampAmps(run, k);
			return { symbol: `I${k + 1}`, name: `lamp ${k + 1}`, value: from.value, unit: 'A', from };
		}),
		source: 'physics'
	};
}
/** Stretches from the supply to a lamp. */
const wayTo = ({ feed, lamps }: Laid, lamp: number): number[] => {
	const half = Math.floor(lamps / 2);
	const all = Array.from({ length: lamps }, (_, k) => k);
	if (feed === 'end') return all.filter((k) => k <= lamp);
	return lamp < half
		? all.filter((k) => k >= lamp && k < half).toReversed()
		: all.filter((k) => k >= half && k <= lamp);
};
/** Volts at the lamp with the least. */
export function lowestWorking(run: Solved): Working {
	const { laid, volts, lowest, stretches } = run;
	const way = wayTo(laid, lowest);
	return {
		label: `Volts at lamp ${lowest + 1}, ${laid.feed === 'end' ? 'fed from the end' : 'fed in the middle'}`,
		value: volts[lowest]!,
		unit: 'V',
		decimals: 2,
		rule: 'The supply’s volts, less ohms × amps of every stretch on the way.',
		expression: `V0 − ${way.map((k) => `R${k + 1} × I${k + 1}`).join(' − ')}`,
		inputs: [
			{ symbol: 'V0', name: 'volts of the supply', value: supplyVolts, unit: 'V' },
			...way.flatMap((k): WorkingInput[] => {
				const { metres, ohms } = stretches[k]!;
				const current = stretchAmps(run, k);
				return [
					{
						symbol: `R${k + 1}`,
						name: `stretch before lamp ${k + 1}, there and back`,
						value: ohms,
						unit: 'Ω',
						from: ohmsWorking(laid, metres, ohms)
					},
					{ symbol: `I${k + 1}`, name: 'amps through it', value: current.value, unit: 'A', from: current }
				];
			})
		],
		source: 'physics'
	};
}
/** Light of the lowest lamp; null where it does not follow the volts. */
export function lightWorking(run: Solved): Working | null {
	if (run.laid.kind === 'led') return null;
	return {
		label: `Light of lamp ${run.lowest + 1}, of what it is made for`,
		value: 100 * run.light[run.lowest]!,
		unit: '%',
		decimals: 0,
		rule: `The light of a filament goes with the volts to the power ${halogen.light}.${run.isGuess ? ' That is published for a tenth up or down; further down it is a guess.' : ''}`,
		expression: `100 × (V ÷ U) ^ ${halogen.light}`,
		inputs: [
			{ symbol: 'V', name: 'volts it gets', value: run.volts[run.lowest]!, unit: 'V', from: lowestWorking(run) },
			{ symbol: 'U', name: 'rated volts', value: filamentLamp.ratedVolts, unit: 'V' }
		],
		source: 'finkBeaty'
	};
}
