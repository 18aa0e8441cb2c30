import { describe, expect, test } from 'vitest';
import { makePlan, type Plan } from '../../plan';
import { examples, type Yard } from '../../yard';
import { dependents } from './dependents';
import { figuresOf, findFigure } from './figures';
import { inputsOf } from './inputs';
import { movers, probesOf, tryOne } from './movers';

const yardOf = (id: string): Yard => examples.find((one) => one.id === id)!.yard;
const town = yardOf('town');
const townPlan = makePlan(town);
const inputOf = (yard: Yard, plan: Plan, id: string) => inputsOf(yard, plan).find((input) => input.id === id)!;
const valueOf = (plan: Plan, key: string): number => figuresOf(plan).find((figure) => figure.key === key)!.value;
/** The plan with one input moved. */
const moved = (yard: Yard, plan: Plan, id: string, value: number): Plan =>
	makePlan(inputOf(yard, plan, id).put(yard, value));

describe.each(examples.map(({ id, yard }) => [id, yard] as const))('%s', (_, yard) => {
	const plan = makePlan(yard);
	test('keys stay where everything is called otherwise', () => {
		const renamed = JSON.parse(JSON.stringify(yard), (key, value: unknown) =>
			key === 'name' && typeof value === 'string' ? `other ${value}`.slice(0, 60) : value
		) as Yard;
		const keys = (one: Plan) => figuresOf(one).map(({ key }) => key);
		expect(keys(makePlan(renamed))).toEqual(keys(plan));
	});
	test('moved and put back it is the same plan, byte for byte', () => {
		const before = JSON.stringify(plan);
		// A few of every kind: each takes a plan.
		for (const input of inputsOf(yard, plan).filter((_, n) => n % 12 === 0)) {
			const there = input.put(yard, probesOf(input)[0]!);
			expect([input.id, JSON.stringify(makePlan(input.put(there, input.start))) === before]).toEqual([input.id, true]);
		}
	});
	test('nothing depends on nothing', () => {
		const { moved: none, came, went, still, findings } = dependents(plan, makePlan(yard));
		expect([none, came, went, findings]).toEqual([[], [], [], { came: [], went: [] }]);
		expect(still).toBe(figuresOf(plan).length);
	});
});

describe('what hangs on what', () => {
	// Energy charge = energy × price (arithmetic).
	test('a price twice as high: the cost of the year twice as high, and nothing else', () => {
		const after = moved(town, townPlan, 'power.price.perKwh', 0.36);
		const { moved: list } = dependents(townPlan, after);
		expect(list.map(({ key }) => key)).toEqual(['year/cost']);
		expect(valueOf(after, 'year/cost')).toBeCloseTo(2 * valueOf(townPlan, 'year/cost'), 1);
		expect(list[0]!.percent).toBeCloseTo(100, 0);
		expect(list[0]!.share).toBeCloseTo(0.5, 2);
	});
	// Energy = power × time: what the hours add is in proportion to them; the transformer's own draw is not of the hours (8760 h a year).
	test('hours twice as long: the energy of the lamps twice as much', () => {
		const yard: Yard = { ...town, power: { ...town.power, hours: { kind: 'after-dusk', hours: 3 } } };
		const plan = makePlan(yard);
		const after = moved(yard, plan, 'power.hours.hours', 6);
		expect(valueOf(after, 'year/hours')).toBeCloseTo(2 * valueOf(plan, 'year/hours'), 0);
		const idle = plan.dusk.working.energy.inputs.find(({ symbol }) => symbol === 'I')!.value * 8.76;
		const ratio = (valueOf(after, 'year/energy') - idle) / (valueOf(plan, 'year/energy') - idle);
		expect(ratio).toBeCloseTo(2, 1);
		expect(dependents(plan, after).moved.every(({ key }) => key.startsWith('year/'))).toBe(true);
	});
	// ASTM B258: diameters of neighbouring gauges are in the ratio 92^(1/39), so ohms in its square; tables of stranded wire within 5 %.
	test('thicker cable: fewer ohms, less lost to every lamp of the run, and so less current of an LED', () => {
		const run = townPlan.runs[0]!;
		const after = moved(town, townPlan, `power.circuit.${run.id}.size`, 4);
		const key = (what: string) => `run/${run.id}/${what}`;
		const gauges = run.cable.size - 8;
		expect(gauges).toBeGreaterThan(0);
		const ratio = valueOf(townPlan, key('ohms')) / valueOf(after, key('ohms'));
		expect(ratio / 92 ** ((2 * gauges) / 39)).toBeGreaterThan(0.95);
		expect(ratio / 92 ** ((2 * gauges) / 39)).toBeLessThan(1.05);
		for (const { fixture } of run.nodes.filter((node) => node.fixture)) {
			const lost = `light/${fixture}/lost`;
			if (figuresOf(after).some((figure) => figure.key === lost))
				expect(valueOf(after, lost)).toBeLessThan(valueOf(townPlan, lost));
		}
	});
	// The day is longest in June north of the tropic, so a fixed switch-off hour leaves June the fewest hours of light.
	test('further north: fewer hours in June, more in December', () => {
		const after = moved(town, townPlan, 'place.location.latitude', 55);
		expect(valueOf(after, 'year/month-6')).toBeLessThan(valueOf(townPlan, 'year/month-6'));
		expect(valueOf(after, 'year/month-12')).toBeGreaterThan(valueOf(townPlan, 'year/month-12'));
	});
	test('the largest change of its own size comes first; what is listed is what is shown', () => {
		const after = moved(town, townPlan, 'trees.crab-apple.spread', 6.5);
		const { moved: list, still } = dependents(townPlan, after);
		expect(list.length).toBeGreaterThan(3);
		expect(list.every(({ share }, k) => k === 0 || share <= list[k - 1]!.share)).toBe(true);
		expect(list.every(({ before, after: now }) => before !== now)).toBe(true);
		const [was, is] = [figuresOf(townPlan), figuresOf(after)];
		const both = is.filter(({ key }) => was.some((figure) => figure.key === key)).length;
		expect(list.length + still).toBe(both);
	});
	test('a light that is there no more goes, with its place', () => {
		const yard: Yard = { ...town, trees: town.trees!.map((tree) => ({ ...tree, light: 'none' as const })) };
		const after = makePlan(yard);
		const gone = townPlan.fixtures.filter(({ id }) => after.fixtures.every((one) => one.id !== id));
		expect(gone.length).toBeGreaterThan(0);
		const { went } = dependents(townPlan, after);
		for (const { label } of gone) expect(went.some(({ place }) => place.startsWith(`${label},`))).toBe(true);
		const back = dependents(after, townPlan);
		expect(back.came.map(({ place }) => place).toSorted()).toEqual(went.map(({ place }) => place).toSorted());
	});
});

describe('what moves a figure', () => {
	test('each mover that is named does move it, and the price moves the cost of the year', () => {
		const inputs = inputsOf(town, townPlan).filter(({ id }) => /^power\.(price|hours|lamp)|^trees/.test(id));
		const found = [...movers(town, townPlan, inputs, 'year/cost')];
		expect(found.map(({ id }) => id)).toContain('power.price.perKwh');
		expect(found.map(({ id }) => id)).toContain('power.hours.clock');
		const was = findFigure(figuresOf(townPlan), { label: 'Cost of a year', text: '' })!;
		expect(was.key).toBe('year/cost');
		for (const input of found) {
			const tried = probesOf(input).map((value) => figuresOf(makePlan(input.put(town, value))));
			expect(tried.some((figures) => figures.find(({ key }) => key === was.key)?.text !== was.text)).toBe(true);
		}
	});
	// The front's bearing turns the sensor alone, which has no figure; a receptacle near the transformer that was told moves no cable; boundaries here are at nought.
	test('every input but those listed here moves a figure', () => {
		const figures = figuresOf(townPlan);
		const own = inputsOf(town, townPlan).filter(({ id }) => !id.startsWith('rules.'));
		expect(own.length).toBeGreaterThan(20);
		const idle = own.filter((input) => tryOne(town, figures, input).moved.size === 0).map(({ id }) => id);
		const may = ['place.faces', 'power.receptacle.along', 'power.receptacle.out', 'lot.left', 'lot.right'];
		expect(idle.filter((id) => !may.includes(id))).toEqual([]);
	});
});
