/** The whole-yard exercise: a yard, what a group drew for it, and how the rules hold there. */
export type * from './types';
export { exerciseIds, exerciseVersion, lightKinds, mostLights } from './types';
export { exerciseOf, longestCode, sizesOf, tidyCode } from './make';
export { markLayout, ownLayout } from './mark';
export { layoutOf, readLines, writeLayout, writeLength, writeLight, writeSupply, type ReadLine } from './read';
