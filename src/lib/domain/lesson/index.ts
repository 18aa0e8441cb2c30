/** The class: lessons, problems and worksheets, all worked out by the engine. */
export type * from './types';
export type * from './pictures';
export { lessonIds, levels } from './types';
export { kinds, lessons } from './all';
export { workingOf } from './reckon';
export type * from './sheet/types';
export { makeSheet, makeSheets } from './sheet';
export { codeOf, longestCode, plainCode } from './sheet/code';
export { readMark } from './sheet/mark';
export { levelWords, mostProblems } from './sheet/said';
export { toFind, variants } from './sheet/types';
