import { describe, expect, it } from 'vitest';
import type { Run } from '../../cable';
import { solve } from '../../circuit';
import { makePlan } from '../../plan';
import { examples } from '../../yard';
import { checkRuns } from './check-runs';
import { summaryOf } from './summary';
import { walked } from '../job';
import { inspectedOf, keyOf } from './inspect';

const plan = makePlan(examples.find(({ id }) => id === 'suburban')!.yard);
const [run, other] = plan.runs as [Run, Run];
const supply = plan.supply!;
const check = (measured: Record<string, number>) => checkRuns(plan.runs, supply, plan.fixtures, measured)[0]!;
const networkOf = (one: Run) => inspectedOf(one, supply, plan.fixtures, {})!.network;
const network = networkOf(run);

/** Readings of a run, to a tenth of a volt, with changed ohms on one segment. */
function readings(change: (ohms: number, segment: number) => number, of: Run = run): Record<string, number> {
	const planned = networkOf(of);
	const solution = solve({
		...planned,
		segments: planned.segments.map((one, k) => ({ ...one, ohms: change(one.ohms, k) }))
	});
	if (!solution.ok) throw new Error('no solution');
	return Object.fromEntries(
		of.nodes.flatMap((_, node) => {
			const key = keyOf(of, node);
			return key === null ? [] : [[key, Math.round(solution.volts[node]! * 10) / 10]];
		})
	);
}
const labelOf = (of: Run, node: number): string =>
	node === 0 ? 'the transformer' : plan.fixtures.find(({ id }) => id === of.nodes[node]!.fixture)!.label;

describe('the first night’s readings', () => {
	it('start from the plan’s own volts, to a millivolt', () => {
		const solution = solve(network);
		expect(solution.ok).toBe(true);
		if (!solution.ok) return;
		run.nodes.forEach((node, k) => expect(solution.volts[k]!).toBeCloseTo(node.volts!, 3));
	});
	it('ask for the terminals and every lamp once', () => {
		for (const one of checkRuns(plan.runs, supply, plan.fixtures, {})) {
			expect(one).toMatchObject({ verdict: 'none', suspicions: [] });
			expect(one.rows[0]!.label).toBe('The terminals');
			for (const { low, expected, high } of one.rows) {
				expect(low!).toBeLessThanOrEqual(expected!);
				expect(expected!).toBeLessThanOrEqual(high!);
			}
		}
		const keys = checkRuns(plan.runs, supply, plan.fixtures, {}).flatMap(({ rows }) => rows.map(({ key }) => key));
		expect(keys.filter((key) => !key.startsWith('terminals/')).toSorted()).toEqual(
			plan.fixtures.map(({ id }) => id).toSorted()
		);
	});
	it('as planned say so', () => {
		const found = check(readings((ohms) => ohms));
		expect(found).toMatchObject({ verdict: 'as-planned', says: 'As planned: every lamp gets what it should.' });
		expect(found.rows.every(({ off }) => off === 'right')).toBe(true);
	});
	it('of a bad joint name the stretch it is on, in every place where it can be told from chance', () => {
		let told = 0;
		network.segments.forEach((_, bad) => {
			const found = check(readings((ohms, k) => (k === bad ? ohms + 0.4 : ohms)));
			if (found.verdict === 'as-planned') return;
			told++;
			const label = (node: number) =>
				node === 0 ? 'the transformer' : plan.fixtures.find(({ id }) => id === run.nodes[node]!.fixture)!.label;
			const { from, to } = network.segments[bad]!;
			expect(found.suspicions.map(({ says }) => says).join(' ')).toContain(`between ${label(from)} and ${label(to)}`);
		});
		expect(told).toBeGreaterThan(network.segments.length / 2);
	});
	it('of nothing beyond a joint say where the current stops', () => {
		const dark = run.nodes.length - 1;
		const found = check({ ...readings((ohms) => ohms), [keyOf(run, dark)!]: 0 });
		expect(found.verdict).toBe('fault');
		expect(found.rows.find(({ key }) => key === keyOf(run, dark))!.off).toBe('low');
		expect(found.suspicions[0]!.says).toMatch(/^No current gets from/);
	});
	it('of lamps that are no longer there are passed over', () => {
		expect(check({ 'oak/9': 3, ['__proto__']: 3 }).verdict).toBe('none');
	});
	it('are asked for in the order of the walk, as the route card has it', () => {
		for (const { run: id, rows } of checkRuns(plan.runs, supply, plan.fixtures, {})) {
			const one = plan.runs.find((found) => found.id === id)!;
			expect(rows.slice(1).map(({ key }) => key)).toEqual(walked(one).nodes.flatMap(({ fixture }) => fixture ?? []));
		}
	});
	it('of two bad joints, one on each run, name both', () => {
		const bad = [run, other].map((one) => {
			// The first stretch carries the whole run: half an ohm there is seen in every lamp.
			const first = networkOf(one).segments.findIndex(({ from }) => from === 0);
			const { to } = networkOf(one).segments[first]!;
			return { one, first, says: `between the transformer and ${labelOf(one, to)}` };
		});
		const all = Object.assign(
			{},
			...bad.map(({ one, first }) => readings((ohms, k) => (k === first ? ohms + 0.5 : ohms), one))
		);
		const checks = checkRuns(plan.runs, supply, plan.fixtures, all);
		bad.forEach(({ says }, k) => {
			expect(checks[k]!.verdict).toBe('fault');
			expect(checks[k]!.suspicions.map((one) => one.says).join(' ')).toContain(says);
		});
		expect(summaryOf(checks).says).toMatch(/Run 1: a fault to look for\. Run 2: a fault to look for\.$/);
	});
	it('too few to tell say so', () => {
		const all = readings((ohms, k) => (k === 0 ? ohms + 0.4 : ohms));
		const far = checkRuns(plan.runs, supply, plan.fixtures, {})[0]!.rows.at(-1)!;
		const found = check({ [far.key]: Math.round((far.expected! - 3) * 10) / 10 });
		expect(found.verdict).toBe('fault');
		expect(found.says).toMatch(/Only 1 of \d+ places of this run are measured; each one more narrows it down\.$/);
		expect(check(all).says).not.toMatch(/Only/);
	});
	it('come to a line that counts each place once', () => {
		expect(summaryOf(checkRuns(plan.runs, supply, plan.fixtures, {})).says).toMatch(
			/^Nothing measured yet of \d+ places\.$/
		);
		const sound = { ...readings((ohms) => ohms), ...readings((ohms) => ohms, other) };
		const of = plan.fixtures.length + plan.runs.length;
		expect(summaryOf(checkRuns(plan.runs, supply, plan.fixtures, sound))).toMatchObject({
			measured: of,
			of,
			says: `All ${of} places measured: ${of} in their band. Run 1: nothing points to a fault. Run 2: nothing points to a fault.`
		});
		const lamp = plan.fixtures[0]!;
		const { says } = summaryOf(checkRuns(plan.runs, supply, plan.fixtures, { ...sound, [lamp.id]: 1 }));
		expect(says).toContain(`${of - 1} in their band; too low: ${lamp.label}.`);
	});
});
