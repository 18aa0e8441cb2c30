/**
 * What is taken for an answer that is absent or "not sure", and the sentence that says so. The figures are common
 * practice or plain middling sizes, no source; each is listed on the plan as assumed.
 */
import type { About } from '../shared/findings';
import { formatLength } from '../shared/units';
import { calledThe, capital } from './called';
import { take, type Ledger } from './ledger';
import type { Units, Yard, YardDrive, YardWalk } from './schema';

export interface PlaceFacts {
	units: Units;
	faces: number;
	surroundings: 'rural' | 'suburb' | 'town';
}
/** Units, the way the front faces and how dark the neighbourhood is. */
export function placeFacts(yard: Yard, ledger: Ledger): PlaceFacts {
	const { place } = yard;
	if (place.location === undefined) {
		ledger.missing.push({ path: 'place.location', message: 'Where the house is, for the time of dusk.' });
	}
	return {
		units: take(ledger, place.units, {
			path: 'place.units',
			about: null,
			value: 'feet',
			says: 'Lengths are read back in feet and inches.',
			needed: null
		}),
		faces: take(ledger, place.faces, {
			path: 'place.faces',
			about: { kind: 'house', id: 'house' },
			value: 180,
			says: 'The house front is taken to face south.',
			needed: 'Which way the house front faces.'
		}),
		surroundings: take(ledger, place.surroundings, {
			path: 'place.surroundings',
			about: null,
			value: 'suburb',
			says: 'The neighbourhood is taken to be as dark as a suburb.',
			needed: null
		})
	};
}

export interface HouseFacts {
	depth: number;
	eaves: number;
	finish: 'light' | 'medium' | 'dark';
	texture: 'smooth' | 'rough';
}
/** Size and finish of the house. `lit`: some wall is to be lit, so height and finish matter. */
export function houseFacts(yard: Yard, lit: boolean, units: Units, ledger: Ledger): HouseFacts {
	const about: About = { kind: 'house', id: 'house' };
	const { house } = yard;
	const asked = house.sections !== undefined && house.sections.length > 0;
	return {
		depth: take(ledger, house.depth, {
			path: 'house.depth',
			about,
			value: 8,
			says: asked ? `The house is drawn ${formatLength(8, units)} deep; no lamp stands behind it.` : null,
			needed: null
		}),
		eaves: take(ledger, house.eaves, {
			path: 'house.eaves',
			about,
			value: 2.7,
			says: asked ? `The eaves are taken as ${formatLength(2.7, units)} up, one storey.` : null,
			needed: lit ? 'How high the eaves are, for the lights on the walls.' : null
		}),
		finish: take(ledger, house.finish, {
			path: 'house.finish',
			about,
			value: 'medium',
			says: lit ? 'The walls are taken to be neither light nor dark.' : null,
			needed: lit ? 'How light the walls are.' : null
		}),
		texture: take(ledger, house.texture, {
			path: 'house.texture',
			about,
			value: 'smooth',
			says: lit ? 'The walls are taken to be smooth: a soft wash, not a grazing light.' : null,
			needed: null
		})
	};
}

/** Width of a walk or drive. */
export function stripWidth(kind: 'walk' | 'drive', strip: YardWalk | YardDrive, units: Units, ledger: Ledger): number {
	const value = kind === 'walk' ? 1.2 : 3;
	const the = calledThe(strip.name, kind);
	return take(ledger, strip.width, {
		path: `${kind}s.${strip.id}.width`,
		about: { kind, id: strip.id },
		value,
		says: `${capital(the)} is taken to be ${formatLength(value, units)} wide.`,
		needed: `How wide ${the} is.`
	});
}
/** Depth of one tread, front to back. */
export function treadGoing(
	walk: YardWalk,
	flight: { id: string; going?: number | 'unsure' },
	units: Units,
	ledger: Ledger
): number {
	return take(ledger, flight.going, {
		path: `walks.${walk.id}.steps.${flight.id}.going`,
		about: { kind: 'steps', id: flight.id },
		value: 0.3,
		says: `The treads on ${calledThe(walk.name, 'walk')} are taken to be ${formatLength(0.3, units)} deep.`,
		needed: null
	});
}
/** Metres along a drive at which its gate posts stand; `size`: side of a post, metres. */
export function postsPlace(drive: YardDrive, size: number, units: Units, ledger: Ledger): number {
	const the = calledThe(drive.name, 'drive');
	return take(ledger, drive.postsAt, {
		path: `drives.${drive.id}.postsAt`,
		about: { kind: 'drive', id: drive.id },
		value: 0,
		says: `The gate posts are taken to stand where ${the} leaves the street, ${formatLength(size, units)} square, beside its edges.`,
		needed: null
	});
}
type YardPaved = NonNullable<Yard['spots']['paved']>[number];
/** Whether cars drive or stand on a paved area. Until it is told they are taken to: lights then stand further off. */
export function pavedForCars(paved: YardPaved, ledger: Ledger): boolean {
	const the = calledThe(paved.name, 'paved area');
	return take(ledger, paved.cars, {
		path: `spots.paved.${paved.id}.cars`,
		about: { kind: 'paved', id: paved.id },
		value: true,
		says: `Cars are taken to use ${the}: lights stand as clear of it as of a drive.`,
		needed: null
	});
}

export interface BudgetFacts {
	/** Lights at most; null: no limit. */
	fixtures: number | null;
	/** Money for the lights at most, in the currency of the prices; null: no limit. */
	money: number | null;
}
/** What the lights may come to. Not asked: no limit, without a word. A limit named without its kind holds. */
export function budgetFacts({ power: { budget } }: Yard, ledger: Ledger): BudgetFacts {
	const kind = take(ledger, budget?.kind, {
		path: 'power.budget.kind',
		about: null,
		value: budget?.kind === 'unsure' ? 'none' : 'both',
		says: budget?.kind === 'unsure' ? 'No limit on number or money is taken: all lights that the rules ask for.' : null,
		needed: null
	});
	return {
		fixtures: kind === 'fixtures' || kind === 'both' ? (budget?.fixtures ?? null) : null,
		money: kind === 'money' || kind === 'both' ? (budget?.money ?? null) : null
	};
}
