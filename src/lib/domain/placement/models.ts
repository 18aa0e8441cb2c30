import { fixtureModels, stockBeams, type FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Yard } from '../yard';
import { ownModels } from './own-lamp';

export interface Wanted {
	body: FixtureModel['body'];
	mount?: FixtureModel['mount'];
	strength: FixtureModel['strength'];
	beam?: number;
}
export interface Pick {
	(wanted: Wanted): FixtureModel;
	/** Every model of a body that is made with this yard's kind and colour of lamp, as the catalogue lists them. */
	all: (body: FixtureModel['body']) => FixtureModel[];
	/** The model of an id, null where the catalogue has none. */
	model: (id: string) => FixtureModel | null;
}

const keyOf = (
	body: string,
	mount: string,
	strength: string,
	beam: number | string,
	kind: string,
	kelvin: number | string
): string => [body, mount, strength, beam, kind, kelvin].join(' ');

/** First of its key wins; a body that comes in one mount, strength or beam is also found without naming it. */
const index = new Map<string, FixtureModel>();
for (const model of fixtureModels) {
	const { body, mount, strength, lamp } = model;
	for (const m of [mount, 'any'])
		for (const s of [strength, 'any'])
			for (const b of [lamp.beamAngle, 'any'])
				for (const k of [lamp.kind === 'led' ? lamp.colourTemperature : 'any', 'any']) {
					const key = keyOf(body, m, s, b, lamp.kind, k);
					if (!index.has(key)) index.set(key, model);
				}
}

/** The lamp kind and colour that hold for this yard: the answer, or LED at 2700 K. */
export const lampChoice = (
	yard: Yard
): { kind: 'led' | 'halogen'; kelvin: number; told: { kind: boolean; kelvin: boolean } } => {
	const { lamp, warmth } = yard.power;
	const kind = lamp === 'halogen' ? 'halogen' : 'led';
	return {
		kind,
		kelvin: warmth === 3000 ? 3000 : rules['warm.colour'].figures.preferred,
		// A filament has its own colour: warmth is not a question then.
		told: {
			kind: lamp === 'led' || lamp === 'halogen',
			kelvin: warmth === 2700 || warmth === 3000 || kind === 'halogen'
		}
	};
};

const byId = new Map(fixtureModels.map((model) => [model.id, model]));

/**
 * Chooses from the catalogue for this yard; what is not made in the wanted strength or beam comes in the one that is. All that
 * it gives out has the person's own lamps in it (`ownModels`).
 */
export function picker(yard: Yard): Pick {
	const { kind, kelvin } = lampChoice(yard);
	const colour = kind === 'led' ? kelvin : 'any';
	const own = ownModels(yard);
	const withOwn = (model: FixtureModel): FixtureModel => own.get(model.id) ?? model;
	const pick = ({ body, mount, strength, beam }: Wanted): FixtureModel => {
		const m = mount ?? 'any';
		// A lamp of one's own may be of a beam between those in stock, and is asked for by that.
		const b = beam === undefined ? 'any' : stockBeamFor(beam);
		const model =
			index.get(keyOf(body, m, strength, b, kind, colour)) ??
			index.get(keyOf(body, m, 'any', b, kind, colour)) ??
			index.get(keyOf(body, 'any', 'any', 'any', kind, 'any'));
		return withOwn(model ?? fixtureModels[0]!);
	};
	const all = (body: FixtureModel['body']): FixtureModel[] => {
		const list = fixtureModels.filter(
			(model) =>
				model.body === body &&
				model.lamp.kind === kind &&
				(kind === 'halogen' || model.lamp.colourTemperature === kelvin)
		);
		// But for spots, which are asked for by beam, they are chosen among by their light: one's own leaves no choice.
		const mine = body === 'spot' ? undefined : list.map(({ id }) => own.get(id)).find((one) => one !== undefined);
		return mine ? [mine] : list.map(withOwn);
	};
	const model = (id: string): FixtureModel | null => {
		const listed = byId.get(id);
		return listed ? withOwn(listed) : null;
	};
	return Object.assign(pick, { all, model });
}

/** The narrowest stock beam of at least so many degrees; the widest when none is. */
export const stockBeamFor = (degrees: number): number =>
	stockBeams.find((beam) => beam >= degrees - 1e-9) ?? stockBeams[stockBeams.length - 1]!;
