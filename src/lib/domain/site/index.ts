export { makeSite } from './make-site';
export { leafOf, postsMiddle, postsOf, postSize } from './gates';
export { builtAt, distanceToStrip } from './ground';
export { wallTop } from './wall-top';
export { areaWords } from './area-words';
export type * from './types';
