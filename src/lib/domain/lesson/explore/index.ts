/** Any figure of a plan, what moves it, and what moves with it. */
export type * from './types';
export { dependents, movedKeys } from './dependents';
export { figuresOf, findFigure } from './figures';
export { inputsOf } from './inputs';
export { likelyFirst, movers, tryOne, tryOut } from './movers';
