/** Light that falls aslant: the inverse square with the cosine, as two kinds of school problem put it. */
import { everywhere, illuminance } from '../../photometry';
import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Given, Problem, ProblemKind, StepRule } from '../types';
import { luxPerFootcandle } from './beam-light';

/** Lengths in metres or in feet, as the learner reads them. */
export type DrawnAside =
	/** A bare lamp, the same all round; a page so far off, tilted so that its cosine is `cosine`. */
	| { form: 'tilted'; lumens: number; distance: number; cosine: number }
	/** `lux` straight below a lamp so high; a place so far aside of that. */
	| { form: 'below'; lux: number; height: number; aside: number };

const step = (
	symbol: string,
	label: string,
	expression: string,
	unit: string,
	decimals: number,
	rule: string
): StepRule => ({ symbol, label, expression, unit, decimals, rule, source: 'physics' });
const thins = 'Light thins out with the square of the distance.';
const aslant = 'Light that falls aslant is spread over more of the surface: times the cosine.';

function posed(
	givens: Given[],
	rules: StepRule[],
	engine: number,
	words: Pick<Problem, 'story' | 'ask'>
): Problem | null {
	const steps = reckon(givens, rules);
	if (!agrees(engine, steps)) return null;
	const { text, unit, decimals } = steps.at(-1)!;
	const because = 'Further off the light thins out, and aslant it is spread over more of the surface.';
	return {
		kind: 'beam.aside',
		...words,
		givens,
		steps,
		answer: { type: 'number', text, unit, decimals },
		because,
		engine
	};
}
function tilted({ lumens, distance, cosine }: DrawnAside & { form: 'tilted' }, units: UnitSystem): Problem | null {
	if (!(lumens > 0 && distance > 0 && cosine > 0 && cosine <= 1)) return null;
	const { unit, metres } = tapeOf(units).long;
	// A lumen on a square metre is a lux, on a square foot a footcandle.
	const [light, perLux] = units === 'feet' ? ['fc', 1 / luxPerFootcandle] : ['lx', 1];
	const givens = [
		given('Φ', 'light of the lamp', lumens, 0, 'lm'),
		given('d', 'distance', distance, 1, unit),
		given('c', 'cosine of the angle at which the light falls', cosine, 1, '')
	];
	const rules = [
		step('I', 'intensity', 'Φ ÷ (4 × 3.1416)', 'cd', 1, 'The lumens, spread over the whole sphere of 4π steradians.'),
		step('E0', 'light on a page that faces the lamp', 'I ÷ d ^ 2', light, 1, thins),
		step('E', 'light on the tilted page', 'E0 × c', light, 0, aslant)
	];
	const source = { at: { x: 0, y: 0, z: distance * metres }, axis: { x: 0, y: 0, z: -1 } };
	const normal = { x: Math.sqrt(1 - cosine ** 2), y: 0, z: cosine };
	const lux = illuminance({ ...source, distribution: everywhere(lumens) }, { x: 0, y: 0, z: 0 }, normal);
	const [flux, far] = givens.map(withUnit);
	return posed(givens, rules, lux * perLux, {
		story: `A bare lamp gives ${flux}, the same in all directions. A page is held ${far} from it and tilted, so that the cosine of the angle at which the light falls is ${givens[2]!.text}.`,
		ask: `How much light falls on the page, in ${light} to the nearest whole number? Take π as 3.1416.`
	});
}
function below({ lux, height, aside }: DrawnAside & { form: 'below' }, units: UnitSystem): Problem | null {
	if (!(lux > 0 && height > 0 && aside > 0)) return null;
	const { unit, metres } = tapeOf(units).long;
	const decimals = Number.isInteger(10 * height) && Number.isInteger(10 * aside) ? 1 : 2;
	const givens = [
		given('E0', 'light straight below the lamp', lux, Number.isInteger(lux) ? 0 : 1, 'lx'),
		given('h', 'height of the lamp', height, decimals, unit),
		given('a', 'distance of the place aside', aside, decimals, unit)
	];
	const rules = [
		step('r', 'from the lamp to the place', '√(h ^ 2 + a ^ 2)', unit, 2, 'Pythagoras: height and way aside.'),
		step('c', 'cosine at which the light falls', 'h ÷ r', '', 3, 'The height over the slanting distance.'),
		step('Er', 'light at that distance, facing the lamp', 'E0 × h ^ 2 ÷ r ^ 2', 'lx', 2, thins),
		step('E', 'light on the ground at the place', 'Er × c', 'lx', 2, aslant)
	];
	const [h, a] = [height * metres, aside * metres];
	const source = { at: { x: 0, y: 0, z: h }, axis: { x: 0, y: 0, z: -1 } };
	const distribution = everywhere(lux * h ** 2 * 4 * Math.PI);
	const engine = illuminance({ ...source, distribution }, { x: a, y: 0, z: 0 }, { x: 0, y: 0, z: 1 });
	const [under, high, off] = givens.map(withUnit);
	return posed(givens, rules, engine, {
		story: `A small lamp that shines the same all round hangs ${high} above level ground. Straight below it the ground gets ${under}. A place lies ${off} aside of that.`,
		ask: 'How much light does the ground get there, in lux to two decimals?'
	});
}
/** Legs of right triangles with a whole longest side, so that square roots come out. */
const legs = [
	[3, 4],
	[4, 3],
	[6, 8],
	[8, 6],
	[5, 12],
	[12, 5],
	[8, 15],
	[15, 8]
] as const;
export const asideKind: ProblemKind<DrawnAside> = {
	id: 'beam.aside',
	lesson: 'beam',
	title: 'Light that falls aslant',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		if (random.whole(0, 1) === 0)
			return {
				form: 'tilted',
				lumens: random.stepped(200, 1000, 4),
				distance: units === 'feet' ? random.one([2, 2.5, 3, 4]) : random.one([0.5, 0.8, 1, 1.2, 1.5, 2]),
				cosine: random.stepped(0.5, 0.9, 0.1)
			};
		const [height, aside] = random.one(legs);
		const unit = units === 'feet' ? random.one([0.5, 1]) : random.one([0.1, 0.2]);
		return {
			form: 'below',
			lux: random.stepped(10, 60, 5),
			height: Math.round(100 * height * unit) / 100,
			aside: Math.round(100 * aside * unit) / 100
		};
	},
	pose: (drawn, units) => (drawn.form === 'tilted' ? tilted(drawn, units) : below(drawn, units))
};
