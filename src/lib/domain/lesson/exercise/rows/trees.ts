/** Rules tree.offset, tree.count, tree.aim. */
import { barkOffset } from '../../../placement';
import { distance } from '../../../shared/geometry';
import { rules } from '../../../shared/rules';
import { tradeFigures } from '../../../shared/settings';
import type { Tree } from '../../../site';
import type { RuleRow } from '../types';
import { factOf, findingsOf, labelFor, measured, rowOf, type Ground, type Measure } from './ground';

const hints = {
	offset: 'Draw a circle round the trunk at the distance the canopy asks for, and stand the light on it.',
	count: 'Look the canopy up in the rule, and stand that many lights round the trunk.',
	aim: 'Stand it nearer to the trunk, or on the side away from the walk.'
};
/** Reasons of the engine's own lights on a tree. */
const ownReason = ({ exercise }: Ground, tree: Tree, rule: string) =>
	exercise.own.fixtures
		.find(({ target }) => target.kind === 'tree' && target.id === tree.id)
		?.reasons.find((reason) => reason.rule === rule);
const onTree = ({ lights }: Ground, tree: Tree) =>
	lights.filter(({ kind, fixture }) => kind === 'tree' && fixture.target.id === tree.id);
const wantedTrees = (ground: Ground): Tree[] =>
	ground.plan.site.trees.filter((tree) => ownReason(ground, tree, 'tree.count') !== undefined);

function offsets(ground: Ground): Measure[] {
	const { farOffset, farLow, farHigh } = rules['tree.offset'].figures;
	return wantedTrees(ground).flatMap((tree) => {
		const reason = ownReason(ground, tree, 'tree.offset');
		// A low crown, or a thick trunk, sets another distance than its canopy: the engine's own reason has it.
		const right = reason?.value ?? barkOffset(tree.spread, tradeFigures.figures);
		return onTree(ground, tree).map(({ fixture }): Measure => {
			const away = distance(fixture.at, tree.at) - tree.trunkDiameter / 2;
			return {
				lights: [fixture.label],
				subject: `${fixture.label} stands`,
				value: away,
				// What the rule allows round its figure at a wide canopy, in proportion.
				low: (right * farLow) / farOffset,
				high: (right * farHigh) / farOffset,
				from: `from the bark of the ${tree.name}`,
				...(away < 0 ? { fault: `${fixture.label} stands in the trunk of the ${tree.name}.` } : {}),
				working: reason?.working
			};
		});
	});
}
function countRow(ground: Ground): RuleRow {
	const trees = wantedTrees(ground);
	if (trees.length === 0) return rowOf('tree.count', 'none', ['No tree is to be lit.']);
	const counts = trees.map((tree) => ({
		tree,
		have: onTree(ground, tree),
		want: ownReason(ground, tree, 'tree.count')?.value ?? 1
	}));
	// From three on the rule says so many or more.
	const off = ({ have, want }: (typeof counts)[number]): number =>
		want >= 3 && have.length > want ? 0 : Math.abs(have.length - want);
	const worst = Math.max(...counts.map(off));
	const dark = counts.some(({ have }) => have.length === 0);
	return rowOf(
		'tree.count',
		worst === 0 ? 'held' : worst === 1 && !dark ? 'nearly' : 'not',
		counts.map(
			({ tree, have, want }) =>
				`The ${tree.name} has ${have.length} ${have.length === 1 ? 'light' : 'lights'}; its canopy asks for ${want}.`
		),
		{ hint: hints.count, lights: counts.flatMap(({ have }) => have.map(({ fixture }) => fixture.label)) }
	);
}
function aimRow(ground: Ground): RuleRow {
	const { maxLean } = rules['tree.aim'].figures;
	const up = ground.lights.filter(({ kind }) => kind === 'tree');
	if (up.length === 0) return rowOf('tree.aim', 'none', ['No light shines up a tree.']);
	// A wash is told of too, as of any light set by hand; what it sends into eyes is rule glare.level.
	const ids = new Set(up.map(({ fixture }) => fixture.id));
	const found = findingsOf(ground, 'tree.aim').filter(({ about }) => ids.has(about?.id ?? ''));
	if (found.length > 0)
		return rowOf('tree.aim', 'not', found.map(factOf), {
			hint: hints.aim,
			lights: found.flatMap((one) => labelFor(ground, one))
		});
	const most = up.toSorted((a, b) => (b.fixture.aim?.tilt ?? 0) - (a.fixture.aim?.tilt ?? 0))[0]!.fixture;
	return rowOf(
		'tree.aim',
		'held',
		[
			`${most.label} leans ${(most.aim?.tilt ?? 0).toFixed(0)}° from upright; ${maxLean}° is the most. No beam meets an eye.`
		],
		{ lights: [most.label] }
	);
}
export const treeRows = (ground: Ground): RuleRow[] => [
	measured('tree.offset', offsets(ground), ground, { hint: hints.offset, none: 'No light shines up a tree.' }),
	countRow(ground),
	aimRow(ground)
];
