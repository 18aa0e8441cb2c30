/** Which run hangs on which secondary, so that none passes its amperes. */

/** Steps that the exact search may take before the even spread is kept as it is. */
const patience = 20_000;

/** Largest first, each to the least loaded: even, and within 4/3 of the best (Graham 1969). */
function spread(amps: number[], byLoad: number[], secondaries: number): number[] {
	const total = Array.from({ length: secondaries }, () => 0);
	const at = Array.from(amps, () => 0);
	for (const run of byLoad) {
		const least = total.indexOf(Math.min(...total));
		at[run] = least;
		total[least]! += amps[run]!;
	}
	return at;
}

/** Index of the secondary by run. `fits` is false where no assignment keeps every secondary within `limit` amperes. */
export function assignSecondaries(amps: number[], secondaries: number, limit: number): { at: number[]; fits: boolean } {
	const count = Math.max(1, secondaries);
	const byLoad = amps.map((_, run) => run).toSorted((a, b) => amps[b]! - amps[a]! || a - b);
	const even = spread(amps, byLoad, count);
	const total = (at: number[]) =>
		at.reduce(
			(sums, s, run) => sums.with(s, sums[s]! + amps[run]!),
			Array.from({ length: count }, () => 0)
		);
	const most = limit * (1 + 1e-12);
	if (total(even).every((sum) => sum <= most)) return { at: even, fits: true };
	const sum = amps.reduce((a, b) => a + b, 0);
	if (sum > most * count || amps.some((a) => a > most)) return { at: even, fits: false };

	const at = Array.from(amps, () => 0);
	const sums = Array.from({ length: count }, () => 0);
	let left = patience;
	const place = (k: number): boolean => {
		if (k === byLoad.length) return true;
		if (--left < 0) return false;
		const run = byLoad[k]!;
		for (let s = 0; s < count; s++) {
			// Secondaries that are equally full are interchangeable.
			if (sums.indexOf(sums[s]!) < s || sums[s]! + amps[run]! > most) continue;
			sums[s]! += amps[run]!;
			at[run] = s;
			if (place(k + 1)) return true;
			sums[s]! -= amps[run]!;
		}
		return false;
	};
	return place(0) ? { at, fits: true } : { at: even, fits: false };
}
