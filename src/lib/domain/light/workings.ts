/** Receivers' figures as the person can redo them. */
import type { Working } from '../shared/working';
import type { Levels } from './probe';

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** The average of a receiver: what its points get, added up, over their number. */
export function averageWorking(name: string, { average, points }: Levels): Working {
	const sum = rounded(average * points, 2);
	return {
		label: `Light on ${name}, on average`,
		value: rounded(points > 0 ? sum / points : 0, 2),
		unit: 'lx',
		decimals: 2,
		rule: 'At each point the light of every lamp is its intensity that way times the cosine at which it lands, over the distance squared; the points are added up and divided by their number.',
		expression: 'S ÷ N',
		inputs: [
			{ symbol: 'S', name: 'Light at all points, added up', value: sum, unit: 'lx' },
			{ symbol: 'N', name: 'Points', value: Math.max(1, points), unit: '' }
		],
		source: 'physics'
	};
}
