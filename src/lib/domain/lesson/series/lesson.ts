/** Series and parallel: the same lamps in one loop and side by side. */
import type { Choice, Lesson, Moment, Reveal, Scene } from '../types';
import { seriesNotes } from './notes';
import { ampsText, besidePicture, loopPicture, rowOf, supplyVolts, voltsText, watts, type Row } from './row';
import { besideAmpsWorking, lightWorking, loopVoltsWorking } from './workings';

const lamps = 3;

/** What a share of the full light looks like, from much to little. */
const looks: readonly (Choice & { least: number })[] = [
	{ id: 'same', words: 'As bright as before', least: 0.95 },
	{ id: 'less', words: 'Each a little dimmer', least: 0.6 },
	{ id: 'third', words: 'Each about a third as bright', least: 0.2 },
	{ id: 'hardly', words: 'All hardly glow', least: 0 }
];
const lookOf = (light: number): string => looks.find(({ least }) => light >= least)!.id;

function scene(): Scene {
	const row = rowOf(lamps);
	return {
		words: [
			`Three filament lamps of ${watts} W for ${supplyVolts} V hang side by side between two conductors: in parallel.`,
			`Each bridges the conductors, so each gets the whole ${voltsText(row.beside.volts)}.`
		],
		picture: besidePicture(row),
		figures: [
			{ label: 'Each lamp', text: voltsText(row.beside.volts) },
			{ label: 'From the supply', text: ampsText(row.beside.amps) }
		]
	};
}
const workings = (row: Row) => [loopVoltsWorking(row), lightWorking(row), besideAmpsWorking(row)];

function reveal(): Reveal {
	const row = rowOf(lamps);
	return {
		right: lookOf(row.loop.light),
		words: [
			`In series they share the ${supplyVolts} V: each gets ${voltsText(row.loop.volts)}, and a filament then gives hardly any light.`,
			`Take one out and ${row.without.loop === 0 ? 'the loop is broken: all are dark' : 'some current still flows'}. In parallel the others keep their ${voltsText(row.beside.volts)}.`
		],
		picture: loopPicture(row),
		figures: [
			{ label: 'Each lamp in series', text: voltsText(row.loop.volts), changed: true },
			{ label: 'Light of each', text: `${row.isGuess ? 'about ' : ''}${(100 * row.loop.light).toFixed(0)} %` },
			{ label: 'Series, one taken out', text: ampsText(row.without.loop) },
			{ label: 'Parallel, one taken out', text: ampsText(row.without.beside) }
		],
		workings: workings(row),
		whyNot: [
			{
				rule: 'cable.drop',
				words: 'Drop in the cable: here it is too short to count. On a long run it does; that is the next lesson.'
			},
			{
				rule: 'lamp.halogen',
				words:
					'A filament below its rated volts is cooler and has fewer ohms. Equal lamps share equally all the same; the amps would be more.'
			},
			{
				rule: 'lamp.led',
				words:
					'LED lamps for 12 V have a driver inside and are never connected in series: what each would get is not known.'
			}
		]
	};
}
function at(value: number): Moment {
	const row = rowOf(value);
	return {
		words: [
			`${value === 1 ? 'One lamp has the loop to itself.' : `${value} lamps share ${supplyVolts} V in series.`}`,
			'In parallel each would have all of it, and the amps would add up.'
		],
		picture: loopPicture(row),
		figures: [
			{ label: 'Each lamp in series', text: voltsText(row.loop.volts), changed: value !== lamps },
			{ label: 'Amps in series', text: ampsText(row.loop.amps), changed: value !== lamps },
			{ label: 'Each in parallel', text: voltsText(row.beside.volts) },
			{ label: 'Amps in parallel', text: ampsText(row.beside.amps), changed: value !== lamps }
		],
		workings: workings(row)
	};
}

export const seriesLesson: Lesson = {
	id: 'series',
	title: 'Series and parallel',
	minutes: 5,
	idea: 'In parallel every lamp gets the whole volts; in series they share them.',
	scene,
	question: () => `How bright are these three lamps if they hang in series instead, in one loop on ${supplyVolts} V?`,
	choices: () => looks.map(({ id, words }) => ({ id, words })),
	reveal,
	lever: () => ({
		label: 'Lamps in series',
		values: [1, 2, 3, 4, 5],
		start: lamps,
		text: (value) => (value === 1 ? '1 lamp' : `${value} lamps`)
	}),
	at,
	notes: seriesNotes
};
