import { describe, expect, test } from 'vitest';
import { evaluate } from '../shared/evaluate';
import { fixed, showWorking } from '../shared/show-working';
import { makePlan, type Plan } from '../plan';
import { sources } from '../shared/sources';
import type { Working } from '../shared/working';
import { examples, type Yard } from '../yard';
import {
	currentWorking,
	dropWorking,
	gapWorking,
	lampWorking,
	lightWorking,
	loadWorking,
	moreLampsWorking,
	ohmsWorking,
	roomWorking,
	terminalWorking,
	totalWorking,
	voltsWorking,
	type Case
} from './figures';

const cases: Case[] = ['nominal', 'low', 'high'];
const namesOf = (plan: Plan) =>
	new Map([['supply', 'the transformer'], ...plan.fixtures.map(({ id, label }) => [id, label] as const)]);
const lampsOf = (plan: Plan) =>
	plan.runs.flatMap((run) =>
		run.nodes.flatMap((node) => {
			const fixture = plan.fixtures.find(({ id }) => id === node.fixture);
			return fixture ? [{ run, node, fixture }] : [];
		})
	);
/** A working and all that its inputs open to. */
const opened = (working: Working): Working[] => [
	working,
	...working.inputs.flatMap(({ from }) => (from ? opened(from) : []))
];
function allWorkings(plan: Plan): Working[] {
	const names = namesOf(plan);
	const { supply, runs, fixtures } = plan;
	const ofRuns = runs.flatMap((run) => [
		currentWorking(run, fixtures),
		loadWorking(run),
		...cases.flatMap((which) => [
			terminalWorking(run, which, runs, supply!),
			...run.nodes.slice(1).map(({ id }) => voltsWorking(run, id, which, names, fixtures))
		]),
		...run.nodes.map(({ id }) => dropWorking(run, id, names))
	]);
	const ofLamps = lampsOf(plan).map(({ fixture, node }) => lightWorking(fixture, node.volts!));
	const ofSupply = [totalWorking(runs, supply!), roomWorking(supply!), moreLampsWorking(supply!, fixtures.length)];
	const ofRoutes = [gapWorking(supply!.route!, runs, names)];
	return [...ofRuns, ...ofLamps, ...ofSupply, ...ofRoutes].filter((working) => working !== null).flatMap(opened);
}
const halogen = (yard: Yard): Yard => ({ ...yard, power: { ...yard.power, lamp: 'halogen' } });

const fed = (yard: Yard, feed: 'middle' | 'hub'): Yard => ({
	...yard,
	power: { ...yard.power, circuit: { runs: [{ id: 'run-1', feed }] } }
});
const [town] = examples;

describe.each<[string, Yard]>([
	...examples.flatMap(({ id, yard }): [string, Yard][] => [
		[id, yard],
		[`${id}, halogen`, halogen(yard)]
	]),
	['one run fed at a hub', fed(town!.yard, 'hub')],
	['one run fed in its middle', fed(town!.yard, 'middle')]
])('%s', (_, yard) => {
	const plan = makePlan(yard);
	const names = namesOf(plan);

	test('every figure re-evaluates from what is displayed, and names a source', () => {
		const workings = allWorkings(plan);
		expect(workings.length).toBeGreaterThan(40);
		const known = new Set<string>(Object.values(sources).map(({ id }) => id));
		const wrong = workings.flatMap((working) => {
			const shown = showWorking(working);
			const again = fixed(evaluate(shown.line), working.decimals);
			const result = working.unit ? `${again} ${working.unit}` : again;
			const holds = shown.holds && result === shown.result && known.has(working.source);
			return holds ? [] : [`${working.label}: ${shown.line} = ${again}, shown ${shown.result}`];
		});
		expect([...new Set(wrong)]).toEqual([]);
	});
	test('the figures worked out are those of the plan', () => {
		for (const run of plan.runs) {
			expect(currentWorking(run, plan.fixtures)!.value).toBeCloseTo(run.amps!, 2);
			expect(loadWorking(run)!.value).toBeCloseTo(run.loadVoltAmps, 1);
			for (const which of cases) {
				const terminals = terminalWorking(run, which, plan.runs, plan.supply!)!;
				const volts = which === 'nominal' ? run.nodes[0]!.volts! : run.corners[which].volts![0]!;
				expect(fixed(terminals.value, 2)).toBe(fixed(volts, 2));
			}
		}
		for (const { run, node } of lampsOf(plan)) {
			const value = (which: Case) => fixed(voltsWorking(run, node.id, which, names, plan.fixtures)!.value, 2);
			expect(value('nominal')).toBe(fixed(node.volts!, 2));
			expect(value('low')).toBe(fixed(node.band!.low, 2));
			expect(value('high')).toBe(fixed(node.band!.high, 2));
		}
		expect(fixed(totalWorking(plan.runs, plan.supply!)!.value, 0)).toBe(fixed(plan.supply!.loadVoltAmps, 0));
	});
	test('every current in a run opens to the lamps behind it', () => {
		for (const { run, node } of lampsOf(plan))
			for (const which of cases) {
				const working = voltsWorking(run, node.id, which, names, plan.fixtures)!;
				expect(working.inputs.find(({ symbol }) => symbol === 'I')?.from).toBeDefined();
			}
	});
	test('without a solution there is no working', () => {
		const run = plan.runs[0]!;
		const dark = {
			...run,
			nodes: run.nodes.map((node) => ({ ...node, volts: null })),
			corners: { ...run.corners, low: { ...run.corners.low, volts: null, amps: null } }
		};
		const far = run.nodes.at(-1)!.id;
		expect(currentWorking(dark, plan.fixtures)).toBeNull();
		expect(loadWorking(dark)).toBeNull();
		expect(dropWorking(dark, far, names)).toBeNull();
		expect(voltsWorking(dark, far, 'nominal', names, plan.fixtures)).toBeNull();
		expect(voltsWorking(dark, far, 'low', names, plan.fixtures)).toBeNull();
		expect(voltsWorking(dark, far, 'high', names, plan.fixtures)).not.toBeNull();
		expect(terminalWorking(run, 'nominal', [dark, ...plan.runs.slice(1)], plan.supply!)).toBeNull();
	});
});

describe('published figures', () => {
	// NEC Chapter 9 Table 8, uncoated copper, stranded, 75 °C: 12 AWG 1.98 Ω per 1000 ft; its note 2: α = 0.00323.
	test('12 AWG at 75 °C is the table’s own figure', () => {
		const working = ohmsWorking({ system: 'awg', size: 12 }, 75);
		expect(working.inputs[0]).toMatchObject({ symbol: 'R', value: 1.98 });
		expect(working.value).toBeCloseTo(1.98 / 0.3048, 3);
	});
	test('12 AWG at 30 °C', () =>
		expect(ohmsWorking({ system: 'awg', size: 12 }, 30).value).toBeCloseTo((1.98 / 0.3048) * (1 - 0.00323 * 45), 6));
	// IEC 60228, class 5: 2.5 mm² 7.98 Ω/km at 20 °C; α of copper 0.00393 (IEC 60028).
	test('2.5 mm² at 50 °C', () =>
		expect(ohmsWorking({ system: 'mm2', size: 2.5 }, 50).value).toBeCloseTo(7.98 * (1 + 0.00393 * 30), 6));
	// Fink & Beaty, p. 22-8: light goes with volts to the power 3.4, so 10 % fewer volts leave 70 % of the light.
	test('a filament lamp at nine tenths of its volts', () => {
		const plan = makePlan(halogen(examples[0]!.yard));
		const fixture = plan.fixtures.find(({ lamp }) => lamp.kind === 'halogen')!;
		expect(lightWorking(fixture, 10.8)!.value).toBeCloseTo(69.9, 1);
		expect(lampWorking(fixture, 10.8).value).toBeCloseTo((fixture.lamp.watts / 12) * 0.9 ** 0.55, 3);
	});
});
