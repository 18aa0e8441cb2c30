/** Things by their names, inside a sentence. */
export function named(name: string, kind: string): string {
	const given = name.trim();
	if (given === '') return `the ${kind}`;
	return /^(the|my|our)\s/i.test(given) ? given : `the ${given}`;
}
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** Lux as said in a sentence: one decimal below ten, none above. */
export const luxWords = (lux: number): string => `${lux.toFixed(lux < 9.95 ? 1 : 0)} lx`;
/** `T1`, `T1 and T2`, `T1, T2 and 3 more`. */
export function listed(labels: readonly string[]): string {
	const shown = labels.length > 3 ? [...labels.slice(0, 2), `${labels.length - 2} more`] : labels;
	return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)!}`;
}
