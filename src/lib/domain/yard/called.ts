/** A name as it stands inside a sentence: `the oak`; nameless things go by their kind. */
export function calledThe(name: string, kind: string): string {
	const given = name.trim();
	if (given === '') return `the ${kind}`;
	return /^(the|my|our)\s/i.test(given) ? given : `the ${given}`;
}
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
