/** A tree seen from the side, heights upwards as −y: crown and trunk as path data, metres. `x`: where its foot stands. */
import type { Point } from '../../domain/shared/geometry';
import type { Tree } from '../../domain/site';
import { closedPath, mm, moveTo } from '../path';

type Standing = Pick<Tree, 'form' | 'spread' | 'height' | 'crownBase' | 'trunkDiameter'>;
const up = (x: number, z: number): Point => ({ x, y: -z });

/** How wide each form is part of the way up its crown, as a share of half its spread; the light is reckoned with the round one. */
const profile: Readonly<Record<Tree['form'], (part: number) => number>> = {
	round: (part) => Math.sqrt(Math.max(0, 1 - (2 * part - 1) ** 2)),
	spreading: (part) => Math.sqrt(Math.max(0, 1 - ((part - 0.4) / (part < 0.4 ? 0.4 : 0.6)) ** 2)),
	'multi-stem': (part) => Math.sqrt(Math.max(0, 1 - ((part - 0.6) / (part < 0.6 ? 0.6 : 0.4)) ** 2)),
	columnar: (part) => Math.max(0, 1 - Math.abs(2 * part - 1) ** 5) ** 0.5,
	conical: (part) => 1 - part,
	vase: (part) => Math.sqrt(Math.max(0, 1 - ((part - 0.75) / (part < 0.75 ? 0.75 : 0.25)) ** 2)),
	weeping: (part) => Math.sqrt(Math.max(0, 1 - part ** 2)),
	palm: (part) => Math.sqrt(Math.max(0, 1 - (2 * part - 1) ** 2))
};
/** Half the width of the crown at a height, metres; 0 above and below it. */
export function halfWidthAt(tree: Standing, z: number): number {
	const deep = tree.height - tree.crownBase;
	const part = deep > 0 ? (z - tree.crownBase) / deep : -1;
	return part < 0 || part > 1 ? 0 : (tree.spread / 2) * profile[tree.form](part);
}

/** Closer at both ends, where crowns are round. */
const steps = 40;
const part = (n: number): number => (1 - Math.cos((Math.PI * n) / steps)) / 2;
/** Fronds from the top of the stem, out and down. */
function fronds(tree: Standing, x: number): string {
	const foot = up(x, (tree.crownBase + tree.height) / 2);
	return [-1, -0.8, -0.45, 0.45, 0.8, 1]
		.flatMap((share) => [-1, 1].map((sign) => ({ share, sign })))
		.map(({ share, sign }) => {
			const tip = up(x + (share * tree.spread) / 2, sign > 0 ? tree.height - Math.abs(share) * 0.3 : tree.crownBase);
			const bow = up(x + (share * tree.spread) / 4, tree.height);
			return `${moveTo(foot)}Q${mm(bow.x)} ${mm(bow.y)} ${mm(tip.x)} ${mm(tip.y)}`;
		})
		.join('');
}
/** The outline of the crown. */
export function crownPath(tree: Standing, x = 0): string {
	if (tree.form === 'palm') return fronds(tree, x);
	const deep = tree.height - tree.crownBase;
	const side = (sign: number) =>
		Array.from({ length: steps + 1 }, (_, n) => {
			const z = tree.crownBase + deep * part(n);
			return up(x + sign * halfWidthAt(tree, z), z);
		});
	return closedPath([...side(-1), ...side(1).toReversed()]);
}
/** The trunk up to a little way into the crown; several stems lean apart. */
export function trunkPath(tree: Standing, x = 0): string {
	const half = Math.max(tree.trunkDiameter / 2, 0.02);
	const top =
		tree.form === 'palm' ? (tree.crownBase + tree.height) / 2 : tree.crownBase + 0.25 * (tree.height - tree.crownBase);
	const stem = (lean: number, share: number) =>
		closedPath([
			up(x - half * share, 0),
			up(x + half * share, 0),
			up(x + lean + half * share * 0.6, top),
			up(x + lean - half * share * 0.6, top)
		]);
	if (tree.form !== 'multi-stem') return stem(0, 1);
	return [-1, 0, 1].map((n) => stem((n * tree.spread) / 8, 0.5)).join('');
}
