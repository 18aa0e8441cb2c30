import { rules } from '../../shared/rules';
import { tradeFigures } from '../../shared/settings';
import { formatLength, metresPerFoot, metresPerInch, type UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import { barkOffset } from '../../placement';
import type { Choice, Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { whyNot } from '../why-not';
import { notes } from './notes';
import { sideOf } from './picture';
import { planOf, uplit, type TreeSizes, type Uplit } from './tree';
import { beamWorking, leanWorking } from './workings';

/** A garden tree of middling size. */
const sizesIn = (units: UnitSystem): TreeSizes =>
	units === 'metres'
		? { spread: 5, height: 8, crownBase: 2.4, trunk: 0.24 }
		: {
				spread: 16 * metresPerFoot,
				height: 26 * metresPerFoot,
				crownBase: 8 * metresPerFoot,
				trunk: 10 * metresPerInch
			};
const spreads: Readonly<Record<UnitSystem, readonly number[]>> = {
	metres: [2, 3, 4, 5, 6, 7.5, 9],
	feet: [7, 10, 13, 16, 20, 24, 30]
};
const inMetres = (spread: number, units: UnitSystem): number => (units === 'metres' ? spread : spread * metresPerFoot);
const offsetOf = ({ lights }: Uplit): number => lights[0]!.reasons.find(({ rule }) => rule === 'tree.offset')!.value!;

/** What a class may say; metres from the bark. */
const answers: readonly { id: string; says: string; of: (spread: number) => number }[] = [
	{ id: 'near', says: 'close to the trunk', of: () => rules['tree.offset'].figures.nearOffset },
	{ id: 'proportion', says: 'a short step away', of: (spread) => barkOffset(spread, tradeFigures.figures) },
	{ id: 'far', says: 'a long step away', of: () => rules['tree.offset'].figures.farOffset },
	{ id: 'tips', says: 'under the tips of the branches', of: (spread) => spread / 2 }
];
const choices = (units: UnitSystem): Choice[] => {
	const { spread } = sizesIn(units);
	return answers.map(({ id, says, of }) => ({ id, words: `${formatLength(of(spread), units)}, ${says}` }));
};

function figures({ aim, lights }: Uplit, units: UnitSystem, was: Uplit | null): Figure[] {
	const list = (one: Uplit): [string, string][] => [
		['From the bark', formatLength(one.aim.offset, units)],
		['Lean', `${one.aim.lean.toFixed(0)}°`],
		['Beam', `${one.aim.beam}°`],
		['Lights', String(one.lights.length)]
	];
	const before = was ? list(was) : null;
	return list({ aim, lights } as Uplit).map(([label, text], index) => ({
		label,
		text,
		...(before && before[index]![1] !== text ? { changed: true } : {})
	}));
}
const workings = (one: Uplit): Working[] => [
	...(one.offsetWorking ? [one.offsetWorking] : []),
	leanWorking(one),
	beamWorking(one)
];

function scene(units: UnitSystem): Scene {
	const sizes = sizesIn(units);
	const canopy = formatLength(sizes.spread, units);
	return {
		words: [
			`This tree’s canopy is ${canopy} across. An uplight is to throw its light up into the crown.`,
			'Too near, it lights the trunk alone. Too far, the beam lies over and shines into eyes.'
		],
		picture: sideOf(uplit(sizes, units), units, { hidden: true }),
		figures: [
			{ label: 'Canopy', text: canopy },
			{ label: 'Height', text: formatLength(sizes.height, units) },
			{ label: 'Lowest branches', text: formatLength(sizes.crownBase, units) }
		]
	};
}

function reveal(units: UnitSystem): Reveal {
	const sizes = sizesIn(units);
	const one = uplit(sizes, units);
	const planned = offsetOf(one);
	const { nearSpread, farSpread, nearOffset, farOffset } = rules['tree.offset'].figures;
	const len = (metres: number): string => formatLength(metres, units);
	const plan = planOf(sizes, units);
	return {
		words: [
			`${len(planned)}: ${len(nearOffset)} up to a canopy of ${len(nearSpread)}, ${len(farOffset)} from ${len(farSpread)}, in proportion between.`,
			`It leans ${one.aim.lean.toFixed(0)}° to look at the middle of the crown.`
		],
		picture: sideOf(one, units, { changed: true }),
		figures: figures(one, units, null).map((figure, index) => (index === 0 ? { ...figure, changed: true } : figure)),
		right: answers.find(({ of }) => Math.abs(of(sizes.spread) - planned) < 1e-6)!.id,
		workings: workings(one),
		whyNot: whyNot(plan, plan.fixtures[0]!.id)
	};
}

function at(value: number, units: UnitSystem): Moment {
	const sizes = sizesIn(units);
	const start = uplit(sizes, units);
	const spread = inMetres(value, units);
	const one = uplit({ ...sizes, spread }, units);
	const isWide = one.aim.needed > one.aim.beam;
	const lights = one.lights.length;
	return {
		words: [
			`For a canopy ${formatLength(spread, units)} across the light stands ${formatLength(one.aim.offset, units)} from the bark.`,
			isWide
				? `The crown fills ${one.aim.needed.toFixed(0)}°, more than one ${one.aim.beam}° beam covers: ${lights} lights do it together.`
				: `The crown fills ${one.aim.needed.toFixed(0)}°: a ${one.aim.beam}° beam covers it. ${lights === 1 ? 'One light is enough.' : `It gets ${lights} lights.`}`
		],
		picture: sideOf(one, units, { changed: one.aim.offset !== start.aim.offset }),
		figures: figures(one, units, start),
		workings: workings(one)
	};
}

/** The uplight's distance from the bark grows with the canopy; beam, lean and number follow from the tree's sizes. */
export const canopyLesson: Lesson = {
	id: 'canopy',
	title: 'Uplight and canopy',
	minutes: 5,
	idea: 'The wider the canopy, the further the uplight stands from the trunk.',
	scene,
	question: () => 'How far from the bark should the uplight stand?',
	choices,
	reveal,
	lever: (units) => ({
		label: 'How wide the canopy is',
		values: spreads[units],
		start: units === 'metres' ? 5 : 16,
		text: (value) => formatLength(inMetres(value, units), units)
	}),
	at,
	notes
};
