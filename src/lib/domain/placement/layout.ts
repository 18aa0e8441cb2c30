/** Where along a wall lamps stand: metres from its `from` end. Comes out mirrored for a mirrored wall. */

export interface Span {
	start: number;
	end: number;
}
export interface WallRow {
	/** Pieces of wall between openings and ends, ascending. */
	piers: readonly Span[];
	length: number;
	/** Widest spacing, and how far the last lamp of a row may be from the end of what it lights. */
	spacing: number;
	end: number;
	/** Way to turn when two places are as good: towards `to` (1) or towards `from` (−1). */
	prefer: 1 | -1;
	/** Whether a lamp may stand at a place. */
	free: (at: number) => boolean;
	/** Places to fall back to, ascending, each of them free. */
	places: readonly number[];
	/** Filled in: place taken -> place an even row wanted, where that was not free. */
	shifts?: Map<number, number>;
	/** Middles of the doors of a front: the lamps on either side stand as far from it. */
	doors?: readonly number[];
}

/** The wall between its openings. */
export function piersOf(length: number, openings: readonly Span[]): Span[] {
	const piers: Span[] = [];
	let from = 0;
	for (const { start, end } of [...openings].sort((a, b) => a.start - b.start)) {
		if (start > from + 1e-9) piers.push({ start: from, end: Math.min(start, length) });
		from = Math.max(from, end);
	}
	if (length > from + 1e-9) piers.push({ start: from, end: length });
	return piers;
}

/** The better of two as good: nearer to the middle of the wall, else the way preferred. So a mirror shows the same one. */
function wins(p: number, over: number, { length, prefer }: WallRow): boolean {
	const gain = Math.abs(over - length / 2) - Math.abs(p - length / 2);
	return Math.abs(gain) > 1e-6 ? gain > 0 : (p - over) * prefer > 0;
}
function nearestOf(places: readonly number[], at: number, row: WallRow): number | null {
	let best: number | null = null;
	for (const p of places) {
		const gain = best === null ? 1 : Math.abs(best - at) - Math.abs(p - at);
		if (gain > 1e-6 || (gain >= -1e-6 && best !== null && wins(p, best, row))) best = p;
	}
	return best;
}

/**
 * Even places on a pier, none further apart than `spacing`, the outer ones `end` in from its edges, or up to a tenth more
 * where that saves a lamp.
 */
function evenly({ start, end: stop }: Span, { spacing, end }: WallRow): number[] {
	const size = stop - start;
	const steps = Math.ceil((size - 2.2 * end) / spacing - 1e-9);
	if (steps <= 0) return [(start + stop) / 2];
	const inset = Math.max(end, (size - steps * spacing) / 2);
	const step = (size - 2 * inset) / steps;
	return Array.from({ length: steps + 1 }, (_, i) => start + inset + step * i);
}

/** Places of the lamps, ascending: pier by pier, so that corners and piers are lit and openings left alone. */
export function layOut(row: WallRow): readonly number[] {
	// Nearer than this two lamps do the work of one.
	const least = row.spacing / 2;
	const placed: number[] = [];
	for (const pier of row.piers) {
		const places = row.places.filter((p) => p >= pier.start && p <= pier.end);
		if (places.length === 0) continue;
		const settled = (at: number): number => {
			if (row.free(at)) return at;
			const taken = nearestOf(places, at, row) ?? at;
			row.shifts?.set(taken, at);
			return taken;
		};
		const wanted = joinClose(evenly(pier, row).map(settled), least, settled);
		placed.push(...fillGaps(wanted, places, least, row));
	}
	const kept = withoutNeedless(
		placed.sort((a, b) => a - b),
		row
	);
	return (row.doors ?? []).reduce<readonly number[]>((list, door) => evenAbout(door, list, row), kept);
}

/**
 * The two lamps next to a door as far from its middle as each other, where both places are free and on the piers they had,
 * and no gap beside them opens beyond one spacing. The farther one comes in first: what is nearer lights the step too.
 */
function evenAbout(door: number, list: readonly number[], row: WallRow): readonly number[] {
	const right = list.findIndex((at) => at > door);
	if (right < 1) return list;
	const [a, b] = [door - list[right - 1]!, list[right]! - door];
	if (Math.abs(a - b) < 1e-6 || Math.abs(a - b) > row.spacing / 2) return list;
	const pierOf = (at: number): number =>
		row.piers.findIndex(({ start, end }) => at >= start - 1e-9 && at <= end + 1e-9);
	const allowed = (from: number | undefined, to: number | undefined, was: number): boolean =>
		from === undefined || to === undefined || to - from <= Math.max(row.spacing, was) + 1e-9;
	for (const away of [Math.min(a, b), (a + b) / 2, Math.max(a, b)]) {
		const [left, next] = [door - away, door + away];
		const [before, after] = [list[right - 2], list[right + 1]];
		if (!row.free(left) || !row.free(next)) continue;
		if (pierOf(left) !== pierOf(door - a) || pierOf(next) !== pierOf(door + b)) continue;
		if (before !== undefined && left - before < row.spacing / 2) continue;
		if (after !== undefined && after - next < row.spacing / 2) continue;
		if (!allowed(before, left, door - a - (before ?? 0)) || !allowed(next, after, (after ?? 0) - door - b)) continue;
		return list.with(right - 1, left).with(right, next);
	}
	return list;
}

/** Lamps that were pushed together stand for one: the free place nearest to their middle. */
function joinClose(list: readonly number[], least: number, settled: (at: number) => number): number[] {
	const groups: number[][] = [];
	for (const at of [...list].sort((a, b) => a - b)) {
		const last = groups.at(-1);
		if (last && at - last.at(-1)! < least - 1e-9) last.push(at);
		else groups.push([at]);
	}
	return groups
		.map((group) => (group.length === 1 ? group[0]! : settled((group[0]! + group.at(-1)!) / 2)))
		.sort((a, b) => a - b);
}

/** Where neighbours on one pier stand too far apart, one more at the free place nearest to the middle between. */
function fillGaps(wanted: readonly number[], places: readonly number[], least: number, row: WallRow): number[] {
	const list = [...wanted];
	for (let i = 1; i < list.length; i++) {
		const from = list[i - 1]!;
		const to = list[i]!;
		if (to - from <= row.spacing * 1.05) continue;
		const inside = places.filter((p) => p - from >= least && to - p >= least);
		const at = nearestOf(inside, (from + to) / 2, row);
		if (at === null) continue;
		list.splice(i, 0, at);
		i--;
	}
	return list;
}

/** Takes out, one at a time, the lamp whose neighbours stand within one spacing of each other: they light its place too. */
function withoutNeedless(sorted: readonly number[], row: WallRow): number[] {
	const list = [...sorted];
	for (;;) {
		let least = row.spacing;
		let needless = -1;
		for (let i = 1; i < list.length - 1; i++) {
			const gain = least - (list[i + 1]! - list[i - 1]!);
			if (gain < -1e-6 || (needless >= 0 && gain < 1e-6 && !wins(list[i]!, list[needless]!, row))) continue;
			least -= gain;
			needless = i;
		}
		if (needless < 0) return list;
		list.splice(needless, 1);
	}
}
