/** Workings and words of how long the cable routes are, how short they could be, and how much is to be dug. */
import { lineLength } from '../shared/geometry';
import { formatLength, type UnitSystem } from '../shared/units';
import type { Working, WorkingInput } from '../shared/working';
import { figure, type Given } from './figure';
import type { RouteLength, Run } from './types';

type Head = Pick<Working, 'label' | 'rule' | 'source'>;
const sumOf = (head: Head, parts: readonly Omit<WorkingInput, 'symbol' | 'unit'>[]): Working =>
	figure(
		parts.reduce((sum, { value }) => sum + value, 0),
		{ ...head, unit: 'm', decimals: 2, expression: parts.map((_, k) => `d${k + 1}`).join(' + ') || '0' },
		Object.fromEntries(parts.map((part, k): [string, Given] => [`d${k + 1}`, { ...part, unit: 'm' }])),
		(values) => Object.values(values).reduce((sum, value) => sum + value, 0)
	);

/** Metres over the ground, run by run. */
export const lengthWorking = (runs: readonly Run[]): Working =>
	sumOf(
		{
			label: 'Cable route',
			rule: 'All cables along the ground, from place to place. Slack, and the rise to the transformer, come on top when cable is bought.',
			source: 'physics'
		},
		runs.map(({ name, segments }) => ({
			name,
			value: segments.reduce((sum, { path }) => sum + lineLength(path), 0)
		}))
	);

/** The least that so many runs could measure, link by link. `names`: of fixtures by id. */
export const boundWorking = ({ links }: RouteLength, names: ReadonlyMap<string, string>): Working =>
	sumOf(
		{
			label: 'Shortest it could be',
			rule: 'The shortest tree that joins the transformer and the lights, each link by the way that is cheapest to lay (a shorter one by a dear crossing is not counted), with as many cables at the transformer as there are runs. What each cable may carry is not asked, so this may be out of reach; no such layout whose cables meet only at lights is shorter.',
			source: 'physics'
		},
		links.map(({ from, to, length }) => ({
			name: `${names.get(from) ?? 'the transformer'} to ${names.get(to) ?? to}`,
			value: length
		}))
	);

/** How much longer than that the plan's routes are, percent. */
export function gapWorking(route: RouteLength, runs: readonly Run[], names: ReadonlyMap<string, string>): Working {
	const length = lengthWorking(runs);
	const bound = boundWorking(route, names);
	return figure(
		100 * route.gap,
		{
			label: 'Longer than the shortest it could be by',
			unit: '%',
			decimals: 1,
			rule: 'What a better layout could save at most, as a part of the least there can be.',
			expression: '( L − B ) ÷ B × 100',
			source: 'physics'
		},
		{
			L: { name: 'cable route', value: route.length, unit: 'm', from: length },
			B: { name: 'shortest it could be', value: route.bound, unit: 'm', from: bound }
		},
		({ L, B }) => ((L - B) / B) * 100
	);
}

/** Below this the routes are as short as they can be, as far as anyone can measure: a centimetre in the lengths shown. */
const asGood = 0.005;

/** The length beside its bound, and what is to be dug: two sentences. `runs`: how many. */
export function routeWords(route: RouteLength, runs: number, units: UnitSystem): [length: string, digging: string] {
	const metres = (value: number) => formatLength(value, units);
	const kind =
		runs === 1
			? 'One run by the cheapest ways, branching only at lights,'
			: `Any ${runs} runs by the cheapest ways, meeting only at lights,`;
	const least =
		route.length - route.bound < asGood
			? `${kind} ${runs === 1 ? 'measures' : 'measure'} that or more.`
			: `${kind} ${runs === 1 ? 'measures' : 'measure'} ${metres(route.bound)} or more.`;
	const { savedBySharing } = route;
	const once = savedBySharing < 0.05 ? '' : `; ${metres(savedBySharing)} is saved where cables share a trench`;
	return [
		`The cables run ${metres(route.length)} over the ground. ${least}`,
		`To dig: ${metres(route.trench)}, ways under paving left out${once}.`
	];
}
