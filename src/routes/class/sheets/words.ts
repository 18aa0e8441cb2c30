/** What the page says of a set of sheets. */
import type { Level } from '$lib/domain/lesson/types';
import type { Settings } from './settings';

export const levelChoices: readonly { value: Level; label: string; help: string }[] = [
	{ value: 'solved', label: 'Solved', help: 'Worked examples, to read and to talk through.' },
	{ value: 'one', label: 'One step left out', help: 'The rest of the working is there.' },
	{ value: 'several', label: 'Several steps left out', help: 'At least half of the working is the learner’s.' },
	{ value: 'all', label: 'The question alone', help: 'With room to work it out.' }
];
const sheetsWords = (n: number): string => (n === 1 ? 'one sheet' : `${n} sheets`);
const keysWords = (n: number): string => (n === 1 ? 'one key' : `${n} keys`);

/** `Prints 30 sheets, variants A to F in turn, then 6 keys on pages of their own.` */
export function printWords({ printed, sheets, variants }: Settings): string {
	const used = printed === 'keys' ? variants : variants.slice(0, sheets);
	const turn = used.length === 1 ? `variant ${used[0]}` : `variants ${used.join(', ')} in turn`;
	if (printed === 'keys')
		return `Prints ${keysWords(used.length)}, ${used.length === 1 ? turn : `variants ${used.join(', ')}`}.`;
	const keys =
		printed === 'both' ? `, then ${keysWords(used.length)} on pages of ${used.length === 1 ? 'its' : 'their'} own` : '';
	return `Prints ${sheetsWords(sheets)}, ${turn}${keys}.`;
}
