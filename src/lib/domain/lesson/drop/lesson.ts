/** Voltage drop: its three levers, and why an LED lamp takes it otherwise than a filament. */
import { sizeName, usualSizes, type CableSystem } from '../../circuit';
import { formatLength, type UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import type { Choice, Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { dropNotes } from './notes';
import { lengthText, lightText, pictureOf, voltsText } from './picture';
import { filamentLamp, firstRun, lamps, ledLamp, solvedRun, stretchOf, supplyVolts, type Solved } from './run';
import { lightWorking, lowestWorking } from './workings';

const systemOf = (units: UnitSystem): CableSystem => (units === 'feet' ? 'awg' : 'mm2');
const sizesOf = (units: UnitSystem) => usualSizes(systemOf(units));
const least = ({ volts, lowest }: Solved): number => volts[lowest]!;

interface Cure extends Choice {
	label: string;
	solved: Solved;
}
/** One of each lever: ohms of a metre, metres, amperes. */
function curesOf(units: UnitSystem): Cure[] {
	const run = firstRun(units);
	const sizes = sizesOf(units);
	const thicker = sizes[sizes.findIndex(({ size }) => size === run.size.size) + 1]!;
	return [
		{
			id: 'thicker',
			words: `Cable one size thicker: ${sizeName(thicker)}`,
			label: `Thicker, ${sizeName(thicker)}`,
			solved: solvedRun({ ...run, size: thicker })
		},
		{
			id: 'middle',
			words: 'The supply at the middle of the run, not its end',
			label: 'Fed in the middle',
			solved: solvedRun({ ...run, feed: 'middle' })
		},
		{
			id: 'led',
			words: `LED lamps of the same light: ${ledLamp.watts} W`,
			label: 'LED lamps',
			solved: solvedRun({ ...run, kind: 'led' })
		}
	];
}

function scene(units: UnitSystem): Scene {
	const run = solvedRun(firstRun(units));
	return {
		words: [
			`${lamps} filament lamps of ${filamentLamp.watts} W, one every ${lengthText(stretchOf(units), units)}, on ${sizeName(run.laid.size)} cable.`,
			`The last one gets ${voltsText(least(run))} and gives ${lightText(run.light[run.lowest]!)} of its light.`
		],
		picture: pictureOf(run, units),
		figures: [
			{ label: 'Supply', text: `${supplyVolts} V` },
			{ label: 'Last lamp', text: voltsText(least(run)) },
			{ label: 'Its light', text: lightText(run.light[run.lowest]!) }
		]
	};
}
function reveal(units: UnitSystem): Reveal {
	const run = solvedRun(firstRun(units));
	const cures = curesOf(units);
	const best = cures.reduce((a, b) => (least(b.solved) > least(a.solved) ? b : a));
	const lost = (solved: Solved): string => voltsText(supplyVolts - least(solved));
	const tap = supplyVolts + 1;
	const onTap = solvedRun({ ...run.laid, supply: tap });
	return {
		right: best.id,
		words: [
			'Volts lost are ohms times amps, stretch by stretch: fewer ohms, a shorter way or fewer amps all help.',
			`As it was, the run loses ${lost(run)}; with the best of the three it loses ${lost(best.solved)}.`,
			`LED lamps draw ${ledLamp.voltAmps} VA each, not ${filamentLamp.watts}, and keep their light from ${ledLamp.minVolts} to ${ledLamp.maxVolts} V.`
		],
		picture: pictureOf(best.solved, units, true),
		figures: [
			{ label: 'Least volts as it was', text: voltsText(least(run)) },
			...cures.map(({ id, label, solved }): Figure => ({
				label,
				text: voltsText(least(solved)),
				changed: id === best.id
			}))
		],
		workings: [lowestWorking(best.solved), lowestWorking(run), lightWorking(run)].filter(
			(working): working is Working => working !== null
		),
		whyNot: [
			{
				rule: 'cable.volts',
				words: `A ${tap} V tap gives the last lamp ${voltsText(least(onTap))}, and the first ${voltsText(onTap.volts[0]!)}: it is made for ${filamentLamp.maxVolts} V and would not last.`
			},
			{
				rule: 'supply.regulation',
				words: 'The transformer’s own sag under load: left out here, so that the cable can be seen alone.'
			},
			{
				rule: 'cable.corners',
				words: `A cable laid ${formatLength(0.1 * lamps * stretchOf(units), units)} longer than measured loses a tenth more; a plan allows for it.`
			}
		]
	};
}
function at(size: number, units: UnitSystem): Moment {
	const first = firstRun(units);
	const laid = { ...first, size: { system: systemOf(units), size } };
	const isMoved = size !== first.size.size;
	const filament = solvedRun(laid);
	const led = solvedRun({ ...laid, kind: 'led' });
	return {
		words: [
			`On ${sizeName(laid.size)} the last filament lamp gets ${voltsText(least(filament))}.`,
			'A filament dims fast as volts fall. An LED lamp keeps its light, and takes more amps instead.'
		],
		picture: pictureOf(filament, units, isMoved),
		figures: [
			{ label: 'Last lamp, filament', text: voltsText(least(filament)), changed: isMoved },
			{
				label: 'Light, filament',
				text: `${filament.isGuess ? 'about ' : ''}${lightText(filament.light[filament.lowest]!)}`,
				changed: isMoved
			},
			{ label: 'Last lamp, LED', text: voltsText(least(led)), changed: isMoved },
			{ label: 'Light, LED', text: lightText(led.light[led.lowest]!) }
		],
		workings: [lowestWorking(filament), lightWorking(filament), lowestWorking(led)].filter(
			(working): working is Working => working !== null
		)
	};
}

export const dropLesson: Lesson = {
	id: 'drop',
	title: 'Voltage drop, and its three levers',
	minutes: 5,
	idea: 'Volts lost are ohms times amps: thicker, shorter, or fewer amps.',
	scene,
	question: () => 'Which one change gives the weakest lamp the most volts?',
	choices: (units) => curesOf(units).map(({ id, words }) => ({ id, words })),
	reveal,
	lever: (units) => ({
		label: 'Size of the cable',
		values: sizesOf(units).map(({ size }) => size),
		start: firstRun(units).size.size,
		text: (size) => sizeName({ system: systemOf(units), size })
	}),
	at,
	notes: dropNotes
};
