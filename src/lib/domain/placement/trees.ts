/** Uplights on trees: rules tree.offset, tree.count, tree.beam, tree.aim, tree.well, tree.roots. */
import { distance, moved, rotated, towards, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Tree } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { stockBeamFor } from './models';
import { input, reason } from './reasons';
import { clearestOf, type Sight } from './sight';
import type { Fixture, Reason } from './types';
import { called, capital, either } from './wording';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Metres from the bark to the lamp for a canopy of so many metres across (rule tree.offset). */
export function barkOffset(spread: number): number {
	const { nearSpread, nearOffset, farSpread, farOffset } = rules['tree.offset'].figures;
	const share = Math.min(1, Math.max(0, (spread - nearSpread) / (farSpread - nearSpread)));
	return nearOffset + share * (farOffset - nearOffset);
}

/** How many uplights a tree takes (rule tree.count). A columnar one takes two when it is tall. */
export function uplightCount(tree: Pick<Tree, 'form' | 'spread' | 'height'>): number {
	const { one, two, perFurther, columnarTall } = rules['tree.count'].figures;
	if (tree.form === 'columnar') return tree.height > columnarTall ? 2 : 1;
	if (tree.spread <= one) return 1;
	return tree.spread <= two ? 2 : 3 + Math.floor((tree.spread - two) / perFurther);
}

/** Degrees round the trunk from the side it is looked at from, as many to the left as to the right. */
export function bearingsRound(count: number): number[] {
	if (count === 1) return [0];
	// Two: both on the side that is looked at, a sixth of a turn off it, so that the crown has depth and nobody looks into a lamp behind the trunk.
	if (count === 2) return [-60, 60];
	const step = 360 / count;
	const list = count % 2 === 1 ? [0] : [];
	for (let k = 0; list.length < count; k++) {
		const angle = count % 2 === 1 ? (k + 1) * step : (k + 0.5) * step;
		list.push(-angle, angle);
	}
	return list;
}

interface Aim {
	offset: number;
	/** Degrees of the beam needed for the crown, from where the lamp is. */
	needed: number;
	beam: number;
	/** Degrees from upright to the middle of the crown. */
	lean: number;
	aimHeight: number;
	held: boolean;
}

/** Where the lamp stands off the bark and how it points. Heights in metres above the ground. */
export function treeAim(tree: Tree, lampHeight: number): Aim {
	const { maxLean } = rules['tree.aim'].figures;
	const middle = Math.max((tree.crownBase + tree.height) / 2, lampHeight + 0.1);
	const rise = middle - lampHeight;
	const furthest = rise * Math.tan((maxLean * Math.PI) / 180);
	const wanted = barkOffset(tree.spread);
	const trunk = tree.trunkDiameter / 2;
	// A low wide crown: nearer to the bark rather than laid over; never nearer than the nearest of the rule.
	const offset = Math.max(
		Math.min(wanted, furthest - trunk),
		Math.min(wanted, rules['tree.offset'].figures.nearOffset)
	);
	const aside = trunk + offset;
	const lean = degrees(Math.atan2(aside, rise));
	const held = lean > maxLean + 1e-9;
	const needed = 2 * degrees(Math.atan2(tree.spread / 2, rise));
	return {
		offset,
		needed,
		beam: stockBeamFor(needed),
		lean: Math.min(lean, maxLean),
		aimHeight: held ? lampHeight + aside / Math.tan((maxLean * Math.PI) / 180) : middle,
		held
	};
}

/** Turns tried when the wanted place is taken: first away from the side looked at. */
const turnsTried = [0, 15, 30, 45, 60, 90, 120, 150, 180];

export function placeTree(d: Drafting, tree: Tree, sight: Sight): void {
	if (tree.light === 'none') return;
	const target: Fixture['target'] = { kind: 'tree', id: tree.id };
	const mount = tree.ground === 'lawn' ? 'flush' : 'stake';
	const base = d.pick({ body: 'spot', mount, strength: tree.light });
	const aim = treeAim(tree, base.lampHeight);
	const model = d.pick({ body: 'spot', mount, strength: tree.light, beam: aim.beam });
	const count = uplightCount(tree);
	const view = towards(tree.at, tree.seenFrom);
	const facing: Point = view.x === 0 && view.y === 0 ? { x: 0, y: 1 } : view;
	const reasons = treeReasons(d, tree, aim, model, count);
	const crown = { x: tree.at.x, y: tree.at.y, z: aim.aimHeight };
	const inTheWay = new Set<Cause>();
	let placed = 0;
	let dazzling = 0;
	// The first of each pair on the side towards the house: so the mirror image of a yard is lit alike.
	const hand = d.handed(tree.at) * (facing.y >= -1e-9 ? 1 : -1);
	for (const angle of bearingsRound(count).map((degrees) => degrees * hand)) {
		const sense = angle === 0 ? hand : Math.sign(angle);
		const around = function* (): Generator<Point> {
			for (const turn of turnsTried) {
				for (const way of turn === 0 || turn === 180 ? [1] : [1, -1]) {
					const at = moved(tree.at, rotated(facing, angle + sense * turn * way), tree.trunkDiameter / 2 + aim.offset);
					const cause = d.ground.blocked(at, model.headDiameter / 2, 'ground');
					if (cause) inTheWay.add(cause);
					else yield at;
				}
			}
		};
		const best = clearestOf(sight, around(), model.lampHeight, crown);
		if (!best) continue;
		if (!best.clear) dazzling++;
		d.place({ target, role: 'uplight', technique: 'uplight', at: best.at, model, aim: crown, reasons });
		placed++;
	}
	treeFindings(d, tree, target, { aim, count, placed, dazzling, inTheWay: [...inTheWay] });
}

function treeReasons(d: Drafting, tree: Tree, aim: Aim, model: FixtureModel, count: number): Reason[] {
	const { len } = d;
	const { nearSpread, nearOffset, farSpread, farOffset } = rules['tree.offset'].figures;
	const sloped = tree.spread > nearSpread && tree.spread < farSpread;
	const rise = Math.max((tree.crownBase + tree.height) / 2 - model.lampHeight, 0.1);
	const nearer = aim.offset < barkOffset(tree.spread) - 1e-9;
	const ratio = tree.spread / 2 / rise;
	return [
		reason(
			'tree.offset',
			aim.offset,
			'm',
			nearer
				? `${len(aim.offset)} from the bark: nearer than its ${len(tree.spread)} canopy asks, so that the beam leans no more than ${rules['tree.aim'].figures.maxLean}°.`
				: `${len(aim.offset)} from the bark, for a canopy ${len(tree.spread)} across.`,
			sloped && !nearer
				? {
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
					}
				: {}
		),
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
		)
	];
}

interface Outcome {
	aim: Aim;
	count: number;
	placed: number;
	dazzling: number;
	inTheWay: Cause[];
}
function treeFindings(
	d: Drafting,
	tree: Tree,
	target: Fixture['target'],
	{ aim, count, placed, dazzling, inTheWay }: Outcome
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
			`The crown of ${the} is too low and wide to reach by a beam that leans at most ${rules['tree.aim'].figures.maxLean}°. Expect light on its near half, or light it from further off by hand.`
		);
	if (dazzling > 0)
		d.say(
			'placement.sight',
			'look',
			target,
			'tree.aim',
			`${dazzling === 1 ? 'A light' : `${dazzling} lights`} on ${the} may shine into the eyes of someone on a walk or drive close by. Fit a cowl, and look from there on the first night.`
		);
	d.say(
		'placement.roots',
		'note',
		target,
		'tree.roots',
		`Within ${d.len(tree.rootRadius)} of the trunk of ${the} dig by hand; go round roots thicker than ${d.len(rules['tree.roots'].figures.keepRoot)}.`
	);
}

/** Metres a lamp stands off the bark: for checks. */
export const fromBark = (at: Point, tree: Tree): number => distance(at, tree.at) - tree.trunkDiameter / 2;
