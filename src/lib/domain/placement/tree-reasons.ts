/** What is said of a tree's lights: why they stand there, and what could not be kept. */
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Tree } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { input, reason } from './reasons';
import { watcherWords, type Watcher } from './sight';
import type { Aim } from './tree-aim';
import type { Fixture, Reason } from './types';
import { called, capital, either } from './wording';

const offsetWords: Record<Aim['offsetBy'], (d: Drafting, offset: string, canopy: string) => string> = {
	canopy: (_, offset, canopy) => `${offset} from the bark, for a canopy ${canopy} across.`,
	lean: (d, offset, canopy) =>
		`${offset} from the bark: nearer than its ${canopy} canopy asks, so that the beam leans no more than ${d.figures['tree.aim'].maxLean}°${d.own.tail('tree.aim/maxLean') && ', your own figure'}.`,
	flare: (_, offset) => `${offset} from the bark: clear of the foot of so thick a trunk.`,
	skirt: (_, offset, canopy) =>
		`${offset} from the bark, just outside branches ${canopy} across that come down to the ground.`
};
function offsetReason(d: Drafting, tree: Tree, aim: Aim): Reason {
	const { nearSpread, nearOffset, farSpread, farOffset } = d.figures['tree.offset'];
	const sloped = tree.spread > nearSpread && tree.spread < farSpread && aim.offsetBy === 'canopy';
	const because = offsetWords[aim.offsetBy](d, d.len(aim.offset), d.len(tree.spread));
	const rule = aim.offsetBy === 'skirt' ? 'tree.skirt' : 'tree.offset';
	if (!sloped) return reason(rule, aim.offset, 'm', because);
	return reason(rule, aim.offset, 'm', because, {
		working: {
			label: 'Distance from the bark',
			value: aim.offset,
			unit: 'm',
			decimals: 2,
			rule: rules['tree.offset'].says,
			expression: 'a + (S − s) ÷ (w − s) × (b − a)',
			inputs: [
				input('S', 'canopy, across', tree.spread, 'm'),
				input('s', 'narrow canopy of the rule', nearSpread, 'm'),
				input('w', 'wide canopy of the rule', farSpread, 'm'),
				input('a', 'offset at a narrow canopy', nearOffset, 'm'),
				input('b', 'offset at a wide canopy', farOffset, 'm')
			],
			source: rules['tree.offset'].source
		}
	});
}

export function treeReasons(d: Drafting, tree: Tree, aim: Aim, model: FixtureModel, count: number): Reason[] {
	const { len } = d;
	const rise = Math.max((tree.crownBase + tree.height) / 2 - model.lampHeight, 0.1);
	const ratio = tree.spread / 2 / rise;
	return [
		offsetReason(d, tree, aim),
		reason(
			'tree.count',
			count,
			'lights',
			tree.form === 'columnar'
				? `A columnar tree ${len(tree.height)} tall takes ${count === 1 ? 'one light' : 'two'} close in.`
				: `A canopy ${len(tree.spread)} across takes ${count === 1 ? 'one light' : `${count} lights`}, from the side it is looked at first.`
		),
		reason(
			'tree.beam',
			aim.beam,
			'deg',
			aim.needed <= aim.beam + 1e-9
				? `The crown fills ${aim.needed.toFixed(0)}° as seen from the lamp: ${aim.beam}° is the narrowest stock beam that covers it.`
				: `The crown fills ${aim.needed.toFixed(0)}° as seen from the lamp, more than the widest stock beam, ${aim.beam}°${count > 1 ? ': the lights cover it together' : ''}.`,
			{
				working: {
					label: 'Angle the crown fills',
					value: aim.needed,
					unit: 'deg',
					decimals: 1,
					rule: `Twice the angle whose tangent is half the canopy over the height of its middle above the lamp, here ${(Math.round(ratio * 1000) / 1000).toString()}.`,
					expression: '2 × a',
					inputs: [input('a', 'half angle, by its tangent', aim.needed / 2, 'deg')],
					source: rules['tree.beam'].source
				}
			}
		),
		reason(
			'tree.aim',
			Math.round(aim.lean * 10) / 10,
			'deg',
			`Aimed ${len(aim.aimHeight)} up, ${aim.held ? 'as far over as it may lean' : 'through the middle of the crown'}: ${aim.lean.toFixed(0)}° from upright.`
		),
		reason(
			'tree.well',
			null,
			'',
			tree.ground === 'lawn'
				? 'Flush in the lawn, bedded on gravel: the mower passes over it.'
				: 'On a stake: easy to aim as the tree grows.'
		),
		reason(
			'tree.roots',
			tree.rootRadius,
			'm',
			`Within ${len(tree.rootRadius)} of the trunk dig by hand and go round thick roots.`,
			{
				working: {
					label: 'Root zone, radius',
					value: tree.rootRadius,
					unit: 'm',
					decimals: 2,
					rule: rules['tree.roots'].says,
					expression: 'k × D',
					inputs: [
						input('k', 'trunk diameters', rules['tree.roots'].figures.perDiameter, ''),
						input('D', 'trunk', tree.trunkDiameter, 'm')
					],
					source: rules['tree.roots'].source
				}
			}
		),
		reason(
			'tree.growth',
			null,
			'',
			`Leave ${len(rules['cable.slack'].figures.taken)} of cable at the lamp: in ${rules['tree.growth'].figures.years} years the crown is wider, and the light moves out and is aimed again. Look again after pruning.`
		)
	];
}

export interface Outcome {
	aim: Aim;
	count: number;
	/** Lights that serve it, and those of them that are its own. */
	placed: number;
	own: number;
	dazzling: number;
	/** Whose eyes. */
	seenBy: ReadonlySet<Watcher>;
	inTheWay: Cause[];
}
export function treeFindings(
	d: Drafting,
	tree: Tree,
	target: Fixture['target'],
	{ aim, count, placed, own, dazzling, seenBy, inTheWay }: Outcome
): void {
	const the = called(tree.name, 'tree');
	const causes = either(inTheWay.map(d.because));
	if (placed === 0) {
		d.say(
			'placement.no-room',
			'look',
			target,
			'tree.offset',
			`${capital(the)} gets no uplight: round the trunk ${causes}. Check where it stands, or leave it dark.`
		);
		return;
	}
	if (placed < count)
		d.say(
			'placement.fewer',
			'look',
			target,
			'tree.count',
			`${capital(the)} gets ${placed} of ${count} uplights: elsewhere round the trunk ${causes}.`
		);
	if (aim.held)
		d.say(
			'placement.lean',
			'look',
			target,
			'tree.aim',
			`The crown of ${the} is too low and wide to reach by a beam that leans at most ${d.figures['tree.aim'].maxLean}°. Expect light on its near half, or light it from further off by hand.`
		);
	if (dazzling > 0)
		d.say(
			'placement.sight',
			'look',
			target,
			'tree.aim',
			`${dazzling === 1 ? 'A light' : `${dazzling} lights`} on ${the} may shine into the eyes of someone ${either([...seenBy].map((who) => watcherWords[who]))}, close by. Fit a cowl, and look from there on the first night.`
		);
	if (own === 0) return;
	d.say(
		'placement.roots',
		'note',
		target,
		'tree.roots',
		`Within ${d.len(tree.rootRadius)} of the trunk of ${the} dig by hand; go round roots thicker than ${d.len(rules['tree.roots'].figures.keepRoot)}.`
	);
}
