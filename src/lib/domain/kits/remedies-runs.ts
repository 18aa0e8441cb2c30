/** What puts a kit's circuit right with what is in it: a second run, or fewer lights. Solved before it is said. */
import { sizeName, type RunShape } from '../circuit';
import { lowestWords } from './circuit';
import type { Case } from './remedies-shelf';
import { cutTo, metresOf, reachOfLights, without } from './shapes';
import type { Judged } from './types';
import { cableLength, listed } from './words';

/** A trial in the kit's own cable and transformer, of other shapes. */
const own = ({ judge, tried }: Case, shapes: readonly RunShape[]): Judged =>
	judge.solve({
		runs: shapes.map((shape) => ({ name: shape.id, shape, size: tried.size })),
		transformer: tried.transformer
	});

/** The far lights of one run on a cable of their own; the split with least more cable that passes. */
export function secondRun(one: Case): string | null {
	const { needs, judge, lamps, tried } = one;
	const shapes = needs.runs.map((run) => judge.fitted(run, lamps));
	const splits = shapes.flatMap((shape, r) => {
		const order = reachOfLights(shape)
			.toSorted((a, b) => a.reach - b.reach)
			.map(({ id }) => id);
		return order.slice(1).flatMap((_, k) => {
			const near = cutTo(shape, new Set(order.slice(0, k + 1)), shape.id);
			const far = cutTo(shape, new Set(order.slice(k + 1)), `${shape.id}, second cable`);
			if (!near || !far) return [];
			const more = metresOf(near) + metresOf(far) - metresOf(cutTo(shape, new Set(order), shape.id)!);
			return [{ r, near, far, more }];
		});
	});
	for (const { r, near, far, more } of splits.toSorted((a, b) => a.more - b.more)) {
		const judged = own(one, [...shapes.slice(0, r), near, far, ...shapes.slice(r + 1)]);
		if (!judged.ok) continue;
		const moved = new Set(far.loads.map(({ id }) => id));
		const names = judged.lamps.filter(({ fixture }) => moved.has(fixture)).map(({ label }) => label);
		return `Split ${needs.runs[r]!.name} in two: ${listed(names)} on a cable of their own from the transformer, ${cableLength(more, needs.units, true)} more of ${sizeName(tried.size)}. ${lowestWords(judged)}`;
	}
	return null;
}

/** Without the farthest lights, one after the other, until it passes: of the runs in which a lamp is out of its volts, if there are any. */
export function fewerLights(one: Case): string | null {
	const { needs, judge, lamps, tried } = one;
	const shapes = needs.runs.map((run) => judge.fitted(run, lamps));
	const isOut = new Set(tried.judged.problems.map(({ fixture }) => fixture));
	const starved = shapes.filter(({ loads }) => loads.some(({ id }) => isOut.has(id)));
	const farFirst = (starved.length > 0 ? starved : shapes)
		.flatMap(reachOfLights)
		.toSorted((a, b) => b.reach - a.reach)
		.map(({ id }) => id);
	const lights = shapes.reduce((sum, { loads }) => sum + loads.length, 0);
	const left = new Set<string>();
	for (const id of farFirst) {
		left.add(id);
		if (left.size === lights) break;
		const judged = own(
			one,
			shapes.map((shape) => without(shape, left))
		);
		if (judged.ok)
			return `By itself it carries ${lights - left.size} of the ${lights} lights: leave out ${listed([...left].map((light) => judge.labels.get(light)!).toReversed())}.`;
	}
	return null;
}
