/** The light stage: from fixtures at their volts to what lands where, against what it should be. */
export type * from './types';
export { lightField } from './field';
export { lightMap } from './map';
export { LightGrid, leastShare } from './light-grid';
export { sourceOf, sourcesOf, lightAt } from './sources';
export { eavesLids, houseSides, lidOf, screenOf, shadowsOf, type Lid, type Screen } from './shadows';
export { planLight } from './plan-light';
export { Tally } from './probe';
export { verdictOf, walkAim } from './aims';
