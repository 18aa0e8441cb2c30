/** Receptacle, transformer, sensor, the lights of the plan and their cables. */
import type { Point } from '../../domain/shared/geometry';
import type { Run } from '../../domain/cable';
import type { Fixture } from '../../domain/placement';
import type { Plan } from '../../domain/plan';
import type { Yard, YardPoint } from '../../domain/yard';
import { targetName } from './targets';
import { hand, onPlan, placed, thing, type Thing } from './thing';
import { fixtureWords } from './words';

type Device = 'receptacle' | 'transformer' | 'sensor';
const device = (kind: Device, kindWord: string, at: Point | null): Thing[] =>
	at ? [thing({ kind, id: kind, kindWord, name: kindWord, ...placed(at), reach: hand })] : [];
/** Where the person said, else where the plan has it. */
const spot = (told: { at: YardPoint } | string | undefined, planned: Point | undefined): Point | null =>
	typeof told === 'object' ? onPlan(told.at) : (planned ?? null);

export function devicesOf({ power }: Yard, { supply, dusk }: Plan): Thing[] {
	const { receptacle } = power;
	return [
		// One that is only supposed is not drawn.
		...device('receptacle', 'Receptacle', typeof receptacle === 'object' ? onPlan(receptacle) : null),
		...device('transformer', 'Transformer', spot(power.transformer, supply?.at)),
		...device('sensor', 'Dusk sensor', spot(power.sensor, dusk.sensor?.at))
	];
}

/** Where a light stands by hand, before the plan has followed; null where the plan has the say. */
const toldPlace = ({ fixtures }: Yard, { id }: Fixture): YardPoint | null =>
	fixtures?.set?.find((one) => one.id === id)?.at ??
	fixtures?.added?.find((one) => `added/${one.id}` === id)?.at ??
	null;
export const fixturesOf = (yard: Yard, plan: Plan): Thing[] =>
	plan.fixtures.map((fixture) => {
		const told = toldPlace(yard, fixture);
		const kindWord = fixtureWords[fixture.technique];
		const target = targetName(yard, plan.site, fixture.target);
		return thing({
			kind: 'fixture',
			id: fixture.id,
			label: fixture.label,
			kindWord,
			name: target ? `${kindWord}, ${target}` : kindWord,
			...placed(told ? onPlan(told) : fixture.at),
			reach: hand
		});
	});

/**
 * All cables of a run in one line: from the transformer along each branch and back to where it left, so that every stretch
 * is on it.
 */
export function roundOf({ nodes, segments }: Run): Point[] {
	const start = nodes[0];
	if (!start) return [];
	const walk = (node: string): Point[] =>
		segments
			.filter(({ from }) => from === node)
			.flatMap(({ to, path }) => [...path, ...walk(to), ...path.toReversed()]);
	const line = [start.at, ...walk(start.id)];
	return line.filter((p, i) => i === 0 || p.x !== line[i - 1]!.x || p.y !== line[i - 1]!.y);
}
export const runsOf = ({ runs }: Plan): Thing[] =>
	runs.map((run) =>
		thing({ kind: 'run', id: run.id, kindWord: 'Cable run', name: run.name, line: roundOf(run), reach: 0 })
	);
