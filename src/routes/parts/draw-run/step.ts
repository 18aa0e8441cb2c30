import { metresPerInch } from '$lib/domain/shared/units';
import type { Units } from '$lib/domain/yard';

/** A small step, metres: what one press of an arrow key means. */
export const stepOf = (units: Units): number => (units === 'feet' ? 6 * metresPerInch : 0.1);
