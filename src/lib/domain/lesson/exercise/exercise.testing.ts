/** Layouts for tests: the engine's own with one thing changed, and random ones, some as odd as a class can think of. */
import { randomOf } from '../random';
import { exerciseIds, exerciseOf, markLayout, ownLayout } from './index';
import type { Exercise, Layout, LayoutLight, LightKind, MarkState, RuleRow } from './types';

export const some: Exercise[] = exerciseIds.flatMap((id) =>
	(['metres', 'feet'] as const).map((units) => exerciseOf(id, 'some', units))
);
export const rowFor = (exercise: Exercise, layout: Layout, rule: string): RuleRow => {
	const row = markLayout(exercise, layout).rows.find((one) => one.rule === rule);
	if (!row) throw new Error(`no row for ${rule}`);
	return row;
};
export const stateFor = (exercise: Exercise, layout: Layout, rule: string): MarkState =>
	rowFor(exercise, layout, rule).state;
/** The engine's own layout with the light of a kind that comes nth changed; null takes it away. */
export function withLight(
	exercise: Exercise,
	kind: LightKind,
	nth: number,
	change: Partial<LayoutLight> | null
): Layout {
	const own = ownLayout(exercise);
	const indices = own.lights.flatMap((light, index) => (light.kind === kind ? [index] : []));
	const at = indices[nth]!;
	const lights = change
		? own.lights.with(at, { ...own.lights[at]!, ...change })
		: own.lights.filter((_, index) => index !== at);
	return { ...own, lights };
}
/** A few lights anywhere round the yard; now and then what is no place at all, or far more than fit. */
export function randomLayout(exercise: Exercise, seed: string): Layout {
	const random = randomOf(seed);
	const { leftBoundary, rightBoundary, street } = exercise.empty.site;
	const odd = (value: number): number =>
		random.whole(0, 99) > 0 ? value : random.one([NaN, Infinity, -Infinity, 1e9, -1e9, 500, -500, 0, 1e-300]);
	const place = () => ({
		along: odd(random.stepped(leftBoundary - 2, rightBoundary + 2, 0.01)),
		out: odd(random.stepped(-4, street + 2, 0.01))
	});
	const count = random.one([0, 1, 1, 1, 2, 2, 2, 3, 3, 5]) + (random.whole(0, 999) === 0 ? 90 : 0);
	const lights = Array.from({ length: count }, (): LayoutLight => {
		const kind = random.one(['path', 'tree', 'drive', 'wall'] as const);
		return { kind, ...place() };
	});
	const twice = lights[0] && random.whole(0, 9) === 0 ? [lights[0]] : [];
	return {
		lights: [...lights, ...twice],
		supply:
			random.whole(0, 2) === 0
				? null
				: {
						...place(),
						height: random.one([null, 0, 0.3, 0.31, 0.46, 1.2, 3, odd(0.5), -1]),
						voltAmps: random.one([null, null, 60, 20, odd(150), 0])
					}
	};
}

/** Figures of the trade, by hand, in metres: common practice, no source, but for water (NEC Articles 411 and 680, seen second-hand). */
export const trade = {
	path: { low: 0.15, high: 0.3, apart: 3, serves: 1.5 },
	drive: { clear: 0.15, flare: 1, matched: 0.25 },
	wall: { low: 2.7 / 4, high: 2.7 / 3, aside: 0.3 },
	water: 3.05,
	height: 0.305,
	cord: 1.5
};
/** What a pencil's line is given, and a hair on either side of it. */
export const [line, hair] = [0.005, 0.001];
