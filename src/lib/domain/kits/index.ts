/** The counter: what a plan needs of a shop's shelf, and which of it to buy. */
export type * from './types';
export { needsOf } from './needs';
export { fits, likeness } from './fits';
export { judge } from './judge';
export { problemOf } from './problem';
export { matchShelf } from './match';
export { compareOwned } from './owned';
export { ownLines, withLines } from './own-lines';
export { cableLength, kindWords, money } from './words';
