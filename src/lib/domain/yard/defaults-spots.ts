/** What is taken for seating, water, lights, signs and walls whose sizes are absent or "not sure". */
import type { About } from '../shared/findings';
import { formatLength } from '../shared/units';
import { calledThe, capital } from './called';
import type { HouseFacts } from './defaults';
import { take, type Ledger } from './ledger';
import type { Units, Yard } from './schema';

type Spots = Yard['spots'];
export type YardWater = NonNullable<Spots['water']>[number];
export type YardSeating = NonNullable<Spots['seating']>[number];
export type YardNumber = NonNullable<Spots['numbers']>[number];
export type YardExistingLight = NonNullable<Spots['lights']>[number];
export type YardFreeWall = NonNullable<Spots['walls']>[number];

/** Diameter of a seating place. */
export function seatingAcross(seating: YardSeating, units: Units, ledger: Ledger): number {
	const the = calledThe(seating.name, 'seating place');
	return take(ledger, seating.across, {
		path: `spots.seating.${seating.id}.across`,
		about: { kind: 'seating', id: seating.id },
		value: 3,
		says: `${capital(the)} is taken to be ${formatLength(3, units)} across.`,
		needed: seating.light !== undefined && seating.light !== 'none' ? `How far across ${the} is.` : null
	});
}
/** Size of water, along the front and out. Its edge decides where nothing electric may stand, so it is needed. */
export function waterSize(water: YardWater, units: Units, ledger: Ledger): { length: number; width: number } {
	const usual = { pond: [3, 2], pool: [8, 4], spa: [2.2, 2.2], fountain: [1.2, 1.2] }[water.kind];
	const the = calledThe(water.name, water.kind);
	const size = (part: 'length' | 'width', value: number, way: string) =>
		take(ledger, water[part], {
			path: `spots.water.${water.id}.${part}`,
			about: { kind: 'water', id: water.id },
			value,
			says: `${capital(the)} is taken to measure ${formatLength(value, units)} ${way}.`,
			needed: `How far ${the} reaches ${way}.`
		});
	return {
		length: size('length', usual[0]!, 'along the front'),
		width: size('width', usual[1]!, 'towards the street')
	};
}
const usualLight = {
	'street-lamp': { height: 5, reach: 8 },
	'porch-light': { height: 2.2, reach: 3 },
	other: { height: 1, reach: 2 }
} as const;
/** Height of a light that is there already, and how far one can see one's step by it. */
export function existingLightFacts(
	light: YardExistingLight,
	units: Units,
	ledger: Ledger
): { height: number; reach: number } {
	const usual = usualLight[light.kind];
	const the = calledThe(light.name, 'light');
	const about: About = { kind: 'light', id: light.id };
	return {
		height: take(ledger, light.height, {
			path: `spots.lights.${light.id}.height`,
			about,
			value: usual.height,
			says: `${capital(the)} is taken to hang ${formatLength(usual.height, units)} up.`,
			needed: null
		}),
		reach: take(ledger, light.reach, {
			path: `spots.lights.${light.id}.reach`,
			about,
			value: usual.reach,
			says: `${capital(the)} is taken to light your step ${formatLength(usual.reach, units)} around it.`,
			needed: null
		})
	};
}
/** Width of a sign. */
export function signWidth(sign: YardNumber, units: Units, ledger: Ledger): number {
	const the = calledThe(sign.name ?? '', 'sign');
	return take(ledger, sign.width, {
		path: `spots.numbers.${sign.id}.width`,
		about: { kind: 'number', id: sign.id },
		value: 0.6,
		says: `${capital(the)} is taken to be ${formatLength(0.6, units)} wide.`,
		needed: null
	});
}
/** Height and finish of a wall that stands by itself. */
export function freeWallFacts(
	wall: YardFreeWall,
	units: Units,
	ledger: Ledger
): Omit<HouseFacts, 'depth' | 'eaves'> & { height: number } {
	const about: About = { kind: 'wall', id: wall.id };
	const path = `spots.walls.${wall.id}`;
	const the = calledThe(wall.name, 'wall');
	const lit = wall.light !== undefined && wall.light !== 'none';
	return {
		height: take(ledger, wall.height, {
			path: `${path}.height`,
			about,
			value: 1.5,
			says: lit ? `${capital(the)} is taken to be ${formatLength(1.5, units)} high.` : null,
			needed: lit ? `How high ${the} is.` : null
		}),
		finish: take(ledger, wall.finish, {
			path: `${path}.finish`,
			about,
			value: 'medium',
			says: lit ? `${capital(the)} is taken to be neither light nor dark.` : null,
			needed: null
		}),
		texture: take(ledger, wall.texture, {
			path: `${path}.texture`,
			about,
			value: 'rough',
			says: lit ? `${capital(the)} is taken to be rough: a grazing light shows its texture.` : null,
			needed: null
		})
	};
}
