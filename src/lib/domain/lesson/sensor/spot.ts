/** Which of four spots for the sensor, and why. */
import { judgeNight, monthsOf, onLux } from '../../dusk';
import type { Problem, ProblemKind } from '../types';
import { skyAt } from './sky';

export interface Spot {
	where: string;
	/** Share of the sky that it sees, 0 to 1. */
	share: number;
	/** Lux on it by the garden's own lamps, and by lights that are there all night. */
	own: number;
	others: number;
}
export interface DrawnSpots {
	latitude: number;
	spots: readonly Spot[];
}
const places = {
	open: [
		'on a post in the lawn',
		'on the garage wall above the drive',
		'on the fence by the gate',
		'on the south wall'
	],
	shade: ['under the porch roof', 'close under the eaves', 'in the hedge', 'under the old oak'],
	lit: ['on the post of a path light', 'above the wall light', 'over the lit house number', 'beside an uplight'],
	street: ['on the pillar under the street lamp', 'on the wall by the neighbour’s floodlight', 'below the street lamp']
} as const;

function told({ where, share, own, others }: Spot): string {
	const light = [
		own > 0 ? `${own} lx on it from the garden’s lamps` : '',
		others > 0 ? `${others} lx on it all night from outside` : ''
	].filter(Boolean);
	return `${where}: ${Math.round(100 * share)} % of the sky, ${light.length > 0 ? light.join(', ') : 'no lamplight'}`;
}
const whyNot = {
	shifted: 'in the shade it switches early',
	'held-off': 'a light from outside keeps it off all night',
	hunting: 'the garden’s own lamps switch it off again, and it blinks'
} as const;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const spotKind: ProblemKind<DrawnSpots> = {
	id: 'sensor.spot',
	lesson: 'sensor',
	title: 'Where the sensor hangs',
	levels: ['solved', 'all'],
	draw(random) {
		const spots: Spot[] = [
			{ where: random.one(places.open), share: random.stepped(0.7, 1, 0.05), own: random.whole(0, 3), others: 0 },
			{ where: random.one(places.shade), share: random.stepped(0.02, 0.15, 0.01), own: 0, others: 0 },
			{
				where: random.one(places.lit),
				share: random.stepped(0.7, 1, 0.05),
				own: random.stepped(60, 200, 10),
				others: 0
			},
			{
				where: random.one(places.street),
				share: random.stepped(0.7, 1, 0.05),
				own: 0,
				others: random.stepped(30, 90, 5)
			}
		];
		return { latitude: random.stepped(30, 55, 5), spots: random.shuffled(spots) };
	},
	pose({ latitude, spots }): Problem | null {
		const sky = skyAt(latitude);
		const verdicts = spots.map(({ share, own, others }) => {
			const months = monthsOf(sky, { leafOn: share, leafOff: share });
			return judgeNight(sky.night, { share, own, others }, months).verdict;
		});
		const right = verdicts.indexOf('steady');
		if (right < 0 || verdicts.filter((verdict) => verdict === 'steady').length > 1) return null;
		const letters = 'ABCD'.slice(0, spots.length).split('');
		const reasons = letters.flatMap((letter, i) => {
			const verdict = verdicts[i]!;
			return verdict === 'steady' ? [] : [`${letter}: ${whyNot[verdict]}.`];
		});
		return {
			kind: 'sensor.spot',
			story: `A dusk sensor switches on when ${onLux} lx or less fall on it. Spots that were thought of: ${letters
				.map((letter, i) => `${letter}, ${told(spots[i]!)}`)
				.join('; ')}.`,
			ask: 'Which spot lets it switch at dusk and stay on all night?',
			givens: [],
			steps: [],
			answer: { type: 'choice', choices: letters.map((letter, i) => `${letter}, ${spots[i]!.where}`), right },
			because: capital(`${letters[right]!} sees enough of the sky and little lamplight. ${reasons.join(' ')}`),
			engine: null
		};
	}
};
