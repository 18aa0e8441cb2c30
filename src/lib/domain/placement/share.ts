/** Groups of trees that one light serves: rule tree.group. */
import type { Point } from '../shared/geometry';
import { towards } from '../photometry';
import type { Tree } from '../site';
import type { Drafting, Uplight } from './drafting';
import { stockBeamFor } from './models';
import { reason } from './reasons';
import { sightOn, type Sight } from './sight';
import { called, capital } from './wording';

/** A crown whose middle lies further than this off the axis, degrees, is past the half-intensity edge of the widest stock beam. */
const offAxis = 30;

interface Spot {
	x: number;
	y: number;
	z: number;
}
const degrees = (cosine: number): number => (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI;

/** Turns a light that stands near `wanted` to serve this tree as well. Whether there was one that can. */
export function share(d: Drafting, tree: Tree, wanted: Point, crown: Spot, sight: Sight): boolean {
	let best: { light: Uplight; aim: Spot; needed: number; away: number } | null = null;
	const { within } = d.figures['tree.group'];
	const { maxLean } = d.figures['tree.aim'];
	d.uplights.some(wanted, within, (light, away) => {
		if (light.trees.includes(tree) || (best && best.away <= away)) return false;
		const found = aimedAt(light, crown, sight, maxLean);
		if (found) best = { light, away, ...found };
		return false;
	});
	if (!best) return false;
	turn(d, tree, crown, best);
	return true;
}

/** Aim between the crowns, and the beam that takes them in; null where it would lean too far, dazzle or miss one. */
function aimedAt(light: Uplight, crown: Spot, sight: Sight, maxLean: number): { aim: Spot; needed: number } | null {
	const crowns = [...light.crowns, crown];
	const mean = (of: (c: Spot) => number): number => crowns.reduce((sum, c) => sum + of(c), 0) / crowns.length;
	const { at, height } = light.placed.fixture;
	const lamp = { x: at.x, y: at.y, z: height };
	const aim = { x: mean((c) => c.x), y: mean((c) => c.y), z: mean((c) => c.z) };
	const axis = towards(lamp, aim);
	if (degrees(axis.z) > maxLean) return null;
	let needed = 0;
	for (const [i, c] of crowns.entries()) {
		const line = towards(lamp, c);
		const off = degrees(axis.x * line.x + axis.y * line.y + axis.z * line.z);
		if (off > offAxis) return null;
		const spread = i < light.trees.length ? light.trees[i]!.spread : 0;
		needed = Math.max(needed, off + (Math.atan2(spread / 2, Math.max(c.z - height, 0.1)) * 180) / Math.PI);
	}
	return sightOn(sight, at, height, aim).spare > 0 ? { aim, needed: 2 * needed } : null;
}

function turn(
	d: Drafting,
	tree: Tree,
	crown: Spot,
	{ light, aim, needed }: { light: Uplight; aim: Spot; needed: number }
): void {
	const { fixture } = light.placed;
	const { within } = d.figures['tree.group'];
	const first = called(light.trees[0]!.name, 'tree');
	const own = (Math.atan2(tree.spread / 2, Math.max(crown.z - fixture.height, 0.1)) * 360) / Math.PI;
	const beam = Math.max(fixture.lamp.beamAngle, stockBeamFor(Math.max(needed, own)));
	const bright = tree.light === 'bright' || light.trees.some((t) => t.light === 'bright');
	const model = d.pick({ body: 'spot', mount: fixture.mount, strength: bright ? 'bright' : 'soft', beam });
	light.placed.fixture = {
		...fixture,
		aim: d.aimed(fixture.at, fixture.height, aim),
		model: model.id,
		lamp: model.lamp,
		reasons: [
			...fixture.reasons,
			d.own.reason(
				reason(
					'tree.group',
					light.trees.length + 1,
					'trees',
					`It serves ${called(tree.name, 'tree')} too, which wants a light within ${d.len(within)} of here: aimed between the crowns with a ${model.lamp.beamAngle}° beam.`
				)
			)
		],
		also: [...(fixture.also ?? []), { kind: 'tree', id: tree.id }]
	};
	light.trees.push(tree);
	light.crowns.push(crown);
	d.say(
		'placement.group',
		'note',
		{ kind: 'tree', id: tree.id },
		'tree.group',
		`${capital(called(tree.name, 'tree'))} shares a light with ${first}: their lights would stand within ${d.len(within)} of each other. One aimed between them lights both.`
	);
}
