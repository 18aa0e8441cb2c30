/** What the section on real lamps shows: the lights that one may be for, and what its file says. */
import type { OwnLight } from '$lib/domain/placement';
import { modelsAlike } from '$lib/domain/placement';
import type { Plan } from '$lib/domain/plan';
import { fixtureModels } from '$lib/domain/shared/catalogue';
import type { OwnLamp } from '$lib/domain/yard';

/** Largest file that is opened, bytes: as large as the readers take. */
export const mostBytes = 2_000_000;
/** Models that one lamp can stand for: `ownLampSchema`. */
export const mostModels = 60;

/** Lights of the plan that take the same lamp. */
export interface LightGroup {
	/** Models that a lamp for them stands for, those in use first. */
	models: string[];
	/** `Spot on a stake, 36° beam`. */
	name: string;
	labels: string[];
	/** Name of the person's own lamp that they have now. */
	own: string | null;
}
/** Of spots the beam, of the others the body alone: among those the plan chooses by their light. */
function nameOf(id: string): string {
	const model = fixtureModels.find((one) => one.id === id);
	if (!model) return id;
	const body = model.name.split(',')[0]!;
	return model.body === 'spot' ? `${body}, ${model.strength}, ${model.lamp.beamAngle}° beam` : body;
}
export function groupsOf({ fixtures }: Pick<Plan, 'fixtures'>, lamps: readonly OwnLamp[] = []): LightGroup[] {
	const groups: LightGroup[] = [];
	for (const { model, label, lamp } of fixtures) {
		const known = groups.find(({ models }) => models.includes(model));
		if (known) {
			known.labels.push(label);
			continue;
		}
		// A lamp that is there already may stand for other models as well: they go together.
		const told = lamp.measured && lamps.find((one) => one.for.includes(model));
		const models = [...new Set([model, ...(told?.for ?? []), ...modelsAlike(model)])];
		groups.push({ models, name: nameOf(model), labels: [label], own: lamp.measured?.name ?? null });
	}
	return groups;
}
/** The lights of a plan that have a lamp. */
export function labelsWith({ fixtures }: Pick<Plan, 'fixtures'>, light: OwnLight | null): string[] {
	if (!light) return [];
	const text = JSON.stringify(light.measured);
	// A plan comes from another thread, as a copy: lamps are told by what they are. Within a plan, lights that share one share its table.
	const known = new Map<unknown, boolean>();
	return fixtures.flatMap(({ lamp: { measured }, label }) => {
		if (!measured) return [];
		const isSame = known.get(measured) ?? JSON.stringify(measured) === text;
		known.set(measured, isSame);
		return isSame ? [label] : [];
	});
}

const lumensWords = (lumens: number): string => `${lumens < 100 ? lumens.toFixed(1) : Math.round(lumens)} lm`;
/** `36°`, or of two planes that differ `30° by 60°`. */
export function beamWords({ first, second }: OwnLight['beam']): string {
	const [a, b] = [Math.round(first), Math.round(second)];
	return Math.abs(first - second) < 1 ? `${a}°` : `${a}° by ${b}°`;
}
/** What a lamp comes to, name and value. */
export function factsOf(light: OwnLight, watts: number | undefined): { name: string; value: string }[] {
	const { lumens, beam } = light;
	return [
		{ name: 'Light in all', value: lumensWords(lumens) },
		{ name: 'Beam', value: `${beamWords(beam)} between the edges of half its strength` },
		{
			name: beam.byPeak ? 'At its brightest' : 'Along the beam',
			value: `${beam.of < 10 ? beam.of.toFixed(1) : Math.round(beam.of)} cd`
		},
		{ name: 'Power', value: watts === undefined ? 'not told: that of the lamp it stands for' : `${watts} W` }
	];
}
