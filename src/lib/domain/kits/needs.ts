/** What a plan needs of a shelf. */
import type { CableSize, RunShape } from '../circuit';
import { loadOf, type Run } from '../cable';
import type { Fixture, Technique } from '../placement';
import type { Plan } from '../plan';
import { fixtureModels, stockBeams, type FixtureModel } from '../shared/catalogue';
import { wasteShare } from '../shopping';
import type { Yard } from '../yard';
import type { FixtureKind, FixtureNeed, Needs, RunNeed } from './types';

const bodies = new Map(fixtureModels.map((model) => [model.id, model.body]));
/** Of a fixture whose model is not in the catalogue. */
const bodyFor: Record<Technique, FixtureModel['body']> = {
	uplight: 'spot',
	number: 'spot',
	wash: 'wash',
	graze: 'wash',
	path: 'path',
	area: 'path',
	drive: 'marker',
	step: 'step'
};
/** By its body, and a spot by how it is set: flush in the ground it is a well light. */
export function kindOf({ model, technique, mount }: Pick<Fixture, 'model' | 'technique' | 'mount'>): FixtureKind {
	const body = bodies.get(model) ?? bodyFor[technique];
	return body === 'spot' && mount === 'flush' ? 'well' : body;
}

/** Of the beams in stock, the one nearest in ratio: lamps of one class may share a product. */
const beamClass = (beam: number): number => {
	const off = (stock: number) => Math.abs(Math.log(beam / stock));
	return stockBeams.reduce<number>((best, stock) => (off(stock) < off(best) ? stock : best), stockBeams[0]);
};
/** A beam is asked of what is aimed; all else is spread by its head. */
const isAimed = (kind: FixtureKind): boolean => kind === 'spot' || kind === 'well';

interface Group {
	kind: FixtureKind;
	lumens: number;
	source: FixtureNeed['source'];
	fixtures: Fixture[];
}
/** Mean of the lamps', degrees: but for lamps of a person's own they are all the same. */
const beamOf = ({ fixtures }: Group): number =>
	Math.round(fixtures.reduce((sum, { lamp }) => sum + lamp.beamAngle, 0) / fixtures.length);

function groupsOf(fixtures: readonly Fixture[]): Map<string, Group> {
	const groups = new Map<string, Group>();
	for (const fixture of fixtures) {
		const kind = kindOf(fixture);
		const { lumens, beamAngle, kind: source } = fixture.lamp;
		const id = [kind, source, Math.round(lumens), ...(isAimed(kind) ? [beamClass(beamAngle)] : [])].join('-');
		const group = groups.get(id);
		if (group) group.fixtures.push(fixture);
		else groups.set(id, { kind, lumens, source, fixtures: [fixture] });
	}
	return groups;
}
const fixtureNeeds = (fixtures: readonly Fixture[]): FixtureNeed[] =>
	[...groupsOf(fixtures)].map(([id, group]) => ({
		id,
		kind: group.kind,
		fixtures: group.fixtures.map((fixture) => fixture.id),
		labels: group.fixtures.map(({ label }) => label),
		lumens: group.lumens,
		beam: isAimed(group.kind) ? beamOf(group) : null,
		source: group.source
	}));

/** A run of the plan as lengths, its lamps hung on it. */
function shapeOf(run: Run, fixtures: ReadonlyMap<string, Fixture>): RunShape {
	const place = new Map(run.nodes.map(({ id }, n) => [id, n]));
	return {
		id: run.id,
		feed: run.feed,
		nodes: run.nodes.length,
		segments: run.segments.map(({ from, to, length }) => ({
			from: place.get(from)!,
			to: place.get(to)!,
			metres: length
		})),
		loads: run.nodes.flatMap((node, n) => {
			const fixture = node.fixture === null ? undefined : fixtures.get(node.fixture);
			if (!fixture) return [];
			const { kind, id } = fixture.target;
			return [{ id: fixture.id, node: n, load: loadOf(fixture.lamp), alike: `${kind}/${id}` }];
		})
	};
}
function runNeed(run: Run, fixtures: ReadonlyMap<string, Fixture>): RunNeed {
	const laid = run.segments.reduce((sum, { length }) => sum + length, 0);
	return { id: run.id, name: run.name, shape: shapeOf(run, fixtures), metres: laid * (1 + wasteShare) };
}

const systemOf = (plan: Plan, yard: Yard): CableSize['system'] =>
	plan.runs[0]?.cable.system ?? yard.power.cable ?? (plan.site.units === 'feet' ? 'awg' : 'mm2');

/**
 * What a plan needs of a shelf: lights grouped by kind, kind of lamp, light and class of beam, in the plan's order; its runs with the
 * metres that shopping counts (slack is laid, 5 % is waste); connectors as on its shopping list, spares left out. A plan knows
 * no hours of work, so `hours` is null. `yard` is the one that the plan was made of.
 */
export function needsOf(plan: Plan, yard: Yard): Needs {
	const fixtures = new Map(plan.fixtures.map((fixture) => [fixture.id, fixture]));
	return {
		fixtures: fixtureNeeds(plan.fixtures),
		runs: plan.runs.map((run) => runNeed(run, fixtures)),
		connectors: plan.shopping.items.find(({ id }) => id === 'connector')?.quantity ?? 0,
		system: systemOf(plan, yard),
		units: plan.site.units,
		hours: null
	};
}
