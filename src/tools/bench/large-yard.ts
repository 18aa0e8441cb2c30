import { blankYard, type Yard } from '../../lib/domain/yard';

/**
 * An invented estate of about 200 fixtures: a long curved drive, walks and a short avenue, a lit front. All of it fits
 * the largest transformer, which stands on a post in the middle of it beside a receptacle of its own.
 */
export function largeYard(): Yard {
	const trees = Array.from({ length: 12 }, (_, index) => ({
		id: `tree-${index + 1}`,
		name: `Tree ${index + 1}`,
		at: { along: index % 2 === 0 ? 6 : 22, out: 14 + Math.floor(index / 2) * 12 },
		spread: 5 + (index % 4),
		height: 9,
		crownBase: 2.5,
		trunk: 0.3,
		form: 'round' as const,
		ground: 'lawn' as const,
		light: 'soft' as const,
		seenFrom: 'street' as const
	}));
	return {
		...blankYard(),
		name: 'Large estate',
		place: {
			units: 'metres',
			location: { latitude: 52, longitude: 0, timeZone: 'Europe/London' },
			faces: 180,
			surroundings: 'rural'
		},
		house: {
			sections: [
				{ id: 'west', width: 14, out: 0, light: 'soft' },
				{ id: 'east', width: 14, out: 2, light: 'soft' }
			],
			depth: 12,
			eaves: 5,
			finish: 'light',
			texture: 'smooth',
			openings: [{ id: 'door', kind: 'door', wall: 'front', along: 12, width: 1.2 }],
			porches: []
		},
		lot: { street: 245, left: 60, right: 60 },
		trees,
		walks: [
			{
				id: 'front-walk',
				name: 'Front walk',
				line: [
					{ along: -20, out: 240 },
					{ along: -20, out: 40 },
					{ along: 12.6, out: 3 }
				],
				width: 1.5,
				lights: 'either',
				steps: [],
				crossings: []
			}
		],
		drives: [
			{
				id: 'drive',
				name: 'Drive',
				line: [
					{ along: 40, out: 245 },
					{ along: 45, out: 120 },
					{ along: 35, out: 5 }
				],
				curved: true,
				width: 4,
				lights: 'both',
				pattern: 'staggered',
				runOffs: [],
				crossings: [{ id: 'sleeve', at: 220, kind: 'sleeve' }]
			}
		],
		power: {
			receptacle: { along: 14, out: 60 },
			gfci: true,
			inUseCover: true,
			transformer: { at: { along: 14.5, out: 60 }, on: 'post' },
			sensor: 'suggest',
			hours: { kind: 'dusk-to-dawn' },
			price: { perKwh: 0.3, currency: '£' },
			lamp: 'led',
			warmth: 2700,
			cable: 'mm2'
		}
	};
}
