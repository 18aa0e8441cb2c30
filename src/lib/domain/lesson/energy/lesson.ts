/** Energy of a year: watts times hours, and which of the two is the longer lever. */
import { hoursInWords } from '../../shared/day-words';
import { fixed } from '../../shared/show-working';
import type { Working } from '../../shared/working';
import type { Hours } from '../../yard';
import type { BarsPicture } from '../pictures';
import type { Lesson, Moment, Reveal, Scene } from '../types';
import { energyNotes } from './notes';
import { litBy, yearOf, type LampKind, type LampYear } from './yard';

const allNight: Hours = { kind: 'dusk-to-dawn' };
const eleven: Hours = { kind: 'until', clock: '23:00' };
const fromDusk = (hours: number): Hours => ({ kind: 'after-dusk', hours });
/** Savings count as alike where they differ by less than this part of the larger. */
const alike = 0.05;

const kwh = (working: Working): string => `${fixed(working.value, 0)} kWh`;
const money = (working: Working): string => `$${fixed(working.value, 2)}`;
const names: Record<LampKind, string> = { led: 'LED', halogen: 'Halogen' };

interface Bar {
	label: string;
	year: LampYear;
	changed?: boolean;
}
const barsOf = (bars: readonly Bar[], most?: number): BarsPicture => ({
	kind: 'bars',
	alt: `Energy of a year. ${bars.map(({ label, year }) => `${label}: ${kwh(year.energy)}`).join('. ')}.`,
	unit: 'kWh',
	...(most === undefined ? {} : { most }),
	bars: bars.map(({ label, year, changed }) => ({
		label,
		value: year.energy.value,
		text: kwh(year.energy),
		...(changed ? { changed } : {})
	}))
});
/** What one year takes less than another, as a working that opens down to watts and nights. */
const saved = (label: string, before: LampYear, after: LampYear): Working => ({
	label,
	value: Number(fixed(before.energy.value - after.energy.value, 1)),
	unit: 'kWh',
	decimals: 1,
	rule: 'Energy of the year before the change, less that of the year after it.',
	expression: 'A − B',
	inputs: [
		{ symbol: 'A', name: 'energy of a year before', value: before.energy.value, unit: 'kWh', from: before.energy },
		{ symbol: 'B', name: 'energy of a year after', value: after.energy.value, unit: 'kWh', from: after.energy }
	],
	source: 'physics'
});
function weighed() {
	const before = yearOf('halogen', allNight);
	const led = yearOf('led', allNight);
	const early = yearOf('halogen', eleven);
	const both = yearOf('led', eleven);
	const byLamp = saved('Saved by LED lamps', before, led);
	const byHours = saved('Saved by switching off at eleven', before, early);
	const near = Math.abs(byLamp.value - byHours.value) <= alike * Math.max(byLamp.value, byHours.value);
	const right = near ? 'same' : byLamp.value > byHours.value ? 'led' : 'eleven';
	return { before, led, early, both, byLamp, byHours, right };
}
function scene(): Scene {
	const { lights, draw, price } = litBy('halogen');
	const year = yearOf('halogen', allNight);
	return {
		words: [
			`A front yard has ${lights} lights with halogen lamps, on every night from dusk to dawn.`,
			`Lamps and cable take ${fixed(draw.watts, 0)} W while they are on: ${fixed(year.hours.value, 0)} hours in a year.`,
			`A kilowatt-hour costs $${fixed(price.perKwh, 2)}.`
		],
		picture: barsOf([{ label: 'Halogen, all night', year }]),
		figures: [
			{ label: 'Energy of a year', text: kwh(year.energy) },
			{ label: 'Cost of a year', text: money(year.cost) }
		]
	};
}
function reveal(): Reveal {
	const { before, led, early, both, byLamp, byHours, right } = weighed();
	return {
		right,
		words: [
			`LED lamps give about the same light and save ${kwh(byLamp)} a year, even on all night.`,
			`Switching the halogen lamps off at eleven saves ${kwh(byHours)}.`,
			`Both together leave ${kwh(both.energy)} of ${kwh(before.energy)}: the one does not undo the other.`
		],
		picture: barsOf([
			{ label: 'Halogen, all night', year: before },
			{ label: 'Halogen, to 23:00', year: early, changed: right === 'eleven' },
			{ label: 'LED, all night', year: led, changed: right === 'led' },
			{ label: 'LED, to 23:00', year: both }
		]),
		figures: [
			{ label: 'LED lamps save', text: kwh(byLamp), changed: right === 'led' || right === 'same' },
			{ label: 'Off at eleven saves', text: kwh(byHours), changed: right === 'eleven' || right === 'same' },
			{ label: 'Cost with LED lamps', text: money(led.cost) },
			{ label: 'Cost with both', text: money(both.cost) }
		],
		workings: [byLamp, byHours],
		whyNot: []
	};
}
const nightHours = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;
const startHours = 6;
function at(hours: number): Moment {
	const years = { halogen: yearOf('halogen', fromDusk(hours)), led: yearOf('led', fromDusk(hours)) };
	const moved = hours !== startHours;
	const kinds = ['halogen', 'led'] as const;
	return {
		words: [
			`On for ${hoursInWords(fromDusk(hours))}: ${fixed(years.led.hours.value, 0)} hours in a year.`,
			'Half the hours is half of what the lamps take. The transformer’s own few watts stay, day and night.'
		],
		picture: barsOf(
			kinds.map((kind) => ({ label: names[kind], year: years[kind], changed: moved })),
			yearOf('halogen', fromDusk(nightHours.at(-1)!)).energy.value
		),
		figures: kinds.flatMap((kind) => [
			{ label: `${names[kind]}, energy`, text: kwh(years[kind].energy), changed: moved },
			{ label: `${names[kind]}, cost`, text: money(years[kind].cost), changed: moved }
		]),
		workings: [years.led.cost, years.halogen.cost]
	};
}
export const energyLesson: Lesson = {
	id: 'energy',
	title: 'Energy of a year',
	minutes: 5,
	idea: 'Energy is power times time: fewer watts and fewer hours both count.',
	scene,
	question: () => 'Which saves more energy in a year: LED lamps, or switching the halogen lamps off at eleven?',
	choices: () => [
		{ id: 'led', words: 'LED lamps, on all night' },
		{ id: 'eleven', words: 'Halogen lamps, off at eleven' },
		{ id: 'same', words: 'About the same' }
	],
	reveal,
	lever: () => ({
		label: 'Hours of light a night',
		values: nightHours,
		start: startHours,
		text: (value) => `${value} ${value === 1 ? 'hour' : 'hours'}`
	}),
	at,
	notes: energyNotes
};
