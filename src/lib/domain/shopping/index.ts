export * from './types';
export { makeShopping } from './make-shopping';
export { pullsOf, type Pull } from './pulls';
