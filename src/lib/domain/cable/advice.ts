/**
 * What would put a problem of the circuit right, as changes to the answers. Each is tried on the whole circuit, laid out
 * again as it will be when the person takes it, and offered only if the problem is gone and no other comes in its place.
 */
import { isHard, type Choice, type ChoiceProblem } from '../circuit';
import { fixtureModels } from '../shared/catalogue';
import type { Advice } from '../shared/findings';
import type { Fixture } from '../placement';
import type { Yard } from '../yard';
import { withChange, type Change } from './changes';
import { stops, type Layout } from './layout';
import { priceOf } from './loads';
import { proposalsFor, type Proposal } from './proposals';
import { volts } from './wording';

/** A circuit laid out for some answers. */
export interface Trial {
	layout: Layout;
	fixtures: readonly Fixture[];
}
/** Lays the circuit out for changed answers; null where nothing is fed. */
export type Attempt = (yard: Yard) => Trial | null;

/** Offered for one problem, at most. */
const mostOffered = 5;
/**
 * Circuits laid out for one plan, at most: the worst problems come first, and one change often cures several. Where much is
 * wrong, each takes long, and little helps.
 */
function mostTried({ layout, fixtures }: Trial): number {
	const { length } = layout.choice.problems;
	if (fixtures.length > 60) return 3;
	return length > 8 ? 4 : length > 4 ? 8 : 12;
}

const countOf = ({ problems }: Choice, code: ChoiceProblem['code'], which: (p: ChoiceProblem) => boolean): number =>
	problems.filter((one) => one.code === code && which(one)).length;
const all = () => true;

/** Of one kind together, how far beyond its limit: volts, amperes, volt-amperes. */
const excessOf = ({ problems }: Choice, code: ChoiceProblem['code'], which: (p: ChoiceProblem) => boolean): number =>
	problems.reduce(
		(sum, one) => sum + (one.code === code && which(one) ? Math.abs((one.value ?? 0) - (one.limit ?? 0)) : 0),
		0
	);
/** What may become worse by rounding, or because terminals sag a little more. */
const leeway = 1.02;

/**
 * Fewer stops of this kind, and none more or worse of any other; for what is no stop, the same of all that is said, and no
 * stop more.
 */
function isCured(problem: ChoiceProblem, before: Choice, after: Choice): boolean {
	const which = isHard(problem) ? isHard : all;
	if (stops(after) > stops(before)) return false;
	if (countOf(after, problem.code, which) >= countOf(before, problem.code, which)) return false;
	return after.problems.filter(which).every(({ code }) => {
		if (code === problem.code) return true;
		if (countOf(after, code, which) > countOf(before, code, which)) return false;
		return excessOf(after, code, which) <= leeway * excessOf(before, code, which);
	});
}

/** What the lamp or the run in question then comes to. */
function givesOf(problem: ChoiceProblem, { layout, fixtures }: Trial): string {
	const { choice } = layout;
	const label = fixtures.find(({ id }) => id === problem.load)?.label;
	const lamp = choice.runs.flatMap(({ lamps }) => lamps).find(({ id }) => id === problem.load);
	if (label && lamp && lamp.volts !== null) {
		const worst = problem.code === 'lamp-high' ? lamp.high : lamp.low;
		return `${label} then gets ${volts(lamp.volts)} V${worst === null ? '' : `, at the worst ${volts(worst)}`}.`;
	}
	const { transformer, loadVoltAmps } = choice;
	if (problem.code === 'transformer-load' || problem.run === null)
		return `Lamps and cables then take ${Math.round(loadVoltAmps)} VA of the ${transformer.voltAmps} VA transformer.`;
	const amps = choice.runs.map(({ nominal }) => (nominal.ok ? nominal.sourceAmps : 0));
	return `No run then carries more than ${Math.max(...amps).toFixed(1)} A.`;
}

const fixturesPrice = (fixtures: readonly Fixture[], yard: Yard): number =>
	fixtures.reduce((sum, { model }) => {
		const sold = fixtureModels.find(({ id }) => id === model);
		return sum + (sold ? priceOf(yard, sold) : 0);
	}, 0);

/** By problem, in their order: what cures it, the cheapest first. */
export function adviceFor(yard: Yard, now: Trial, attempt: Attempt): Advice[][] {
	const tried = new Map<string, Trial | null>();
	const most = mostTried(now);
	const trialOf = (change: Change): Trial | null => {
		const key = JSON.stringify(change);
		if (!tried.has(key)) {
			if (tried.size >= most) return null;
			tried.set(key, attempt(withChange(yard, change)));
		}
		return tried.get(key)!;
	};
	const { layout } = now;
	const { problems } = layout.choice;
	const costOf = (trial: Trial): number => {
		const lamps = fixturesPrice(trial.fixtures, yard) - fixturesPrice(now.fixtures, yard);
		return trial.layout.choice.cost - layout.choice.cost + lamps;
	};
	/** Other lamps clear them all and save money, and only looks and corners are out: no more than that is to be sought. */
	const isEnough = (trial: Trial): boolean =>
		trial.layout.choice.problems.length === 0 && stops(layout.choice) === 0 && costOf(trial) <= 0;
	const offer = (problem: ChoiceProblem, { id, change, named, ...plain }: Proposal): Advice[] => {
		const trial = trialOf(change);
		if (!trial || !isCured(problem, layout.choice, trial.layout.choice)) return [];
		const called = named ? named(trial.layout) : plain;
		if (!called) return [];
		const { kind, label } = called;
		return [{ id, kind, label, gives: givesOf(problem, trial), cost: costOf(trial), changes: change }];
	};
	return problems.map((problem) => {
		const offered: Advice[] = [];
		for (const proposal of proposalsFor(problem, layout, yard)) {
			const found = offer(problem, proposal);
			offered.push(...found);
			if (proposal.kind === 'lamps' && found.length > 0 && isEnough(trialOf(proposal.change)!)) break;
		}
		return offered.toSorted((a, b) => a.cost - b.cost).slice(0, mostOffered);
	});
}
