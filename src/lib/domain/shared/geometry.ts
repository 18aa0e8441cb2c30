/**
 * Plane geometry in metres. x = along the house front to the right as seen from the street, y = out towards the street;
 * on the drawing x runs right and y runs down. "Right of" a direction is therefore the right hand of someone walking
 * that way: going home from the street (0, −1), right is (1, 0).
 */
export * from './geometry/types';
export * from './geometry/vector';
export * from './geometry/segment';
export * from './geometry/line';
export * from './geometry/curve';
export * from './geometry/polygon';
export * from './geometry/box';
