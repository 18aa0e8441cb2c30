/** The lesson's tree, alone in a yard, and its uplight as the engine places it. Metres. */
import { makePlan, type Plan } from '../../plan';
import { fixtureModels } from '../../shared/catalogue';
import { rules } from '../../shared/rules';
import { tradeFigures, type Figures } from '../../shared/settings';
import type { UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import { placeFixtures, treeAim, type Aim, type Fixture } from '../../placement';
import { makeSite, type Tree } from '../../site';
import { blankYard, type Yard } from '../../yard';

export interface TreeSizes {
	spread: number;
	height: number;
	crownBase: number;
	trunk: number;
}
function yardOf(sizes: TreeSizes, units: UnitSystem): Yard {
	return {
		...blankYard(),
		place: { units, faces: 180, surroundings: 'suburb', location: 'unsure' },
		lot: { street: 20 },
		trees: [
			{
				id: 'tree',
				name: 'tree',
				at: { along: 0, out: 8 },
				...sizes,
				form: 'round',
				ground: 'bed',
				light: 'bright',
				seenFrom: 'street'
			}
		],
		walks: [],
		drives: []
	};
}
/** All that is planned for the tree alone. */
export const planOf = (sizes: TreeSizes, units: UnitSystem): Plan => makePlan(yardOf(sizes, units));
/** The tree as the survey has it. */
export const treeOf = (sizes: TreeSizes, units: UnitSystem): Tree => makeSite(yardOf(sizes, units)).trees[0]!;

export interface Uplit {
	tree: Tree;
	/** All its lights; the first is the one that is drawn. */
	lights: Fixture[];
	aim: Aim;
	/** Of the offset, where it is between the rule's two ends. */
	offsetWorking: Working | null;
}
/** The tree with its lights, as in any plan. */
export function uplit(sizes: TreeSizes, units: UnitSystem): Uplit {
	const yard = yardOf(sizes, units);
	const site = makeSite(yard);
	const lights = placeFixtures(site, yard).fixtures;
	const first = lights[0]!;
	const tree = site.trees[0]!;
	const { headDiameter } = fixtureModels.find(({ id }) => id === first.model)!;
	return {
		tree,
		lights,
		aim: treeAim(tree, first.height, headDiameter / 2, tradeFigures.figures),
		offsetWorking: first.reasons.find(({ rule }) => rule === 'tree.offset')?.working ?? null
	};
}

export type OffsetRule = Pick<Figures['tree.offset'], 'nearSpread' | 'nearOffset' | 'farSpread' | 'farOffset'>;
/** How a tree's light stands and points where rule tree.offset has such figures, for a lamp so high above the ground with a head 80 mm across. */
export function aimBy(rule: OffsetRule, sizes: TreeSizes, lampHeight: number, units: UnitSystem): Aim {
	const figures: Figures = {
		...tradeFigures.figures,
		'tree.offset': { ...rules['tree.offset'].figures, ...rule }
	};
	return treeAim(treeOf(sizes, units), lampHeight, 0.04, figures);
}
