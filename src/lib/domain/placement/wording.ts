/** What a person calls a thing, inside a sentence: `the old oak`, `my walk`, `the drive`. */
export function called(name: string, kind: string): string {
	const given = name.trim();
	if (given === '') return `the ${kind}`;
	return /^(the|my|our)\s/i.test(given) ? given : `the ${given}`;
}
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** `it would stand in the walk, or a trunk stands there`. */
export const either = (reasons: readonly string[]): string => reasons.join(', or ');
