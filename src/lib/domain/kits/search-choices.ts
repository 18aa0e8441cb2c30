/** With the kits chosen: what each further choice for a setup costs, and how little the rest can cost. */
import { cheaper, nothing, type Bill } from './search-cover';
import type { Reach } from './search-bound';
import type { Known } from './search-asked';
import type { Asked, Demand } from './search-demands';

/** Kits and other bundles bought, and what they hold. */
export interface Kits extends Bill {
	/** By bundle, those bought anyway counted. */
	counts: number[];
	/** The bundle added last: only it and later ones are added, so that each choice of kits is made once. */
	last: number;
	/** By resource. */
	have: Float64Array;
	/** What they reach, for the bound. */
	held: Reach;
	/** By demand: the least that it costs loose, exact where no other demand may share its resource, else a bound. */
	least: Bill[];
}
/** The first demands' resources are chosen. */
export interface Part {
	kits: Kits;
	chosen: number[];
	known: Known;
	/** Of the kits and of what is chosen, exact. */
	spent: Bill;
}
export interface Choice {
	resource: number;
	/** Of the kits and what is chosen with this choice, exact. */
	spent: Bill;
	/** At the least of all: with what is left to choose. */
	least: Bill;
}

/** A bill as a bound: cents are whole, so a broken sum is rounded up; then nothing is known of lines and pieces but the kits'. */
function rounded({ cents, minor }: Bill, kits: Kits): Bill {
	const whole = Math.ceil(cents - 1e-3);
	return whole > cents + 1e-3 ? { cents: whole, minor: kits.minor } : { cents: whole, minor };
}
/** Amount of a resource that the demands before `until` have taken. */
function usedOf({ demands }: Asked, chosen: readonly number[], resource: number): number {
	let used = 0;
	for (let d = 0; d < chosen.length; d++) if (chosen[d] === resource) used += demands[d]!.amount;
	return used;
}
function added(asked: Asked, kits: Kits, resource: number, used: number, amount: number): Bill {
	const cover = asked.covers[resource]!;
	const have = kits.have[resource]!;
	const after = cover.bill(used + amount - have);
	if (used <= have) return after;
	const before = cover.bill(used - have);
	return { cents: after.cents - before.cents, minor: after.minor - before.minor };
}
/**
 * What a demand adds at the least while others may still take the same resource. Loose, x costs `rate` × x or more; what the
 * packs bought already hold beyond what is used counts in full for every demand still to come. Such bounds add up: each is
 * max(0, c + rate × amount) with c ≤ 0.
 */
function addedAtLeast(asked: Asked, kits: Kits, resource: number, used: number, amount: number): Bill {
	const cover = asked.covers[resource]!;
	const have = kits.have[resource]!;
	const missing = used + amount - have;
	if (missing <= 0) return nothing;
	if (cover.rate === Infinity) return { cents: Infinity, minor: 0 };
	return { cents: Math.max(0, missing * cover.rate - cover.bill(used - have).cents), minor: 0 };
}
const sum = (a: Bill, b: Bill): Bill => ({ cents: a.cents + b.cents, minor: a.minor + b.minor });

/** How many demands from `from` on belong to the group. */
const leftIn = ({ demands }: Asked, group: number, from: number): number =>
	demands.reduce((count, demand, d) => (d >= from && demand.group === group ? count + 1 : count), 0);

/** Least of a demand, and the least without the resource that gives it. */
interface Leasts {
	best: Bill;
	by: number;
	second: Bill;
}
function leasts(asked: Asked, kits: Kits, chosen: readonly number[], demand: Demand, exact: boolean): Leasts {
	const { options, amount } = demand;
	const found: Leasts = { best: { cents: Infinity, minor: 0 }, by: -1, second: { cents: Infinity, minor: 0 } };
	for (const r of options) {
		const one = (exact ? added : addedAtLeast)(asked, kits, r, usedOf(asked, chosen, r), amount);
		if (cheaper(one, found.best)) Object.assign(found, { second: found.best, best: one, by: r });
		else if (cheaper(one, found.second)) found.second = one;
	}
	return found;
}

/** Fills in what each demand costs at the least with these kits, and returns the bound of all. */
export function openKits(asked: Asked, kits: Kits): Bill {
	kits.least = asked.demands.map(
		(demand) => leasts(asked, kits, [], demand, leftIn(asked, demand.group, 0) === 1).best
	);
	return rounded(kits.least.reduce(sum, kits), kits);
}

/** The choices for the next demand of a part, the least bound first; those that cannot be covered left out. */
export function choices(asked: Asked, { kits, chosen, spent }: Part): Choice[] {
	const depth = chosen.length;
	const demand = asked.demands[depth]!;
	// Other groups are not touched by this choice.
	let apart = spent;
	const near: { demand: Demand; leasts: Leasts }[] = [];
	const exact = leftIn(asked, demand.group, depth) === 2;
	for (let d = depth + 1; d < asked.demands.length; d++) {
		const other = asked.demands[d]!;
		const isLast = leftIn(asked, other.group, depth) === 1;
		if (other.group === demand.group) near.push({ demand: other, leasts: leasts(asked, kits, chosen, other, exact) });
		else {
			const isBegun = asked.demands.slice(0, depth).some(({ group }) => group === other.group);
			apart = sum(apart, isBegun ? leasts(asked, kits, chosen, other, isLast).best : kits.least[d]!);
		}
	}
	const found: Choice[] = [];
	for (const resource of demand.options) {
		const used = usedOf(asked, chosen, resource);
		const one = added(asked, kits, resource, used, demand.amount);
		if (one.cents === Infinity) continue;
		let least = sum(apart, one);
		for (const { demand: other, leasts: known } of near) {
			const rest = known.by === resource ? known.second : known.best;
			const after = used + demand.amount;
			const same = other.options.includes(resource)
				? (exact ? added : addedAtLeast)(asked, kits, resource, after, other.amount)
				: rest;
			least = sum(least, cheaper(same, rest) ? same : rest);
		}
		if (least.cents < Infinity) found.push({ resource, spent: sum(spent, one), least: rounded(least, kits) });
	}
	return found.sort(
		(a, b) => a.least.cents - b.least.cents || a.least.minor - b.least.minor || a.resource - b.resource
	);
}
