/** The lesson's garden: a front as base line, and one light told by along and out. */
import { makePlan, type Plan } from '../../plan';
import { makeSite, type Site } from '../../site';
import type { UnitSystem } from '../../shared/units';
import { blankYard, type Yard } from '../../yard';
import { tapeOf } from '../tape';
import type { XY } from '../pictures';

export interface Front {
	/** Metres. */
	width: number;
	depth: number;
	street: number;
	/** Where the light is wanted. */
	light: XY;
}
/** A 3-4-5 corner in both systems of units. */
export function frontOf(units: UnitSystem): Front {
	const { metres } = tapeOf(units).long;
	const [width, depth, street, along, out] = units === 'metres' ? [8, 6, 7, 4, 3] : [24, 18, 21, 12, 9];
	return {
		width: width! * metres,
		depth: depth! * metres,
		street: street! * metres,
		light: { x: along! * metres, y: out! * metres }
	};
}

function yardOf({ width, depth, street, light }: Front, units: UnitSystem): Yard {
	return {
		...blankYard(),
		place: { units, faces: 180, surroundings: 'suburb', location: 'unsure' },
		house: {
			sections: [{ id: 'front', width, out: 0, light: 'none' }],
			depth,
			eaves: 2.8,
			finish: 'medium',
			texture: 'smooth',
			openings: [],
			porches: [],
			left: { light: 'none' },
			right: { light: 'none' }
		},
		lot: { street, left: 2, right: 2 },
		trees: [],
		walks: [],
		drives: [],
		fixtures: { added: [{ id: 'light', technique: 'path', at: { along: light.x, out: light.y } }] }
	};
}
/** Plans by what they are made of: scene, reveal and slider show the same few. */
const made = new Map<string, Plan>();
/** The plan with the light at a place; cable, transformer, receptacle and sensor are left out: the picture is about the tapes. */
export function planWith(front: Front, light: XY, units: UnitSystem): Plan {
	const yard = yardOf({ ...front, light }, units);
	const key = JSON.stringify(yard);
	const before = made.get(key);
	if (before) return before;
	const whole = makePlan(yard);
	const plan = {
		...whole,
		runs: [],
		supply: null,
		site: { ...whole.site, receptacle: null },
		dusk: { ...whole.dusk, sensor: null }
	};
	made.set(key, plan);
	return plan;
}

/** Things of a garden at their places along and out (metres), as the survey has them, in the order told. */
export function surveyOf(places: readonly XY[], street: number, units: UnitSystem): Site {
	const trees = places.map(({ x, y }, index) => ({ id: `t-${index}`, name: '', at: { along: x, out: y } }));
	return makeSite({ ...blankYard(), place: { units }, lot: { street }, trees });
}
