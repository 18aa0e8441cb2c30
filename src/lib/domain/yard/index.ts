export * from './schema';
export * from './called';
export * from './defaults';
export * from './defaults-spots';
export * from './defaults-trees';
export * from './ledger';
export { longestFile, readYard, writeYard, type ReadYard } from './read';
export { awkward, examples, faulty, type Start } from './examples';
export { outlines } from './outlines';
