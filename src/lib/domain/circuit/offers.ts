/** What one run is offered to be, by itself. */
import { rules } from '../shared/rules';
import { levels, roundTo, strictOf, type Candidate, type Level, type Trial } from './candidates';
import { relaxedOnes } from './relaxed';
import { StrictByCost } from './strict';

const spreadOf = ({ lows, highs }: Candidate): number =>
	lows.reduce((most, low, g) => Math.max(most, highs[g]! - low), 0);

/** Cheapest first; at one price a tap that is safe with lamps out, then the one with most room, then the lower tap. */
const byCost = (a: Candidate, b: Candidate): number =>
	roundTo(a.cost - b.cost) ||
	Number(b.isSafe) - Number(a.isSafe) ||
	roundTo(b.margin - a.margin) ||
	a.tapVolts - b.tapVolts;

export interface Offer {
	level: Level;
	/** Groups that no candidate of this level keeps alike within the run itself. */
	broken: Set<string>;
	/** In the order they are to be tried; not empty. */
	readonly candidates: readonly Candidate[];
	readonly first: Candidate;
	/** Least cost of any. */
	readonly least: number;
	/** Those worked out so far; at least the first. */
	readonly known: readonly Candidate[];
	/** Works out some more; false where all are known. */
	more(): boolean;
	/** With only those that cost less than `most`. */
	below(most: number): Offer;
}

/** All known. */
class Listed implements Offer {
	constructor(
		readonly level: Level,
		readonly broken: Set<string>,
		readonly candidates: readonly Candidate[]
	) {}
	get first(): Candidate {
		return this.candidates[0]!;
	}
	get least(): number {
		return this.candidates.reduce((least, { cost }) => Math.min(least, cost), Infinity);
	}
	get known(): readonly Candidate[] {
		return this.candidates;
	}
	more(): boolean {
		return false;
	}
	below(most: number): Offer {
		return new Listed(
			this.level,
			this.broken,
			this.candidates.filter(({ cost }) => cost < most)
		);
	}
}

/** Strict ones of LED lamps, worked out from the cheapest up, as far as they are asked for: seldom is more than a few of use. */
class Unfolding implements Offer {
	readonly level = levels.strict;
	readonly broken = new Set<string>();
	readonly first: Candidate;
	readonly least: number;
	readonly known: Candidate[] = [];

	/** `batch`: the first that is not empty. */
	constructor(
		private readonly rest: StrictByCost,
		batch: readonly Candidate[]
	) {
		this.take(batch);
		this.first = this.known[0]!;
		this.least = batch.reduce((least, { cost }) => Math.min(least, cost), Infinity);
	}
	private take(batch: readonly Candidate[]): void {
		this.known.push(...batch.toSorted(byCost));
	}
	more(): boolean {
		if (this.rest.next === Infinity) return false;
		this.take(this.rest.batch());
		return true;
	}
	get candidates(): readonly Candidate[] {
		while (this.more());
		return this.known;
	}
	below(most: number): Offer {
		while (this.rest.next < most) this.more();
		return new Listed(
			this.level,
			this.broken,
			this.known.filter(({ cost }) => cost < most)
		);
	}
}

/** In their order, each worked out when it is come to. */
export function* inTurn(one: Offer): Generator<Candidate> {
	let k = 0;
	do while (k < one.known.length) yield one.known[k++]!;
	while (one.more());
}

/**
 * What one run may be: all candidates of the best level it reaches, those alike within themselves if there are any; where no
 * limit can be kept, the least bad one.
 */
export function offer(trial: Trial): Offer {
	const { groups } = trial.ways[0]!.sketcher;
	if (StrictByCost.suits(trial)) {
		const rest = new StrictByCost(trial);
		while (rest.next < Infinity) {
			const batch = rest.batch();
			if (batch.length > 0) return new Unfolding(rest, batch);
		}
		return listed(trial, groups, relaxedOnes(trial));
	}
	const strict = trial.ways.flatMap((way) => strictOf(trial, way));
	return listed(trial, groups, strict.length ? strict : relaxedOnes(trial));
}

function listed(trial: Trial, groups: readonly string[], candidates: Candidate[]): Offer {
	const level = candidates.reduce<Level>((best, c) => (c.level < best ? c.level : best), levels.none);
	const own = candidates.filter((c) => c.level === level);
	if (level === levels.none) return new Listed(level, new Set(groups), own);
	const alike = rules['cable.volts'].figures.alike + Math.max(0, trial.expected.slack) * Math.max(...trial.taps);
	const even = own.filter((c) => spreadOf(c) <= alike);
	const isUneven = (_: string, g: number) => own.every(({ lows, highs }) => highs[g]! - lows[g]! > alike);
	const broken = new Set(even.length ? [] : groups.filter(isUneven));
	return new Listed(level, broken, (even.length ? even : own).toSorted(byCost));
}
