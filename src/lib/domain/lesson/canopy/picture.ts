import { formatLength, type UnitSystem } from '../../shared/units';
import type { SidePicture } from '../pictures';
import type { Uplit } from './tree';

/** Degrees beyond which an edge of a beam is drawn no flatter. */
const flattest = 80;

/** Where an edge of the beam meets a height: x from the trunk's middle, the lamp on its left. */
function edgeAt(from: { x: number; z: number }, degrees: number, z: number): { x: number; z: number } {
	const held = Math.max(-flattest, Math.min(flattest, degrees));
	return { x: from.x + (z - from.z) * Math.tan((held * Math.PI) / 180), z };
}
export interface Told {
	/** The offset is what has changed. */
	changed?: boolean;
	/** Before the reveal the lamp does not stand yet. */
	hidden?: boolean;
}
/** The tree from the side with the first of its lights to the left of its trunk. */
export function sideOf(
	{ tree, lights, aim }: Uplit,
	units: UnitSystem,
	{ changed = false, hidden = false }: Told
): SidePicture {
	const bark = -tree.trunkDiameter / 2;
	const { height, crownBase, spread } = tree;
	const lamp = { x: bark - aim.offset, z: lights[0]!.height };
	const middle = (crownBase + height) / 2;
	const offset = formatLength(aim.offset, units);
	const across = formatLength(spread, units);
	const below = -0.06 * height;
	const above = 1.08 * height;
	return {
		kind: 'side',
		alt: hidden
			? `A tree from the side, its canopy ${across} across, before its uplight stands.`
			: `A tree from the side, its canopy ${across} across. The uplight stands ${offset} from the bark and leans ${aim.lean.toFixed(0)}° towards the crown.`,
		tree: { height, spread, crownBase, trunk: tree.trunkDiameter },
		wall: null,
		lamp: hidden ? null : { ...lamp, lean: aim.lean, beamAngle: aim.beam },
		lit: hidden
			? null
			: {
					from: edgeAt(lamp, aim.lean - aim.beam / 2, middle),
					to: edgeAt(lamp, aim.lean + aim.beam / 2, middle)
				},
		measures: [
			// From right to left: a figure longer than its tape then stands over it, clear of the crown.
			{ from: { x: spread / 2, z: above }, to: { x: -spread / 2, z: above }, text: across },
			...(hidden
				? []
				: [{ from: { x: lamp.x, z: below }, to: { x: bark, z: below }, text: offset, ...(changed ? { changed } : {}) }])
		]
	};
}
