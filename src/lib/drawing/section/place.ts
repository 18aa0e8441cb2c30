/** The section's own frame: along it from the middle of the trunk, upwards as −y; and the measures that its marks share. */
import type { Fixture } from '../../domain/placement';
import type { Point } from '../../domain/shared/geometry';
import type { UnitSystem } from '../../domain/shared/units';
import type { Tree } from '../../domain/site';
import { textWidth } from '../labels';
import type { SectionLook } from './look';

/** Further off than this many tree widths an eye is drawn nearer, its distance in words. */
const farthest = 0.9;
/** A point of the drawing: metres from the trunk, metres up. */
export const up = (s: number, z: number): Point => ({ x: s, y: -z });
/** A point `far` metres from the lamp, `turn` degrees from upright, positive towards the trunk. */
export const ray = ({ lamp }: SectionLook, turn: number, far: number): Point =>
	up(lamp.s + far * Math.sin((turn * Math.PI) / 180), lamp.z + far * Math.cos((turn * Math.PI) / 180));

/** What the marks of a section are made from. */
export interface Place {
	look: SectionLook;
	tree: Tree;
	fixture: Fixture;
	units: UnitSystem;
	px: number;
	label: number;
	/** Along the section, of the eye as drawn; true: nearer than it is. */
	eye: { s: number; drawnNearer: boolean } | null;
}

export function eyeAt(look: SectionLook, tree: Tree): Place['eye'] {
	if (!look.watcher) return null;
	const most = farthest * Math.max(tree.spread, tree.height * 0.6);
	return {
		s: look.lamp.s + look.watcher.side * Math.min(look.watcher.far, most),
		drawnNearer: look.watcher.far > most + 0.01
	};
}

/** How far the axis is drawn, and the radius of the arc that shows its angle, metres. */
export function reachOf({ look, tree, px }: Place): { far: number; r: number } {
	const far = Math.max(1, look.middle?.run ?? tree.height * 0.6);
	return { far, r: Math.min(far * 0.45, Math.max(46 * px, far * 0.25)) };
}
/** Between the tree and its dimensions, px: room for the longest figure. */
export const gapFor = (label: number): number => Math.max(textWidth('00 ft 00 in', label) * 0.62, 30);
