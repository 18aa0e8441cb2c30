import { describe, expect, it } from 'vitest';
import { describeAnswer } from './describe';
import { fieldOf, questions } from './questions';
import { answerTo, picker } from './walk.testing';
import type { Field, Question } from './types';

const field = (path: string, each?: Question['each']): Field => {
	const found = fieldOf(path, each);
	if (!found) throw new Error(`no field at ${path}`);
	return found;
};
const words = (path: string, value: unknown, each?: Question['each']) =>
	describeAnswer(field(path, each), value, 'feet');

describe('answers in words', () => {
	it.each<[string, unknown, Question['each'], string]>([
		['house.depth', 9.144, undefined, '30 ft'],
		['house.depth', 'unsure', undefined, 'Not sure'],
		['house.depth', undefined, undefined, 'Not answered yet'],
		['name', undefined, undefined, 'Left empty'],
		['place.faces', 205, undefined, 'South-west (205°)'],
		['place.faces', 360, undefined, 'North (360°)'],
		['place.location', { latitude: 52.1, longitude: -4.5, timeZone: 'Europe/London' }, undefined, '52.1°, -4.5°'],
		['@.at', { along: 3.048, out: 1.524 }, 'trees', '10 ft along, 5 ft out'],
		['@.at', { along: -0.3048, out: -0.9144 }, 'trees', '−1 ft along, 3 ft behind the front'],
		['@.at', { along: 0, out: 0 }, 'trees', '0 in along, on the front line'],
		[
			'@.line',
			[
				{ along: 0, out: 3.048 },
				{ along: 0, out: 0 }
			],
			'walks',
			'2 points, 10 ft along them'
		],
		[
			'@.outline',
			[
				{ along: 0, out: 0 },
				{ along: 0.9144, out: 0 },
				{ along: 0, out: 1.2192 }
			],
			'spots.beds',
			'3 points, 12 ft round'
		],
		['@.curved', false, 'walks', 'Straight'],
		['trees', [], undefined, 'There are no trees'],
		[
			'trees',
			[
				{ id: 'a', name: 'oak' },
				{ id: 'b', name: '' }
			],
			undefined,
			'oak, b'
		],
		[
			'@.steps',
			[{ id: 'a', at: 1.2192, treads: 3, going: 'unsure' }],
			'walks',
			'foot of the flight 4 ft, treads 3, depth of a tread not sure'
		],
		['@.crossings', [], 'walks', 'None that I know of'],
		[
			'house.porches',
			[{ id: 'p', along: 0.3048, width: 0.6096, depth: 0.9144, roof: true }],
			undefined,
			'from the left corner 1 ft, width 2 ft, depth 3 ft, roofed yes'
		],
		['power.receptacle', 'none', undefined, 'There is none outdoors'],
		['power.transformer', 'suggest', undefined, 'Suggest one for me'],
		[
			'power.transformer',
			{ at: { along: 0.3048, out: 0 }, on: 'wall', height: 0.3048 },
			undefined,
			'1 ft along, on the front line, on a wall, 1 ft up'
		],
		['power.hours', { kind: 'dusk-to-dawn' }, undefined, 'From dusk to dawn'],
		['power.hours', { kind: 'after-dusk', hours: 1 }, undefined, '1 hour from dusk'],
		['power.hours', { kind: 'until', clock: '23:00' }, undefined, 'From dusk until 23:00'],
		[
			'power.hours',
			{ kind: 'split', evening: '23:00', morning: '05:30' },
			undefined,
			'From dusk until 23:00, and from 05:30 until dawn'
		],
		[
			'power.season',
			{ from: '10-01', to: '03-31', hours: { kind: 'after-dusk', hours: 6 } },
			undefined,
			'From 1 October to 31 March: 6 hours from dusk'
		],
		['power.season', undefined, undefined, 'The same all year'],
		[
			'power.sensor',
			{ at: { along: 0, out: 0 }, on: 'wall', height: 3.048, faces: 45 },
			undefined,
			'0 in along, on the front line, on a wall, 10 ft up, looking north-east (45°)'
		],
		['power.price', { perKwh: 0.32, currency: 'EUR' }, undefined, '0.32 EUR for a kilowatt-hour'],
		['power.owned.transformerVoltAmps', 150, undefined, '150 VA'],
		['power.warmth', 2700, undefined, '2700 K']
	])('%s: %j', (path, value, each, expected) => expect(words(path, value, each)).toBe(expected));
	it('finds words for any answer there can be, in either unit', () => {
		const pick = picker(7);
		for (const one of questions.flatMap((question) => question.fields)) {
			for (let i = 0; i < 40; i++) {
				const said = describeAnswer(one, answerTo(one, pick, undefined), i % 2 ? 'feet' : 'metres');
				expect(said).not.toMatch(/undefined|NaN|\[object/);
				if (one.kind !== 'text') expect(said).not.toBe('');
			}
		}
	});
});
