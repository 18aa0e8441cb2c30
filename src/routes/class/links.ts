import { resolve } from '$app/paths';
import type { UnitSystem } from '$lib/domain/shared/units';
import { fragmentOf, usualUnits } from './fragment';

/** Behind an address; the usual units need no word. */
const chosen = (units: UnitSystem): string => (units === usualUnits ? '' : fragmentOf({ screen: null, units }));
/** Address of the teacher's page, or of another for a class, with the units that it has chosen. */
export const classHref = (
	units: UnitSystem,
	page: '/class/' | '/class/sheets/' | '/class/exercise/' | '/class/notes/' = '/class/'
): string => resolve(page) + chosen(units);
/** Address of a lesson's first screen. */
export const lessonHref = (id: string, units: UnitSystem): string =>
	`${resolve('/')}class/lesson/${id}/${chosen(units)}`;
