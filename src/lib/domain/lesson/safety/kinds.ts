/** Problems about safe work: one right answer each, as the rules and the plan's own checklist have it. */
import { defer } from '../../checklist';
import { rules } from '../../shared/rules';
import { formatLength, type UnitSystem } from '../../shared/units';
import type { Problem, ProblemKind } from '../types';
import { stepsOf } from './checklists';
import { jobOf, jobs, sentenceOf, whoOf, whoWords, whyWords, type Who } from './jobs';
import { lastDayToCall, weekdays, type Weekday } from './working-days';

const choiceLevels = ['solved', 'all'] as const;
const people = ['Ada', 'Ben', 'Cleo', 'Dov', 'Esme', 'Finn', 'Gus', 'Hana', 'Ivo', 'June'] as const;
const sentenceCase = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
const listed = (words: readonly string[]): string => `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
type Posed = Pick<Problem, 'kind' | 'story' | 'ask' | 'because'>;
/** Null where a choice stands twice or none is right. */
function chosen(posed: Posed, choices: string[], right: string): Problem | null {
	if (new Set(choices).size < choices.length || !choices.includes(right)) return null;
	const answer = { type: 'choice' as const, choices, right: choices.indexOf(right) };
	return { ...posed, givens: [], steps: [], answer, engine: null };
}

export interface WhoDrawn {
	job: string;
	order: readonly Who[];
}
const who: ProblemKind<WhoDrawn> = {
	id: 'safety.who',
	lesson: 'safety',
	title: 'Who may do this work',
	levels: choiceLevels,
	draw: (random) => ({
		job: random.one(jobs).id,
		order: random.shuffled(['you', 'electrician', 'utility', 'nobody'] as const)
	}),
	pose: ({ job: id, order }) => {
		const job = jobOf(id);
		const words = (one: Who): string => sentenceCase(whoWords[one]);
		return chosen(
			{
				kind: 'safety.who',
				story: `At a house with low-voltage garden lights somebody thinks of this: “${job.work}.” “You” is the householder.`,
				ask: 'Who may do it?',
				because: `${sentenceOf(job)} ${whyWords[whoOf(job)]} ${defer.code}`
			},
			order.map(words),
			words(whoOf(job))
		);
	}
};

export interface DepthDrawn {
	ground: 'a lawn' | 'a flower bed' | 'a drive';
	/** Metres of soil over the cable, in the order of the names. */
	covers: readonly number[];
	names: readonly string[];
}
/** Metres: those of a tape's round marks, in the person's units. Between 440 and 460 mm the standard's two figures for a drive part. */
const marks: Record<UnitSystem, { shallow: readonly number[]; deep: readonly number[] }> = {
	metres: {
		shallow: [0.05, 0.08, 0.1, 0.12, 0.14, 0.15, 0.16, 0.18, 0.2, 0.25],
		deep: [0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.48, 0.5, 0.55, 0.6]
	},
	feet: {
		shallow: [2, 3, 4, 5, 6, 7, 8, 9, 10].map((inches) => inches * 0.0254),
		deep: [6, 8, 10, 12, 15, 16, 18, 20, 22, 24].map((inches) => inches * 0.0254)
	}
};
const hair = 1e-9;
const depth: ProblemKind<DepthDrawn> = {
	id: 'safety.depth',
	lesson: 'safety',
	title: 'Which cable lies deep enough',
	levels: choiceLevels,
	draw: (random, units) => {
		const ground = random.one(['a lawn', 'a flower bed', 'a drive'] as const);
		const covers = random.shuffled(marks[units][ground === 'a drive' ? 'deep' : 'shallow']).slice(0, 4);
		return { ground, covers, names: random.shuffled(people).slice(0, 4) };
	},
	pose: ({ ground, covers, names }, units) => {
		const { lawn, drive } = rules['cable.depth'].figures;
		const least = ground === 'a drive' ? drive : lawn;
		const enough = covers.filter((cover) => cover >= least - hair);
		// With all or none of them deep enough there is nothing to think about.
		if (enough.length === 0 || enough.length === covers.length) return null;
		const right = names[covers.indexOf(Math.min(...enough))]!;
		const told = names.map((name, i) => `${name} ${formatLength(covers[i]!, units)}`);
		return chosen(
			{
				kind: 'safety.depth',
				story: `Each of four people has buried low-voltage cable without a pipe under ${ground} of a house. Soil over the cable: ${listed(told)}.`,
				ask: 'Who dug no deeper than need be, and still deep enough?',
				because: `Rule: ${rules['cable.depth'].says} ${defer.code}`
			},
			[...names],
			right
		);
	}
};

/** Steps of the checklist of which each must be done before the next, in a few words. */
const inShort: Readonly<Record<string, string>> = {
	'dig-notice': 'Call the dig-notice service',
	'trench/run-1': 'Dig the trench',
	record: 'Photograph the cable in the open trench',
	unplug: 'See that the transformer is unplugged',
	'connect/run-1': 'Join the lights to the cable',
	tug: 'Pull gently on every connection',
	'gfci-test': 'Plug in and press the GFCI test button',
	measure: 'Measure the volts at the lamps',
	finish: 'Close the ground over the joints'
};
export interface OrderDrawn {
	/** Ids of four steps. */
	steps: readonly string[];
	end: 'first' | 'last';
}
const order: ProblemKind<OrderDrawn> = {
	id: 'safety.order',
	lesson: 'safety',
	title: 'What comes first',
	levels: choiceLevels,
	draw: (random) => ({
		steps: random.shuffled(Object.keys(inShort)).slice(0, 4),
		end: random.one(['first', 'last'] as const)
	}),
	pose: ({ steps, end }) => {
		const plan = stepsOf('ready').map(({ id }) => id);
		const sorted = steps.toSorted((a, b) => plan.indexOf(a) - plan.indexOf(b));
		if (steps.some((id) => !plan.includes(id) || !(id in inShort))) return null;
		const words = (id: string): string => inShort[id]!;
		return chosen(
			{
				kind: 'safety.order',
				story: `Four jobs of one plan have got out of order: ${steps.map((id) => `“${words(id)}”`).join(', ')}.`,
				ask: `Which of them comes ${end}?`,
				because: `In order: ${sorted.map(words).join('; ')}. Ground is opened after the call, joints are made unplugged, and power comes last.`
			},
			steps.map(words),
			words(end === 'first' ? sorted[0]! : sorted.at(-1)!)
		);
	}
};

export interface CallDrawn {
	dig: Weekday;
	what: string;
	name: string;
	days: readonly Weekday[];
}
const call: ProblemKind<CallDrawn> = {
	id: 'safety.call',
	lesson: 'safety',
	title: 'How early to call before digging',
	levels: choiceLevels,
	draw: (random) => {
		const dig = random.one(weekdays.slice(0, 6));
		const right = lastDayToCall(dig);
		const others = random.shuffled(weekdays.slice(0, 5).filter((day) => day !== right)).slice(0, 3);
		return {
			dig,
			what: random.one(['a trench for cable', 'holes for three lights', 'a hole for a post', 'a pit beside the walk']),
			name: random.one(people),
			days: random.shuffled([right, ...others])
		};
	},
	pose: ({ dig, what, name, days }) => {
		const { days: full } = rules['dig.notice'].figures;
		const right = lastDayToCall(dig);
		return chosen(
			{
				kind: 'safety.call',
				story: `${name} wants to dig ${what} on a ${dig} morning. Between the day of the call and the day of digging, ${full} full working days must lie. Working days are Monday to Friday, and there is no holiday.`,
				ask: 'What is the last day to call the dig-notice service?',
				because: `From ${right} on, ${full} full working days pass before ${dig}. Wait until every utility has answered. The law where you live may ask for more, and comes first.`
			},
			[...days],
			right
		);
	}
};
export const safetyKinds = [who, depth, order, call] as ProblemKind[];
