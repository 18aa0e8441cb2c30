import { describe, expect, test } from 'vitest';
import { bringUp, steps, today } from './versions';

describe('versions of the saved yard', () => {
	test('a step leads on from every version before today', () => {
		for (let version = 1; version < today; version++)
			expect(steps[version], `version ${version}`).toBeTypeOf('function');
		expect(Object.keys(steps).length).toBe(today - 1);
	});
	test('steps run one after another, from the version that a file was saved by', () => {
		const table = {
			1: (saved: Record<string, unknown>) => ({ ...saved, path: [...(saved.path as string[]), 'one'] }),
			2: (saved: Record<string, unknown>) => ({ ...saved, path: [...(saved.path as string[]), 'two'] })
		};
		expect(bringUp({ version: 1, path: [] }, 1, table, 3)).toEqual({ version: 3, path: ['one', 'two'] });
		expect(bringUp({ version: 2, path: [] }, 2, table, 3)).toEqual({ version: 3, path: ['two'] });
		expect(bringUp({ version: 3, path: [] }, 3, table, 3)).toEqual({ version: 3, path: [] });
	});
	test('a hole among the steps is named', () => {
		expect(() => bringUp({ version: 1 }, 1, {}, 2)).toThrow('version 1');
	});
});
