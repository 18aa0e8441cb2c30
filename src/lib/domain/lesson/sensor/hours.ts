/** Hours of light in a night, from clock times. */
import { litHours, nightMinutes } from '../../dusk';
import { agrees, reckon } from '../reckon';
import type { Given, ProblemKind, StepRule } from '../types';
import { clockText } from './sky';

/** Clock times as `HH:MM`: on in the afternoon or evening, off by noon of the next day. */
export interface DrawnHours {
	on: string;
	off: string;
}
const noon = 720;
const isClock = (text: string): boolean => /^([01]\d|2[0-3]):[0-5]\d$/.test(text);
const physics = { source: 'physics', decimals: 0, unit: 'min' };
const toMinutes = (symbol: string, label: string, expression: string, rule: string): StepRule => ({
	symbol,
	label,
	expression,
	rule,
	...physics
});
const hour = 'Sixty minutes to the hour, counted from midnight.';
const pastMidnight = `${hour} The next morning comes a day later: 24 hours more.`;

export const hoursKind: ProblemKind<DrawnHours> = {
	id: 'sensor.hours',
	lesson: 'sensor',
	title: 'Hours of light in a night',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random) {
		const on = random.stepped(16 * 60, 21 * 60 + 30, 3);
		return { on: clockText(on - noon), off: clockText(random.stepped(22 * 60, 32 * 60, 3) - noon) };
	},
	pose({ on, off }) {
		if (!isClock(on) || !isClock(off)) return null;
		const [from, to] = [nightMinutes(on), nightMinutes(off)];
		if (to <= from || from >= 1440) return null;
		const morning = to >= 1440;
		const givens: Given[] = [on, off].flatMap((clock, i) => [
			{ symbol: `H${i + 1}`, name: `hours on the clock when ${i ? 'off' : 'on'}`, text: clock.slice(0, 2), unit: '' },
			{ symbol: `M${i + 1}`, name: `minutes past the hour when ${i ? 'off' : 'on'}`, text: clock.slice(3), unit: '' }
		]);
		const steps = reckon(givens, [
			toMinutes('A', 'on, in minutes after midnight', 'H1 × 60 + M1', hour),
			morning
				? toMinutes('B', 'off, in minutes after that same midnight', '(H2 + 24) × 60 + M2', pastMidnight)
				: toMinutes('B', 'off, in minutes after midnight', 'H2 × 60 + M2', hour),
			toMinutes('D', 'minutes of light', 'B − A', 'From on to off.'),
			{
				symbol: 'h',
				label: 'hours of light',
				expression: 'D ÷ 60',
				unit: 'h',
				decimals: 2,
				rule: 'Sixty minutes to the hour.',
				source: 'physics'
			}
		]);
		const engine = litHours([{ on: from * 60_000, off: to * 60_000 }]);
		if (!agrees(engine, steps)) return null;
		return {
			kind: 'sensor.hours',
			story: `A sensor switches the lamps on at ${on}. A timer switches them off at ${off}${morning ? ' the next morning' : ' the same evening'}.`,
			ask: 'How many hours do they burn that night? As a decimal number, to two decimals.',
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit: 'h', decimals: 2 },
			because: 'Minutes from midnight make the difference easy; 60 of them are an hour, so 30 minutes are 0.5 hours.',
			engine
		};
	}
};
