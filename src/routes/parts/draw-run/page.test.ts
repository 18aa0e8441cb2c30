/** Words, marks and targets of the page. */
import { describe, expect, test } from 'vitest';
import { makePlan } from '$lib/domain/plan';
import { examples } from '$lib/domain/yard';
import { closeFrame } from './frame';
import { inOrder, linksOf, transformer } from './links';
import { cableMarks, liesAsTold } from './marks';
import { bendTargets, cableAt, namer, nearestTarget, nextThatWay, targetsOf, wayOfKey } from './targets';
import { besideAlone, findingsOf, wayWords, wholeOf } from './words';

const plan = makePlan(examples.find(({ id }) => id === 'suburban')!.yard);
const run = plan.runs[0]!;
const links = linksOf(run);
const targets = targetsOf(plan, run, links);

describe('words', () => {
	test('a way: in order, a branch where it starts', () => {
		const steps = inOrder([
			{ from: transformer, to: 'walk/a' },
			{ from: 'walk/a', to: 'walk/b' },
			{ from: 'walk/a', to: 'walk/c' }
		]);
		const name = (id: string) => (id === transformer ? 'Transformer' : id.slice(-1).toUpperCase());
		expect(wayWords(steps, name)).toBe('Transformer → A → B; A → C');
	});
	test('beside the plan alone: more, less, the same, no solution', () => {
		const alone = { length: 50, cost: 300, far: { name: 'T1', volts: 11.3 } };
		const now = { length: 64.2, cost: 331, far: { name: 'T1', volts: 10.9 } };
		expect(besideAlone(now, alone, 'metres', '€')).toBe(
			'14.20 m more cable, about €31 more; the lamp with the fewest volts gets 10.90 V instead of 11.30 V.'
		);
		expect(besideAlone(alone, now, 'metres', '€')).toMatch(/^14.20 m less cable, about €31 less; .* 11.30 V instead/);
		expect(besideAlone(alone, alone, 'metres', '€')).toBe(
			'As much cable, no change in cost; the lamp with the fewest volts gets 11.30 V either way.'
		);
		expect(besideAlone({ ...now, far: null }, alone, 'metres', '€')).toMatch(/some lamps have no volts at all\.$/);
	});
	test('the whole: all cable, the supply’s cost, the least of all volts', () => {
		const whole = wholeOf(plan, plan.fixtures);
		const volts = plan.runs.flatMap(({ nodes }) => nodes.flatMap((node) => (node.fixture ? [node.volts!] : [])));
		expect(whole.far!.volts).toBe(Math.min(...volts));
		expect(whole.cost).toBe(plan.supply!.cost);
		expect(whole.length).toBeCloseTo(
			plan.runs.flatMap(({ segments }) => segments).reduce((sum, { length }) => sum + length, 0),
			9
		);
	});
	test('findings of this run only, and no notes', () => {
		const found = (code: string, rank: 'stop' | 'note', kind: string, id: string) =>
			({ code, rank, message: '', about: { kind, id }, rule: null }) as const;
		const mine = found('cable.drawn-blocked', 'stop', 'run', run.id);
		const light = found('circuit.low', 'stop', 'fixture', links[0]!.to);
		const others = [
			found('cable.drawn-blocked', 'stop', 'run', 'run-9'),
			found('cable.note', 'note', 'run', run.id),
			found('placement.hand-close', 'stop', 'fixture', links[0]!.to)
		];
		expect(findingsOf(run, [mine, light, ...others])).toEqual([mine, light]);
	});
});

describe('targets', () => {
	test('the transformer, every light of the plan, every cable of the run; each name once', () => {
		expect(targets.filter(({ kind }) => kind === 'light')).toHaveLength(plan.fixtures.length + 1);
		expect(targets.filter(({ kind }) => kind === 'cable')).toHaveLength(links.length);
		expect(new Set(targets.map(({ name }) => name)).size).toBe(targets.length);
		expect(namer(plan)(transformer)).toBe('Transformer');
	});
	test('a tap means the nearest within reach', () => {
		const light = targets[3]!;
		expect(nearestTarget(targets, { x: light.at.x + 0.01, y: light.at.y }, 0.5)).toBe(light);
		expect(nearestTarget(targets, { x: 400, y: 400 }, 0.5)).toBeNull();
	});
	test('a tap on a cable: this run goes before the others', () => {
		for (const one of plan.runs)
			for (const { to, path } of one.segments) {
				const at = { x: (path[0]!.x + path[1]!.x) / 2, y: (path[0]!.y + path[1]!.y) / 2 };
				expect(cableAt(plan.runs, one, at, 0.05)?.run).toBe(one);
				expect(cableAt([one], one, at, 1e-6)).not.toBeNull();
				expect(to).not.toBe(transformer);
			}
		expect(cableAt(plan.runs, run, { x: 400, y: 400 }, 0.5)).toBeNull();
	});
	test('by arrow keys every light and cable is reached from every other', () => {
		const keys = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'].map((key) => wayOfKey(key)!);
		const reached = new Set([targets[0]!.key]);
		const open = [targets[0]!];
		for (const at of open)
			for (const way of keys) {
				const next = nextThatWay(targets, at, way);
				if (!next || reached.has(next.key)) continue;
				reached.add(next.key);
				open.push(next);
			}
		expect(reached.size).toBe(targets.length);
		expect(wayOfKey('Enter')).toBeNull();
	});
	test('of a cable in hand: its bends, and one leg more than bends', () => {
		const ends = [
			{ x: 0, y: 0 },
			{ x: 4, y: 0 }
		] as const;
		const held = bendTargets(ends, [{ along: 2, out: 2 }], 'walk/a');
		expect(held.map(({ kind }) => kind)).toEqual(['bend', 'leg', 'leg']);
		expect(held[1]!.at).toEqual({ x: 1, y: 1 });
	});
});

describe('marks', () => {
	const hand = { run, links, cable: null, bends: [], isDragged: false };
	test('one for each other run, one for each cable of this one; none is of the colour of light', () => {
		const marks = cableMarks(plan.runs, 0.05, hand);
		expect(marks).toHaveLength(plan.runs.length - 1 + links.length);
		expect(marks.every(({ ink, fill }) => ink !== 'lamp' && fill === 'none')).toBe(true);
		expect(new Set(marks.map(({ key }) => key)).size).toBe(marks.length);
	});
	test('bends that could not be laid are shown as they were wished', () => {
		const off = { ...links[0]!, via: [{ along: 300, out: 300 }] };
		const path = run.segments[0]!.path;
		expect(liesAsTold(off, path)).toBe(false);
		expect(liesAsTold({ ...off, via: [{ along: path[0]!.x, out: path[0]!.y }] }, path)).toBe(true);
		const marks = cableMarks(plan.runs, 0.05, { ...hand, links: [off, ...links.slice(1)] });
		expect(marks.filter(({ ink }) => ink === 'look')).toHaveLength(1);
	});
});

test('closer: all of the run is in the frame', () => {
	for (const { id, nodes } of plan.runs) {
		const box = closeFrame(plan, id);
		for (const { at } of nodes)
			expect(at.x > box.minX && at.x < box.maxX && at.y > box.minY && at.y < box.maxY).toBe(true);
	}
});
