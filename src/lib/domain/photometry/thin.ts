import { tablePhotometry, tableLumens, type CandelaTable } from './table';

export interface ThinLimits {
	vertical: number;
	horizontal: number;
	/** Candela in all. */
	values: number;
}
export interface Thinned {
	table: CandelaTable;
	/** Most by which it is off at the angles of the table given, as a share of the greatest candela there. */
	off: number;
}

/** Angles along one side of a table: `rows[k]` holds the candela at angle k, across the other side. */
interface Side {
	angles: readonly number[];
	rows: readonly Float64Array[];
	/** Indices that are kept, ascending. */
	kept: number[];
	/** By place in `kept`: what it costs to leave that angle out, candela. */
	costs: number[];
}

/** Greatest difference, candela, between the rows left out between two kept ones and the straight line that joins these. */
function costBetween({ angles, rows }: Side, from: number, to: number): number {
	const [a, b] = [rows[from]!, rows[to]!];
	let most = 0;
	for (let k = from + 1; k < to; k++) {
		const share = (angles[k]! - angles[from]!) / (angles[to]! - angles[from]!);
		const row = rows[k]!;
		for (let i = 0; i < row.length; i++) most = Math.max(most, Math.abs(row[i]! - a[i]! - share * (b[i]! - a[i]!)));
	}
	return most;
}
/** The ends of a side stay: they say how far the table reaches. */
const costAt = (side: Side, place: number): number =>
	place <= 0 || place >= side.kept.length - 1
		? Infinity
		: costBetween(side, side.kept[place - 1]!, side.kept[place + 1]!);

function sideOf(angles: readonly number[], rows: readonly Float64Array[]): Side {
	const side: Side = { angles, rows, kept: angles.map((_, k) => k), costs: [] };
	side.costs = side.kept.map((_, place) => costAt(side, place));
	return side;
}
const cheapest = ({ costs }: Side): number => costs.reduce((best, cost, k) => (cost < costs[best]! ? k : best), 0);
function leaveOut(side: Side, place: number): void {
	side.kept.splice(place, 1);
	side.costs.splice(place, 1);
	for (const k of [place - 1, place]) if (k >= 0 && k < side.kept.length) side.costs[k] = costAt(side, k);
}

/**
 * A table with fewer angles: time and again the one goes that straight lines between its neighbours make up for best. Then
 * all candela are scaled to the lumens of the table given. The table itself where it is within the limits.
 */
export function thinned(table: CandelaTable, most: ThinLimits): Thinned {
	const { vertical, horizontal, symmetry, candela } = table;
	if (vertical.length <= most.vertical && horizontal.length <= most.horizontal && candela.length <= most.values)
		return { table, off: 0 };
	const rings = vertical.length;
	const planes = horizontal.map((_, plane) => candela.subarray(plane * rings, (plane + 1) * rings));
	const circles = vertical.map((_, i) => Float64Array.from(planes, (plane) => plane[i]!));
	const [up, round] = [sideOf(vertical, circles), sideOf(horizontal, planes)];
	while (up.kept.length > most.vertical) leaveOut(up, cheapest(up));
	while (round.kept.length > most.horizontal) leaveOut(round, cheapest(round));
	while (up.kept.length * round.kept.length > most.values) {
		const [u, r] = [cheapest(up), cheapest(round)];
		if (up.costs[u]! <= round.costs[r]!) leaveOut(up, u);
		else leaveOut(round, r);
	}
	const fewer: CandelaTable = {
		vertical: up.kept.map((i) => vertical[i]!),
		horizontal: round.kept.map((plane) => horizontal[plane]!),
		symmetry,
		candela: Float64Array.from(round.kept.flatMap((plane) => up.kept.map((i) => planes[plane]![i]!)))
	};
	const lumens = tableLumens(fewer);
	const scale = lumens > 0 ? tableLumens(table) / lumens : 1;
	const scaled = { ...fewer, candela: fewer.candela.map((value) => value * scale) };
	return { table: scaled, off: offBy(table, scaled) };
}

function offBy({ vertical, horizontal, candela }: CandelaTable, fewer: CandelaTable): number {
	const photometry = tablePhotometry(fewer);
	const peak = candela.reduce((a, b) => Math.max(a, b), 0);
	let most = 0;
	for (const [plane, c] of horizontal.entries())
		for (const [i, gamma] of vertical.entries()) {
			const value = photometry.candela(Math.cos((gamma * Math.PI) / 180), c);
			most = Math.max(most, Math.abs(value - candela[plane * vertical.length + i]!));
		}
	return peak > 0 ? most / peak : 0;
}
