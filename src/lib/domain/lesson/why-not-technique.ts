/** Rules of a technique that stayed out for a light of it. Metres. */
import { rules } from '../shared/rules';
import { settings } from '../shared/settings';
import { calledThe } from '../yard';
import type { Check, Planned } from './why-not';
import { labelOf, len, nearestArea, nearestLight, The, type Light } from './why-not-words';

const treeOf = ({ site }: Planned, { target }: Light) =>
	target.kind === 'tree' ? site.trees.find(({ id }) => id === target.id) : undefined;
const wallOf = ({ site }: Planned, { target }: Light) =>
	target.kind === 'wall' ? site.walls.find(({ id }) => id === target.id) : undefined;

function skirt(plan: Planned, light: Light): string | null {
	const tree = treeOf(plan, light);
	const { base } = rules['tree.skirt'].figures;
	const isNarrow = tree?.form === 'conical' || tree?.form === 'columnar';
	if (!tree || (isNarrow && tree.crownBase < base)) return null;
	return `${The(tree.name, 'tree')}: form ${tree.form}, lowest branches ${len(plan, tree.crownBase)} up. The rule is for conical and columnar trees with branches below ${len(plan, base)}.`;
}
function bark(plan: Planned, light: Light): string | null {
	const tree = treeOf(plan, light);
	if (!tree || !light.reasons.some(({ rule }) => rule === 'tree.skirt')) return null;
	return `Branches come down to ${len(plan, tree.crownBase)}: the light is set out from them, ${len(plan, tree.spread)} across, and not from the bark.`;
}
/** Beyond what anybody may set for it, so that it holds whatever figure is in force. */
const furthestShared = settings['tree.group/within'].most;
function group(plan: Planned, light: Light): string | null {
	const tree = treeOf(plan, light);
	if (!tree) return null;
	const near = nearestLight(plan, light, ({ target }) => target.kind === 'tree' && target.id !== tree.id);
	if (!near || near.away <= furthestShared) return null;
	return `The nearest light of another tree, ${labelOf(near.thing)}, is ${len(plan, near.away)} away. One serves two trees that want it within about ${len(plan, rules['tree.group'].figures.within)}.`;
}
function gable(plan: Planned, light: Light): string | null {
	const wall = wallOf(plan, light);
	if (!wall) return null;
	const { least } = rules['wall.gable'].figures;
	const rise = (wall.peak ?? wall.height) - wall.height;
	if (wall.peak === null) return `Its wall is ${len(plan, wall.height)} high and ends level, without a gable.`;
	if (rise < least) return `The gable of its wall rises ${len(plan, rise)}. One is lit from ${len(plan, least)} up.`;
	const near = nearestLight(
		plan,
		light,
		({ target, reasons }) => target.id === wall.id && reasons.some(({ rule }) => rule === 'wall.gable')
	);
	return near && `${labelOf(near.thing)}, ${len(plan, near.away)} from here, shines up into the gable.`;
}
function porch(plan: Planned, light: Light): string | null {
	if (!wallOf(plan, light)) return null;
	const near = nearestArea(plan.site, light, ({ kind, under }) => kind === 'porch' && under !== undefined);
	if (!near || near.away <= 0) return null;
	return `The roof of ${calledThe(near.thing.name, 'porch')} is ${len(plan, near.away)} away and did not move it.`;
}
function mouth(plan: Planned, light: Light): string | null {
	if (light.target.kind !== 'drive') return null;
	const near = nearestLight(
		plan,
		light,
		({ target, reasons }) => target.id === light.target.id && reasons.some(({ rule }) => rule === 'drive.mouth')
	);
	return near && `${labelOf(near.thing)} marks the mouth of the drive, ${len(plan, near.away)} from here.`;
}
export const ofTechnique: readonly Check[] = [
	['tree.skirt', skirt],
	['tree.offset', bark],
	['tree.group', group],
	['wall.gable', gable],
	['wall.porch', porch],
	['drive.mouth', mouth]
];
