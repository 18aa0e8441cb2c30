/** Shapes of a picture from the side: x from the lit thing's middle, z up, metres. */
import type { SidePicture } from '$lib/domain/lesson';
import type { View } from './view';

type XZ = { x: number; z: number };
type Lamp = NonNullable<SidePicture['lamp']>;

/** Corners of the beam: the lamp, where its edges end, and last where its axis does. Without what it covers it reaches as far as the lamp is off, twice. */
export function beamPoints({ x, z, lean, beamAngle }: Lamp, lit: SidePicture['lit']): XZ[] {
	if (lit) {
		const height = (lit.from.z + lit.to.z) / 2;
		// Onto a wall the axis ends on the line between the two; upwards at their height.
		const upright = Math.abs(lit.from.x - lit.to.x) < 1e-6;
		const slope = Math.tan((lean * Math.PI) / 180);
		const axis = upright
			? { x: lit.from.x, z: z + (lit.from.x - x) / slope }
			: { x: x + (height - z) * slope, z: height };
		return [lit.to, { x, z }, lit.from, axis];
	}
	const reach = Math.max(1, 2 * Math.abs(x));
	const towards = (degrees: number): XZ => ({
		x: x + reach * Math.sin((degrees * Math.PI) / 180),
		z: z + reach * Math.cos((degrees * Math.PI) / 180)
	});
	return [towards(lean + beamAngle / 2), { x, z }, towards(lean - beamAngle / 2), towards(lean)];
}

/** A leafy outline: an ellipse from the lowest branches to the top, in shallow bows. */
export function crownPath(tree: NonNullable<SidePicture['tree']>, view: View): string {
	const bows = 14;
	const middle = view.at({ x: 0, y: -(tree.crownBase + tree.height) / 2 });
	const [rx, ry] = [(tree.spread / 2) * view.scale, ((tree.height - tree.crownBase) / 2) * view.scale];
	const at = (n: number) => ({
		x: middle.x + rx * Math.cos((2 * Math.PI * n) / bows),
		y: middle.y + ry * Math.sin((2 * Math.PI * n) / bows)
	});
	return (
		Array.from({ length: bows }, (_, n) => {
			const from = at(n);
			const to = at(n + 1);
			const bow = Math.hypot(to.x - from.x, to.y - from.y) * 0.62;
			return `${n === 0 ? `M${from.x} ${from.y}` : ''}A${bow} ${bow} 0 0 1 ${to.x} ${to.y}`;
		}).join('') + 'Z'
	);
}
