/** Which inputs move a figure: tried out, one at a time. */
import { makePlan, type Plan } from '../../plan';
import type { Yard } from '../../yard';
import { movedKeys } from './dependents';
import { figuresOf } from './figures';
import type { PlanFigure, Tried, YardInput } from './types';

/** How far from its start towards an end an input is moved to be tried, as a part of the way: a change that one would make. */
const way = 0.5;

/** Stops at which it is tried, in turn: some way up, some way down. */
export function probesOf({ stops, start }: YardInput): number[] {
	const at = stops.indexOf(start);
	const [down, up] = [at, stops.length - 1 - at];
	return [at + Math.ceil(up * way), at - Math.ceil(down * way)].filter((k) => k !== at).map((k) => stops[k]!);
}
/** One input tried: the first of its probes with which any figure moves. Without one, nothing moves. */
export function tryOne(yard: Yard, figures: readonly PlanFigure[], input: YardInput): Tried {
	for (const value of probesOf(input)) {
		const moved = movedKeys(figures, figuresOf(makePlan(input.put(yard, value))));
		if (moved.size > 0) return { input: input.id, moved };
	}
	return { input: input.id, moved: new Set() };
}
/** What likely moves a figure first: what is of the same thing, then what all of its kind hang on. */
export function likelyFirst(inputs: readonly YardInput[], key: string): YardInput[] {
	const [room = '', ...rest] = key.split('/');
	const thing = rest.join('/');
	const isNear = ({ about }: YardInput): boolean => thing.split('/').includes(about);
	const kin: Record<string, readonly string[]> = {
		year: ['year', 'place', 'lamps', 'supply'],
		run: ['lamps', 'supply', 'run'],
		supply: ['lamps', 'supply', 'run'],
		shopping: ['lamps', 'supply', 'run'],
		light: ['lamps', 'supply', 'run'],
		lit: ['lamps', 'house']
	};
	const rank = (input: YardInput): number => {
		if (isNear(input)) return 0;
		const near = (kin[room] ?? []).some((about) => input.about.split('-')[0] === about);
		return near ? 1 : input.about.startsWith('rule/') ? 3 : 2;
	};
	return inputs.toSorted((a, b) => rank(a) - rank(b));
}
/** Each input tried, one step a plan or a few; whoever calls takes as many steps as there is time for. */
export function* tryOut(yard: Yard, plan: Plan, inputs: readonly YardInput[]): Generator<Tried> {
	const figures = figuresOf(plan);
	for (const input of inputs) yield tryOne(yard, figures, input);
}
/** The inputs that move a figure, as they are found. Pure; makes at least one plan for each input. */
export function* movers(yard: Yard, plan: Plan, inputs: readonly YardInput[], key: string): Generator<YardInput> {
	const figures = figuresOf(plan);
	for (const input of likelyFirst(inputs, key)) if (tryOne(yard, figures, input).moved.has(key)) yield input;
}
