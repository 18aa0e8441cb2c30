/** The class: lessons, problems and worksheets, all worked out by the engine. */
export type * from './types';
export type * from './pictures';
export { lessonIds, levels } from './types';
export { kinds, lessons } from './all';
export { workingOf } from './reckon';
