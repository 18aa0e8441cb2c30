import { distance } from '../../shared/geometry';
import { formatLength, type UnitSystem } from '../../shared/units';
import type { Measure, PlanPicture, XY } from '../pictures';
import type { Choice, Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { whyNot } from '../why-not';
import { frontOf, planWith } from './garden';
import { acrossWorking, asideWorking, landing } from './held';
import { notes } from './notes';

const corner: XY = { x: 0, y: 0 };
/** Degrees that the tape out may lean. */
const leans = [0, 2, 5, 10, 15, 20] as const;

/** What a class may say; each reckons its own length from along and out, metres. */
const answers: readonly { id: string; says: string; of: (along: number, out: number) => number }[] = [
	{ id: 'half', says: 'half of along and out together', of: (along, out) => (along + out) / 2 },
	{ id: 'along', says: 'the same as along', of: (along) => along },
	{ id: 'square', says: 'the long side of a triangle', of: (along, out) => Math.sqrt(along ** 2 + out ** 2) },
	{ id: 'sum', says: 'along and out together', of: (along, out) => along + out }
];
const choices = (units: UnitSystem): Choice[] => {
	const { light } = frontOf(units);
	return answers.map(({ id, says, of }) => ({
		id,
		words: `${formatLength(of(light.x, light.y), units)}, ${says}`
	}));
};

/** Round the house's left part and the light, with room for the tapes' figures. */
function frame({ width, street }: ReturnType<typeof frontOf>): PlanPicture['frame'] {
	const left = -0.14 * width;
	const top = -0.22 * width;
	const wide = 1.18 * width;
	return { left, top, width: wide, height: Math.min(wide * 0.7, street - top + 1) };
}
interface Shown {
	lit: XY;
	measures: Measure[];
	points?: PlanPicture['points'];
	alt: string;
}
function pictureOf(units: UnitSystem, { lit, measures, points = [], alt }: Shown): PlanPicture {
	const front = frontOf(units);
	return { kind: 'plan', alt, plan: planWith(front, lit, units), frame: frame(front), measures, points };
}
/** The two tapes: along the front to where the other starts, and out to the light. */
function tapes(units: UnitSystem, lit: XY): Measure[] {
	const { light } = frontOf(units);
	const start = { x: light.x, y: 0 };
	return [
		{ from: corner, to: start, text: formatLength(light.x, units) },
		{ from: start, to: lit, text: formatLength(distance(start, lit), units) }
	];
}
const figures = (units: UnitSystem): Figure[] => {
	const { light } = frontOf(units);
	return [
		{ label: 'Along', text: formatLength(light.x, units) },
		{ label: 'Out', text: formatLength(light.y, units) }
	];
};

function scene(units: UnitSystem): Scene {
	const { light } = frontOf(units);
	return {
		words: [
			'One tape lies along the house front from its left corner. A second tape goes straight out from it.',
			`The plan puts a light ${formatLength(light.x, units)} along and ${formatLength(light.y, units)} out.`
		],
		picture: pictureOf(units, {
			lit: light,
			measures: tapes(units, light),
			alt: `A house front from above with a light ${formatLength(light.x, units)} along it and ${formatLength(light.y, units)} out from it.`
		}),
		figures: figures(units)
	};
}

function reveal(units: UnitSystem): Reveal {
	const { light } = frontOf(units);
	const working = acrossWorking(light, 0, units);
	const plan = planWith(frontOf(units), light, units);
	const planned = plan.fixtures[0]!.at;
	const across = distance(corner, planned);
	const text = formatLength(across, units);
	return {
		words: [
			`${text}. Along and out are the short sides of a triangle with a square corner; across is its long side.`,
			`So ${text} is also the check: if the tape across reads more or less, the tape out is not square.`
		],
		picture: pictureOf(units, {
			lit: light,
			measures: [...tapes(units, light), { from: corner, to: light, text, changed: true }],
			alt: `The same light, with the tape across from the corner of the house to it: ${text}.`
		}),
		figures: [...figures(units), { label: 'Across', text, changed: true }],
		right: answers.find(({ of }) => Math.abs(of(light.x, light.y) - across) < 1e-6)!.id,
		workings: [working],
		whyNot: whyNot(plan, plan.fixtures[0]!.id)
	};
}

function at(turn: number, units: UnitSystem): Moment {
	const { light } = frontOf(units);
	const lands = landing(light, turn);
	const across = formatLength(lands.across, units);
	const meant = formatLength(distance(corner, light), units);
	const aside = formatLength(lands.aside, units);
	const changed = turn !== 0;
	return {
		words: changed
			? [
					`Held ${turn}° out of square, the tape across reads ${across}, not ${meant}.`,
					`The light lands ${aside} beside its place, though along and out were read without a mistake.`
				]
			: [`Held square, the tape across reads ${across} and the light lands in its place.`],
		picture: pictureOf(units, {
			lit: lands.at,
			measures: [...tapes(units, lands.at), { from: corner, to: lands.at, text: across, changed }],
			points: changed ? [{ at: light, text: 'Planned' }] : [],
			alt: `The tape out ${changed ? `leans ${turn}° and the light lands ${aside} beside its place` : 'is square and the light lands in its place'}.`
		}),
		figures: [
			{ label: 'Tape out', text: formatLength(light.y, units) },
			{ label: 'Across', text: across, changed },
			{ label: 'Beside its place', text: aside, changed }
		],
		workings: [acrossWorking(light, turn, units), asideWorking(light, turn, units)]
	};
}

/** Baseline and offset: a place is so far along the front and so far out from it, and the diagonal checks the square. */
export const offsetLesson: Lesson = {
	id: 'offset',
	title: 'Baseline and offset',
	minutes: 5,
	idea: 'Two tapes at a right angle find any place in a yard, and a third one checks them.',
	scene,
	question: () => 'Straight across the lawn, how far is it from the left corner of the house to the light?',
	choices,
	reveal,
	lever: () => ({
		label: 'How far out of square the tape is held',
		values: leans,
		start: leans[0],
		text: (value) => (value === 0 ? 'Square' : `${value}°`)
	}),
	at,
	notes
};
