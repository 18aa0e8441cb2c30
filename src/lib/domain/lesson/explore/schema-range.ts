/** The range of a number, as the schema of its answer has it. */
import type { z } from '../../yard';

export interface Range {
	least: number;
	most: number;
}
type AnySchema = z.core.$ZodType;

/** The first schema of a number in an optional one or in a union. */
function numberIn(schema: AnySchema): z.core.$ZodNumberDef | null {
	const { def } = schema as unknown as { def: z.core.$ZodTypes['_zod']['def'] };
	switch (def.type) {
		case 'number':
			return def;
		case 'optional':
			return numberIn(def.innerType);
		case 'union':
			return def.options.map(numberIn).find((found) => found !== null) ?? null;
		default:
			return null;
	}
}
/** Both ends; throws for an answer that is no number with two ends: a mistake of ours, not of the yard. */
export function rangeOf(schema: AnySchema): Range {
	const checks = numberIn(schema)?.checks ?? [];
	const end = (kind: 'greater_than' | 'less_than') => {
		for (const { _zod: inner } of checks) {
			const def: { check: string; value?: unknown } = inner.def;
			if (def.check === kind) return Number(def.value);
		}
		throw new Error('This answer is not a number with two ends');
	};
	return { least: end('greater_than'), most: end('less_than') };
}
