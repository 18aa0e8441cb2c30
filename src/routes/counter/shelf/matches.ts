/** Which fields are offered for a column: those of a second kind of light only once there is a first. */
import type { Column, Field } from '$lib/shelf';
import { fields } from '$lib/shelf';

const setOf = (field: Field): number => Number(/ ([2-9])$/.exec(field)?.[1] ?? 1);
const isCable = (field: Field): boolean => field.startsWith('cable');

/** Every field up to one set beyond what the columns have, in the order of a file of ours. */
export function offered(columns: readonly Column[]): Field[] {
	const most = (isWanted: (field: Field) => boolean) =>
		columns.reduce((top, { field }) => (field && isWanted(field) ? Math.max(top, setOf(field)) : top), 1);
	const cables = most(isCable) + 1;
	const lights = most((field) => !isCable(field)) + 1;
	return fields.filter((field) => setOf(field) <= (isCable(field) ? cables : lights));
}
