import { chooseBelow, isHard, type Choice, type ChooseOptions, type Feed, type RunShape } from '../circuit';
import { heldBy, inPlaces, ownId, type Hand } from './hand';
import { lay, type Drafted } from './drafts';
import type { LaidWay, Laying } from './laid';
import { leastCost } from './least';
import { asked, bounded, handWays, waysFor, type WaysOfRun } from './run-ways';
import { sketches, treeRuns } from './sharing';
import type { TreeInput } from './spanning';
import { improveTree, searchTree, type Tree } from './tree';
import type { HandSet } from './types';

/** A run as it is laid. */
export interface LaidRun extends LaidWay {
	byHand: HandSet[];
}
/** A way of sharing the lamps out that was not taken. */
export interface Lost {
	runs: number;
	/** Of the whole; where it was too dear to be solved, the least it could cost. */
	cost: number;
	choice: Choice | null;
	/** Where it was not solved, in their plain ways. */
	shared: readonly SharedRun[];
}
/** A run that may be laid. */
export interface SharedRun extends Drafted {
	byHand: HandSet[];
}
export interface Layout {
	runs: LaidRun[];
	choice: Choice;
	lost: Lost[];
	/** By run: the ways it may be laid. */
	others: ReadonlyMap<string, () => readonly Drafted[]>;
}

/** While every way of sharing the lamps out has a problem, so many are solved, the cheapest by estimate first. */
const mostInVain = 3;

interface Solved {
	runs: SharedRun[];
	choice: Choice;
}
/** `isFull`: with the other ways to feed a run. */
type Entered = Solved & { ways: readonly WaysOfRun[]; isFull: boolean };

/** Null where nothing keeps every limit for less than a finite `atMost`. */
function chooseFor(ways: readonly WaysOfRun[], options: ChooseOptions, all: boolean, atMost: number): Solved | null {
	const choice = chooseBelow(
		ways.map((run) => asked(run, all)),
		options,
		atMost
	);
	if (!choice) return null;
	const taken = new Map(choice.runs.map(({ id, shape }) => [id, shape]));
	const runs = ways.map((run): SharedRun => {
		const shape: RunShape | undefined = taken.get(run.plain.shape.id);
		const way = shape === run.plain.shape ? run.plain : (run.others().find((one) => one.shape === shape) ?? run.plain);
		const feed: Feed = way.shape.feed ?? 'end';
		return { ...way, byHand: run.hand ? heldBy(run.hand, feed) : [] };
	});
	return { runs, choice };
}
const choose = (ways: readonly WaysOfRun[], options: ChooseOptions, all: boolean): Solved =>
	chooseFor(ways, options, all, Infinity)!;

/** What stops the plan even in the nominal case. */
export const stops = (choice: Choice): number => choice.problems.filter(isHard).length;

/** What is cheaper by no more than this is not cheaper, currency. */
export const worthIt = 0.01;

/** Stops first, then lesser problems, then money: cable, digging, transformer. */
export function isBetter(a: Choice, b: Choice): boolean {
	if (stops(a) !== stops(b)) return stops(a) < stops(b);
	if (a.problems.length !== b.problems.length) return a.problems.length < b.problems.length;
	return a.cost < b.cost - worthIt;
}

/** Filament windows are about as wide as the mains wander, and next to no run of filaments keeps every limit. */
const isNarrow = (ways: readonly WaysOfRun[]): boolean =>
	ways.some(({ plain }) => plain.shape.loads.some(({ load }) => load.kind !== 'led'));

/** More lamps than this, several times what a home has, and only a few ways of sharing them out are solved, in plain ways. */
const mostSearched = 60;

/** The best of several ways of sharing out, as they are solved one after the other. */
class Contest {
	best: Entered | null = null;
	readonly lost: Lost[] = [];
	solved = 0;
	constructor(private readonly options: ChooseOptions) {}

	get isRight(): boolean {
		return this.best !== null && this.best.choice.problems.length === 0;
	}
	/** Solved in full, or with the plain ways only. */
	enter(ways: readonly WaysOfRun[], isFull: boolean): void {
		this.solved++;
		this.take({ ...choose(ways, this.options, isFull), ways, isFull });
	}
	/**
	 * Against a best that is right: solved where it could be cheaper. `least`: what it costs at least. Where there are many lamps
	 * (not `isFull`) the search is given up as soon as it is not the cheaper one.
	 */
	challenge(ways: readonly WaysOfRun[], isFull: boolean, least: number): void {
		const below = this.best!.choice.cost - worthIt;
		const isOpen = least < below;
		if (isOpen) this.solved++;
		const next = isOpen ? chooseFor(ways, this.options, isFull, isFull ? Infinity : below) : null;
		if (next) this.take({ ...next, ways, isFull });
		else this.lost.push({ runs: ways.length, cost: least, choice: null, shared: ways.map(plainly) });
	}
	private take(next: Entered): void {
		if (this.best && !isBetter(next.choice, this.best.choice)) this.lose(next);
		else {
			if (this.best && this.best.ways !== next.ways) this.lose(this.best);
			this.best = next;
		}
	}
	/** The other ways to feed its runs, where the best has been solved without. */
	complete(): void {
		if (this.best && !this.best.isFull) this.enter(this.best.ways, true);
	}
	private lose({ runs, choice, ways }: Solved & { ways: readonly WaysOfRun[] }): void {
		if (ways !== this.best?.ways) this.lost.push({ runs: runs.length, cost: choice.cost, choice, shared: runs });
	}
}

/**
 * Fixtures shared out among runs and the supply chosen for them. Runs set by hand stand; the rest is shared out in the ways
 * from the fewest runs that the secondary allows up to six. As soon as one keeps every limit, each other is solved as long
 * as it could still be cheaper (`leastCost`); until then they are compared by their plain ways where hopes are small, and
 * the other ways to feed a run are tried for the best of them. Its tree is then searched for longer (`searchTree`), and what
 * is found has to win by the same measure. Null with no fixture to feed.
 */
export function layOut(laying: Laying, hand: Hand, options: ChooseOptions): Layout | null {
	const held = hand.runs.map((run) => handWays(run, laying));
	if (hand.rest.length === 0) {
		if (held.length === 0) return null;
		const byId = new Map(held.map((ways) => [ways.plain.shape.id, ways]));
		const ordered = inPlaces(hand.runs, 0).map((run) => byId.get(run!.id)!);
		return laidOut({ ...choose(ordered, options, true), ways: ordered }, [], laying);
	}
	const all = (tree: Tree): WaysOfRun[] => {
		const own = treeRuns(tree);
		let next = 0;
		return inPlaces(hand.runs, own.length).map((run, place) => {
			if (run) return held[hand.runs.indexOf(run)]!;
			const { members, hanging } = own[next++]!;
			return waysFor(ownId(place, hand.runs.length + own.length, hand.ids), members, hanging, laying);
		});
	};
	const contest = new Contest(options);
	const isSmall = hand.rest.length <= mostSearched;
	const trees = new Map<readonly WaysOfRun[], { input: TreeInput; tree: Tree }>();
	const tryOut = (input: TreeInput, tree: Tree): void => {
		const ways = all(tree);
		trees.set(ways, { input, tree });
		if (contest.isRight) contest.challenge(ways, isSmall, leastCost(ways.map(bounded), options));
		else contest.enter(ways, isSmall && contest.solved === 0 && !isNarrow(ways));
	};
	for (const { input, tree } of sketches(hand.rest, laying, options)) {
		if ((!contest.isRight || !isSmall) && contest.solved >= mostInVain) break;
		tryOut(input, improveTree(input, tree));
		if (contest.isRight && isSmall) contest.complete();
	}
	// The winner's tree is worth a longer search.
	const won = isSmall && contest.best && trees.get(contest.best.ways);
	const better = won ? searchTree(won.input, won.tree) : null;
	if (won && better && better !== won.tree) tryOut(won.input, better);
	if (isSmall) contest.complete();
	const { best, lost } = contest;
	return best && laidOut(best, lost, laying);
}
const plainly = ({ plain, hand }: WaysOfRun): SharedRun => ({
	...plain,
	byHand: hand ? heldBy(hand, plain.shape.feed ?? 'end') : []
});
const laidOut = ({ runs, choice, ways }: Solved & Pick<Entered, 'ways'>, lost: Lost[], laying: Laying): Layout => ({
	runs: runs.map((run) => laidRun(run, laying)),
	choice,
	lost,
	others: new Map(ways.map(({ plain, others }) => [plain.shape.id, () => [plain, ...others()]]))
});
export const laidRun = (run: SharedRun, laying: Laying): LaidRun => ({ ...lay(run, laying), byHand: run.byHand });
