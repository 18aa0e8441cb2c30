import { describe, expect, it } from 'vitest';
import { makePlan, type Plan } from '../../domain/plan';
import { blankYard, examples, type Yard } from '../../domain/yard';
import type { Solution } from '../../domain/kits/types';
import { comesFirst, slipCautions } from './cautions';

const yardOf = (title: string): Yard => examples.find((one) => one.title === title)!.yard;
const withLoad = (loadVoltAmps: number): Solution => ({
	buys: [],
	cents: 0,
	setup: { products: [], sizes: [], transformer: 'T' },
	judged: { ok: true, lamps: [], taps: [], loadVoltAmps, limitVoltAmps: 100, margin: 1, problems: [], notes: [] },
	spare: [],
	growth: 100 - loadVoltAmps,
	notes: []
});
const third = (plan: Plan, load = 10) => slipCautions(plan, withLoad(load))[2];
/** All that a plan says as a caution, as a step or as a finding. */
const sayings = (plan: Plan): string[] => [
	...plan.findings.map(({ message }) => message),
	...plan.checklist.parts.flatMap(({ steps }) => steps.flatMap(({ text, cautions }) => [text, ...cautions]))
];
const kept = (plan: Plan, codes: RegExp): Plan => ({
	...plan,
	findings: plan.findings.filter(({ code }) => codes.test(code))
});

describe('the cautions on a slip', () => {
	it.each(examples.map(({ title }) => title))('of %s are three of the plan’s own', (title) => {
		const plan = makePlan(yardOf(title));
		const [mains, digging, last, ...more] = slipCautions(plan, withLoad(10));
		expect(more).toEqual([]);
		expect(mains?.text).toContain('GFCI');
		expect(mains?.text).toContain('no extension cord');
		// 811 is the number of the United States' dig-notice service (49 CFR 198, call before you dig), from memory.
		expect(digging?.text).toMatch(/811.*two full working days.*Private lines/);
		expect(sayings(plan)).toContain(last?.text);
	});
	it('always end with what comes first', () => {
		expect(comesFirst).toMatch(/^Local code comes first.*licensed electrician/);
	});
	it('ask about a GFCI that nobody is sure of, in the plan’s words', () => {
		const yard = yardOf('Quince Row');
		const plan = makePlan({ ...yard, power: { ...yard.power, gfci: 'unsure' } });
		expect(slipCautions(plan, withLoad(10))[0]?.text).toContain('press its test button');
		const none = makePlan({ ...yard, power: { ...yard.power, receptacle: 'none' } });
		expect(slipCautions(none, withLoad(10))[0]?.text).toContain('Have a GFCI-protected outdoor receptacle');
		expect(third(none)?.title).not.toBe('Put right first');
	});
	it('warn third of what the yard most needs, the gravest first', () => {
		const pond = makePlan(yardOf('Alder Bend'));
		expect(third(pond)).toMatchObject({ title: 'Water', text: expect.stringContaining('10 ft of the water') });
		const paved = makePlan(yardOf('Quince Row'));
		expect(third(paved)).toMatchObject({ title: 'Under paving', text: expect.stringContaining('expansion joint') });
		// Without a crossing: first a full transformer, then roots, then the power off.
		const rooted = kept(paved, /roots/);
		expect(third(rooted, 95)).toEqual({
			title: 'Load',
			text: 'The transformer carries 95 VA of the 100 it may. Put no further light on it without a larger one.'
		});
		expect(third(rooted, 90)).toMatchObject({ title: 'Tree roots', text: expect.stringContaining('Dig by hand') });
		expect(third(kept(paved, /^$/))).toMatchObject({ title: 'Power off', text: expect.stringContaining('25 A') });
	});
	it('put a stop before all else, but not one about the plan’s own cable, which is not the cable bought', () => {
		const plan = makePlan(yardOf('Alder Bend'));
		const stop = (code: string): Plan => ({
			...plan,
			findings: [{ code, rank: 'stop', message: `Stop of ${code}.`, about: null, rule: null }, ...plan.findings]
		});
		expect(third(stop('cable.unreachable'))).toEqual({ title: 'Put right first', text: 'Stop of cable.unreachable.' });
		expect(third(stop('cable.lamp-low'))?.title).toBe('Water');
		expect(third(stop('cable.transformer-load'))?.title).toBe('Water');
	});
	it('warn of hot lamps where there are any', () => {
		const yard = yardOf('Quince Row');
		const plan = kept(makePlan({ ...yard, power: { ...yard.power, lamp: 'halogen' } }), /roots/);
		expect(third(plan)).toMatchObject({ title: 'Hot lamps', text: expect.stringContaining('mulch') });
	});
	it('stand for a yard with nothing in it too', () => {
		const [mains, digging] = slipCautions(makePlan(blankYard()), withLoad(0));
		expect(mains?.text).toContain('GFCI');
		expect(digging?.text).toContain('811');
	});
});
