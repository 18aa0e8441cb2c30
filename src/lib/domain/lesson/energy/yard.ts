/** The yard of the lesson: a straight walk and two trees before a house, invented; and its year by lamp and by hours. */
import {
	costWorking,
	drawOf,
	duskYear,
	energyWorking,
	hoursWorking,
	placeOf,
	priceOf,
	type Draw,
	type Price
} from '../../dusk';
import { makePlan } from '../../plan';
import type { Working } from '../../shared/working';
import { blankYard, type Hours, type Yard } from '../../yard';

export type LampKind = 'led' | 'halogen';
const tree = (id: string, along: number) => ({
	id,
	name: id,
	at: { along, out: 5 },
	spread: 4,
	height: 5,
	crownBase: 1.5,
	trunk: 0.2,
	form: 'round' as const,
	ground: 'bed' as const,
	light: 'soft' as const,
	seenFrom: 'street' as const
});
/** A finished yard, its receptacle in order. Metres. */
export function yardWith(lamp: LampKind): Yard {
	const blank = blankYard();
	return {
		...blank,
		name: 'The yard of the energy lesson',
		place: {
			units: 'metres',
			location: { name: 'Merrow', latitude: 41, longitude: -87.5, timeZone: 'America/Chicago' },
			faces: 180,
			surroundings: 'suburb'
		},
		house: {
			...blank.house,
			sections: [{ id: 'front', width: 10, out: 0, light: 'none' }],
			depth: 9,
			eaves: 3,
			openings: [{ id: 'door', kind: 'door', wall: 'front', along: 4.5, width: 1 }],
			porches: [],
			left: { light: 'none' },
			right: { light: 'none' }
		},
		lot: { street: 11, left: 3, right: 3 },
		trees: [tree('maple', 1.5), tree('birch', 8.5)],
		walks: [
			{
				id: 'walk',
				name: 'front walk',
				line: [
					{ along: 5, out: 11 },
					{ along: 5, out: 0 }
				],
				curved: false,
				width: 1.2,
				lights: 'either',
				steps: [],
				gates: []
			}
		],
		drives: [],
		power: {
			receptacle: { along: 9.5, out: 0 },
			gfci: true,
			inUseCover: true,
			price: { perKwh: 0.2, currency: 'dollars' },
			lamp
		}
	};
}
export interface LitYard {
	yard: Yard;
	lights: number;
	/** Watts on the low-voltage side, and what the transformer makes of them. */
	draw: Draw;
	price: Price;
}
const made = new Map<LampKind, LitYard>();
/** The plan of the yard with one kind of lamp, of which the year goes by. Made once. */
export function litBy(lamp: LampKind): LitYard {
	const known = made.get(lamp);
	if (known) return known;
	const yard = yardWith(lamp);
	const { fixtures, supply } = makePlan(yard);
	const lit = { yard, lights: fixtures.length, draw: drawOf(fixtures, supply), price: priceOf(yard) };
	made.set(lamp, lit);
	return lit;
}
export interface LampYear {
	hours: Working;
	energy: Working;
	cost: Working;
}
/** A year of the yard with that kind of lamp and those hours. */
export function yearOf(lamp: LampKind, schedule: Hours): LampYear {
	const { yard, draw, price } = litBy(lamp);
	const hours = hoursWorking(duskYear(placeOf(yard), { schedule, season: null }).days);
	const energy = energyWorking(hours, draw);
	return { hours, energy, cost: costWorking(energy, price) };
}
