/**
 * The simplex method on a dense table (Dantzig, Linear Programming and Extensions, 1963): the greatest sum of x with
 * rows · x ≤ limits, x ≥ 0, where no limit is negative. Bland's rule (Mathematics of Operations Research 2, 1977) keeps it from going round.
 * Throws where the sum has no bound.
 */
export function greatestSum(rows: readonly (readonly number[])[], limits: readonly number[], size: number): number[] {
	const table = rows.map((row, i) => Float64Array.from([...row, limits[i]!]));
	const goal = new Float64Array(size + 1).fill(1);
	goal[size] = 0;
	// By column and by row: the variable that stands there; those from `size` on are the slacks.
	const columns = Array.from({ length: size }, (_, j) => j);
	const basis = rows.map((_, i) => size + i);
	for (;;) {
		const enter = lowest(columns, (j) => goal[j]! > tiny);
		if (enter < 0) break;
		const leave = leaving(table, basis, enter, size);
		if (leave < 0) throw new Error('The sum has no bound.');
		pivot(table, goal, leave, enter);
		[columns[enter], basis[leave]] = [basis[leave]!, columns[enter]!];
	}
	const x = Array.from({ length: size }, () => 0);
	basis.forEach((variable, i) => {
		if (variable < size) x[variable] = table[i]![size]!;
	});
	return x;
}
const tiny = 1e-9;

/** Of the places that will do, the one with the lowest variable; −1: none. */
function lowest(variables: readonly number[], will: (place: number) => boolean): number {
	let best = -1;
	for (let place = 0; place < variables.length; place++)
		if (will(place) && (best < 0 || variables[place]! < variables[best]!)) best = place;
	return best;
}
function leaving(table: readonly Float64Array[], basis: readonly number[], enter: number, size: number): number {
	let least = Infinity;
	for (const row of table) if (row[enter]! > tiny) least = Math.min(least, row[size]! / row[enter]!);
	return lowest(basis, (i) => table[i]![enter]! > tiny && table[i]![size]! / table[i]![enter]! <= least + tiny);
}
function pivot(table: readonly Float64Array[], goal: Float64Array, leave: number, enter: number): void {
	const row = table[leave]!;
	const by = row[enter]!;
	row[enter] = 1;
	for (let j = 0; j < row.length; j++) row[j]! /= by;
	for (const other of [...table, goal]) {
		const times = other[enter]!;
		if (other === row || times === 0) continue;
		other[enter] = 0;
		for (let j = 0; j < row.length; j++) other[j]! -= times * row[j]!;
	}
}
