/** The yards of the exercises, invented; a code varies their measures. Their needs are answers of a yard, as a person gives them. */
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import { blankYard, type Yard } from '../../yard';
import type { Random } from '../random';
import type { ExerciseId } from './types';

/** Draws a measure: metres from, to, by; else feet from, to, by. Rounded to a tenth of a millimetre, as a tape's marks are in metres. */
type Draw = (metres: readonly [number, number, number], feet: readonly [number, number, number]) => number;
const exact = (metres: number): number => Number(metres.toFixed(4));
export const drawIn =
	(random: Random, units: UnitSystem): Draw =>
	(metres, feet) =>
		units === 'feet' ? exact(random.stepped(...feet) * metresPerFoot) : random.stepped(...metres);
/** One and the same measure in either unit. */
type Fix = (metres: number, feet: number) => number;

interface Ground {
	draw: Draw;
	fix: Fix;
	units: UnitSystem;
}
function start(name: string, { units }: Ground): Yard {
	return {
		...blankYard(),
		name,
		place: {
			units,
			location: { name, latitude: 42.4, longitude: -83.1, timeZone: 'America/Detroit' },
			faces: 180,
			surroundings: 'suburb'
		},
		power: {
			gfci: true,
			inUseCover: true,
			transformer: 'suggest',
			sensor: 'suggest',
			hours: { kind: 'until', clock: '23:00' },
			price: { perKwh: 0.2, currency: 'USD' },
			lamp: 'led',
			warmth: 2700,
			cable: units === 'feet' ? 'awg' : 'mm2',
			owned: {},
			budget: { kind: 'none' }
		}
	};
}
const at = (along: number, out: number) => ({ along: exact(along), out: exact(out) });

/** A straight walk to the door and one tree. */
function walkYard(ground: Ground, street: number): Yard {
	const { draw, fix } = ground;
	const door = draw([4.5, 5.5, 0.5], [15, 18, 1]);
	const half = fix(0.5, 1.5);
	const yard = start('Wren Gate', ground);
	return {
		...yard,
		house: {
			sections: [{ id: 'front', width: fix(10, 33), out: 0, light: 'none' }],
			depth: fix(7, 23),
			eaves: fix(2.7, 9),
			finish: 'light',
			texture: 'smooth',
			openings: [
				{ id: 'front-door', kind: 'door', wall: 'front', along: exact(door - half), width: exact(2 * half) },
				{ id: 'window', kind: 'window', wall: 'front', along: fix(7, 23), width: fix(1.5, 5) }
			],
			porches: [],
			left: { light: 'none' },
			right: { light: 'none' }
		},
		lot: { street, left: fix(2, 7), right: fix(2, 7) },
		trees: [
			{
				id: 'maple',
				name: 'maple',
				at: at(draw([0.5, 1.5, 0.5], [2, 5, 1]), draw([3, 4.5, 0.5], [10, 15, 1])),
				spread: draw([4, 6, 0.5], [13, 20, 1]),
				height: fix(7, 23),
				crownBase: fix(2, 6.5),
				trunk: fix(0.3, 1),
				form: 'round',
				ground: 'bed',
				light: 'soft',
				seenFrom: 'street'
			}
		],
		walks: [
			{
				id: 'front-walk',
				name: 'front walk',
				line: [at(door, street), at(door, 0)],
				curved: false,
				crossings: [],
				width: fix(1.2, 4),
				lights: 'either',
				rail: 'none',
				steps: [],
				gates: []
			}
		],
		drives: [],
		spots: { beds: [], paved: [], seating: [], numbers: [], water: [], lights: [], walls: [] },
		power: { ...yard.power, receptacle: at(fix(9, 30), 0) }
	};
}
/** Walk, tree, the mouth of a drive, a wall to wash. */
function driveYard(ground: Ground, street: number): Yard {
	const { draw, fix } = ground;
	const base = walkYard(ground, street);
	const width = draw([2.8, 3.2, 0.2], [9, 11, 1]);
	const middle = fix(13.5, 44);
	const [front] = base.house.sections!;
	return {
		...base,
		name: 'Thrush Corner',
		house: {
			...base.house,
			sections: [
				{ ...front!, light: 'soft' },
				{ id: 'garage', width: fix(6, 20), out: 0, light: 'none' }
			],
			openings: [
				...base.house.openings!,
				{ id: 'garage-door', kind: 'garage', wall: 'front', along: exact(middle - fix(1.2, 4)), width: fix(2.4, 8) }
			]
		},
		drives: [
			{
				id: 'drive',
				name: 'drive',
				line: [at(middle, street), at(middle, 0)],
				curved: false,
				crossings: [],
				width,
				lights: 'mouth',
				pattern: 'paired',
				posts: false,
				runOffs: []
			}
		]
	};
}
/** All of that, a walk with a bend in it, and a pool to stay clear of. */
function poolYard(ground: Ground, street: number): Yard {
	const { draw, fix } = ground;
	const base = driveYard(ground, street);
	const [walk] = base.walks!;
	const door = walk!.line![1]!.along;
	const turn = draw([3, 3.5, 0.5], [10, 12, 1]);
	const aside = fix(2.5, 8);
	return {
		...base,
		name: 'Heron Bank',
		walks: [{ ...walk!, line: [at(door + aside, street), at(door + aside, turn), at(door, turn), at(door, 0)] }],
		lot: { ...base.lot, left: fix(8, 26) },
		spots: {
			...base.spots,
			water: [
				{
					id: 'pool',
					name: 'pool',
					kind: 'pool',
					at: at(-fix(5, 16), draw([3, 4, 0.5], [10, 13, 1])),
					length: fix(4, 13),
					width: fix(3, 10)
				}
			]
		}
	};
}
/** From the house to the street. With the bend it is deep enough that the engine's own row keeps rule path.level wherever the bend lies. */
const makers: Readonly<Record<ExerciseId, (ground: Ground) => Yard>> = {
	walk: (ground) => walkYard(ground, ground.draw([7, 9, 0.5], [23, 30, 1])),
	drive: (ground) => driveYard(ground, ground.draw([7, 9, 0.5], [23, 30, 1])),
	pool: (ground) => poolYard(ground, ground.draw([8.5, 9.5, 0.5], [28, 32, 1]))
};
/** A yard as drawn. Its answers ask for lights where the exercise does. */
export const yardOf = (id: ExerciseId, random: Random, units: UnitSystem): Yard =>
	makers[id]({
		draw: drawIn(random, units),
		fix: (metres, feet) => (units === 'feet' ? exact(feet * metresPerFoot) : metres),
		units
	});
