import type { CandelaTable } from './table';

/** The same light with every C-plane written out, from 0 to 360 degrees, both ends given. */
export function fullCircle(table: CandelaTable): CandelaTable {
	if (table.symmetry === 'none') return table;
	const { vertical, horizontal, symmetry, candela } = table.symmetry === 'bilateral-90' ? withPlane180(table) : table;
	const rings = vertical.length;
	const planes = new Map<number, number>();
	for (const [plane, c] of horizontal.entries()) {
		const mirrored = {
			rotational: [c, 360],
			bilateral: [c, 360 - c],
			quadrant: [c, 180 - c, 180 + c, 360 - c],
			// About C90–C270: C goes to 180 − C, of the planes beyond 180 by way of 360.
			'bilateral-90': c > 180 ? [c, 540 - c] : c < 180 ? [c, 180 - c] : [0, 180, 360]
		}[symmetry as Exclude<typeof symmetry, 'none'>];
		for (const angle of mirrored) if (!planes.has(angle)) planes.set(angle, plane);
	}
	const circle = [...planes].toSorted(([a], [b]) => a - b);
	const whole = new Float64Array(circle.length * rings);
	for (const [k, [, plane]] of circle.entries())
		whole.set(candela.subarray(plane * rings, (plane + 1) * rings), k * rings);
	return { vertical, horizontal: circle.map(([c]) => c), symmetry: 'none', candela: whole };
}

/** C0 is the mirror image of C180: where a table of 90 to 270 degrees does not list that plane, it lies between two that it does. */
function withPlane180(table: CandelaTable): CandelaTable {
	const { vertical, horizontal, candela } = table;
	if (horizontal.includes(180)) return table;
	const rings = vertical.length;
	const after = horizontal.findIndex((c) => c > 180);
	const [c0, c1] = [horizontal[after - 1]!, horizontal[after]!];
	const share = (180 - c0) / (c1 - c0);
	const whole = new Float64Array(candela.length + rings);
	whole.set(candela.subarray(0, after * rings));
	for (let i = after * rings; i < (after + 1) * rings; i++)
		whole[i] = candela[i - rings]! + share * (candela[i]! - candela[i - rings]!);
	whole.set(candela.subarray(after * rings), (after + 1) * rings);
	return { ...table, horizontal: horizontal.toSpliced(after, 0, 180), candela: whole };
}
