import type { Finding } from '../shared/findings';
import type { Hours } from '../yard/schema';
import { monthNames } from './energy';
import { onLux } from './twilight';
import type { Lit } from './hours';
import type { Night } from './nights';

const about = { kind: 'power', id: 'hours' };
export const dayInWords = (date: string): string =>
	`${Number(date.slice(8, 10))} ${monthNames[Number(date.slice(5, 7)) - 1] ?? ''}`;

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
/** Nights that are out of the ordinary: never dark, dark all day, or a clock time that comes before dusk. */
export function nightFindings(nights: readonly Night[], lit: readonly (Lit | null)[], schedule: Hours): Finding[] {
	const dates = nights.map((night) => night.date);
	const findings: Finding[] = [];
	const add = (
		code: string,
		rank: Finding['rank'],
		holds: boolean[],
		say: (when: string, count: number) => string
	): void => {
		const count = holds.filter(Boolean).length;
		if (count > 0)
			findings.push({ code, rank, message: say(stretches(dates, holds), count), about, rule: 'sensor.level' });
	};
	const stays = (night: Night, side: 'above' | 'below'): boolean => 'stays' in night.dark && night.dark.stays === side;
	const bright = nights.map((night, i) => stays(night, 'above') && lit[i] === null);
	add('dusk.never-dark', 'note', bright, (when, count) => {
		const nightsOff = count === 1 ? '1 night' : `${count} nights`;
		return `The sky stays lighter than ${onLux} lx all night ${when}: on those ${nightsOff} the sensor keeps the lights off.`;
	});
	add(
		'dusk.always-dark',
		'note',
		nights.map((night) => stays(night, 'below')),
		(when) =>
			`The sky stays darker than ${onLux} lx all day ${when}. The evening is counted from midday then: see that your timer allows it.`
	);
	if (schedule.kind === 'until') {
		add(
			'dusk.until-before-dusk',
			'look',
			nights.map((_, i) => lit[i] === null && !bright[i]),
			(when, count) =>
				`Dusk comes after ${schedule.clock} ${when}, so the lights stay off on ${count === 1 ? 'that night' : `those ${count} nights`}. A later time or a number of hours after dusk would light them.`
		);
	}
	return findings;
}
