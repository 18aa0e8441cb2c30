export { holdsWithin, ratedLife } from '../shared/lamp-life';

/** Years that are compared. */
export const years = 10;
