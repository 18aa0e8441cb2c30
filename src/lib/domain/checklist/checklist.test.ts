import { describe, expect, it } from 'vitest';
import { examples, blankYard, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { makePlan, type Plan } from '../plan';
import { makeChecklist, type Checklist } from '.';
import { walked } from './job';
import { turnsWorthSaying } from './route';
import { clock, compass, place } from './words';

const steps = (checklist: Checklist) => checklist.parts.flatMap((part) => part.steps);
const ids = (checklist: Checklist): string[] => steps(checklist).map((step) => step.id);
const plans = new Map<string, Plan>();
const planOf = (id: string): Plan => {
	const kept = plans.get(id) ?? makePlan(examples.find((one) => one.id === id)!.yard);
	plans.set(id, kept);
	return kept;
};
const remade = (
	plan: Plan,
	change: Partial<Pick<Plan, 'fixtures' | 'supply' | 'runs' | 'site' | 'dusk'>>
): Checklist => {
	const { site, fixtures, supply, runs, dusk, shopping } = { ...plan, ...change };
	return makeChecklist(site, fixtures, { supply, runs, findings: [], assumptions: [] }, dusk, shopping);
};
const caution = (checklist: Checklist, text: RegExp): boolean =>
	steps(checklist).some((step) => step.cautions.some((one) => text.test(one)));

describe('each example', () => {
	for (const { id } of examples) {
		it(`${id}: parts in the order of the work, one id to a step, nothing left unsaid or undefined`, () => {
			const { checklist } = planOf(id);
			const order = ['before', 'supply', 'trench', 'fixtures', 'connections', 'first-night', 'upkeep'];
			expect(checklist.parts.map((part) => part.id)).toEqual(order);
			expect(new Set(ids(checklist)).size).toBe(ids(checklist).length);
			expect(JSON.stringify(checklist)).not.toMatch(/undefined|NaN|null m|\[object/);
			for (const step of steps(checklist)) expect(step.text).toMatch(/^\p{Lu}.*[.]$/u);
		});
		it(`${id}: every fixture has its step and its first-night row with volts inside their band`, () => {
			const { checklist, fixtures } = planOf(id);
			for (const fixture of fixtures) expect(ids(checklist)).toContain(`fixture/${fixture.id}`);
			expect(checklist.firstNight.map((row) => row.fixture).sort()).toEqual(
				fixtures.map((fixture) => fixture.id).sort()
			);
			for (const row of checklist.firstNight) {
				if (row.expectedVolts === null) continue;
				expect(row.low!).toBeLessThanOrEqual(row.expectedVolts);
				expect(row.high!).toBeGreaterThanOrEqual(row.expectedVolts);
				expect(row.aim === '').toBe(fixtures.find((fixture) => fixture.id === row.fixture)!.aim === null);
			}
		});
		it(`${id}: every leg and every crossing of every run has its step`, () => {
			const { checklist, runs } = planOf(id);
			const legs = runs.reduce((sum, run) => sum + run.segments.length, 0);
			const crossings = runs.reduce(
				(sum, run) => sum + run.segments.reduce((n, segment) => n + segment.crossings.length, 0),
				0
			);
			expect(ids(checklist).filter((one) => one.startsWith('leg/'))).toHaveLength(legs);
			expect(ids(checklist).filter((one) => one.startsWith('cross/'))).toHaveLength(crossings);
		});
	}
});

describe('cautions and deference stand beside the step they guard', () => {
	const { checklist } = planOf('suburban');
	const step = (id: string) => steps(checklist).find((one) => one.id === id)!;
	it('811, two working days, private lines, hand tools near a mark', () => {
		expect(step('dig-notice').text).toMatch(/811.*two full working days/);
		expect(step('dig-notice').cautions.join(' ')).toMatch(/Private lines are not marked/);
		expect(step('dig-notice').cautions.join(' ')).toMatch(/hand tools/);
		expect(step('dig-notice').defers).not.toEqual([]);
	});
	it('silica and eyes at the drilling, no open transformer, unplugged work', () => {
		expect(step('transformer').cautions.join(' ')).toMatch(/silica/);
		expect(step('transformer').cautions.join(' ')).toMatch(/Never open or cut a transformer/);
		expect(step('unplug').text).toMatch(/unplugged/);
	});
	it('roots at the legs that run among them', () => {
		const legs = steps(checklist).filter((one) => one.rule === 'tree.roots' && one.id.startsWith('leg/'));
		expect(legs.length).toBeGreaterThan(0);
		for (const leg of legs) expect(leg.cautions.join(' ')).toMatch(/dig by hand/);
	});
	it('a joint asks the authority', () => {
		const joints = steps(checklist).filter((one) => /expansion joint/.test(one.text));
		expect(joints.length).toBeGreaterThan(0);
		for (const joint of joints) expect(joint.defers.join(' ')).toMatch(/authority/);
	});
});

describe('only what applies', () => {
	const plan = planOf('suburban');
	it('no halogen heat with LED lamps, heat and relamping with halogen ones', () => {
		expect(caution(plan.checklist, /hot/)).toBe(false);
		expect(ids(plan.checklist)).not.toContain('relamp');
		const hot = remade(plan, {
			fixtures: plan.fixtures.map((fixture) => ({ ...fixture, lamp: { ...fixture.lamp, kind: 'halogen' as const } }))
		});
		expect(caution(hot, /hot/)).toBe(true);
		expect(ids(hot)).toContain('relamp');
	});
	it('no drilling where nothing hangs on a wall', () => {
		const { dusk } = plan;
		const posts = remade(plan, {
			supply: { ...plan.supply!, on: 'post' },
			dusk: { ...dusk, sensor: dusk.sensor && { ...dusk.sensor, on: 'post' } },
			fixtures: plan.fixtures.filter((fixture) => fixture.mount !== 'surface')
		});
		expect(caution(plan.checklist, /silica/)).toBe(true);
		expect(caution(posts, /silica|[Dd]rill/)).toBe(false);
		expect(ids(posts)).toContain('post');
	});
	it('an electrician for what the receptacle lacks, nothing where it lacks nothing', () => {
		const at = (gfci: boolean | 'unsure', inUseCover: boolean | 'unsure') =>
			ids(
				remade(plan, { site: { ...plan.site, receptacle: { at: { x: 0, y: 0 }, known: true, gfci, inUseCover } } })
			).filter((id) => ['receptacle', 'gfci', 'cover'].includes(id));
		expect(at(true, true)).toEqual([]);
		expect(at(false, 'unsure')).toEqual(['gfci', 'cover']);
		expect(ids(remade(plan, { site: { ...plan.site, receptacle: null } }))).toContain('receptacle');
	});
	it('no water caution without water, no crossing without paving crossed', () => {
		const dry = remade(plan, {
			site: { ...plan.site, areas: plan.site.areas.filter((area) => area.kind !== 'water') }
		});
		expect(caution(plan.checklist, /water’s edge/)).toBe(true);
		expect(caution(dry, /water’s edge/)).toBe(false);
		const lawn = remade(plan, {
			runs: plan.runs.map((run) => ({
				...run,
				segments: run.segments.map((segment) => ({ ...segment, crossings: [] }))
			}))
		});
		expect(ids(lawn).some((id) => id.startsWith('cross/'))).toBe(false);
	});
	it('the timer’s clock only where the lights go off by the clock', () => {
		const until = remade(plan, { dusk: { ...plan.dusk, schedule: { kind: 'until', clock: '23:00' } } });
		expect(ids(until)).toContain('clock');
		expect(ids(remade(plan, { dusk: { ...plan.dusk, schedule: { kind: 'dusk-to-dawn' } } }))).not.toContain('clock');
	});
});

/** Paths of numbers that are none. */
const notFinite = (value: unknown, path: string): string[] => {
	if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
	if (typeof value !== 'object' || value === null) return [];
	return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
};
describe('total', () => {
	it('on random yards, awkward ones too: finite figures, one id to a step and to a line', () => {
		for (let seed = 1; seed <= (process.env['LONG'] ? 300 : 6); seed += 1) {
			const { dusk, shopping, checklist } = makePlan(randomYard(seed));
			expect(notFinite({ dusk, shopping, checklist }, 'plan'), `seed ${seed}`).toEqual([]);
			expect(JSON.stringify({ dusk, shopping, checklist })).not.toMatch(/undefined|NaN|Infinity/);
			expect(new Set(ids(checklist)).size).toBe(ids(checklist).length);
			expect(new Set(shopping.items.map((item) => item.id)).size).toBe(shopping.items.length);
		}
	});
	it('a blank yard has nothing to do', () =>
		expect(makePlan(blankYard()).checklist).toEqual({ parts: [], firstNight: [] }));
	it('fixtures without a supply have places but nothing to connect', () => {
		const plan = planOf('town');
		const checklist = remade(plan, { supply: null, runs: [] });
		expect(checklist.parts.map((part) => part.id)).toEqual(['before', 'fixtures']);
		for (const row of checklist.firstNight) expect(row.expectedVolts).toBeNull();
	});
	it('the same work in metres and in feet: only the wording differs', () => {
		const town = examples.find((one) => one.id === 'town')!.yard;
		const inUnits = (units: 'feet' | 'metres'): Yard => ({
			...town,
			place: { ...town.place, units },
			power: { ...town.power, cable: 'awg' }
		});
		expect(ids(makePlan(inUnits('metres')).checklist)).toEqual(ids(makePlan(inUnits('feet')).checklist));
	});
});

describe('a fixture that lights two things', () => {
	const plan = planOf('suburban');
	const textOf = (fixture: Plan['fixtures'][number], also: NonNullable<Plan['fixtures'][number]['also']>) =>
		steps(remade(plan, { fixtures: [{ ...fixture, also }] })).find(({ id }) => id === `fixture/${fixture.id}`)!.text;
	const [first, second] = plan.site.trees;
	it('is aimed for both, and the step says so', () => {
		const aimed = plan.fixtures.find(({ aim, target }) => aim && target.kind === 'tree' && target.id === first!.id)!;
		const text = textOf(aimed, [{ kind: 'tree', id: second!.id }]);
		expect(text).toContain(`It lights the ${second!.name} as well as the ${first!.name}: aim it for both.`);
		expect(textOf(aimed, [])).not.toContain('It lights');
	});
	it('with a fixed head it is kept in its place', () => {
		const path = plan.fixtures.find(({ technique }) => technique === 'path')!;
		const beds = plan.site.areas.filter(({ kind }) => kind === 'bed').slice(0, 2);
		const also = beds.map(({ id }) => ({ kind: 'bed' as const, id }));
		const names = beds.map(({ name }) => `the ${name}`).join(' and ');
		expect(beds.length).toBeGreaterThan(0);
		expect(textOf(path, also)).toContain(`It lights ${names} too: keep it where the plan has it.`);
	});
});

describe('words', () => {
	it('clock, compass, tapes', () => {
		expect([clock(1263), clock(1500.4), clock(-10)]).toEqual(['21:03', '01:00', '23:50']);
		expect([compass(0), compass(44), compass(350), compass(-90)]).toEqual(['north', 'north-east', 'north', 'west']);
		const { site } = planOf('suburban');
		expect(place({ x: 3.048, y: -0.3048 }, site)).toBe('10 ft along, 1 ft back');
		expect(place({ x: -0.3048, y: 0 }, site)).toBe('1 ft left of the left corner, 0 in out');
	});
	it('a straight route has no turns, a bend keeps its corner, a wobble within 60 mm is dropped', () => {
		const at = (x: number, y: number) => ({ x, y });
		expect(turnsWorthSaying([at(0, 0), at(1, 0), at(2, 0)])).toEqual([]);
		expect(turnsWorthSaying([at(0, 0), at(2, 0), at(2, 2)])).toEqual([at(2, 0)]);
		expect(turnsWorthSaying([at(0, 0), at(1, 0.05), at(2, 0)])).toEqual([]);
	});
	it('walks straight on and back to the tee', () => {
		for (const run of planOf('suburban').runs) {
			const { nodes, segments } = walked(run);
			expect(nodes.map((node) => node.id).sort()).toEqual(run.nodes.map((node) => node.id).sort());
			expect(new Set(segments).size).toBe(run.segments.length);
			for (const segment of segments) {
				const from = nodes.findIndex((node) => node.id === segment.from);
				expect(from).toBeLessThan(nodes.findIndex((node) => node.id === segment.to));
			}
		}
	});
});
