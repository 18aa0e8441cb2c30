import { describe, expect, it } from 'vitest';
import { makePlan, type Plan } from '../domain/plan';
import { blankYard, examples, type Yard } from '../domain/yard';
import { haveOnePlan, makePlanner, type Delivery, type Order } from './planner';

type Listener = (event: unknown) => void;
/** A workshop whose deliveries the test lets go one by one. */
function makeWorkshop() {
	const heard = new Map<string, Listener>();
	const orders: Order[] = [];
	return {
		orders,
		postMessage: (order: Order) => void orders.push(order),
		addEventListener: (name: string, run: Listener) => void heard.set(name, run),
		deliver: (id: number, plan: Plan | null) => heard.get('message')?.({ data: { id, plan } satisfies Delivery }),
		fail: () => heard.get('error')?.({})
	};
}
function open() {
	const workshop = makeWorkshop();
	const taken: [Yard, Plan | null][] = [];
	let lost = 0;
	const planner = makePlanner(
		workshop as never,
		(yard, plan) => taken.push([yard, plan]),
		() => (lost += 1)
	);
	return { workshop, planner, taken, lost: () => lost };
}
const yards = examples.map(({ yard }) => yard);
const [a, b, c] = yards as [Yard, Yard, Yard];

describe('the planner', () => {
	it('hands over each plan with the yard it was ordered for', () => {
		const { workshop, planner, taken } = open();
		planner.ask(a);
		expect(workshop.orders.map(({ text }) => JSON.parse(text))).toEqual([a]);
		const plan = makePlan(a);
		workshop.deliver(workshop.orders[0]!.id, plan);
		expect(taken).toEqual([[a, plan]]);
		expect(taken[0]![0]).toBe(a);
	});
	it('works out only the last of what was ordered meanwhile', () => {
		const { workshop, planner, taken } = open();
		planner.ask(a);
		planner.ask(b);
		planner.ask(c);
		planner.ask(c);
		expect(workshop.orders).toHaveLength(1);
		workshop.deliver(workshop.orders[0]!.id, null);
		expect(workshop.orders.map(({ text }) => JSON.parse(text))).toEqual([a, c]);
		workshop.deliver(workshop.orders[1]!.id, null);
		expect(taken.map(([yard]) => yard)).toEqual([a, c]);
		expect(workshop.orders).toHaveLength(2);
	});
	it('goes back to the yard in work when a change is taken back meanwhile', () => {
		const { workshop, planner, taken } = open();
		planner.ask(a);
		planner.ask(b);
		planner.ask(a);
		workshop.deliver(workshop.orders[0]!.id, null);
		workshop.deliver(workshop.orders[1]!.id, null);
		expect(taken.at(-1)![0]).toBe(a);
	});
	it('orders nothing for a step ticked, a reading, a name or a picture: the plan is the same', () => {
		const { workshop, planner, taken } = open();
		planner.ask(a);
		const plan = makePlan(a);
		const ticked = { ...a, done: ['dig/1'] };
		planner.ask(ticked);
		workshop.deliver(workshop.orders[0]!.id, plan);
		const read = { ...ticked, name: 'Another', power: { ...a.power, measured: { 'oak/uplight-1': 11.2 } } };
		planner.ask(read);
		expect(workshop.orders.length).toBe(1);
		expect(taken).toEqual([
			[ticked, plan],
			[read, plan]
		]);
		planner.ask({ ...read, power: { ...read.power, lamp: 'halogen' } });
		expect(workshop.orders.length).toBe(2);
	});
	it('counts as of one plan only yards whose plans are one', () => {
		const picture = { picture: 'a'.repeat(64), width: 100, height: 100, opacity: 0.5 };
		for (const yard of yards) {
			const more: Yard = {
				...yard,
				name: 'Another name',
				done: ['dig/1'],
				underlay: picture,
				pictures: {},
				power: { ...yard.power, measured: { 'oak/uplight-1': 11.2 } }
			};
			expect(haveOnePlan(yard, more)).toBe(true);
			expect(JSON.stringify(makePlan(more))).toBe(JSON.stringify(makePlan(yard)));
			expect(haveOnePlan(yard, { ...yard, trees: [...(yard.trees ?? [])] })).toBe(false);
		}
	});
	it('drops what it did not order', () => {
		const { workshop, planner, taken } = open();
		planner.ask(a);
		workshop.deliver(99, makePlan(blankYard()));
		expect(taken).toEqual([]);
	});
	it('says once that the workshop is lost, and asks nothing more', () => {
		const { workshop, planner, lost } = open();
		planner.ask(a);
		workshop.fail();
		workshop.fail();
		planner.ask(b);
		expect([lost(), workshop.orders.length]).toEqual([1, 1]);
	});
	it('sends plans that survive the way between threads unchanged', () => {
		for (const yard of yards) {
			const plan = makePlan(yard);
			expect(structuredClone(plan)).toEqual(plan);
		}
	});
});
