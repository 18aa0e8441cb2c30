import { describe, expect, it } from 'vitest';
import { ngspiceVolts } from '../circuit/ngspice.testing';
import type { Network } from '../circuit';
import { distanceToPolygon, nearestOnSegment } from '../shared/geometry';
import { placeFixtures, type Fixture } from '../placement';
import { makeSite, type Site } from '../site';
import { examples, type Yard } from '../yard';
import { mirrored } from '../yard/mirror.testing';
import { randomYard } from '../yard/random.testing';
import { layCable } from '.';
import { loadOf } from './loads';
import type { Cabling } from './types';

const planned = (yard: Yard): { site: Site; fixtures: Fixture[]; cabling: Cabling } => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { site, fixtures, cabling: layCable(site, fixtures, yard) };
};

/**
 * All runs behind the sag they share, from nothing but the plan's own figures: volts divided by each run's tap, ohms by
 * its square, so that runs on different taps hang on one source of one volt.
 */
function together({ runs, supply }: Cabling, fixtures: readonly Fixture[]): Network {
	const network: Network = {
		sourceVolts: 1,
		sourceOhms: supply!.regulation / supply!.ratedVoltAmps,
		nodes: 1,
		segments: [],
		loads: []
	};
	for (const run of runs) {
		const first = network.nodes - 1;
		const at = (id: string) => {
			const k = run.nodes.findIndex((node) => node.id === id);
			return k === 0 ? 0 : first + k;
		};
		for (const { from, to, length } of run.segments)
			network.segments.push({
				from: at(from),
				to: at(to),
				ohms: (2 * run.ohmsPerKm * length) / 1000 / run.tapVolts ** 2
			});
		for (const node of run.nodes.slice(1)) {
			const load = loadOf(fixtures.find((fixture) => fixture.id === node.fixture)!.lamp);
			network.loads.push({
				node: at(node.id),
				load: load.kind === 'halogen' ? { ...load, ratedVolts: load.ratedVolts / run.tapVolts } : load
			});
		}
		network.nodes += run.nodes.length - 1;
	}
	return network;
}

describe.each(examples.map((example) => [example.id, example.yard] as const))('the %s demo yard', (_, yard) => {
	const { fixtures, cabling } = planned(yard);
	it('feeds every fixture, with nothing to stop it', () => {
		expect(cabling.findings.filter((finding) => finding.rank === 'stop')).toEqual([]);
		const fed = cabling.runs.flatMap((run) => run.nodes.flatMap((node) => node.fixture ?? []));
		expect(fed.toSorted()).toEqual(fixtures.map((fixture) => fixture.id).toSorted());
	});
	it('has the volts that ngspice finds, within 1e-6 V', () => {
		const [theirs] = ngspiceVolts([together(cabling, fixtures)]);
		let next = 1;
		for (const run of cabling.runs) {
			expect(Math.abs(theirs![0]! * run.tapVolts - run.nodes[0]!.volts!)).toBeLessThan(1e-6);
			for (const node of run.nodes.slice(1))
				expect(Math.abs(theirs![next++]! * run.tapVolts - node.volts!)).toBeLessThan(1e-6);
		}
	});
	it('keeps the limits that can be read off the plan', () => {
		const { ratedVoltAmps, loadVoltAmps } = cabling.supply!;
		expect(loadVoltAmps).toBeLessThanOrEqual(0.8 * ratedVoltAmps);
		for (const run of cabling.runs) {
			expect(run.amps!).toBeLessThanOrEqual(Math.min(25, run.ampsLimit));
			for (const node of run.nodes.slice(1)) {
				const { lamp } = fixtures.find((fixture) => fixture.id === node.fixture)!;
				expect(node.volts!).toBeGreaterThanOrEqual(lamp.minVolts);
				expect(node.volts!).toBeLessThanOrEqual(lamp.maxVolts);
			}
		}
	});
	it('is as long in a mirror', () => {
		const metres = (one: Cabling) =>
			one.runs.flatMap((run) => run.segments).reduce((sum, segment) => sum + segment.length, 0);
		expect(metres(planned(mirrored(yard)).cabling)).toBeCloseTo(metres(cabling), 6);
	});
});

describe('random yards', { timeout: 900_000 }, () => {
	const rounds = process.env.LONG ? 600 : 40;
	it(`come through with every fixture fed or spoken of, and no cable in house, water or trunk, on ${rounds} of them`, () => {
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures, cabling } = planned(randomYard(seed));
			expect(JSON.stringify(cabling), `seed ${seed}`).not.toMatch(/NaN|undefined|Infinity/);
			const fed = new Set(cabling.runs.flatMap((run) => run.nodes.flatMap((node) => node.fixture ?? [])));
			const said = cabling.findings.filter(({ code }) => code === 'cable.unreachable' || code === 'supply.nowhere');
			for (const fixture of fixtures) {
				const spoken = said.some(({ code, message }) => code === 'supply.nowhere' || message.includes(fixture.label));
				expect(fed.has(fixture.id) || spoken, `seed ${seed} ${fixture.id}`).toBe(true);
			}
			for (const { path } of cabling.runs.flatMap((run) => run.segments)) {
				for (let k = 1; k < path.length; k++) {
					const [a, b] = [path[k - 1]!, path[k]!];
					// The first and last two metres may be the stub from a fixture in an edge, or from the wall, to open ground.
					const inner = [0.2, 0.4, 0.6, 0.8].map((t) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }));
					const stub = (k === 1 || k === path.length - 1) && Math.hypot(a.x - b.x, a.y - b.y) < 2.1;
					if (stub) continue;
					const solid = [site.house, ...site.areas.flatMap((area) => (area.kind === 'water' ? [area.polygon] : []))];
					for (const p of inner)
						for (const ring of solid.filter((one) => one.length > 2))
							expect(distanceToPolygon(p, ring), `seed ${seed}`).toBeGreaterThan(-1e-6);
					for (const tree of site.trees)
						expect(nearestOnSegment(tree.at, a, b).distance, `seed ${seed}`).toBeGreaterThan(
							tree.trunkDiameter / 2 - 1e-6
						);
				}
			}
		}
	});
});
