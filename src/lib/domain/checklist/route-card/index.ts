export * from './types';
export { groundOf } from './leg';
export { findingsOf, routeCards } from './route-card';
