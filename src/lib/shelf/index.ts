/** A shop's shelf as a file: read, put right, written. Knows nothing of the page. */
export type * from './types';
export type { Cells, Context, Said } from './row';
export type { ReadLine } from './line';
export type { Field } from './fields';
export { fields, fieldWords } from './fields';
export { mostBytes, tooLarge } from './decode';
export { mostRows, readShelf } from './read-shelf';
export { lineFromCells } from './line';
export { cellsOfLine, shelfCsv } from './write';
export { demoShelf } from './demo';
export { cableField, cableSets, lightField, lightSets } from './fields';
export type { CableSet, LightSet } from './fields';
