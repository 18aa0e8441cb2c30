/** The yard's schema as a list of answers, for tests that hold the questions against it. */
import type * as z from 'zod/mini';
import { yardSchema } from '../domain/yard';

type Schema = z.core.$ZodType;
export interface Leaf {
	/** Items of a list are `*`: `trees.*.spread`. */
	path: string;
	schema: Schema;
	/** "unsure" is accepted here. */
	unsure: boolean;
}
/** What a schema or a check was made from; `_zod` is where zod keeps it, its own name. */
const internals = '_zod';
const defOf = (schema: Schema) => schema[internals].def as z.core.$ZodTypes['_zod']['def'];

/** Without `optional`, and with the alternatives of a union spread out. */
export function alternatives(schema: Schema): Schema[] {
	const def = defOf(schema);
	if (def.type === 'optional') return alternatives(def.innerType);
	if (def.type === 'union') return def.options.flatMap(alternatives);
	return [schema];
}
const isLiteral = (schema: Schema, value: unknown) => {
	const def = defOf(schema);
	return def.type === 'literal' && def.values.some((one) => one === value);
};

/** Every answer that a yard can hold, down to single values. */
export function leavesOf(schema: Schema = yardSchema, path = '', above = false): Leaf[] {
	const options = alternatives(schema);
	const unsure = above || options.some((option) => isLiteral(option, 'unsure'));
	const real = options.filter((option) => !isLiteral(option, 'unsure'));
	const inside = real.flatMap((option): Leaf[] => {
		const def = defOf(option);
		if (def.type === 'object') {
			return Object.entries(def.shape).flatMap(([key, one]) => leavesOf(one, path ? `${path}.${key}` : key, unsure));
		}
		if (def.type === 'array') return leavesOf(def.element, `${path}.*`);
		return [];
	});
	return inside.length > 0 ? inside : [{ path, schema, unsure }];
}

/** Least and most that a number may be. */
export function rangeOf(schema: Schema): { min: number | null; max: number | null } {
	const range: { min: number | null; max: number | null } = { min: null, max: null };
	for (const option of alternatives(schema)) {
		for (const check of defOf(option).checks ?? []) {
			const one = check[internals].def as { check: string; value?: number };
			if (one.check === 'greater_than') range.min = one.value ?? null;
			if (one.check === 'less_than') range.max = one.value ?? null;
		}
	}
	return range;
}
/** The single values that are accepted, apart from "unsure"; null when it is not a choice. */
export function choicesOf(schema: Schema): unknown[] | null {
	const values = alternatives(schema).flatMap((option): unknown[] => {
		const def = defOf(option);
		if (def.type === 'enum') return Object.values(def.entries);
		if (def.type === 'literal') return [...def.values];
		return def.type === 'boolean' ? [true, false] : [];
	});
	const real = values.filter((value) => value !== 'unsure');
	return real.length > 0 ? real : null;
}
