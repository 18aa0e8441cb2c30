/** The lights in a row: what each is, and how many. */
import type { FixtureKind, ShelfFixture, ShelfLamp } from '../domain/kits/types';
import { rules } from '../domain/shared/rules';
import { lightField, lightSets, type Field, type LightField, type LightSet } from './fields';
import type { Row } from './row';
import { readWindow } from './values/volts';
import { quoted } from './values/types';
import { lightKindOf, sourceOf } from './values/words';

export interface Light {
	product: string;
	fixture: ShelfFixture;
	count: number;
}
const powerFactor = rules['supply.load'].figures.powerFactor;
/** Volts, where the list does not say (rule cable.volts). */
export const usualWindow = { led: { min: 9, max: 15 }, halogen: { min: 10.8, max: 12 } } as const;
/**
 * Lumens per watt that tell an LED from a filament. 12 V halogen lamps give 12 to 25, LED lamps for gardens 50 to 110 (from memory).
 */
const efficacy = { filament: 28, led: 40 };
const kinds = 'spot, well, wash, path, marker or step';

const rounded = (value: number) => Math.round(value * 100) / 100;

function kindOf(row: Row, field: Field, fallback: FixtureKind | null): FixtureKind | null {
	const text = row.text(field);
	if (text === '' && fallback) return fallback;
	if (text === '') return row.stop(field, `What kind of light it is is missing. Write ${kinds}.`);
	return (
		lightKindOf(text) ?? row.stop(field, `${quoted(text)} is no kind of light that is known here. Write ${kinds}.`)
	);
}
/** LED or halogen: as told, else by how much light a watt gives, which is said. */
function sourceIn(row: Row, field: Field, watts: number, lumens: number): ShelfLamp['source'] | null {
	const text = row.text(field);
	const told = sourceOf(text);
	if (told) return told;
	if (text !== '') return row.stop(field, `${quoted(text)} is no lamp that is known here. Write LED or halogen.`);
	const perWatt = lumens / watts;
	const guess = perWatt <= efficacy.filament ? 'halogen' : perWatt >= efficacy.led ? 'led' : null;
	if (!guess) return row.stop(field, 'Whether it is LED or halogen is missing. Write LED or halogen.');
	row.look(
		field,
		`LED or halogen is not told: taken as ${guess === 'led' ? 'LED' : 'halogen'}, since ${watts} W give ${lumens} lumens.`,
		'none-told'
	);
	return guess;
}
function lampOf(row: Row, at: (base: LightField) => Field): ShelfLamp | null {
	const va = row.figure(at('va'), { min: 0.1, max: 1000, units: ['VA'] });
	const told = row.figure(at('watts'), { min: 0.1, max: 500, units: ['W', 'watt', 'watts'] });
	const lumens = row.figure(at('lumens'), { min: 1, max: 20_000, units: ['lm', 'lumen', 'lumens'], isLarge: true });
	if (row.isStopped) return null;
	const watts = told ?? (va === null ? null : rounded(va * powerFactor));
	if (watts === null) return row.stop(at('watts'), 'The watts of one light are missing.');
	if (lumens === null)
		return row.stop(
			at('lumens'),
			'The lumens of one light are missing: without them nobody can say whether it is bright enough.'
		);
	const source = sourceIn(row, at('source'), watts, lumens);
	if (!source) return null;
	const voltText = row.text(at('volts'));
	const window = (voltText ? row.take(at('volts'), readWindow(voltText)) : null) ?? usualWindow[source];
	return {
		source,
		watts,
		voltAmps: va ?? (source === 'led' ? rounded(watts / powerFactor) : watts),
		lumens,
		beam: row.figure(at('beam'), { min: 1, max: 360, units: ['°', 'deg', 'degree', 'degrees'] }, 'look'),
		minVolts: window.min,
		maxVolts: window.max,
		colour: row.figure(at('colour'), { min: 1500, max: 10_000, units: ['K', 'kelvin'], isLarge: true }, 'look')
	};
}
const same = (a: ShelfFixture, b: ShelfFixture): boolean =>
	a.kind === b.kind && (Object.keys(a.lamp) as (keyof ShelfLamp)[]).every((key) => a.lamp[key] === b.lamp[key]);

/** The light that `same as` names, else one that is made of the row's own figures and remembered. */
function fixtureOf(
	row: Row,
	at: (base: LightField) => Field,
	product: string,
	fallback: FixtureKind | null
): ShelfFixture | null {
	const { products } = row.context;
	const known = products.get(product);
	const hasOwn = row.has(at('watts'), at('va'), at('lumens'));
	if (known && !hasOwn) return known;
	if (!hasOwn && row.has(at('same as')))
		return row.stop(
			at('same as'),
			`No light with the code ${quoted(product)} is on this list. Put that line right, or write the watts and lumens here.`
		);
	const kind = kindOf(row, at('light'), fallback);
	const lamp = lampOf(row, at);
	if (!kind || !lamp || row.isStopped) return null;
	const fixture = { kind, lamp };
	// A loose line with this code again is said to be the second one, which is enough.
	if (known && row.has(at('same as')) && !same(known, fixture))
		row.look(
			at('same as'),
			`Its figures are not those of ${quoted(product)}, which is the same light: the figures of ${quoted(product)} were taken.`
		);
	if (!known) products.set(product, fixture);
	return known ?? fixture;
}
function lightIn(row: Row, set: LightSet, code: string, fallback: FixtureKind | null, isLoose: boolean): Light | null {
	const at = (base: LightField) => lightField(base, set);
	const product = row.text(at('same as')) || (isLoose ? code : `${code} light ${set}`);
	const fixture = fixtureOf(row, at, product, fallback);
	const count = row.figure(at('count'), {
		min: 1,
		max: 1000,
		units: ['lights', 'pcs', 'pc', 'pieces', 'x'],
		isWhole: true
	});
	if (!fixture || row.isStopped) return null;
	if (count === null && !isLoose) return row.stop(at('count'), 'How many of these lights are in it is missing.');
	return { product, fixture, count: count ?? 1 };
}
/** The light of a loose line. `kind`: what its type said already (`path light`). */
export const looseLight = (row: Row, code: string, kind: FixtureKind | null): Light | null =>
	lightIn(row, 1, code, kind, true);

/** Whether a row says anything of a light. A count alone counts something else. */
export const hasLight = (row: Row, set: LightSet = 1): boolean =>
	(['light', 'same as', 'watts', 'lumens'] as const).some((base) => row.has(lightField(base, set)));
/** The lights of a kit. */
export const kitLights = (row: Row, code: string): Light[] =>
	lightSets
		.filter((set) => hasLight(row, set))
		.map((set) => lightIn(row, set, code, null, false))
		.filter((light) => light !== null);
