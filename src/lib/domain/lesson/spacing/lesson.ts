/** Path spacing and evenness: what one light fewer does to the average, and what to the darkest spot. */
import { verdictOf, walkAim } from '../../light';
import { fixed } from '../../shared/show-working';
import { formatLength, metresPerFoot, type UnitSystem } from '../../shared/units';
import { rules } from '../../shared/rules';
import type { StripPicture } from '../pictures';
import type { Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { spacingNotes } from './notes';
import { rowOf, type Row } from './row';
import { rowWorkings } from './workings';

interface Walk {
	length: number;
	width: number;
	/** Before and after the light is taken away. */
	usual: number;
	wide: number;
	spacings: readonly number[];
}
const foot = metresPerFoot;
const walks: Record<UnitSystem, Walk> = {
	metres: { length: 9, width: 1.2, usual: 3, wide: 4.5, spacings: [1.5, 1.8, 2.25, 3, 4.5] },
	feet: {
		length: 30 * foot,
		width: 4 * foot,
		usual: 10 * foot,
		wide: 15 * foot,
		spacings: [5, 6, 7.5, 10, 15].map((one) => one * foot)
	}
};
const rowAt = (units: UnitSystem, spacing: number): Row => {
	const { length, width } = walks[units];
	return rowOf(length, width, spacing);
};
const lx = (lux: number): string => `${fixed(lux, 1)} lx`;
/** `2.6 to 1` */
const evenText = ({ evenness }: Row): string => (evenness === null ? 'dark gaps' : `${fixed(evenness, 1)} to 1`);

function pictureOf(row: Row, units: UnitSystem, moved: boolean): StripPicture {
	const { lamps, lux, length, width, average, least } = row;
	const changed = moved ? { changed: true } : {};
	return {
		kind: 'strip',
		alt: `A walk ${formatLength(length, units)} long from above, ${lamps.length} path lights on alternate sides, ${formatLength(row.spacing, units)} apart. Along its middle the light is ${lx(average)} on average and ${lx(least.lux)} at the darkest.`,
		length,
		width,
		lamps: lamps.map((at, i) => ({ at, label: String(i + 1) })),
		lux,
		marked: [
			{ x: null, lux: average, text: `average ${lx(average)}`, ...changed },
			{ x: least.x, lux: least.lux, text: `darkest ${lx(least.lux)}`, ...changed }
		]
	};
}
const figuresOf = (row: Row, changed: boolean): Figure[] => [
	{ label: 'Path lights', text: String(row.lamps.length), changed },
	{ label: 'Average', text: lx(row.average), changed },
	{ label: 'Darkest spot', text: lx(row.least.lux), changed },
	{ label: 'Average to darkest', text: evenText(row), changed }
];
/** What the rules say of it: 5 lx on average, at most 5 to 1. */
function judged({ average, evenness, least, points }: Row): string {
	const { walk, ratio } = rules['path.level'].figures;
	const levels = { average, evenness, least: least.lux, most: 0, fromPlan: { average, most: 0 }, points };
	const verdict = verdictOf('walk', levels, walkAim());
	const patchy = evenness === null || evenness > ratio;
	if (verdict === 'right') return `It keeps both rules: ${walk} lx on average, and at most ${ratio} to 1.`;
	if (verdict === 'patchy') return `The average is enough, but it is patchy: at most ${ratio} to 1 is wanted.`;
	return patchy
		? `It breaks both rules: ${walk} lx on average, and at most ${ratio} to 1.`
		: `It is even enough, but falls short of ${walk} lx on average.`;
}
function scene(units: UnitSystem): Scene {
	const { length, usual } = walks[units];
	const row = rowAt(units, usual);
	return {
		words: [
			`A walk ${formatLength(length, units)} long has ${row.lamps.length} path lights on alternate sides, one every ${formatLength(usual, units)}.`,
			'The curve is the light along the middle of the walk.',
			judged(row)
		],
		picture: pictureOf(row, units, false),
		figures: figuresOf(row, false)
	};
}
/** What is left of the darkest spot's light; the nearest is right. */
const guesses = [
	{ id: 'all', words: 'It stays as bright as it was', left: 1 },
	{ id: 'most', words: 'It keeps about three quarters of its light', left: 3 / 4 },
	{ id: 'half', words: 'It keeps about half of its light', left: 1 / 2 },
	{ id: 'quarter', words: 'It keeps less than a third of its light', left: 1 / 4 }
] as const;

function reveal(units: UnitSystem): Reveal {
	const { usual, wide } = walks[units];
	const before = rowAt(units, usual);
	const after = rowAt(units, wide);
	const left = after.least.lux / before.least.lux;
	const percent = (part: number): string => `${Math.round(100 * part)} %`;
	return {
		right: guesses.toSorted((a, b) => Math.abs(a.left - left) - Math.abs(b.left - left))[0]!.id,
		words: [
			`The average keeps ${percent(after.average / before.average)} of its light, the darkest spot only ${percent(left)}.`,
			`Midway both lights are further off: the distance counts squared, and the light falls more aslant.`,
			judged(after)
		],
		picture: pictureOf(after, units, true),
		figures: figuresOf(after, true),
		workings: rowWorkings(after),
		whyNot: [
			{
				rule: 'path.first',
				words: 'No bend, gate, step or junction asks for a light of its own: this walk is straight and level.'
			},
			{
				rule: 'path.spacing',
				words: `Closer than about ${formatLength(usual, units)} along one edge looks like a runway; here neighbours stand on opposite sides.`
			}
		]
	};
}
/** Neighbours across the walk stand at least so far apart along it (rule path.meet). */
const runway = rules['path.meet'].figures.across * rules['path.spacing'].figures.spacing;

function at(spacing: number, units: UnitSystem): Moment {
	const row = rowAt(units, spacing);
	const moved = spacing !== walks[units].wide;
	return {
		words: [
			`${row.lamps.length} lights, one every ${formatLength(row.spacing, units)}, first and last at the ends.`,
			judged(row),
			...(row.spacing < runway - 1e-9 ? ['But so close together they make the walk look like a runway.'] : [])
		],
		picture: pictureOf(row, units, moved),
		figures: figuresOf(row, moved),
		workings: rowWorkings(row)
	};
}
export const spacingLesson: Lesson = {
	id: 'spacing',
	title: 'Path spacing and evenness',
	minutes: 5,
	idea: 'The average hides the dark: look at the darkest spot too.',
	scene,
	question: (units) =>
		`One light fewer: now one every ${formatLength(walks[units].wide, units)}. What happens to the darkest spot?`,
	choices: () => guesses.map(({ id, words }) => ({ id, words })),
	reveal,
	lever: (units) => ({
		label: 'From light to light',
		values: walks[units].spacings,
		start: walks[units].wide,
		text: (value) => formatLength(value, units)
	}),
	at,
	notes: spacingNotes
};
