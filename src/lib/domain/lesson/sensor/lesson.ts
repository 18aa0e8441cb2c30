/** Sensor and sun: what shade does to a dusk sensor, in June and in December. */
import { onLux } from '../../dusk';
import { rules } from '../../shared/rules';
import { fixed } from '../../shared/show-working';
import type { UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import type { YearPicture } from '../pictures';
import type { Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { sensorNotes } from './notes';
import { clockText, eveningsOf, neededLux, skyAt, sunAt, type Evening } from './sky';

/** Degrees north: a place where many of those learners are. */
const latitudes: Record<UnitSystem, number> = { metres: 50, feet: 40 };
const shares = [1, 0.5, 0.25, 0.1, 0.05, 0.02] as const;
const shaded = 0.1;
const minutes = (value: number): string => `${fixed(value, 0)} min`;
/** Of the two months of the question; around the equinoxes it is less. */
const span = ({ june, december }: Year): string =>
	`${minutes(december.early)} in December, ${minutes(june.early)} in June`;
const percent = (share: number): string => `${fixed(100 * share, 0)} %`;

interface Year {
	share: number;
	evenings: Evening[];
	june: Evening;
	december: Evening;
}
function yearOf(units: UnitSystem, share: number): Year {
	const evenings = eveningsOf(skyAt(latitudes[units]), share);
	return { share, evenings, june: evenings[5]!, december: evenings[11]! };
}
function pictureOf({ share, evenings, june, december }: Year, units: UnitSystem, changed: boolean): YearPicture {
	const open = { label: 'whole sky', values: evenings.map((one) => one.open) };
	const shade = { label: `${percent(share)} of it`, values: evenings.map(({ on }) => on), changed };
	return {
		kind: 'year',
		alt: `When the lamps come on through the year at ${latitudes[units]} degrees north: ${clockText(june.on)} on 21 June, ${clockText(december.on)} on 21 December, with ${percent(share)} of the sky.`,
		unit: 'clock',
		lines: share < 1 ? [open, shade] : [open]
	};
}
const figuresOf = ({ june, december }: Year, changed: boolean): Figure[] => [
	{ label: 'On, 21 June', text: clockText(june.on), changed },
	{ label: 'On, 21 December', text: clockText(december.on), changed },
	...(changed
		? [
				{ label: 'Early in June', text: minutes(june.early), changed },
				{ label: 'Early in December', text: minutes(december.early), changed }
			]
		: [])
];
function neededWorking(share: number): Working {
	return {
		label: 'Light of the open sky when it switches',
		value: neededLux(share),
		unit: 'lx',
		decimals: 0,
		rule: 'The sensor gets its share of the sky’s light, so the sky must still give that many times more.',
		expression: 'E ÷ p',
		inputs: [
			{ symbol: 'E', name: 'light on the sensor at which it switches on', value: onLux, unit: 'lx' },
			{ symbol: 'p', name: 'share of the sky that it sees', value: share, unit: '' }
		],
		source: 'c136_10'
	};
}
function riseWorking(share: number): Working {
	const [shade, open] = [sunAt(share), sunAt(1)];
	return {
		label: 'How much higher the sun stands',
		value: shade - open,
		unit: '°',
		decimals: 2,
		rule: 'From the curve of a clear sky: about 400 lx at sunset, 3.4 lx with the sun 6 degrees below the horizon.',
		expression: 'H − H0',
		inputs: [
			{
				symbol: 'H',
				name: `sun’s height when the sky gives ${fixed(neededLux(share), 0)} lx`,
				value: shade,
				unit: '°'
			},
			{ symbol: 'H0', name: `sun’s height when it gives ${onLux} lx`, value: open, unit: '°' }
		],
		source: 'amsTwilight'
	};
}
function earlyWorking({ share }: Year, { early }: Evening, month: string): Working {
	const rise = riseWorking(share);
	return {
		label: `Early on 21 ${month}`,
		value: early,
		unit: 'min',
		decimals: 0,
		rule: 'So much higher stands the sun; it sinks so fast that evening, at a slant that changes with the season and the place.',
		expression: 'D ÷ v',
		inputs: [
			{ symbol: 'D', name: 'how much higher the sun stands', value: rise.value, unit: '°', from: rise },
			{
				symbol: 'v',
				name: `degrees that it sinks in a minute, by the sun’s path on 21 ${month}`,
				value: rise.value / early,
				unit: '°/min'
			}
		],
		source: 'physics'
	};
}
/** Of a sensor that sees the whole sky there is nothing to work out but the light that it needs. */
const workingsOf = (year: Year): Working[] => [
	neededWorking(year.share),
	...(year.share < 1 ? [earlyWorking(year, year.june, 'June'), earlyWorking(year, year.december, 'December')] : [])
];
function scene(units: UnitSystem): Scene {
	const year = yearOf(units, 1);
	return {
		words: [
			`A dusk sensor at ${latitudes[units]}° north sees the whole sky. It switches the lamps on at ${onLux} lx.`,
			`That is at ${clockText(year.june.on)} on 21 June and at ${clockText(year.december.on)} on 21 December, by a clock without summer time.`,
			'The curve is when the lamps come on, on the 21st of each month.'
		],
		picture: pictureOf(year, units, false),
		figures: figuresOf(year, false)
	};
}
const guesses = [
	{ id: 'none', words: 'No earlier: dusk is dusk' },
	{ id: 'some', words: 'Less than half an hour, in both months' },
	{ id: 'june', words: 'Hours in June, minutes in December' },
	{ id: 'hours', words: 'Hours, in both months: it needs ten times the light' }
] as const;
/** The guess that the minutes bear out; none where they lie between. */
function borneOut({ june, december }: Year): string {
	const [least, most] = [Math.min(june.early, december.early), Math.max(june.early, december.early)];
	if (most < 1) return 'none';
	if (most < 30) return 'some';
	if (least >= 60) return 'hours';
	return june.early >= 60 && december.early < 30 ? 'june' : '';
}
function reveal(units: UnitSystem): Reveal {
	const year = yearOf(units, shaded);
	const mean = year.evenings.reduce((sum, { early }) => sum + early, 0) / year.evenings.length;
	const { early } = rules['sensor.shade'].figures;
	return {
		right: borneOut(year),
		words: [
			`It now needs ${fixed(neededLux(shaded), 0)} lx of open sky. From there to ${onLux} lx takes ${span(year)}.`,
			`Up to ${early} min are let pass; this is ${year.december.early > early ? 'more' : 'within that'}. In June the sun sinks at a flatter slant, so it takes longer.`,
			`Over a year that is about ${fixed((mean * 365) / 60, 0)} hours of light for nothing, in the evenings alone.`
		],
		picture: pictureOf(year, units, true),
		figures: figuresOf(year, true),
		workings: workingsOf(year),
		whyNot: [
			{
				rule: 'sensor.light',
				words: 'No lamp shines on this sensor. One that does can hold it off, or make it blink.'
			},
			{ rule: 'hours.choice', words: 'A timer may end the evening; when it begins is up to the sensor alone.' }
		]
	};
}
function at(share: number, units: UnitSystem): Moment {
	const year = yearOf(units, share);
	const moved = share !== shaded;
	return {
		words: [
			share < 1
				? `With ${percent(share)} of the sky it switches on when the open sky still gives ${fixed(neededLux(share), 0)} lx.`
				: `With the whole sky it switches on at ${onLux} lx, as it should.`,
			share < 1
				? `Early by ${span(year)}: at dusk the light halves every few minutes.`
				: 'Hide more of the sky, and see how many minutes that makes.'
		],
		picture: pictureOf(year, units, moved),
		figures: figuresOf(year, true).map((figure) => ({ ...figure, changed: moved })),
		workings: workingsOf(year)
	};
}
export const sensorLesson: Lesson = {
	id: 'sensor',
	title: 'Sensor and sun',
	minutes: 5,
	idea: 'Shade makes a dusk sensor early by minutes every day: hang it where it sees the sky.',
	scene,
	question: () => `A dense hedge now hides ${percent(1 - shaded)} of its sky. How much earlier do the lamps come on?`,
	choices: () => [...guesses],
	reveal,
	lever: () => ({
		label: 'Sky that the sensor sees',
		values: shares,
		start: shaded,
		text: (value) => (value === 1 ? 'the whole sky' : percent(value))
	}),
	at,
	notes: sensorNotes
};
