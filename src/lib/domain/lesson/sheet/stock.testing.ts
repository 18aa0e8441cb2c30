/** A small stock for tests of the sheets: one lesson with steps and two kinds, one of choices, one that has few problems. */
import { agrees, reckon } from '../reckon';
import type { ProblemKind } from '../types';
import type { Stock } from './types';

interface Ohm {
	volts: number;
	ohms: number;
	hours: number;
}
const rule = { rule: 'Ohm’s law', source: 'physics' };
/** Watt-hours of a resistor: three steps, some thousands of problems. */
function energyKind(id: string, text: string): ProblemKind<Ohm> {
	return {
		id,
		lesson: 'energy',
		title: text,
		levels: ['solved', 'one', 'several', 'all'],
		draw: (random) => ({
			volts: random.stepped(6, 24, 0.5),
			ohms: random.stepped(2, 40, 0.5),
			hours: random.whole(2, 12)
		}),
		pose({ volts, ohms, hours }) {
			const givens = [
				{ symbol: 'U', name: 'volts', text: String(volts), unit: 'V' },
				{ symbol: 'R', name: 'ohms', text: String(ohms), unit: 'Ω' },
				{ symbol: 't', name: 'hours', text: String(hours), unit: 'h' }
			];
			const steps = reckon(givens, [
				{ symbol: 'I', label: 'current', expression: 'U ÷ R', unit: 'A', decimals: 3, ...rule },
				{ symbol: 'P', label: 'power', expression: 'U × I', unit: 'W', decimals: 2, ...rule },
				{ symbol: 'E', label: 'energy', expression: 'P × t', unit: 'Wh', decimals: 0, ...rule }
			]);
			const engine = (volts * volts * hours) / ohms;
			if (!agrees(engine, steps)) return null;
			return {
				kind: id,
				story: `A lamp of ${ohms} Ω is fed with ${volts} V for ${hours} h.`,
				ask: 'What energy does it take? To the nearest watt-hour.',
				givens,
				steps,
				answer: { type: 'number', text: steps[2]!.text, unit: 'Wh', decimals: 0 },
				because: 'Power times time is energy.',
				engine
			};
		}
	};
}
/** Twelve problems, each in any order of its choices. */
const choiceKind: ProblemKind<{ colour: number; order: number[] }> = {
	id: 'safety.colour',
	lesson: 'safety',
	title: 'Which one',
	levels: ['solved', 'all'],
	draw: (random) => ({ colour: random.whole(1, 12), order: random.shuffled([0, 1, 2]) }),
	pose: ({ colour, order }) => ({
		kind: 'safety.colour',
		story: `Box ${colour} is open.`,
		ask: 'Who closes it?',
		givens: [],
		steps: [],
		answer: { type: 'choice', choices: order.map((n) => `Person ${n}`), right: order.indexOf(1) },
		because: 'Person 1 does.',
		engine: null
	})
};
export const energyKinds: ProblemKind[] = [energyKind('energy.first', 'First'), energyKind('energy.other', 'Other')];
export const fewKind: ProblemKind = choiceKind;
export const testStock: Stock = {
	kinds: [...energyKinds, fewKind],
	lessons: [
		{ id: 'energy', title: 'Energy' },
		{ id: 'safety', title: 'Safety' }
	]
};
