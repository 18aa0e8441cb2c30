/** Beside the pipeline: the same yard lit with one kind of lamp and with the other. */
export type * from './types';
export { compareLamps, withLamp } from './compare-lamps';
export type * from './spots-types';
export { compareSpots, ownSpotAgainstPlan, spotsInTurn, withSpot } from './spots';
