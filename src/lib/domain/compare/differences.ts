/** In what the two plans differ beside the lamp: fixtures are paired by their place, that is by their id. */
import type { Plan } from '../plan';
import type { Fixture } from '../placement';
import { fixtureModels, type FixtureModel } from '../shared/catalogue';
import type { Yard } from '../yard';
import type { Difference, Kind } from './types';

const models = new Map(fixtureModels.map((model) => [model.id, model]));
const called: Record<Kind, string> = { led: 'LED', halogen: 'halogen' };
const listed = (labels: readonly string[]): string =>
	labels.length < 2 ? labels.join('') : `${labels.slice(0, -1).join(', ')} and ${labels.at(-1)}`;
const lights = (count: number): string => `${count} ${count === 1 ? 'light' : 'lights'}`;

function only(kind: Kind, here: Plan, there: Plan): Difference[] {
	const others = new Set(there.fixtures.map(({ id }) => id));
	const alone = here.fixtures.filter(({ id }) => !others.has(id)).map(({ label }) => label);
	if (alone.length === 0) return [];
	const other = kind === 'led' ? 'halogen' : 'LED';
	const message = `With ${called[kind]} the plan has ${lights(alone.length)} that it does not have with ${other}: ${listed(alone)}. The rules of light and spacing ask for that where the lamps differ in lumens.`;
	return [{ code: `only-${kind}`, message }];
}
/** Fixtures that do not carry the kind of lamp that was asked for. */
function noModel(kind: Kind, plan: Plan): Difference[] {
	const other = plan.fixtures.filter(({ lamp }) => lamp.kind !== kind).map(({ label }) => label);
	if (other.length === 0) return [];
	const message = `Our catalogue has no ${called[kind]} model for ${listed(other)}: the other kind is taken there, in both plans.`;
	return [{ code: 'no-model', message }];
}
/** Places where the two fixtures differ in what `of` says of their model and lamp. */
function unlike(led: Plan, halogen: Plan, of: (model: FixtureModel) => unknown): Fixture[] {
	const modelOf = ({ model, lamp }: Fixture): FixtureModel | null => {
		const listed = models.get(model);
		return listed ? { ...listed, lamp } : null;
	};
	const partners = new Map(led.fixtures.map((fixture) => [fixture.id, modelOf(fixture)]));
	return halogen.fixtures.filter((fixture) => {
		const [a, b] = [partners.get(fixture.id), modelOf(fixture)];
		return a && b && of(a) !== of(b);
	});
}
export function differencesOf(led: Plan, halogen: Plan): Difference[] {
	const strength = unlike(led, halogen, ({ strength }) => strength).map(({ label }) => label);
	const beam = unlike(led, halogen, ({ lamp }) => lamp.beamAngle).map(({ label }) => label);
	return [
		...only('led', led, halogen),
		...only('halogen', halogen, led),
		...noModel('led', led),
		...noModel('halogen', halogen),
		...(strength.length > 0
			? [
					{
						code: 'other-strength' as const,
						message: `${listed(strength)}: what is soft with one kind is bright with the other, because the catalogue has no nearer model.`
					}
				]
			: []),
		...(beam.length > 0
			? [
					{
						code: 'other-beam' as const,
						message: `${listed(beam)}: the beams differ in width, because the catalogue has no nearer model.`
					}
				]
			: [])
	];
}

/** What the person has set by hand or owns, and both plans keep. */
export function keptOf({ power }: Yard): string[] {
	const { circuit, owned } = power;
	const runs = circuit?.runs?.length ?? 0;
	return [
		...(runs > 0
			? [
					`You have set ${runs === 1 ? 'a run' : `${runs} runs`} of cable by hand. Both plans keep that, though it may suit only one kind of lamp.`
				]
			: []),
		...(circuit?.transformerVoltAmps === undefined
			? []
			: [`You have chosen a transformer of ${circuit.transformerVoltAmps} VA. Both plans keep that.`]),
		...(owned?.transformerVoltAmps === undefined && owned?.cableLength === undefined
			? []
			: ['What you have in hand is used where it serves, and costs nothing in either plan.'])
	];
}
