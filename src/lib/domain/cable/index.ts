/** The cable stage: from fixtures to runs that can be dug and wired. */
export type * from './types';
export { clearances, layingCosts, type LayingCosts } from './costs';
export { bendLink, drawLink, eraseLink, linksOfRun, moveLamp, releaseRun, straighten } from './drawn-changes';
export { placedCrossings, type PlacedCrossing } from './crossing-places';
export { layCable } from './lay';
export { loadOf } from './loads';
export { trenchLength } from './trench';
export { spotsToTry, type SpotToTry, type TransformerAnswer } from './supply-spots-list';
export { problemWords } from './words';
export {
	currentWorking,
	dropWorking,
	gapWorking,
	lampWorking,
	lightWorking,
	loadWorking,
	moreLampsWorking,
	ohmsWorking,
	roomWorking,
	terminalWorking,
	totalWorking,
	voltsIn,
	voltsWorking,
	type Case,
	type Names
} from './figures';
