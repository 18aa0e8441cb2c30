/** The models of the list with the person's own lamps in them: same body, mount and price, the light and load of the real one. */
import { fixtureModels, type FixtureModel, type Lamp, type MeasuredLight } from '../../shared/catalogue';
import { tableBeam, tableLumens, tableOfMeasured, type TableBeam } from '../../photometry';
import type { OwnLamp, Yard } from '../../yard';
import { faultOf } from './check';

/** What the table of a lamp comes to. */
export interface OwnLight {
	measured: MeasuredLight;
	/** By integration. */
	lumens: number;
	beam: TableBeam;
	/** One angle for the rules of placing: the mean of the two planes, degrees. */
	beamAngle: number;
}
const tenth = (value: number): number => Math.round(value * 10) / 10;
export const ownName = ({ name }: Pick<OwnLamp, 'name'>): string => name.trim() || 'unnamed';

/** Kept by the lamp's answer: every plan made of it carries one and the same table. */
const lights = new WeakMap<OwnLamp, OwnLight | null>();
/** Null where its table is at fault (`faultOf`). */
export function ownLightOf(own: OwnLamp): OwnLight | null {
	const known = lights.get(own);
	if (known !== undefined) return known;
	const light = faultOf(own) === null ? lightOf(own) : null;
	lights.set(own, light);
	return light;
}
function lightOf(own: OwnLamp): OwnLight {
	const { vertical, horizontal, symmetry, candela } = own;
	const measured: MeasuredLight = { name: ownName(own), vertical, horizontal, symmetry, candela };
	const table = tableOfMeasured(measured);
	const beam = tableBeam(table);
	return { measured, lumens: tenth(tableLumens(table)), beam, beamAngle: tenth((beam.first + beam.second) / 2) };
}

/** The lamp of a model with the light of one's own; volts and colour stay those of the model, watts where none are told. */
function lampWith({ lamp }: FixtureModel, { watts }: OwnLamp, { measured, lumens, beamAngle }: OwnLight): Lamp {
	// Power factor 0.8 for LED, as in the catalogue: rule supply.load, from memory.
	const load =
		watts === undefined ? {} : { watts, voltAmps: lamp.kind === 'led' ? Math.round((watts / 0.8) * 100) / 100 : watts };
	return { ...lamp, ...load, lumens, beamAngle, measured };
}

const byId = new Map(fixtureModels.map((model) => [model.id, model]));
/** Bodies that differ in nothing but the lamp in them. */
const bodyKey = ({ body, mount, lamp }: FixtureModel): string =>
	[body, mount, lamp.kind, lamp.colourTemperature].join(' ');
const kept = new WeakMap<OwnLamp, Map<string, FixtureModel>>();
/**
 * By id of the models that one lamp stands for, what takes their place; nothing where its table is at fault. Models that differ
 * in nothing but the lamp become the first of them that it names: one thing to buy.
 */
function modelsWith(own: OwnLamp): Map<string, FixtureModel> {
	const known = kept.get(own);
	if (known) return known;
	const light = ownLightOf(own);
	const firsts = new Map<string, FixtureModel>();
	const models = new Map<string, FixtureModel>();
	for (const id of own.for) {
		const model = byId.get(id);
		if (!model || !light) continue;
		const key = bodyKey(model);
		const first = firsts.get(key) ?? { ...model, lamp: lampWith(model, own, light) };
		firsts.set(key, first);
		models.set(id, first);
	}
	kept.set(own, models);
	return models;
}

/** By id, what takes the place of every model that a lamp of one's own stands for. Of two lamps for one model the first holds. */
export function ownModels({ power }: Pick<Yard, 'power'>): Map<string, FixtureModel> {
	const models = new Map<string, FixtureModel>();
	for (const own of power.lamps ?? [])
		for (const [id, model] of modelsWith(own)) if (!models.has(id)) models.set(id, model);
	return models;
}

/**
 * The models that a lamp meant for this one should stand for, this one first: those alike in body, mount and kind of lamp,
 * in every colour. Of spots only those of its strength and beam, which the plan asks for by name; among the others it chooses
 * by their light.
 */
export function modelsAlike(id: string): string[] {
	const model = byId.get(id);
	if (!model) return [];
	const { body, mount, strength, lamp } = model;
	const alike = fixtureModels.filter(
		(one) =>
			one.id !== id &&
			one.body === body &&
			one.mount === mount &&
			one.lamp.kind === lamp.kind &&
			(body !== 'spot' || (one.strength === strength && one.lamp.beamAngle === lamp.beamAngle))
	);
	return [id, ...alike.map((one) => one.id)];
}
