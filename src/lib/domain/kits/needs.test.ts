import { describe, expect, test } from 'vitest';
import { makePlan } from '../plan';
import { blankYard } from '../yard';
import { examples } from '../yard/examples';
import { needsOf } from './needs';
import { judge } from './judge';
import type { Plan } from '../plan';
import type { Needs, Shelf, ShelfFixture } from './types';

const yards = examples.map(({ yard, id }) => ({ id, yard }));

/** A shelf that holds exactly the plan's own lamps, cable and transformer. */
function ownShelf(plan: Plan, needs: Needs, secondaries: number): Shelf {
	const byId = new Map(plan.fixtures.map((fixture) => [fixture.id, fixture]));
	const line = (code: string, contents: Partial<Shelf['lines'][number]['contents']>): Shelf['lines'][number] => ({
		code,
		kind: 'fixture',
		name: code,
		cents: 100,
		stock: null,
		place: null,
		contents: { fixtures: [], transformer: null, cable: [], connectors: 0, ...contents }
	});
	const { ratedVoltAmps: voltAmps, taps, regulation } = plan.supply!;
	return {
		name: 'own',
		currency: '$',
		lines: [
			...needs.fixtures.map(({ id, kind, fixtures }) => {
				const { lamp } = byId.get(fixtures[0]!)!;
				const { kind: source, beamAngle, colourTemperature, ...rest } = lamp;
				const fixture: ShelfFixture = { kind, lamp: { ...rest, source, beam: beamAngle, colour: colourTemperature } };
				return line(id, { fixtures: [{ product: id, fixture, count: 1 }] });
			}),
			...needs.runs.map((_, r) =>
				line(`cable-${r}`, { cable: [{ size: plan.runs[r]!.cable, metres: 1000, count: 1 }] })
			),
			line('supply', { transformer: { voltAmps, taps, regulation, secondaries } })
		]
	};
}

describe.each(yards)('$id', ({ yard }) => {
	const plan = makePlan(yard);
	const needs = needsOf(plan, yard);

	test('every light is in one need, lettered as on the drawing, with the light and the kind of lamp of its plan', () => {
		const listed = needs.fixtures.flatMap(({ fixtures }) => fixtures);
		expect(listed.toSorted()).toEqual(plan.fixtures.map(({ id }) => id).toSorted());
		for (const need of needs.fixtures)
			need.fixtures.forEach((id, k) => {
				const fixture = plan.fixtures.find((one) => one.id === id)!;
				expect(need.labels[k]).toBe(fixture.label);
				expect(need.lumens).toBe(fixture.lamp.lumens);
				expect(need.source).toBe(fixture.lamp.kind);
				if (need.kind === 'spot') expect(fixture.mount).toBe('stake');
				if (need.kind === 'well') expect(fixture.mount).toBe('flush');
				if (need.beam !== null) expect(need.beam).toBe(fixture.lamp.beamAngle);
			});
		expect(new Set(needs.fixtures.map(({ id }) => id)).size).toBe(needs.fixtures.length);
	});
	test('metres are those laid and 5 % for waste; connectors are those of the shopping list', () => {
		needs.runs.forEach((run, r) => {
			const laid = plan.runs[r]!.segments.reduce((sum, { length }) => sum + length, 0);
			expect(run.metres).toBeCloseTo(laid * 1.05, 9);
			expect(run.shape.segments.reduce((sum, { metres }) => sum + metres, 0)).toBeCloseTo(laid, 9);
		});
		expect(needs.connectors).toBe(plan.shopping.items.find(({ id }) => id === 'connector')!.quantity);
	});
	test("the plan's own lamps, cable and transformer give the plan's own volts", () => {
		const shelf = ownShelf(plan, needs, Math.ceil(plan.supply!.ratedVoltAmps / 300));
		const judged = judge(
			{
				products: needs.fixtures.map(({ id }) => id),
				sizes: plan.runs.map(({ cable }) => cable),
				transformer: 'supply'
			},
			needs,
			shelf
		);
		expect(judged.taps).toEqual(plan.runs.map(({ tapVolts }) => tapVolts));
		const nodes = new Map(plan.runs.flatMap((run) => run.nodes.map((node) => [node.fixture, node] as const)));
		expect(judged.lamps.length).toBeGreaterThan(3);
		for (const { fixture, volts, low, high } of judged.lamps) {
			const node = nodes.get(fixture)!;
			expect(volts).toBeCloseTo(node.volts!, 6);
			expect(low).toBeCloseTo(node.band!.low, 6);
			expect(high).toBeCloseTo(node.band!.high, 6);
		}
		expect(judged.loadVoltAmps).toBeCloseTo(plan.supply!.loadVoltAmps, 6);
		expect(judged.ok).toBe(true);
	});
});

test('a plan without lights needs nothing', () => {
	const yard = blankYard();
	const needs = needsOf(makePlan(yard), yard);
	expect(needs).toMatchObject({ fixtures: [], runs: [], connectors: 0 });
});
