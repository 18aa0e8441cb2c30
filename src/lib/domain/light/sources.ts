/** The lamps of a plan as sources of light: where they hang, where they point, and what they give at the volts they get. */
import { fixtureModels, type FixtureModel, type Lamp } from '../shared/catalogue';
import { distanceToPolygon, moved, nearestOnPolygon, towards as across } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Run } from '../cable';
import {
	everywhere,
	lambertian,
	maintained,
	photometryOf,
	symmetricLaw,
	towards,
	type Photometry,
	type Vector
} from '../photometry';
import type { Fixture } from '../placement';
import type { ExistingLight, Site } from '../site';
import type { LightSource } from './types';

const down: Vector = { x: 0, y: 0, z: -1 };

/** Part of an LED's lower limit of volts at which it gives nothing any more; from there its light is taken to rise in proportion. Our assumption. */
export const ledDark = 2 / 3;

/**
 * Light of a lamp at so many volts, as a fraction of what is marked. An LED: all of it inside its window and above (rule
 * lamp.led); below, falling in proportion to none at two thirds of its lower limit, our assumption. A filament: (V/Vr)^3.4
 * (rule lamp.halogen, Fink & Beaty). `volts` null: not known, taken as rated.
 */
export function lightAt(lamp: Lamp, volts: number | null): number {
	if (volts === null) return 1;
	if (lamp.kind === 'halogen') return (Math.max(0, volts) / lamp.ratedVolts) ** rules['lamp.halogen'].figures.light;
	if (volts >= lamp.minVolts) return 1;
	return Math.max(0, (volts / lamp.minVolts - ledDark) / (1 - ledDark));
}

/** Volts of each fixture that a run feeds; null where the circuit has no solution. */
export function voltsOf(runs: readonly Run[]): Map<string, number | null> {
	const volts = new Map<string, number | null>();
	for (const run of runs) for (const node of run.nodes) if (node.fixture !== null) volts.set(node.fixture, node.volts);
	return volts;
}

const models = new Map<string, FixtureModel>(fixtureModels.map((model) => [model.id, model]));
/** The body that a technique has where the model is not of the catalogue. */
const bodyOf: Record<Fixture['technique'], FixtureModel['body']> = {
	uplight: 'spot',
	wash: 'wash',
	graze: 'wash',
	path: 'path',
	drive: 'marker',
	area: 'path',
	step: 'step',
	number: 'step'
};
const laws = new Map<string, Photometry>();
/** Laws kept: more than the models of any yard, few enough to hold. */
const mostLaws = 256;

/** The photometry of a fixture; one for all lamps alike, so that its table is made once. */
export function photometryFor(fixture: Fixture, axis: Vector): Photometry {
	const known = models.get(fixture.model);
	const model = known ?? { body: bodyOf[fixture.technique], mount: fixture.mount };
	const dip = model.body === 'step' ? (Math.asin(Math.min(1, Math.max(-1, -axis.z))) * 180) / Math.PI : 0;
	const { lumens, beamAngle, measured } = fixture.lamp;
	if (measured) return photometryOf(model, fixture.lamp);
	const key = `${model.body} ${model.mount} ${lumens} ${beamAngle} ${dip.toFixed(6)}`;
	const kept = laws.get(key);
	if (kept) return kept;
	if (laws.size >= mostLaws) laws.clear();
	const law = photometryOf(model, fixture.lamp, dip);
	laws.set(key, law);
	return law;
}

/** A fixture as a source. `volts`: what the circuit gives its lamp; null: not known, taken as rated. */
export function sourceOf(fixture: Fixture, volts: number | null): LightSource {
	const at = { x: fixture.at.x, y: fixture.at.y, z: fixture.height };
	const axis = fixture.aim ? towards(at, fixture.aim.point) : down;
	const ratedLumens = fixture.lamp.lumens;
	const lumens = ratedLumens * lightAt(fixture.lamp, volts) * maintained();
	return { id: fixture.id, at, axis, photometry: photometryFor(fixture, axis), lumens, ratedLumens };
}

/** Lux on the ground at the edge of the reach that was told of an existing light: rule light.existing. */
const seen = (): number => rules['light.existing'].figures.edge;
/** Metres off a wall at which a light told on it, or just behind its face, is taken to hang. */
const offWall = 0.15;
const nearWall = 0.4;

/**
 * A light that is there already. How strong it is nobody knows: its lumens are set so that the ground at the edge of the
 * told reach gets `seen` lux. A street lamp throws downwards as a flat diffuse source does, the others alike all round.
 */
export function existingSource(light: ExistingLight, site: Site): LightSource {
	const inside = site.house.length > 2 ? distanceToPolygon(light.at, site.house) : Infinity;
	const wall = inside < offWall && inside > -nearWall ? nearestOnPolygon(light.at, site.house) : null;
	const out = wall && outOf(site, wall.side);
	const { x, y } = wall && out ? moved(wall.point, out, offWall) : light.at;
	const z = Math.max(light.height, 0.1);
	const square = light.reach ** 2 + z ** 2;
	const isStreetLamp = light.kind === 'street-lamp';
	// On the ground at distance d: I·z/d³; a flat diffuse source sends I0·z/d that way.
	const candela = isStreetLamp ? (seen() * square ** 2) / z ** 2 : (seen() * square ** 1.5) / z;
	const lumens = candela * (isStreetLamp ? Math.PI : 4 * Math.PI);
	const photometry = symmetricLaw(isStreetLamp ? lambertian(lumens) : everywhere(lumens), lumens);
	return { id: light.id, at: { x, y, z }, axis: down, photometry, lumens, ratedLumens: lumens, existing: true };
}
/** Unit vector out of a side of the house. */
function outOf(site: Site, side: number): { x: number; y: number } {
	const a = site.house[side]!;
	const b = site.house[(side + 1) % site.house.length]!;
	const along = across(a, b);
	const normal = { x: -along.y, y: along.x };
	const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
	return distanceToPolygon(moved(middle, normal, 1e-3), site.house) > 0 ? normal : { x: -normal.x, y: -normal.y };
}

/** Every source of a yard: the fixtures of the plan in their order, then the lights that are there already. */
export function sourcesOf(site: Site, fixtures: readonly Fixture[], runs: readonly Run[]): LightSource[] {
	const volts = voltsOf(runs);
	return [
		...fixtures.map((fixture) => sourceOf(fixture, volts.get(fixture.id) ?? null)),
		...site.existing.map((light) => existingSource(light, site))
	];
}
