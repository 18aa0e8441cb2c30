export { makeSite } from './make-site';
export { builtAt, distanceToStrip } from './ground';
export type * from './types';
