/** The cable stage: from fixtures to runs that can be dug and wired. */
export type * from './types';
export { clearances, layingCosts, type LayingCosts } from './costs';
export { layCable } from './lay';
