/** Halogen lamps of the catalogue, each with the LED lamp of about its light that takes its place. */
import { fixtureModels, type FixtureModel } from '../../shared/catalogue';

export interface Pair {
	/** As in a sentence: `path lights`. */
	name: string;
	halogen: number;
	led: number;
}
const names: Record<FixtureModel['body'], string> = {
	spot: 'tree spots',
	wash: 'wall lights',
	path: 'path lights',
	step: 'step lights',
	marker: 'drive lights'
};
/** A lamp with a tenth less light is hardly told from the old one (from memory). */
const noDimmer = 0.9;
const replacement = ({ body, mount, lamp }: FixtureModel): FixtureModel =>
	fixtureModels
		.filter((model) => model.lamp.kind === 'led' && model.body === body && model.mount === mount)
		.filter((model) => model.lamp.lumens >= noDimmer * lamp.lumens)
		.toSorted((a, b) => a.lamp.watts - b.lamp.watts)[0]!;
const all = fixtureModels
	.filter(({ lamp, mount }) => lamp.kind === 'halogen' && mount !== 'flush')
	.map((model): Pair => ({ name: names[model.body], halogen: model.lamp.watts, led: replacement(model).lamp.watts }));

/** Each once: watts of the old lamp and of the new. */
export const pairs: readonly Pair[] = all.filter(
	(pair, i) => all.findIndex(({ name, halogen }) => name === pair.name && halogen === pair.halogen) === i
);
