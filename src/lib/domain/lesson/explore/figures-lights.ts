/** Figures of the lights: why they stand there, and what the circuit gives them. */
import { dropWorking, lampWorking, lightWorking, voltsIn, voltsWorking, type Case, type Names } from '../../cable';
import { loadOf, type Run } from '../../cable';
import { loadAmps } from '../../circuit';
import type { Fixture } from '../../placement';
import type { Plan } from '../../plan';
import { rules } from '../../shared/rules';
import type { Site } from '../../site';
import { given, later } from './figure';
import type { PlanFigure } from './types';

/** `T1, corner linden`; a light for nothing that has a name goes by its label. */
export function placeOf({ label, target }: Fixture, site: Site): string {
	const strip = site.strips.find(
		({ id, steps }) => id === target.id || steps.some((flight) => flight.id === target.id)
	);
	const named = [...site.trees, ...site.areas, ...site.walls, ...site.houseNumber].find(({ id }) => id === target.id);
	const name = (named?.name ?? strip?.name ?? '').trim();
	return name ? `${label}, ${name}` : label;
}
/** The working of each reason. A rule that speaks twice of one light is told apart by a number. */
export function reasonFigures({ fixtures, site }: Plan): PlanFigure[] {
	return fixtures.flatMap((fixture) => {
		const seen = new Map<string, number>();
		return fixture.reasons.flatMap(({ rule, working }) => {
			if (!working) return [];
			const count = (seen.get(rule) ?? 0) + 1;
			seen.set(rule, count);
			return [given(`light/${fixture.id}/${rule}${count > 1 ? `/${count}` : ''}`, placeOf(fixture, site), working)];
		});
	});
}

/** The names of a run's places as its workings write them. */
export const namesOf = (run: Run, fixtures: readonly Fixture[]): Names =>
	new Map(
		run.nodes.map((node, n) => [
			node.id,
			n === 0
				? 'Transformer'
				: node.fixture === null
					? 'Hub'
					: (fixtures.find(({ id }) => id === node.fixture)?.label ?? node.fixture)
		])
	);

const cases: readonly [Case, key: string, label: string][] = [
	['nominal', 'volts', 'Volts'],
	['low', 'volts-low', 'Lowest volts'],
	['high', 'volts-high', 'Highest volts']
];
/** Volts, current and light of each lamp; none where its run has no solution. */
export function lampFigures({ runs, fixtures, site }: Plan): PlanFigure[] {
	return runs.flatMap((run) => {
		const names = namesOf(run, fixtures);
		return run.nodes.flatMap((node, n) => {
			const fixture = fixtures.find(({ id }) => id === node.fixture);
			return fixture ? figuresAt(run, node.id, n, fixture, placeOf(fixture, site), names, fixtures) : [];
		});
	});
}
function figuresAt(
	run: Run,
	node: string,
	n: number,
	fixture: Fixture,
	place: string,
	names: Names,
	fixtures: readonly Fixture[]
): PlanFigure[] {
	const key = (what: string) => `light/${fixture.id}/${what}`;
	const { label, lamp } = fixture;
	const volts = cases.flatMap(([which, what, word]) => {
		const value = voltsIn(run, which)?.[n];
		if (value === undefined) return [];
		const head = { label: `${word} at ${label}`, unit: 'V', decimals: 2 };
		return [later(key(what), place, value, head, () => voltsWorking(run, node, which, names, fixtures))];
	});
	const nominal = voltsIn(run, 'nominal');
	const [start, end] = [nominal?.[0], nominal?.[n]];
	if (start === undefined || end === undefined) return volts;
	const lost = { label: `Volts lost to ${label}`, unit: '%', decimals: 1 };
	const current = { label: `Current of ${label}`, unit: 'A', decimals: 3 };
	const light = { label: `Light of ${label}`, unit: '%', decimals: 0 };
	const power = rules['lamp.halogen'].figures.light;
	return [
		...volts,
		later(key('lost'), place, (100 * (start - end)) / start, lost, () => dropWorking(run, node, names)),
		later(key('current'), place, loadAmps(loadOf(lamp), end), current, () => lampWorking(fixture, end)),
		...(lamp.kind === 'halogen'
			? [later(key('light'), place, 100 * (end / lamp.ratedVolts) ** power, light, () => lightWorking(fixture, end))]
			: [])
	];
}
