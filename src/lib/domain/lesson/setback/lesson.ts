import { rules } from '../../shared/rules';
import { formatLength, metresPerFoot, metresPerInch, type UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import type { Choice, Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { gapOf, headDiameter, isStruck, litDrive, planOf, type Drive, type Lit } from './drive';
import { whyNot } from '../why-not';
import { notes } from './notes';
import { sweepOf, type Lamp } from './picture';
import { gapWorking } from './workings';

/** Three places beside the right edge: all outside its setback. */
function lampsIn(units: UnitSystem): Lamp[] {
	const [unit, places] =
		units === 'metres'
			? [
					0.001,
					[
						[350, 200],
						[350, 600],
						[800, 300]
					]
				]
			: [
					metresPerInch,
					[
						[14, 8],
						[14, 24],
						[32, 12]
					]
				];
	return places.map(([out, back], index) => ({
		label: 'ABC'[index]!,
		out: out! * unit,
		back: back! * unit,
		head: headDiameter
	}));
}
const radii: Readonly<Record<UnitSystem, readonly number[]>> = {
	metres: [0.5, 0.75, 1, 1.5, 2],
	feet: [2, 2.5, 3, 5, 7]
};
const starts = { metres: 1, feet: 3 } as const;
const inMetres = (radius: number, units: UnitSystem): number => (units === 'metres' ? radius : radius * metresPerFoot);
function driveIn(units: UnitSystem, flare: number): Drive {
	const scale = units === 'metres' ? 1 : metresPerFoot;
	return units === 'metres' ? { width: 3, length: 12, flare } : { width: 10 * scale, length: 40 * scale, flare };
}

/** Which are struck, as the letters of a choice. */
const choiceWords = [
	{ id: 'none', words: 'None: all three stand clear of the drive’s edge' },
	{ id: 'A', words: 'A alone' },
	{ id: 'AC', words: 'A and C, the two nearest to the street' },
	{ id: 'ABC', words: 'All three' }
] as const;
const choices = (): Choice[] => choiceWords.map((choice) => ({ ...choice }));
const struckOf = (lamps: readonly Lamp[], flare: number): string =>
	lamps
		.filter((lamp) => isStruck(lamp, flare))
		.map(({ label }) => label)
		.join('');

/** `A, B and C` */
const listed = (letters: string): string => [...letters].join(', ').replace(/, (?=.$)/, ' and ');

function verdict(lamp: Lamp, flare: number, units: UnitSystem): string {
	const gap = gapOf(lamp, flare);
	if (isStruck(lamp, flare)) return 'struck';
	return gap === null ? 'clear' : `${formatLength(gap, units)} clear`;
}
/** Where the plan puts its own pair. */
const pairBack = ({ lights, site }: Lit): number => site.street - lights[0]!.at.y;

function figures(lamps: readonly Lamp[], flare: number, units: UnitSystem, was: number | null): Figure[] {
	return lamps.map((lamp) => {
		const text = verdict(lamp, flare, units);
		const changed = was === null ? isStruck(lamp, flare) : verdict(lamp, was, units) !== text;
		return { label: `Lamp ${lamp.label}`, text, ...(changed ? { changed } : {}) };
	});
}
function workings(lit: Lit, lamps: readonly Lamp[], flare: number, units: UnitSystem): Working[] {
	const setback = lit.lights[0]!.reasons.find(({ rule }) => rule === 'drive.setback')?.working;
	const [a] = lamps;
	return [gapWorking('Between lamp A and the car’s arc', a!, flare, units), ...(setback ? [setback] : [])];
}

function scene(units: UnitSystem): Scene {
	const lamps = lampsIn(units);
	const lit = litDrive(driveIn(units, inMetres(starts[units], units)), units);
	const { clear } = rules['drive.setback'].figures;
	return {
		words: [
			`Three lamps stand beside a drive where it meets the street. Each keeps ${formatLength(clear, units)} or more from the edge.`,
			'Out is told from the edge, back from the street.',
			'A car turns in from the street, and cuts the corner a little.'
		],
		picture: sweepOf(lit, lamps, units, {
			flare: null,
			shown: 1.3 * inMetres(starts[units], units),
			alt: 'The mouth of a drive from above, with three lamps beside its right edge: A at the corner, B further in, C further out.'
		}),
		figures: lamps.map(({ label, out, back }) => ({
			label: `Lamp ${label}`,
			text: `${formatLength(out, units)} out, ${formatLength(back, units)} back`
		}))
	};
}

function reveal(units: UnitSystem): Reveal {
	const flare = inMetres(starts[units], units);
	const lamps = lampsIn(units);
	const lit = litDrive(driveIn(units, flare), units);
	const plan = planOf(driveIn(units, flare), units);
	const struck = struckOf(lamps, flare);
	return {
		words: [
			`${struck === '' ? 'None is struck' : `Struck: ${listed(struck)}`}. The car’s arc has a radius of ${formatLength(flare, units)} (taken from memory).`,
			`Clear of the edge is not clear of the corner. The plan puts its pair ${formatLength(pairBack(lit), units)} in, where the arc ends.`
		],
		picture: sweepOf(lit, lamps, units, {
			flare,
			shown: 1.3 * flare,
			changed: true,
			alt: `The same mouth with the ground that a turning car cuts: an arc of ${formatLength(flare, units)} radius. Struck: ${listed(struck) || 'none'}.`
		}),
		figures: figures(lamps, flare, units, null),
		right: choiceWords.find(({ id }) => id === (struck || 'none'))!.id,
		workings: workings(lit, lamps, flare, units),
		whyNot: whyNot(plan, plan.fixtures[0]!.id)
	};
}

function at(value: number, units: UnitSystem): Moment {
	const flare = inMetres(value, units);
	const lamps = lampsIn(units);
	const lit = litDrive(driveIn(units, flare), units);
	const struck = struckOf(lamps, flare);
	const text = formatLength(flare, units);
	return {
		words: [
			`A car that cuts an arc of ${text} strikes ${struck === '' ? 'none of them' : listed(struck)}.`,
			`For such a car the plan puts its pair ${formatLength(pairBack(lit), units)} in from the street.`
		],
		picture: sweepOf(lit, lamps, units, {
			flare,
			shown: 1.15 * inMetres(radii[units].at(-1)!, units),
			changed: value !== starts[units],
			alt: `The mouth with an arc of ${text} radius that a turning car cuts. Struck: ${listed(struck) || 'none'}.`
		}),
		figures: figures(lamps, flare, units, inMetres(starts[units], units)),
		workings: workings(lit, lamps, flare, units)
	};
}

/** Clear of the edge is not enough at the mouth of a drive: a turning car cuts the corner. */
export const setbackLesson: Lesson = {
	id: 'setback',
	title: 'Setback and the turning car',
	minutes: 5,
	idea: 'A lamp keeps clear of the drive’s edge, and at its mouth of the corner that a car cuts.',
	scene,
	question: () => 'Which of the three lamps does the turning car strike?',
	choices,
	reveal,
	lever: (units) => ({
		label: 'Radius of the arc that the car cuts',
		values: radii[units],
		start: starts[units],
		text: (value) => formatLength(inMetres(value, units), units)
	}),
	at,
	notes
};
