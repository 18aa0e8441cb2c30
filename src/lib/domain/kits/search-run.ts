/** Best-first search over kits, then setups: the branch that may hold the cheapest purchase is looked into first. */
import { isClosed, isOpen, setupOf, step, survey, unknown, type Known } from './search-asked';
import { boundOf, type Bound, type Reach } from './search-bound';
import { before, beforeInHaste, type Branch, type More } from './search-branch';
import { choices, openKits, type Choice, type Kits, type Part } from './search-choices';
import { oneLine } from './search-cover';
import { ask, demandsOf, startOf, type Asked, type Demand } from './search-demands';
import { Heap } from './search-heap';
import type { Found, Limits, Problem, Purchase, SearchWish } from './search-types';

/** Steps after which it is found out whether anything passes at all, and how many questions that may take. */
const surveyed = { after: 5_000, asks: 2_000 } as const;
/** Where a wish does not say how far: a second or two. */
export const limits: Limits = { steps: 120_000, haste: 10_000 };

interface Standing {
	demands: Demand[];
	known: Known;
	bound: Bound | null;
}
/** What is the same for every wish of a problem; kept with it, for a shelf is asked once for each of its kits. */
const standing = new WeakMap<Problem, Standing>();
function standingOf(problem: Problem): Standing {
	const kept = standing.get(problem);
	if (kept) return kept;
	const made = { demands: demandsOf(problem), known: unknown(), bound: null };
	standing.set(problem, made);
	return made;
}

export function run(problem: Problem, wish: SearchWish): Found {
	const stands = standingOf(problem);
	const asked = ask(problem, stands.demands, wish);
	const { lacks } = asked;
	if (lacks.length > 0 || !asked.isPossible) return { purchases: [], isProven: true, steps: 0, lacks };
	stands.bound ??= boundOf(asked);
	return new Search(asked, stands.bound, stands.known, wish).run();
}

const plus = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, k) => value + b[k]!);

class Search {
	private heap = new Heap<Branch>(before);
	private serial = 0;
	private readonly reaches: Reach[];
	/** Choices of kits that need no further look. */
	private readonly closed = new Set<string>();
	private readonly found: { purchase: Purchase; branch: Branch }[] = [];

	constructor(
		private readonly asked: Asked,
		private readonly bound: Bound,
		private readonly known: Known,
		private readonly wish: SearchWish
	) {
		this.reaches = asked.bundles.map(({ holds }) => bound.reach(holds));
	}

	run(): Found {
		const { steps: exact, haste } = this.wish.limits ?? limits;
		this.begin();
		let isProven = true;
		let steps = 0;
		while (this.found.length < this.wish.most) {
			this.dropClosed();
			steps += 1;
			if (steps === surveyed.after && this.found.length === 0)
				survey(this.asked, this.known, [], { asks: surveyed.asks });
			if (this.known.isOpen === false) break;
			if (steps === exact) {
				isProven = false;
				this.hurry();
			}
			const branch = steps < exact + haste ? this.heap.pop() : undefined;
			if (!branch) break;
			this.take(branch);
		}
		if (!isProven) this.found.sort((a, b) => (before(a.branch, b.branch) ? -1 : 1));
		return { purchases: this.found.map(({ purchase }) => purchase), isProven, steps, lacks: [] };
	}

	private begin(): void {
		const { bundles, forced } = this.asked;
		const start = startOf(this.asked);
		const counts = bundles.map(({ offer }) => forced[offer]!);
		const holds = [...start.have].map((amount, resource) => ({ resource, amount }));
		this.visit({ ...start, counts, last: 0, held: this.bound.reach(holds), least: [] });
	}

	private hurry(): void {
		const left = this.heap.drain();
		this.heap = new Heap<Branch>(beforeInHaste);
		for (const branch of left) this.heap.push(branch);
	}

	/** What can no longer become a purchase costs nearly nothing and is no step. */
	private dropClosed(): void {
		for (let first = this.heap.first; first && this.isDone(first); first = this.heap.first) this.heap.pop();
	}
	private isDone(branch: Branch): boolean {
		if (branch.kind === 'kits') return false;
		const { known, kits } = branch.kind === 'whole' ? branch.part : branch.from;
		return isClosed(known) || this.closed.has(this.nameOf(kits));
	}

	private take(branch: Branch): void {
		if (branch.kind === 'kits') this.addKit(branch.from, branch.ways, branch.at);
		else if (branch.kind === 'choice') this.choose(branch.from, branch.ways, branch.at);
		else this.decide(branch, branch.part, branch.counts);
	}

	/** Kits just bought: what else for a setup with them, and which further kits. */
	private visit(kits: Kits): void {
		const least = openKits(this.asked, kits);
		if (least.cents < Infinity) this.goOn({ kits, chosen: [], known: this.known, spent: kits });
		this.offerKits(kits, this.furtherKits(kits), 0);
	}

	private furtherKits(kits: Kits): More[] {
		const ways: More[] = [];
		for (let bundle = kits.last; bundle < this.asked.bundles.length; bundle++) {
			const { cents, most } = this.asked.bundles[bundle]!;
			if (kits.counts[bundle]! >= most) continue;
			const missing = Math.max(0, this.bound.total - this.bound.worth(kits.held, this.reaches[bundle]!));
			const minor = kits.minor + 1 + (kits.counts[bundle] === 0 ? oneLine : 0);
			ways.push({ bundle, cents: Math.ceil(kits.cents + cents + missing - 1e-3), minor });
		}
		return ways.sort((a, b) => a.cents - b.cents || a.minor - b.minor || a.bundle - b.bundle);
	}

	private offerKits(from: Kits, ways: More[], at: number): void {
		const way = ways[at];
		if (!way) return;
		this.heap.push({ kind: 'kits', cents: way.cents, minor: way.minor, serial: this.serial++, from, ways, at });
	}

	private addKit(from: Kits, ways: More[], at: number): void {
		this.offerKits(from, ways, at + 1);
		const { bundle, minor } = ways[at]!;
		const { cents, holds } = this.asked.bundles[bundle]!;
		const have = from.have.slice();
		for (const { resource, amount } of holds) have[resource]! += amount;
		const one = this.reaches[bundle]!;
		const held = { own: plus(from.held.own, one.own), upTo: plus(from.held.upTo, one.upTo) };
		const counts = from.counts.map((count, b) => (b === bundle ? count + 1 : count));
		this.visit({ cents: from.cents + cents, minor, counts, last: bundle, have, held, least: [] });
	}

	private goOn(part: Part): void {
		this.offerChoice(part, choices(this.asked, part), 0);
	}

	private offerChoice(from: Part, ways: Choice[], at: number): void {
		const way = ways[at];
		if (!way) return;
		const { cents, minor } = way.least;
		this.heap.push({ kind: 'choice', cents, minor, serial: this.serial++, from, ways, at });
	}

	private choose(from: Part, ways: Choice[], at: number): void {
		this.offerChoice(from, ways, at + 1);
		const { resource, spent } = ways[at]!;
		const chosen = [...from.chosen, resource];
		const part: Part = { kits: from.kits, chosen, known: step(this.asked, from.known, resource), spent };
		if (chosen.length === this.asked.demands.length) {
			if (part.known.isOpen === false) return;
			const { cents, minor } = spent;
			this.heap.push({ kind: 'whole', cents, minor, serial: this.serial++, part, counts: this.countsOf(part) });
		} else if (isOpen(this.asked, part.known, chosen)) this.goOn(part);
	}

	/** A purchase than which none is cheaper, if it passes: the cheapest with its kits. */
	private decide(branch: Branch, part: Part, counts: number[]): void {
		const name = this.nameOf(part.kits);
		if (!isOpen(this.asked, part.known, part.chosen)) return;
		this.closed.add(name);
		if (this.hasIdleKit(part, counts)) return;
		this.found.push({ purchase: { setup: setupOf(this.asked, part.chosen), counts, cents: branch.cents }, branch });
	}

	private nameOf({ counts }: Kits): string {
		return this.asked.bundles.map(({ isKit }, b) => (isKit ? counts[b] : '')).join(' ');
	}

	private wanted({ chosen }: Part): Map<number, number> {
		const wanted = new Map<number, number>();
		chosen.forEach((r, d) => wanted.set(r, (wanted.get(r) ?? 0) + this.asked.demands[d]!.amount));
		return wanted;
	}

	private countsOf(part: Part): number[] {
		const { bundles, covers, forced } = this.asked;
		const counts = [...forced];
		bundles.forEach(({ offer }, b) => (counts[offer] = part.kits.counts[b]!));
		for (const [r, amount] of this.wanted(part)) covers[r]!.addCounts(amount - part.kits.have[r]!, counts);
		return counts;
	}

	/** Whether one of the kits could stay on the shelf, all else as it is; those bought anyway do not count. */
	private hasIdleKit(part: Part, counts: readonly number[]): boolean {
		const { bundles, covers, forced } = this.asked;
		const spare = [...this.wanted(part)].map(([resource, amount]) => {
			const loose = covers[resource]!.items.reduce(
				(sum, { offer, holds }) => sum + (counts[offer]! - forced[offer]!) * holds,
				0
			);
			return { resource, amount: part.kits.have[resource]! + loose - amount };
		});
		return bundles.some(
			({ offer, isKit, holds }) =>
				isKit &&
				counts[offer]! > forced[offer]! &&
				spare.every(({ resource, amount }) => {
					const own = holds.find((one) => one.resource === resource)?.amount ?? 0;
					return own <= amount;
				})
		);
	}
}
