/** Safety: who may do what at a yard with low-voltage lights. */
import { defer } from '../../checklist';
import { transformers } from '../../shared/catalogue';
import { rules } from '../../shared/rules';
import { formatLength, type UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import type { RolesPicture } from '../pictures';
import type { Figure, Lesson, Moment, Reveal, Scene } from '../types';
import { jobOf, jobs, sentenceOf, whoOf, whoWords, whyWords, type Job, type Who } from './jobs';
import { safetyNotes } from './notes';

const asked = jobOf('receptacle');
/** One of each kind beside the one that is asked about. */
const beside = ['connect', 'gas', 'open'].map(jobOf);
const longest = 130;
const highestTap = Math.max(...transformers.flatMap(({ taps }) => taps));

const sentenceCase = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
const picture = (shown: readonly Job[], marked: Job | null): RolesPicture => ({
	kind: 'roles',
	alt: `Who may do what. ${shown.map((job) => `${job.work}: ${whoWords[whoOf(job)]}`).join('. ')}.`,
	rows: shown.map((job) => ({
		work: job.work,
		who: whoOf(job),
		words: whoWords[whoOf(job)],
		...(job === marked ? { marked: true } : {})
	}))
});
/** Low volts are no low danger: the amperes start the fire. */
const secondary: Working = {
	label: 'Most on one low-voltage circuit',
	value: rules['supply.secondary'].figures.amps * 12,
	unit: 'VA',
	decimals: 0,
	rule: `${rules['supply.secondary'].says} ${rules['supply.secondary'].why}`,
	expression: 'I × V',
	inputs: [
		{ symbol: 'I', name: 'most amperes of a secondary', value: rules['supply.secondary'].figures.amps, unit: 'A' },
		{ symbol: 'V', name: 'volts of the lamps', value: 12, unit: 'V' }
	],
	source: rules['supply.secondary'].source
};
const standing = (units: UnitSystem): Figure[] => [
	{ label: 'Call before you dig', text: `${rules['dig.notice'].figures.days} full working days` },
	{ label: 'Soil over cable in lawn', text: formatLength(rules['cable.depth'].figures.lawn, units) },
	{ label: 'One low-voltage circuit', text: `${secondary.value} VA` }
];
const scene = (units: UnitSystem): Scene => ({
	words: [
		'The lights of this yard want a receptacle on the wall, and there is none.',
		`Behind it is the house’s mains. After the transformer there are ${highestTap} volts at most.`,
		defer.code
	],
	picture: picture(beside, null),
	figures: standing(units)
});
const reveal = (units: UnitSystem): Reveal => ({
	right: whoOf(asked),
	words: [
		`${asked.work}? ${whyWords[whoOf(asked)]}`,
		'You do the low-voltage side, unplugged; the utilities mark their own lines; some things nobody does.',
		defer.code
	],
	picture: picture([asked, ...beside], asked),
	figures: [{ label: 'Who fits it', text: whoWords[whoOf(asked)], changed: true }, ...standing(units)],
	workings: [secondary],
	whyNot: []
});
/** Those of the slider: each kind of hand twice at least. */
const taken = jobs.slice(0, 12);
function at(value: number): Moment {
	const job = taken[Math.min(taken.length - 1, Math.max(0, Math.round(value)))]!;
	const others = [asked, ...beside].filter((one) => one !== job).slice(0, 3);
	const said = sentenceOf(job);
	return {
		words: [whyWords[whoOf(job)], ...(said.length <= longest ? [said] : []), defer.code],
		picture: picture([job, ...others], job),
		figures: [
			{ label: 'Job', text: job.work },
			{ label: 'Who may do it', text: whoWords[whoOf(job)], changed: whoOf(job) !== whoOf(asked) }
		],
		workings: [secondary]
	};
}
const order: readonly Who[] = ['you', 'electrician', 'utility', 'nobody'];
export const safetyLesson: Lesson = {
	id: 'safety',
	title: 'Who may do what',
	minutes: 5,
	idea: 'The low-voltage side is yours, unplugged; mains is a licensed electrician’s; local code comes first.',
	scene,
	question: () => 'Who may fit the outdoor receptacle?',
	choices: () => order.map((who) => ({ id: who, words: sentenceCase(whoWords[who]) })),
	reveal,
	lever: () => ({
		label: 'Another job',
		values: taken.map((_, i) => i),
		start: 0,
		text: (value) => taken[value]?.work ?? ''
	}),
	at,
	notes: safetyNotes
};
