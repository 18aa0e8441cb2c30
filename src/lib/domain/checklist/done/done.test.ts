import { describe, expect, it } from 'vitest';
import { makePlan, type Plan } from '../../plan';
import { examples, readYard, writeYard, type Yard } from '../../yard';
import { randomYard } from '../../yard/random.testing';
import { progressOf, targetsOf, withTicks } from '.';
import { forHours, isSame, ofCable, overGround, wasWords } from './done-for';
import { readEntry, tickId } from './entry';
import { guarded } from './guards';

const suburban: Yard = examples.find((one) => one.id === 'suburban')!.yard;
const plan = makePlan(suburban);
const stepsOf = ({ checklist }: Plan) => checklist.parts.flatMap(({ steps }) => steps);
const stepOf = (from: Plan, id: string) => stepsOf(from).find((one) => one.id === id)!;
/** Steps that can be ticked, with their items. */
const targets = (from: Plan) =>
	from.checklist.parts.filter(({ id }) => id !== 'upkeep').flatMap(({ steps }) => steps.flatMap(targetsOf));
const everything = (from: Plan): string[] => withTicks(undefined, targets(from), true)!;
const progress = (from: Plan, done: readonly string[] | undefined) => progressOf(from.checklist, from.site, done ?? []);
const labelled = (from: Plan, prefix: string) =>
	stepsOf(from)
		.filter(({ id }) => id.startsWith(prefix))
		.map(({ id }) => id);

describe('an id stays with what it is about', () => {
	it('when a light is added: every fixture, joint and aim that was there keeps its own', () => {
		const at = { along: 3, out: 7 };
		const more = makePlan({ ...suburban, fixtures: { added: [{ id: 'mine', technique: 'path', at }] } });
		expect(more.fixtures).toHaveLength(plan.fixtures.length + 1);
		const after = new Set(targets(more).map(({ id }) => id));
		const stay = targets(plan).filter(({ id }) => /^(fixture|joint|aim|laid|dug)\//.test(id));
		expect(stay.length).toBeGreaterThan(plan.fixtures.length);
		expect(stay.filter(({ id }) => !after.has(id))).toEqual([]);
		// All was done: what the new light brings is open, and what now is another stretch says what it was done for.
		const { parts, gone } = progress(more, everything(plan));
		const open = parts.flatMap(({ steps, comesRound }) => (comesRound ? [] : steps.filter(({ done }) => !done)));
		const added = more.fixtures.find(({ id }) => !plan.fixtures.some((one) => one.id === id))!.id;
		expect(open.map(({ step }) => step.id)).toContain(`fixture/${added}`);
		const bare = open.filter(({ was, items }) => was === null && items.every((item) => item.was === null));
		for (const { step, items } of bare) {
			const isNew = (id: string) => !targets(plan).some((one) => one.id === id);
			expect(items.length > 0 ? items.some(({ item }) => isNew(item.id)) : isNew(step.id), step.id).toBe(true);
		}
		expect(gone.every(({ entry }) => /^(cross|trench|terminal)\//.test(entry))).toBe(true);
	});
	it('when a tree goes: its own lights go to the list of what is gone, in words, all others stay', () => {
		const [tree, ...others] = suburban.trees!;
		const less = makePlan({ ...suburban, trees: others });
		const went = plan.fixtures.filter(({ id }) => !less.fixtures.some((one) => one.id === id)).map(({ id }) => id);
		expect(went.some((id) => id.startsWith(`${tree!.id}/`))).toBe(true);
		expect(labelled(less, 'fixture/').toSorted()).toEqual(less.fixtures.map(({ id }) => `fixture/${id}`).toSorted());
		const { gone } = progress(less, everything(plan));
		for (const id of went) expect(gone.map(({ entry }) => readEntry(entry).id)).toContain(`fixture/${id}`);
		for (const { says } of gone) expect(says).toMatch(/^\p{Lu}[^/@]*$/u);
	});
	it('when feet become metres, and with the same answers again: ids and what they are done for are equal', () => {
		const metric = makePlan({
			...suburban,
			place: { ...suburban.place, units: 'metres' },
			power: { ...suburban.power, cable: suburban.power.cable ?? 'awg' }
		});
		expect(targets(metric).map(({ id, doneFor }) => [id, doneFor])).toEqual(
			targets(plan).map(({ id, doneFor }) => [id, doneFor])
		);
		expect(makePlan({ ...suburban, done: everything(plan) }).checklist).toEqual(plan.checklist);
	});
	it('on random yards: one id to a target, none with the sign that ends an id, all of it fit for the yard', () => {
		for (let seed = 1; seed <= (process.env['LONG'] ? 200 : 6); seed += 1) {
			const yard = randomYard(seed);
			const made = makePlan(yard);
			const ids = targets(made).map(({ id }) => id);
			expect(new Set(ids).size, `seed ${seed}`).toBe(ids.length);
			expect(ids.filter((id) => id.includes('@'))).toEqual([]);
			const done = withTicks(undefined, targets(made), true);
			const read = readYard(writeYard({ ...yard, ...(done ? { done } : {}) }));
			expect(read.ok && read.yard.done).toEqual(read.ok && done);
			const { done: count, of, next, notes, gone } = progress(made, done);
			expect({ count, next, notes, gone }, `seed ${seed}`).toEqual({ count: of, next: null, notes: [], gone: [] });
		}
	});
	it('longer than the yard takes it is cut, and two long ones stay apart', () => {
		const long = (end: string) => tickId('joint', `${'a'.repeat(60)}/${'b'.repeat(39)}${end}`);
		expect(long('1').length).toBeLessThan(100);
		expect(long('1')).not.toBe(long('2'));
		expect(tickId('leg', 'oak/1')).toBe('leg/oak/1');
	});
});

describe('ticks as the yard keeps them', () => {
	const ids = (...list: string[]) => list.map((id) => ({ id }));
	it('are sorted, one to an id, and gone when the last is taken away', () => {
		const done = withTicks(['tug', 'ends', 'tug', 'count'], ids('flags'), true);
		expect(done).toEqual(['count', 'ends', 'flags', 'tug']);
		expect(withTicks(done, ids('count', 'ends', 'flags', 'tug'), false)).toBeUndefined();
		expect(withTicks(undefined, [], true)).toBeUndefined();
	});
	it('are the same in whichever order they were made', () => {
		const some = targets(plan).slice(0, 9);
		const oneByOne = (list: typeof some) =>
			list.reduce<string[] | undefined>((done, one) => withTicks(done, [one], true), undefined);
		expect(oneByOne(some)).toEqual(oneByOne(some.toReversed()));
	});
	it('of what was done for something else is replaced, not added', () => {
		const target = targets(plan).find(({ id }) => id.startsWith('fixture/'))!;
		expect(withTicks([`${target.id}@1,1`], [target], true)).toEqual([`${target.id}@${target.doneFor!.mark}`]);
		expect(withTicks([`${target.id}@1,1`], [target], false)).toBeUndefined();
	});
	it('of a step with parts are those of its parts; it is done with the last of them', () => {
		const aim = stepOf(plan, 'aim');
		const [last, ...rest] = aim.items!.toReversed();
		const state = (done: string[] | undefined) =>
			progress(plan, done)
				.parts.flatMap(({ steps }) => steps)
				.find(({ step }) => step.id === 'aim')!;
		expect(aim.items).toHaveLength(plan.fixtures.filter((fixture) => fixture.aim).length);
		const most = withTicks(undefined, rest, true);
		expect(state(most).done).toBe(false);
		expect(state(withTicks(most, [last!], true)).done).toBe(true);
	});
	it('leave upkeep out, which comes round again', () => {
		const { parts, of } = progress(plan, []);
		const upkeep = parts.find(({ part }) => part.id === 'upkeep')!;
		expect([upkeep.comesRound, upkeep.isDone]).toEqual([true, false]);
		expect(of).toBe(stepsOf(plan).length - upkeep.steps.length);
	});
});

describe('what a step was done for', () => {
	it('is said when it is another place by more than a foot; less is the same place', () => {
		const supply = stepOf(plan, 'transformer');
		const { x, y } = plan.supply!.at;
		const state = (dx: number) =>
			progress(plan, [`transformer@${(x + dx).toFixed(1)},${y.toFixed(1)}`])
				.parts.flatMap(({ steps }) => steps)
				.find(({ step }) => step === supply)!;
		expect(state(0.2)).toMatchObject({ done: true, was: null });
		expect(state(1)).toMatchObject({ done: false });
		expect(state(1).was).toMatch(/^It was done at .* along, .* (out|back)\.$/);
	});
	it('tells cable by size and length, ground by length, hours by all of them', () => {
		const twelve = ofCable({ system: 'awg', size: 12 }, 34.52);
		expect(twelve.mark).toBe('awg-12,34.5');
		expect([isSame(twelve, 'awg-12,34.8'), isSame(twelve, 'awg-12,35'), isSame(twelve, 'awg-10,34.5')]).toEqual([
			true,
			false,
			false
		]);
		expect(wasWords('cable', 'awg-10,12', { ...plan.site, units: 'metres' })).toBe(
			'It was done for 12.00 m of 10 AWG.'
		);
		expect([isSame(overGround(5), '5.3'), isSame(overGround(5), '5.4')]).toEqual([true, false]);
		const split = { kind: 'split', evening: '23:00', morning: '05:30' } as const;
		expect(forHours({ kind: 'until', clock: '23:00' }, null).mark).not.toBe(forHours(split, null).mark);
		expect(forHours(split, split).mark.length).toBeLessThanOrEqual(24);
	});
	it('that cannot be read is something else, never an error', () => {
		for (const kind of ['place', 'ground', 'cable', 'tap'] as const)
			for (const mark of ['', 'x', '1,2,3', 'awg-', 'NaN', '1,']) {
				expect(wasWords(kind, mark, plan.site)).toMatch(/^It was done/);
				expect(wasWords(kind, mark, plan.site)).not.toMatch(/NaN|undefined/);
			}
	});
});

describe('ticks from a file that someone wrote by hand', () => {
	it('are told each once, whatever they say, and tick nothing', () => {
		const odd = ['@', '@1,2', '__proto__', 'constructor', 'aim/', 'aim/__proto__/1', 'x', 'x', 'dug//@', 'cross/a'];
		const { done, gone, notes } = progress(plan, odd);
		expect([done, notes]).toEqual([0, []]);
		expect(gone.map(({ entry }) => entry)).toEqual([...new Set(odd)]);
		for (const { says } of gone) expect(says.trim()).not.toBe('');
	});
	it('for a place that is none count as done for something else', () => {
		const id = targets(plan).find((one) => one.id.startsWith('fixture/'))!.id;
		const { parts, done } = progress(plan, [`${id}@here`]);
		expect(done).toBe(0);
		const found = parts.flatMap(({ steps }) => steps).find(({ step }) => step.id === id)!;
		expect(found).toMatchObject({ done: false, was: 'It was done for something else.' });
	});
});

describe('guards', () => {
	const at = (from: Plan, id: string) => stepsOf(from).findIndex((one) => one.id === id);
	it('stand before all that waits for them, in every example', () => {
		for (const { yard } of examples) {
			const made = makePlan(yard);
			for (const { guard, waiting } of guarded(made.checklist.parts)) {
				if (at(made, guard) < 0) continue;
				expect(waiting.length, guard).toBeGreaterThan(0);
				for (const id of waiting) expect(at(made, guard), `${guard} before ${id}`).toBeLessThan(at(made, id));
			}
		}
	});
	// 29 CFR 1926.651(b): before opening an excavation, utilities are located; 1926.416(a): no work near a live circuit unless it is de-energised.
	it('say so when digging is ticked before the call, wiring before the plug is out', () => {
		const dug = stepsOf(plan).find(({ id }) => id.startsWith('leg/'))!.items![0]!;
		const joint = stepsOf(plan).find(({ id }) => id.startsWith('connect/'))!.items![0]!;
		const done = withTicks(undefined, [dug, joint], true)!;
		const notes = (list: string[]) => progress(plan, list).notes.map(({ step }) => step.id);
		expect(notes(done)).toEqual(expect.arrayContaining(['dig-notice', 'unplug']));
		expect(notes([...done, 'dig-notice', 'unplug'])).not.toEqual(expect.arrayContaining(['dig-notice']));
		expect(notes([...done, 'dig-notice', 'unplug'])).not.toEqual(expect.arrayContaining(['unplug']));
		expect(notes([])).toEqual([]);
	});
	it('an open GFCI is said when the first night is begun', () => {
		const { site } = plan;
		const yard: Yard = { ...suburban, power: { ...suburban.power, gfci: false } };
		const made = makePlan(yard);
		expect(progressOf(made.checklist, site, ['gfci-test']).notes.map(({ step }) => step.id)).toContain('gfci');
		expect(progressOf(made.checklist, site, ['gfci-test', 'gfci']).notes.map(({ step }) => step.id)).not.toContain(
			'gfci'
		);
	});
});
