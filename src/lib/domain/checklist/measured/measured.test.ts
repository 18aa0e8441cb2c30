import { describe, expect, it } from 'vitest';
import { solve } from '../../circuit';
import { makePlan } from '../../plan';
import { examples } from '../../yard';
import { checkRuns } from './check-runs';
import { inspectedOf, keyOf } from './inspect';

const plan = makePlan(examples.find(({ id }) => id === 'suburban')!.yard);
const run = plan.runs[0]!;
const supply = plan.supply!;
const check = (measured: Record<string, number>) => checkRuns(plan.runs, supply, plan.fixtures, measured)[0]!;
const { network } = inspectedOf(run, supply, plan.fixtures, {})!;

/** Readings of the run, to a tenth of a volt, with changed ohms on one segment. */
function readings(change: (ohms: number, segment: number) => number): Record<string, number> {
	const solution = solve({
		...network,
		segments: network.segments.map((one, k) => ({ ...one, ohms: change(one.ohms, k) }))
	});
	if (!solution.ok) throw new Error('no solution');
	return Object.fromEntries(
		run.nodes.flatMap((_, node) => {
			const key = keyOf(run, node);
			return key === null ? [] : [[key, Math.round(solution.volts[node]! * 10) / 10]];
		})
	);
}

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
		expect(found.rows.at(-1)!.off).toBe('low');
		expect(found.suspicions[0]!.says).toMatch(/^No current gets from/);
	});
	it('of lamps that are no longer there are passed over', () => {
		expect(check({ 'oak/9': 3, ['__proto__']: 3 }).verdict).toBe('none');
	});
});
