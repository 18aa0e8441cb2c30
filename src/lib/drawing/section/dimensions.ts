import { formatLength } from '../../domain/shared/units';
import type { DimensionMark } from '../marks';
import { gapFor, up, type Place } from './place';

/** Height, crown base, spread, and how far the lamp stands from the bark. `right`: of the drawing's contents, metres. */
export function dimensions({ tree, look, units, px, label }: Place, right: number): DimensionMark[] {
	const tall = (key: string, x: number, from: number, to: number, edge: number): DimensionMark => ({
		kind: 'dimension',
		key,
		from: up(x, from),
		to: up(x, to),
		text: formatLength(Math.abs(to - from), units),
		witness: [[up(edge, to), up(x, to)], ...(from > 0 ? [[up(edge, from), up(x, from)] as const] : [])]
	});
	const wide = (
		key: string,
		y: number,
		from: number,
		to: number,
		witness: DimensionMark['witness']
	): DimensionMark => ({
		kind: 'dimension',
		key,
		from: { x: from, y },
		to: { x: to, y },
		text: formatLength(to - from, units),
		witness
	});
	const gap = gapFor(label) * px;
	const half = tree.spread / 2;
	const above = -(tree.height + 20 * px);
	const below = 20 * px;
	const bark = -tree.trunkDiameter / 2;
	return [
		...(tree.crownBase > 0.05 ? [tall('crown-base', right + gap, 0, tree.crownBase, 0)] : []),
		tall('height', right + 2.6 * gap, 0, tree.height, 0),
		wide('spread', above, -half, half, [
			[up(-half, tree.height / 2), { x: -half, y: above }],
			[up(half, tree.height / 2), { x: half, y: above }]
		]),
		...(bark - look.lamp.s > 0.02
			? [
					wide('bark', below, look.lamp.s, bark, [
						[up(look.lamp.s, 0), { x: look.lamp.s, y: below }],
						[up(bark, 0), { x: bark, y: below }]
					])
				]
			: [])
	];
}
