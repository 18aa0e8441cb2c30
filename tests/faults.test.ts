import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makePlan, type Plan } from '../src/lib/domain/plan';
import type { Advice, Finding } from '../src/lib/domain/shared/findings';
import { faulty, readYard, writeYard, type Yard } from '../src/lib/domain/yard';
import { writeAnswer } from '../src/lib/flow';

// Demo yards with a fault planted in the circuit: it is found, an advice is taken, it is gone; in the JSON of the command.

let folder: string;
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), 'duskwright-faults-'));
});
afterAll(() => {
	rmSync(folder, { recursive: true, force: true });
});
/** As printed; that the command prints just this is tested once a yard, before and after, since each command takes a second. */
const planOf = (yard: Yard): Plan => JSON.parse(JSON.stringify(makePlan(yard))) as Plan;
function printed(yard: Yard): Plan {
	const file = join(folder, 'yard.json');
	writeFileSync(file, writeYard(yard));
	const json = execFileSync('npm', ['run', '--silent', 'plan', '--', file, '--json'], {
		encoding: 'utf8',
		maxBuffer: 1e8
	});
	return JSON.parse(json) as Plan;
}
const taken = (yard: Yard, advice: Advice): Yard =>
	advice.changes.reduce((now, { path, value }) => writeAnswer(now, path, null, undefined, value ?? undefined), yard);
const stopsOf = (plan: Plan) => plan.findings.filter(({ rank, code }) => rank === 'stop' && code.startsWith('cable.'));
const planted = (plan: Plan, code: string): Finding => {
	const finding = stopsOf(plan).find((one) => one.code === code);
	if (!finding) throw new Error(`${code} is not among ${stopsOf(plan).map((one) => one.code)}`);
	return finding;
};

describe.each([
	{ id: 'starved', code: 'cable.lamp-low', kinds: ['tap', 'thicker', 'split'] },
	{ id: 'overvolted', code: 'cable.lamp-high', kinds: ['tap', 'lamps'] },
	{ id: 'overloaded', code: 'cable.secondary-amps', kinds: ['split', 'lamps'] }
])('demo yard $id', ({ id, code, kinds }) => {
	const { yard } = faulty.find((one) => one.id === id)!;

	test('has its fault, said as a stop, with changes that cure it, the cheapest first', () => {
		const { advice = [] } = planted(planOf(yard), code);
		expect(advice.length).toBeGreaterThan(1);
		expect(advice.map(({ kind }) => kind)).toEqual(expect.arrayContaining(kinds));
		expect(advice.map(({ cost }) => cost)).toEqual(advice.map(({ cost }) => cost).toSorted((a, b) => a - b));
		expect(new Set(advice.map((one) => one.id)).size).toBe(advice.length);
	});
	test('prints the fault before an advice is taken, and no longer afterwards', () => {
		const [advice] = planted(printed(yard), code).advice!;
		const after = printed(taken(yard, advice!));
		expect(stopsOf(after).map((one) => one.code)).not.toContain(code);
		expect(after).toEqual(planOf(taken(yard, advice!)));
	}, 60_000);
	test('is free of it once an advice is taken, whichever, and nothing worse comes in its place', () => {
		const before = planOf(yard);
		const codes = new Set(stopsOf(before).map((one) => one.code));
		for (const advice of planted(before, code).advice!) {
			const changed = taken(yard, advice);
			expect(readYard(writeYard(changed)), advice.label).toMatchObject({ ok: true });
			const after = planOf(changed);
			expect(
				stopsOf(after).map((one) => one.code),
				advice.label
			).not.toContain(code);
			for (const left of stopsOf(after)) expect(codes, advice.label).toContain(left.code);
			expect(after.fixtures.map((one) => one.id)).toEqual(before.fixtures.map((one) => one.id));
		}
	});
	test('comes right altogether by taking the first advice of the first stop again and again', () => {
		let now = yard;
		for (let round = 0; round < 4; round++) {
			const [stop] = stopsOf(planOf(now));
			if (!stop) break;
			expect(stop.advice?.[0], stop.message).toBeDefined();
			now = taken(now, stop.advice![0]!);
		}
		const after = planOf(now);
		expect(stopsOf(after)).toEqual([]);
		const lamps = new Map(after.fixtures.map((fixture) => [fixture.id, fixture.lamp]));
		for (const { volts, fixture } of after.runs.flatMap((run) => run.nodes)) {
			if (fixture === null) continue;
			expect(volts).toBeGreaterThanOrEqual(lamps.get(fixture)!.minVolts);
			expect(volts).toBeLessThanOrEqual(lamps.get(fixture)!.maxVolts);
		}
	});
});
