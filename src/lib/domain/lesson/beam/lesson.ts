/** Beam and distance: twice as far, twice as wide, a quarter of the light. */
import { beamExponent } from '../../photometry';
import { fixtureModels } from '../../shared/catalogue';
import { rules } from '../../shared/rules';
import { formatLength, metresPerFoot, type UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import type { SidePicture } from '../pictures';
import type { Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { luxText, onWall, type OnWall } from './beam-light';
import { beamNotes } from './notes';

/** A spot of the middle beam, the softer of the two. */
const { lamp } = fixtureModels.find(
	({ body, strength, lamp: { beamAngle, kind } }) =>
		body === 'spot' && strength === 'soft' && beamAngle === 36 && kind === 'led'
)!;
interface Places {
	near: number;
	far: number;
	/** Height of the wall; the lamp is stands at half of it. */
	wall: number;
	steps: readonly number[];
}
const feet = (all: readonly number[]): number[] => all.map((one) => one * metresPerFoot);
const sets: Record<UnitSystem, Places> = {
	metres: { near: 2, far: 4, wall: 3, steps: [1, 1.5, 2, 3, 4] },
	feet: { near: 5 * metresPerFoot, far: 10 * metresPerFoot, wall: 8 * metresPerFoot, steps: feet([2.5, 4, 5, 7.5, 10]) }
};
const there = (distance: number): OnWall => onWall(lamp, distance);

function pictureOf({ distance, width, lux }: OnWall, units: UnitSystem, moved: boolean): SidePicture {
	const { wall } = sets[units];
	const z = wall / 2;
	const far = formatLength(distance, units);
	const wide = formatLength(width, units);
	const changed = moved ? { changed: true } : {};
	// Measures stand off what they measure.
	const [behind, below] = [-0.4 * wall, -0.1 * wall];
	return {
		kind: 'side',
		alt: `A lamp ${far} in front of a wall, level. Its beam is ${wide} wide on the wall, ${luxText(lux, units)} in the middle.`,
		tree: null,
		wall: { height: wall },
		lamp: { x: distance, z, lean: 90, beamAngle: lamp.beamAngle },
		lit: { from: { x: 0, z: z - width / 2 }, to: { x: 0, z: z + width / 2 } },
		measures: [
			{ from: { x: 0, z: below }, to: { x: distance, z: below }, text: far, ...changed },
			{ from: { x: behind, z: z - width / 2 }, to: { x: behind, z: z + width / 2 }, text: wide, ...changed }
		]
	};
}
const figuresOf = ({ width, lux }: OnWall, units: UnitSystem, changed: boolean): Figure[] => [
	{ label: 'Width of the beam', text: formatLength(width, units), changed },
	{ label: 'Light in its middle', text: luxText(lux, units), changed }
];
function widthWorking({ distance, width }: OnWall): Working {
	return {
		label: 'Width of the beam',
		value: width,
		unit: 'm',
		decimals: 2,
		rule: 'The beam angle runs from edge to edge, where the light has half the intensity of the middle. Half of it makes a right triangle with the distance.',
		expression: '2 × d × tan(θ ÷ 2)',
		inputs: [
			{ symbol: 'd', name: 'distance to the wall', value: distance, unit: 'm' },
			{ symbol: 'θ', name: 'beam angle', value: lamp.beamAngle, unit: '°' }
		],
		source: 'physics'
	};
}
function candelaWorking({ candela }: OnWall): Working {
	return {
		label: 'Intensity straight ahead',
		value: candela,
		unit: 'cd',
		decimals: 0,
		rule: 'All lumens of the lamp, gathered into its beam: the narrower the beam, the larger n and the more candela.',
		expression: 'Φ × (n + 1) ÷ (2 × 3.1416)',
		inputs: [
			{ symbol: 'Φ', name: 'light of the lamp, new', value: lamp.lumens, unit: 'lm' },
			{
				symbol: 'n',
				name: 'how narrow the beam is, from its beam angle',
				value: beamExponent(lamp.beamAngle),
				unit: ''
			}
		],
		source: 'physics'
	};
}
function luxWorking(wall: OnWall): Working {
	return {
		label: 'Light in the middle of the beam',
		value: wall.lux,
		unit: 'lx',
		decimals: 0,
		rule: 'Light thins out with the square of the distance: twice as far, the same light is spread over four times the area.',
		expression: 'I ÷ d ^ 2',
		inputs: [
			{
				symbol: 'I',
				name: 'intensity straight ahead',
				value: wall.candela,
				unit: 'cd',
				from: candelaWorking(wall)
			},
			{ symbol: 'd', name: 'distance to the wall', value: wall.distance, unit: 'm' }
		],
		source: 'physics'
	};
}
const workingsOf = (wall: OnWall): Working[] => [luxWorking(wall), widthWorking(wall)];

function scene(units: UnitSystem): Scene {
	const wall = there(sets[units].near);
	return {
		words: [
			`A lamp with a ${lamp.beamAngle}° beam stands level on a post, ${formatLength(wall.distance, units)} in front of a pale wall.`,
			'The beam draws a round patch on the wall.'
		],
		picture: pictureOf(wall, units, false),
		figures: figuresOf(wall, units, false)
	};
}
/** What the patch may do, times as wide and times the light; the first that fits both is right. */
const guesses = [
	{ id: 'half', words: 'Twice as wide, half the light in the middle', width: 2, light: 1 / 2 },
	{ id: 'quarter', words: 'Twice as wide, a quarter of the light', width: 2, light: 1 / 4 },
	{ id: 'four', words: 'Four times as wide, a quarter of the light', width: 4, light: 1 / 4 },
	{ id: 'same', words: 'Twice as wide, the light in the middle stays', width: 2, light: 1 }
] as const;
function reveal(units: UnitSystem): Reveal {
	const near = there(sets[units].near);
	const far = there(sets[units].far);
	const isNear = (a: number, b: number): boolean => Math.abs(a / b - 1) < 0.02;
	const right = guesses.find(
		({ width, light }) => isNear(far.width / near.width, width) && isNear(far.lux / near.lux, light)
	);
	return {
		right: right?.id ?? '',
		words: [
			`From ${formatLength(near.width, units)} the patch grows to ${formatLength(far.width, units)}: twice as wide.`,
			`In the middle ${luxText(near.lux, units)} become ${luxText(far.lux, units)}.`,
			'Twice as wide and twice as high is four times the area for the same light.'
		],
		picture: pictureOf(far, units, true),
		figures: figuresOf(far, units, true),
		workings: workingsOf(far),
		whyNot: [
			{
				rule: 'light.maintained',
				words: `The lamp is new here. A plan counts ${Math.round(
					100 * rules['light.maintained'].figures.lumens * rules['light.maintained'].figures.dirt
				)} % of it, for age and dirt.`
			},
			{
				rule: 'The cosine of light that falls aslant',
				words: 'The light meets the wall square on, so its cosine is 1 and takes nothing away.'
			}
		]
	};
}
function at(distance: number, units: UnitSystem): Moment {
	const { far } = sets[units];
	const wall = there(distance);
	const moved = distance !== far;
	const times = Number((wall.lux / there(far).lux).toFixed(2));
	return {
		words: [
			`At ${formatLength(distance, units)} the patch is ${formatLength(wall.width, units)} wide.`,
			moved
				? `Its middle gets ${times} times the light that it has at ${formatLength(far, units)}.`
				: 'Move the lamp, and compare the width and the light.'
		],
		picture: pictureOf(wall, units, moved),
		figures: figuresOf(wall, units, moved),
		workings: workingsOf(wall)
	};
}
export const beamLesson: Lesson = {
	id: 'beam',
	title: 'Beam and distance',
	minutes: 5,
	idea: 'Twice as far: the beam is twice as wide, and its light a quarter.',
	scene,
	question: (units) =>
		`The lamp goes back from ${formatLength(sets[units].near, units)} to ${formatLength(sets[units].far, units)}. What happens to the patch?`,
	choices: () => guesses.map(({ id, words }) => ({ id, words })),
	reveal,
	lever: (units) => ({
		label: 'Distance from lamp to wall',
		values: sets[units].steps,
		start: sets[units].far,
		text: (value) => formatLength(value, units)
	}),
	at,
	notes: beamNotes
};
