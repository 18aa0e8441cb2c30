/** Problems of a file in words a person can follow to the place. */
import type * as z from 'zod/mini';

/** What the schema found, one sentence each: where, then what. */
export function inWords(issues: readonly z.core.$ZodIssue[], whole: unknown): string[] {
	return issues.map((issue) => {
		const near = flattened(issue);
		const path = near === issue ? issue.path : [...issue.path, ...near.path];
		return `${capital(where(path, whole))}: ${valueAt(path, whole) === undefined ? `${what(near)}, and it is missing` : what(near)}.`;
	});
}
const valueAt = (path: readonly PropertyKey[], whole: unknown): unknown =>
	path.reduce<unknown>(
		(value, key) => (value && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined),
		whole
	);
/** `trees[2].spread` of a file becomes `trees, number 3 (oak), spread`. */
export function where(path: readonly PropertyKey[], whole: unknown): string {
	const words: string[] = [];
	let value = whole;
	for (const key of path) {
		value = value && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined;
		if (typeof key !== 'number') {
			words.push(spaced(String(key)));
			continue;
		}
		const named = value as { name?: unknown; id?: unknown } | null | undefined;
		const label = [named?.name, named?.id].find((text) => typeof text === 'string' && text !== '');
		words.push(`number ${key + 1}${label ? ` (${String(label).slice(0, 40)})` : ''}`);
	}
	return words.length > 0 ? words.join(', ') : 'the file as a whole';
}
const spaced = (key: string): string =>
	key.slice(0, 40).replaceAll(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Of an answer that may take several shapes, the complaint of the shape that came nearest: the one with fewest, deepest. */
function flattened(issue: z.core.$ZodIssue): z.core.$ZodIssue {
	if (issue.code !== 'invalid_union') return issue;
	const inner = issue.errors.filter((list) => list.length > 0 && list[0]!.code !== 'invalid_value');
	const nearest = inner.sort((a, b) => a.length - b.length)[0]?.[0];
	return nearest ? flattened(nearest) : issue;
}
function what(issue: z.core.$ZodIssue): string {
	switch (issue.code) {
		case 'invalid_type':
			return `${kinds[issue.expected] ?? issue.expected} is expected here`;
		case 'not_multiple_of':
			return 'a whole number is expected here';
		case 'too_big':
			return issue.origin === 'number'
				? `at most ${String(issue.maximum)} is possible`
				: `at most ${String(issue.maximum)} are allowed`;
		case 'too_small':
			return issue.origin === 'number'
				? `at least ${String(issue.minimum)} is needed`
				: `at least ${String(issue.minimum)} are needed`;
		case 'invalid_value':
			return `one of these is expected: ${issue.values.map(String).join(', ')}`;
		case 'unrecognized_keys':
			return `this is not known here: ${issue.keys.map((key) => key.slice(0, 40)).join(', ')}`;
		case 'invalid_format':
			return 'this is not written the way it should be';
		default:
			return 'this cannot be read';
	}
}
const kinds: Record<string, string> = {
	number: 'a number',
	string: 'text',
	boolean: 'yes or no',
	array: 'a list',
	object: 'a group of answers',
	record: 'a group of answers'
};
