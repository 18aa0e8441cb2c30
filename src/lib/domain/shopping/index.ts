export * from './types';
export { makeShopping } from './make-shopping';
export { pullsOf, type Pull } from './pulls';
export { wasteShare } from './rolls';
