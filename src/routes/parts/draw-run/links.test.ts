import { describe, expect, test } from 'vitest';
import { drawLink, type Run } from '$lib/domain/cable';
import { makePlan } from '$lib/domain/plan';
import { examples, type RunLink } from '$lib/domain/yard';
import { writeAnswer } from '$lib/flow';
import { inOrder, linksOf, segmentOf, transformer } from './links';

const [a, b, c, d] = ['walk/a', 'walk/b', 'walk/c', 'walk/d'];

/** The definition of a tree, apart from the code under test: one link to each light, and from each a way back to the start. */
function isTree(links: readonly RunLink[], lights: readonly string[]): boolean {
	const into = new Map(links.map(({ from, to }) => [to, from]));
	if (into.size !== links.length || lights.some((light) => !into.has(light))) return false;
	return lights.every((light) => {
		let at: string | undefined = light;
		for (let steps = 0; steps <= links.length && at !== undefined && at !== transformer; steps++) at = into.get(at);
		return at === transformer;
	});
}
const lights = ({ nodes }: Run): string[] => nodes.flatMap(({ fixture }) => fixture ?? []);

test('in order: each branch to its end, and said as a branch', () => {
	const tee: RunLink[] = [
		{ from: transformer, to: a },
		{ from: a, to: b },
		{ from: a, to: c },
		{ from: b, to: d }
	];
	expect(inOrder(tee).map(({ link, branch }) => [link.to, branch])).toEqual([
		[a, false],
		[b, false],
		[d, false],
		[c, true]
	]);
});

test('a hub is drawn as the light it stands at', () => {
	const at = (x: number) => ({ x, y: 0 });
	const hub = {
		nodes: [
			{ id: 'supply', fixture: null, at: at(0) },
			{ id: 'run-1-hub', fixture: null, at: at(2) },
			{ id: a, fixture: a, at: at(2) },
			{ id: b, fixture: b, at: at(3) }
		],
		segments: [
			{ from: 'supply', to: 'run-1-hub', path: [at(0), at(2)] },
			{ from: 'run-1-hub', to: a, path: [at(2), at(2)] },
			{ from: 'run-1-hub', to: b, path: [at(2), at(3)] }
		]
	} as unknown as Run;
	expect(linksOf(hub)).toEqual([
		{ from: transformer, to: a },
		{ from: a, to: b }
	]);
	expect(segmentOf(hub, a)).toBe(hub.segments[0]);
});

describe.each(examples.map(({ title, yard }) => ({ title, yard })))('$title', ({ yard }) => {
	const plan = makePlan(yard);
	test('every run is a tree over its lights', () => {
		for (const run of plan.runs) {
			const links = linksOf(run);
			expect(isTree(links, lights(run))).toBe(true);
			expect(inOrder(links)).toHaveLength(lights(run).length);
			for (const { to } of links) expect(segmentOf(run, to)).toBeDefined();
		}
	});
	test('what is drawn is a tree too, as drawn; of links that are not laid none is listed', () => {
		const run = plan.runs[0]!;
		const [near, far] = [lights(run)[0]!, lights(run).at(-1)!];
		// Drawn towards the transformer: the far light feeds the near one.
		const circuit = drawLink(yard, plan.runs, run.id, { from: far, to: near })!;
		const extra = {
			...circuit,
			runs: circuit.runs!.map((one) => ({ ...one, links: [...one.links!, { from: near, to: far }] }))
		};
		for (const choice of [circuit, extra]) {
			const laid = makePlan(writeAnswer(yard, 'power.circuit', null, undefined, choice)).runs.find(
				({ id }) => id === run.id
			)!;
			const links = linksOf(laid, choice.runs!.find(({ id }) => id === run.id)!.links);
			expect(isTree(links, lights(run))).toBe(true);
			expect(links).toContainEqual({ from: far, to: near });
		}
	});
});
