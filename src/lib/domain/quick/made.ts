/** Everything that is made up for answers, as geometry: before it becomes answers of the wizard. Metres. */
import { likelyLights } from './first-light';
import { frameOf, pastHouse, sizes, type Frame } from './frame';
import { groundOf, lampAt, neighbourGap, pool, poolAt, usualGap } from './ground';
import { receptacleFor, type Receptacle } from './receptacle';
import { atScale } from './scale';
import { treeSizes, treesIn, type QuickTree } from './trees';
import type { QuickAnswers } from './types';

export interface Made {
	answers: QuickAnswers;
	frame: Frame;
	trees: QuickTree[];
	receptacle: Receptacle;
	/** Of the house, metres. */
	depth: number;
	lot: { street: number; left: number; right: number };
}

/** Boundaries beyond all that stands there. Left and right count from the house's sides. */
function lotOf(frame: Frame, trees: readonly QuickTree[], { clear }: QuickAnswers): Made['lot'] {
	const { width, street, drives, walk, garage } = frame;
	const strips = drives.flatMap(({ line }) => line.map(({ x }) => x));
	const reach = (x: number, half: number): [number, number] => [x - half, x + half];
	const xs = [
		...strips.flatMap((x) => reach(x, sizes.drive / 2)),
		...walk.flatMap(({ x }) => reach(x, sizes.walk / 2)),
		...trees.flatMap(({ at, kind }) => reach(at.x, treeSizes[kind].spread / 2)),
		...(garage ? [garage.from.x] : [])
	];
	const water = poolAt(clear);
	const left = Math.max(0, ...xs.map((x) => -x), water ? -water.x + pool.along / 2 : 0);
	const beyond = Math.max(0, ...xs.map((x) => x - width));
	const isClose = clear.includes('neighbour');
	return {
		street,
		left: left + 2,
		right: Math.max(beyond + (isClose ? 0.6 : 2), isClose ? neighbourGap : usualGap)
	};
}

/** No house is deeper: trees stand beside it, not behind, however far back the receptacle turns out to be. */
const deepest = 60;
/** Metres of drive behind the receptacle: there and back is more than a bore counts for (rule ground.cross). */
const aroundIsFurther = 11;

/** Frame, trees, receptacle and lot for answers that are held, at the scale of the drawing. */
export function madeFrom(asked: QuickAnswers, scale: number): Made {
	const answers = atScale(asked, scale);
	const plain = frameOf(answers);
	const trees = treesIn(plain, groundOf(plain, answers.clear, deepest), answers.trees);
	const receptacle = receptacleFor(answers.receptacle, plain, likelyLights(plain, trees, lampAt(plain, answers.clear)));
	const back = -receptacle.at.y + 1.5;
	const depth = Math.max(sizes.depth, receptacle.on === 'side' ? back : 0);
	// Past the receptacle the drive goes on for so long that going round its end is further than going under it.
	const longer = frameOf(answers, Math.min(pastHouse, receptacle.at.y - aroundIsFurther));
	const { garage } = longer;
	const frame = garage
		? { ...longer, garage: { ...garage, to: { ...garage.to, y: Math.min(garage.to.y, -back) } } }
		: longer;
	return { answers, frame, trees, receptacle, depth, lot: lotOf(frame, trees, answers) };
}
