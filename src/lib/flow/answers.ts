/**
 * Reading and writing one answer of a yard by its path: dot-separated keys, an item of a list by its id
 * (`trees.oak.spread`), `@` for the item of list `each` that a question is asked for (`@.spread`).
 */
import type { Yard } from '../domain/yard';
import type { Question } from './types';

export type Each = Question['each'];
type Json = Record<string, unknown>;

const isObject = (value: unknown): value is Json =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
const byId = (list: unknown[], id: string) => list.findIndex((entry) => isObject(entry) && entry.id === id);

/** The path with `@` replaced by the item's own: `@.spread` for oak of `trees` is `trees.oak.spread`. */
export const fullPath = (path: string, item: string | null = null, each?: Each): string =>
	path.replace(/^@/, `${each ?? ''}.${item ?? ''}`);

/** The stored answer, or undefined when it was not asked yet or its item is not there. */
export function readAnswer(yard: Yard, path: string, item: string | null = null, each?: Each): unknown {
	let value: unknown = yard;
	for (const key of fullPath(path, item, each).split('.')) {
		if (Array.isArray(value)) value = value[byId(value, key)];
		else if (isObject(value)) value = value[key];
		else return undefined;
	}
	return value;
}

/** Groups of the yard that are always there, even when empty. */
const roots = new Set(['place', 'house', 'lot', 'spots', 'power']);

/** Lists of the yard: an answer about an item of one that is not there yet has nowhere to go. */
const lists = new Set(
	'trees walks drives beds seating water lights walls numbers sections openings porches steps crossings runOffs'.split(
		' '
	)
);

function put(node: unknown, keys: readonly string[], value: unknown): unknown {
	const [key, ...rest] = keys;
	if (key === undefined) return value;
	if (Array.isArray(node)) {
		const index = byId(node, key);
		if (index < 0) return node;
		const next = put(node[index], rest, value);
		if (next === node[index]) return node;
		return next === undefined ? node.filter((_, i) => i !== index) : node.with(index, next);
	}
	const object = isObject(node) ? node : {};
	if (rest.length > 0 && object[key] === undefined && lists.has(key)) return node;
	let next = put(object[key], rest, value);
	// a group that lost its last answer goes with it: "not asked" is an absent key
	if (rest.length > 0 && isObject(next) && Object.keys(next).length === 0 && !roots.has(key)) next = undefined;
	if (next === object[key]) return node;
	const { [key]: _, ...others } = object;
	if (next === undefined) return others;
	return key in object ? { ...object, [key]: next } : { ...others, [key]: next };
}

/**
 * The yard with one answer changed (undefined takes it back). What did not change is shared with the yard given;
 * when nothing changes, that yard itself is returned. An item that is not in its list is not created.
 */
export function writeAnswer(yard: Yard, path: string, item: string | null, each: Each, value: unknown): Yard {
	// the callers' fields say what a path takes; `yardSchema` is what holds it when the yard is read again
	return put(yard, fullPath(path, item, each).split('.'), value) as Yard;
}

/** A fresh id for a list: prefix and the first free number, `tree-3`. */
export function newItemId(list: readonly { id: string }[] | undefined, prefix: string): string {
	const taken = new Set(list?.map((entry) => entry.id));
	let number = (list?.length ?? 0) + 1;
	while (taken.has(`${prefix}-${number}`)) number++;
	return `${prefix}-${number}`;
}
