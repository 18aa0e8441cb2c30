export * from './types';
export { makeShopping } from './make-shopping';
