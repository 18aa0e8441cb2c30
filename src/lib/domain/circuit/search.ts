/**
 * The cheapest combination of one candidate per run that passes: runs are chosen one after the other, what surely
 * cannot pass or cannot be cheaper is cut off (branch and bound), and the rest is verified by solving. Exhaustive at home
 * size; after `looks` partial combinations or `failures` in vain, the best found so far stands.
 */
import { rules } from '../shared/rules';
import { Bounds, type Sag } from './bounds';
import type { Candidate } from './candidates';
import type { Entrant } from './lines';

const looks = 12_000;
const failures = 30;

export interface Terms {
	sag: Sag;
	/** Lamps of one group are to be alike. */
	even: boolean;
	/** Amperes of a cable of that candidate. */
	ampsLimit: (candidate: Candidate) => number;
	/** Only what costs less is of use. */
	atMost: number;
}
/** Whole hundredths of a cent, so that the order of adding does not decide between equals. */
const price = (cost: number) => Math.round(cost * 1e4);

/** Candidates that may pass by themselves, and by candidate those of other runs that it rules out; null where none can pass. */
function prepare(entrants: Entrant[], { sag, even, ampsLimit }: Terms) {
	const start: number[] = [];
	let count = 0;
	for (const { lines } of entrants) {
		start.push(count);
		count += lines.length;
	}
	const dead = new Uint8Array(count);
	const alike = rules['cable.volts'].figures.alike;
	const isAlive = (run: number, k: number) => dead[start[run]! + k] === 0;
	let bounds = new Bounds(entrants, sag, isAlive);
	bounds.settle(0);
	bounds = new Bounds(entrants, sag, isAlive, bounds);
	for (let changed = true; changed;) {
		changed = false;
		if (!bounds.settle(0)) return null;
		entrants.forEach((entrant, run) =>
			entrant.offer.candidates.forEach((candidate, k) => {
				if (dead[start[run]! + k]) return;
				const isEven = !even || bounds.mayMatch(entrant, k, entrant, k, alike);
				if (isEven && bounds.mayHold(entrant, k, ampsLimit(candidate))) return;
				dead[start[run]! + k] = 1;
				changed = true;
			})
		);
		if (changed) bounds = new Bounds(entrants, sag, isAlive, bounds);
	}
	const excluded: number[][] = Array.from({ length: count }, () => []);
	for (let i = 0; i < (even ? entrants.length : 0); i++)
		for (let j = i + 1; j < entrants.length; j++) {
			const [a, b] = [entrants[i]!, entrants[j]!];
			if (!a.groups.some((group) => group >= 0 && b.groups.includes(group))) continue;
			for (let k = 0; k < a.lines.length; k++)
				for (let l = 0; l < b.lines.length; l++)
					if (!dead[start[i]! + k] && !dead[start[j]! + l] && !bounds.mayMatch(a, k, b, l, alike)) {
						excluded[start[i]! + k]!.push(start[j]! + l);
						excluded[start[j]! + l]!.push(start[i]! + k);
					}
		}
	return { start, dead, bounds, excluded };
}

/** What `verify` makes of the cheapest combination that it gives something for; else null. */
export function cheapest<T>(
	entrants: Entrant[],
	terms: Terms,
	verify: (candidates: Candidate[]) => T | null
): T | null {
	const runs = entrants.length;
	const prepared = prepare(entrants, terms);
	if (!prepared) return null;
	const { start, dead, bounds, excluded } = prepared;
	const costs = entrants.map(({ offer }) => offer.candidates.map(({ cost }) => price(cost)));
	const limits = entrants.map(({ offer }) => offer.candidates.map(terms.ampsLimit));
	/** How many of the chosen rule a candidate out. */
	const barred = Int32Array.from(dead);
	const chosen = new Int32Array(runs);
	const most = terms.atMost < Infinity ? price(terms.atMost) : Infinity;
	let best: { found: T; cost: number; rank: number } | null = null;
	let looked = 0;
	let failed = 0;

	/** Adds the cheapest that the runs from `from` on can still be; null where one has nothing left. */
	const atLeast = (from: number, cost: number, rank: number): { cost: number; rank: number } | null => {
		for (let run = from; run < runs; run++) {
			const own = costs[run]!;
			let k = 0;
			while (k < own.length && barred[start[run]! + k]! > 0) k++;
			if (k === own.length) return null;
			cost += own[k]!;
			rank += k;
		}
		return { cost, rank };
	};
	const isBeaten = (cost: number, rank: number): boolean =>
		cost >= most || (best !== null && (cost > best.cost || (cost === best.cost && rank >= best.rank)));
	const holds = (depth: number): boolean => {
		if (!bounds.settle(depth)) return false;
		for (let run = 0; run < depth; run++)
			if (!bounds.mayHold(entrants[run]!, chosen[run]!, limits[run]![chosen[run]!]!)) return false;
		return true;
	};
	const visit = (run: number, cost: number, rank: number): void => {
		if (run === runs) {
			const found = verify(entrants.map(({ offer }, r) => offer.candidates[chosen[r]!]!));
			if (found) best = { found, cost, rank };
			else failed++;
			return;
		}
		const own = costs[run]!;
		for (let k = 0; k < own.length; k++) {
			if (looked >= looks || failed >= failures) return;
			const id = start[run]! + k;
			if (barred[id]! > 0) continue;
			looked++;
			chosen[run] = k;
			for (const other of excluded[id]!) barred[other]!++;
			bounds.add(run, entrants[run]!.lines[k]!);
			const least = atLeast(run + 1, cost + own[k]!, rank + k);
			if (least && !isBeaten(least.cost, least.rank) && holds(run + 1)) visit(run + 1, cost + own[k]!, rank + k);
			for (const other of excluded[id]!) barred[other]!--;
		}
	};
	visit(0, 0, 0);
	return best === null ? null : (best as { found: T }).found;
}
