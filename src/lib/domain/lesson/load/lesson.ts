/** Watts, volt-amperes and the transformer all night. */
import type { Lesson, Moment, Reveal, Scene } from '../types';
import { fraction, mostAmps, powerFactor } from './bank';
import { full, labelPicture, lamp, lampsText, limit, most, picture, rated, voltAmpsText } from './full';
import { loadNotes } from './notes';
import { ampsWorking, mostWorking, totalWorking } from './workings';

/** What a class counts: label over label; watts with the 80 %; volt-amperes with it; and half of that. */
const counts = [...new Set([rated / lamp.watts, limit / lamp.watts, most, most / 2].map(Math.floor))].toSorted(
	(a, b) => b - a
);

function scene(): Scene {
	return {
		words: [
			`A transformer says ${rated} VA. Each LED lamp says ${lamp.watts} W, power factor ${powerFactor}.`,
			'The lamps are on for hours every night.'
		],
		picture: labelPicture(),
		figures: [
			{ label: 'Transformer', text: voltAmpsText(rated) },
			{ label: 'One lamp', text: `${lamp.watts} W` },
			{ label: 'Power factor', text: `${powerFactor}` }
		]
	};
}
function reveal(): Reveal {
	const at = full(most);
	return {
		right: `${most}`,
		words: [
			`Each lamp draws ${voltAmpsText(lamp.voltAmps)}, more than its ${lamp.watts} W: the transformer must carry all of its amps.`,
			`For hours it may carry ${voltAmpsText(limit)}, which is ${100 * fraction} % of ${voltAmpsText(rated)}. That is ${lampsText(most)}.`
		],
		picture: picture(at),
		figures: [
			{ label: 'One lamp draws', text: voltAmpsText(lamp.voltAmps) },
			{ label: 'It may carry', text: voltAmpsText(limit) },
			{ label: 'At most', text: lampsText(most), changed: true },
			{ label: `Amps, of ${mostAmps} A`, text: `${at.amps.toFixed(1)} A` }
		],
		workings: [mostWorking(), ampsWorking(at)],
		whyNot: [
			{
				rule: 'supply.secondary',
				words: `${mostAmps} A on one secondary: ${lampsText(most)} take ${at.amps.toFixed(1)} A, so the ${100 * fraction} % comes first.`
			},
			{
				rule: 'supply.inrush',
				words: 'The surge at switch-on lasts a moment; it does not heat the transformer. It may trip a breaker.'
			},
			{
				rule: 'cable.drop',
				words:
					'What the cable takes is carried by the transformer too. Here the lamps hang close by, so it is left out.'
			}
		]
	};
}
function at(lamps: number): Moment {
	const now = full(lamps);
	const isMoved = lamps !== most;
	const over = now.voltAmps > rated ? 'over its rating' : now.voltAmps > limit ? 'too much for hours' : null;
	return {
		words: [
			`${lampsText(lamps)} draw ${voltAmpsText(now.voltAmps)}.`,
			over
				? `That is ${over}: take fewer lamps, or the next larger transformer.`
				: `That leaves ${voltAmpsText(limit - now.voltAmps)} of what it may carry for hours.`
		],
		picture: picture(now),
		figures: [
			{ label: 'Load', text: voltAmpsText(now.voltAmps), changed: isMoved },
			{ label: 'It may carry', text: voltAmpsText(limit) },
			{ label: `Amps, of ${mostAmps} A`, text: `${now.amps.toFixed(1)} A`, changed: isMoved }
		],
		workings: [totalWorking(now), ampsWorking(now)]
	};
}

export const loadLesson: Lesson = {
	id: 'load',
	title: 'Watts, volt-amperes and the transformer',
	minutes: 5,
	idea: 'Count volt-amperes, not watts, and fill only four fifths of the rating.',
	scene,
	question: () => 'How many of these lamps may the transformer feed, all night, every night?',
	choices: () => counts.map((lamps) => ({ id: `${lamps}`, words: lampsText(lamps) })),
	reveal,
	lever: () => ({
		label: 'Number of lamps',
		values: Array.from({ length: Math.floor(rated / lamp.watts) }, (_, k) => k + 1),
		start: most,
		text: lampsText
	}),
	at,
	notes: loadNotes
};
