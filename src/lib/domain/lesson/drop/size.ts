/** The thinnest cable that keeps to the volts allowed: by its area, then from the sizes sold. */
import { annexG, circularMils, K, usualSizes } from '../../circuit';
import { choiceProblem, decimalsFor, given } from '../series/problem';
import type { ProblemKind, StepRule } from '../types';
import { anyLength } from './cable';
import { voltsAtAmps } from './given-amps';

export interface SizeDrawn {
	volts: number;
	amps: number;
	/** One way, in feet or metres. */
	length: number;
	/** Volts that both conductors together may lose. */
	allowed: number;
	/** Ohms of a foot of one circular mil, or of a metre of one square millimetre. */
	resistivity: number;
	/** Thin to thick: area in circular mils or mm². */
	sizes: { name: string; area: number }[];
	unit: 'ft' | 'm';
}
const areaUnit = ({ unit }: SizeDrawn): string => (unit === 'ft' ? 'cmil' : 'mm²');
const resistivityUnit = ({ unit }: SizeDrawn): string => (unit === 'ft' ? 'Ω·cmil/ft' : 'Ω·mm²/m');

/** `2/0 AWG` above size 1. */
export const gaugeName = (gauge: number): string => (gauge <= 0 ? `${1 - gauge}/0 AWG` : `${gauge} AWG`);
export const awgSizes = (gauges: readonly number[]): SizeDrawn['sizes'] =>
	gauges.map((gauge) => ({ name: gaugeName(gauge), area: circularMils(gauge) }));
const soldIn = (unit: SizeDrawn['unit']): SizeDrawn['sizes'] =>
	unit === 'ft'
		? awgSizes(usualSizes('awg').map(({ size }) => size))
		: usualSizes('mm2').map(({ size }) => ({ name: `${size} mm²`, area: size }));

/** Ohms there and back of a size. */
const ohmsOf = ({ resistivity, length }: SizeDrawn, area: number): number => (2 * resistivity * length) / area;
/** Index of the thinnest size with which the engine leaves the load its volts; −1 if none does. */
const thinnest = (drawn: SizeDrawn): number =>
	drawn.sizes.findIndex(({ area }) => {
		const left = voltsAtAmps(drawn.volts, [{ ohms: ohmsOf(drawn, area), amps: drawn.amps }]);
		return left !== null && left[0]! >= drawn.volts - drawn.allowed;
	});
function rulesOf(drawn: SizeDrawn, area: number): StepRule[] {
	const { unit, allowed, amps } = drawn;
	return [
		{
			symbol: 'D',
			label: 'volts that one conductor may lose',
			expression: 'd ÷ 2',
			unit: 'V',
			decimals: 2,
			rule: 'Two conductors lose alike.',
			source: 'physics'
		},
		{
			symbol: 'R',
			label: 'ohms that one conductor may have',
			expression: 'D ÷ I',
			unit: 'Ω',
			decimals: decimalsFor(allowed / 2 / amps) + 1,
			rule: 'Ohms are volts over amps.',
			source: 'physics'
		},
		{
			symbol: 'A',
			label: 'area it needs at least',
			expression: 'ρ × L ÷ R',
			unit: areaUnit(drawn),
			decimals: Math.min(2, decimalsFor(area)),
			rule: 'Ohms are resistivity × length ÷ area; so area is resistivity × length ÷ ohms.',
			source: unit === 'ft' ? 'necTable8' : 'iec60364G'
		}
	];
}

export const sizeKind: ProblemKind<SizeDrawn> = {
	id: 'drop.size',
	lesson: 'drop',
	title: 'Which size of cable keeps the volts up',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const unit = units === 'feet' ? 'ft' : 'm';
		return {
			volts: 12,
			amps: random.stepped(2, 8, 0.5),
			length: anyLength(random, units, 6, 30),
			allowed: random.one([0.6, 0.8, 1, 1.2, 1.5]),
			resistivity: unit === 'ft' ? K : annexG.service,
			sizes: soldIn(unit),
			unit
		};
	},
	pose(drawn) {
		const { volts, amps, length, allowed, resistivity, sizes, unit } = drawn;
		const area = (2 * resistivity * length * amps) / allowed;
		const at = thinnest(drawn);
		const right = sizes[at];
		// Rounded on the way it must not pass another size: a needed area within a hundredth of one sold is drawn again.
		if (!right || at === 0 || sizes.some((size) => Math.abs(size.area / area - 1) < 0.01)) return null;
		const from = Math.min(Math.max(0, at - 2), Math.max(0, sizes.length - 4));
		const offered = sizes.slice(from, from + 4);
		return choiceProblem(
			{
				kind: sizeKind.id,
				story: `A load at the end of ${length} ${unit} of cable draws ${amps} A from ${volts} V. Both conductors together may lose ${allowed} V. Copper has ${resistivity} ${resistivityUnit(drawn)}. The areas are ${offered.map((size) => `${size.name}${unit === 'ft' ? `: ${size.area} cmil` : ''}`).join(', ')}.`,
				ask: 'Which is the thinnest cable that will do?',
				givens: [
					given('d', 'volts that may be lost', allowed, 'V'),
					given('I', 'amps in the cable', amps, 'A'),
					given('ρ', 'resistivity of copper', resistivity, resistivityUnit(drawn)),
					given('L', 'length of the cable, one way', length, unit)
				],
				rules: rulesOf(drawn, area),
				because: `The first size with at least that area is ${right.name}; ${sizes[at - 1]!.name} would lose too much.`,
				engine: voltsAtAmps(volts, [{ ohms: ohmsOf(drawn, right.area), amps }])?.[0] ?? null
			},
			right.name,
			offered.map(({ name }) => name)
		);
	}
};
