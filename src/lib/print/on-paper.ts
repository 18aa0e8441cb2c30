/** Sizes on paper of what does not grow with the scale. CSS counts 96 px to the inch of paper. */
import type { Sizes } from '../drawing';

export const pxPerMm = 96 / 25.4;
/** Labels of 7.5 pt, names of 7 pt, fixtures 2.5 mm across. */
export const paperSizes: Sizes = { symbol: 4.7, label: 10, name: 9.3 };
