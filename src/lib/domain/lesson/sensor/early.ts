/** How early a shaded sensor switches, by a table of the evening sky. */
import { onLux } from '../../dusk';
import { monthNames } from '../../shared/day-words';
import { fixed } from '../../shared/show-working';
import { agrees, reckon } from '../reckon';
import { given } from '../tape';
import type { ProblemKind } from '../types';
import { eveningOf, skyAt } from './sky';

/** Degrees north; the 21st of a month, 1 to 12; the share of the sky that the sensor sees, so that what it needs stands in the table. */
export interface DrawnEarly {
	latitude: number;
	month: number;
	share: number;
}
/** Clear-sky light at sunset (rule sensor.dusk): from there the table counts. */
const sunset = 400;
/** Light of the rows, lux, brightest first; the last is what a sensor in the open waits for. */
const rows = [160, 80, 64, 40, 32, 20, onLux] as const;

/** Minutes after sunset at which a clear sky has fallen to each row's light; null where it does not that evening. */
function tableOf(latitude: number, month: number): { lux: number; after: number }[] | null {
	const sky = skyAt(latitude);
	const at = (lux: number): number | undefined => eveningOf(sky, onLux / lux, month)?.on;
	const start = at(sunset);
	const table = rows.map((lux) => ({ lux, at: at(lux) }));
	if (start === undefined || table.some((row) => row.at === undefined)) return null;
	return table.map((row) => ({ lux: row.lux, after: row.at! - start }));
}
export const earlyKind: ProblemKind<DrawnEarly> = {
	id: 'sensor.early',
	lesson: 'sensor',
	title: 'Minutes early in the shade',
	levels: ['solved', 'one', 'all'],
	draw: (random) => ({
		latitude: random.stepped(0, 60, 5),
		month: random.whole(1, 12),
		// A row beside the last is a minute off: too little to read.
		share: onLux / random.one(rows.slice(0, -2))
	}),
	pose({ latitude, month, share }) {
		const table = tableOf(latitude, month);
		const row = table?.find(({ lux }) => Math.abs(lux * share - onLux) < 1e-9);
		if (!table || !row) return null;
		const last = table.at(-1)!;
		const texts = table.map(({ lux, after }) => `${lux} lx after ${fixed(after, 0)} min`);
		// Two rows of one minute, or a minute that none can tell apart from the next, make no question.
		if (new Set(table.map(({ after }) => fixed(after, 0))).size < table.length) return null;
		const name = (lux: number): string => `minutes after sunset at which the sky gives ${lux} lx`;
		const givens = [
			given('E', 'light on the sensor at which it switches on', onLux, 0, 'lx'),
			given('p', 'share of the sky that it sees', share, 2, ''),
			given('T0', name(onLux), last.after, 0, 'min'),
			given('T1', name(row.lux), row.after, 0, 'min')
		].map((one) => (one.symbol === 'p' ? { ...one, text: String(Number(share.toFixed(3))) } : one));
		const steps = reckon(givens, [
			{
				symbol: 'S',
				label: 'light that the open sky must give',
				expression: 'E ÷ p',
				unit: 'lx',
				decimals: 0,
				rule: 'The sensor gets only its share, so the sky must give that many times more. Look that row up.',
				source: 'c136_10'
			},
			{
				symbol: 'm',
				label: 'minutes early',
				expression: 'T0 − T1',
				unit: 'min',
				decimals: 0,
				rule: 'From the row that it waits for to the row of a sensor in the open.',
				source: 'amsTwilight'
			}
		]);
		const engine = eveningOf(skyAt(latitude), share, month)!.early;
		if (steps[0]!.text !== String(row.lux) || !agrees(engine, steps)) return null;
		const place = latitude === 0 ? 'On the equator' : `At ${latitude}° north`;
		return {
			kind: 'sensor.early',
			story: `${place}, on 21 ${monthNames[month - 1]!}, a clear sky gives ${texts.slice(0, -1).join(', ')} and ${texts.at(-1)!}, counted from sunset. A sensor switches on when ${onLux} lx fall on it. A hedge leaves it ${givens[1]!.text} of the sky’s light.`,
			ask: 'How many minutes before a sensor in the open does it switch on?',
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit: 'min', decimals: 0 },
			because: 'In the shade it waits for a brighter sky, and the sky is brighter earlier.',
			engine
		};
	}
};
