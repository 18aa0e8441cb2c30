/** What is said of the lights that a budget leaves out: which, in what order, and what it takes to have them back. */
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import type { Site } from '../site';
import type { BudgetFacts } from '../yard';
import type { LeftOut, Sum } from './budget';
import type { CutKind } from './budget-cuts';
import type { Placed } from './drafting';
import type { Fixture } from './types';
import { called, capital } from './wording';

export interface BudgetJob {
	site: Site;
	budget: BudgetFacts;
	currency: string;
	/** Lights without a budget. */
	all: number;
	placed: readonly Placed[];
	leftOut: readonly LeftOut[];
}
const { share } = rules['budget.count'].figures;
/** Things of one sort that are named; more are only counted. */
const mostNamed = 3;

const lightsWord = (count: number): string => `${count} ${count === 1 ? 'light' : 'lights'}`;
/** `$600`, `€612.50`; a sign of one's own stands before the figure. */
function money(amount: number, currency: string): string {
	const digits = Number.isInteger(amount) ? 0 : 2;
	if (!/^[A-Z]{3}$/.test(currency)) return `${currency}${currency.length === 1 ? '' : ' '}${amount.toFixed(digits)}`;
	const style = { style: 'currency', currency, currencyDisplay: 'narrowSymbol', useGrouping: false } as const;
	const places = { minimumFractionDigits: digits, maximumFractionDigits: digits };
	return new Intl.NumberFormat('en', { ...style, ...places }).format(amount);
}

/** A limit in the terms that the person set it in: `12 lights`, `$600`, `12 lights and $600`. */
function limitWords({ budget, currency }: BudgetJob, sum: { fixtures: number; money: number }): string {
	const parts = [
		...(budget.fixtures === null ? [] : [lightsWord(sum.fixtures)]),
		...(budget.money === null ? [] : [money(sum.money, currency)])
	];
	return parts.join(' and ');
}
const told = (job: BudgetJob): string =>
	limitWords(job, { fixtures: job.budget.fixtures ?? 0, money: job.budget.money ?? 0 });
/** Rounded up to whole money, so that the limit named is surely enough. */
const needed = (job: BudgetJob, { fixtures, cents }: Sum): string =>
	limitWords(job, { fixtures, money: Math.ceil(cents / 100) });

function nameOf({ trees, walls, areas, strips }: Site, { kind, id }: Fixture['target']): string {
	const named = (list: readonly { id: string; name: string }[], otherwise: string): string =>
		called(list.find((one) => one.id === id)?.name ?? '', otherwise);
	if (kind === 'tree') return named(trees, 'tree');
	if (kind === 'wall') return named(walls, 'wall');
	if (kind === 'bed' || kind === 'seating')
		return named(
			areas.filter((area) => area.kind === kind),
			kind === 'bed' ? 'bed' : 'seating place'
		);
	return named(
		strips.filter((strip) => strip.kind === kind),
		kind
	);
}
/** Parts of one sort that go one after another are named together; a wall that goes in steps is named once. */
type Sort = Exclude<CutKind, 'wallEnds'>;
const sortWords: Readonly<Record<Sort, (names: string) => string>> = {
	treeFurther: (names) => `further lights on ${names}`,
	wall: (names) => names,
	tree: (names) => names,
	bed: (names) => names,
	seating: (names) => names,
	driveThin: (names) => `every other light along ${names}`,
	walkThin: (names) => `every other light on the straights of ${names}`,
	drive: (names) => `the other lights along ${names}`,
	walk: (names) => `the other lights on the straights of ${names}`
};
const manyWords: Readonly<Record<Sort, string>> = {
	treeFurther: 'trees',
	wall: 'walls',
	tree: 'trees',
	bed: 'beds',
	seating: 'seating places',
	driveThin: 'drives',
	walkThin: 'walks',
	drive: 'drives',
	walk: 'walks'
};
interface Group {
	sort: Sort;
	/** What goes of each thing, by its name. */
	kinds: Map<string, CutKind>;
	lights: number;
}
/** `the ends of the front wall (2), the oak and the birch (2)`, in the order in which they go. */
function inOrder({ site, leftOut }: BudgetJob): string {
	const groups: Group[] = [];
	for (const { kind, target, lights } of leftOut.flatMap(({ parts }) => parts)) {
		const sort = kind === 'wallEnds' ? 'wall' : kind;
		if (groups.at(-1)?.sort !== sort) groups.push({ sort, kinds: new Map(), lights: 0 });
		const group = groups.at(-1)!;
		group.kinds.set(nameOf(site, target), kind);
		group.lights += lights.length;
	}
	return groups
		.map(({ sort, kinds, lights }) => {
			const names = [...kinds].map(([name, kind]) => (kind === 'wallEnds' ? `the ends of ${name}` : name));
			const all = names.length > mostNamed ? `${names.length} ${manyWords[sort]}` : listed(names);
			return `${sortWords[sort](all)} (${lights})`;
		})
		.join('; ');
}
const listed = (names: readonly string[]): string =>
	names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** The findings, and the things (`kind id`) that have no light left. */
export function leftOutFindings(job: BudgetJob): { findings: Finding[]; dark: Set<string> } {
	const { leftOut, budget, currency } = job;
	const dark = new Set<string>();
	if (leftOut.length === 0) return { findings: [], dark };
	const gone = leftOut.flatMap(({ parts }) => parts).flatMap(({ lights }) => lights).length;
	const [first, last] = [leftOut[0]!, leftOut.at(-1)!];
	const counted =
		budget.money === null
			? ''
			: ` Each light counts with its price and ${money(share, currency)} for its share of transformer, cable and joints.`;
	const back =
		leftOut.length === 1
			? `A limit of ${needed(job, first.needs)} brings ${gone === 1 ? 'it' : 'them'} back.`
			: `A limit of ${needed(job, last.needs)} brings back the last of these, one of ${needed(job, first.needs)} all of them.`;
	const summary: Finding = {
		code: 'placement.budget',
		rank: 'look',
		message: `To keep to ${told(job)}, ${gone} of ${lightsWord(job.all)} ${gone === 1 ? 'is' : 'are'} left out, in this order: ${inOrder(job)}. ${back}${counted}`,
		about: { kind: 'power', id: 'budget.kind' },
		rule: 'budget.order'
	};
	const notes = touched(leftOut).map(({ target, lost, first: whole, last: some }): Finding => {
		const stays = job.placed.filter(({ fixture }) => serves(fixture, target)).length;
		if (stays === 0) dark.add(`${target.kind} ${target.id}`);
		const the = capital(nameOf(job.site, target));
		const left = stays === 0 ? `${the} gets no light` : `${the} keeps ${stays} of ${lightsWord(stays + lost)}`;
		const comes =
			whole === some
				? `It takes a limit of ${needed(job, whole)} to have ${stays === 0 ? 'it' : 'them all'} back.`
				: `It takes a limit of ${needed(job, some)} to have some of ${stays === 0 ? 'it' : 'them'} back, of ${needed(job, whole)} for all.`;
		return {
			code: 'placement.left-out',
			rank: 'note',
			message: `${left}, to keep to the limit. ${comes}`,
			about: { kind: target.kind, id: target.id },
			rule: 'budget.order'
		};
	});
	return { findings: [summary, ...notes], dark };
}

const serves = ({ target, also }: Fixture, { kind, id }: Fixture['target']): boolean =>
	[target, ...(also ?? [])].some((one) => one.kind === kind && one.id === id);

interface Touched {
	target: Fixture['target'];
	lost: number;
	/** Budgets that have all of them, and the first of them to come back. */
	first: Sum;
	last: Sum;
}
/** Everything that loses a light, in the order in which it first does; a tree that shared one among them. */
function touched(leftOut: readonly LeftOut[]): Touched[] {
	const list = new Map<string, Touched>();
	for (const { parts, needs } of leftOut)
		for (const { fixture } of parts.flatMap(({ lights }) => lights))
			for (const target of [fixture.target, ...(fixture.also ?? [])]) {
				const key = `${target.kind} ${target.id}`;
				const known = list.get(key);
				if (known) list.set(key, { ...known, lost: known.lost + 1, last: needs });
				else list.set(key, { target, lost: 1, first: needs, last: needs });
			}
	return [...list.values()];
}

/** What is never left out is more than the budget. */
export function overFinding(job: BudgetJob, sum: Sum): Finding {
	const { budget, currency } = job;
	const parts = [
		...(budget.fixtures !== null && sum.fixtures > budget.fixtures
			? [`${lightsWord(sum.fixtures)}, ${sum.fixtures - budget.fixtures} more than ${budget.fixtures}`]
			: []),
		...(budget.money !== null && sum.cents > Math.round(budget.money * 100)
			? [
					`${money(sum.cents / 100, currency)}, ${money((sum.cents - Math.round(budget.money * 100)) / 100, currency)} more than ${money(budget.money, currency)}`
				]
			: [])
	];
	const byHand = job.placed.some(({ fixture }) => fixture.byHand) ? ', and what you set by hand,' : '';
	return {
		code: 'placement.budget-over',
		rank: 'look',
		message: `The lights that keep people from a fall${byHand} come to ${parts.join(' and to ')}: they stay all the same. Raise the limit, or leave a walk, the drive or the number without light.`,
		about: { kind: 'power', id: 'budget.kind' },
		rule: 'budget.order'
	};
}
