export { thingsOf } from './things';
export { groupWords, kindOrder, placeWords, pointWords } from './words';
export type * from './types';
