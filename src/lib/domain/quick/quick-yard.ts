/** From a dozen picks to a whole yard of usual shape, with all that was made up. */
import type { Point } from '../shared/geometry';
import type { Yard, YardDrive, YardPoint, YardTree, YardWalk } from '../yard';
import { assumptionsOf } from './assumptions';
import { sizes, type Frame } from './frame';
import { lampAt, lampReach, pool, poolAt } from './ground';
import { held } from './held';
import { houseOf } from './house';
import { madeFrom, type Made } from './made';
import { scaled, scaleFor } from './scale';
import { treeSizes, type QuickTree } from './trees';
import type { QuickAnswers, QuickYard } from './types';

const point = ({ x, y }: Point) => ({ along: x, out: y });

const walksOf = ({ walk, lightsOn }: Frame): YardWalk[] =>
	walk.length === 0
		? []
		: [
				{
					id: 'front-walk',
					name: 'front walk',
					line: walk.map(point),
					curved: false,
					crossings: [],
					width: sizes.walk,
					lights: lightsOn,
					rail: 'none',
					steps: [],
					gates: []
				}
			];
const driveNames = { drive: 'drive', 'drive-inner': 'drive by the house', 'drive-branch': 'drive to the garage' };
const drivesOf = ({ drives, crossing }: Frame): YardDrive[] =>
	drives.map(({ id, line, lit }) => ({
		id,
		name: driveNames[id],
		line: line.map(point),
		curved: false,
		crossings: crossing?.drive === id ? [{ id: 'bore', at: crossing.at, kind: 'bore' as const }] : [],
		width: sizes.drive,
		lights: lit ? 'left' : 'none',
		pattern: 'staggered',
		posts: false,
		runOffs: []
	}));
const treeOf = ({ id, name, kind, at }: QuickTree): YardTree => ({
	id,
	name,
	at: point(at),
	...treeSizes[kind],
	form: 'round',
	ground: 'lawn',
	light: 'soft',
	seenFrom: 'street'
});
function spotsOf({ frame, answers }: Made): Yard['spots'] {
	const water = poolAt(answers.clear);
	const lamp = lampAt(frame, answers.clear);
	const { garage } = frame;
	return {
		beds: [],
		paved: [],
		seating: [],
		numbers: [],
		water: water
			? [{ id: 'pool', name: 'pool', kind: 'pool', at: point(water), length: pool.along, width: pool.out }]
			: [],
		lights: lamp
			? [{ id: 'street-lamp', name: 'street lamp', kind: 'street-lamp', at: point(lamp), height: 5, reach: lampReach }]
			: [],
		walls: garage
			? [
					{
						id: 'garage',
						name: 'garage wall',
						from: point(garage.from),
						to: point(garage.to),
						height: 2.4,
						finish: 'medium',
						texture: 'smooth',
						light: 'none'
					}
				]
			: []
	};
}
function powerOf({ transformer, cable, lamp, units }: QuickAnswers, receptacle: YardPoint): Yard['power'] {
	return {
		receptacle,
		gfci: 'unsure',
		inUseCover: 'unsure',
		transformer: 'suggest',
		sensor: 'suggest',
		lamp,
		cable: units === 'feet' ? 'awg' : 'mm2',
		owned: {
			...(transformer === null ? {} : { transformerVoltAmps: transformer }),
			...(cable === null ? {} : { cableSize: cable.size, cableLength: cable.metres })
		},
		budget: { kind: 'none' }
	};
}

/**
 * A whole yard of usual shape for a dozen picks, and a sentence for each answer in it that nobody gave. Pure and total: any
 * answers give a yard that `yardSchema` takes; the same answers give the same bytes.
 */
export function quickYard(answers: QuickAnswers): QuickYard {
	const asked = held(answers);
	const scale = scaleFor(asked.units);
	const made = madeFrom(asked, scale);
	const { frame, trees, depth, lot } = made;
	const drawn = {
		house: houseOf(frame, depth),
		lot,
		trees: trees.map(treeOf),
		walks: walksOf(frame),
		drives: drivesOf(frame),
		spots: spotsOf(made)
	};
	const yard: Yard = {
		format: 'duskwright/yard',
		version: 1,
		name: 'From the counter',
		place: { units: asked.units },
		...scaled(drawn, scale),
		power: powerOf(asked, scaled(point(made.receptacle.at), scale))
	};
	return { yard, assumptions: assumptionsOf(made, scale) };
}
