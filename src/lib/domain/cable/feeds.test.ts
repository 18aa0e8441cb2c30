import { describe, expect, it } from 'vitest';
import { solve } from '../circuit';
import { blankYard, type Yard } from '../yard';
import type { Site } from '../site';
import type { Fixture } from '../placement';
import { layCable } from './lay';
import { pullsOf } from '../shopping/pulls';
import { emptySite, fixtureOf, withHouse } from './random.testing';

const slack = 1.5;
/** Transformer 0.46 m up, cable 0.15 m down. */
const rise = 0.61;
const site: Site = {
	...withHouse(emptySite(), 10, 8),
	receptacle: { at: { x: 4.6, y: 0 }, known: true, gfci: true, inUseCover: true }
};
const yardWith = (power: Yard['power']): Yard => ({ ...blankYard(), power });
/** The transformer hangs at (5, 0.1). */
const spot = { at: { along: 5, out: 0 }, on: 'wall' as const, height: 0.46 };
const row = (xs: number[], y: number, model?: string): Fixture[] =>
	xs.map((x, i) => fixtureOf(`walk/path-${i + 1}`, `P${i + 1}`, { x, y }, model));

describe('the ways to feed a run, five lamps three metres apart', () => {
	const lamps = row([5, 8, 11, 14, 17], 4.1);
	const fed = (feed: 'end' | 'middle' | 'hub') =>
		layCable(
			site,
			lamps,
			yardWith({ transformer: spot, circuit: { runs: [{ id: 'run-1', feed, size: 12, tap: 12 }] } })
		);
	const metres = (feed: 'end' | 'middle' | 'hub') => fed(feed).runs[0]!.segments.map(({ length }) => length);

	it('at the near end: one cable from lamp to lamp', () => {
		expect(metres('end')).toEqual([4 + slack + rise, 4.5, 4.5, 4.5, 4.5].map((one) => expect.closeTo(one, 9)));
		expect(fed('end').runs[0]!.nodes).toHaveLength(6);
	});
	it('in the middle: the same cable between the lamps, entered where it is best', () => {
		const [run] = fed('middle').runs;
		expect(run!.feed).toBe('middle');
		const entry = run!.segments[0]!;
		const at = lamps.findIndex(({ id }) => id === entry.to);
		expect([1, 2, 3]).toContain(at);
		expect(entry.length).toBeCloseTo(Math.hypot(3 * at, 4) + slack + rise, 2);
		expect(run!.segments.slice(1).map(({ length }) => length)).toEqual([4.5, 4.5, 4.5, 4.5]);
		expect(run!.segments.filter(({ from }) => from === entry.to)).toHaveLength(2);
	});
	it('at a hub: a bare node beside a lamp, and a lead to each, its own lamp by its slack', () => {
		const cabling = fed('hub');
		const [run] = cabling.runs;
		expect(run!.nodes).toHaveLength(7);
		const [supply, hub, ...rest] = run!.nodes;
		expect(supply!.id).toBe('supply');
		expect(hub).toMatchObject({ id: 'run-1-hub', fixture: null });
		expect(hub!.volts).toBeGreaterThan(9);
		expect(hub!.band!.low).toBeLessThan(hub!.volts!);
		expect(rest.map(({ fixture }) => fixture).toSorted()).toEqual(lamps.map(({ id }) => id).toSorted());
		const beside = lamps.find(({ at }) => at.x === hub!.at.x && at.y === hub!.at.y)!;
		for (const { from, to, length, path } of run!.segments.slice(1)) {
			expect(from).toBe('run-1-hub');
			const { at } = lamps.find(({ id }) => id === to)!;
			expect(length).toBeCloseTo(Math.abs(at.x - beside.at.x) + slack, 2);
			expect(path.length).toBeGreaterThanOrEqual(2);
		}
		// Every metre is bought: one pull to the hub, one for each lead.
		expect(pullsOf(run!)).toHaveLength(6);
		const pulled = pullsOf(run!).flatMap(({ legs }) => legs.map(({ length }) => length));
		expect(pulled.reduce((a, b) => a + b, 0)).toBeCloseTo(
			metres('hub').reduce((a, b) => a + b, 0),
			9
		);
	});
	it('each with the volts that its own lengths give', () => {
		for (const feed of ['end', 'middle', 'hub'] as const) {
			const { runs, supply } = fed(feed);
			const run = runs[0]!;
			const place = new Map(run.nodes.map(({ id }, k) => [id, k]));
			const solution = solve({
				sourceVolts: run.tapVolts,
				sourceOhms: (supply!.regulation * run.tapVolts ** 2) / supply!.ratedVoltAmps,
				nodes: run.nodes.length,
				segments: run.segments.map(({ from, to, length }) => ({
					from: place.get(from)!,
					to: place.get(to)!,
					ohms: (2 * run.ohmsPerKm * length) / 1000
				})),
				loads: run.nodes.flatMap(({ fixture }, node) =>
					fixture
						? [{ node, load: { kind: 'led' as const, voltAmps: lamps[0]!.lamp.voltAmps, minVolts: 9, maxVolts: 15 } }]
						: []
				)
			});
			if (!solution.ok) throw new Error(solution.message);
			run.nodes.forEach(({ volts }, k) => expect(volts!).toBeCloseTo(solution.volts[k]!, 6));
		}
	});
});

describe('what the plan takes of itself', () => {
	/** Lamps on an arc round the transformer, the first a little nearer than the others: the plain way enters there. */
	const arc = Array.from({ length: 11 }, (_, k) => {
		const angle = ((18 + 14.4 * k) * Math.PI) / 180;
		const radius = k === 0 ? 12.9 : 13;
		return fixtureOf(
			`walk/path-${k + 1}`,
			`P${k + 1}`,
			{
				x: 5 + radius * Math.cos(angle),
				y: 0.1 + radius * Math.sin(angle)
			},
			'spot-led-7w-36-2700'
		);
	});
	const choice = (runs?: { id: string; feed?: 'end' | 'middle' | 'hub' }[]) =>
		layCable({ ...site, leftBoundary: -20 }, arc, yardWith({ transformer: spot, ...(runs && { circuit: { runs } }) }));
	it('feeds a row in its middle where that is as near as its end', () => {
		const one = choice([{ id: 'run-1' }]);
		const { feed, segments, byHand } = one.runs[0]!;
		expect(feed).toBe('middle');
		expect(byHand).toEqual([]);
		expect(arc.findIndex(({ id }) => id === segments[0]!.to)).toBeGreaterThan(2);
		expect(one.findings.filter(({ rank }) => rank === 'stop')).toEqual([]);
		// From its end the same row costs more: it takes thicker cable.
		const end = choice([{ id: 'run-1', feed: 'end' }]);
		expect(end.runs[0]!.feed).toBe('end');
		expect(one.supply!.cost).toBeLessThan(end.supply!.cost);
	});
	it('is never dearer than with the feed held', () => {
		const free = choice([{ id: 'run-1' }]).supply!.cost;
		for (const feed of ['end', 'middle', 'hub'] as const)
			expect(free).toBeLessThanOrEqual(choice([{ id: 'run-1', feed }]).supply!.cost + 1e-9);
		expect(choice().supply!.cost).toBeLessThanOrEqual(free + 1e-9);
	});
});
