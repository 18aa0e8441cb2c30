import { describe, expect, test } from 'vitest';
import { makePlan } from '../domain/plan';
import { sources } from '../domain/shared/sources';
import type { Working } from '../domain/shared/working';
import { blankYard, examples } from '../domain/yard';
import { evaluate } from '../domain/shared/evaluate';
import { fixed, showWorking } from '../domain/shared/show-working';

const isWorking = (value: object): value is Working => 'expression' in value && 'inputs' in value;
/** Every working in the plan, also those inside other workings. */
const workingsIn = (value: unknown): Working[] =>
	typeof value === 'object' && value !== null
		? [...(isWorking(value) ? [value] : []), ...Object.values(value).flatMap(workingsIn)]
		: [];

describe.each([...examples.map(({ id, yard }) => [id, yard] as const), ['blank', blankYard()] as const])(
	'%s',
	(_, yard) => {
		const workings = workingsIn(makePlan(yard));

		test('every figure on the plan re-evaluates from what is displayed', () => {
			expect(workings.length).toBeGreaterThan(0);
			const wrong = workings.flatMap((working) => {
				const shown = showWorking(working);
				const again = fixed(evaluate(shown.line), working.decimals);
				const result = working.unit ? `${again} ${working.unit}` : again;
				return result === shown.result && shown.holds
					? []
					: [`${working.label}: ${shown.line} = ${again}, shown ${shown.result}`];
			});
			expect([...new Set(wrong)]).toEqual([]);
		});
		test('every figure names a source that exists', () => {
			const ids = new Set<string>(Object.values(sources).map((source) => source.id));
			expect(workings.filter((working) => !ids.has(working.source)).map((working) => working.source)).toEqual([]);
		});
	}
);
