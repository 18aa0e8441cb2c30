/** What is taken for a tree whose sizes are absent or "not sure". */
import type { About } from '../shared/findings';
import { formatLength } from '../shared/units';
import { calledThe, capital } from './called';
import { take, type Ledger } from './ledger';
import type { Units, YardTree } from './schema';

/** Height for each metre of spread, and crown base as a part of the height, by form: middling garden trees, no source. */
export const treeShapes: Record<
	NonNullable<Exclude<YardTree['form'], 'unsure'>>,
	{ spread: number; tall: number; base: number }
> = {
	round: { spread: 5, tall: 1.3, base: 0.3 },
	spreading: { spread: 7, tall: 0.9, base: 0.28 },
	columnar: { spread: 1.2, tall: 4, base: 0.08 },
	conical: { spread: 3, tall: 2.2, base: 0.08 },
	vase: { spread: 5.5, tall: 1.4, base: 0.35 },
	weeping: { spread: 4, tall: 1.2, base: 0.15 },
	'multi-stem': { spread: 3.5, tall: 1.4, base: 0.3 },
	palm: { spread: 4, tall: 2.2, base: 0.75 }
};
export interface TreeFacts {
	spread: number;
	height: number;
	crownBase: number;
	trunk: number;
	form: keyof typeof treeShapes;
	ground: 'lawn' | 'bed' | 'gravel';
	light: 'none' | 'soft' | 'bright';
	seenFrom: 'street' | 'house' | 'walk';
}
/** Sizes of a tree. What is not known follows from what is, by the proportions of its form. */
export function treeFacts(tree: YardTree, units: Units, ledger: Ledger): TreeFacts {
	const about: About = { kind: 'tree', id: tree.id };
	const path = `trees.${tree.id}`;
	const the = calledThe(tree.name, 'tree');
	const light = take(ledger, tree.light, {
		path: `${path}.light`,
		about,
		value: 'none',
		says: null,
		needed: `Whether to light ${the}.`
	});
	const lit = light !== 'none';
	const sized = (part: 'spread' | 'height' | 'crownBase' | 'trunk', value: number, what: string, needed: string) =>
		take(ledger, tree[part], {
			path: `${path}.${part}`,
			about,
			value,
			says: lit ? `${capital(the)} is taken to be ${what.replace('#', formatLength(value, units))}.` : null,
			needed: lit ? needed : null
		});
	const form = take(ledger, tree.form, {
		path: `${path}.form`,
		about,
		value: 'round',
		says: lit ? `${capital(the)} is taken to have a round crown.` : null,
		needed: null
	});
	const shape = treeShapes[form];
	const given = (size: number | 'unsure' | undefined): size is number => typeof size === 'number';
	const guess = given(tree.height) ? tree.height / shape.tall : shape.spread;
	const spread = sized('spread', round(guess), '# across the canopy', `How wide the canopy of ${the} is.`);
	const height = sized('height', round(spread * shape.tall), '# tall', `How tall ${the} is.`);
	const crownBase = sized(
		'crownBase',
		round(height * shape.base),
		'# clear below its branches',
		`How high the lowest branches of ${the} are.`
	);
	// Trunk about one fortieth of the height, common for garden trees; never thinner than a broom handle.
	const trunk = sized(
		'trunk',
		Math.max(0.03, round(height / 40)),
		'# through the trunk at chest height',
		`How thick the trunk of ${the} is.`
	);
	const ground = take(ledger, tree.ground, {
		path: `${path}.ground`,
		about,
		value: 'lawn',
		says: lit ? `${capital(the)} is taken to stand in mown lawn.` : null,
		needed: null
	});
	const seenFrom = take(ledger, tree.seenFrom, {
		path: `${path}.seenFrom`,
		about,
		value: 'street',
		says: lit ? `${capital(the)} is taken to be looked at from the street.` : null,
		needed: null
	});
	return { spread, height, crownBase, trunk, form, ground, light, seenFrom };
}

/** To the centimetre, so that a guess does not look measured. */
const round = (metres: number): number => Math.round(metres * 100) / 100;
