import { dayInWords } from '../shared/day-words';
import type { Finding } from '../shared/findings';
import type { Hours } from '../yard/schema';
import { darkness, nightMinutes, type Lit } from './hours';
import type { Night } from './nights';
import { hoursOn, isInSeason } from './season';
import { onLux } from './twilight';
import type { Setting } from './year';

const about = { kind: 'power', id: 'hours' };

/** Stretches of the year's circle for which a test holds, in words: `5 May to 8 August`. */
export function stretches(dates: readonly string[], holds: readonly boolean[]): string {
	const size = dates.length;
	if (holds.every(Boolean)) return 'all year';
	const found: string[] = [];
	holds.forEach((yes, i) => {
		if (!yes || holds[(i + size - 1) % size]) return;
		let last = i;
		while (holds[(last + 1) % size]) last = (last + 1) % size;
		const [from, to] = [dayInWords(dates[i]!), dayInWords(dates[last]!)];
		found.push(from === to ? `on ${from}` : `from ${from} to ${to}`);
	});
	return found.join(' and ');
}
const nightsText = (count: number): string => (count === 1 ? '1 night' : `${count} nights`);
const stays = (night: Night, side: 'above' | 'below'): boolean => 'stays' in night.dark && night.dark.stays === side;

/** A night with the hours in force on it. */
interface Kept {
	night: Night;
	hours: Hours;
	/** When the sky is dark enough; null: never. */
	sky: Lit | null;
	spans: readonly Lit[];
}
/** How a finding of so many nights is put: when in the year, and how many. */
type Say = (when: string, count: number) => string;

const eveningEnd = (hours: Hours): string | null =>
	hours.kind === 'until' ? hours.clock : hours.kind === 'split' ? hours.evening : null;
const lacksEvening = ({ hours, sky, spans }: Kept): boolean =>
	eveningEnd(hours) !== null && sky !== null && spans[0]?.on !== sky.on;
const lacksMorning = ({ hours, sky, spans }: Kept): boolean =>
	hours.kind === 'split' && sky !== null && spans.at(-1)?.off !== sky.off;
const meets = (hours: Hours): boolean =>
	hours.kind === 'split' && nightMinutes(hours.morning) <= nightMinutes(hours.evening);

const skySays: { code: string; holds: (kept: Kept) => boolean; say: Say }[] = [
	{
		code: 'dusk.never-dark',
		holds: ({ night, sky }) => stays(night, 'above') && sky === null,
		say: (when, count) =>
			`The sky stays lighter than ${onLux} lx all night ${when}: on those ${nightsText(count)} the sensor keeps the lights off.`
	},
	{
		code: 'dusk.always-dark',
		holds: ({ night }) => stays(night, 'below'),
		say: (when) =>
			`The sky stays darker than ${onLux} lx all day ${when}. The evening is counted from midday then: see that your timer allows it.`
	}
];
/** What the clock times of one setting come to on the nights on which it is in force. */
function clockFindings(hours: Hours, isOn: (kept: Kept) => boolean, finder: Finder): Finding[] {
	if (hours.kind !== 'until' && hours.kind !== 'split') return [];
	const { evening, morning } = hours.kind === 'split' ? hours : { evening: hours.clock, morning: null };
	if (meets(hours)) {
		const message = `Off at ${evening} and on again at ${morning}: the two meet, so the lights stay on all night. An earlier time for off, or a later one for on, gives a pause.`;
		return [{ code: 'dusk.split-meets', rank: 'look', message, about, rule: 'hours.choice' }];
	}
	const early = finder(
		'dusk.until-before-dusk',
		'look',
		(kept) => isOn(kept) && lacksEvening(kept),
		(when, count) => {
			const then = count === 1 ? 'that night' : `those ${count} nights`;
			const left = morning === null ? `the lights stay off on ${then}` : `there is no light in the evening on ${then}`;
			return `Dusk comes after ${evening} ${when}, so ${left}. A later time or a number of hours after dusk would light them.`;
		}
	);
	const short = finder(
		'dusk.no-morning',
		'note',
		(kept) => isOn(kept) && lacksMorning(kept),
		(when, count) =>
			`It is light before ${morning} ${when}: on ${count === 1 ? 'that night' : `those ${count} nights`} the lights do not come on again.`
	);
	return [...early, ...short];
}
type Finder = (code: string, rank: Finding['rank'], holds: (kept: Kept) => boolean, say: Say) => Finding[];

/** Nights that are out of the ordinary: never dark, dark all day, or clock times that come before dusk or after dawn. */
export function nightFindings(
	nights: readonly Night[],
	spans: readonly (readonly Lit[])[],
	{ schedule, season }: Setting
): Finding[] {
	const year = nights.map((night, i) => ({
		night,
		hours: hoursOn(night.date, schedule, season),
		sky: darkness(night),
		spans: spans[i]!
	}));
	const dates = nights.map(({ date }) => date);
	const finder: Finder = (code, rank, holds, say) => {
		const which = year.map(holds);
		const count = which.filter(Boolean).length;
		if (count === 0) return [];
		return [{ code, rank, message: say(stretches(dates, which), count), about, rule: 'sensor.level' }];
	};
	return [
		...skySays.flatMap(({ code, holds, say }) => finder(code, 'note', holds, say)),
		...clockFindings(schedule, ({ night }) => !season || !isInSeason(night.date, season), finder),
		...(season ? clockFindings(season.hours, ({ night }) => isInSeason(night.date, season), finder) : [])
	];
}
