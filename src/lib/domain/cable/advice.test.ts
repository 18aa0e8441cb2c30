import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import type { Advice, Finding } from '../shared/findings';
import { placeFixtures, type Fixture } from '../placement';
import { makeSite } from '../site';
import { faulty, readYard, writeYard, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { layCable } from '.';
import { generator } from './random.testing';
import type { Cabling } from './types';

interface Laid {
	fixtures: Fixture[];
	cabling: Cabling;
}
const laid = (yard: Yard): Laid => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { fixtures, cabling: layCable(site, fixtures, yard) };
};
/** The changes written into a copy of the yard by path, null taking an answer out. */
function taken(yard: Yard, { changes }: Advice): Yard {
	const copy = structuredClone(yard) as Record<string, unknown>;
	for (const { path, value } of changes) {
		const keys = path.split('.');
		const last = keys.pop()!;
		const owner = keys.reduce((at, key) => at[key] as Record<string, unknown>, copy);
		if (value === null) delete owner[last];
		else owner[last] = value;
	}
	return copy as Yard;
}
const fixturesPrice = (fixtures: readonly Fixture[], { power }: Yard) =>
	fixtures.reduce((sum, { model }) => {
		const sold = fixtureModels.find(({ id }) => id === model)!;
		return sum + (power.prices?.[sold.id] ?? sold.price);
	}, 0);
const circuitStops = ({ cabling }: Laid) =>
	cabling.findings.filter(({ rank, code }) => rank === 'stop' && /^cable\.(?!unreachable)/.test(code));
const of = (list: readonly Finding[], code: string) => list.filter((one) => one.code === code).length;

/** Holds an advice to its word: the finding gone, no stop in its place, cost and volts as promised. */
function check(yard: Yard, before: Laid, finding: Finding, advice: Advice, where: string): void {
	const changed = taken(yard, advice);
	expect(readYard(writeYard(changed)), where).toMatchObject({ ok: true });
	const after = laid(changed);
	const [was, is] = [circuitStops(before), circuitStops(after)];
	if (finding.rank === 'stop') expect(of(is, finding.code), where).toBeLessThan(of(was, finding.code));
	else expect(of(after.cabling.findings, finding.code), where).toBeLessThan(of(before.cabling.findings, finding.code));
	for (const { code } of is) expect(of(is, code), where).toBeLessThanOrEqual(of(was, code));
	const lamps = fixturesPrice(after.fixtures, changed) - fixturesPrice(before.fixtures, yard);
	expect(after.cabling.supply!.cost - before.cabling.supply!.cost + lamps, where).toBeCloseTo(advice.cost, 6);
	const promised = /^(\S+) then gets (\d+\.\d) V(?:, at the worst (\d+\.\d))?\.$/.exec(advice.gives);
	if (!promised) return;
	const lamp = after.fixtures.find(({ label }) => label === promised[1])!;
	const node = after.cabling.runs.flatMap(({ nodes }) => nodes).find((one) => one.fixture === lamp.id)!;
	const shown = (value: number) => (Math.round(value * 10) / 10).toFixed(1);
	expect(shown(node.volts!), where).toBe(promised[2]);
	if (promised[3]) {
		const { low, high } = node.band!;
		expect(shown(finding.code === 'cable.lamp-high' ? high : low), where).toBe(promised[3]);
	}
}
function checkAll(yard: Yard, where: string): number {
	const before = laid(yard);
	let checked = 0;
	for (const finding of before.cabling.findings) {
		const { advice = [] } = finding;
		expect(advice.length).toBeLessThanOrEqual(5);
		expect(advice.map(({ cost }) => cost)).toEqual(advice.map(({ cost }) => cost).toSorted((a, b) => a - b));
		expect(new Set(advice.map(({ id }) => id)).size, where).toBe(advice.length);
		for (const one of advice) {
			check(yard, before, finding, one, `${where}: ${finding.message} ${one.label}`);
			checked++;
		}
	}
	return checked;
}

describe.each(faulty.map(({ id, yard }) => [id, yard] as const))('demo yard %s', (id, yard) => {
	it('has advice for each stop of its circuit, and each keeps its word', () => {
		const stops = circuitStops(laid(yard));
		expect(stops.length).toBeGreaterThan(0);
		for (const { advice, message } of stops) expect(advice?.length ?? 0, message).toBeGreaterThan(0);
		expect(checkAll(yard, id)).toBeGreaterThan(1);
	}, 60_000);
});

describe('random yards with a circuit set by hand', { timeout: 900_000 }, () => {
	const rounds = process.env.LONG ? 300 : 25;
	it(`never promise what does not come, on ${rounds} of them`, () => {
		let checked = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const random = generator(seed);
			const bare = randomYard(seed);
			const { fixtures } = laid(bare);
			const system = bare.power.cable ?? (bare.place.units === 'metres' ? 'mm2' : 'awg');
			const size = system === 'awg' ? 16 : 1.5;
			const some = fixtures.filter(() => random() < 0.6).map(({ id }) => id);
			const runs = [
				{ id: 'run-1', ...(random() < 0.5 ? { lamps: some } : {}), size, ...(random() < 0.5 ? { tap: 12 } : {}) }
			];
			checked += checkAll({ ...bare, power: { ...bare.power, circuit: { runs } } }, `seed ${seed}`);
		}
		expect(checked).toBeGreaterThan(rounds / 2);
	});
});
