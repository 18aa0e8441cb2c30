/** What on the drawing can be taken in hand, and which of it a tap or an arrow key means. Metres, in the yard's frame. */
import type { Run } from '$lib/domain/cable';
import type { Plan } from '$lib/domain/plan';
import { distance, lineLength, nearestOnLine, pointAt, type Point } from '$lib/domain/shared/geometry';
import type { RunLink, YardPoint } from '$lib/domain/yard';
import { asPoint } from './bends';
import { segmentOf, transformer } from './links';

/** `light`: a light or the transformer. `cable`: one between two of them. `bend`, `leg`: of the cable in hand. */
export interface Target {
	key: string;
	kind: 'light' | 'cable' | 'bend' | 'leg';
	/** Fixture id; of a cable the light that it leads to. */
	id: string;
	/** Of a bend, or of the leg before that bend. */
	index: number;
	at: Point;
	name: string;
}
type Drawn = Pick<Plan, 'fixtures' | 'runs' | 'supply'>;
/** Name of a light or the transformer, as the drawing has it. */
export const namer =
	({ fixtures }: Pick<Plan, 'fixtures'>) =>
	(id: string): string =>
		id === transformer ? 'Transformer' : (fixtures.find((one) => one.id === id)?.label ?? id);

const ownLights = (run: Run): Set<string> => new Set(run.nodes.flatMap(({ fixture }) => fixture ?? []));

/** Lights of all runs, the transformer, and the cables of the run. */
export function targetsOf(plan: Drawn, run: Run, links: readonly RunLink[]): Target[] {
	const name = namer(plan);
	const own = ownLights(run);
	const elsewhere = (id: string) => plan.runs.find(({ nodes }) => nodes.some(({ fixture }) => fixture === id))?.name;
	const light = (id: string, at: Point, words: string): Target => ({
		key: `light ${id}`,
		kind: 'light',
		id,
		index: 0,
		at,
		name: words
	});
	return [
		...(plan.supply ? [light(transformer, plan.supply.at, name(transformer))] : []),
		...plan.fixtures.flatMap(({ id, at, label }) => {
			if (own.has(id)) return [light(id, at, label)];
			const there = elsewhere(id);
			return there ? [light(id, at, `${label}, on ${there}`)] : [];
		}),
		...links.flatMap(({ from, to }): Target[] => {
			const path = segmentOf(run, to)?.path;
			if (!path || path.length < 2) return [];
			const at = pointAt(path, lineLength(path) / 2);
			return [
				{ key: `cable ${to}`, kind: 'cable', id: to, index: 0, at, name: `Cable from ${name(from)} to ${name(to)}` }
			];
		})
	];
}

/** Of the cable in hand: its bends, and the middle of each straight between them, where one more may go. */
export function bendTargets(ends: readonly [Point, Point], bends: readonly YardPoint[], to: string): Target[] {
	const line = [ends[0], ...bends.map(asPoint), ends[1]];
	const legs = line.slice(1).map((p, index): Target => {
		const before = line[index]!;
		const at = { x: (before.x + p.x) / 2, y: (before.y + p.y) / 2 };
		return { key: `leg ${index}`, kind: 'leg', id: to, index, at, name: `Add a bend in straight ${index + 1}` };
	});
	const corners = bends.map((bend, index): Target => {
		return { key: `bend ${index}`, kind: 'bend', id: to, index, at: asPoint(bend), name: `Bend ${index + 1}` };
	});
	return [...corners, ...legs];
}

/** The nearest within reach, metres; of lights on one spot the first. */
export function nearestTarget(targets: readonly Target[], at: Point, reach: number): Target | null {
	const near = targets.filter((target) => distance(target.at, at) <= reach);
	return near.reduce<Target | null>(
		(best, one) => (best && distance(best.at, at) <= distance(one.at, at) ? best : one),
		null
	);
}

/** The cable nearest within reach, by the light that it leads to. The run's own cables go before those beside them. */
export function cableAt(runs: readonly Run[], run: Run, at: Point, reach: number): { run: Run; to: string } | null {
	for (const one of [run, ...runs.filter((other) => other !== run)]) {
		let best: { to: string; off: number } | null = null;
		for (const { to } of one.segments) {
			const path = segmentOf(one, to)?.path;
			const off = path ? (nearestOnLine(at, path)?.distance ?? Infinity) : Infinity;
			if (off <= reach && (!best || off < best.off)) best = { to, off };
		}
		if (best) return { run: one, to: best.to };
	}
	return null;
}

const ways: Readonly<Record<string, Point>> = {
	ArrowLeft: { x: -1, y: 0 },
	ArrowRight: { x: 1, y: 0 },
	ArrowUp: { x: 0, y: -1 },
	ArrowDown: { x: 0, y: 1 }
};
/** One step of an arrow key as a unit vector on the sheet; null for any other key. */
export const wayOfKey = (key: string): Point | null => ways[key] ?? null;

/** The next target that way: near, and rather ahead than aside. Null where there is none. */
export function nextThatWay(targets: readonly Target[], from: Target, way: Point): Target | null {
	let best: { target: Target; cost: number } | null = null;
	for (const target of targets) {
		const [dx, dy] = [target.at.x - from.at.x, target.at.y - from.at.y];
		const ahead = dx * way.x + dy * way.y;
		const aside = Math.abs(dx * way.y - dy * way.x);
		if (target.key === from.key || ahead <= 1e-9) continue;
		const cost = ahead + 2 * aside;
		if (!best || cost < best.cost) best = { target, cost };
	}
	return best?.target ?? null;
}
