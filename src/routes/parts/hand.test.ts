import { describe, expect, test } from 'vitest';
import type { Run } from '$lib/domain/cable';
import { makePlan } from '$lib/domain/plan';
import { examples, readYard, writeYard, type CircuitChoice, type Yard } from '$lib/domain/yard';
import { writeAnswer } from '$lib/flow';
import { entryOf, freeOnRun, freeRun, moveLamp, setOnRun, setTransformer } from './hand';

const run = (id: string, lamps: string[], byHand: Run['byHand'] = []) =>
	({
		id,
		byHand,
		nodes: [{ fixture: null }, ...lamps.map((fixture) => ({ fixture }))]
	}) as unknown as Run;
const [a, b, c] = ['walk/a', 'walk/b', 'tree/c'];
const one = [run('run-1', [a, b, c])];
const two = [run('run-1', [a, b]), run('run-2', [c])];

describe('setting something of a run', () => {
	test('the only run needs not name its lamps', () =>
		expect(setOnRun(undefined, one, one[0]!, { size: 12 })).toEqual({ runs: [{ id: 'run-1', size: 12 }] }));
	test('one of several does', () =>
		expect(setOnRun(undefined, two, two[1]!, { tap: 13 })).toEqual({ runs: [{ id: 'run-2', lamps: [c], tap: 13 }] }));
	test('what was set before stays', () => {
		const before = { transformerVoltAmps: 300, runs: [{ id: 'run-1', size: 12 }] };
		expect(setOnRun(before, one, one[0]!, { feed: 'middle' })).toEqual({
			transformerVoltAmps: 300,
			runs: [{ id: 'run-1', size: 12, feed: 'middle' }]
		});
		expect(before.runs).toEqual([{ id: 'run-1', size: 12 }]);
	});
	test('a run that takes the rest goes on taking it', () => {
		const before: CircuitChoice = {
			runs: [
				{ id: 'run-1', size: 12 },
				{ id: 'run-2', lamps: [c] }
			]
		};
		expect(setOnRun(before, two, two[0]!, { tap: 14 })!.runs![0]).toEqual({ id: 'run-1', size: 12, tap: 14 });
	});
});

describe('leaving it to the plan', () => {
	const before: CircuitChoice = { runs: [{ id: 'run-1', size: 12, tap: 13 }] };
	test('one thing', () =>
		expect(freeOnRun(before, one, one[0]!, 'size')).toEqual({ runs: [{ id: 'run-1', tap: 13 }] }));
	test('the last thing takes the answer back', () => {
		const half = freeOnRun(before, one, one[0]!, 'size');
		expect(freeOnRun(half, one, one[0]!, 'tap')).toBeUndefined();
	});
	test('a whole run, and only that', () => {
		const both: CircuitChoice = { runs: [...before.runs!, { id: 'run-2', lamps: [c] }] };
		expect(freeRun(both, two, two[0]!)).toEqual({ runs: [{ id: 'run-2', lamps: [c] }] });
		expect(freeRun(before, one, one[0]!)).toBeUndefined();
	});
	test('what was never set stays so', () => {
		expect(freeOnRun(undefined, one, one[0]!, 'tap')).toBeUndefined();
		expect(freeRun(undefined, one, one[0]!)).toBeUndefined();
	});
});

describe('moving a lamp', () => {
	test('to another run: both name their lamps', () =>
		expect(moveLamp(undefined, two, a, two[1]!)).toEqual({
			runs: [
				{ id: 'run-1', lamps: [b] },
				{ id: 'run-2', lamps: [c, a] }
			]
		}));
	test('to a run of its own', () =>
		expect(moveLamp({ runs: [{ id: 'run-1', size: 12 }] }, one, b, 'own')).toEqual({
			runs: [
				{ id: 'run-1', size: 12, lamps: [a, c] },
				{ id: 'run-2', lamps: [b] }
			]
		}));
	test('the last lamp takes its run along', () =>
		expect(moveLamp(undefined, two, c, two[0]!)).toEqual({ runs: [{ id: 'run-1', lamps: [a, b, c] }] }));
	test('lamps that are not there just now stay named', () => {
		const before: CircuitChoice = {
			runs: [
				{ id: 'run-1', lamps: [a, 'tree/gone', b] },
				{ id: 'run-2', lamps: [c, 'tree/lost'] }
			]
		};
		expect(moveLamp(before, two, a, two[1]!)).toEqual({
			runs: [
				{ id: 'run-1', lamps: [b, 'tree/gone'] },
				{ id: 'run-2', lamps: [c, 'tree/lost', a] }
			]
		});
	});
	test('no lamp is lost or doubled, wherever it goes', () => {
		for (const lamp of [a, b, c])
			for (const to of [...two, 'own' as const]) {
				const named = moveLamp(undefined, two, lamp, to)?.runs?.flatMap(({ lamps }) => lamps!) ?? [a, b, c];
				expect(new Set(named).size).toBe(named.length);
				// What is not named is on a run that was not touched: all its lamps, or none.
				for (const { nodes } of two) {
					const left = nodes.flatMap(({ fixture }) => (fixture && !named.includes(fixture) ? [fixture] : []));
					expect([0, nodes.length - 1]).toContain(left.length);
				}
			}
	});
	test('a new run has an id of its own', () => {
		const before: CircuitChoice = { runs: [{ id: 'run-3', lamps: ['tree/gone'] }] };
		expect(moveLamp(before, two, a, 'own')!.runs!.at(-1)!.id).toBe('run-4');
	});
	test('to where it is, nothing changes', () => expect(moveLamp(undefined, two, a, two[0]!)).toBeUndefined());
});

test('the transformer is set and left again', () => {
	expect(setTransformer(undefined, 300)).toEqual({ transformerVoltAmps: 300 });
	expect(setTransformer({ transformerVoltAmps: 300 }, null)).toBeUndefined();
	expect(setTransformer({ runs: [{ id: 'run-1', tap: 13 }] }, 600)).toEqual({
		transformerVoltAmps: 600,
		runs: [{ id: 'run-1', tap: 13 }]
	});
});

test('a run set under another id is found by its lamps, else by taking the rest', () => {
	const held = [run('run-1', [a, b], ['cable']), run('run-2', [c], ['tap'])];
	const choice: CircuitChoice = {
		runs: [
			{ id: 'mine', size: 12 },
			{ id: 'tree', lamps: [c], tap: 13 }
		]
	};
	expect(entryOf(choice, held, held[0]!)?.id).toBe('mine');
	expect(entryOf(choice, held, held[1]!)?.id).toBe('tree');
	expect(entryOf(choice, two, two[0]!)).toBeNull();
});

describe.each(examples.map(({ id, yard }) => [id, yard] as const))('in demo yard %s', (_, yard) => {
	const plan = makePlan(yard);
	const kept = (choice: CircuitChoice | undefined): Yard => {
		const read = readYard(writeYard(writeAnswer(yard, 'power.circuit', null, undefined, choice)));
		if (!read.ok) throw new Error('the yard with it cannot be read');
		return read.yard;
	};
	test('each choice makes a yard that can be kept and read', () => {
		for (const run of plan.runs) {
			expect(kept(setOnRun(undefined, plan.runs, run, { size: run.cable.size })).power.circuit?.runs).toHaveLength(1);
			for (const lamp of run.nodes.flatMap(({ fixture }) => fixture ?? []).slice(0, 3))
				expect(kept(moveLamp(undefined, plan.runs, lamp, 'own')).power.circuit?.runs?.length).toBeGreaterThan(0);
		}
		expect(kept(undefined)).toEqual(kept(setTransformer({ transformerVoltAmps: 300 }, null)));
	});
});
