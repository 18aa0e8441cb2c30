/** A run redone by hand, beside the plan. */
export type * from './types';
export { byHand } from './by-hand';
export { annexG, circularMils, handbookOhms, K } from './figures';
