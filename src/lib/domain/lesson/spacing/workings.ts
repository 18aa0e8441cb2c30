/** The figures of a row as workings that open down to candela and distances. */
import { towardsGround } from '../../placement';
import { maintained } from '../../photometry';
import { fixed } from '../../shared/show-working';
import type { Working } from '../../shared/working';
import { head, type Row } from './row';

const short = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** The darkest spot lies midway between two lights, as far from one as from the other; the rest of the row adds little. */
function leastWorking({ least, lamps }: Row): Working {
	const near = lamps.toSorted((a, b) => Math.abs(a.x - least.x) - Math.abs(b.x - least.x))[0]!;
	const { candela, away } = towardsGround(head)(least.x - near.x, -near.y);
	const rest = least.lux - (2 * maintained() * candela * head.lampHeight) / away ** 3;
	const adds = fixed(least.lux - rest, 2) !== fixed(least.lux, 2);
	return {
		label: 'Light at the darkest spot',
		value: least.lux,
		unit: 'lx',
		decimals: 2,
		rule: 'Intensity over the square of the distance, times the cosine at which the light falls: height over distance. Twice that, for the light on either side.',
		expression: `2 × m × I × h ÷ d ^ 3${adds ? ' + R' : ''}`,
		inputs: [
			{ symbol: 'm', name: 'part of new light that is left, for age and dirt', value: maintained(), unit: '' },
			{ symbol: 'I', name: 'intensity that way, new', value: candela, unit: 'cd' },
			{ symbol: 'h', name: 'height of the lamp', value: head.lampHeight, unit: 'm' },
			{ symbol: 'd', name: 'from the lamp to the spot', value: away, unit: 'm', from: awayWorking(near, least, away) },
			...(adds ? [{ symbol: 'R', name: 'what the other lights add', value: rest, unit: 'lx' }] : [])
		],
		source: 'physics'
	};
}
const awayWorking = (near: { x: number; y: number }, least: { x: number }, away: number): Working => ({
	label: 'From the lamp to the spot',
	value: away,
	unit: 'm',
	decimals: 3,
	rule: 'Pythagoras twice: along the walk, across it, and up to the lamp.',
	expression: '√(x ^ 2 + y ^ 2 + h ^ 2)',
	inputs: [
		{ symbol: 'x', name: 'along the walk', value: Math.abs(least.x - near.x), unit: 'm' },
		{ symbol: 'y', name: 'across, from the middle to the stake', value: Math.abs(near.y), unit: 'm' },
		{ symbol: 'h', name: 'height of the lamp', value: head.lampHeight, unit: 'm' }
	],
	source: 'physics'
});
function averageWorking({ average, points }: Row): Working {
	const sum = short(average * points, 1);
	return {
		label: 'Average along the middle',
		value: average,
		unit: 'lx',
		decimals: 1,
		rule: 'Light at equal steps along the middle, added up and divided by their number.',
		expression: 'S ÷ N',
		inputs: [
			{ symbol: 'S', name: 'light at all places, added up', value: sum, unit: 'lx' },
			{ symbol: 'N', name: 'number of places', value: points, unit: '' }
		],
		source: 'physics'
	};
}
/** The darkest spot, and how even: average to least; the latter only where some light gets everywhere. */
export function rowWorkings(row: Row): Working[] {
	const least = leastWorking(row);
	if (row.evenness === null) return [least];
	const average = averageWorking(row);
	return [
		least,
		{
			label: 'Average to darkest',
			value: row.evenness,
			unit: '',
			decimals: 1,
			rule: 'The average over the least: 1 is perfectly even, and at most 5 is wanted on a walk.',
			expression: 'A ÷ M',
			inputs: [
				{ symbol: 'A', name: 'average', value: average.value, unit: 'lx', from: average },
				{ symbol: 'M', name: 'light at the darkest spot', value: least.value, unit: 'lx', from: least }
			],
			source: 'iesLevels'
		}
	];
}
